import { arcPath, at, type Spot, spot } from "../../figures/pen.tsx";
import type { StripStep } from "../../figures/section.ts";

/** A point of the strip seen from its edge [mm]; z grows upwards. */
export interface Point {
  readonly x: number;
  readonly z: number;
}

/** A place on the middle of the thickness, and where the strip is heading there [deg], anticlockwise from the right. */
export interface Place extends Point {
  readonly heading: number;
}

export interface Piece {
  readonly step: StripStep;
  readonly start: Place;
  readonly end: Place;
  /** Of a bend. */
  readonly centre?: Point;
}

const rad = (degrees: number) => (degrees * Math.PI) / 180;

/** The point at a distance ahead of a place, and to the left of it. */
export function from({ x, z, heading }: Place, ahead: number, left = 0): Place {
  const cos = Math.cos(rad(heading));
  const sin = Math.sin(rad(heading));
  return { x: x + ahead * cos - left * sin, z: z + ahead * sin + left * cos, heading };
}

/** Follows a strip along the middle of its thickness; a positive turn is anticlockwise. */
export function walk(steps: readonly StripStep[], thickness: number, first: Place = { x: 0, z: 0, heading: 0 }): Piece[] {
  let start = first;
  return steps.map((step) => {
    if ("ahead" in step) {
      const piece = { step, start, end: from(start, step.ahead) };
      start = piece.end;
      return piece;
    }
    const side = Math.sign(step.turn);
    const middle = step.radius + thickness / 2;
    const centre = from(start, 0, side * middle);
    const heading = start.heading + step.turn;
    const end = { ...from({ ...centre, heading }, 0, -side * middle), heading };
    const piece = { step, start, end, centre: { x: centre.x, z: centre.z } };
    start = end;
    return piece;
  });
}

/** How far each face of a bend is from its centre: the left one of the way, then the right one. */
function radii({ turn, radius }: { turn: number; radius: number }, thickness: number): [number, number] {
  return turn > 0 ? [radius, radius + thickness] : [radius + thickness, radius];
}

/** Points that hold the whole strip between them. */
export function hull(pieces: readonly Piece[], thickness: number): Point[] {
  const half = thickness / 2;
  return pieces.flatMap(({ step, start, end, centre }) => {
    const ends = [start, end].flatMap((place) => [from(place, 0, half), from(place, 0, -half)]);
    if ("ahead" in step || !centre) return ends;
    const outer = step.radius + thickness;
    const first = start.heading - Math.sign(step.turn) * 90;
    const sweep = Array.from({ length: 13 }, (_, index) => rad(first + (step.turn * index) / 12));
    return [...ends, ...sweep.map((angle) => ({ x: centre.x + outer * Math.cos(angle), z: centre.z + outer * Math.sin(angle) }))];
  });
}

/** How millimetres get onto the paper. */
export interface Sight {
  readonly scale: number;
  spot(point: Point): Spot;
}

interface Box {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** The largest scale at which all points are in a box, in the middle of it. */
export function fitInto(points: readonly Point[], box: Box): Sight {
  const xs = points.map(({ x }) => x);
  const zs = points.map(({ z }) => z);
  const [left, right, low, high] = [Math.min(...xs), Math.max(...xs), Math.min(...zs), Math.max(...zs)];
  const scale = Math.min(box.width / Math.max(right - left, 1e-9), box.height / Math.max(high - low, 1e-9));
  const x0 = box.left + (box.width - scale * (right - left)) / 2;
  const y0 = box.top + (box.height - scale * (high - low)) / 2;
  return { scale, spot: ({ x, z }) => spot(x0 + scale * (x - left), y0 + scale * (high - z)) };
}

/** Closed outline of the strip. */
export function outline(pieces: readonly Piece[], thickness: number, { scale, spot: put }: Sight): string {
  const half = thickness / 2;
  const side = (left: boolean) =>
    pieces.map(({ step, start, end, centre }) => {
      const to = at(put(from(end, 0, left ? half : -half)));
      if ("ahead" in step || !centre) return { there: `L${to}`, back: `L${at(put(from(start, 0, left ? half : -half)))}` };
      const radius = scale * radii(step, thickness)[left ? 0 : 1];
      const first = start.heading - Math.sign(step.turn) * 90;
      const last = first + step.turn;
      return { there: arcPath(put(centre), radius, first, last, "L"), back: arcPath(put(centre), radius, last, first, "L") };
    });
  const begin = pieces[0]?.start;
  const finish = pieces.at(-1)?.end;
  if (!begin || !finish) return "";
  const there = side(false).map((piece) => piece.there);
  const back = side(true).map((piece) => piece.back);
  return `M${at(put(from(begin, 0, -half)))}${there.join("")}L${at(put(from(finish, 0, half)))}${back.reverse().join("")}Z`;
}

/**
 * How many times thicker a thin sheet is drawn so that it can be seen as a sheet and not as a line.
 * @param least - thickness on the paper, in units of the drawing
 */
export function thickening(thickness: number, scale: number, least = 4): number {
  return Math.max(1, least / (thickness * scale));
}
