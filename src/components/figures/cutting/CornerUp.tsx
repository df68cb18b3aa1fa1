import { clearGap } from "../../../lib/cutting/corner-notch.ts";
import { formatNumber } from "../../../lib/quantity/format.ts";
import { useTexts } from "../../../texts/context.ts";
import { figuresCutting } from "../../../texts/en/figures-cutting.ts";
import { arcPath, at, Line, Note, Paper, Path, Size, type Spot, spot } from "../pen.tsx";
import { cornerPlaces } from "./corner.ts";

const scale = 26;

/** The finished corner from above: both sides stand up, each stops short of the outside face of the other. */
export default function CornerUp() {
  const { cornerUp: texts } = useTexts(figuresCutting);
  const { thickness, radius, gap } = cornerPlaces();
  const clear = clearGap(gap, thickness);
  // The outside corner, where the two outer faces would meet.
  const corner = spot(92, 52);
  const t = scale * thickness;
  const g = scale * gap;
  const r = scale * (radius + thickness);
  const one: Spot = spot(corner.x + t, corner.y + g);
  const other: Spot = spot(corner.x + g, corner.y + t);
  return (
    <Paper height={262} title={texts.title(gap, formatNumber(clear, 2))}>
      <Path d={`M${corner.x} 214V${corner.y + g}H${corner.x + t}V214`} kind="sheet" />
      <Path d={`M326 ${corner.y}H${corner.x + g}V${corner.y + t}H326`} kind="sheet" />
      <Path d={`M${corner.x + r} 214${arcPath(spot(corner.x + r + 1, corner.y + r + 1), 1, 180, 90, "L")}H326`} kind="hidden" />
      <Path d={`M${corner.x} ${corner.y + g}V${corner.y}H${corner.x + g}`} kind="hidden" />
      <Path d={`M${at(one)}L${at(other)}`} kind="sight" />
      <Size from={spot(corner.x, corner.y)} to={spot(corner.x + g, corner.y)} off={18} text={`g ${gap}`} />
      <Size from={spot(corner.x, corner.y)} to={spot(corner.x, corner.y + g)} off={-18} text={`g ${gap}`} />
      <Size from={spot(300, corner.y)} to={spot(300, corner.y + t)} off={-20} text={`T ${thickness}`} outside="from" gap={22} />
      <Note
        to={spot((one.x + other.x) / 2, (one.y + other.y) / 2)}
        from={spot(190, 103)}
        lines={texts.openBy(formatNumber(clear, 2))}
      />
      <Note to={spot(corner.x + r + 40, corner.y + r)} from={spot(214, 176)} lines={texts.baseBeginsHere} />
      <Line from={spot(corner.x, 214)} to={spot(corner.x + t, 214)} kind="hidden" />
      <Note to={spot(corner.x + t / 2, 190)} from={spot(62, 234)} lines={texts.side} />
    </Paper>
  );
}
