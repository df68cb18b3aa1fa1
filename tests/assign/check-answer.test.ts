import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { checkAnswer } from "../../src/lib/assign/check-answer.ts";
import { type OwnQuestion, questionWith } from "../../src/lib/assign/own-question.ts";
import { type SlipId, slipIds, slipValues } from "../../src/lib/assign/slips.ts";
import { answerText } from "../../src/lib/assign/tolerance.ts";
import { lengthViews } from "../../src/lib/quantity/format.ts";
import { phraseText } from "../../src/lib/quantity/phrase.ts";
import { worksheets } from "../../src/lib/registry.ts";
import { runWorksheet } from "../../src/lib/worksheet.ts";
import { catalogue, question, stated, worksheetById } from "./shared.ts";

/** A strip bent once through 60°; by hand: BA = π/3 · (3 + 0.4 · 2), SB = (3 + 2) · tan 30°. */
const bent = { thickness: "2mm", radius: "3mm", angle: "60deg", kFactor: "0.4", legs: "50mm;30mm" };
const turn = Math.PI / 3;
const allowance = turn * 3.8;
const setback = 5 * Math.tan(turn / 2);
const deduction = 2 * setback - allowance;
const blank = 80 - deduction;

const verdict = (own: OwnQuestion, typed: string | number, view: "mm" | "inch" | "fraction" = "mm") =>
  checkAnswer(own, 0, typeof typed === "number" ? typed.toFixed(3) : typed, catalogue, view);

describe("right answers", () => {
  const own = stated("bend-length", "blank", bent, "0.05mm");

  test.each([
    ["78.2", "mm"],
    ["78,21 mm", "mm"],
    ["7.82cm", "mm"],
    ["3.079 in", "mm"],
    ["3.079", "inch"],
    ["78.2mm", "inch"],
  ] as const)("%s, in %s", (typed, view) => {
    expect(blank).toBeCloseTo(78.2058, 4);
    expect(verdict(own, typed, view).kind).toBe("right");
  });

  test("to the figure the handbook shows are told from those within the tolerance", () => {
    // 78.2058: the handbook shows 78.21 mm, 3.079 in, 3-5/64 in.
    for (const exact of ["78.21", "78.2058", "3.079 in", "3 5/64 in"]) expect(verdict(own, exact)).toEqual({ kind: "right" });
    for (const near of ["78.2", "78.25", "3.08in"]) expect(verdict(own, near)).toEqual({ kind: "right", within: true });
  });

  test.each(["78.15", "78.26", "0", "-78.2"])("%s is not", (typed) => expect(verdict(own, typed).kind).not.toBe("right"));

  test("the instructor's units go before the student's", () => {
    const forced = questionWith({ ...own.question, units: "inch" }, 0, {}, worksheetById, catalogue);
    expect(verdict(forced, "3.079", "mm")).toEqual({ kind: "right" });
  });

  test.each(["", "about 78", "78 kg", "78.2 79", "NaN", "Infinity", "1e999"])("“%s” cannot be read, and says why", (typed) => {
    expect(verdict(own, typed)).toMatchObject({ kind: "unreadable", problem: { field: "blank", value: typed } });
  });

  test("rounding is judged in the figures that were entered", () => {
    // 2-1/16 in is 52.3875 mm; the nearest 1/64 either way is 0.397 mm off.
    const read = stated("length-reader", "fractionError", { value: "52.5mm" }, "rounding");
    expect(read.asked[0]?.right).toBeCloseTo(52.3875 - 52.5, 9);
    const strip = stated("bend-length", "blank", bent, "rounding");
    expect(verdict(strip, "78.21").kind).toBe("right");
    expect(verdict(strip, "78.23")).toEqual({ kind: "wrong" });
    expect(verdict(strip, "3 5/64 in").kind).toBe("right");
    expect(verdict(strip, "3.081in")).toEqual({ kind: "wrong" });
  });

  test("a share is a percentage, with or without its sign", () => {
    const load = stated("brake-load", "capacityUsed", { thickness: "1mm", length: "300mm" }, "rounding");
    const percent = 100 * (load.asked[0]?.right ?? Number.NaN);
    expect(verdict(load, `${percent}`).kind).toBe("right");
    expect(verdict(load, `${percent} %`).kind).toBe("right");
    expect(verdict(load, `${percent / 100}`)).toMatchObject({ kind: "slip", slip: "answer-unit" });
  });

  test("a shown answer is right in every calculator and every view", () => {
    let answers = 0;
    for (const sheet of worksheets) {
      const { answer } = runWorksheet(sheet, {}, catalogue);
      const asked = Object.keys(sheet.outputs).filter((key) => typeof answer?.outputs[key] === "number");
      const own = questionWith(
        question(sheet.id, { asked: asked.map((output) => ({ output, tolerance: "rounding" })) }),
        0,
        {},
        worksheetById,
        catalogue,
      );
      own.asked.forEach(({ output, right }, place) => {
        for (const view of lengthViews) {
          answers++;
          const shown = answerText(output, right, view);
          expect([sheet.id, shown, checkAnswer(own, place, shown, catalogue, view)]).toEqual([
            sheet.id,
            shown,
            { kind: "right" },
          ]);
        }
      });
    }
    expect(answers).toBeGreaterThan(150);
  });
});

