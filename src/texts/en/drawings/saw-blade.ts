/** Words in the drawing of the calculator `saw-blade`. */
export const sawBlade = {
  title: "Band and sheet",
  laidSlanting: (angle: number) => `laid so that the blade runs at ${angle}° to its face`,
  laidSquare: "square to the blade",
  text: (thickness: string, laid: string, teethPerInchMin: string, teeth: string, units: string) =>
    `Sheet ${thickness} thick, ${laid}, with a band of ${teethPerInchMin} teeth an inch, ${teeth} teeth of which are in it; ${units}.`,
  toScale: (units: string) => `${units}; sheet and teeth to one scale`,
  band: "band",
  teeth: (count: string) => `${count} teeth`,
};
