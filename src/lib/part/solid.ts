import type { FlatLayout, FlatPoint } from "./flatten.ts";
import { type FlatFacet, flatFacets, lifting, type Place, type Turned } from "./fold-in-space.ts";
import { clipTo, inside, type Segment, sidesOf } from "./geometry.ts";
import { holeEdge } from "./hole-edge.ts";

/**
 * What a side of a facet is: an edge of the sheet, the middle of a bend, or only where two facets of it meet.
 * A `cut` is where one facet was parted for the order of painting, and is nothing to be seen.
 */
export type SideKind = "edge" | "fold" | "seam" | "cut";

/** A facet of the blank with what is known of its sides; the same however far it is folded. */
export interface SolidFacet extends FlatFacet {
  /** What the side from each corner to the next is. */
  readonly sides: readonly SideKind[];
  /** Facet on the other side of each seam or fold. */
  readonly beyond: readonly (number | undefined)[];
  /** Holes and reliefs, as far as they lie in it. */
  readonly holes: readonly SolidHole[];
}

export interface SolidHole {
  readonly ring: readonly FlatPoint[];
  /** Which sides of the ring are its own edge, and not where the facet ends. */
  readonly own: readonly boolean[];
}

/** The sheet, ready to be folded. */
export interface Solid {
  readonly layout: FlatLayout;
  readonly facets: readonly SolidFacet[];
}

const closeTo = 1e-6;

interface Lying {
  readonly facet: number;
  readonly low: number;
  readonly high: number;
}

/** The line a level or upright side lies on; others meet nothing. */
function lineOf({ a, b }: Segment): { readonly key: string; readonly low: number; readonly high: number } | undefined {
  const key = (axis: string, at: number) => `${axis} ${Math.round(at / closeTo / 10)}`;
  if (Math.abs(a.x - b.x) < closeTo) return { key: key("x", a.x), low: Math.min(a.y, b.y), high: Math.max(a.y, b.y) };
  if (Math.abs(a.y - b.y) < closeTo) return { key: key("y", a.y), low: Math.min(a.x, b.x), high: Math.max(a.x, b.x) };
  return undefined;
}

/** Part of a segment that lies in a convex polygon, as shares of its length. */
function withinConvex({ a, b }: Segment, polygon: readonly FlatPoint[]): readonly [number, number] | undefined {
  let [low, high] = [0, 1];
  for (const side of sidesOf(polygon)) {
    const depth = (p: FlatPoint) => (side.b.x - side.a.x) * (p.y - side.a.y) - (side.b.y - side.a.y) * (p.x - side.a.x);
    const [from, to] = [depth(a), depth(b)];
    if (from < 0 && to < 0) return undefined;
    if (from < 0) low = Math.max(low, from / (from - to));
    if (to < 0) high = Math.min(high, from / (from - to));
  }
  return low < high ? [low, high] : undefined;
}

/** Reliefs as they are cut, anticlockwise. */
function reliefRings(layout: FlatLayout): readonly (readonly FlatPoint[])[] {
  return layout.corners.flatMap(({ x, y, relief }) => {
    if (!relief) return [];
    const half = relief.size / 2;
    if (relief.kind === "notch")
      return [
        [
          { x: x - half, y: y - half },
          { x: x + half, y: y - half },
          { x: x + half, y: y + half },
          { x: x - half, y: y + half },
        ],
      ];
    const corners = 24;
    return [
      Array.from({ length: corners }, (_, index) => {
        const angle = (index * 2 * Math.PI) / corners;
        return { x: x + half * Math.cos(angle), y: y + half * Math.sin(angle) };
      }),
    ];
  });
}

interface Box {
  readonly x: readonly [number, number];
  readonly y: readonly [number, number];
}

