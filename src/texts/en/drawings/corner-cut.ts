/** Words in the drawing of the calculator `corner-cut`. */
export const cornerCut = {
  title: "The corner of the blank",
  text: (guideA: string, guideB: string, reliefDiameter: string, units: string) =>
    `A notch ${guideA} in from the edge of side A and ${guideB} in from the edge of side B, with a relief hole of ${reliefDiameter} where the inner tangent lines of the two bends cross; ${units}.`,
  sideA: "side A",
  sideB: "side B",
};
