/** Words in the drawing of the calculator `shear-load`. */
export const shearLoad = {
  title: "The blades and the sheet",
  raked: (rake: string, engaged: string) => `by a blade raked ${rake}, with ${engaged} under it at one moment`,
  parallelBlades: "by parallel blades",
  text: (thickness: string, length: string, blades: string, force: string, clearance: string, units: string) =>
    `Sheet ${thickness} thick, cut over ${length} ${blades}: ${force} and a gap of ${clearance}; ${units}.`,
  drawnLarger: (units: string) => `${units}; thickness and slope drawn larger`,
  parallel: ", parallel",
  upperBlade: (slope: string) => `upper blade${slope}`,
  fromTheSide: "from the side",
};
