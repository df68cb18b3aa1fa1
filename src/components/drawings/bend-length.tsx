import type { Values } from "../../lib/inputs.ts";
import type { LengthView } from "../../lib/quantity/format.ts";
import type { OutputValues } from "../../lib/worksheet.ts";
import type sheet from "../../lib/worksheets/bend-length.ts";
import { Arrowhead, arcPath, away, Size, type Spot, spot } from "../figures/pen.tsx";
import type { StripStep } from "../figures/section.ts";
import { Aside, Drawing, type DrawingProps, drawingWidth } from "./parts/Drawing.tsx";
import { FlatStrip } from "./parts/FlatStrip.tsx";
import { angleText, sizeText, unitNote } from "./parts/sizes.ts";
import { fitInto, from, hull, outline, type Piece, thickening, walk } from "./parts/strip.ts";

interface Bend {
  readonly angle: number;
  readonly radius: number;
  readonly thickness: number;
  readonly setback: number;
  readonly allowance: number;
}

/** Where the middle of the strip crosses itself the drawing would be a tangle. */
function crosses(pieces: readonly Piece[], room: number): boolean {
  const points = pieces.flatMap(({ step, start, end }) => {
    const count = "ahead" in step ? Math.min(24, 2 + Math.floor(step.ahead / Math.max(room, 1e-6))) : 6;
    return Array.from({ length: count }, (_, index) => ({
      x: start.x + ((end.x - start.x) * index) / count,
      z: start.z + ((end.z - start.z) * index) / count,
    }));
  });
  const along = (a: number, b: number) => {
    let way = 0;
    for (let index = a; index < b; index++) {
      const here = points[index];
      const next = points[index + 1];
      if (here && next) way += Math.hypot(next.x - here.x, next.z - here.z);
    }
    return way;
  };
  return points.some((a, first) =>
    points.some((b, second) => {
      const apart = Math.hypot(a.x - b.x, a.z - b.z);
      return second > first && apart < room && along(first, second) > 4 * room;
    }),
  );
}

/** Legs and bends of the strip as drawn; a thin sheet is drawn thicker, and keeps its outside legs. */
function stepsOf(legs: readonly number[], bend: Bend, more: number, alternate: boolean): StripStep[] {
  const setback = bend.setback * more;
  const last = legs.length - 1;
  return legs.flatMap((leg, index): StripStep[] => {
    const ends = (index > 0 ? 1 : 0) + (index < last ? 1 : 0);
    const straight = { ahead: Math.max(leg - ends * setback, 0.02 * leg) };
    const turn = { turn: alternate && index % 2 === 1 ? -bend.angle : bend.angle, radius: bend.radius * more };
    return index < last ? [straight, turn] : [straight];
  });
}

const box = { left: 44, top: 30, width: drawingWidth - 88, height: 150 };

