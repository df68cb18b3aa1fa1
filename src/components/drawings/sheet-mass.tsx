import type { Values } from "../../lib/inputs.ts";
import { formatQuantity } from "../../lib/quantity/format.ts";
import type { OutputValues } from "../../lib/worksheet.ts";
import type sheet from "../../lib/worksheets/sheet-mass.ts";
import { useTexts } from "../../texts/context.ts";
import { sheetMass } from "../../texts/en/drawings/sheet-mass.ts";
import { Line, Size, spot } from "../figures/pen.tsx";
import { Aside, Drawing, type DrawingProps, drawingWidth } from "./parts/Drawing.tsx";
import { useSizes } from "./parts/sizes.ts";

/** Something of a known size beside it: the opening of a usual door [mm]. */
const door = { width: 900, height: 2000 };
const area = { left: 54, right: drawingWidth - 14, top: 30, bottom: 216 };

/** The sheet leaning against the wall beside a door, both to one scale. */
export default function SheetMassDrawing({ id, values, outputs, view }: DrawingProps) {
  const texts = useTexts(sheetMass);
  const { size, units } = useSizes(view);
  const { width, length, thickness } = values as Values<typeof sheet.inputs>;
  const { mass } = outputs as OutputValues<typeof sheet.outputs>;
  if (mass === null) return null;
  // Leaning on its longer edge, as it is carried.
  const wide = Math.max(width, length);
  const high = Math.min(width, length);
  const apart = 0.15 * Math.max(wide, door.width);
  const scale = Math.min(
    (area.right - area.left) / (wide + apart + door.width),
    (area.bottom - area.top) / Math.max(high, door.height),
  );
  const used = scale * (wide + apart + door.width);
  const left = area.left + (area.right - area.left - used) / 2;
  const right = left + scale * wide;
  const top = area.bottom - scale * high;
  const doorLeft = right + scale * apart;
  return (
    <Drawing
      id={id}
      height={256}
      title={texts.title}
      description={texts.text(
        size(wide),
        size(high),
        size(thickness),
        formatQuantity(mass, "mass"),
        size(door.width),
        size(door.height),
        units,
      )}
    >
      <Aside place={spot(8, 14)}>{texts.door(units, size(door.width), size(door.height))}</Aside>
      <path
        class="tool"
        d={`M${doorLeft} ${area.bottom}V${area.bottom - scale * door.height}H${doorLeft + scale * door.width}V${area.bottom}`}
      />
      <path class="sheet" d={`M${left} ${area.bottom}V${top}H${right}V${area.bottom}Z`} />
      <Line from={spot(8, area.bottom)} to={spot(drawingWidth - 8, area.bottom)} />
      <Size from={spot(left, area.bottom)} to={spot(right, area.bottom)} off={-18} text={size(wide)} />
      <Size from={spot(left, area.bottom)} to={spot(left, top)} off={14} text={size(high)} />
    </Drawing>
  );
}
