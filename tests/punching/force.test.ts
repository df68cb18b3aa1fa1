import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { perimeter } from "../../src/lib/punching/perimeter.ts";
import { punchForce, punchStress, smallestPunch } from "../../src/lib/punching/punch-force.ts";
import { punchWork } from "../../src/lib/punching/punch-work.ts";
import { shearedForceByRatio, shearedForceByWork } from "../../src/lib/punching/sheared-punch.ts";
import { strippingForce, strippingShares } from "../../src/lib/punching/stripping-force.ts";

const size = fc.double({ min: 0.3, max: 200, noNaN: true });
const thickness = fc.double({ min: 0.1, max: 13, noNaN: true });
const strength = fc.double({ min: 5, max: 2500, noNaN: true });

describe("the length of the cut", () => {
  test("a square is a rectangle with equal sides, and longer than the circle within it", () => {
    fc.assert(
      fc.property(size, (side) => {
        const hole = { diameter: side, width: side, height: side };
        const square = perimeter({ ...hole, shape: "square" });
        expect(square).toBeCloseTo(perimeter({ ...hole, shape: "rectangle" }), 9);
        expect(square).toBeGreaterThan(perimeter({ ...hole, shape: "round" }));
      }),
    );
  });

  test("only the sizes of its own shape are looked at", () => {
    expect(perimeter({ shape: "square", diameter: -1, width: 8, height: Number.NaN })).toBe(32);
    expect(() => perimeter({ shape: "rectangle", diameter: 1, width: 8, height: 0 })).toThrow(
      "Hole height must be from 0.30 mm to 200.00 mm; it is 0.00 mm.",
    );
  });
});

describe("the punching force", () => {
  test("doubles with each of length, thickness and strength", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 500, noNaN: true }), thickness, strength, (length, sheet, shear) => {
        fc.pre(sheet <= 6.5 && shear <= 1250);
        const cut = { perimeter: length, thickness: sheet, shearStrength: shear };
        const force = punchForce(cut);
        for (const key of ["perimeter", "thickness", "shearStrength"] as const)
          expect(punchForce({ ...cut, [key]: 2 * cut[key] }) / force).toBeCloseTo(2, 12);
      }),
    );
  });

  test("pressed on the punch's own cross-section it is the stress in the punch", () => {
    fc.assert(
      fc.property(size, thickness, strength, (diameter, sheet, shear) => {
        const force = punchForce({ perimeter: Math.PI * diameter, thickness: sheet, shearStrength: shear });
        const stress = punchStress({ diameter, thickness: sheet, shearStrength: shear });
        expect(stress / (force / ((Math.PI * diameter ** 2) / 4))).toBeCloseTo(1, 12);
      }),
    );
  });

  test("the smallest punch carries just the limit", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 13, noNaN: true }),
        fc.double({ min: 100, max: 1000, noNaN: true }),
        (sheet, shear) => {
          const diameter = smallestPunch({ thickness: sheet, shearStrength: shear }, 1000);
          fc.pre(diameter >= 0.3);
          expect(punchStress({ diameter, thickness: sheet, shearStrength: shear })).toBeCloseTo(1000, 6);
        },
      ),
    );
  });

  test("names the strength that is out of range", () => {
    expect(() => punchForce({ perimeter: 10, thickness: 1, shearStrength: Number.NaN })).toThrow("Shear strength must be");
    expect(() => punchForce({ perimeter: 10, thickness: 0, shearStrength: 200 })).toThrow("Thickness must be");
  });
});

describe("stripping and work", () => {
  test("the shares met are a band that holds the one used", () => {
    const shares = strippingShares.map(({ share }) => share);
    expect([...shares].sort((a, b) => a - b)).toEqual(shares);
    expect(strippingForce(1000)).toBe(1000 * Math.max(...shares));
    expect(() => strippingForce(-1)).toThrow("Punching force must be");
  });

  test("the work is that of the force held over the penetration", () => {
    expect(punchWork({ force: 10_000, penetration: 0.5, thickness: 2 })).toBe(10);
    expect(punchWork({ force: 10_000, penetration: 0, thickness: 2 })).toBe(0);
    expect(() => punchWork({ force: 1, penetration: 1.1, thickness: 2 })).toThrow("must be from 0 to 1; it is 1.1.");
  });
});

describe("a punch ground with shear", () => {
  const punch = fc.record({
    force: fc.double({ min: 1, max: 1e6, noNaN: true }),
    penetration: fc.double({ min: 0.01, max: 1, noNaN: true }),
    thickness,
    shearHeight: fc.double({ min: 0, max: 50, noNaN: true }),
  });

  test("needs less by the balance of work than by the ratio of depths, and never more than a flat one", () => {
    fc.assert(
      fc.property(punch, (ground) => {
        const byWork = shearedForceByWork(ground);
        const byRatio = shearedForceByRatio(ground);
        expect(byWork).toBeLessThanOrEqual(byRatio * (1 + 1e-12));
        expect(byRatio).toBeLessThanOrEqual(ground.force);
        expect(byWork).toBeGreaterThan(0);
      }),
    );
  });

  test("is a flat one when no shear is ground on", () => {
    const flat = { force: 500, penetration: 0.4, thickness: 2, shearHeight: 0 };
    expect([shearedForceByWork(flat), shearedForceByRatio(flat)]).toEqual([500, 500]);
    expect(shearedForceByWork({ ...flat, penetration: 0 })).toBe(500);
  });

  test("does the same work as a flat one, by the balance of work", () => {
    fc.assert(
      fc.property(punch, (ground) => {
        const depth = ground.penetration * ground.thickness;
        expect((shearedForceByWork(ground) * (depth + ground.shearHeight)) / (ground.force * depth)).toBeCloseTo(1, 9);
      }),
    );
  });
});
