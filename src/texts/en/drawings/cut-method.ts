/** Words in the drawing of the calculator `cut-method`. */
export const cutMethod = {
  curved: "curved",
  straight: "straight",
  fromEdgeToEdge: "from edge to edge",
  endingInside: "ending inside the sheet",
  title: "The cut",
  radius: (curveRadius: string) => `, radius ${curveRadius}`,
  noTool: "no tool here suits it",
  cutWith: (method: string) => `to be cut with: ${method}`,
  text: (cutLength: string, thickness: string, says: string, curve: string, tool: string, units: string) =>
    `A cut ${cutLength} long in sheet ${thickness} thick, ${says}${curve}; ${tool}; ${units}.`,
  notToScale: (units: string) => `${units}; not to scale`,
  alongTheCut: (cutLength: string) => `${cutLength} along the cut`,
};
