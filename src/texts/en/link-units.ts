/** What stands at the units switch when a link says in which units lengths are shown. */
export const linkUnits = {
  locked: (units: string) => `Set by the link: ${units}. Your own choice is kept for other pages.`,
  refused: (asked: string, known: string) => `The link asks for the units “${asked}”. It can ask for ${known}.`,
};
