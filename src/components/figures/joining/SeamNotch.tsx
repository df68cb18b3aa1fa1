import { useTexts } from "../../../texts/context.ts";
import { figuresJoining } from "../../../texts/en/figures-joining.ts";
import { Line, Note, Paper, Path, spot, Text } from "../pen.tsx";
import { closed } from "./shapes.ts";

/** Corners of a flat where a seam meets an edge that is folded later: cut away so that only two layers meet. */
export default function SeamNotch() {
  const { seamNotch: texts } = useTexts(figuresJoining);
  const left = 58;
  const right = 302;
  const seam = 34;
  const edge = 28;
  const top = 44;
  const foot = 196;
  const cut = 12;
  const corners = [
    spot(left + seam, top),
    spot(right - seam, top),
    spot(right - seam, top + edge - cut),
    spot(right - cut, top + edge),
    spot(right, top + edge),
    spot(right, foot - cut),
    spot(right - cut, foot),
    spot(left + cut, foot),
    spot(left, foot - cut),
    spot(left, top + edge),
    spot(left + cut, top + edge),
    spot(left + seam, top + edge - cut),
  ];
  return (
    <Paper height={242} title={texts.title}>
      <Path
        d={`M${left} ${top + edge}L${left} ${top}L${left + seam} ${top}M${right} ${top + edge}L${right} ${top}L${right - seam} ${top}`}
        kind="hidden"
      />
      <Path d={closed(...corners)} kind="sheet" />
      <Line from={spot(left + seam - 10, top + edge)} to={spot(right - seam + 10, top + edge)} kind="sight" />
      <Line from={spot(left + seam, top + edge - 6)} to={spot(left + seam, foot)} kind="sight" />
      <Line from={spot(right - seam, top + edge - 6)} to={spot(right - seam, foot)} kind="sight" />
      <Text spot={spot(180, 63)} lines={texts.edgeFoldedLater} anchor="middle" kind="name" />
      <Text spot={spot(180, 132)} lines={texts.body} anchor="middle" kind="name" />
      <Note to={spot(left + 17, 132)} from={spot(40, 108)} lines={texts.seam} anchor="end" />
      <Note to={spot(right - 17, 132)} from={spot(316, 108)} lines={texts.seam} />
      <Note to={spot(left + 20, top + 8)} from={spot(92, 22)} lines={texts.takenOut} />
      <Note to={spot(left + cut / 2, foot - cut / 2)} from={spot(96, 222)} lines={texts.snipped} end="arrow" />
    </Paper>
  );
}
