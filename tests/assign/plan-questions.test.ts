import { describe, expect, test } from "vitest";
import { addressParts } from "../../src/lib/address.ts";
import { assignmentFromAddress, assignmentQuery } from "../../src/lib/assign/address.ts";
import { answerKey, answerKeyCsv } from "../../src/lib/assign/answer-key.ts";
import { bankCsv, bankQuestions } from "../../src/lib/assign/bank.ts";
import { checkAnswer, type Verdict } from "../../src/lib/assign/check-answer.ts";
import { checkAssignment } from "../../src/lib/assign/check-assignment.ts";
import type { Assignment, Question } from "../../src/lib/assign/definition.ts";
import { ownQuestion, questionWith } from "../../src/lib/assign/own-question.ts";
import { printedSheets } from "../../src/lib/assign/printed-sheet.ts";
import { qtiFiles } from "../../src/lib/assign/qti.ts";
import { symbolKeys } from "../../src/lib/formula.ts";
import type { Raw } from "../../src/lib/inputs.ts";
import { partInputs } from "../../src/lib/part/form.ts";
import { planFrom } from "../../src/lib/part/plan.ts";
import planWorksheet from "../../src/lib/part/plan-worksheet.ts";
import { phraseText } from "../../src/lib/quantity/phrase.ts";
import { runWorksheet } from "../../src/lib/worksheet.ts";
import { form, up } from "../part/samples.ts";
import { catalogue, question, worksheetById } from "./shared.ts";
import { readXml } from "./xml-reader.ts";

const sourceOf = (id: string) => (id === planWorksheet.id ? planWorksheet : worksheetById(id));
const fixedOf = (raw: Raw) => Object.fromEntries(addressParts(partInputs, raw));

/** A channel of 1 mm sheet, R = 1 mm, K = 0.5, so that every number can be had by hand. */
const channelForm = form({
  name: "Channel",
  width: "80mm",
  depth: "50mm",
  south: [up("20mm")],
  north: [up("30mm")],
  holes: [
    { panel: "base", x: "15mm", y: "25mm", diameter: "5mm" },
    { panel: "north.1", x: "40mm", y: "12mm", diameter: "5mm" },
  ],
});

const asked = ["blankDepth", "north.1.sightLine", "hole.2.y", "mass", "bends"];
const channel = (more: Partial<Question> = {}): Question =>
  question("plan", {
    fixed: fixedOf(channelForm),
    asked: asked.map((output) => ({ output, tolerance: output === "mass" ? "2%" : output === "bends" ? "rounding" : "0.1mm" })),
    ...more,
  });
const assignment = (...questions: Question[]): Assignment => ({ title: "Channel", course: "Sheet metal 1", questions });
const check = (...questions: Question[]) => checkAssignment(assignment(...questions), sourceOf, catalogue);
const stated = (fixed: Record<string, string>, output: string, tolerance = "0.02mm") =>
  questionWith(
    channel({ fixed: { ...fixedOf(channelForm), ...fixed }, asked: [{ output, tolerance }] }),
    0,
    {},
    sourceOf,
    catalogue,
  );

