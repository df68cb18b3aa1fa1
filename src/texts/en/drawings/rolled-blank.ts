/** Words in the drawing of the calculator `rolled-blank`. */
export const rolledBlank = {
  title: "The rolled shape and its blank",
  text: (arc: string, diameter: string, measured: string, thickness: string, blank: string, units: string) =>
    `A curve of ${arc} with a diameter of ${diameter} ${measured}, ${thickness} thick, and below it the flat blank, ${blank} long; ${units}.`,
  seam: (seam: string) => `seam ${seam}`,
  flat: "the flat",
};
