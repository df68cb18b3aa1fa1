import type { Values } from "../../lib/inputs.ts";
import type { OutputValues } from "../../lib/worksheet.ts";
import type sheet from "../../lib/worksheets/hole-place.ts";
import { useTexts } from "../../texts/context.ts";
import { holePlace } from "../../texts/en/drawings/hole-place.ts";
import { Line, Size, type Spot, spot } from "../figures/pen.tsx";
import { Aside, Drawing, type DrawingProps } from "./parts/Drawing.tsx";
import { useSizes } from "./parts/sizes.ts";

const middle = spot(180, 122);
const half = 30;
const top = 62;
const below = 24;
/** What a least distance is long on the paper; a larger one of the job is longer, up to a limit, a smaller one shorter. */
const least = 40;
const longest = 58;

/** Two lengths nearer than this are alike [mm]. */
const same = 1e-9;

/** The hole between the leg, its neighbour and the edge: each distance beside the least one. */
export default function HolePlaceDrawing({ id, values, outputs, view }: DrawingProps) {
  const texts = useTexts(holePlace);
  const { size, units } = useSizes(view);
  const { diameter, edgeDistance, holeSpacing, bendDistance } = values as Values<typeof sheet.inputs>;
  const { minEdge, minSpacing, minBend } = outputs as OutputValues<typeof sheet.outputs>;
  if (minEdge === null || minSpacing === null || minBend === null) return null;
  const drawn = (value: number | undefined, limit: number) =>
    value === undefined ? least : Math.min((least * value) / Math.max(limit, same), longest);
  const edge = middle.x + half + drawn(edgeDistance, minEdge);
  const leg = middle.x - half - drawn(bendDistance, minBend);
  const next = middle.y + half + drawn(holeSpacing, minSpacing);
  const bottom = next + below;
  const chord = Math.sqrt(half ** 2 - (half - below) ** 2);
  const told = (name: string, value: number | undefined, limit: number) =>
    value === undefined
      ? `${name} ≥ ${size(limit)}`
      : `${name} ${size(value)}, ${value < limit - same ? texts.needs : "≥"} ${size(limit)}`;
  return (
    <Drawing
      id={id}
      height={262}
      title={texts.title}
      description={texts.text(size(diameter), size(minEdge), size(minSpacing), size(minBend), units)}
    >
      <Aside place={spot(8, 14)}>{texts.fromAbove(units)}</Aside>
      <path class="sheet" d={`M${leg} ${top}H${edge}V${bottom}H${leg}Z`} />
      <path class="tool" d={`M${leg - 12} ${top}H${leg}V${bottom}H${leg - 12}Z`} />
      <circle class="outline" cx={middle.x} cy={middle.y} r={half} />
      <path class="outline" d={`M${middle.x - chord} ${bottom}A${half} ${half} 0 0 1 ${middle.x + chord} ${bottom}`} />
      <text class="size" x={middle.x} y={middle.y + 5} text-anchor="middle">
        {`d ${size(diameter)}`}
      </text>
      <Distance
        from={spot(leg, middle.y)}
        to={spot(middle.x - half, middle.y)}
        short={bendDistance !== undefined && bendDistance < minBend - same}
        text={told(texts.leg, bendDistance, minBend)}
        place={spot(8, 44)}
        anchor="start"
      />
      <Distance
        from={spot(middle.x + half, middle.y)}
        to={spot(edge, middle.y)}
        short={edgeDistance !== undefined && edgeDistance < minEdge - same}
        text={told(texts.edge, edgeDistance, minEdge)}
        place={spot(352, 44)}
        anchor="end"
      />
      <Distance
        from={spot(middle.x, next)}
        to={spot(middle.x, middle.y + half)}
        short={holeSpacing !== undefined && holeSpacing < minSpacing - same}
        text={told(texts.nextHole, holeSpacing, minSpacing)}
        place={spot(middle.x, 256)}
        anchor="middle"
      />
    </Drawing>
  );
}

interface DistanceProps {
  readonly from: Spot;
  readonly to: Spot;
  /** Less than it needs. */
  readonly short: boolean;
  readonly text: string;
  readonly place: Spot;
  readonly anchor: "start" | "middle" | "end";
}

/** A distance of the hole; in the colour of what goes wrong when it is less than it needs. */
function Distance({ from, to, short, text, place, anchor }: DistanceProps) {
  const half = spot((from.x + to.x) / 2, (from.y + to.y) / 2);
  // Too short for its arrowheads, which the line in the other colour does without.
  const room = Math.hypot(to.x - from.x, to.y - from.y) > 16;
  return (
    <g>
      {anchor !== "middle" && <Line from={spot(half.x, place.y + 6)} to={half} />}
      {short || !room ? (
        <path class={short ? "stretch" : "thin"} d={`M${from.x} ${from.y}L${to.x} ${to.y}`} />
      ) : (
        <Size from={from} to={to} off={0.1} gap={0} text="" />
      )}
      <text class={short ? "stretch-text" : "size"} x={place.x} y={place.y} text-anchor={anchor}>
        {text}
      </text>
    </g>
  );
}
