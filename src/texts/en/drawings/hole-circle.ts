/** Words in the drawing of the calculator `hole-circle`. */
export const holeCircle = {
  title: "The hole circle",
  text: (count: number, diameter: string, fromLeft: string, fromLower: string, chord: string, units: string) =>
    `${count} holes on a circle of ${diameter}; the first centre is ${fromLeft} from the left and ${fromLower} from the lower edge, the chord to the next ${chord}; ${units}.`,
  edgesNotShown: (units: string) => `${units}; the datum edges are not shown`,
  chord: (chord: string) => `chord ${chord}`,
};
