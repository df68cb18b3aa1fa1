import { formatNumber } from "../../../lib/quantity/format.ts";
import { Note, Paper, Path, Size, spot, Text } from "../pen.tsx";
import { cornerPlaces } from "./corner.ts";

/** The table of the corner cutter from above: two blades at a right angle, two guides set to the notch. */
export default function CornerGuides() {
  const { guide } = cornerPlaces();
  const apex = spot(196, 146);
  const drawn = 74;
  return (
    <Paper
      height={276}
      title={`Corner cutter from above: the edges of the blank lie against two guides, each ${formatNumber(guide, 2)} mm from a blade; both blades cut at once`}
    >
      <Path d="M20 30H340V224H20Z" kind="tool" />
      <Path d={`M${apex.x - drawn} ${apex.y - drawn}H332V240H${apex.x - drawn}Z`} kind="sheet" />
      <Path d={`M${apex.x - drawn - 12} 52H${apex.x - drawn}V212H${apex.x - drawn - 12}Z`} kind="tool" />
      <Path d={`M96 ${apex.y - drawn - 12}H312V${apex.y - drawn}H96Z`} kind="tool" />
      <Path d={`M${apex.x - drawn - 26} ${apex.y}H${apex.x}V${apex.y - drawn - 30}`} kind="sight" />
      <Size from={spot(apex.x - drawn, apex.y)} to={apex} off={-24} text={formatNumber(guide, 2)} />
      <Size from={apex} to={spot(apex.x, apex.y - drawn)} off={-26} text={formatNumber(guide, 2)} />
      <Text spot={spot(apex.x - drawn / 2, apex.y - drawn / 2 + 4)} lines="waste" anchor="middle" kind="label" />
      <Note to={spot(apex.x - drawn - 6, 190)} from={spot(72, 250)} lines="guide for one edge" />
      <Note to={spot(286, apex.y - drawn - 6)} from={spot(280, 18)} lines="guide for the other" anchor="middle" />
      <Note to={spot(apex.x, apex.y - drawn - 24)} from={spot(150, 18)} lines="blades" anchor="middle" />
      <Text spot={spot(326, 200)} lines="blank" anchor="end" kind="label" />
    </Paper>
  );
}
