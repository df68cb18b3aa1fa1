/** Words in the drawing of the calculator `roll-setting`. */
export const rollSetting = {
  title: "The setting of the rear roll",
  text: (rise: string, turns: string, held: string, radius: string, units: string) =>
    `Rolls from the side, to scale: from flat contact the rear roll is raised by ${rise}, ${turns} turns; the sheet is held at a radius of ${held} and springs back to ${radius}; ${units}.`,
  toScale: (units: string) => `to scale, ${units}`,
  dashed: "dashed: flat contact",
  radii: (held: string, radius: string) => `held at Ri ${held}, left at R ${radius}`,
};
