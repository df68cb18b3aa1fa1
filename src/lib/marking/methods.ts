/** Ways to put a line on the sheet; ids are keys of `marking.yaml`, parts of addresses and of part files. */
export const markingChoices = {
  "rule-and-scriber": "rule and scriber",
  "combination-square": "combination square",
  "caliper-scribe": "caliper run along the edge",
  "height-gauge": "height gauge",
} as const;
export type MarkingChoice = keyof typeof markingChoices;
