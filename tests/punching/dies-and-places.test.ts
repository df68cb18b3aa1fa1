import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { materialFamilies, materialIds, type PunchSet } from "../../src/lib/catalogue.ts";
import {
  clearanceBands,
  clearanceByRoot,
  clearanceGroups,
  dieClearance,
  dieDiameter,
  usableClearance,
} from "../../src/lib/punching/die-clearance.ts";
import { holeLimits } from "../../src/lib/punching/hole-rules.ts";
import { diesFor, outlinePlay, punchFor, roundPunches } from "../../src/lib/punching/shop-punches.ts";

describe("the clearance of a die", () => {
  test("every metal has a group inside the widest published band", () => {
    for (const id of materialIds) {
      const { factor } = clearanceGroups[id];
      expect.soft(factor, id).toBeGreaterThanOrEqual(usableClearance.low);
      expect.soft(factor, id).toBeLessThanOrEqual(usableClearance.high);
    }
    for (const { low, high } of clearanceBands) {
      expect(low).toBeGreaterThanOrEqual(usableClearance.low);
      expect(high).toBeLessThanOrEqual(usableClearance.high);
    }
  });

  test("the die is larger than the punch by it on both sides", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.3, max: 200, noNaN: true }),
        fc.double({ min: 0.1, max: 13, noNaN: true }),
        fc.double({ min: 0, max: 0.3, noNaN: true }),
        (diameter, thickness, factor) => {
          const clearance = dieClearance({ factor, thickness });
          expect((dieDiameter({ diameter, clearance }) - diameter) / 2).toBeCloseTo(clearance, 9);
        },
      ),
    );
  });

  test("by the root of the strength, accurate work has half of ordinary work, and four times the strength twice the clearance", () => {
    const fit = { thickness: 1.5, shearStrength: 100 };
    expect(clearanceByRoot(fit, "ordinary")).toBeCloseTo(2 * clearanceByRoot(fit, "accurate"), 12);
    expect(clearanceByRoot({ ...fit, shearStrength: 400 }, "ordinary")).toBeCloseTo(2 * clearanceByRoot(fit, "ordinary"), 12);
  });

  test("names what is out of range", () => {
    expect(() => dieClearance({ factor: 0.4, thickness: 1 })).toThrow("must be from 0 to 0.3; it is 0.4.");
    expect(() => dieDiameter({ diameter: 10, clearance: -0.1 })).toThrow("Clearance per side must be");
  });
});

describe("the punch set of a shop", () => {
  const set: PunchSet = {
    name: "Punch",
    force: 30_000,
    throat: 200,
    punches: [
      { shape: "round", diameter: 10, die: "B" },
      { shape: "round", diameter: 5, die: "A" },
      { shape: "square", width: 8, die: "C" },
      { shape: "rectangle", width: 12, height: 5, die: "D" },
    ],
    dies: [
      { letter: "A", shape: "round", diameter: 5.1 },
      { letter: "E", shape: "round", diameter: 10.4 },
      { letter: "B", shape: "round", diameter: 10.1 },
      { letter: "C", shape: "square", width: 8.2 },
      { letter: "D", shape: "rectangle", width: 12.2, height: 5.1 },
    ],
  };

  test("finds a punch by shape and size, a rectangle either way round", () => {
    expect(punchFor(set, { shape: "round", diameter: 10.04 })?.die).toBe("B");
    expect(punchFor(set, { shape: "round", diameter: 10.06 })).toBeUndefined();
    expect(punchFor(set, { shape: "round", diameter: 8 })).toBeUndefined();
    expect(punchFor(set, { shape: "square", width: 8 })?.die).toBe("C");
    expect(punchFor(set, { shape: "rectangle", width: 5, height: 12 })?.die).toBe("D");
    expect(punchFor(set, { shape: "rectangle", width: 5, height: 5 })).toBeUndefined();
  });

  test("lists the dies a punch can enter from the tightest on, up to a limit", () => {
    expect(diesFor(set, 10, 1).map(({ letter }) => letter)).toEqual(["B", "E"]);
    expect(diesFor(set, 10, 0.1).map(({ letter }) => letter)).toEqual(["B"]);
    expect(diesFor(set, 10.1, 1).map(({ letter }) => letter)).toEqual(["E"]);
    expect(diesFor(set, 10, 1)[0]?.clearance).toBeCloseTo(0.05, 12);
    expect(roundPunches(set)).toEqual([5, 10]);
  });

  test("different shapes have no play", () => {
    expect(outlinePlay({ shape: "round", diameter: 5 }, { shape: "square", width: 6 })).toBeUndefined();
    expect(outlinePlay({ shape: "square", width: 5 }, { shape: "rectangle", width: 6, height: 7 })).toBeUndefined();
    expect(outlinePlay({ shape: "rectangle", width: 5, height: 4 }, { shape: "rectangle", width: 6, height: 7 })).toEqual([1, 3]);
  });
});

describe("the place of a hole", () => {
  test("every limit grows with the thickness, and the safe end is never below where the rules begin", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...materialFamilies),
        fc.double({ min: 0.1, max: 6, noNaN: true }),
        fc.double({ min: 0, max: 100, noNaN: true }),
        (family, thickness, radius) => {
          const safe = holeLimits({ family, thickness, radius });
          const low = holeLimits({ family, thickness, radius }, "low");
          const thicker = holeLimits({ family, thickness: 2 * thickness, radius });
          for (const key of ["minDiameter", "minEdge", "minSpacing", "minBend"] as const) {
            expect(low[key]).toBeLessThanOrEqual(safe[key]);
            expect(thicker[key]).toBeGreaterThan(safe[key]);
          }
          expect(safe.minBend - radius).toBeCloseTo(safe.minEdge, 9);
        },
      ),
    );
  });

  test("names what is out of range", () => {
    expect(() => holeLimits({ family: "stainless", thickness: 0, radius: 1 })).toThrow("Thickness must be");
    expect(() => holeLimits({ family: "stainless", thickness: 1, radius: -1 })).toThrow("Inside radius must be");
  });
});
