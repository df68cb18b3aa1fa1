/** Words in the drawing of the calculator `spot-setting`. */
export const spotSetting = {
  title: "Tips, spot, pitch and lap",
  text: (
    thickness: string,
    otherThickness: string,
    face: string,
    d: string,
    p: string,
    w: string,
    settings: string,
    units: string,
  ) =>
    `Two sheets, ${thickness} and ${otherThickness} thick, between tips with a face of ${face}; the weld to aim at is ${d} across; the next spot is at least ${p} away and the lap at least ${w} wide; ${settings}; ${units}.`,
  toScale: (units: string) => `to scale, ${units}; depth of the weld a sketch`,
  face: (face: string) => `face ${face}`,
  lap: (w: string) => `lap ${w}`,
  dashed: "dashed: the next spot",
};