describe("the answers of a plan", () => {
  const own = questionWith(channel(), 0, {}, sourceOf, catalogue);

  // By hand: BA = π/2 (1 + 0.5), SB = 2, so BD = 4 − 2.35619 = 1.64381.
  const allowance = (Math.PI / 2) * 1.5;
  const deduction = 4 - allowance;

  test("are those worked out by hand", () => {
    const depth = 20 + 50 + 30 - 2 * deduction;
    const firstFlat = 20 - 2;
    const base = firstFlat + allowance;
    // The fingers hold the base, so the line lies one radius beyond the tangent line on the base's side.
    const sight = base + (50 - 4) + 1;
    // Its place is from the outside corner, 2 mm before the flat of the leg.
    const hole = base + (50 - 4) + allowance - 2 + 12;
    // Two holes of 5 mm out; 7850 kg/m³ is the density of steel in EN 10088-1's and every handbook's table (common knowledge).
    const mass = (80 * depth - 2 * (Math.PI / 4) * 25) * 1e-9 * 7850;
    expect(own.asked.map(({ right }) => right)).toEqual([
      expect.closeTo(depth, 9),
      expect.closeTo(sight, 9),
      expect.closeTo(hole, 9),
      expect.closeTo(mass, 3),
      2,
    ]);
  });

  test("are those of the plan's own sheet", () => {
    const { plan } = planFrom(channelForm, catalogue);
    const { outputs } = own.answer;
    expect(outputs.blankWidth).toBe(plan?.blank.width);
    for (const bend of plan?.bends ?? []) {
      expect(outputs[`${bend.id}.sightLine`]).toBe(bend.sightLine);
      expect(outputs[`${bend.id}.swingAngle`]).toBe(bend.swing);
    }
    // FAA-H-8083-31 and any handbook: leaf swung beyond the angle, for the metal springs back.
    expect(outputs["north.1.swingAngle"]).toBeGreaterThan(90);
    expect(outputs["hole.1.x"]).toBe(15);
    // Force = perimeter × thickness × shear strength: the textbook's formula, with the strength of this steel.
    const strength = catalogue.materials["steel-cr"].shearStrength.value;
    expect([null, expect.closeTo(Math.PI * 5 * strength, 6)]).toContainEqual(outputs.punchForce);
  });

  test("what the part does not have is not known, and asking for it is a fault", () => {
    expect(own.answer.outputs["west.1.sightLine"]).toBeNull();
    expect(own.answer.outputs.rise).toBeNull();
    const { problems } = check(channel({ asked: [{ output: "east.1.sightLine", tolerance: "0.2mm" }] }));
    expect(problems.map(({ field }) => field)).toEqual(["questions.0.asked.0.output"]);
    expect(problems[0]?.message).toContain("not known from these numbers");
  });

  test("the working uses the formulas that are declared, and every source is known", () => {
    for (const { formula, values } of own.answer.working) {
      expect(planWorksheet.formulas).toContain(formula);
      expect(Object.keys(values)).toEqual(expect.arrayContaining([...symbolKeys(formula), formula.result]));
    }
    const last = own.answer.working.at(-1);
    expect(last?.values.developed).toBe(own.answer.outputs.blankDepth);
    for (const source of [...planWorksheet.sources, ...own.answer.sources])
      expect(Object.keys(catalogue.sources)).toContain(source);
    for (const source of own.answer.sources) expect(planWorksheet.sources).toContain(source);
    for (const caution of planWorksheet.cautions) expect(Object.keys(catalogue.cautions)).toContain(caution);
  });

  test("a cone: its sector by the geometry of the cone", () => {
    const cone = stated(
      { kind: "cone", largeDiameter: "200mm", smallDiameter: "120mm", height: "96mm", south: "", north: "", holes: "" },
      "outerRadius",
    );
    // By hand: slant = √(96² + 40²) = 104; radii go with the diameters: 104 · 200/80 and 104 · 120/80; angle = 360 · 100/260.
    expect(cone.answer.outputs).toMatchObject({
      outerRadius: expect.closeTo(260, 9),
      innerRadius: expect.closeTo(156, 9),
      sectorAngle: expect.closeTo(138.4615385, 6),
      rise: null,
    });
    expect(cone.given.map(({ label }) => label)).not.toContain("Base width, west to east");
  });

  test("a tube: round the middle of the sheet", () => {
    const tube = stated({ kind: "tube", diameter: "151mm", length: "200mm", south: "", north: "", holes: "" }, "rise");
    // By hand: outside 151, sheet 1, so π · 150.
    expect(tube.answer.outputs.blankWidth).toEqual(expect.closeTo(Math.PI * 150, 6));
    expect(tube.asked[0]?.right).toBeGreaterThan(0);
  });

  test("a rule that the part breaks stands beside the answer", () => {
    const short = stated({ north: "6mm:90deg:up", holes: "" }, "blankDepth");
    expect(short.answer.remarks.some(({ level, phrase }) => level === "caution" && /at least/.test(phraseText(phrase)))).toBe(
      true,
    );
  });
});

