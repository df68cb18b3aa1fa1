import { formatNumber } from "../../../lib/quantity/format.ts";
import { useTexts } from "../../../texts/context.ts";
import { figuresCutting } from "../../../texts/en/figures-cutting.ts";
import { Note, Paper, Path, Size, spot, Text } from "../pen.tsx";
import { cornerPlaces } from "./corner.ts";

/** The table of the corner cutter from above: two blades at a right angle, two guides set to the notch. */
export default function CornerGuides() {
  const { cornerGuides: texts } = useTexts(figuresCutting);
  const { guide } = cornerPlaces();
  const apex = spot(196, 146);
  const drawn = 74;
  return (
    <Paper height={276} title={texts.title(formatNumber(guide, 2))}>
      <Path d="M20 30H340V224H20Z" kind="tool" />
      <Path d={`M${apex.x - drawn} ${apex.y - drawn}H332V240H${apex.x - drawn}Z`} kind="sheet" />
      <Path d={`M${apex.x - drawn - 12} 52H${apex.x - drawn}V212H${apex.x - drawn - 12}Z`} kind="tool" />
      <Path d={`M96 ${apex.y - drawn - 12}H312V${apex.y - drawn}H96Z`} kind="tool" />
      <Path d={`M${apex.x - drawn - 26} ${apex.y}H${apex.x}V${apex.y - drawn - 30}`} kind="sight" />
      <Size from={spot(apex.x - drawn, apex.y)} to={apex} off={-24} text={formatNumber(guide, 2)} />
      <Size from={apex} to={spot(apex.x, apex.y - drawn)} off={-26} text={formatNumber(guide, 2)} />
      <Text spot={spot(apex.x - drawn / 2, apex.y - drawn / 2 + 4)} lines={texts.waste} anchor="middle" kind="label" />
      <Note to={spot(apex.x - drawn - 6, 190)} from={spot(72, 250)} lines={texts.guideForOneEdge} />
      <Note to={spot(286, apex.y - drawn - 6)} from={spot(280, 18)} lines={texts.guideForTheOther} anchor="middle" />
      <Note to={spot(apex.x, apex.y - drawn - 24)} from={spot(150, 18)} lines={texts.blades} anchor="middle" />
      <Text spot={spot(326, 200)} lines={texts.blank} anchor="end" kind="label" />
    </Paper>
  );
}
