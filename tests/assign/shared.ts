import { loadCatalogue } from "../../src/catalogue/load.ts";
import type { Assignment, Question } from "../../src/lib/assign/definition.ts";
import { questionWith } from "../../src/lib/assign/own-question.ts";
import { worksheetById } from "../../src/lib/registry.ts";

export const catalogue = loadCatalogue();
export { worksheetById };

export const question = (calculator: string, more: Partial<Question> = {}): Question => ({
  calculator,
  fixed: {},
  varied: {},
  asked: [],
  ...more,
});

/** A question with the numbers that are fixed in it. */
export const stated = (calculator: string, output: string, fixed: Record<string, string>, tolerance = "0.02mm") =>
  questionWith(question(calculator, { fixed, asked: [{ output, tolerance }] }), 0, {}, worksheetById, catalogue);

export const bracket: Assignment = {
  title: "Blank of a bracket",
  course: "Sheet metal 1, autumn",
  intro: "Work by hand, then enter what you found.",
  questions: [
    question("bend-length", {
      intro: "A bracket is bent once. How long is its blank?",
      fixed: { angle: "90deg", legs: "60mm;25mm", kFactor: "0.4" },
      varied: {
        thickness: { from: "1mm", to: "2mm", step: "0.25mm" },
        radius: { from: "2mm", to: "4mm", step: "0.5mm" },
        "legs.1.leg": { from: "20mm", to: "40mm", step: "1mm" },
      },
      asked: [
        { output: "blank", tolerance: "0.2mm" },
        { output: "deduction", tolerance: "2%" },
      ],
      predictFirst: true,
    }),
    question("punch-load", {
      varied: {
        material: { choices: ["steel-cr", "al-5052-h32", "stainless-304"] },
        diameter: { from: "1/4in", to: "1/2in", step: "1/16in" },
      },
      fixed: { thickness: "1.2mm" },
      asked: [{ output: "force", tolerance: "rounding" }],
      units: "inch",
    }),
  ],
};
