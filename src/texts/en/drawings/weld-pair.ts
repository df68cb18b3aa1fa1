/** Words in the drawing of the calculator `weld-pair`. */
export const weldPair = {
  title: (words: string) => `Between the tips: ${words}`,
  text: (told: string, others: string) => `Two sheets between the tips of a spot welder; ${told}.${others}`,
  one: "one",
  other: "other",
  instead: "Instead:",
  or: "Or:",
  others: (lead: string, joints: string) => ` ${lead} ${joints}.`,
  signs: {
    yes: { words: ["Spot weld them."], told: "a full lens joins them" },
    "with-care": { words: ["With care: peel", "a test coupon first."], told: "a lens joins them, under a warning triangle" },
    no: { words: ["Do not spot weld."], told: "no lens joins them, and tips and joint are crossed out" },
  },
};
