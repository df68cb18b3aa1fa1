import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { elasticLimitRadius } from "../../src/lib/bending/springback.ts";
import { loadedRadiusFor, radiusLeft, widestRadius } from "../../src/lib/rolling/loaded-radius.ts";
import { passPlan } from "../../src/lib/rolling/passes.ts";
import { flatEnd, leastSpacing, radiusAtRise, rearRollRise, tightestLoadedRadius } from "../../src/lib/rolling/three-roll.ts";
import { aimedRadius, curvatureOffset, trialFinding } from "../../src/lib/rolling/trial-pieces.ts";

const rolls = fc.record({
  thickness: fc.double({ min: 0.1, max: 6, noNaN: true }),
  rearRoll: fc.double({ min: 5, max: 200, noNaN: true }),
  rollSpacing: fc.double({ min: 5, max: 300, noNaN: true }),
});
const sheet = fc.record({
  thickness: fc.double({ min: 0.3, max: 3, noNaN: true }),
  yield: fc.double({ min: 50, max: 600, noNaN: true }),
  elasticModulus: fc.double({ min: 60_000, max: 220_000, noNaN: true }),
});
const radius = fc.double({ min: 5, max: 900, noNaN: true });
const steel = { thickness: 1, yield: 250, elasticModulus: 200_000 };
const machine = { frontRoll: 50, rearRoll: 50, rollSpacing: 56 };

describe("the rise of the rear roll", () => {
  test("puts the rear roll against the curve: its centre is its radius away from the outer face", () => {
    fc.assert(
      fc.property(rolls, radius, (set, loadedRadius) => {
        fc.pre(loadedRadius + set.thickness + set.rearRoll / 2 > set.rollSpacing);
        const rise = rearRollRise({ ...set, loadedRadius });
        // Centre of the curve at (0, T + Ri), of the rear roll at (x, h − r).
        const away = Math.hypot(set.rollSpacing, set.thickness + loadedRadius - (rise - set.rearRoll / 2));
        expect(away).toBeCloseTo(loadedRadius + set.thickness + set.rearRoll / 2, 6);
        expect(rise).toBeLessThanOrEqual(set.rollSpacing * (1 + 1e-9));
      }),
    );
  });

  test("turned round gives the radius again", () => {
    fc.assert(
      fc.property(rolls, radius, (set, loadedRadius) => {
        fc.pre(loadedRadius + set.thickness + set.rearRoll / 2 > 1.01 * set.rollSpacing);
        const rise = rearRollRise({ ...set, loadedRadius });
        expect(radiusAtRise({ ...set, rise }) / loadedRadius).toBeCloseTo(1, 6);
      }),
    );
  });

  test("grows as the radius shrinks, up to level with the centre", () => {
    const set = { thickness: 1, rearRoll: 50, rollSpacing: 60 };
    let before = 0;
    for (const loadedRadius of [900, 400, 200, 100, 60, 40, 34]) {
      const rise = rearRollRise({ ...set, loadedRadius });
      expect(rise).toBeGreaterThan(before);
      before = rise;
    }
    expect(before).toBeCloseTo(60, 9);
    expect(() => rearRollRise({ ...set, loadedRadius: 33.9 })).toThrow("must be at least 34.00 mm");
  });

  test("a rise that no radius goes with is refused with the largest that one does", () => {
    const set = { thickness: 1, rearRoll: 50, rollSpacing: 40 };
    expect(() => radiusAtRise({ ...set, rise: 50 })).toThrow("Rise of the rear roll must be at most");
    expect(() => radiusAtRise({ ...set, rise: 0 })).toThrow("must be above");
    const largest = 26 - Math.sqrt(26 ** 2 - 20 ** 2);
    expect(() => radiusAtRise({ ...set, rollSpacing: 20, rise: largest + 0.01 })).toThrow(
      // 26 − √(26² − 20²) = 9.387 mm, rounded down.
      "Rise of the rear roll must be at most 9.38 mm, where the sheet would be wrapped to no radius at all",
    );
    expect(radiusAtRise({ ...set, rollSpacing: 20, rise: largest - 1e-6 })).toBeGreaterThan(0);
    expect(() => radiusAtRise({ ...set, rise: 40.1 })).toThrow("at most 40.00 mm, where the sheet would be wrapped as far as");
    expect(radiusAtRise({ ...set, rise: 40 })).toBeCloseTo(14, 9);
  });

  test("the tightest curve is the front roll's, or what the rear roll can reach", () => {
    expect(tightestLoadedRadius({ ...machine, thickness: 1 })).toBe(30);
    expect(tightestLoadedRadius({ ...machine, thickness: 1, frontRoll: 80 })).toBe(40);
    expect(leastSpacing({ frontRoll: 50, rearRoll: 50 })).toBe(50);
    expect(() => tightestLoadedRadius({ ...machine, thickness: 20 })).toThrow("Thickness must be");
    expect(() => tightestLoadedRadius({ ...machine, thickness: 1, frontRoll: 2 })).toThrow("Front roll diameter must be from 5");
    expect(() => flatEnd({ thickness: 1, rearRoll: 50, rollSpacing: 2, loadedRadius: 75 })).toThrow("must be from 5");
  });

  test("the flat end is longer than the level distance to the contact and shorter than that to the roll's centre and half again", () => {
    fc.assert(
      fc.property(rolls, radius, (set, loadedRadius) => {
        const far = loadedRadius + set.thickness + set.rearRoll / 2;
        fc.pre(far > set.rollSpacing);
        const contact = ((loadedRadius + set.thickness / 2) * set.rollSpacing) / far;
        const flat = flatEnd({ ...set, loadedRadius });
        expect(flat).toBeGreaterThanOrEqual(contact * (1 - 1e-9));
        expect(flat).toBeLessThanOrEqual((contact * Math.PI) / 2 + 1e-9);
      }),
    );
  });
});

