/** Words in the drawing of the calculator `line-position`. */
export const linePosition = {
  title: "The lines, and how far each may stray",
  endToEnd: "measured end to end, so that the band of each is wider than the one before",
  fromOneEdge: "all measured from one edge, so that the bands of all are alike",
  text: (count: number, distance: string, way: string, lastLikely: string, lastWorst: string, units: string) =>
    `${count} lines, each ${distance} from the next, ${way}; the last is likely within ${lastLikely} and at worst within ${lastWorst}; ${units}.`,
  largerThanTheyAre: "larger than they are",
  allAlike: "larger, all alike",
  bandsDrawn: (units: string, how: string) => `${units}; bands drawn ${how}`,
  atWorst: "at worst",
  likely: "likely",
  datum: "datum",
  firstOfLines: (drawn: number, count: number) => `the first ${drawn} of ${count} lines`,
};
