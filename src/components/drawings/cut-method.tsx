import type { Values } from "../../lib/inputs.ts";
import type { OutputValues } from "../../lib/worksheet.ts";
import type sheet from "../../lib/worksheets/cut-method.ts";
import { useTexts } from "../../texts/context.ts";
import { cutMethod } from "../../texts/en/drawings/cut-method.ts";
import { Size, spot } from "../figures/pen.tsx";
import { Aside, Drawing, type DrawingProps, drawingWidth } from "./parts/Drawing.tsx";
import { useSizes } from "./parts/sizes.ts";

const piece = { left: 40, top: 40, width: drawingWidth - 80, height: 120 };

/** The cut on the sheet: right across or ending inside, straight or curved. */
export default function CutMethodDrawing({ id, values, outputs, view }: DrawingProps) {
  const texts = useTexts(cutMethod);
  const { size, units } = useSizes(view);
  const { thickness, cutLength, curveRadius, throughCut } = values as Values<typeof sheet.inputs>;
  const { method } = outputs as OutputValues<typeof sheet.outputs>;
  const through = throughCut === "yes";
  const right = piece.left + piece.width;
  const bottom = piece.top + piece.height;
  const end = through ? right : piece.left + 0.62 * piece.width;
  const middle = piece.top + 0.5 * piece.height;
  const bulge = 30;
  // A cut that ends inside is drawn as a corner or as a curve that comes back to the edge.
  const cut =
    curveRadius > 0
      ? `M${piece.left} ${middle + (through ? 0 : 24)}Q${(piece.left + end) / 2} ${middle - 2 * bulge} ${end} ${through ? middle : bottom}`
      : through
        ? `M${piece.left} ${middle}H${right}`
        : `M${piece.left} ${middle}H${end}V${bottom}`;
  const says = `${curveRadius > 0 ? texts.curved : texts.straight}, ${through ? texts.fromEdgeToEdge : texts.endingInside}`;
  return (
    <Drawing
      id={id}
      height={216}
      title={texts.title}
      description={texts.text(
        size(cutLength),
        size(thickness),
        says,
        curveRadius > 0 ? texts.radius(size(curveRadius)) : "",
        method === "none" ? texts.noTool : texts.cutWith(method),
        units,
      )}
    >
      <Aside place={spot(8, 14)}>{texts.notToScale(units)}</Aside>
      <rect class="sheet" x={piece.left} y={piece.top} width={piece.width} height={piece.height} />
      <path class="mark-line" d={cut} />
      <text class="label" x={right - 8} y={piece.top + 18} text-anchor="end">
        {`T ${size(thickness)}`}
      </text>
      {curveRadius > 0 ? (
        <text class="mark-text" x={(piece.left + end) / 2} y={middle - bulge - 4} text-anchor="middle">
          {`r ${size(curveRadius)}`}
        </text>
      ) : null}
      {through && curveRadius === 0 ? (
        <Size from={spot(piece.left, bottom)} to={spot(right, bottom)} off={-18} text={size(cutLength)} />
      ) : (
        <text class="size" x={piece.left} y={bottom + 22}>
          {texts.alongTheCut(size(cutLength))}
        </text>
      )}
      <Aside place={spot(piece.left, bottom + 44)}>{says}</Aside>
    </Drawing>
  );
}
