import { describe, expect, test } from "vitest";
import { checkAssignment } from "../../src/lib/assign/check-assignment.ts";
import { rangeAbout } from "../../src/lib/assign/range-about.ts";
import { startingQuestion } from "../../src/lib/assign/starting-question.ts";
import { taskText } from "../../src/lib/assign/task-text.ts";
import type { QuantityInput } from "../../src/lib/inputs.ts";
import { worksheets } from "../../src/lib/registry.ts";
import { catalogue, question, worksheetById } from "./shared.ts";

const length = (min: number, max: number): QuantityInput => ({ kind: "quantity", quantity: "length", label: "Leg", min, max });

describe("a range about a value", () => {
  // By hand: the round step below a tenth, five of them to either side.
  test.each([
    ["60mm", { from: "35mm", to: "85mm", step: "5mm" }],
    ["1.2mm", { from: "0.7mm", to: "1.7mm", step: "0.1mm" }],
    ["100mm", { from: "50mm", to: "150mm", step: "10mm" }],
    ["2.5in", { from: "1.5in", to: "3.5in", step: "0.2in" }],
  ])("%s", (text, range) => expect(rangeAbout(text, length(0.1, 10_000))).toEqual(range));

  test("stays within what the input allows", () => {
    expect(rangeAbout("60mm", length(50, 70))).toEqual({ from: "50mm", to: "70mm", step: "5mm" });
    expect(rangeAbout("60mm", { ...length(55, 62), aboveMin: true })).toBeUndefined();
  });

  test("of a number of pieces is whole", () => {
    const count: QuantityInput = { kind: "quantity", quantity: "count", label: "Holes", min: 2, max: 360 };
    expect(rangeAbout("8", count)).toEqual({ from: "3", to: "13", step: "1" });
  });

  test.each(["18ga", "3/64in", "0mm", "", "about 3"])("there is none about “%s”", (text) =>
    expect(rangeAbout(text, length(0, 100))).toBeUndefined(),
  );
});

describe("a question to begin with", () => {
  test.each(worksheets.map((sheet) => [sheet.id, sheet] as const))(
    "%s",
    (id, sheet) => {
      const start = startingQuestion(sheet, catalogue);
      const numeric = Object.values(sheet.outputs).some(({ kind }) => kind === "quantity");
      expect(start !== undefined).toBe(numeric);
      if (!start) return;
      expect(start.calculator).toBe(id);
      const assignment = { title: "T", course: "C", questions: [start] };
      expect(checkAssignment(assignment, worksheetById, catalogue, 12).problems.map(({ message }) => message)).toEqual([]);
    },
    60_000,
  );

  test("takes the thicknesses that the shop has, and a size that differs", () => {
    const bend = worksheetById("bend-length");
    expect(bend && startingQuestion(bend, catalogue)).toEqual({
      calculator: "bend-length",
      fixed: {},
      varied: {
        thickness: { choices: ["0.8mm", "1mm", "1.2mm", "1.5mm"] },
        "legs.0.leg": { from: "35mm", to: "85mm", step: "5mm" },
      },
      asked: [{ output: "blank", tolerance: "0.2mm" }],
    });
  });
});

test("a question without a text of its own says what it is about and what to find", () => {
  const bend = worksheetById("bend-length");
  if (!bend) throw new Error("no bend-length");
  const asked = ["blank", "kFactor"].map((output) => ({ output, tolerance: "1%" }));
  expect(taskText(bend, question("bend-length", { asked }))).toBe(
    "Length of a bent strip. Work out: blank length; K-factor it stands for.",
  );
  expect(taskText(bend, question("bend-length", { asked, intro: "How long?" }))).toBe("How long?");
});
