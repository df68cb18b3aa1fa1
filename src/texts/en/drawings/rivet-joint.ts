/** Words in the drawing of the calculator `rivet-joint`. */
export const rivetJoint = {
  title: "Where the rivets go",
  text: (count: number | null, d: string, p: string, e: string, units: string) =>
    `Two of ${count} rivets of ${d} in a lap from above: pitch at least ${p}, at least ${e} from the middle of a hole to the edge; ${units}.`,
  toScale: (units: string) => `least distances to scale, ${units}`,
};
