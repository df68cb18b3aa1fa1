import type { Values } from "../../lib/inputs.ts";
import type { OutputValues } from "../../lib/worksheet.ts";
import type sheet from "../../lib/worksheets/smallest-radius.ts";
import { useTexts } from "../../texts/context.ts";
import { drawings } from "../../texts/en/drawings.ts";
import { Arrowhead, arcPath, away, Line, Size, spot } from "../figures/pen.tsx";
import { Aside, Drawing, type DrawingProps, drawingWidth } from "./parts/Drawing.tsx";
import { useSizes } from "./parts/sizes.ts";
import { fitInto, from, hull, outline, walk } from "./parts/strip.ts";

const box = { left: 60, top: 36, width: drawingWidth - 150, height: 170 };

/** The sharpest bend in section: thickness and radius to scale, the stretched face marked. */
export default function SmallestRadiusDrawing({ id, values, outputs, view }: DrawingProps) {
  const { thickness } = values as Values<typeof sheet.inputs>;
  const { radius } = outputs as OutputValues<typeof sheet.outputs>;
  const { smallestRadius: texts } = useTexts(drawings);
  const { size, units } = useSizes(view);
  if (radius === null) return null;
  const leg = 2.2 * thickness + 0.6 * radius;
  const pieces = walk([{ ahead: leg }, { turn: 90, radius }, { ahead: leg }], thickness);
  const [first, bend, last] = pieces;
  const sight = fitInto(hull(pieces, thickness), box);
  if (!first || !bend?.centre || !last) return null;
  const centre = sight.spot(bend.centre);
  const inside = away(centre, -45, sight.scale * radius);
  const outer = sight.scale * (radius + thickness);
  const label = away(centre, 135, 30);
  return (
    <Drawing id={id} height={240} title={texts.title} description={texts.text(size(thickness), size(radius), units)}>
      <Aside place={spot(8, 14)}>{texts.toScale(units)}</Aside>
      <path class="sheet" d={outline(pieces, thickness, sight)} />
      <path class="stretch" d={arcPath(centre, outer, -90, 0)} />
      <text class="stretch-text" x={away(centre, -45, outer + 12).x} y={away(centre, -45, outer + 12).y + 10}>
        {texts.stretched}
      </text>
      <Line from={label} to={inside} />
      <Arrowhead tip={inside} direction={-45} />
      <text class="size big" x={label.x} y={label.y - 5} text-anchor="middle">
        R {size(radius)}
      </text>
      <Size
        from={sight.spot(from(last.end, 0, thickness / 2))}
        to={sight.spot(from(last.end, 0, -thickness / 2))}
        off={14}
        text={`T ${size(thickness)}`}
        outside="to"
      />
    </Drawing>
  );
}
