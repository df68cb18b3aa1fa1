/** Words in the drawing of the calculator `length-reader`. */
export const lengthReader = {
  title: "The length on a steel rule",
  inches: "inches",
  inch: (division: number) => `1/${division} inch`,
  text: (inches: string, value: string, fraction: string) =>
    `A rule with millimetres on one edge and ${inches} on the other; ${value} mm is marked, and the nearest division is ${fraction} in.`,
  scales: "millimetres above, inches below",
  onTheMark: "on the mark",
  long: "long",
  short: "short",
  nearest: (division: number, error: string, way: string) => `nearest 1/${division} in: ${error} mm too ${way}`,
};
