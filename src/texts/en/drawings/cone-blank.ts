/** Words in the drawing of the calculator `cone-blank`. */
export const coneBlank = {
  title: "The cone and its blank",
  text: (
    largeDiameter: string,
    smallDiameter: string,
    height: string,
    sectorAngle: string,
    outerRadius: string,
    innerRadius: string,
    units: string,
  ) =>
    `A cone of ${largeDiameter} and ${smallDiameter} across and ${height} high; its blank is a sector of ${sectorAngle} between radii of ${outerRadius} and ${innerRadius}; ${units}.`,
  toScale: (units: string) => `to scale, ${units}`,
  sector: (sectorAngle: string, chord: string) => `A ${sectorAngle}, chord ${chord}`,
};