describe("the radius between the rolls", () => {
  test("springs back to the one wanted", () => {
    fc.assert(
      fc.property(sheet, radius, (strip, wanted) => {
        fc.pre(wanted < widestRadius(strip));
        const loaded = loadedRadiusFor({ ...strip, radius: wanted, tightest: 0.001 });
        expect(loaded).toBeLessThan(wanted);
        expect((radiusLeft(strip, loaded) ?? 0) / wanted).toBeCloseTo(1, 8);
      }),
    );
  });

  test("a stronger sheet has to be held tighter", () => {
    const held = (strength: number) => loadedRadiusFor({ ...steel, yield: strength, radius: 150, tightest: 10 });
    expect(held(300)).toBeLessThan(held(250));
    expect(held(250)).toBeLessThan(held(200));
  });

  test("from the elastic limit on nothing is left", () => {
    const limit = elasticLimitRadius(steel);
    expect(limit).toBe(400);
    expect(radiusLeft(steel, 400)).toBeUndefined();
    expect(radiusLeft(steel, 5000)).toBeUndefined();
    expect(radiusLeft(steel, 399)).toBeGreaterThan(10_000);
  });

  test("a sheet that comes back flat from the tightest curve is refused at its thickness", () => {
    expect(() => loadedRadiusFor({ ...steel, radius: 100, tightest: 400 })).toThrow(
      /^Thickness must be above about 1\.00 mm .* comes back flat/,
    );
  });

  test("a radius tighter than the rolls leave, or so wide that it is left to chance, is refused", () => {
    const smallest = radiusLeft(steel, 25) as number;
    expect(loadedRadiusFor({ ...steel, radius: smallest, tightest: 25 })).toBeCloseTo(25, 6);
    expect(() => loadedRadiusFor({ ...steel, radius: smallest - 0.01, tightest: 25 })).toThrow(
      /must be at least .* on these rolls/,
    );
    const thin = { thickness: 0.3, yield: 600, elasticModulus: 70_000 };
    const widest = widestRadius(thin);
    expect(loadedRadiusFor({ ...thin, radius: widest - 0.01, tightest: 1 })).toBeLessThan(0.8 * elasticLimitRadius(thin));
    expect(() => loadedRadiusFor({ ...thin, radius: widest + 0.01, tightest: 1 })).toThrow(/must be at most .* comes back flat/);
  });
});

