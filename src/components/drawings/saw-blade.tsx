import { flattestFeed } from "../../lib/cutting/saw-teeth.ts";
import type { Values } from "../../lib/inputs.ts";
import { formatNumber } from "../../lib/quantity/format.ts";
import type { OutputValues } from "../../lib/worksheet.ts";
import type sheet from "../../lib/worksheets/saw-blade.ts";
import { AngleSize, at, away, spot } from "../figures/pen.tsx";
import { Aside, Drawing, type DrawingProps } from "./parts/Drawing.tsx";
import { sizeText, unitNote } from "./parts/sizes.ts";

const band = { x: 214, top: 34, bottom: 216, back: 58 };

/** The coarsest band that keeps two teeth in the sheet, or else the finest that is made, to one scale with the sheet. */
export default function SawBladeDrawing({ id, values, outputs, view }: DrawingProps) {
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
      title="Band and sheet"
      description={`Sheet ${sizeText(thickness, view)} thick, ${slanting ? `laid so that the blade runs at ${angle}° to its face` : "square to the blade"}, with a band of ${formatNumber(teethPerInchMin, 1)} teeth an inch, ${formatNumber(teeth, 1)} teeth of which are in it; ${unitNote(view)}.`}
    >
      <Aside place={spot(8, 14)}>{`${unitNote(view)}; sheet and teeth to one scale`}</Aside>
      <path class="tool" d={`M${band.x} ${start}${edge.join("")}H${band.x + band.back}V${start}Z`} />
      <path class="sheet" d={`M${[upper, lower, end, away(end, down - 90, thick)].map(at).join("L")}Z`} />
      {slanting && <AngleSize centre={lower} radius={56} from={270} to={down} text={`${angle}°`} textOff={10} />}
      <text class="label" x={band.x + 14} y={start + 18}>
        band
      </text>
      <text class="mark-text" x={band.x + band.back + 10} y={(upper.y + lower.y) / 2}>
        {`${formatNumber(teeth, 1).replace(/\.0$/, "")} teeth`}
      </text>
      <path class="mark-line" d={`M${band.x + 4} ${upper.y}V${lower.y}`} />
      <text class="size" x={24} y={224}>
        {`T ${sizeText(thickness, view)}`}
      </text>
    </Drawing>
  );
}
