import { useTexts } from "../../../texts/context.ts";
import { figuresMarking } from "../../../texts/en/figures-marking.ts";
import { arcPath, at, Line, Paper, Path, Size, spot, Text } from "../pen.tsx";

/** Two ways to a right angle without a square: 3, 4 and 5 of one length, and arcs with dividers. */
export default function RightAngle() {
  const { rightAngle: texts } = useTexts(figuresMarking);
  const bottom = 150;
  const unit = 25;
  const corner = spot(38, bottom);
  const far = spot(corner.x + 4 * unit, bottom);
  const top = spot(corner.x, bottom - 3 * unit);
  const foot = spot(276, bottom);
  const step = 52;
  const one = spot(foot.x - step, bottom);
  const other = spot(foot.x + step, bottom);
  const wide = 84;
  const rise = Math.sqrt(wide ** 2 - step ** 2);
  const meet = spot(foot.x, bottom - rise);
  // Half the angle that each arc is drawn to either side of the meeting point.
  const about = (Math.atan2(rise, step) * 180) / Math.PI;
  return (
    <Paper height={214} title={texts.title}>
      <Path d={`M20 ${bottom}H170M200 ${bottom}H350`} kind="outline" />
      <Path d={`M${at(corner)}L${at(top)}L${at(far)}`} kind="thin" />
      <Line from={corner} to={spot(corner.x, 44)} kind="sight" />
      <Size from={corner} to={top} off={20} text="300" />
      <Size from={corner} to={far} off={-18} text="400" />
      <Size from={top} to={far} off={12} text="500" />
      <circle class="dot" cx={foot.x} cy={foot.y} r={2.6} />
      <circle class="dot" cx={one.x} cy={one.y} r={2.6} />
      <circle class="dot" cx={other.x} cy={other.y} r={2.6} />
      <Path d={arcPath(one, wide, about - 12, about + 12)} kind="thin" />
      <Path d={arcPath(other, wide, 180 - about - 12, 180 - about + 12)} kind="thin" />
      <Path d={`M${at(one)}L${at(meet)}L${at(other)}`} kind="hidden" />
      <Line from={foot} to={spot(foot.x, 40)} kind="sight" />
      <Size from={one} to={foot} off={-18} text="s" />
      <Size from={foot} to={other} off={-18} text="s" />
      <Text spot={spot(one.x + 12, bottom - 44)} lines="r" anchor="end" kind="size" />
      <Text spot={spot(other.x - 12, bottom - 44)} lines="r" kind="size" />
      <Text spot={spot(95, 202)} lines={texts.sides} anchor="middle" kind="name" />
      <Text spot={spot(276, 202)} lines={texts.dividers} anchor="middle" kind="name" />
    </Paper>
  );
}
