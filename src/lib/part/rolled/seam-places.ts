import { type FlatPoint, sidesOf } from "../geometry.ts";
import type { RolledSheet } from "./model.ts";
import type { SeamLine } from "./seam.ts";

/** A line that is marked for the seam, where it lies on the blank [mm]. */
export interface SeamPlace {
  readonly kind: SeamLine["kind"] | "seam";
  readonly side: SeamLine["side"];
  readonly what: string;
  readonly way?: SeamLine["way"];
  readonly from: FlatPoint;
  readonly to: FlatPoint;
}

const closeTo = 1e-6;

/** The stretch of a straight line that lies on the blank, the nearest to one of its places where there are several. */
function onBlank(outline: readonly FlatPoint[], near: FlatPoint, along: FlatPoint): Pick<SeamPlace, "from" | "to">[] {
  const off = ({ x, y }: FlatPoint) => (x - near.x) * along.y - (y - near.y) * along.x;
  const crossings: number[] = [];
  for (const { a, b } of sidesOf(outline)) {
    const [here, there] = [off(a), off(b)];
    if (here >= 0 === there >= 0) continue;
    const share = here / (here - there);
    crossings.push((a.x + share * (b.x - a.x) - near.x) * along.x + (a.y + share * (b.y - a.y) - near.y) * along.y);
  }
  crossings.sort((a, b) => a - b);
  // A closed edge is crossed inwards and outwards by turns.
  const stretches = crossings.flatMap((from, index) => {
    const to = crossings[index + 1];
    return index % 2 === 0 && to !== undefined ? [{ from, to }] : [];
  });
  const away = ({ from, to }: { from: number; to: number }) => Math.max(0, from, -to);
  const [nearest] = stretches.toSorted((a, b) => away(a) - away(b));
  const at = (distance: number): FlatPoint => ({ x: near.x + distance * along.x, y: near.y + distance * along.y });
  return nearest ? [{ from: at(nearest.from), to: at(nearest.to) }] : [];
}

/**
 * Lap and fold lines of the seam on the blank; of a cone also its seam lines, where they are neither its edge nor one of the others.
 *
 * @returns lines from edge to edge of the blank
 */
export function seamPlaces({ seam, sector, outline, width, depth }: RolledSheet): readonly SeamPlace[] {
  const strip = { A: seam.sideA, B: seam.sideB };
  if (!sector)
    return seam.lines.flatMap(({ distance, ...line }) => {
      const x = line.side === "A" ? distance : width - distance;
      return onBlank(outline, { x, y: depth / 2 }, { x: 0, y: -1 }).map((stretch) => ({ ...line, ...stretch }));
    });
  const drawn = (side: "A" | "B") =>
    strip[side] === 0 || seam.lines.some((line) => line.side === side && Math.abs(line.distance - strip[side]) < closeTo);
  const all: readonly (Omit<SeamPlace, "from" | "to"> & { readonly distance: number })[] = [
    ...(["A", "B"] as const)
      .filter((side) => !drawn(side))
      .map((side) => ({ kind: "seam" as const, side, distance: strip[side], what: `seam line ${side}` })),
    ...seam.lines,
  ];
  return all.flatMap(({ distance, ...line }) => {
    const found = sector.seamLines.find(({ side }) => side === line.side);
    if (!found) return [];
    const { outer, inner } = found;
    const along = { x: (outer.x - inner.x) / sector.slant, y: (outer.y - inner.y) / sector.slant };
    // Outwards is to the right of the way from the inner to the outer end on side A, to the left on side B.
    const outwards = (strip[line.side] - distance) * (line.side === "A" ? 1 : -1);
    const middle = {
      x: (outer.x + inner.x) / 2 + outwards * along.y,
      y: (outer.y + inner.y) / 2 - outwards * along.x,
    };
    return onBlank(outline, middle, along).map((stretch) => ({ ...line, ...stretch }));
  });
}
