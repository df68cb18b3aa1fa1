import { setback } from "../../lib/bending/setback.ts";
import { usualLegEnd } from "../../lib/bending/symbols.ts";
import type { Values } from "../../lib/inputs.ts";
import { mean } from "../../lib/stats/sample.ts";
import type { OutputValues } from "../../lib/worksheet.ts";
import type sheet from "../../lib/worksheets/practice-pieces.ts";
import { useTexts } from "../../texts/context.ts";
import { drawings } from "../../texts/en/drawings.ts";
import { Size, spot } from "../figures/pen.tsx";
import { BentStrip } from "./parts/BentStrip.tsx";
import { Aside, Drawing, type DrawingProps, drawingWidth } from "./parts/Drawing.tsx";
import { useSizes } from "./parts/sizes.ts";

const margin = 30;

/** What is measured on a practice piece: once flat, twice bent. The sizes are the means of all pieces. */
export default function PracticePiecesDrawing({ id, values, outputs, view }: DrawingProps) {
  const { thickness, radius, angle, legTo, pieces } = values as Values<typeof sheet.inputs>;
  const { allowance } = outputs as OutputValues<typeof sheet.outputs>;
  const { practicePieces: texts } = useTexts(drawings);
  const { size, angle: turned, units } = useSizes(view);
  if (allowance === null) return null;
  const of = (key: "flat" | "legA" | "legB") => mean(pieces.map((piece) => piece[key]));
  const flat = size(of("flat"));
  const legs = [of("legA"), of("legB")];
  const sizes = legs.map((leg, index) => `${"AB"[index]} = ${size(leg)}`);
  const many = pieces.length > 1 ? texts.means(pieces.length) : "";
  return (
    <Drawing
      id={id}
      height={290}
      title={texts.title}
      description={texts.text(flat, turned(angle), sizes.join(texts.and), many + units)}
    >
      <Aside place={spot(8, 14)}>
        {many}
        {units}
      </Aside>
      <rect class="sheet" x={margin} y={58} width={drawingWidth - 2 * margin} height={5} />
      <Size from={spot(margin, 58)} to={spot(drawingWidth - margin, 58)} off={14} text={texts.flat(flat)} />
      <BentStrip
        legs={legs}
        sizes={sizes}
        bend={{
          angle,
          radius,
          thickness,
          setback: setback({ angle, radius, thickness, legTo: legTo ?? usualLegEnd(angle) }),
          allowance,
        }}
        top={72}
        height={215}
      />
    </Drawing>
  );
}
