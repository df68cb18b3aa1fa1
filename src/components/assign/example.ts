import type { Assignment } from "../../lib/assign/definition.ts";

/** Shown built on the page, before anything is entered and without scripts. */
export const example: Assignment = {
  title: "Blank of a bracket",
  course: "Sheet metal 1",
  questions: [
    {
      calculator: "bend-length",
      intro: "An angle bracket is bent once, by 90°. How long is its blank, and how much does the bend take up?",
      fixed: { radius: "1.5mm", kFactor: "0.4" },
      varied: {
        thickness: { choices: ["0.8mm", "1mm", "1.2mm", "1.5mm"] },
        "legs.0.leg": { from: "40mm", to: "80mm", step: "5mm" },
        "legs.1.leg": { from: "20mm", to: "35mm", step: "1mm" },
      },
      asked: [
        { output: "blank", tolerance: "0.2mm" },
        { output: "deduction", tolerance: "0.1mm" },
      ],
      predictFirst: true,
    },
    {
      calculator: "hole-circle",
      fixed: {},
      varied: { diameter: { from: "60mm", to: "90mm", step: "2mm" }, count: { choices: ["5", "6", "8", "10", "12"] } },
      asked: [{ output: "chord", tolerance: "0.1mm" }],
    },
  ],
};
