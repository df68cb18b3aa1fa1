/** Words in the drawing of the calculator `hole-place`. */
export const holePlace = {
  needs: "needs",
  leg: "leg",
  edge: "edge",
  nextHole: "next hole",
  title: "The place of the hole",
  text: (diameter: string, minEdge: string, minSpacing: string, minBend: string, units: string) =>
    `A hole of ${diameter} with at least ${minEdge} to the edge, ${minSpacing} to the next hole and ${minBend} to the next leg; ${units}.`,
  fromAbove: (units: string) => `from above, not to scale, ${units}`,
};
