/** Working on the drawing of a plan; fetched with that drawing. */
export const planEdit = {
  help: "Choose a panel, a folded edge or a hole. Touch a panel where a hole is to be, then add it; drag a hole, or move it with the arrow keys.",
  title: "The blank, to be worked on",
  edge: (side: string) => `Folded edge on ${side}`,
  holeOn: (number: number, panel: string) => `Hole ${number} on ${panel}`,
  hole: (number: number) => `Hole ${number}`,
  holeCircle: "Hole circle",
  removeHole: (number: number) => `Remove hole ${number}`,
  removeHoleCircle: "Remove this hole circle",
  removeEdge: "Remove the folded edge",
  addHoleAtMark: "Add a hole at the mark",
  addHoleInMiddle: "Add a hole in the middle",
  addLeg: (side: string) => `Add a leg on ${side}`,
  addLegBeyond: "Add a leg beyond it",
  removeLeg: "Remove this leg",
};
