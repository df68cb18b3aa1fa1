import { formatNumber } from "../../../lib/quantity/format.ts";
import { useTexts } from "../../../texts/context.ts";
import { figuresMarking } from "../../../texts/en/figures-marking.ts";
import { Arrowhead, at, away, Line, Note, Paper, Path, Size, type Spot, spot, Text } from "../pen.tsx";

/** A steel rule and the point of a scriber, enlarged [mm, deg]. */
const ruleThickness = 1;
const halfPoint = 10;
const scale = 34;
const floor = 128;

/** A scriber with its point at a spot, leaning from upright [deg], to the right when positive. */
function scriberPath(point: Spot, lean: number): string {
  const up = 90 - lean;
  const shoulder = away(point, up, 62);
  const half = 62 * Math.tan((halfPoint * Math.PI) / 180);
  const left = away(shoulder, up + 90, half);
  const right = away(shoulder, up - 90, half);
  return `M${at(away(left, up, 26))}L${at(left)}L${at(point)}L${at(right)}L${at(away(right, up, 26))}`;
}

/** Section across the rule with the scriber upright and leaning out, and the scriber seen from the side of the line. */
export default function ScribeLean() {
  const { scribeLean: texts } = useTexts(figuresMarking);
  const standOff = ruleThickness * Math.tan((halfPoint * Math.PI) / 180);
  const top = floor - ruleThickness * scale;
  return (
    <Paper height={214} title={texts.title}>
      {[0, 1].map((cell) => {
        const foot = cell * 120 + 52;
        const point = spot(foot + (cell === 0 ? standOff * scale : 0), floor);
        return (
          <g key={cell}>
            <Path d={`M${foot - 44} ${top}H${foot}V${floor}H${foot - 44}`} kind="tool" />
            <Path d={scriberPath(point, cell === 0 ? 0 : halfPoint)} kind="outline" />
            <Path d={`M${foot - 46} ${floor}H${foot + 58}V${floor + 12}H${foot - 46}Z`} kind="sheet" />
            <Text spot={spot(foot - 24, floor - 12)} lines={texts.rule} anchor="middle" kind="label" />
          </g>
        );
      })}
      <Size
        from={spot(52, floor)}
        to={spot(52 + standOff * scale, floor)}
        off={-26}
        gap={14}
        text={formatNumber(standOff, 2)}
        outside="to"
      />
      <Path d={`M248 ${floor}H356V${floor + 12}H248Z`} kind="sheet" />
      <Line from={spot(252, floor)} to={spot(296, floor)} kind="sight" />
      <Path d={scriberPath(spot(296, floor), 35)} kind="outline" />
      <Line from={spot(304, floor - 10)} to={spot(338, floor - 10)} kind="motion" />
      <Arrowhead tip={spot(346, floor - 10)} direction={0} kind="arrow-motion" />
      <Note to={spot(274, floor)} from={spot(262, floor - 42)} lines={texts.line} anchor="middle" />
      <Text spot={spot(60, 182)} lines={texts.upright} anchor="middle" kind="name" />
      <Text spot={spot(180, 182)} lines={texts.leaningOut} anchor="middle" kind="name" />
      <Text spot={spot(302, 182)} lines={texts.fromTheSide} anchor="middle" kind="name" />
    </Paper>
  );
}
