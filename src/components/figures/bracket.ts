import { layoutOf } from "./layout-of.ts";

const sheet = { material: "steel-cr", thickness: "1.2mm", radius: "1.6mm", kFactor: "0.45" } as const;

/** The worked example of the bending page, as the plan's form holds it. */
export const bracket = {
  ...sheet,
  depth: "60mm",
  width: "40mm",
  north: [{ leg: "25mm", angle: "90deg", way: "up" }],
  bendData: "neutral-line",
} as const;

/** The same bracket, as the calculator of blank lengths holds it. */
export const bracketBlank = {
  ...sheet,
  angle: "90deg",
  method: "neutral-line",
  legs: [{ leg: bracket.depth }, { leg: bracket.north[0].leg }],
} as const;

/** Where its lines lie, from the free end of the long leg, which is clamped [mm]. */
export function bracketLines() {
  const layout = layoutOf(bracket);
  const bend = layout.bends[0];
  if (!bend) throw new Error("The bracket of the figures has no bend");
  const { thickness } = layout.part;
  return { blank: layout.along, first: bend.from, second: bend.to, sight: bend.sightLine, radius: bend.radius, thickness };
}