describe("what a question states", () => {
  test("is every field that matters, cells with the side or hole they belong to, and no other", () => {
    const { given } = questionWith(channel(), 0, { "north.0.leg": "31mm" }, sourceOf, catalogue);
    const lines = Object.fromEntries(given.map(({ label, text }) => [label, text]));
    expect(lines["North leg 1"]).toBe("31 mm");
    expect(lines["South leg 1"]).toBe("20 mm");
    expect(lines["Angle turned through at north leg 1"]).toBe("90°");
    expect(lines["Diameter of hole 2"]).toBe("5 mm");
    expect(lines["K-factor"]).toBe("0.5");
    for (const label of ["Gap at the corners", "Number of parts", "Hardness", "Height", "Measured bend deduction"])
      expect(Object.keys(lines)).not.toContain(label);
    expect(new Set(given.map(({ label }) => label)).size).toBe(given.length);
    expect(given.filter(({ own }) => own).map(({ path }) => path)).toEqual(["north.0.leg"]);
  });
});

describe("variations of a part", () => {
  const varied = {
    thickness: { from: "1mm", to: "2mm", step: "0.5mm" },
    radius: { choices: ["1mm", "2mm"] },
    width: { from: "60mm", to: "100mm", step: "10mm" },
    "north.0.leg": { from: "25mm", to: "40mm", step: "5mm" },
  };
  const good = channel({ varied, fixed: withoutVaried() });

  function withoutVaried() {
    const { thickness: _, radius: __, width: ___, ...rest } = fixedOf(channelForm);
    return rest;
  }

  test("give every student a part of their own", () => {
    expect(check(good).problems).toEqual([]);
    const answers = Array.from({ length: 30 }, (_, student) =>
      ownQuestion(assignment(good), 0, `s${student}`, sourceOf, catalogue)
        .asked.map(({ right }) => right)
        .join(),
    );
    expect(new Set(answers).size).toBeGreaterThan(15);
  });

  test("those that give no plan are named with their numbers", () => {
    // The hole on the north leg needs 12 + 2.5 mm of it; 12 mm of leg hold the bend but not the hole.
    const { problems } = check(channel({ varied: { "north.0.leg": { choices: ["12mm", "30mm"] } } }));
    expect(problems.map(({ field }) => field)).toEqual(["questions.0.varied"]);
    expect(problems[0]?.message).toContain("With North leg 1 12 mm: Hole 2 must lie on Leg north 1");
    expect(problems[0]?.message).toContain("1 of 2 combinations");
  });

  test("a leg shorter than its bend is one of them", () => {
    const { problems } = check(channel({ varied: { "south.0.leg": { from: "1mm", to: "3mm", step: "1mm" } } }));
    expect(problems[0]?.message).toContain("South leg 1 1 mm: Leg south 1 must be longer than 2.00 mm");
    expect(problems[0]?.message).toContain("2 of 3 combinations");
  });

  test("an output no plan has is named with some of those there are", () => {
    const { problems } = check(channel({ asked: [{ output: "blank", tolerance: "1mm" }] }));
    expect(problems[0]?.message).toContain("It has blankWidth, blankDepth, mass");
    expect(problems[0]?.message.length).toBeLessThan(700);
  });

  test("keys, banks and sheets are made of them as of any other question", () => {
    const rows = answerKey(
      assignment(good),
      [
        { id: "s1", note: "" },
        { id: "s2", note: "" },
      ],
      sourceOf,
      catalogue,
    );
    const csv = answerKeyCsv(rows);
    expect(csv).toContain("1. North leg 1");
    expect(csv).toContain("1. Depth of the blank, south to north [mm]");
    const { sheets } = printedSheets(assignment(good), rows);
    expect(sheets[0]?.questions[0]?.page).toBe("/plan/");
    const bank = bankQuestions(assignment(good), 3, sourceOf, catalogue);
    expect(bankCsv(bank).split("\r\n").length).toBeGreaterThan(3 * asked.length);
    for (const { text } of qtiFiles(assignment(good), bank)) readXml(text);
  });
});