function boxOf(points: readonly FlatPoint[]): Box {
  const xs = points.map(({ x }) => x);
  const ys = points.map(({ y }) => y);
  return { x: [Math.min(...xs), Math.max(...xs)], y: [Math.min(...ys), Math.max(...ys)] };
}
const apart = (a: Box, b: Box) => a.x[1] <= b.x[0] || b.x[1] <= a.x[0] || a.y[1] <= b.y[0] || b.y[1] <= a.y[0];

function holeIn(ring: readonly FlatPoint[], polygon: readonly FlatPoint[]): SolidHole | undefined {
  if (ring.every((point) => inside(polygon, point))) return { ring, own: ring.map(() => true) };
  // Facets are convex but for mitred ends, where no hole is.
  const turn = Math.sign(sidesOf(polygon).reduce((sum, { a, b }) => sum + a.x * b.y - b.x * a.y, 0));
  const borders = sidesOf(polygon).map(({ a, b }) => {
    const length = turn * Math.hypot(b.x - a.x, b.y - a.y);
    return (p: FlatPoint) => ((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x)) / length;
  });
  const kept = borders.reduce((rest: readonly FlatPoint[], within) => (rest.length > 2 ? clipTo(rest, within) : []), ring);
  if (kept.length < 3) return undefined;
  const own = sidesOf(kept).map(
    ({ a, b }) => !borders.some((within) => Math.abs(within(a)) < closeTo && Math.abs(within(b)) < closeTo),
  );
  return { ring: kept, own };
}

/**
 * The sheet as facets whose sides, neighbours and holes are known.
 *
 * @param layout - the flat layout
 * @returns what `poseOf` folds; worth keeping while only the fold or the view changes
 */
export function solidOf(layout: FlatLayout): Solid {
  const facets = flatFacets(layout);
  const lines = new Map<string, Lying[]>();
  facets.forEach(({ polygon }, facet) => {
    for (const side of sidesOf(polygon)) {
      const line = lineOf(side);
      if (!line) continue;
      const lying = lines.get(line.key) ?? [];
      lines.set(line.key, [...lying, { facet, low: line.low, high: line.high }]);
    }
  });
  const reliefs = reliefRings(layout);
  const rings = [
    ...layout.holes.map((hole) => holeEdge(hole).map(({ x, y }) => ({ x: hole.flatX + x, y: hole.flatY + y }))),
    ...reliefs,
  ].map((ring) => ({ ring, box: boxOf(ring) }));
  const bendLines = new Set([
    ...layout.chains.flatMap(({ axis, bends, edgeLines }) =>
      [...bends, ...edgeLines].map(({ line }) => lineOf(levelAt(axis === "x" ? "x" : "y", line))?.key),
    ),
    ...layout.tabs.map(({ axis, line }) => lineOf(levelAt(axis, line))?.key),
  ]);

  return {
    layout,
    facets: facets.map((facet, own): SolidFacet => {
      const polygon: FlatPoint[] = [];
      const sides: SideKind[] = [];
      const beyond: (number | undefined)[] = [];
      for (const side of sidesOf(facet.polygon)) {
        const { a, b } = side;
        const length = Math.hypot(b.x - a.x, b.y - a.y);
        if (length < closeTo) continue;
        const line = lineOf(side);
        const level = Math.abs(a.y - b.y) < closeTo;
        const [start, end] = level ? [a.x, b.x] : [a.y, b.y];
        const share = (at: number) => Math.min(1, Math.max(0, (at - start) / (end - start)));
        const met = (line ? (lines.get(line.key) ?? []) : []).filter(
          ({ facet: other, low, high }) =>
            other !== own && Math.min(high, Math.max(start, end)) - Math.max(low, Math.min(start, end)) > closeTo,
        );
        const gone = reliefs.flatMap((ring) => {
          const part = withinConvex(side, ring);
          return part ? [part] : [];
        });
        const cuts = [0, ...met.flatMap(({ low, high }) => [share(low), share(high)]), ...gone.flat(), 1]
          .toSorted((one, other) => one - other)
          .filter((at, index, all) => index === 0 || (at - (all[index - 1] as number)) * length > closeTo);
        cuts.forEach((from, index) => {
          const to = cuts[index + 1] ?? 1;
          if ((to - from) * length <= closeTo) return;
          const middle = (from + to) / 2;
          const at = start + middle * (end - start);
          const neighbour = met.find(({ low, high }) => at > low && at < high);
          polygon.push({ x: a.x + from * (b.x - a.x), y: a.y + from * (b.y - a.y) });
          beyond.push(neighbour?.facet);
          sides.push(
            gone.some(([low, high]) => middle > low && middle < high)
              ? "cut"
              : !neighbour
                ? "edge"
                : line && bendLines.has(line.key) && facet.kind === "bend"
                  ? "fold"
                  : "seam",
          );
        });
      }
      const box = boxOf(facet.polygon);
      const holes = rings.flatMap(({ ring, box: reach }) => {
        const hole = apart(box, reach) ? undefined : holeIn(ring, facet.polygon);
        return hole ? [hole] : [];
      });
      return { ...facet, polygon, sides, beyond, holes };
    }),
  };
}

