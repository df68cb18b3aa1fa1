import type { FlatLayout } from "./flatten.ts";
import { type Facet, foldInSpace, type Place } from "./fold-in-space.ts";

const minus = (a: Place, b: Place): Place => ({ x: a.x - b.x, y: a.y - b.y, z: a.z - b.z });
const dot = (a: Place, b: Place) => a.x * b.x + a.y * b.y + a.z * b.z;
const crossed = (a: Place, b: Place): Place => ({
  x: a.y * b.z - a.z * b.y,
  y: a.z * b.x - a.x * b.z,
  z: a.x * b.y - a.y * b.x,
});

/**
 * How deep a place lies inside a straight, convex panel of the folded sheet.
 *
 * @param place - in space [mm]
 * @param facet - the panel, by its bench-side face
 * @param thickness - T [mm]
 * @returns depth [mm] to its nearest face or edge; 0 outside it
 */
export function buried(place: Place, facet: Facet, thickness: number): number {
  const [origin, second, third] = facet.points;
  if (!origin || !second || !third) return 0;
  const height = dot(minus(place, origin), facet.through);
  let depth = Math.min(height, thickness - height);
  const turn = Math.sign(dot(crossed(minus(second, origin), minus(third, origin)), facet.through));
  facet.points.forEach((from, index) => {
    if (depth <= 0) return;
    const edge = minus(facet.points[(index + 1) % facet.points.length] as Place, from);
    const length = Math.hypot(edge.x, edge.y, edge.z);
    if (length < 1e-9) return;
    depth = Math.min(depth, (turn * dot(minus(place, from), crossed(facet.through, edge))) / length);
  });
  return Math.max(0, depth);
}

/** Corners, and places along every edge, on both faces and between them. */
function placesOn({ points, through }: Facet, thickness: number): Place[] {
  return points.flatMap((point, index) => {
    const next = points[(index + 1) % points.length] as Place;
    return [0, 0.25, 0.5, 0.75].flatMap((share) =>
      [0, 0.5, 1].map((off) => ({
        x: point.x + share * (next.x - point.x) + off * thickness * through.x,
        y: point.y + share * (next.y - point.y) + off * thickness * through.y,
        z: point.z + share * (next.z - point.z) + off * thickness * through.z,
      })),
    );
  });
}

export interface Collision {
  /** How deep one panel lies in the other [mm]. */
  readonly depth: number;
  readonly panels: readonly [string, string];
}

/**
 * Where the finished part would run into itself.
 *
 * @param layout - the flat layout
 * @param concerns - which pairs of panels are looked at; all when left out
 * @returns the deepest collision of two straight panels that share no bend [mm]; undefined when all are clear of each other
 * @remarks Edges of panels are tried at quarters against the other panels; folded edges and tabs are not looked at.
 */
export function collision(
  layout: FlatLayout,
  concerns: (one: string, other: string) => boolean = () => true,
): Collision | undefined {
  const { thickness } = layout.part;
  const straight = new Set(layout.chains.flatMap(({ panels }) => panels.map(({ id }) => id)));
  const facets = foldInSpace(layout).filter(({ kind, id }) => kind === "panel" && straight.has(id));
  const next = (one: string, other: string) =>
    layout.chains.some(({ panels }) => {
      const [a, b] = [one, other].map((id) => panels.findIndex((panel) => panel.id === id)) as [number, number];
      return a !== -1 && b !== -1 && Math.abs(a - b) <= 1;
    });
  let worst: Collision | undefined;
  for (const one of facets) {
    const places = placesOn(one, thickness);
    for (const other of facets) {
      if (next(one.id, other.id) || !concerns(one.id, other.id)) continue;
      const depth = Math.max(...places.map((place) => buried(place, other, thickness)));
      if (depth > (worst?.depth ?? 0)) worst = { depth, panels: [one.id, other.id] };
    }
  }
  return worst;
}
