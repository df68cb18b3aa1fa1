import { layoutOf } from "./layout-of.ts";

/** The worked example of the bending pages, as the plan's form would hold it; its bend data are the calculator's defaults. */
export const bracket = {
  material: "steel-cr",
  thickness: "1.2mm",
  radius: "1.2mm",
  depth: "60mm",
  width: "40mm",
  north: [{ leg: "25mm", angle: "90deg", way: "up" }],
} as const;

/** Where its lines lie, from the free end of the long leg, which is clamped [mm]. */
export function bracketLines() {
  const layout = layoutOf(bracket);
  const bend = layout.bends[0];
  if (!bend) throw new Error("The bracket of the figures has no bend");
  const { thickness } = layout.part;
  return { blank: layout.along, first: bend.from, second: bend.to, sight: bend.sightLine, radius: bend.radius, thickness };
}