describe("usual slips", () => {
  const own = questionWith(channel(), 0, {}, sourceOf, catalogue);
  const answer = (place: number, value: number): Verdict => checkAnswer(own, place, String(value), catalogue);
  const right = (place: number): number => own.asked[place]?.right ?? Number.NaN;
  const deduction = 4 - (Math.PI / 2) * 1.5;

  test.each([
    ["deductions added", 0, (): number => 100 + 2 * deduction, "deduction-sign"],
    ["deductions forgotten", 0, (): number => 100, "deduction-sign"],
    ["one deduction for both bends", 0, (): number => 100 - deduction, "deduction-sign"],
    ["measured from the north edge", 1, (): number => right(0) - right(1), "other-edge"],
    ["hole measured from the north edge", 2, (): number => right(0) - right(2), "other-edge"],
    [
      "the middle of the bend zone for the sight line",
      1,
      (): number => own.answer.outputs["north.1.line"] as number,
      "other-answer",
    ],
  ] as const)("%s", (_, place, value, slip) => expect(answer(place, value())).toMatchObject({ kind: "slip", slip }));

  test("the right answer is right, to the tolerance", () => {
    expect(answer(0, right(0) + 0.09)).toEqual({ kind: "right", within: true });
    expect(answer(4, 2)).toEqual({ kind: "right" });
    expect(answer(4, 3)).toEqual({ kind: "wrong" });
  });

  test("the corner left inside taken for the angle turned through", () => {
    const bent = stated({ north: "30mm:60deg:up", holes: "" }, "blankDepth");
    const taken = stated({ north: "30mm:120deg:up", holes: "" }, "blankDepth");
    expect(checkAnswer(bent, 0, String(taken.asked[0]?.right), catalogue)).toMatchObject({
      kind: "slip",
      slip: "included-angle",
    });
  });

  test("inside sizes taken for outside ones", () => {
    const inside = stated({ measured: "inside", holes: "" }, "blankDepth");
    expect(checkAnswer(stated({ holes: "" }, "blankDepth"), 0, String(inside.asked[0]?.right), catalogue)).toMatchObject({
      kind: "slip",
      slip: "inside-outside",
    });
  });
});

describe("the address", () => {
  // Frozen: links that were handed out rely on it.
  const frozen =
    "assign.version=1&assign.title=Channel&assign.course=Sheet+metal+1" +
    "&assign.1.calculator=plan&assign.1.fix.depth=50mm&assign.1.fix.south=20mm%3A90deg%3Aup&assign.1.fix.north=30mm%3A90deg%3Aup" +
    "&assign.1.fix.holes=base%3A15mm%3A25mm%3A5mm%3Bnorth.1%3A40mm%3A12mm%3A5mm&assign.1.fix.kFactor=0.5" +
    "&assign.1.range.thickness=1mm%3A2mm%3A0.5mm&assign.1.choices.radius=1mm%3B2mm&assign.1.range.north.0.leg=25mm%3A40mm%3A5mm" +
    "&assign.1.ask.blankDepth=0.2mm&assign.1.ask.north.1.sightLine=0.2mm&assign.1.ask.hole.2.y=0.3mm&assign.1.ask.bends=rounding" +
    "&assign.1.predict=yes&assign.1.units=mm";

  test("of a question about a part is read for good", () => {
    const read = assignmentFromAddress(new URLSearchParams(frozen));
    expect(read?.questions[0]).toEqual({
      calculator: "plan",
      fixed: {
        depth: "50mm",
        south: "20mm:90deg:up",
        north: "30mm:90deg:up",
        holes: "base:15mm:25mm:5mm;north.1:40mm:12mm:5mm",
        kFactor: "0.5",
      },
      varied: {
        thickness: { from: "1mm", to: "2mm", step: "0.5mm" },
        radius: { choices: ["1mm", "2mm"] },
        "north.0.leg": { from: "25mm", to: "40mm", step: "5mm" },
      },
      asked: [
        { output: "blankDepth", tolerance: "0.2mm" },
        { output: "north.1.sightLine", tolerance: "0.2mm" },
        { output: "hole.2.y", tolerance: "0.3mm" },
        { output: "bends", tolerance: "rounding" },
      ],
      predictFirst: true,
      units: "mm",
    });
    if (!read) throw new Error("not read");
    expect(checkAssignment(read, sourceOf, catalogue).problems).toEqual([]);
    expect(assignmentFromAddress(new URLSearchParams(assignmentQuery(read)))).toEqual(read);
    const own = ownQuestion(read, 0, "s-1001", sourceOf, catalogue).given.filter((line) => line.own);
    expect(own.map(({ text }) => text)).toEqual(["2 mm", "2 mm", "25 mm"]);
  });
});

test("the form of the plan's worksheet is the part's form, field by field", () => {
  expect(Object.keys(planWorksheet.inputs)).toEqual(Object.keys(partInputs));
  expect(runWorksheet(planWorksheet, {}, catalogue).answer?.outputs.bends).toBe(0);
});
