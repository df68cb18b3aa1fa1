import { machines } from "./machines.ts";

/** The sheet a supervisor signs before a student starts. */
export const signOff = {
  description: "The machines that a plan uses, with their cautions and the questions to answer before starting, for a signature.",
  lead: "The machines that this plan uses, and what must be answered at each of them before anything is switched on.",
  planLink: "Back to the plan",
  failed: "The page could not be loaded completely. Load it again: it may show another part.",
  example: "This is the sheet of an example. Open it from your own plan.",
  noPlan: "There is no plan to sign for yet: the part has a value that cannot be used.",
  whichCopy: "Show and print",
  copies: { student: "the student’s sheet", supervisor: "the supervisor’s copy, with good answers" },
  print: "Print this sheet",

  sheetOf: (name: string) => `Sign-off sheet: ${name}`,
  withoutName: "Part without a name",
  copy: { student: "Student’s sheet", supervisor: "Supervisor’s copy: not for students" },
  block: { material: "Material", thickness: "Thickness", shop: "Shop", student: "Student", date: "Date" },
  stations: { ...machines, snips: "Snips", drill: "Drill", rivets: "Rivets" },
  machine: (station: string, name: string) => `${station}: ${name}`,
  cautions: "Cautions",
  askedAbove: "Its other cautions are asked above.",
  broken: (count: number) =>
    count === 1
      ? "One check of this plan does not hold. Do not sign before it is settled."
      : `${count} checks of this plan do not hold. Do not sign before they are settled.`,
  goodAnswer: "Good answer:",
  mayStart: "May start here, signed:",
  signature: "Supervisor’s signature",
  defer:
    "Signed for this part, this machine and this day only. The machine’s manual and rating plate, the rules of the shop and the law of the place come first; this sheet replaces no training and no licence. The supervisor may ask more, and stops the work at any wrong answer.",
};
