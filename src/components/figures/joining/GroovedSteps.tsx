import { useTexts } from "../../../texts/context.ts";
import { figuresJoining } from "../../../texts/en/figures-joining.ts";
import { Arrowhead, Line, Note, Paper, Path, spot, Text } from "../pen.tsx";
import { groovedSeam, hookPath } from "./seam-shapes.ts";
import { box } from "./shapes.ts";

const t = 5;
const width = 54;

/** A grooved seam: hooks to opposite sides, hooked together, set down with the groover. */
export default function GroovedSteps() {
  const { groovedSteps: texts } = useTexts(figuresJoining);
  const hooks = { y: 56 };
  const joined = { foot: spot(153, 152), thickness: t, width, beside: 100 };
  const down = { foot: spot(153, 282), thickness: t, width, beside: 100 };
  const shape = (foot: ReturnType<typeof spot>) => ({ foot, thickness: t, width, beside: 90 });
  const right = hookPath(shape(spot(174, hooks.y)));
  const groove = { left: 150, right: 212, top: 282 - 4 * t - 6 };
  return (
    <Paper height={346} title={texts.title}>
      <Path d={right} kind="sheet" />
      <g transform={`rotate(180 180 ${hooks.y})`}>
        <Path d={hookPath(shape(spot(174, hooks.y)))} kind="sheet" />
      </g>
      <Text spot={spot(12, 22)} lines={texts.foldTheHooks} kind="name" />
      {groovedSeam(joined, false).map((d) => (
        <Path key={d} d={d} kind="sheet" />
      ))}
      <Line from={spot(86, 124)} to={spot(66, 124)} kind="motion" />
      <Arrowhead tip={spot(60, 124)} direction={180} kind="arrow-motion" />
      <Line from={spot(276, 162)} to={spot(296, 162)} kind="motion" />
      <Arrowhead tip={spot(302, 162)} direction={0} kind="arrow-motion" />
      <Text spot={spot(12, 108)} lines={texts.hookThemTogether} kind="name" />
      <Path d={box(30, 282, 330, 306)} kind="tool" />
      {groovedSeam(down, true).map((d) => (
        <Path key={d} d={d} kind="sheet" />
      ))}
      <Path
        d={`M${groove.left - 14} ${groove.top - 34}L${groove.right + 22} ${groove.top - 34}L${groove.right + 22} ${groove.top + 14}L${groove.right + 12} ${groove.top + 14}L${groove.right} ${groove.top}L${groove.left} ${groove.top}L${groove.left - 6} ${groove.top + 14}L${groove.left - 14} ${groove.top + 14}Z`}
        kind="tool"
      />
      <Line from={spot(182, 196)} to={spot(182, 212)} kind="motion" />
      <Arrowhead tip={spot(182, 219)} direction={-90} kind="arrow-motion" />
      <Text spot={spot(12, 204)} lines={texts.setItDown} kind="name" />
      <Note to={spot(222, 244)} from={spot(268, 226)} lines={texts.groovingTool} />
      <Text spot={spot(180, 326)} lines={texts.barOrStake} anchor="middle" kind="name" />
    </Paper>
  );
}
