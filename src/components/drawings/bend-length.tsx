import type { Values } from "../../lib/inputs.ts";
import type { OutputValues } from "../../lib/worksheet.ts";
import type sheet from "../../lib/worksheets/bend-length.ts";
import { spot } from "../figures/pen.tsx";
import { BentStrip } from "./parts/BentStrip.tsx";
import { Aside, Drawing, type DrawingProps } from "./parts/Drawing.tsx";
import { FlatStrip } from "./parts/FlatStrip.tsx";
import { angleText, sizeText, unitNote } from "./parts/sizes.ts";

/** More sizes than this would not be readable. */
const mostSizes = 6;

export default function BendLengthDrawing({ id, values, outputs, view }: DrawingProps) {
  const { thickness, radius, angle, legs } = values as Values<typeof sheet.inputs>;
  const { blank, allowance, setback } = outputs as OutputValues<typeof sheet.outputs>;
  if (blank === null || allowance === null || setback === null) return null;
  const ends = (index: number) => (index === 0 || index === legs.length - 1 ? 1 : 2);
  const sizes = legs.map((leg) => sizeText(leg, view));
  return (
    <Drawing
      id={id}
      height={320}
      title="The bent strip and its blank"
      description={`A strip with outside legs of ${sizes.join(", ")}, each bend turned ${angleText(angle)} from flat about an inside radius of ${sizeText(radius, view)}, and below it the blank, ${sizeText(blank, view)} long; ${unitNote(view)}.`}
    >
      <Aside place={spot(8, 14)}>{unitNote(view)}</Aside>
      <BentStrip
        legs={legs}
        sizes={legs.length <= mostSizes ? sizes : undefined}
        bend={{ angle, radius, thickness, setback, allowance }}
        top={0}
        height={205}
      />
      <FlatStrip
        top={240}
        total={blank}
        straight={legs.map((leg, index) => leg - ends(index) * setback)}
        bend={allowance}
        view={view}
      />
    </Drawing>
  );
}
