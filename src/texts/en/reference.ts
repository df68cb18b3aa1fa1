import type { Sentence } from "../sentence.ts";

/** The pages one looks things up on: checked values, sources, glossary. */
export const reference = {
  checked: {
    description: "Every published value beside what this handbook computes, with its source.",
    lead: "A calculator is worth as much as what it was held against. Here is every number it was held against: what the source says, what we compute, and how far apart they are.",
    about:
      "These pages and the project’s tests are made from the same files. No expected number was made by our own code. Where we only remember a source, it says so; a remembered number proves nothing alone.",
    run: "Checks run",
    proof: "Agree, read in a source or exact",
    memory: "Agree, from memory only",
    disputed: "Disputed, not counted",
    differ: "Differ",
    kinds: "What the kinds of check mean",
    subjects: "Subjects",
    up: "Where this is",
    all: "All checked values",
    titleOf: (subject: string) => `Checked: ${subject}`,
    agree: (agree: number, counted: number) => `${agree} of ${counted} agree`,
    fromMemory: (count: number) => `; ${count} of them from memory`,
    notCounted: (count: number) => `; ${count} disputed and not counted`,
    heads: {
      case: "Case",
      value: "Value",
      source: "Source",
      ours: "Ours",
      difference: "Difference",
      allowed: "Allowed",
      verdict: "Verdict",
      from: "From",
    },
    prints: (misprint: string) => `prints ${misprint}`,
    none: "none",
    same: "same",
    notSame: "not the same",
    sameWord: "same word",
    roundingOnly: "rounding only",
    verdicts: {
      agrees: "agrees",
      memory: "agrees; from memory: proves nothing alone",
      differs: "differs",
      disputed: "disputed, not counted",
    },
    seen: { read: ", read", memory: ", from memory" },
  },

  sources: {
    description: "Where every formula and number of the handbook was read, or that it is from memory, and where it is used.",
    lead: "Where each formula and number comes from, whether it was read there, and which pages, calculators and tables rest on it.",
    entries: (all: number, groups: readonly string[]) =>
      `${all} entries: ${groups.join(", ")}. An address leads out of this handbook.`,
    inGroup: (count: number, group: string) => `${count} ${group.toLowerCase()}`,
    groups: {
      read: {
        title: "Read",
        about: "The text that was used was seen at the address given. Often that is a copy, not the original print.",
      },
      memory: {
        title: "From memory",
        about:
          "Recalled, not seen. A number that rests on one of these alone proves nothing until somebody looks it up. Corrections are welcome.",
      },
      practice: { title: "No document", about: "Worked out here, measured in the shop, or usual in the trade." },
    },
    usedIn: "Used in:",
    calculator: (title: string) => `calculator “${title}”`,
    table: (caption: string) => `table “${caption}”`,
    markingMethods: "marking methods",
    cautions: "cautions",
    unused: (count: number) => `${count} kept for pages that are not written yet`,
    inBrackets: (group: string) => ` (${group.toLowerCase()})`,
  },

  glossary: {
    description: "The words of the trade in plain sentences, each with a drawing.",
    lead: "The words of the trade, each in one sentence and one drawing. What the word stands for is marked in it.",
    about:
      "Shops use these words in different ways, and some have other words for the same thing. On the pages of the techniques, the first use of each is underlined with dots and leads here.",
    letters: "Letters",
    all: (words: number) => `All ${words} words`,
    index: "All words",
    alsoCalled: (names: readonly string[]) => `Also called ${names.join(", ")}. `,
    /** Of a drawing: what it shows, and the part of it that the word stands for. */
    marked: (drawing: string, term: string) => `${drawing}. Marked: ${term.toLowerCase()}.`,
    more: (title: string, path: string): Sentence => ["More in ", { link: title, to: path }, "."],
  },
};
