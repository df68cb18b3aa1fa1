import type { Values } from "../../lib/inputs.ts";
import type { OutputValues } from "../../lib/worksheet.ts";
import type sheet from "../../lib/worksheets/smallest-radius.ts";
import { Arrowhead, arcPath, away, Line, Size, spot } from "../figures/pen.tsx";
import { Aside, Drawing, type DrawingProps, drawingWidth } from "./parts/Drawing.tsx";
import { sizeText, unitNote } from "./parts/sizes.ts";
import { fitInto, from, hull, outline, walk } from "./parts/strip.ts";

const box = { left: 60, top: 36, width: drawingWidth - 150, height: 170 };

/** The sharpest bend in section: thickness and radius to scale, the stretched face marked. */
export default function SmallestRadiusDrawing({ id, values, outputs, view }: DrawingProps) {
  const { thickness } = values as Values<typeof sheet.inputs>;
  const { radius } = outputs as OutputValues<typeof sheet.outputs>;
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
    <Drawing
      id={id}
      height={240}
      title="The sharpest bend for this sheet"
      description={`A section of a square bend in sheet ${sizeText(thickness, view)} thick with an inside radius of ${sizeText(radius, view)}, drawn to scale; its outer face is stretched; ${unitNote(view)}.`}
    >
      <Aside place={spot(8, 14)}>to scale, {unitNote(view)}</Aside>
      <path class="sheet" d={outline(pieces, thickness, sight)} />
      <path class="stretch" d={arcPath(centre, outer, -90, 0)} />
      <text class="stretch-text" x={away(centre, -45, outer + 12).x} y={away(centre, -45, outer + 12).y + 10}>
        stretched
      </text>
      <Line from={label} to={inside} />
      <Arrowhead tip={inside} direction={-45} />
      <text class="size big" x={label.x} y={label.y - 5} text-anchor="middle">
        R {sizeText(radius, view)}
      </text>
      <Size
        from={sight.spot(from(last.end, 0, thickness / 2))}
        to={sight.spot(from(last.end, 0, -thickness / 2))}
        off={14}
        text={`T ${sizeText(thickness, view)}`}
        outside="to"
      />
    </Drawing>
  );
}
