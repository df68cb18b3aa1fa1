import { rivetFactors } from "../../../lib/joining/rivets.ts";
import { useTexts } from "../../../texts/context.ts";
import { figuresJoining } from "../../../texts/en/figures-joining.ts";
import { Paper, Path, spot, Text } from "../pen.tsx";
import { drivenRivet } from "./rivet-shapes.ts";
import { box } from "./shapes.ts";

const t = 9;
const D = 20;

/** A driven head as it should be, and three that are drilled out. */
export default function DrivenHeads() {
  const { drivenHeads: texts } = useTexts(figuresJoining);
  const y = 62;
  const { headWidth, headHeight, leastHeadWidth, leastHeadHeight } = rivetFactors;
  const sheets = (x: number, gap = 0) => (
    <>
      <Path d={box(x - 40, y, x + 40, y + t)} kind="sheet" />
      <Path d={box(x - 40, y + t + gap, x + 40, y + 2 * t + gap)} kind="sheet" />
    </>
  );
  const shape = (x: number, grip = 2 * t) => ({ top: spot(x, y), diameter: D, grip });
  return (
    <Paper height={190} title={texts.title}>
      {sheets(45)}
      <path class="part" d={drivenRivet(shape(45), headWidth * D, headHeight * D)} />
      <Text spot={spot(45, 130)} lines={texts.sound(headWidth, headHeight)} anchor="middle" kind="name" />
      {sheets(135)}
      <path class="part" d={drivenRivet(shape(135), 1.15 * D, 0.22 * D)} />
      <Text spot={spot(135, 130)} lines={texts.tooSmall(leastHeadWidth, leastHeadHeight)} anchor="middle" kind="name" />
      {sheets(225)}
      <path class="part" d={drivenRivet(shape(225), headWidth * D, 0.45 * D, 9)} />
      <Text spot={spot(225, 130)} lines={texts.leaning} anchor="middle" kind="name" />
      {sheets(315, 6)}
      <path
        class="part"
        d={`M305 ${y}L305 ${y + t}L299 ${y + t}L299 ${y + t + 6}L305 ${y + t + 6}L305 ${y + 2 * t + 6}L302 ${y + 2 * t + 6}L302 ${y + 2 * t + 14}L328 ${y + 2 * t + 14}L328 ${y + 2 * t + 6}L325 ${y + 2 * t + 6}L325 ${y + t + 6}L331 ${y + t + 6}L331 ${y + t}L325 ${y + t}L325 ${y}L335 ${y}A21 21 0 0 0 295 ${y}Z`}
      />
      <Text spot={spot(315, 130)} lines={texts.gap} anchor="middle" kind="name" />
    </Paper>
  );
}
