import { formatNumber } from "../../../lib/quantity/format.ts";
import { useTexts } from "../../../texts/context.ts";
import { figuresMarking } from "../../../texts/en/figures-marking.ts";
import { at, away, Line, Note, Paper, Path, Size, spot, Text } from "../pen.tsx";

/** A square checked with itself: marked once from each side of one point. The error is drawn larger than any square has. */
const drawnError = 4;
const blade = 130;
/** What the gap at the end of a blade means [mm]. */
const found = { gap: 0.5, reach: 200 };

export default function SquareTurned() {
  const { squareTurned: texts } = useTexts(figuresMarking);
  const edge = 168;
  const foot = spot(180, edge);
  const one = away(foot, 90 + drawnError, blade);
  const other = away(foot, 90 - drawnError, blade);
  const degrees = (Math.asin(found.gap / 2 / found.reach) * 180) / Math.PI;
  // Each stock lies on the edge, each blade on its own line: one square, turned over.
  const square = (side: 1 | -1, tip: typeof one) =>
    `M${at(foot)}L${at(tip)}L${at(spot(tip.x - side * 13, tip.y))}L${at(spot(foot.x - side * 13, edge))}Z`;
  return (
    <Paper height={214} title={texts.title}>
      <Path d={`M20 22H340V${edge}H20Z`} kind="sheet" />
      <Path d={square(1, one)} kind="tool" />
      <Path d={`M${foot.x - 92} ${edge}H${foot.x}V${edge + 16}H${foot.x - 92}Z`} kind="tool" />
      <Path d={square(-1, other)} kind="tool-ghost" />
      <Path d={`M${foot.x} ${edge}H${foot.x + 92}V${edge + 16}H${foot.x}Z`} kind="tool-ghost" />
      <Line from={foot} to={one} kind="sight" />
      <Line from={foot} to={other} kind="sight" />
      <Size from={one} to={other} off={8} gap={2} text={formatNumber(found.gap, 1)} outside="to" />
      <Note to={away(foot, 90 + drawnError, 70)} from={spot(132, 78)} lines={texts.firstLine} anchor="end" />
      <Note to={away(foot, 90 - drawnError, 54)} from={spot(226, 96)} lines={texts.secondLine} />
      <Text spot={spot(20, 204)} lines={texts.gapAt(found.gap, found.reach, formatNumber(degrees, 2))} kind="name" />
    </Paper>
  );
}
