import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { assignmentFromAddress, assignmentParts, assignmentQuery } from "../../src/lib/assign/address.ts";
import type { Assignment } from "../../src/lib/assign/definition.ts";
import { assignmentFile, readAssignment } from "../../src/lib/assign/file.ts";
import { bracket } from "./shared.ts";

const read = (query: string) => assignmentFromAddress(new URLSearchParams(query));

const name = fc.stringMatching(/^[a-zA-Z][a-zA-Z0-9]{0,12}$/);
// Lone surrogates cannot stand in an address; they become the replacement character there, as everywhere on the web.
const text = fc.string({ unit: "grapheme", maxLength: 40 });
const value = fc.string({ unit: "grapheme", minLength: 1, maxLength: 12 });
const variation = fc.oneof(
  fc.record({ from: value, to: value, step: value }),
  fc.record({ choices: fc.array(value, { minLength: 1, maxLength: 6 }) }),
);
const path = fc.oneof(
  name,
  fc.tuple(name, fc.nat(9), name).map((parts) => parts.join(".")),
);
const arbitrary: fc.Arbitrary<Assignment> = fc.record(
  {
    title: text,
    course: text,
    intro: text.filter((each) => each !== ""),
    questions: fc.array(
      fc.record(
        {
          calculator: name,
          intro: text.filter((each) => each !== ""),
          fixed: fc.dictionary(name, text, { maxKeys: 4, noNullPrototype: true }),
          varied: fc.dictionary(path, variation, { maxKeys: 4, noNullPrototype: true }),
          asked: fc.array(fc.record({ output: name, tolerance: text }), { maxLength: 4 }),
          predictFirst: fc.constant(true),
          units: fc.constantFrom("mm", "inch", "fraction"),
        },
        { requiredKeys: ["calculator", "fixed", "varied", "asked"] },
      ),
      { minLength: 1, maxLength: 5 },
    ),
  },
  { requiredKeys: ["title", "course", "questions"] },
);

describe("the file", () => {
  test("comes back as it was, whatever is in it", () => {
    fc.assert(
      fc.property(arbitrary, (assignment) => {
        expect(readAssignment(JSON.parse(assignmentFile(assignment)))).toEqual(assignment);
      }),
    );
  });

  test("may be short: numbers are in base units, and what is left out is not there", () => {
    expect(
      readAssignment({
        version: 1,
        title: "T",
        course: "C",
        questions: [
          { calculator: "bend-length", fixed: { angle: 90 }, varied: { radius: { from: 1, to: 2, step: 0.5 } }, asked: [] },
        ],
      }).questions,
    ).toEqual([
      { calculator: "bend-length", fixed: { angle: "90" }, varied: { radius: { from: "1", to: "2", step: "0.5" } }, asked: [] },
    ]);
  });

  const base = { version: 1, title: "T", course: "C", questions: [] as unknown[] };
  const one = (question: object) => ({ ...base, questions: [{ calculator: "bend-length", asked: [], ...question }] });
  test.each([
    [null, ""],
    ["text", ""],
    [{ ...base, version: 2 }, "version"],
    [{ ...base, version: undefined }, "version"],
    [{ ...base, titel: "T" }, "titel"],
    [{ ...base, title: ["T"] }, "title"],
    [{ ...base, questions: {} }, "questions"],
    [{ ...base, questions: [7] }, "questions.0"],
    [one({ calculator: undefined }), "questions.0.calculator"],
    [one({ asked: undefined }), "questions.0.asked"],
    [one({ asked: [{ output: "blank" }] }), "questions.0.asked.0.tolerance"],
    [one({ fixed: { legs: [60, 25] } }), "questions.0.fixed.legs"],
    [one({ varied: { radius: "1mm" } }), "questions.0.varied.radius"],
    [one({ varied: { radius: { from: "1mm" } } }), "questions.0.varied.radius.to"],
    [one({ varied: { radius: { choices: "1mm" } } }), "questions.0.varied.radius.choices"],
    [one({ varied: { radius: { choices: [], from: "1mm" } } }), "questions.0.varied.radius.from"],
    [one({ predictFirst: "yes" }), "questions.0.predictFirst"],
    [one({ units: "cubits" }), "questions.0.units"],
  ])("refuses %j at %s", (file, field) => {
    expect(() => readAssignment(file)).toThrow(expect.objectContaining({ name: "InputError", field }));
  });

  test("no JSON makes it fail any other way", () => {
    fc.assert(
      fc.property(fc.jsonValue(), (json) => {
        try {
          readAssignment(json);
        } catch (error) {
          expect(error).toHaveProperty("name", "InputError");
        }
      }),
    );
  });
});

