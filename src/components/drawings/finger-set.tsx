import type { Values } from "../../lib/inputs.ts";
import type { OutputValues } from "../../lib/worksheet.ts";
import type sheet from "../../lib/worksheets/finger-set.ts";
import { useTexts } from "../../texts/context.ts";
import { drawings } from "../../texts/en/drawings.ts";
import { Size, spot } from "../figures/pen.tsx";
import { Aside, Drawing, type DrawingProps, drawingWidth } from "./parts/Drawing.tsx";
import { useSizes } from "./parts/sizes.ts";

const left = 40;
const width = drawingWidth - 2 * left;
const top = 66;
const height = 74;

/** The fingers between the two sides of the box that stand up already, seen from the front; the widest in the middle. */
export default function FingerSetDrawing({ id, values, outputs, view }: DrawingProps) {
  const { boxWidth } = values as Values<typeof sheet.inputs>;
  const { chosen, total, clearance } = outputs as OutputValues<typeof sheet.outputs>;
  const { fingerSet: texts, between } = useTexts(drawings);
  const { size, units } = useSizes(view);
  if (total === null || clearance === null) return null;
  const scale = width / boxWidth;
  // Wide ones inside, as one puts them.
  const sorted = chosen.flatMap((finger) => (typeof finger === "number" ? [finger] : [])).sort((a, b) => a - b);
  const order = [...sorted.filter((_, index) => index % 2 === 0), ...sorted.filter((_, index) => index % 2 === 1).reverse()];
  let at = left + (scale * clearance) / 2;
  return (
    <Drawing
      id={id}
      height={218}
      title={texts.title}
      description={texts.text(size(boxWidth), order.map(size).join(between), size(total), size(clearance), units)}
    >
      <Aside place={spot(8, 14)}>{texts.front(units)}</Aside>
      <path class="tool" d={`M${left - 22} 34H${left + width + 22}V${top}H${left - 22}Z`} />
      <text class="label" x={drawingWidth / 2} y={55} text-anchor="middle">
        {texts.beam}
      </text>
      {order.map((finger, index) => {
        const start = at;
        at += scale * finger;
        return (
          <g key={`${index} ${finger}`}>
            <rect class="tool" x={start} y={top} width={scale * finger} height={height} />
            {scale * finger > 30 && (
              <text class="size" x={start + (scale * finger) / 2} y={top + 42} text-anchor="middle">
                {size(finger)}
              </text>
            )}
          </g>
        );
      })}
      <path
        class="sheet"
        d={`M${left - 5} ${top + 12}V${top + height + 5}H${left + width + 5}V${top + 12}H${left + width}V${top + height}H${left}V${top + 12}Z`}
      />
      <Size
        from={spot(left, top + height + 6)}
        to={spot(left + width, top + height + 6)}
        off={-22}
        text={`B ${size(boxWidth)}`}
      />
      <text class="size" x={drawingWidth / 2} y={206} text-anchor="middle">
        {texts.sum(size(total), size(clearance))}
      </text>
    </Drawing>
  );
}
