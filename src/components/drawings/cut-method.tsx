import type { Values } from "../../lib/inputs.ts";
import type { OutputValues } from "../../lib/worksheet.ts";
import type sheet from "../../lib/worksheets/cut-method.ts";
import { Size, spot } from "../figures/pen.tsx";
import { Aside, Drawing, type DrawingProps, drawingWidth } from "./parts/Drawing.tsx";
import { sizeText, unitNote } from "./parts/sizes.ts";

const piece = { left: 40, top: 40, width: drawingWidth - 80, height: 120 };

/** The cut on the sheet: right across or ending inside, straight or curved. */
export default function CutMethodDrawing({ id, values, outputs, view }: DrawingProps) {
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
  const says = `${curveRadius > 0 ? "curved" : "straight"}, ${through ? "from edge to edge" : "ending inside the sheet"}`;
  return (
    <Drawing
      id={id}
      height={216}
      title="The cut"
      description={`A cut ${sizeText(cutLength, view)} long in sheet ${sizeText(thickness, view)} thick, ${says}${curveRadius > 0 ? `, radius ${sizeText(curveRadius, view)}` : ""}; ${method === "none" ? "no tool here suits it" : `to be cut with: ${method}`}; ${unitNote(view)}.`}
    >
      <Aside place={spot(8, 14)}>{`${unitNote(view)}; not to scale`}</Aside>
      <rect class="sheet" x={piece.left} y={piece.top} width={piece.width} height={piece.height} />
      <path class="mark-line" d={cut} />
      <text class="label" x={right - 8} y={piece.top + 18} text-anchor="end">
        {`T ${sizeText(thickness, view)}`}
      </text>
      {curveRadius > 0 ? (
        <text class="mark-text" x={(piece.left + end) / 2} y={middle - bulge - 4} text-anchor="middle">
          {`r ${sizeText(curveRadius, view)}`}
        </text>
      ) : null}
      {through && curveRadius === 0 ? (
        <Size from={spot(piece.left, bottom)} to={spot(right, bottom)} off={-18} text={sizeText(cutLength, view)} />
      ) : (
        <text class="size" x={piece.left} y={bottom + 22}>
          {`${sizeText(cutLength, view)} along the cut`}
        </text>
      )}
      <Aside place={spot(piece.left, bottom + 44)}>{says}</Aside>
    </Drawing>
  );
}