export default function BendLengthDrawing({ id, values, outputs, view }: DrawingProps) {
  const { thickness, radius, angle, legs } = values as Values<typeof sheet.inputs>;
  const { blank, allowance, setback } = outputs as OutputValues<typeof sheet.outputs>;
  if (blank === null || allowance === null || setback === null) return null;
  const bend = { angle, radius, thickness, setback, allowance };

  // Drawn first with the true thickness to find the scale, then again with one that can be seen.
  const flatAhead = (pieces: readonly Piece[], more: number) => {
    const first = pieces[1]?.start;
    const ahead = allowance * more + Math.max((legs[1] ?? 0) - setback * more, 0);
    return first ? { start: first, end: from(first, ahead) } : undefined;
  };
  const shape = (more: number) => {
    const along = walk(stepsOf(legs, bend, more, false), thickness * more);
    const pieces =
      legs.length > 3 && crosses(along, 3 * thickness * more) ? walk(stepsOf(legs, bend, more, true), thickness * more) : along;
    const flat = flatAhead(pieces, more);
    return { pieces, flat, sight: fitInto([...hull(pieces, thickness * more), ...(flat ? [flat.end] : [])], box) };
  };
  const more = thickening(thickness, shape(1).sight.scale);
  const { pieces, flat, sight } = shape(more);
  const drawn = thickness * more;
  const sizes = legs.length <= 6;
  const straight = legs.map((leg, index) => leg - (index === 0 || index === legs.length - 1 ? 1 : 2) * setback);

  return (
    <Drawing
      id={id}
      height={320}
      title="The bent strip and its blank"
      description={`A strip with outside legs of ${legs.map((leg) => sizeText(leg, view)).join(", ")}, each bend turned ${angleText(angle)} from flat about an inside radius of ${sizeText(radius, view)}, and below it the blank, ${sizeText(blank, view)} long. ${unitNote(view)}.`}
    >
      {flat && <FlatGhost start={sight.spot(from(flat.start, 0, drawn / 2))} end={sight.spot(from(flat.end, 0, -drawn / 2))} />}
      <path class="sheet" d={outline(pieces, drawn, sight)} />
      {sizes &&
        legs.map((leg, index) => (
          <LegSize
            key={index}
            pieces={pieces}
            index={index}
            leg={leg}
            setback={setback * more}
            drawn={drawn}
            view={view}
            put={sight.spot}
          />
        ))}
      {flat && <Turned start={sight.spot(pivot(flat.start, angle, bend, more))} angle={angle} />}
      <Aside place={spot(8, 14)}>{unitNote(view)}</Aside>
      {more > 1.05 && (
        <Aside place={spot(drawingWidth - 8, 14)} end>
          sheet drawn thicker
        </Aside>
      )}
      <FlatStrip top={240} total={blank} straight={straight} bend={allowance} view={view} />
    </Drawing>
  );
}

/** Where the flat and the turned leg meet, or for bends far past square the place on the flat below the bend. */
function pivot(start: Piece["start"], angle: number, { radius, thickness }: Bend, more: number) {
  const middle = (radius + thickness / 2) * more;
  return from(start, angle <= 120 ? middle * Math.tan((angle * Math.PI) / 360) : middle);
}

/** The second leg before it was bent: ISO 128 draws outlines before forming long-dashed, double-dotted and narrow. */
function FlatGhost({ start, end }: { start: Spot; end: Spot }) {
  return <path class="before" d={`M${start.x} ${start.y}L${end.x} ${start.y}L${end.x} ${end.y}L${start.x} ${end.y}`} />;
}

function Turned({ start, angle }: { start: Spot; angle: number }) {
  const radius = 42;
  const lean = ((7 / radius) * 90) / Math.PI;
  const place = away(start, Math.min(angle / 2, 70), radius + 8);
  return (
    <g>
      <path class="motion-line" d={arcPath(start, radius, 0, angle)} />
      <Arrowhead tip={away(start, angle, radius)} direction={angle + 90 - lean} kind="arrow-motion" />
      <text class="size mark-text big" x={place.x} y={place.y + 4}>
        {angleText(angle)}
      </text>
      <text class="mark-text" x={place.x} y={place.y + 19}>
        from flat
      </text>
    </g>
  );
}

interface LegSizeProps {
  readonly pieces: readonly Piece[];
  readonly index: number;
  readonly leg: number;
  readonly setback: number;
  readonly drawn: number;
  readonly view: LengthView;
  put(point: { x: number; z: number }): Spot;
}

/** An outside leg, measured along its outer face to the apex or the outermost point. */
function LegSize({ pieces, index, leg, setback, drawn, view, put }: LegSizeProps) {
  const straight = pieces[2 * index];
  const before = pieces[2 * index - 1];
  const after = pieces[2 * index + 1];
  if (!straight) return null;
  const turn = [after, before].flatMap((piece) => (piece && "turn" in piece.step ? [piece.step.turn] : []))[0] ?? 1;
  // The outer face is away from the centre of the bend.
  const side = turn > 0 ? -1 : 1;
  const a = put(from(straight.start, before ? -setback : 0, (side * drawn) / 2));
  const b = put(from(straight.end, after ? setback : 0, (side * drawn) / 2));
  if (Math.hypot(b.x - a.x, b.y - a.y) < 16) return null;
  return <Size from={a} to={b} off={side * 17} text={sizeText(leg, view)} />;
}
