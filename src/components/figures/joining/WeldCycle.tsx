import { spotConditions } from "../../../lib/joining/spot-conditions.ts";
import { formatNumber } from "../../../lib/quantity/format.ts";
import { useTexts } from "../../../texts/context.ts";
import { figuresJoining } from "../../../texts/en/figures-joining.ts";
import { at, Line, Note, Paper, Path, Size, spot, Text } from "../pen.tsx";
import { box } from "./shapes.ts";

/** Force and current of one weld over time, its weld time to scale; nothing fixes how long squeeze and hold last. */
export default function WeldCycle() {
  const { weldCycle: texts } = useTexts(figuresJoining);
  const { timeMin, timeMax } = spotConditions({ governing: 1, regime: "medium-force" });
  const scale = 400;
  const on = 150;
  const [soon, late] = [on + scale * timeMin, on + scale * timeMax];
  const force = { base: 112, top: 52 };
  const current = { base: 186, top: 138 };
  const opens = late + 56;
  const forceLine = [
    spot(44, force.base),
    spot(70, force.base),
    spot(100, force.top),
    spot(opens, force.top),
    spot(opens + 18, force.base),
    spot(336, force.base),
  ];
  return (
    <Paper height={262} title={texts.title(timeMin.toFixed(2), timeMax.toFixed(2))}>
      <Path d={box(soon, current.top, late, current.base)} kind="tool" />
      <Path d={`M${forceLine.map(at).join("L")}`} kind="outline" />
      <Path d={`M44 ${current.base}L${on} ${current.base}L${on} ${current.top}L${soon} ${current.top}`} kind="sight" />
      <Path
        d={`M${soon} ${current.top}L${soon} ${current.base}M${soon} ${current.top}L${late} ${current.top}L${late} ${current.base}M${late} ${current.base}L336 ${current.base}`}
        kind="sight"
      />
      {[100, on, late, opens].map((x) => (
        <Line key={x} from={spot(x, 40)} to={spot(x, x === on || x === late ? 232 : force.base + 6)} kind="hidden" />
      ))}
      <Text spot={spot(8, 84)} lines={texts.force} kind="name" />
      <Text spot={spot(8, 162)} lines={texts.current} kind="name" />
      <Text spot={spot((70 + on) / 2, 30)} lines={texts.squeeze} anchor="middle" kind="name" />
      <Text spot={spot((on + late) / 2, 30)} lines={texts.weld} anchor="middle" kind="name" />
      <Text spot={spot((late + opens) / 2, 30)} lines={texts.hold} anchor="middle" kind="name" />
      <Text spot={spot(opens + 6, 30)} lines={texts.letGo} kind="name" />
      <Note to={spot((soon + late) / 2, (current.top + current.base) / 2)} from={spot(282, 158)} lines={texts.mayEndInHere} />
      <Size from={spot(on, 200)} to={spot(soon, 200)} off={-8} text={`${formatNumber(timeMin, 2)} s`} gap={0} />
      <Size from={spot(on, 222)} to={spot(late, 222)} off={-8} text={`${formatNumber(timeMax, 2)} s`} gap={0} />
      <Text spot={spot(180, 256)} lines={texts.steel} anchor="middle" kind="label" />
    </Paper>
  );
}