/** By hand, from the formulas of a bend; angle in degrees, legs to the apex. */
function byHand({ angle = 60, radius = 3, thickness = 2, k = 0.4, legs = 80, bends = 1 }) {
  const arc = ((Math.PI * angle) / 180) * (radius + k * thickness);
  const reach = Math.tan((Math.PI * angle) / 360) * (radius + thickness);
  return legs - bends * (2 * reach - arc);
}

describe("slips", () => {
  const strip = (output: string, more: Record<string, string> = {}, tolerance = "0.02mm") =>
    stated("bend-length", output, { ...bent, ...more }, tolerance);
  const tube = { diameter: "150mm", measured: "inside", thickness: "1mm", arc: "360deg" };

  const cases: readonly [string, OwnQuestion, number, SlipId, string][] = [
    // The corner left inside, 120°, is above 90°, where the calculator measures legs to the outermost point: SB = R + T.
    ["included angle", strip("blank"), 80 - (2 * 5 - 2 * turn * 3.8), "included-angle", "turned through 60.0° from flat"],
    ["included angle in the arc", strip("allowance"), 2 * turn * 3.8, "included-angle", "corner left inside"],
    ["deduction added", strip("blank"), 80 + deduction, "deduction-sign", "added"],
    ["deduction forgotten", strip("blank"), 80, "deduction-sign", "Take off"],
    ["one deduction for two bends", strip("blank", { legs: "50mm;40mm;30mm" }), 120 - deduction, "deduction-sign", "2 bends"],
    ["both added", strip("blank", { legs: "50mm;40mm;30mm" }), 120 + 2 * deduction, "deduction-sign", "added"],
    ["legs taken for inside sizes", strip("blank"), blank + 2 * 2, "inside-outside", "inside sizes"],
    [
      "legs made inside sizes, two bends",
      strip("blank", { legs: "50mm;40mm;30mm" }),
      120 - 2 * deduction - 2 * 2 * 2,
      "inside-outside",
      "outside sizes",
    ],
    ["outside radius", strip("blank"), byHand({ radius: 5 }), "inside-outside", "5.00 mm"],
    ["inside radius of an outside one", strip("allowance"), turn * (1 + 0.8), "inside-outside", "one thickness less"],
    ["outside diameter for inside", stated("rolled-blank", "blank", tube), Math.PI * 149, "inside-outside", "outside size"],
    [
      "inside diameter for outside",
      stated("rolled-blank", "blank", { ...tube, measured: "outside" }),
      Math.PI * 151,
      "inside-outside",
      "inside size",
    ],
    [
      "two thicknesses the wrong way",
      stated("rolled-blank", "blank", tube),
      Math.PI * 153,
      "inside-outside",
      "two thicknesses more",
    ],
    ["diameter for radius", strip("blank"), byHand({ radius: 6 }), "radius-diameter", "doubled"],
    ["radius for diameter", stated("rolled-blank", "blank", tube), Math.PI * 76, "radius-diameter", "halved"],
    ["all radii for diameters", stated("cone-blank", "chord", {}), Number.NaN, "radius-diameter", "radii where diameters"],
    ["mid-thickness", strip("allowance"), turn * 4, "other-method", "K-factor of 0.5"],
    // FAA-H-8083-31: BA = (0.01743 R + 0.0078 T) A
    ["aircraft handbook", strip("allowance"), (0.01743 * 3 + 0.0078 * 2) * 60, "other-method", "FAA"],
    // DIN 6935: k = 0.65 + ½ log10(R/T), arc = π/180 · A · (R + k T/2)
    ["DIN 6935", strip("allowance", {}, "0.005mm"), turn * (3 + 0.65 + 0.5 * Math.log10(1.5)), "other-method", "DIN 6935"],
    // Machinists' rule: (0.64 T + 1.57 R) A / 90
    ["medium group", strip("allowance", {}, "0.005mm"), (0.64 * 2 + 1.57 * 3) * (60 / 90), "other-method", "medium group"],
    [
      "inches as millimetres",
      strip("allowance", { radius: "0.25in" }),
      turn * (0.25 + 0.8),
      "input-unit",
      "inches of inside radius",
    ],
    [
      "millimetres as inches",
      strip("allowance", { legs: "500mm;300mm" }),
      turn * (3 * 25.4 + 0.8),
      "input-unit",
      "millimetres of inside radius",
    ],
    ["answer in inches", strip("blank"), blank / 25.4, "answer-unit", "length in in"],
    ["turned into millimetres twice", strip("blank"), blank * 25.4, "answer-unit", "once too often"],
    ["kilonewton for newton", stated("punch-load", "force", {}, "1%"), Number.NaN, "answer-unit", "in kN"],
    ["degrees in the arc", strip("allowance"), 60 * 3.8, "radians", "π/180"],
    ["tangent in radians", strip("setback"), 5 * Math.tan(30), "radians", "pocket calculator"],
    ["tangent in radians, carried on", strip("blank"), 80 - (2 * 5 * Math.tan(30) - allowance), "radians", "pocket calculator"],
    [
      "sine in radians",
      stated("hole-circle", "chord", { diameter: "70mm", count: "8" }),
      70 * Math.abs(Math.sin(22.5)),
      "radians",
      "sine",
    ],
    ["angle in radians", stated("springback", "swingAngle", {}, "0.5%"), Number.NaN, "radians", "multiply by 180/π"],
    ["corner left inside", stated("springback", "swingAngle", {}, "0.5%"), Number.NaN, "included-angle", "180° less"],
    ["allowance for deduction", strip("deduction"), allowance, "other-answer", "bend allowance"],
  ];

  /** Where the slip is a factor on the answer itself, it is applied to the right one. */
  const onAnswer: Readonly<Record<string, (right: number) => number>> = {
    "kilonewton for newton": (right) => right / 1000,
    "angle in radians": (right) => (right * Math.PI) / 180,
    "corner left inside": (right) => 180 - right,
    // By hand: the sector of a cone of half the diameters, same height; chord = 2 L sin(φ/2), φ = 360° · r/L.
    "all radii for diameters": () => {
      const [large, small, height] = [50, 20, 150];
      const outer = (Math.hypot(large - small, height) * large) / (large - small);
      return 2 * outer * Math.sin((Math.PI * large) / outer);
    },
  };

  test.each(cases)("%s", (name, own, byHandValue, slip, words) => {
    const value = onAnswer[name]?.(own.asked[0]?.right ?? Number.NaN) ?? byHandValue;
    const found = checkAnswer(own, 0, value.toPrecision(7), catalogue);
    expect(found).toMatchObject({ kind: "slip", slip });
    expect(found.kind === "slip" ? phraseText(found.phrase) : "").toContain(words);
  });

  // Thicknesses of gauge 16 as printed in machinists' handbooks: steel 0.0598 in, aluminium (Brown & Sharpe) 0.0508 in.
  test("gauge of another metal", () => {
    const own = stated(
      "bend-length",
      "setback",
      { material: "steel-cr", thickness: "16ga", radius: "3mm", angle: "90deg" },
      "0.005mm",
    );
    expect(own.asked[0]?.right).toBeCloseTo(3 + 0.0598 * 25.4, 6);
    expect(verdict(own, 3 + 0.0508 * 25.4)).toMatchObject({ kind: "slip", slip: "other-gauge-system" });
    // The same number in a question stated in millimetres is no slip of gauges.
    const plain = stated(
      "bend-length",
      "setback",
      { material: "steel-cr", thickness: "1.519mm", radius: "3mm", angle: "90deg" },
      "0.005mm",
    );
    expect(verdict(plain, 3 + 0.0508 * 25.4)).toEqual({ kind: "wrong" });
  });

  test("inside and outside, radius and diameter of the answer itself", () => {
    const own = stated("smallest-radius", "radius", { material: "al-6061-t6", thickness: "1mm" }, "0.05mm");
    const right = own.asked[0]?.right ?? Number.NaN;
    expect(verdict(own, right + 1)).toMatchObject({ kind: "slip", slip: "inside-outside" });
    expect(verdict(own, 2 * right)).toMatchObject({ kind: "slip", slip: "radius-diameter" });
  });

  test("one that gives the right answer is none", () => {
    // 180° − 90° is 90°.
    const own = strip("blank", { angle: "90deg" });
    const values = [
      ...slipValues({ sheet: own.sheet, raw: own.raw, outputs: own.answer.outputs, asked: "blank", catalogue }, "mm"),
    ];
    expect(values.find(({ slip }) => slip === "included-angle")?.value).toBeCloseTo(own.asked[0]?.right ?? 0, 9);
    expect(verdict(own, 60)).toEqual({ kind: "wrong" });
    expect(verdict(own, own.asked[0]?.right ?? 0).kind).toBe("right");
  });

  test("within the tolerance of the right answer is right, whatever else it is", () => {
    expect(verdict(strip("blank", {}, "4mm"), 80).kind).toBe("right");
  });

  test("of several that fit, the one that tells most is told", () => {
    // K = 0.5 and R = 1 mm give 78.4153 and 78.4209: with 0.02 mm either way both fit.
    expect(verdict(strip("blank"), byHand({ k: 0.5 }))).toMatchObject({ slip: "inside-outside" });
    expect(verdict(strip("blank", {}, "0.002mm"), byHand({ k: 0.5 }))).toMatchObject({ slip: "other-method" });
  });

  test("anything else is wrong, without guesses", () => expect(verdict(strip("blank"), 71.3)).toEqual({ kind: "wrong" }));

  // Its cases stand with the questions about plans.
  const ofPlans = ["other-edge"];

  test("every slip has a case", () => {
    expect(new Set([...cases.map(([, , , slip]) => slip), "other-gauge-system", ...ofPlans])).toEqual(new Set(slipIds));
  });
});

test("whatever is typed, in whatever calculator, gets a verdict", () => {
  const typed = fc.oneof(
    fc.string({ maxLength: 20 }),
    fc.double({ noNaN: true }).map(String),
    fc
      .tuple(fc.integer({ min: -1000, max: 1000 }), fc.constantFrom("mm", "in", "°", "rad", "ga", "%", "kN", "kg"))
      .map((parts) => parts.join(" ")),
  );
  fc.assert(
    fc.property(fc.constantFrom(...worksheets), fc.nat(), typed, fc.constantFrom(...lengthViews), (sheet, pick, text, view) => {
      const { answer } = runWorksheet(sheet, {}, catalogue);
      const known = Object.keys(sheet.outputs).filter((key) => typeof answer?.outputs[key] === "number");
      if (known.length === 0) return;
      const output = known[pick % known.length] ?? "";
      const own = questionWith(question(sheet.id, { asked: [{ output, tolerance: "5%" }] }), 0, {}, worksheetById, catalogue);
      expect(["right", "slip", "wrong", "unreadable"]).toContain(checkAnswer(own, 0, text, catalogue, view).kind);
    }),
    { numRuns: 150 },
  );
});
