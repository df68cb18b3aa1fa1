import { cutMarks, type FullSize, type Mark, markReach } from "../drawing.ts";
import type { RolledPlan } from "./plan.ts";
import { type SeamPlace, seamPlaces } from "./seam-places.ts";

const seamMark = ({ from, to, what, way }: SeamPlace): Mark => ({
  kind: "line",
  from,
  to,
  name: way === undefined ? what : `${what}, ${way}`,
});

/**
 * The blank of a rolled part at full size, the face up that becomes the inside.
 * @returns its marks in millimetres: edge, holes, joints, seam, lap and fold lines, middle line; of a cone also the centre of its arcs
 */
export function rolledFullSize({ part, sheet }: Pick<RolledPlan, "part" | "sheet">): FullSize {
  const { sector, width, depth } = sheet;
  const { outline, holes, centres } = cutMarks(sheet);
  const places = seamPlaces(sheet);
  const middle = sector
    ? {
        from: { x: sector.centre.x, y: sector.centre.y - sector.outerRadius },
        to: { x: sector.centre.x, y: sector.centre.y - sector.innerRadius },
      }
    : { from: { x: width / 2, y: 0 }, to: { x: width / 2, y: depth } };
  return {
    name: part.name,
    material: part.material.name,
    thickness: part.thickness,
    width,
    depth,
    outline: sheet.outline,
    face: "the later inside up",
    drawing: {
      outline,
      "relief-holes": [],
      holes,
      "hole-centres": [
        ...centres,
        ...sheet.joints.flatMap(({ a, b }) => [a, b].map((centre): Mark => ({ kind: "cross", centre, reach: markReach }))),
        ...(sector
          ? [{ kind: "cross", centre: sector.centre, reach: markReach, name: "centre O of the arcs" } satisfies Mark]
          : []),
      ],
      "bend-lines": [],
      "bend-zones": [],
      "sight-lines": [],
      "fold-lines": places.filter(({ kind }) => kind === "fold").map(seamMark),
      "seam-lines": places.filter(({ kind }) => kind !== "fold").map(seamMark),
      "middle-line": [{ kind: "line", ...middle, name: "middle, square to the rolls" }],
    },
  };
}
