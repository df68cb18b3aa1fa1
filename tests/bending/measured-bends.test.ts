import { describe, expect, test } from "vitest";
import { deductionFor, measuredBend, measuredBends, measuredWhen } from "../../src/lib/bending/measured-bends.ts";
import type { MeasuredBend } from "../../src/lib/catalogue.ts";
import { phraseText } from "../../src/lib/quantity/phrase.ts";

const bend = (change: Partial<MeasuredBend> = {}): MeasuredBend => ({
  material: "steel-cr",
  thickness: 1.2,
  radius: 1.6,
  angle: 90,
  deduction: 2.27,
  uncertainty: 0.08,
  pieces: 6,
  date: "2026-09-14",
  ...change,
});
const wanted = { material: "steel-cr", thickness: 1.2, radius: 1.6, angle: 90 } as const;

describe("which measured bend is used", () => {
  test("none of another metal, thickness, radius or angle", () => {
    for (const change of [{ material: "copper-soft" }, { thickness: 1.3 }, { radius: 1.8 }, { angle: 92 }] as const)
      expect(measuredBend([bend(change)], wanted), JSON.stringify(change)).toBeUndefined();
  });

  test("a sheet and a nose within 5 %, and an angle within 1°", () => {
    for (const change of [{ thickness: 1.25 }, { radius: 1.67 }, { angle: 90.8 }])
      expect(measuredBend([bend(change)], wanted), JSON.stringify(change)).toBeDefined();
    // 5 % of a sharp nose would be finer than anyone measures.
    expect(measuredBend([bend({ radius: 0.24 })], { ...wanted, radius: 0.2 })).toBeDefined();
  });

  test("the nearest of those that fit, then one of this device, then the newest", () => {
    const near = bend({ date: "2026-01-01" });
    const far = bend({ thickness: 1.25, onDevice: true, date: "2026-12-01" });
    const own = bend({ onDevice: true, date: "2026-02-01" });
    const newer = bend({ date: "2026-06-01" });
    const order = (all: MeasuredBend[]) => measuredBends(all, wanted).map((each) => each.bend);
    expect(order([far, near, newer, own])).toEqual([own, newer, near, far]);
    expect(order([own, near, far, newer])).toEqual([own, newer, near, far]);
  });

  test("where angles are carried over, the nearer angle", () => {
    const { angle: _, ...any } = wanted;
    const square = bend();
    const blunt = bend({ angle: 45, deduction: 0.66, date: "2026-10-01" });
    expect(measuredBend([square, blunt], { ...any, nearAngle: 45 })).toBe(blunt);
    expect(measuredBend([blunt, square], { ...any, nearAngle: 90 })).toBe(square);
  });

  test("what does not fit is said", () => {
    const [fit] = measuredBends([bend({ thickness: 1.5, radius: 3, angle: 45 })], wanted);
    expect(fit?.misfits.map((each) => phraseText(each))).toEqual([
      "other thickness, 1.50 mm",
      "other radius, 3.00 mm",
      "other angle, 45.0°",
    ]);
  });
});

test("a deduction for legs measured to the outermost point is less by twice the difference of the setbacks", () => {
  // At 120° about 2 mm in 1 mm sheet: 3 mm · tan 60° to the apex, 3 mm to the outermost point.
  const size = { angle: 120, radius: 2, thickness: 1 };
  const apex = 2 * 3 * Math.tan(Math.PI / 3) - 5;
  expect(deductionFor(apex, size, "apex", "tangent")).toBeCloseTo(2 * 3 - 5, 9);
  expect(deductionFor(1, size, "tangent", "apex")).toBeCloseTo(apex, 9);
  expect(deductionFor(1, { ...size, angle: 180 }, "tangent", "tangent")).toBe(1);
});

test("when and where it was measured", () => {
  expect(phraseText(measuredWhen(bend()))).toBe("in the shop’s file, 2026-09-14, 6 pieces");
  expect(phraseText(measuredWhen(bend({ onDevice: true, lot: "4711", pieces: 1 })))).toBe(
    "kept on this device, 2026-09-14, lot 4711, 1 piece",
  );
});
