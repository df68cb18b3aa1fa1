import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bladeGap } from "../../src/lib/cutting/blade-gap.ts";
import { clearGap, notchSide, reliefCentre, reliefHole, reliefToNotch } from "../../src/lib/cutting/corner-notch.ts";
import { guardDistance, openingShapes, pressOpening } from "../../src/lib/cutting/guard-opening.ts";
import { coarsestBand, sawTeeth, steepestFeed, tightestCurve, widestBand } from "../../src/lib/cutting/saw-teeth.ts";
import { parallelCapacity, rakedCapacity } from "../../src/lib/cutting/shear-capacity.ts";
import { parallelForce, rakedForce, rakedForceBreaking, rakedForceByWork } from "../../src/lib/cutting/shear-force.ts";
import { InputError } from "../../src/lib/input-error.ts";
import { sheetMass } from "../../src/lib/stock/sheet-mass.ts";

const thickness = fc.double({ min: 0.1, max: 13, noNaN: true });
const strength = fc.double({ min: 5, max: 2500, noNaN: true });
const rake = fc.double({ min: 0.1, max: 10, noNaN: true });
const share = fc.double({ min: 0.01, max: 1, noNaN: true });

describe("shear force", () => {
  test("the three forms keep their order: broken triangle, then the others, which cross at one half", () => {
    fc.assert(
      fc.property(thickness, strength, rake, share, (sheet, shearStrength, slope, penetration) => {
        const cut = { thickness: sheet, shearStrength, rake: slope, penetration };
        const triangle = rakedForce(cut);
        const near = 1 + 1e-12;
        expect(rakedForceBreaking(cut)).toBeLessThanOrEqual(triangle * near);
        expect(rakedForceBreaking(cut)).toBeLessThanOrEqual(rakedForceByWork(cut) * near);
        if (penetration < 0.5) expect(rakedForceByWork(cut)).toBeLessThanOrEqual(triangle * near);
        else expect(rakedForceByWork(cut) * near).toBeGreaterThanOrEqual(triangle);
      }),
    );
  });

  test("twice the thickness needs four times the force of a raked blade, and twice that of parallel ones", () => {
    const cut = { thickness: 1, shearStrength: 300, rake: 2 };
    expect(rakedForce({ ...cut, thickness: 2 })).toBeCloseTo(4 * rakedForce(cut), 6);
    expect(parallelForce({ ...cut, thickness: 2, length: 100 })).toBeCloseTo(2 * parallelForce({ ...cut, length: 100 }), 6);
  });

  test("a steeper blade needs less", () => {
    fc.assert(
      fc.property(thickness, strength, fc.double({ min: 0.1, max: 9, noNaN: true }), (sheet, shearStrength, slope) => {
        const cut = { thickness: sheet, shearStrength };
        expect(rakedForce({ ...cut, rake: slope + 0.5 })).toBeLessThan(rakedForce({ ...cut, rake: slope }));
      }),
    );
  });

  test("a capacity carried over loads the blade as its plate does", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 3, noNaN: true }),
        strength,
        strength,
        rake,
        (plate, ratedStrength, shearStrength, slope) => {
          fc.pre(
            plate * Math.max(1, ratedStrength / shearStrength) < 13 && plate * Math.min(1, ratedStrength / shearStrength) > 0.1,
          );
          const to = { ratedThickness: plate, ratedStrength, shearStrength };
          const rated = { thickness: plate, shearStrength: ratedStrength };
          const raked = rakedForce({ thickness: rakedCapacity(to), shearStrength, rake: slope });
          expect(raked / rakedForce({ ...rated, rake: slope })).toBeCloseTo(1, 9);
          const parallel = parallelForce({ thickness: parallelCapacity(to), shearStrength, length: 100 });
          expect(parallel / parallelForce({ ...rated, length: 100 })).toBeCloseTo(1, 9);
        },
      ),
    );
  });

  test.each([
    [() => rakedForce({ thickness: 1, shearStrength: 300, rake: 0 }), "Rake of the blade must be from 0.1° to 10.0°"],
    [() => rakedForce({ thickness: 1, shearStrength: Number.NaN, rake: 1 }), "Shear strength must be from"],
    [() => parallelForce({ thickness: 0, shearStrength: 300, length: 10 }), "Thickness must be from"],
    [() => rakedForceByWork({ thickness: 1, shearStrength: 300, rake: 1, penetration: 1.2 }), "Depth at which the sheet breaks"],
    [() => bladeGap(14), "Thickness must be from"],
  ])("a value outside its range is refused (%#)", (compute, message) => {
    expect(compute).toThrow(InputError);
    expect(compute).toThrow(message);
  });
});

