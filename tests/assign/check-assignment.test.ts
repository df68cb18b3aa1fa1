import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { checkAssignment } from "../../src/lib/assign/check-assignment.ts";
import type { Assignment, Question } from "../../src/lib/assign/definition.ts";
import { ownQuestions } from "../../src/lib/assign/own-question.ts";
import { InputError } from "../../src/lib/input-error.ts";
import { worksheets } from "../../src/lib/registry.ts";
import { bracket, catalogue, question, worksheetById } from "./shared.ts";

const check = (assignment: Assignment, samples?: number) => checkAssignment(assignment, worksheetById, catalogue, samples);
const of = (...questions: Question[]): Assignment => ({ title: "T", course: "C", questions });
const problems = (assignment: Assignment) => check(assignment).problems.map(({ field, message }) => [field, message] as const);
const blank = { output: "blank", tolerance: "0.2mm" };

test("a sound assignment has none, and is worked through", () => {
  const { problems: none, tried } = check(bracket);
  expect(none).toEqual([]);
  // 5 thicknesses, 5 radii, 21 legs: the 8 corners and 200 samples. 3 metals and 5 diameters: all of them.
  expect(tried).toEqual([
    { combinations: 525, tried: 208 },
    { combinations: 15, tried: 15 },
  ]);
});

describe("what it names", () => {
  test.each<[string, Assignment, string, string]>([
    ["title", { ...bracket, title: " " }, "title", "is empty"],
    ["a long title", { ...bracket, title: "x".repeat(121) }, "title", "has 121"],
    ["course", { ...bracket, course: "" }, "course", "is empty"],
    ["a long text", { ...bracket, intro: "x".repeat(2001) }, "intro", "has 2001"],
    ["no question", of(), "questions", "has 0"],
    [
      "too many questions",
      of(...Array.from({ length: 21 }, () => question("bend-length", { asked: [blank] }))),
      "questions",
      "has 21",
    ],
    ["an unknown calculator", of(question("bend-lenght")), "questions.0.calculator", "bend-lenght"],
    [
      "an unknown input",
      of(question("bend-length", { fixed: { radios: "2mm" }, asked: [blank] })),
      "questions.0.fixed.radios",
      "radios",
    ],
    [
      "an unknown varied input",
      of(question("bend-length", { varied: { radios: { choices: ["1mm", "2mm"] } }, asked: [blank] })),
      "questions.0.varied.radios",
      "legs.0.leg",
    ],
    [
      "a list as a whole",
      of(question("bend-length", { varied: { legs: { choices: ["1mm;2mm", "2mm;3mm"] } }, asked: [blank] })),
      "questions.0.varied.legs",
      "legs.0.leg",
    ],
    [
      "a row that is not there",
      of(question("bend-length", { varied: { "legs.2.leg": { choices: ["30mm", "40mm"] } }, asked: [blank] })),
      "questions.0.varied.legs.2.leg",
      "2 rows",
    ],
    [
      "fixed and varied",
      of(question("bend-length", { fixed: { radius: "2mm" }, varied: { radius: { choices: ["1mm", "2mm"] } }, asked: [blank] })),
      "questions.0.varied.radius",
      "both",
    ],
    [
      "a range beyond the input's own",
      of(question("bend-length", { varied: { thickness: { from: "1mm", to: "20mm", step: "1mm" } }, asked: [blank] })),
      "questions.0.varied.thickness.to",
      "20.00 mm",
    ],
    [
      "a range below it",
      of(question("bend-length", { varied: { thickness: { from: "0mm", to: "2mm", step: "1mm" } }, asked: [blank] })),
      "questions.0.varied.thickness.from",
      "0.10 mm",
    ],
    [
      "a range of words",
      of(question("bend-length", { varied: { material: { from: "a", to: "b", step: "c" } }, asked: [blank] })),
      "questions.0.varied.material",
      "name choices",
    ],
    [
      "an unknown choice",
      of(question("bend-length", { varied: { material: { choices: ["steel-cr", "gold"] } }, asked: [blank] })),
      "questions.0.varied.material.choices.1",
      "gold",
    ],
    [
      "a choice out of range",
      of(question("bend-length", { varied: { radius: { choices: ["1mm", "2 m"] } }, asked: [blank] })),
      "questions.0.varied.radius.choices.1",
      "1000.00 mm",
    ],
    [
      "a choice that is no length",
      of(question("bend-length", { varied: { radius: { choices: ["1mm", "small"] } }, asked: [blank] })),
      "questions.0.varied.radius.choices.1",
      "small",
    ],
    [
      "one choice",
      of(question("bend-length", { varied: { radius: { choices: ["1mm"] } }, asked: [blank] })),
      "questions.0.varied.radius.choices",
      "2 to 60",
    ],
    [
      "a choice twice",
      of(question("bend-length", { varied: { radius: { choices: ["1mm", "1mm"] } }, asked: [blank] })),
      "questions.0.varied.radius.choices.1",
      "twice",
    ],
    [
      "a gauge this metal has not",
      of(
        question("bend-length", {
          fixed: { material: "al-5052-h32" },
          varied: { thickness: { choices: ["16ga", "99ga"] } },
          asked: [blank],
        }),
      ),
      "questions.0.varied.thickness.choices.1",
      "no number 99",
    ],
    ["nothing asked", of(question("bend-length")), "questions.0.asked", "1 to 8"],
    [
      "an unknown output",
      of(question("bend-length", { asked: [{ ...blank, output: "blanc" }] })),
      "questions.0.asked.0.output",
      "It has blank, deduction",
    ],
    [
      "an output that is a word",
      of(question("weld-pair", { asked: [{ output: "verdict", tolerance: "1" }] })),
      "questions.0.asked.0.output",
      "not one number",
    ],
    [
      "an output that is a list",
      of(question("hole-circle", { asked: [{ output: "holes", tolerance: "1mm" }] })),
      "questions.0.asked.0.output",
      "chord",
    ],
    ["an output twice", of(question("bend-length", { asked: [blank, blank] })), "questions.0.asked.1.output", "twice"],
    [
      "a tolerance of another kind",
      of(question("bend-length", { asked: [{ ...blank, tolerance: "2 kg" }] })),
      "questions.0.asked.0.tolerance",
      "kg",
    ],
    [
      "a fixed value that is refused",
      of(question("bend-length", { fixed: { radius: "-1mm" }, asked: [blank] })),
      "questions.0.fixed",
      "Inside radius",
    ],
  ])("%s", (_, assignment, field, words) => {
    const found = problems(assignment);
    expect(found.map(([at]) => at)).toContain(field);
    expect(found.find(([at]) => at === field)?.[1]).toContain(words);
  });

  test("every problem at once, of every question", () => {
    const found = problems({
      title: "",
      course: "",
      questions: [
        question("none"),
        question("bend-length", { fixed: { a: "1", b: "2" }, asked: [{ output: "x", tolerance: "y" }] }),
      ],
    });
    expect(found.map(([field]) => field)).toEqual([
      "title",
      "course",
      "questions.0.asked",
      "questions.0.calculator",
      "questions.1.fixed.a",
      "questions.1.fixed.b",
      "questions.1.asked.0.output",
    ]);
  });
});

