import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bendAllowance, kFromAllowance } from "../../src/lib/bending/bend-allowance.ts";
import { dinDeduction, dinFactor, smallestDinRatio, steppedDinFactor } from "../../src/lib/bending/din-6935.ts";
import { faaAllowance, groupAllowance, navyAllowance, steppedKFactor } from "../../src/lib/bending/handbook-allowances.ts";
import { allowanceBy, methodLimits, publishedAllowances } from "../../src/lib/bending/methods.ts";
import { bendDeduction, setback } from "../../src/lib/bending/setback.ts";
import { usualLegEnd } from "../../src/lib/bending/symbols.ts";
import { phraseText } from "../../src/lib/quantity/phrase.ts";

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const bend = fc.record({ angle: number(1, 180), radius: number(0, 50), thickness: number(0.1, 6) });
const factor = number(0, 1);

describe("bend allowance", () => {
  test("grows with the angle, the radius and the K-factor", () => {
    fc.assert(
      fc.property(bend, factor, number(0.001, 5), (size, kFactor, more) => {
        const base = bendAllowance({ ...size, kFactor });
        expect(bendAllowance({ ...size, angle: Math.min(180, size.angle + more), kFactor })).toBeGreaterThanOrEqual(base);
        expect(bendAllowance({ ...size, radius: size.radius + more, kFactor })).toBeGreaterThan(base);
        expect(bendAllowance({ ...size, kFactor: Math.min(1, kFactor + more) })).toBeGreaterThanOrEqual(base);
      }),
    );
  });

  test("grows with the angle and the radius by every published method that has an answer", () => {
    fc.assert(
      fc.property(bend, (size) => {
        const small = publishedAllowances({ ...size, angle: size.angle * 0.9 });
        const wide = publishedAllowances({ ...size, radius: size.radius + 1 });
        publishedAllowances(size).forEach((published, index) => {
          const { allowance } = published;
          const [smaller, wider] = [small[index]?.allowance, wide[index]?.allowance];
          // The standard drops the arc of bends below 15°, and K jumps in the textbooks' rule: both are theirs.
          if (typeof allowance !== "number" || published.source === "din-6935") return;
          if (typeof smaller === "number") expect(allowance).toBeGreaterThan(smaller);
          if (typeof wider === "number") expect(wider).toBeGreaterThan(allowance);
        });
      }),
    );
  });

  test("gives back the K-factor it was made with", () => {
    fc.assert(
      fc.property(bend, factor, (size, kFactor) => {
        const allowance = bendAllowance({ ...size, kFactor });
        expect(kFromAllowance({ ...size, allowance })).toBeCloseTo(kFactor, 8);
      }),
    );
  });

  test("lies between that of the inside and that of the outside face by every published method", () => {
    fc.assert(
      fc.property(bend, (size) => {
        for (const { allowance, source } of publishedAllowances(size)) {
          if (typeof allowance !== "number" || (source === "din-6935" && size.angle < 15)) continue;
          // Constants cut by their sources may fall short of the inside arc by up to a hundredth of the radius.
          expect(allowance).toBeGreaterThan(bendAllowance({ ...size, kFactor: 0 }) * 0.985 - 1e-9);
          expect(allowance).toBeLessThan(bendAllowance({ ...size, kFactor: 1 }));
        }
      }),
    );
  });

  test("the two prints of the aircraft rule differ by 0.00013 R a degree", () => {
    fc.assert(
      fc.property(bend, (size) => {
        expect(faaAllowance(size) - navyAllowance(size)).toBeCloseTo(0.00013 * size.radius * size.angle, 9);
      }),
    );
  });

  test("the textbooks' K jumps where the radius reaches two thicknesses", () => {
    expect(steppedKFactor({ radius: 1.999, thickness: 1 })).toBe(0.33);
    expect(steppedKFactor({ radius: 2, thickness: 1 })).toBe(0.5);
  });

  test("an unknown hardness is refused by name", () => {
    const unknown = "spring" as "hard";
    expect(() => groupAllowance({ angle: 90, radius: 1, thickness: 1, hardness: unknown })).toThrow(
      "Hardness must be one of soft, medium, hard; it is “spring”.",
    );
  });
});

