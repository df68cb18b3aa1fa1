import { gapTo, isInside, type Obstacle, type Polygon, segmentToPolygon } from "./distance.ts";
import type { Four } from "./pose.ts";
import { closeTo, enough } from "./sweep.ts";
import type { LegPose } from "./tools.ts";

/** Sides and diagonals of a four-cornered region, as places of their ends among its eight numbers. */
const lines = [0, 2, 2, 4, 4, 6, 6, 0, 0, 4, 2, 6] as const;

/** Sides and diagonals of a four-cornered region. */
export function linesOf(region: Polygon): Four[] {
  const found: Four[] = [];
  for (let at = 0; at < lines.length; at += 2) {
    const [a, b] = [lines[at] as number, lines[at + 1] as number];
    found.push([region[a], region[a + 1], region[b], region[b + 1]] as unknown as Four);
  }
  return found;
}

function isClockwise(region: Polygon): boolean {
  const [ax, az, bx, bz, cx, cz] = region as unknown as readonly [number, number, number, number, number, number];
  return (bx - ax) * (cz - az) - (bz - az) * (cx - ax) < 0;
}

function reversed(region: Polygon): Polygon {
  const turned = new Float64Array(region.length);
  for (let at = 0; at < region.length; at += 2) {
    turned[at] = region[region.length - 2 - at] as number;
    turned[at + 1] = region[region.length - 1 - at] as number;
  }
  return turned;
}

const anticlockwise = (region: Polygon) => (isClockwise(region) ? reversed(region) : region);

/** Distance of a four-cornered region from a tool, or `limit` when it is at least that; 0 when they meet. */
export function regionGap(tool: Obstacle, region: Polygon, limit: number): number {
  let least = limit;
  for (let at = 0; at < lines.length; at += 2) {
    const [a, b] = [lines[at] as number, lines[at + 1] as number];
    const gap = gapTo(tool, region[a] as number, region[a + 1] as number, region[b] as number, region[b + 1] as number, least);
    if (gap < least) least = gap;
    if (least <= 0) return 0;
  }
  // A tool that lies wholly inside the region touches none of its lines.
  return isInside(anticlockwise(region), tool.polygon[0] as number, tool.polygon[1] as number) ? 0 : least;
}

/** Least shift that parts two convex polygons that meet [mm]. */
function depth(a: Polygon, b: Polygon): number {
  let least = Number.POSITIVE_INFINITY;
  for (const polygon of [a, b])
    for (let at = 0; at < polygon.length; at += 2) {
      const next = (at + 2) % polygon.length;
      const dx = (polygon[next] as number) - (polygon[at] as number);
      const dz = (polygon[next + 1] as number) - (polygon[at + 1] as number);
      const length = Math.hypot(dx, dz);
      if (length < closeTo) continue;
      const extent = (of: Polygon) => {
        let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
        for (let k = 0; k < of.length; k += 2) {
          const value = ((of[k] as number) * dz - (of[k + 1] as number) * dx) / length;
          low = Math.min(low, value);
          high = Math.max(high, value);
        }
        return [low, high] as const;
      };
      const [a0, a1] = extent(a);
      const [b0, b1] = extent(b);
      least = Math.min(least, a1 - b0, b1 - a0);
    }
  return Math.max(0, least);
}

/** How deep an edge of a side may be in a tool at a corner before it counts [mm]: a side that stands gives way by that much. */
const cornerTouch = 0.5;

/** Whether a region is deeper in a tool than a corner may be. */
export const isDeepIn = (tool: Obstacle, region: Polygon) =>
  regionGap(tool, region, enough) <= 0 && depth(tool.polygon, region) > cornerTouch;

/** Whether a segment carried along a way keeps a distance from a tool. */
export function staysClear(tool: Obstacle, [ax, az, bx, bz]: Four, moveX: number, moveZ: number, keep: number): boolean {
  const [x0, x1] = [Math.min(ax, bx) + Math.min(0, moveX), Math.max(ax, bx) + Math.max(0, moveX)];
  const [z0, z1] = [Math.min(az, bz) + Math.min(0, moveZ), Math.max(az, bz) + Math.max(0, moveZ)];
  if (x0 > tool.x1 + keep || x1 < tool.x0 - keep || z0 > tool.z1 + keep || z1 < tool.z0 - keep) return true;
  const { polygon } = tool;
  if (segmentToPolygon(polygon, ax, az, bx, bz) < keep) return false;
  if (segmentToPolygon(polygon, ax + moveX, az + moveZ, bx + moveX, bz + moveZ) < keep) return false;
  if (segmentToPolygon(polygon, ax, az, ax + moveX, az + moveZ) < keep) return false;
  if (segmentToPolygon(polygon, bx, bz, bx + moveX, bz + moveZ) < keep) return false;
  const swept = anticlockwise(Float64Array.of(ax, az, bx, bz, bx + moveX, bz + moveZ, ax + moveX, az + moveZ));
  return !isInside(swept, polygon[0] as number, polygon[1] as number);
}

/** A tool turned and moved. */
export function turnedTool(tool: Obstacle, { x, z, cos, sin }: LegPose): Obstacle {
  const polygon = new Float64Array(tool.polygon.length);
  let [x0, z0] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  let [x1, z1] = [Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let at = 0; at < polygon.length; at += 2) {
    const [u, h] = [tool.polygon[at] as number, tool.polygon[at + 1] as number];
    const px = x + u * cos - h * sin;
    const pz = z + u * sin + h * cos;
    polygon[at] = px;
    polygon[at + 1] = pz;
    [x0, x1, z0, z1] = [Math.min(x0, px), Math.max(x1, px), Math.min(z0, pz), Math.max(z1, pz)];
  }
  return { polygon, x0, z0, x1, z1 };
}