describe("the address", () => {
  test("is readable", () => {
    expect(assignmentQuery(bracket)).toBe(
      "assign.version=1&assign.title=Blank+of+a+bracket&assign.course=Sheet+metal+1,+autumn" +
        "&assign.intro=Work+by+hand,+then+enter+what+you+found." +
        "&assign.1.calculator=bend-length&assign.1.intro=A+bracket+is+bent+once.+How+long+is+its+blank%3F" +
        "&assign.1.fix.angle=90deg&assign.1.fix.legs=60mm;25mm&assign.1.fix.kFactor=0.4" +
        "&assign.1.range.thickness=1mm:2mm:0.25mm&assign.1.range.radius=2mm:4mm:0.5mm" +
        "&assign.1.range.legs.1.leg=20mm:40mm:1mm&assign.1.ask.blank=0.2mm&assign.1.ask.deduction=2%25&assign.1.predict=yes" +
        "&assign.2.calculator=punch-load&assign.2.fix.thickness=1.2mm" +
        "&assign.2.choices.material=steel-cr;al-5052-h32;stainless-304&assign.2.range.diameter=1/4in:1/2in:1/16in" +
        "&assign.2.ask.force=rounding&assign.2.units=inch",
    );
  });

  test("comes back as it was, whatever is in it", () => {
    expect(read(assignmentQuery(bracket))).toEqual(bracket);
    fc.assert(
      fc.property(arbitrary, (assignment) => {
        expect(read(assignmentQuery(assignment))).toEqual(assignment);
      }),
    );
  });

  test("leaves what belongs to others alone", () => {
    expect(read("bend-length.radius=2mm&q=assign")).toBeUndefined();
    expect(read(`bend-length.radius=2mm&${assignmentQuery(bracket)}`)).toEqual(bracket);
  });

  test("questions keep their order and need not be numbered without gaps", () => {
    const parts = assignmentParts(bracket).map(([key, each]): [string, string] => [key.replace("assign.2.", "assign.10."), each]);
    expect(assignmentFromAddress(parts.reverse())?.questions.map(({ calculator }) => calculator)).toEqual([
      "bend-length",
      "punch-load",
    ]);
  });

  test.each([
    ["assign.title=T", "version"],
    ["assign.version=2&assign.title=T", "version"],
    ["assign.version=1&assign.colour=red", "assign.colour"],
    ["assign.version=1&assign.1.guess=yes", "assign.1.guess"],
    ["assign.version=1&assign.1.units=cubits", "assign.1.units"],
    ["assign.version=1&assign.1.fix=2mm", "assign.1.fix"],
    ["assign.version=1&assign.0.calculator=x", "assign.0.calculator"],
  ])("refuses %s", (query, field) => expect(() => read(query)).toThrow(expect.objectContaining({ name: "InputError", field })));

  test("names of JavaScript's own are nothing special", () => {
    const found = read("assign.version=1&assign.1.calculator=x&assign.1.fix.__proto__=a&assign.1.range.constructor=1:2:3");
    expect(Object.keys(found?.questions[0]?.fixed ?? {})).toEqual(["__proto__"]);
    expect(Object.keys(found?.questions[0]?.varied ?? {})).toEqual(["constructor"]);
  });
});