describe("setback and deduction", () => {
  test("the blank is the same whichever way the legs are measured", () => {
    fc.assert(
      fc.property(number(90, 170), number(0, 20), number(0.1, 6), factor, (angle, radius, thickness, kFactor) => {
        const size = { angle, radius, thickness };
        const allowance = bendAllowance({ ...size, kFactor });
        const blank = (legTo: "apex" | "tangent") => {
          const reach = setback({ ...size, legTo });
          return 2 * (50 + reach) - bendDeduction({ setback: reach, allowance });
        };
        expect(blank("apex")).toBeCloseTo(blank("tangent"), 9);
      }),
    );
  });

  test("the apex is as far as the outermost point at 90°, farther beyond", () => {
    const at = (angle: number, legTo: "apex" | "tangent") => setback({ angle, radius: 2, thickness: 1, legTo });
    expect(at(90, "apex")).toBeCloseTo(at(90, "tangent"), 12);
    expect(at(120, "apex")).toBeGreaterThan(at(120, "tangent"));
    expect([usualLegEnd(90), usualLegEnd(90.1)]).toEqual(["apex", "tangent"]);
  });

  test("says which end a leg can be measured to", () => {
    expect(() => setback({ angle: 60, radius: 1, thickness: 1, legTo: "tangent" })).toThrow("Choose the apex.");
    expect(() => setback({ angle: 179.5, radius: 1, thickness: 1, legTo: "apex" })).toThrow("Choose the outermost point.");
  });
});

describe("DIN 6935", () => {
  test("the factor rises to 1 and is twice a K-factor inside the sheet", () => {
    fc.assert(
      fc.property(number(0.06, 20), number(0.1, 6), (ratio, thickness) => {
        const k = dinFactor({ radius: ratio * thickness, thickness });
        expect(k).toBeGreaterThan(0);
        expect(k).toBeLessThanOrEqual(1);
        expect(dinFactor({ radius: ratio * thickness * 1.1, thickness })).toBeGreaterThanOrEqual(k);
      }),
    );
  });

  test("the stepped factor is near the formula; farthest just above r/s = 1.5, where 0.8 stands for 0.738", () => {
    fc.assert(
      fc.property(number(0.65, 5), (ratio) => {
        expect(Math.abs(steppedDinFactor(ratio) - dinFactor({ radius: ratio, thickness: 1 }))).toBeLessThan(0.0625);
      }),
    );
    expect(() => steppedDinFactor(0.6)).toThrow("starts at r/s = 0.65");
    expect(() => steppedDinFactor(Number.NaN)).toThrow("starts at r/s = 0.65");
  });

  test("both branches meet at 90°, and bends below 15° take nothing", () => {
    const size = { radius: 3, thickness: 2 };
    expect(dinDeduction({ ...size, angle: 90 - 1e-9 })).toBeCloseTo(dinDeduction({ ...size, angle: 90 }), 6);
    expect(dinDeduction({ ...size, angle: 14.9 })).toBe(0);
    expect(dinDeduction({ ...size, angle: 15.1 })).not.toBe(0);
  });

  test("a radius so small that the formula has no neutral line is refused with the radius that has one", () => {
    expect(() => dinFactor({ radius: 0.05, thickness: 1 })).toThrow("must be above 0.06 mm");
    expect(smallestDinRatio).toBeCloseTo(0.0501, 4);
  });

  test("the allowance hidden in its deduction is that of a neutral line at k/2", () => {
    fc.assert(
      fc.property(number(15.5, 179), number(0.2, 20), number(0.2, 4), (angle, ratio, thickness) => {
        const size = { angle, radius: ratio * thickness, thickness };
        const { allowance } = allowanceBy({ method: "din-6935", kFactor: 0, hardness: "soft" }, size, "apex");
        expect(allowance / bendAllowance({ ...size, kFactor: dinFactor(size) / 2 })).toBeCloseTo(1, 8);
      }),
    );
  });
});

describe("a measured deduction", () => {
  const size = { angle: 90, radius: 1.2, thickness: 1.2 };
  const choice = { method: "measured", kFactor: 0.45, hardness: "medium" } as const;

  test("comes back as the allowance that makes it", () => {
    expect(allowanceBy({ ...choice, deduction: 2.17 }, size, "apex").allowance).toBeCloseTo(4.8 - 2.17, 12);
  });

  test("has to be there, and has to leave something for the bend", () => {
    expect(() => allowanceBy(choice, size, "apex")).toThrow("Bend deduction is not entered.");
    expect(() => allowanceBy({ ...choice, deduction: 4.8 }, size, "apex")).toThrow("must be below twice the setback, 4.80 mm");
  });
});

test("a method used beyond its source says so", () => {
  const limits = (method: "din-6935" | "neutral-line", angle: number, radius: number) =>
    methodLimits(method, { angle, radius, thickness: 1 }).map(({ level, phrase }) => `${level}: ${phraseText(phrase)}`);
  expect(limits("din-6935", 90, 0.5)).toContainEqual(expect.stringMatching(/^caution: .*starts at R\/T = 0.65; here it is 0.50/));
  expect(limits("din-6935", 10, 2)).toContainEqual(expect.stringContaining("less than 15°"));
  expect(limits("neutral-line", 90, 0.5)).toEqual([]);
});