const levelAt = (axis: "x" | "y", at: number): Segment =>
  axis === "x" ? { a: { x: at, y: 0 }, b: { x: at, y: 1 } } : { a: { x: 0, y: at }, b: { x: 1, y: at } };

/** A ring of a facet in space, on both faces. */
export interface RingInSpace {
  readonly near: readonly Place[];
  readonly far: readonly Place[];
}

export interface Plane {
  /** Unit vector, from the bench-side face to the other. */
  readonly normal: Place;
  readonly offset: number;
}

/** A facet, or a part of one, folded. */
export interface Piece {
  /** Which facet of the solid it is, or is a part of. */
  readonly facet: number;
  /** Half way through the facet. */
  readonly plane: Plane;
  readonly outer: RingInSpace;
  readonly sides: readonly SideKind[];
  readonly beyond: readonly (number | undefined)[];
  readonly holes: readonly (RingInSpace & { readonly own: readonly boolean[] })[];
}

export const dot = (a: Place, b: Place) => a.x * b.x + a.y * b.y + a.z * b.z;

function planeOf({ near, far }: RingInSpace): Plane {
  // Newell's sum over all corners: no three of them have to be far apart, and small errors even out.
  let [x, y, z] = [0, 0, 0];
  near.forEach((a, index) => {
    const b = near[(index + 1) % near.length] as Place;
    x += (a.y - b.y) * (a.z + b.z);
    y += (a.z - b.z) * (a.x + b.x);
    z += (a.x - b.x) * (a.y + b.y);
  });
  const [a, b] = [near[0], far[0]] as [Place, Place];
  const through = x * (b.x - a.x) + y * (b.y - a.y) + z * (b.z - a.z);
  const length = (Math.hypot(x, y, z) || 1) * (Math.sign(through) || 1);
  const normal = { x: x / length, y: y / length, z: z / length };
  const sum = [...near, ...far].reduce((total, point) => total + dot(normal, point), 0);
  return { normal, offset: sum / (2 * near.length) };
}

/** Folds the solid; `turned` as for `foldInSpace`. */
export function poseOf({ layout, facets }: Solid, turned: Turned): readonly Piece[] {
  const lift = lifting(layout, turned);
  return facets.map((facet, index) => {
    const carry = lift(facet);
    const ring = (points: readonly FlatPoint[]): RingInSpace => {
      const places = points.map(carry);
      return { near: places.map(({ near }) => near), far: places.map(({ far }) => far) };
    };
    const outer = ring(facet.polygon);
    return {
      facet: index,
      plane: planeOf(outer),
      outer,
      sides: facet.sides,
      beyond: facet.beyond,
      holes: facet.holes.map(({ ring: points, own }) => ({ ...ring(points), own })),
    };
  });
}
