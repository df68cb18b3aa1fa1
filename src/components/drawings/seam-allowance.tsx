import type { Values } from "../../lib/inputs.ts";
import type { OutputValues } from "../../lib/worksheet.ts";
import type sheet from "../../lib/worksheets/seam-allowance.ts";
import { Line, Size, spot, Text } from "../figures/pen.tsx";
import { Aside, Drawing, type DrawingProps, drawingWidth } from "./parts/Drawing.tsx";
import { sizeText, unitNote } from "./parts/sizes.ts";

const margin = 20;
const top = 64;
const bottom = 124;
/** Both edges together take this much of the width, whatever the seam: the body between them is not known here. */
const shown = 0.62 * (drawingWidth - 2 * margin);

/** The flat from above, with what the seam adds on each edge. */
export default function SeamAllowanceDrawing({ id, values, outputs, view }: DrawingProps) {
  const { kind } = values as Values<typeof sheet.inputs>;
  const { allowance, sideA, sideB } = outputs as OutputValues<typeof sheet.outputs>;
  if (allowance === null || sideA === null || sideB === null) return null;
  const scale = shown / allowance;
  const right = drawingWidth - margin;
  const [a, b] = [margin + scale * sideA, right - scale * sideB];
  const edges = [sideA, sideB].map((side) => sizeText(side, view));
  return (
    <Drawing
      id={id}
      height={176}
      title="What the seam adds to the flat"
      description={`The flat from above for a ${kind} seam: side A gets ${edges[0]}, side B ${edges[1]}; ${unitNote(view)}.`}
    >
      <Aside place={spot(8, 14)}>the flat from above, {unitNote(view)}</Aside>
      <rect class="zone" x={margin} y={top} width={a - margin} height={bottom - top} />
      <rect class="zone" x={b} y={top} width={right - b} height={bottom - top} />
      <rect class="sheet" x={margin} y={top} width={right - margin} height={bottom - top} />
      <Line from={spot(a, top)} to={spot(a, bottom)} kind="hidden" />
      <Size from={spot(margin, top)} to={spot(a, top)} off={14} text={`A ${edges[0]}`} />
      {sideB > 0 && (
        <>
          <Line from={spot(b, top)} to={spot(b, bottom)} kind="hidden" />
          <Size from={spot(b, top)} to={spot(right, top)} off={14} text={`B ${edges[1]}`} />
        </>
      )}
      <Text spot={spot((a + b) / 2, (top + bottom) / 2 + 4)} lines="body" anchor="middle" kind="name" />
      <Text spot={spot(margin, bottom + 28)} lines="dashed: where the body would end without a seam" kind="label" />
    </Drawing>
  );
}
