/** Words in the drawing of the calculator `spot-joint`. */
export const spotJoint = {
  title: "Where the spots go",
  firstOf: (drawn: number, count: string) => `The first ${drawn} of ${count}`,
  spot: "spot",
  spots: "spots",
  text: (count: string, spots: string, force: string, p: string, e: string, w: string, units: string) =>
    `${count} ${spots} in a lap from above, pulled apart with ${force} across the row: pitch at least ${p}, at least ${e} from the middle of a spot to the edge, lap ${w}; ${units}.`,
  drawnOf: (drawn: number, count: string) => `first ${drawn} of ${count} spots`,
  oneSpot: "1 spot",
  manySpots: (count: string) => `${count} spots`,
  toScale: (count: string) => `${count}, least distances to scale`,
};
