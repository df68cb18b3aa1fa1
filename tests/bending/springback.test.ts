import fc from "fast-check";
import { polynomialRoot } from "mathjs";
import { describe, expect, test } from "vitest";
import {
  elasticLimitRadius,
  elasticShare,
  largestRadiusForSwing,
  overbend,
  radiusAfterSpringback,
  springbackFactor,
  springbackRatio,
  toolRadiusFor,
} from "../../src/lib/bending/springback.ts";

const sheet = fc.record({
  thickness: fc.double({ min: 0.1, max: 13, noNaN: true }),
  yield: fc.double({ min: 5, max: 2500, noNaN: true }),
  elasticModulus: fc.double({ min: 10_000, max: 500_000, noNaN: true }),
});
const radius = fc.double({ min: 0.01, max: 1000, noNaN: true });
const angle = fc.double({ min: 1, max: 180, noNaN: true });
const steel = { thickness: 1, yield: 200, elasticModulus: 200_000 };

describe("the tool radius for a wanted radius", () => {
  test("springs back to the radius wanted", () => {
    fc.assert(
      fc.property(sheet, radius, (strip, wanted) => {
        const toolRadius = toolRadiusFor({ ...strip, radius: wanted });
        expect(toolRadius).toBeLessThan(elasticLimitRadius(strip));
        // Near the limit the last digits of the tool radius decide; there the ratio says it better than the radius.
        fc.pre(springbackRatio({ ...strip, toolRadius }) > 1e-3);
        expect(radiusAfterSpringback({ ...strip, toolRadius }) / wanted).toBeCloseTo(1, 9);
      }),
    );
  });

  test("is the root of the cubic that a general equation solver finds", () => {
    fc.assert(
      fc.property(sheet, radius, (strip, wanted) => {
        const share = (wanted * strip.yield) / (strip.elasticModulus * strip.thickness);
        fc.pre(share > 1e-3 && share < 1e3);
        const roots = polynomialRoot(1, -(3 + 1 / share), 0, 4).map((root) =>
          typeof root === "number" ? root : Number(root.re),
        );
        const expected = roots.find((root) => root > 0 && root < 0.5);
        const found = elasticShare({ ...strip, toolRadius: toolRadiusFor({ ...strip, radius: wanted }) });
        expect(found).toBeCloseTo(expected as number, 7);
      }),
    );
  });

  test("is none for a sharp bend, and always exists", () => {
    expect(toolRadiusFor({ ...steel, radius: 0 })).toBe(0);
    expect(toolRadiusFor({ ...steel, radius: 1000 })).toBeLessThan(500);
  });
});

describe("springback", () => {
  test("the arc of the middle line keeps its length", () => {
    fc.assert(
      fc.property(sheet, radius, angle, (strip, wanted, turned) => {
        const { toolRadius, swingAngle } = overbend({ ...strip, radius: wanted, angle: turned });
        const before = swingAngle * (toolRadius + strip.thickness / 2);
        expect(before / (turned * (wanted + strip.thickness / 2))).toBeCloseTo(1, 12);
      }),
    );
  });

  const pair = (low: number, high: number) =>
    fc.tuple(fc.double({ min: low, max: high, noNaN: true }), fc.double({ min: low, max: high, noNaN: true }));

  test("a stronger sheet needs a sharper tool and more overbend", () => {
    fc.assert(
      fc.property(pair(50, 1000), radius, angle, ([one, other], wanted, turned) => {
        const at = (strength: number) => overbend({ ...steel, yield: strength, radius: wanted, angle: turned });
        const [soft, hard] = [at(Math.min(one, other)), at(Math.max(one, other))];
        expect(hard.toolRadius).toBeLessThanOrEqual(soft.toolRadius * (1 + 1e-12));
        expect(hard.overbend).toBeGreaterThanOrEqual(soft.overbend * (1 - 1e-9) - 1e-9);
      }),
    );
  });

  test("a stiffer or thicker sheet needs less overbend", () => {
    fc.assert(
      fc.property(pair(10_000, 500_000), radius, ([one, other], wanted) => {
        const at = (elasticModulus: number) => overbend({ ...steel, elasticModulus, radius: wanted, angle: 90 }).overbend;
        expect(at(Math.max(one, other))).toBeLessThanOrEqual(at(Math.min(one, other)) + 1e-9);
      }),
    );
  });

  test("the overbend is never negative, and the factor lies from above 0 to 1", () => {
    fc.assert(
      fc.property(sheet, radius, angle, (strip, wanted, turned) => {
        const bend = overbend({ ...strip, radius: wanted, angle: turned });
        expect(bend.overbend).toBeGreaterThanOrEqual(0);
        expect(bend.factor).toBeGreaterThan(0);
        expect(bend.factor).toBeLessThanOrEqual(1);
        expect(bend.ratio).toBeGreaterThan(0);
        expect(bend.ratio).toBeLessThanOrEqual(1);
      }),
    );
  });

  test("the product form of the ratio is the printed polynomial", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 0.499, noNaN: true }), (share) => {
        expect(springbackRatio({ ...steel, toolRadius: share * 1000 })).toBeCloseTo(4 * share ** 3 - 3 * share + 1, 12);
      }),
    );
  });

  test("at the elastic limit nothing stays bent: refused with the radius that would", () => {
    expect(elasticLimitRadius(steel)).toBe(500);
    expect(() => springbackRatio({ ...steel, toolRadius: 500 })).toThrow(
      "Tool radius must be below 500.00 mm, or this sheet springs back flat; it is 500.00 mm.",
    );
    expect(() => radiusAfterSpringback({ ...steel, toolRadius: 700 })).toThrow("it is 700.00 mm");
  });

  test.each([
    [{ toolRadius: -1 }, "Tool radius must be from 0.00 mm to 1000.00 mm; it is -1.00 mm"],
    [{ thickness: 0 }, "Thickness must be from 0.10 mm"],
    [{ yield: Number.NaN }, "Yield strength must be from 5 N/mm² to 2500 N/mm²; it is not a number"],
    [{ elasticModulus: 1 }, "Elastic modulus must be from"],
  ])("refuses %j", (change, message) => {
    const text = (run: () => unknown) => {
      try {
        run();
      } catch (error) {
        return String(error).replaceAll("−", "-").replaceAll("\u202f", "");
      }
      return "no error";
    };
    expect(text(() => springbackRatio({ ...steel, toolRadius: 5, ...change }))).toContain(message);
    expect(() => springbackFactor({ toolRadius: 1, radius: 2, thickness: 20 })).toThrow("Thickness");
  });
});

describe("the largest radius within a swing", () => {
  test("needs just that swing", () => {
    fc.assert(
      fc.property(sheet, angle, fc.double({ min: 1.05, max: 3, noNaN: true }), (strip, turned, more) => {
        const limit = largestRadiusForSwing({ ...strip, angle: turned, largestSwing: turned * more });
        fc.pre(limit > 0.01 && limit < 1000);
        expect(overbend({ ...strip, radius: limit, angle: turned }).swingAngle / (turned * more)).toBeCloseTo(1, 6);
      }),
    );
  });

  test("is nothing when the swing does not even reach the angle", () => {
    expect(largestRadiusForSwing({ ...steel, angle: 140, largestSwing: 135 })).toBe(0);
  });
});
