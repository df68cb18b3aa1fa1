/** What a form says about values that the maker of a link fixed. */
export const given = {
  /** Name of the fold that makes such links. */
  links: "Link and course page",
  /** Name of a plan in a frame. */
  plan: "Plan of a part",
  /** At a field. */
  mark: "Given by the link",
  lead: "Given by the link:",
  cannotChange: "You can use these values but not change them here.",
  unusable: "The link gives a value that cannot be used. Tell whoever gave you the link.",
  startOver: "Start over with own values",
  stays: (labels: string) => `Given by the link, so it stays as it is: ${labels}.`,
  unknown: (words: string, known: string) => `The link fixes ${words}, which is no input here. The inputs are ${known}.`,
  more: (count: number) => `and ${count} more`,
};
