/** Words in the drawing of the calculator `punch-load`. */
export const punchLoad = {
  title: "The hole and the punch",
  text: (shape: string, perimeter: string, thickness: string, force: string, share: string, units: string) =>
    `A ${shape} hole whose edge of ${perimeter} is cut at once in sheet ${thickness} thick; the punch is pressed down with ${force}, ${share} of what this shop’s punch is rated for; ${units}.`,
  fromAbove: "from above",
  inSection: "in section, not to scale",
};
