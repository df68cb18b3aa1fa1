import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { coneBlank, faceOffset } from "../../src/lib/rolling/cone-blank.ts";
import { middleDiameter, rolledBlank } from "../../src/lib/rolling/rolled-blank.ts";

const thickness = fc.double({ min: 0.1, max: 13, noNaN: true });

describe("the blank of a cylinder", () => {
  test("a tube measured inside or outside needs the same blank", () => {
    fc.assert(
      fc.property(fc.double({ min: 30, max: 4000, noNaN: true }), thickness, (inside, sheet) => {
        const a = middleDiameter({ diameter: inside, thickness: sheet, measured: "inside" });
        const b = middleDiameter({ diameter: inside + 2 * sheet, thickness: sheet, measured: "outside" });
        expect(a).toBeCloseTo(b, 9);
      }),
    );
  });

  test("arcs that make up a circle add up to its blank", () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 359, noNaN: true }), (arc) => {
        const piece = (degrees: number) => rolledBlank({ middle: 100, arc: degrees, seam: 0 });
        expect(piece(arc) + piece(360 - arc)).toBeCloseTo(piece(360), 9);
      }),
    );
  });

  test("refuses a tube without a hole, an arc of nothing and a seam below nothing", () => {
    expect(() => middleDiameter({ diameter: 4, thickness: 2, measured: "outside" })).toThrow(
      "Outside diameter must be above 4.00 mm, twice the thickness; it is 4.00 mm.",
    );
    expect(() => rolledBlank({ middle: 10, arc: 0, seam: 0 })).toThrow("Arc must be above");
    expect(() => rolledBlank({ middle: 10, arc: 360, seam: -1 })).toThrow("Seam must be");
  });
});

describe("the blank of a cone", () => {
  const cone = fc
    .record({
      largeDiameter: fc.double({ min: 1, max: 5000, noNaN: true }),
      share: fc.double({ min: 0, max: 0.95, noNaN: true }),
      height: fc.double({ min: 0.1, max: 5000, noNaN: true }),
    })
    .map(({ largeDiameter, share, height }) => ({ largeDiameter, smallDiameter: share * largeDiameter, height }));

  test("rolled up it has both circumferences and the height again", () => {
    fc.assert(
      fc.property(cone, (wanted) => {
        const { outerRadius, innerRadius, sectorAngle, slant } = coneBlank(wanted);
        const turn = (sectorAngle * Math.PI) / 180;
        expect((turn * outerRadius) / (Math.PI * wanted.largeDiameter)).toBeCloseTo(1, 9);
        expect(turn * innerRadius).toBeCloseTo(Math.PI * wanted.smallDiameter, 6);
        expect((outerRadius - innerRadius) / slant).toBeCloseTo(1, 9);
        const reach = (wanted.largeDiameter - wanted.smallDiameter) / 2;
        expect(Math.hypot(reach, wanted.height) / slant).toBeCloseTo(1, 12);
        expect(sectorAngle).toBeLessThan(360);
      }),
    );
  });

  test("its area is that of the ring's sector, and its rectangle holds its four corners", () => {
    fc.assert(
      fc.property(cone, (wanted) => {
        const { outerRadius, innerRadius, sectorAngle, chord, area, width, depth } = coneBlank(wanted);
        expect(((outerRadius ** 2 - innerRadius ** 2) * Math.PI * sectorAngle) / 360 / area).toBeCloseTo(1, 9);
        // Points of the sector, opening upwards about the vertical.
        const points = Array.from({ length: 181 }, (_, step) => ((step / 180 - 0.5) * sectorAngle * Math.PI) / 180).flatMap(
          (at) => [outerRadius, innerRadius].map((radius) => [radius * Math.sin(at), radius * Math.cos(at)] as const),
        );
        const span = (values: number[]) => Math.max(...values) - Math.min(...values);
        const xs = span(points.map(([x]) => x));
        const ys = span(points.map(([, y]) => y));
        expect(xs).toBeLessThanOrEqual(width * (1 + 1e-9));
        expect(ys).toBeLessThanOrEqual(depth * (1 + 1e-9) + 1e-6);
        // … and holds them closely: a circle through 181 points misses less than a hundredth.
        expect(xs).toBeGreaterThan(width * 0.99);
        expect(ys).toBeGreaterThan(depth * 0.99 - 1e-6);
        const [first] = points;
        if (first) expect(2 * Math.abs(first[0])).toBeCloseTo(chord, 6);
      }),
    );
  });

  test("its faces stand off the middle by the thickness at most, by nearly nothing on a flat cone", () => {
    fc.assert(
      fc.property(cone, thickness, (wanted, sheet) => {
        const offset = faceOffset(wanted, sheet);
        expect(offset).toBeGreaterThan(0);
        expect(offset).toBeLessThanOrEqual(sheet);
      }),
    );
    expect(faceOffset({ largeDiameter: 8, smallDiameter: 0, height: 3 }, 1)).toBeCloseTo(0.6, 12);
  });

  test("sends a cylinder to its own calculator, and turns diameters the right way round", () => {
    expect(() => coneBlank({ largeDiameter: 50, smallDiameter: 50, height: 10 })).toThrow("(rolled-blank)");
    expect(() => coneBlank({ largeDiameter: 50, smallDiameter: 60, height: 10 })).toThrow("Exchange the two.");
    expect(() => coneBlank({ largeDiameter: 50, smallDiameter: 10, height: 0 })).toThrow("Height must be above");
  });
});
