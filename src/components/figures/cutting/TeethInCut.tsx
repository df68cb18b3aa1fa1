import { loadCatalogue } from "../../../catalogue/load.ts";
import { flattestFeed, sawTeeth } from "../../../lib/cutting/saw-teeth.ts";
import { formatNumber } from "../../../lib/quantity/format.ts";
import { useTexts } from "../../../texts/context.ts";
import { figuresCutting } from "../../../texts/en/figures-cutting.ts";
import { AngleSize, at, away, Paper, Path, type Spot, spot, Text } from "../pen.tsx";

const thickness = 1.2;
const scale = 24;

/** Toothed edge of a band, its teeth pointing down, from a spot downwards. */
function bandPath(top: Spot, length: number, pitch: number): string {
  const teeth = Math.floor(length / pitch);
  const depth = pitch * 0.45;
  const edge = Array.from({ length: teeth }, (_, index) => {
    const y = top.y + index * pitch;
    return `L${at(spot(top.x, y + pitch * 0.1))}L${at(spot(top.x - depth, y + pitch * 0.92))}L${at(spot(top.x, y + pitch))}`;
  });
  return `M${at(top)}${edge.join("")}H${(top.x + 44).toFixed(1)}V${top.y}Z`;
}

/** The finest band of this shop in thin sheet, to one scale: square on, and with the sheet slanting. */
export default function TeethInCut() {
  const { teethInCut: texts } = useTexts(figuresCutting);
  const teethPerInch = Math.max(...loadCatalogue().shop.bandSaw.bands.map(({ teeth }) => teeth));
  const pitch = (scale * 25.4) / teethPerInch;
  const thick = scale * thickness;
  const squareOn = sawTeeth({ thickness, teethPerInch, angle: 90 });
  const slanting = sawTeeth({ thickness, teethPerInch, angle: flattestFeed });
  const right = 272;
  const upper = spot(right, 44);
  const lower = spot(right, upper.y + thick / Math.sin((flattestFeed * Math.PI) / 180));
  const down = 270 - flattestFeed;
  const end = away(lower, down, 96);
  return (
    <Paper
      height={272}
      title={texts.title(teethPerInch, thickness, formatNumber(squareOn, 1), formatNumber(slanting, 1), flattestFeed)}
    >
      <Path d={bandPath(spot(92, 22), 176, pitch)} kind="tool" />
      <Path d={`M12 104H92V${104 + thick}H12Z`} kind="sheet" />
      <Path d={bandPath(spot(right, 22), 176, pitch)} kind="tool" />
      <Path d={`M${[upper, lower, end, away(end, down - 90, thick)].map(at).join("L")}Z`} kind="sheet" />
      <AngleSize centre={lower} radius={62} from={270} to={down} text={`${flattestFeed}°`} textOff={10} />
      <Text spot={spot(80, 232)} lines={texts.squareOn(formatNumber(squareOn, 1))} anchor="middle" kind="name" />
      <Text spot={spot(268, 232)} lines={texts.slanting(formatNumber(slanting, 1))} anchor="middle" kind="name" />
    </Paper>
  );
}
