/** The page of all cautions. */
export const safety = {
  title: "Safety",
  description: "All standing cautions of the handbook in one place, each with where it comes from.",
  lead: "Every caution that stands on a page or at a calculator, in one place. None of it replaces the machine’s manual and rating plate, the rules of your shop, the law where you work, or the people trained to run the machine.",
  before:
    "Before you use a machine: be shown how by somebody who is trained on it and allowed to teach it, know where its stop or its lock is, and ask when something is not clear. If these pages and your instructor differ, your instructor is right.",
  hurt: "If somebody is hurt: stop the machine, get help, and follow the first-aid rules posted in your shop. Know where they hang before you need them.",
  always: "In all work",
  trades: {
    marking: "Marking out",
    cutting: "Cutting",
    punching: "Punching",
    bending: "Bending",
    rolling: "Rolling",
    joining: "Joining",
    furnace: "Furnace",
  },
  also: (trades: readonly string[]) => `Also for ${trades.join(", ").toLowerCase()}. `,
  practice: "Common practice; no document is named.",
  source: "Source:",
  fromMemory: ", from memory",
  origin: "Where they come from",
  originText:
    "Most of these are common practice in the trade, handed on by word of mouth and in shop rules, and they are marked so. They are kept in one file, so that a shop can add its own. Documents are in the",
  sources: "list of sources",
};
