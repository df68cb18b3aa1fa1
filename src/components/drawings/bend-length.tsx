import type { Values } from "../../lib/inputs.ts";
import type { OutputValues } from "../../lib/worksheet.ts";
import type sheet from "../../lib/worksheets/bend-length.ts";
import { useTexts } from "../../texts/context.ts";
import { drawings } from "../../texts/en/drawings.ts";
import { spot } from "../figures/pen.tsx";
import { BentStrip } from "./parts/BentStrip.tsx";
import { Aside, Drawing, type DrawingProps } from "./parts/Drawing.tsx";
import { FlatStrip } from "./parts/FlatStrip.tsx";
import { useSizes } from "./parts/sizes.ts";

/** More sizes than this would not be readable. */
const mostSizes = 6;

export default function BendLengthDrawing({ id, values, outputs, view }: DrawingProps) {
  const { thickness, radius, angle, legs } = values as Values<typeof sheet.inputs>;
  const { blank, allowance, setback } = outputs as OutputValues<typeof sheet.outputs>;
  const { bendLength: texts, between } = useTexts(drawings);
  const { size, angle: turned, units } = useSizes(view);
  if (blank === null || allowance === null || setback === null) return null;
  const ends = (index: number) => (index === 0 || index === legs.length - 1 ? 1 : 2);
  const sizes = legs.map((leg) => size(leg));
  return (
    <Drawing
      id={id}
      height={320}
      title={texts.title}
      description={texts.text(sizes.join(between), turned(angle), size(radius), size(blank), units)}
    >
      <Aside place={spot(8, 14)}>{units}</Aside>
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
