import type { Values } from "../../lib/inputs.ts";
import type { OutputValues } from "../../lib/worksheet.ts";
import type sheet from "../../lib/worksheets/seam-allowance.ts";
import { useTexts } from "../../texts/context.ts";
import { seamAllowance } from "../../texts/en/drawings/seam-allowance.ts";
import { Line, Size, spot, Text } from "../figures/pen.tsx";
import { Aside, Drawing, type DrawingProps, drawingWidth } from "./parts/Drawing.tsx";
import { useSizes } from "./parts/sizes.ts";

const margin = 20;
const top = 64;
const bottom = 124;
/** Both edges together take this much of the width, whatever the seam: the body between them is not known here. */
const shown = 0.62 * (drawingWidth - 2 * margin);

/** The flat from above, with what the seam adds on each edge. */
export default function SeamAllowanceDrawing({ id, values, outputs, view }: DrawingProps) {
  const texts = useTexts(seamAllowance);
  const { size, units } = useSizes(view);
  const { kind } = values as Values<typeof sheet.inputs>;
  const { allowance, sideA, sideB } = outputs as OutputValues<typeof sheet.outputs>;
  if (allowance === null || sideA === null || sideB === null) return null;
  const scale = shown / allowance;
  const right = drawingWidth - margin;
  const [a, b] = [margin + scale * sideA, right - scale * sideB];
  const [ofA = "", ofB = ""] = [sideA, sideB].map((side) => size(side));
  return (
    <Drawing id={id} height={176} title={texts.title} description={texts.text(kind, ofA, ofB, units)}>
      <Aside place={spot(8, 14)}>{texts.flatFromAbove(units)}</Aside>
      <rect class="zone" x={margin} y={top} width={a - margin} height={bottom - top} />
      <rect class="zone" x={b} y={top} width={right - b} height={bottom - top} />
      <rect class="sheet" x={margin} y={top} width={right - margin} height={bottom - top} />
      <Line from={spot(a, top)} to={spot(a, bottom)} kind="hidden" />
      <Size from={spot(margin, top)} to={spot(a, top)} off={14} text={`A ${ofA}`} />
      {sideB > 0 && (
        <>
          <Line from={spot(b, top)} to={spot(b, bottom)} kind="hidden" />
          <Size from={spot(b, top)} to={spot(right, top)} off={14} text={`B ${ofB}`} />
        </>
      )}
      <Text spot={spot((a + b) / 2, (top + bottom) / 2 + 4)} lines={texts.body} anchor="middle" kind="name" />
      <Text spot={spot(margin, bottom + 28)} lines={texts.dashed} kind="label" />
    </Drawing>
  );
}
