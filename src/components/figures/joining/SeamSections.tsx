import { useTexts } from "../../../texts/context.ts";
import { figuresJoining } from "../../../texts/en/figures-joining.ts";
import { Paper, Path, Size, spot, Text } from "../pen.tsx";
import { groovedSeam, standingSeam } from "./seam-shapes.ts";
import { box } from "./shapes.ts";

const t = 5;

/** The three seams of the calculator in section, each with its width. */
export default function SeamSections() {
  const { seamSections: texts } = useTexts(figuresJoining);
  const lap = { left: 148, right: 212, y: 52 };
  const grooved = { foot: spot(148, 142), thickness: t, width: 72, beside: 104 };
  const standing = { foot: spot(180, 292), thickness: t, width: 70, beside: 120 };
  return (
    <Paper height={340} title={texts.title}>
      <Path d={box(40, lap.y, lap.right, lap.y + t)} kind="sheet" />
      <Path d={box(lap.left, lap.y + t, 330, lap.y + 2 * t)} kind="sheet" />
      <Size from={spot(lap.left, lap.y)} to={spot(lap.right, lap.y)} off={16} text="W" />
      <Text spot={spot(40, 38)} lines={texts.lap} kind="name" />

      {groovedSeam(grooved, true).map((d) => (
        <Path key={d} d={d} kind="sheet" />
      ))}
      <Size from={spot(148, 119)} to={spot(220, 119)} off={12} text="W" />
      <Text spot={spot(40, 118)} lines={texts.grooved} kind="name" />

      {standingSeam(standing, 26, 2).map((d) => (
        <Path key={d} d={d} kind="sheet" />
      ))}
      <Size from={spot(60, standing.foot.y)} to={spot(60, standing.foot.y - standing.width)} off={12} text="W" gap={0} />
      <path class="thin" d={`M46 ${standing.foot.y - standing.width}H190`} />
      <Text spot={spot(230, 240)} lines={texts.standing} kind="name" />
    </Paper>
  );
}
