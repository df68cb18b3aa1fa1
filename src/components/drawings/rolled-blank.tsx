import type { Values } from "../../lib/inputs.ts";
import type { OutputValues } from "../../lib/worksheet.ts";
import type sheet from "../../lib/worksheets/rolled-blank.ts";
import { useTexts } from "../../texts/context.ts";
import { rolledBlank } from "../../texts/en/drawings/rolled-blank.ts";
import { arcPath, away, Line, Size, spot } from "../figures/pen.tsx";
import { Aside, Drawing, type DrawingProps, drawingWidth } from "./parts/Drawing.tsx";
import { useSizes } from "./parts/sizes.ts";

const centre = spot(180, 96);
const outer = 66;
const strip = { left: 20, top: 214, width: drawingWidth - 40, height: 26 };

/** The curve in section, and the flat blank with the part that the seam takes. */
export default function RolledBlankDrawing({ id, values, outputs, view }: DrawingProps) {
  const texts = useTexts(rolledBlank);
  const { size, angle: turned, units } = useSizes(view);
  const { diameter, measured, thickness, arc, seam } = values as Values<typeof sheet.inputs>;
  const { blank } = outputs as OutputValues<typeof sheet.outputs>;
  if (blank === null) return null;
  const outside = measured === "inside" ? diameter + 2 * thickness : diameter;
  // Thin sheet is drawn a little thicker, or it would be a line.
  const wall = Math.min(Math.max((2 * outer * thickness) / outside, 4), 0.9 * outer);
  const inner = outer - wall;
  const full = arc >= 359;
  // A gap at the top, as wide as the curve leaves open; of a full tube only a slit for the seam.
  const open = full ? 1.2 : (360 - arc) / 2;
  const [from, to] = [90 + open, 450 - open];
  const seamWidth = (strip.width * Math.min(seam, blank)) / blank;
  const face = measured === "inside" ? inner : outer;
  return (
    <Drawing
      id={id}
      height={262}
      title={texts.title}
      description={texts.text(turned(arc), size(diameter), measured, size(thickness), size(blank), units)}
    >
      <Aside place={spot(8, 14)}>{units}</Aside>
      <path class="sheet" d={`${arcPath(centre, outer, from, to)}${arcPath(centre, inner, to, from, "L")}Z`} />
      <Line from={away(centre, 180, outer + 8)} to={away(centre, 0, outer + 8)} kind="centre" />
      <Line from={away(centre, 90, outer + 8)} to={away(centre, -90, outer + 8)} kind="centre" />
      <Size from={away(centre, 200, face)} to={away(centre, 20, face)} off={0.1} gap={0} text={`D ${size(diameter)}`} />
      {!full && (
        <text class="size" x={centre.x + outer + 14} y={centre.y + 50}>
          {turned(arc)}
        </text>
      )}
      <text class="label" x={centre.x + outer + 14} y={centre.y - 40}>
        {measured}
      </text>
      <rect class="sheet" x={strip.left} y={strip.top} width={strip.width} height={strip.height} />
      {seamWidth > 0 && (
        <g>
          <rect class="zone" x={strip.left + strip.width - seamWidth} y={strip.top} width={seamWidth} height={strip.height} />
          <text class="size" x={strip.left + strip.width} y={strip.top + 42} text-anchor="end">
            {texts.seam(size(seam))}
          </text>
        </g>
      )}
      <Size
        from={spot(strip.left, strip.top)}
        to={spot(strip.left + strip.width, strip.top)}
        off={12}
        text={`L ${size(blank)}`}
      />
      <Aside place={spot(strip.left, strip.top + 40)}>{texts.flat}</Aside>
    </Drawing>
  );
}
