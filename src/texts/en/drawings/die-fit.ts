/** Words in the drawing of the calculator `die-fit`. */
export const dieFit = {
  title: "Punch and die",
  text: (diameter: string, dieDiameter: string, clearancePerSide: string, thickness: string, units: string) =>
    `A punch of ${diameter} over a die of ${dieDiameter}: ${clearancePerSide} on each side, in sheet ${thickness} thick; ${units}.`,
  oneSide: "one side, T and c to scale",
  punch: "punch",
  die: "die",
};
