import { flattestFeed } from "../../lib/cutting/saw-teeth.ts";
import type { Values } from "../../lib/inputs.ts";
import { formatNumber } from "../../lib/quantity/format.ts";
import type { OutputValues } from "../../lib/worksheet.ts";
import type sheet from "../../lib/worksheets/saw-blade.ts";
import { useTexts } from "../../texts/context.ts";
import { sawBlade } from "../../texts/en/drawings/saw-blade.ts";
import { AngleSize, at, away, spot } from "../figures/pen.tsx";
import { Aside, Drawing, type DrawingProps } from "./parts/Drawing.tsx";
import { useSizes } from "./parts/sizes.ts";

const band = { x: 214, top: 34, bottom: 216, back: 58 };

/** The coarsest band that keeps two teeth in the sheet, or else the finest that is made, to one scale with the sheet. */
export default function SawBladeDrawing({ id, values, outputs, view }: DrawingProps) {
  const texts = useTexts(sawBlade);
  const { size, units } = useSizes(view);
  const { thickness } = values as Values<typeof sheet.inputs>;
  const { teethPerInchMin, inclined } = outputs as OutputValues<typeof sheet.outputs>;
  if (teethPerInchMin === null) return null;
  const slanting = inclined === "yes";
  const angle = slanting ? flattestFeed : 90;
  const contact = thickness / Math.sin((angle * Math.PI) / 180);
  const scale = 62 / contact;
  const pitch = (scale * 25.4) / teethPerInchMin;
  const teeth = (contact * teethPerInchMin) / 25.4;
  const upper = spot(band.x, 74);
  const lower = spot(band.x, upper.y + scale * contact);
  const down = 180 + 90 - angle;
  const end = away(lower, down, slanting ? 92 : 150);
  const thick = scale * thickness;
  // The first tooth starts where the sheet does.
  const first = upper.y - Math.ceil((upper.y - band.top) / pitch) * pitch;
  const edges = Array.from({ length: Math.ceil((band.bottom - first) / pitch) }, (_, index) => first + index * pitch).filter(
    (y) => y >= band.top && y + pitch <= band.bottom,
  );
  const start = edges[0] ?? band.top;
  const edge = edges.map((y) => `L${band.x - 0.42 * pitch} ${(y + 0.9 * pitch).toFixed(1)}L${band.x} ${(y + pitch).toFixed(1)}`);
  return (
    <Drawing
      id={id}
      height={236}
      title={texts.title}
      description={texts.text(
        size(thickness),
        slanting ? texts.laidSlanting(angle) : texts.laidSquare,
        formatNumber(teethPerInchMin, 1),
        formatNumber(teeth, 1),
        units,
      )}
    >
      <Aside place={spot(8, 14)}>{texts.toScale(units)}</Aside>
      <path class="tool" d={`M${band.x} ${start}${edge.join("")}H${band.x + band.back}V${start}Z`} />
      <path class="sheet" d={`M${[upper, lower, end, away(end, down - 90, thick)].map(at).join("L")}Z`} />
      {slanting && <AngleSize centre={lower} radius={56} from={270} to={down} text={`${angle}°`} textOff={10} />}
      <text class="label" x={band.x + 14} y={start + 18}>
        {texts.band}
      </text>
      <text class="mark-text" x={band.x + band.back + 10} y={(upper.y + lower.y) / 2}>
        {texts.teeth(formatNumber(teeth, 1).replace(/\.0$/, ""))}
      </text>
      <path class="mark-line" d={`M${band.x + 4} ${upper.y}V${lower.y}`} />
      <text class="size" x={24} y={224}>
        {`T ${size(thickness)}`}
      </text>
    </Drawing>
  );
}
