import { type FullSize, holeMark, type Mark } from "../drawing.ts";
import type { RolledPlan } from "./plan.ts";

/** Reach of the cross at a joint or at the centre of the arcs [mm]. */
const reach = 4;

/**
 * The blank of a rolled part at full size, the face up that becomes the inside.
 * @returns its marks in millimetres: edge, holes, joints, seam and fold lines; of a cone also the centre of its arcs
 */
export function rolledFullSize({ part, sheet }: Pick<RolledPlan, "part" | "sheet">): FullSize {
  const { sector, seam, width, depth } = sheet;
  const upright = (x: number, name: string): Mark => ({ kind: "line", from: { x, y: 0 }, to: { x, y: depth }, name });
  const seamLines: readonly Mark[] = sector
    ? sector.seamLines.map(
        ({ side, outer, inner }): Mark => ({ kind: "line", from: outer, to: inner, name: `seam line ${side}` }),
      )
    : seam.lines.map(({ side, distance, what }) => upright(side === "A" ? distance : width - distance, what));
  const cross = (centre: { x: number; y: number }, name?: string): Mark => ({
    kind: "cross",
    centre,
    reach,
    ...(name !== undefined && { name }),
  });
  return {
    name: part.name,
    material: part.material.name,
    thickness: part.thickness,
    width,
    depth,
    outline: sheet.outline,
    face: "the later inside up",
    drawing: {
      outline: [{ kind: "polygon", points: sheet.outline }],
      "relief-holes": [],
      holes: sheet.holes.map(holeMark),
      "hole-centres": [
        ...sheet.holes.map(({ flatX, flatY, number }) => cross({ x: flatX, y: flatY }, String(number))),
        ...sheet.joints.flatMap(({ a, b }) => [cross(a), cross(b)]),
        ...(sector ? [cross(sector.centre, "centre O of the arcs")] : []),
      ],
      "bend-lines": [],
      "bend-zones": [],
      "sight-lines": [],
      "fold-lines": seamLines,
    },
  };
}