describe("the passes", () => {
  test("rise in equal steps to the setting, each leaving a tighter curve", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 40, max: 600, noNaN: true }),
        fc.double({ min: 0.5, max: 20, noNaN: true }),
        (wanted, largestStep) => {
          const loadedRadius = loadedRadiusFor({ ...steel, radius: wanted, tightest: 30 });
          const rise = rearRollRise({ ...steel, ...machine, loadedRadius });
          const passes = passPlan({ ...steel, ...machine, rise, largestStep });
          expect(passes.length).toBeGreaterThanOrEqual(2);
          expect(passes.at(-1)?.rise).toBe(rise);
          expect((passes.at(-1)?.radius ?? 0) / wanted).toBeCloseTo(1, 6);
          passes.forEach((pass, index) => {
            const before = passes[index - 1];
            if (!before) return;
            expect(pass.radius).toBeLessThan(before.radius);
            expect(pass.rise - before.rise).toBeLessThanOrEqual(largestStep + 1e-9);
          });
          // One pass fewer would need larger steps.
          const steps = passes.map((pass, index) => pass.rise - (passes[index - 1]?.rise ?? 0)).slice(1);
          const step = steps[0] ?? 0;
          for (const each of steps) expect(each).toBeCloseTo(step, 6);
          if (passes.length > 2) expect((step * passes.length) / (passes.length - 1)).toBeGreaterThan(largestStep - 1e-9);
        },
      ),
    );
  });

  // By hand: the sheet comes back flat up to Ri = E T/(2 Y), so ρ = E T/(2 Y) + T + D3/2 and h = ρ − √(ρ² − x²).
  const flatUpTo = () => {
    const reach = (steel.elasticModulus * steel.thickness) / (2 * steel.yield) + steel.thickness + machine.rearRoll / 2;
    return reach - Math.sqrt(reach ** 2 - machine.rollSpacing ** 2);
  };

  test("the first step is counted from where the sheet begins to stay bent", () => {
    const [first, second] = passPlan({ ...steel, ...machine, rise: 8, largestStep: 1 });
    const step = (8 - flatUpTo()) / Math.ceil(8 - flatUpTo());
    expect(first?.rise).toBeCloseTo(flatUpTo() + step, 9);
    expect(second?.rise).toBeCloseTo(flatUpTo() + 2 * step, 9);
  });

  test("a whole number of steps is not rounded up", () => {
    for (const steps of [3, 4, 7])
      expect(passPlan({ ...steel, ...machine, rise: flatUpTo() + steps * 0.7, largestStep: 0.7 })).toHaveLength(steps);
  });

  test("an end that keeps step with another has as many passes", () => {
    expect(passPlan({ ...steel, ...machine, rise: flatUpTo() + 1, largestStep: 2, passes: 5 })).toHaveLength(5);
  });
});

describe("trial pieces", () => {
  const job = { ...steel, ...machine };

  test("that came out as calculated change nothing", () => {
    const rise = 10;
    const left = radiusLeft(steel, radiusAtRise({ ...job, rise })) as number;
    const { offset } = trialFinding(job, { rise, radius: left });
    expect(offset).toBeCloseTo(0, 12);
    expect(aimedRadius(100, offset)).toBeCloseTo(100, 6);
  });

  test("of rolls that always curve a little more lead to the setting that gives what is wanted", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -0.003, max: 0.003, noNaN: true }),
        fc.array(fc.double({ min: 6, max: 20, noNaN: true }), { minLength: 1, maxLength: 6 }),
        (more, rises) => {
          // The rolls of this test: as calculated, and a fixed curvature on top.
          const really = (rise: number) => 1 / (1 / (radiusLeft(steel, radiusAtRise({ ...job, rise })) as number) + more);
          const findings = rises.map((rise) => trialFinding(job, { rise, radius: really(rise) }));
          const { offset, uncertainty } = curvatureOffset(findings);
          expect(offset).toBeCloseTo(more, 9);
          if (uncertainty !== undefined) expect(uncertainty).toBeCloseTo(0, 9);
          const aimed = aimedRadius(80, offset) as number;
          const rise = rearRollRise({ ...job, loadedRadius: loadedRadiusFor({ ...steel, radius: aimed, tightest: 30 }) });
          expect(really(rise)).toBeCloseTo(80, 4);
        },
      ),
    );
  });

  test("one piece has no ±, and pieces that leave no curve have no setting", () => {
    const finding = trialFinding(job, { rise: 10, radius: 60 });
    expect(curvatureOffset([finding]).uncertainty).toBeUndefined();
    expect(curvatureOffset([finding, trialFinding(job, { rise: 10, radius: 61 })]).uncertainty).toBeGreaterThan(0);
    expect(aimedRadius(100, 0.02)).toBeUndefined();
  });

  test("calculated flat, a measured curve is all offset", () => {
    const { calculated, offset } = trialFinding(job, { rise: 2, radius: 500 });
    expect(calculated).toBeUndefined();
    expect(offset).toBeCloseTo(1 / 500, 12);
  });
});
