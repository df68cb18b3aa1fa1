import type { Values } from "../../lib/inputs.ts";
import type { OutputValues } from "../../lib/worksheet.ts";
import type sheet from "../../lib/worksheets/hole-circle.ts";
import { useTexts } from "../../texts/context.ts";
import { holeCircle } from "../../texts/en/drawings/hole-circle.ts";
import { away, Line, Size, spot } from "../figures/pen.tsx";
import { Aside, Drawing, type DrawingProps } from "./parts/Drawing.tsx";
import { useSizes } from "./parts/sizes.ts";

const area = { left: 66, top: 30, size: 236 };
/** Beyond this the numbers of the holes would touch. */
const mostNumbers = 24;

/** The holes on their circle, with the two datum edges where they lie near enough. */
export default function HoleCircleDrawing({ id, values, outputs, view }: DrawingProps) {
  const texts = useTexts(holeCircle);
  const { size, units } = useSizes(view);
  const { diameter, count, centreX, centreY } = values as Values<typeof sheet.inputs>;
  const { holes, chord } = outputs as OutputValues<typeof sheet.outputs>;
  const [first, second] = holes;
  if (chord === null || !first || !second) return null;
  const radius = diameter / 2;
  // Edges far away, or a circle about the datum itself, would leave no room for the circle.
  const edges = Math.min(centreX, centreY) >= radius && Math.max(centreX, centreY) <= 2.2 * diameter;
  const [x0, y0] = edges ? [0, 0] : [centreX - 1.15 * radius, centreY - 1.15 * radius];
  const shown = Math.max(centreX - x0, centreY - y0) + 1.25 * radius;
  const scale = area.size / shown;
  const left = area.left;
  const bottom = area.top + area.size;
  const put = (x: number | null, y: number | null) => spot(left + scale * ((x ?? 0) - x0), bottom - scale * ((y ?? 0) - y0));
  const centre = put(centreX, centreY);
  const one = put(first.x, first.y);
  const two = put(second.x, second.y);
  const dot = Math.max(2, Math.min(6, 0.28 * chord * scale));
  return (
    <Drawing
      id={id}
      height={326}
      title={texts.title}
      description={texts.text(count, size(diameter), size(first.x ?? 0), size(first.y ?? 0), size(chord), units)}
    >
      <Aside place={spot(8, 14)}>{edges ? units : texts.edgesNotShown(units)}</Aside>
      {edges && (
        <>
          <rect class="zone" x={left} y={area.top - 6} width={area.size + 8} height={area.size + 6} />
          <path class="outline" d={`M${left} ${area.top - 6}V${bottom}H${left + area.size + 8}`} />
        </>
      )}
      <circle class="centre" cx={centre.x} cy={centre.y} r={scale * radius} />
      <Line from={spot(centre.x - 8, centre.y)} to={spot(centre.x + 8, centre.y)} />
      <Line from={spot(centre.x, centre.y - 8)} to={spot(centre.x, centre.y + 8)} />
      {holes.map((hole, index) => {
        const place = put(hole.x, hole.y);
        const outward = (Math.atan2(centre.y - place.y, place.x - centre.x) * 180) / Math.PI;
        const label = away(centre, outward, scale * radius + dot + 9);
        return (
          <g key={index}>
            <circle class="outline" cx={place.x} cy={place.y} r={dot} />
            {count <= mostNumbers && (
              <text class="size" x={label.x} y={label.y + 4} text-anchor="middle">
                {index + 1}
              </text>
            )}
          </g>
        );
      })}
      <Line from={one} to={two} kind="sight" />
      <text class="mark-text" x={centre.x} y={centre.y - 12} text-anchor="middle">
        {texts.chord(size(chord))}
      </text>
      <text class="size" x={centre.x} y={centre.y + 24} text-anchor="middle">
        {`⌀ ${size(diameter)}`}
      </text>
      {edges && (
        <>
          <Size from={spot(left, bottom)} to={spot(two.x, bottom)} off={-16} text={size(second.x ?? 0)} />
          <Size from={spot(left, bottom)} to={spot(one.x, bottom)} off={-38} text={size(first.x ?? 0)} />
          <Size from={spot(left, bottom)} to={spot(left, one.y)} off={18} text={size(first.y ?? 0)} />
          <Size from={spot(left, bottom)} to={spot(left, two.y)} off={40} text={size(second.y ?? 0)} />
        </>
      )}
    </Drawing>
  );
}