describe("combinations that a calculator refuses", () => {
  test("are told with their numbers, how often, and why", () => {
    // A leg must hold its bend: at 90° it needs R + T. 10 mm are too short for R = 9, T = 2 only.
    const assignment = of(
      question("bend-length", {
        fixed: { angle: "90deg", legs: "60mm;10mm" },
        varied: { thickness: { choices: ["1mm", "2mm"] }, radius: { choices: ["8mm", "9mm"] } },
        asked: [blank],
      }),
    );
    expect(problems(assignment)).toEqual([
      [
        "questions.0.varied",
        "Question 1, Length of a bent strip. With Thickness 2 mm, Inside radius 9 mm: Leg 2 must be at least 11.00 mm, the part of it that lies in its bend; it is 10.00 mm. So it is with 1 of 4 combinations tried.",
      ],
    ]);
  });

  test("an answer that is not known is one of them", () => {
    const assignment = of(
      question("practice-pieces", { fixed: { pieces: "100mm:61.1mm:41.1mm" }, asked: [{ output: "spread", tolerance: "5%" }] }),
    );
    expect(problems(assignment)).toEqual([
      ["questions.0.asked.0.output", expect.stringContaining("not known from these numbers")],
    ]);
  });

  test("of many combinations the corners are among those tried", () => {
    const assignment = of(
      question("bend-length", {
        fixed: { legs: "60mm;30mm" },
        varied: {
          thickness: { from: "1mm", to: "3mm", step: "0.01mm" },
          radius: { from: "1mm", to: "28mm", step: "0.01mm" },
          angle: { from: "30deg", to: "90deg", step: "1deg" },
        },
        asked: [blank],
      }),
    );
    const { problems: found, tried } = check(assignment, 0);
    expect(found.map(({ field }) => field)).toEqual(["questions.0.varied"]);
    expect(found[0]?.message).toContain("Thickness 3 mm, Inside radius 28 mm, Angle turned through 90°");
    expect(tried).toEqual([{ combinations: 201 * 2701 * 61, tried: 8 }]);
  });
});

describe("any assignment at all", () => {
  const text = fc.oneof(
    fc.string({ maxLength: 12 }),
    fc.constantFrom("1mm", "2mm", "0.5mm", "1/16in", "90deg", "16ga", "steel-cr", "2%"),
  );
  const word = fc.constantFrom(
    "thickness",
    "radius",
    "angle",
    "material",
    "diameter",
    "legs",
    "legs.0.leg",
    "blank",
    "force",
    "mass",
  );
  const name = fc.oneof(
    word,
    fc.constantFrom("__proto__", "constructor", "legs.-1.leg", "legs.0.toString", ""),
    fc.string({ maxLength: 6 }),
  );
  const variation = fc.oneof(
    fc.record({ from: text, to: text, step: text }),
    fc.record({ choices: fc.array(text, { maxLength: 4 }) }),
  );
  const any: fc.Arbitrary<Question> = fc.record({
    calculator: fc.oneof(fc.constantFrom(...worksheets.map(({ id }) => id)), fc.constantFrom("constructor", "")),
    fixed: fc.dictionary(name, text, { maxKeys: 2 }),
    varied: fc.dictionary(name, variation, { maxKeys: 2 }),
    asked: fc.array(fc.record({ output: name, tolerance: text }), { maxLength: 2 }),
  });

  test("is looked through, and one that passes gives every student numbers", () => {
    fc.assert(
      fc.property(fc.array(any, { maxLength: 2 }), text, (questions, student) => {
        const assignment = { title: "T", course: "C", questions };
        const { problems: found, tried } = check(assignment, 5);
        for (const { message, field } of found) expect(`${field} ${message}`).not.toMatch(/NaN|undefined|\[object/);
        try {
          ownQuestions(assignment, student, worksheetById, catalogue);
        } catch (error) {
          // A link can be opened unchecked: whatever is wrong with it is then said, not broken.
          expect(error).toBeInstanceOf(InputError);
          expect(found.length > 0 || tried.some((each) => each.tried < each.combinations)).toBe(true);
        }
      }),
      { numRuns: 300 },
    );
  });
});
