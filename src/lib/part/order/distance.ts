/**
 * Segments in a row: x and z of each start and end, four numbers a segment.
 * Polygons: x and z of each corner, convex, anticlockwise, two numbers a corner.
 */
export type Segments = Float64Array;
export type Polygon = Float64Array;

/** Distance of a point from a segment. */
export function pointToSegment(px: number, pz: number, ax: number, az: number, bx: number, bz: number): number {
  const dx = bx - ax;
  const dz = bz - az;
  const length = dx * dx + dz * dz;
  let share = length === 0 ? 0 : ((px - ax) * dx + (pz - az) * dz) / length;
  if (share < 0) share = 0;
  else if (share > 1) share = 1;
  const x = px - ax - share * dx;
  const z = pz - az - share * dz;
  return Math.sqrt(x * x + z * z);
}

/** Distance of two segments; 0 when they cross. */
export function segmentToSegment(
  ax: number,
  az: number,
  bx: number,
  bz: number,
  cx: number,
  cz: number,
  dx: number,
  dz: number,
): number {
  const s1 = (bx - ax) * (cz - az) - (bz - az) * (cx - ax);
  const s2 = (bx - ax) * (dz - az) - (bz - az) * (dx - ax);
  const s3 = (dx - cx) * (az - cz) - (dz - cz) * (ax - cx);
  const s4 = (dx - cx) * (bz - cz) - (dz - cz) * (bx - cx);
  if (s1 * s2 < 0 && s3 * s4 < 0) return 0;
  return Math.min(
    pointToSegment(ax, az, cx, cz, dx, dz),
    pointToSegment(bx, bz, cx, cz, dx, dz),
    pointToSegment(cx, cz, ax, az, bx, bz),
    pointToSegment(dx, dz, ax, az, bx, bz),
  );
}

/** Whether a point lies in a convex polygon, its edge included. */
export function isInside(polygon: Polygon, px: number, pz: number): boolean {
  const size = polygon.length;
  let ax = polygon[size - 2] as number;
  let az = polygon[size - 1] as number;
  for (let at = 0; at < size; at += 2) {
    const bx = polygon[at] as number;
    const bz = polygon[at + 1] as number;
    if ((bx - ax) * (pz - az) - (bz - az) * (px - ax) < 0) return false;
    ax = bx;
    az = bz;
  }
  return true;
}

/** Distance of a segment from a convex polygon; 0 when they meet. */
export function segmentToPolygon(polygon: Polygon, px: number, pz: number, qx: number, qz: number): number {
  if (isInside(polygon, px, pz)) return 0;
  const size = polygon.length;
  let least = Number.POSITIVE_INFINITY;
  let ax = polygon[size - 2] as number;
  let az = polygon[size - 1] as number;
  for (let at = 0; at < size; at += 2) {
    const bx = polygon[at] as number;
    const bz = polygon[at + 1] as number;
    const distance = segmentToSegment(px, pz, qx, qz, ax, az, bx, bz);
    if (distance < least) least = distance;
    ax = bx;
    az = bz;
  }
  return least;
}

/** Box round a polygon: least x, least z, largest x, largest z. */
export function bounds(polygon: Polygon): readonly [number, number, number, number] {
  let [x0, z0, x1, z1] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let at = 0; at < polygon.length; at += 2) {
    x0 = Math.min(x0, polygon[at] as number);
    x1 = Math.max(x1, polygon[at] as number);
    z0 = Math.min(z0, polygon[at + 1] as number);
    z1 = Math.max(z1, polygon[at + 1] as number);
  }
  return [x0, z0, x1, z1];
}

/** A polygon with its box, so that what is far from it is told at once. */
export interface Obstacle {
  readonly polygon: Polygon;
  readonly x0: number;
  readonly z0: number;
  readonly x1: number;
  readonly z1: number;
}

/** A convex polygon, corners anticlockwise, with the box round it. */
export function obstacle(corners: readonly (readonly [number, number])[]): Obstacle {
  const polygon = Float64Array.from(corners.flat());
  const [x0, z0, x1, z1] = bounds(polygon);
  return { polygon, x0, z0, x1, z1 };
}

/** Distance of a segment from an obstacle, or `enough` when it is at least that. */
export function gapTo(tool: Obstacle, ax: number, az: number, bx: number, bz: number, enough: number): number {
  const dx = Math.max(tool.x0 - Math.max(ax, bx), Math.min(ax, bx) - tool.x1, 0);
  const dz = Math.max(tool.z0 - Math.max(az, bz), Math.min(az, bz) - tool.z1, 0);
  if (dx * dx + dz * dz >= enough * enough) return enough;
  return Math.min(enough, segmentToPolygon(tool.polygon, ax, az, bx, bz));
}