describe("saw teeth", () => {
  test("the coarsest band and the steepest feed give just the teeth asked for", () => {
    fc.assert(
      fc.property(thickness, fc.double({ min: 5, max: 90, noNaN: true }), fc.constantFrom(2, 3), (sheet, angle, teeth) => {
        const teethPerInch = coarsestBand({ thickness: sheet, teeth, angle });
        fc.pre(teethPerInch >= 1 && teethPerInch <= 100);
        expect(sawTeeth({ thickness: sheet, teethPerInch, angle })).toBeCloseTo(teeth, 9);
        expect(steepestFeed({ thickness: sheet, teethPerInch, teeth })).toBeCloseTo(angle, 4);
      }),
    );
  });

  test("laying the sheet flatter puts more teeth in the cut", () => {
    const cut = { thickness: 1, teethPerInch: 24 };
    expect(sawTeeth({ ...cut, angle: 30 })).toBeCloseTo(2 * sawTeeth({ ...cut, angle: 90 }), 9);
  });

  test("a thick sheet needs no slanting", () => {
    expect(steepestFeed({ thickness: 6, teethPerInch: 14, teeth: 3 })).toBe(90);
  });

  test("curve and band turn into each other", () => {
    expect(tightestCurve(widestBand(77))).toBeCloseTo(77, 12);
  });
});

describe("corner notch", () => {
  test("what two notches leave is the base outside, less the two set-backs", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 20, max: 2000, noNaN: true }),
        fc.double({ min: 10, max: 100, noNaN: true }),
        fc.double({ min: 0, max: 5, noNaN: true }),
        fc.double({ min: 0, max: 5, noNaN: true }),
        (base, side, deduction, gap) => {
          const blank = base + 2 * side - 2 * deduction;
          expect(blank - 2 * notchSide({ side, deduction, gap })).toBeCloseTo(base - 2 * gap, 9);
        },
      ),
    );
  });

  test("a side that its bend swallows is refused", () => {
    expect(() => notchSide({ side: 2, deduction: 2, gap: 0 })).toThrow("Height of the side must be above 2.00 mm");
  });

  test("the relief hole is centred one setback inside the notch that has no set-back", () => {
    const corner = { side: 25, deduction: 2.2 };
    expect(reliefCentre(corner, 2.8)).toBeCloseTo(notchSide({ ...corner, gap: 0 }) + 2.8, 12);
    expect(reliefToNotch(2.8, 2.8)).toBe(0);
    expect(reliefToNotch(2.8, 9)).toBe(0);
    expect(reliefToNotch(2.8, 1.8)).toBeCloseTo(2 * Math.hypot(1, 1), 12);
  });

  test("thicker sheet never has a smaller relief hole, and the list says where it ends", () => {
    fc.assert(
      fc.property(thickness, thickness, fc.double({ min: 0, max: 20, noNaN: true }), (one, other, radius) => {
        const [thin, thick] = [Math.min(one, other), Math.max(one, other)];
        expect(reliefHole({ radius, thickness: thick }).diameter).toBeGreaterThanOrEqual(
          reliefHole({ radius, thickness: thin }).diameter,
        );
      }),
    );
    expect(reliefHole({ radius: 1, thickness: 3.25 }).listed).toBe(true);
    expect(reliefHole({ radius: 1, thickness: 3.26 }).listed).toBe(false);
    expect(reliefHole({ radius: 4, thickness: 1 }, 1).diameter).toBe(4);
  });

  test("at one thickness the two sides just meet", () => {
    expect(clearGap(1.2, 1.2)).toBe(0);
    expect(clearGap(1, 1.2)).toBeLessThan(0);
  });
});

describe("guards", () => {
  test("a larger opening is never allowed nearer, and a slot never nearer than a square or a round hole", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 120, noNaN: true }),
        fc.double({ min: 0.1, max: 120, noNaN: true }),
        (one, other) => {
          const [small, large] = [Math.min(one, other), Math.max(one, other)];
          for (const shape of openingShapes) {
            expect(guardDistance(large, shape)).toBeGreaterThanOrEqual(guardDistance(small, shape));
            expect(guardDistance(small, shape)).toBeLessThanOrEqual(guardDistance(small, "slot"));
          }
        },
      ),
    );
  });

  test("an opening on the edge of two rows belongs to the smaller one", () => {
    expect(guardDistance(6, "slot")).toBe(10);
    expect(guardDistance(6.01, "slot")).toBe(20);
  });

  test("what no row covers is not made up", () => {
    expect(() => guardDistance(121, "slot")).toThrow("Opening must be above 0.00 mm and up to 120.00 mm");
    expect(() => guardDistance(0, "slot")).toThrow(InputError);
    expect(pressOpening(12.6)).toBeUndefined();
    expect(pressOpening(12.7)).toBeCloseTo(6.35, 12);
    expect(pressOpening(31.6 * 25.4)).toBeUndefined();
    expect(pressOpening(Number.NaN)).toBeUndefined();
  });
});

test("mass grows with every size, and turning the sheet does not change it", () => {
  const sheet = { width: 300, length: 700, thickness: 1.5, density: 7850 };
  expect(sheetMass({ ...sheet, width: 700, length: 300 })).toBeCloseTo(sheetMass(sheet), 12);
  for (const key of ["width", "length", "thickness", "density"] as const)
    expect(sheetMass({ ...sheet, [key]: 2 * sheet[key] })).toBeCloseTo(2 * sheetMass(sheet), 9);
  expect(() => sheetMass({ ...sheet, width: 0 })).toThrow(InputError);
});
