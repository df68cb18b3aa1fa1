/** A place on the blank [mm]. */
export interface FlatPoint {
  readonly x: number;
  readonly y: number;
}

export interface Segment {
  readonly a: FlatPoint;
  readonly b: FlatPoint;
}

const cross = (a: FlatPoint, b: FlatPoint, c: FlatPoint) => (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);

/** Sides of a closed polygon. */
export function sidesOf(polygon: readonly FlatPoint[]): readonly Segment[] {
  return polygon.map((a, index) => ({ a, b: polygon[(index + 1) % polygon.length] as FlatPoint }));
}

/** Area of a closed polygon [mm²], positive when it runs anticlockwise. */
export function area(polygon: readonly FlatPoint[]): number {
  return sidesOf(polygon).reduce((sum, { a, b }) => sum + (a.x * b.y - b.x * a.y) / 2, 0);
}

/** Whether a point lies inside a closed polygon; on its edge counts as either. */
export function inside(polygon: readonly FlatPoint[], point: FlatPoint): boolean {
  let within = false;
  for (const { a, b } of sidesOf(polygon))
    if (a.y > point.y !== b.y > point.y && point.x < a.x + ((point.y - a.y) / (b.y - a.y)) * (b.x - a.x)) within = !within;
  return within;
}

/** Distance of a point from a segment [mm]. */
export function toSegment(point: FlatPoint, { a, b }: Segment): number {
  const length = (b.x - a.x) ** 2 + (b.y - a.y) ** 2;
  const share = length === 0 ? 0 : ((point.x - a.x) * (b.x - a.x) + (point.y - a.y) * (b.y - a.y)) / length;
  const at = Math.min(1, Math.max(0, share));
  return Math.hypot(point.x - a.x - at * (b.x - a.x), point.y - a.y - at * (b.y - a.y));
}

/** Distance of a point from the edge of a closed polygon [mm], negative outside it. */
export function depthIn(polygon: readonly FlatPoint[], point: FlatPoint): number {
  const distance = Math.min(...sidesOf(polygon).map((side) => toSegment(point, side)));
  return inside(polygon, point) ? distance : -distance;
}

/** Whether two segments cross at a point inside both. */
function cut(one: Segment, other: Segment): boolean {
  const closeTo = 1e-9;
  const d1 = cross(one.a, one.b, other.a);
  const d2 = cross(one.a, one.b, other.b);
  const d3 = cross(other.a, other.b, one.a);
  const d4 = cross(other.a, other.b, one.b);
  return d1 * d2 < -closeTo && d3 * d4 < -closeTo;
}

/** Where the edge of a polygon crosses itself: the metal would have to be there twice. */
export function overlaps(polygon: readonly FlatPoint[]): readonly FlatPoint[] {
  const sides = sidesOf(polygon);
  const found: FlatPoint[] = [];
  for (let i = 0; i < sides.length; i += 1)
    for (let j = i + 2; j < sides.length; j += 1) {
      if (i === 0 && j === sides.length - 1) continue;
      const one = sides[i] as Segment;
      const other = sides[j] as Segment;
      if (cut(one, other)) found.push({ x: (one.a.x + one.b.x) / 2, y: (one.a.y + one.b.y) / 2 });
    }
  return found;
}

/** Share of its width that the middle of a real strip lies within the metal; the middle itself would have half. */
const stripDepth = 0.4;

/**
 * Narrowest strip of metal between two edges of a polygon that do not meet [mm]; undefined when there is none.
 * A strip lies between a corner and an edge across metal, so corners are held against every edge they do not belong to.
 */
export function narrowest(polygon: readonly FlatPoint[]): { readonly width: number; readonly at: FlatPoint } | undefined {
  const sides = sidesOf(polygon);
  let best: { width: number; at: FlatPoint } | undefined;
  polygon.forEach((point, corner) => {
    sides.forEach((side, index) => {
      if (index === corner || (index + 1) % polygon.length === corner) return;
      const width = toSegment(point, side);
      if (best && width >= best.width) return;
      const length = (side.b.x - side.a.x) ** 2 + (side.b.y - side.a.y) ** 2;
      const share =
        length === 0 ? 0 : ((point.x - side.a.x) * (side.b.x - side.a.x) + (point.y - side.a.y) * (side.b.y - side.a.y)) / length;
      const at = Math.min(1, Math.max(0, share));
      const foot = { x: side.a.x + at * (side.b.x - side.a.x), y: side.a.y + at * (side.b.y - side.a.y) };
      // Across a notch the space between is air, and along an edge it is no strip: the middle of a strip lies deep in metal.
      const middle = { x: (point.x + foot.x) / 2, y: (point.y + foot.y) / 2 };
      if (depthIn(polygon, middle) > stripDepth * width) best = { width, at: point };
    });
  });
  return best;
}

/**
 * The part of a polygon on one side of a line.
 * @param within - 0 on the line, positive on the side that is kept, linear in between
 */
export function clipTo(polygon: readonly FlatPoint[], within: (point: FlatPoint) => number): readonly FlatPoint[] {
  return sidesOf(polygon).flatMap(({ a, b }) => {
    const [from, to] = [within(a), within(b)];
    const share = from / (from - to);
    const crossing = { x: a.x + share * (b.x - a.x), y: a.y + share * (b.y - a.y) };
    return [...(from >= 0 ? [a] : []), ...(from * to < 0 ? [crossing] : [])];
  });
}
