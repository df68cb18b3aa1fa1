import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { loadCatalogue } from "../../src/catalogue/load.ts";
import { firstYieldMoment, fullPlasticMoment, planeStrainMoment } from "../../src/lib/bending/plastic-moment.ts";
import {
  ductilityRadius,
  outerStrain,
  radiusByAlloy,
  radiusByStrength,
  smallestRadius,
} from "../../src/lib/bending/smallest-radius.ts";
import { materialIds } from "../../src/lib/catalogue.ts";
import { materialWith } from "../../src/lib/stock/material.ts";

const catalogue = loadCatalogue();
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe("smallest radius", () => {
  test("never falls with thickness or strength, nor when the bend is severe", () => {
    const table = catalogue.radiusByStrength;
    fc.assert(
      fc.property(
        number(0.1, 12),
        number(100, 600),
        number(0, 1),
        number(0, 40),
        (thickness, tensileStrength, thicker, stronger) => {
          const base = radiusByStrength(table, { thickness, tensileStrength });
          expect(radiusByStrength(table, { thickness: thickness + thicker, tensileStrength })).toBeGreaterThanOrEqual(base);
          expect(radiusByStrength(table, { thickness, tensileStrength: tensileStrength + stronger })).toBeGreaterThanOrEqual(
            base,
          );
          expect(radiusByStrength(table, { thickness, tensileStrength, severe: true })).toBeGreaterThanOrEqual(base);
        },
      ),
    );
  });

  test("a column holds its upper edge", () => {
    const table = catalogue.radiusByStrength;
    expect(radiusByStrength(table, { thickness: 1, tensileStrength: 300 })).toBe(1);
    expect(radiusByStrength(table, { thickness: 1.001, tensileStrength: 300 })).toBe(1.6);
    expect(radiusByStrength(table, { thickness: 1, tensileStrength: 390.1 })).toBe(1.2);
  });

  test("beyond the tables it is refused with what they hold", () => {
    const table = catalogue.radiusByStrength;
    expect(() => radiusByStrength(table, { thickness: 1, tensileStrength: 640.4 })).toThrow(
      "goes up to a tensile strength of 640 N/mm²; it is 640.4 N/mm².",
    );
    expect(() => radiusByAlloy(catalogue.radiusByAlloy, "6061-T6", 12.8)).toThrow("goes up to a thickness of 12.70 mm");
    expect(() => radiusByAlloy(catalogue.radiusByAlloy, "7075-T6", 1)).toThrow("has no row “7075-T6”");
  });

  test("every material of the data has an answer for the sheet a shop bends by hand", () => {
    for (const id of materialIds)
      for (const thickness of [0.5, 1, 1.6, 2.5]) {
        const material = materialWith(catalogue, id, {});
        // Stainless goes by a ratio, carbon steel by its class, aluminium by its alloy: none may be missing.
        const { radius, source } = smallestRadius(catalogue, material, thickness);
        expect(radius, id).toBeGreaterThanOrEqual(0);
        expect(radius, id).toBeLessThanOrEqual(7 * thickness);
        expect(Object.keys(catalogue.sources)).toContain(source);
      }
  });

  test("an entered reduction of area decides alone", () => {
    const material = materialWith(catalogue, "steel-cr", { areaReduction: 20 });
    expect(smallestRadius(catalogue, material, 2)).toMatchObject({ radius: 3, source: "kalpakjian-schmid" });
  });

  test("the ductility rule falls with ductility to nothing at half", () => {
    fc.assert(
      fc.property(number(1, 99), number(0.1, 13), (areaReduction, thickness) => {
        const radius = ductilityRadius({ thickness, areaReduction });
        expect(radius === 0).toBe(areaReduction >= 50);
        expect(ductilityRadius({ thickness, areaReduction: Math.min(99, areaReduction + 1) })).toBeLessThanOrEqual(radius);
        // At that radius the outer face is stretched as far as the neck: ln(1 + e) = ln(100/(100 − r)) with the rule's own strain.
        if (radius > 0) {
          const stretch = Math.log((radius + thickness) / (radius + thickness / 2));
          expect(stretch).toBeCloseTo(Math.log(100 / (100 - areaReduction)), 9);
        }
      }),
    );
  });

  test("the outer face is stretched by the distance from the middle over the middle's radius", () => {
    fc.assert(
      fc.property(number(0, 100), number(0.1, 6), (radius, thickness) => {
        const [middle, outer] = [radius + thickness / 2, radius + thickness];
        expect(outerStrain({ radius, thickness })).toBeCloseTo(outer / middle - 1, 9);
      }),
    );
  });
});

describe("bending moment", () => {
  const strip = fc.record({ yield: number(5, 2500), width: number(1, 10_000), thickness: number(0.1, 13) });

  test("goes with the yield strength, the width and the square of the thickness", () => {
    fc.assert(
      fc.property(strip, (job) => {
        const base = fullPlasticMoment(job);
        fc.pre(job.yield < 1200 && job.width < 5000 && job.thickness < 6);
        expect(fullPlasticMoment({ ...job, yield: 2 * job.yield }) / base).toBeCloseTo(2, 9);
        expect(fullPlasticMoment({ ...job, width: 2 * job.width }) / base).toBeCloseTo(2, 9);
        expect(fullPlasticMoment({ ...job, thickness: 2 * job.thickness }) / base).toBeCloseTo(4, 9);
      }),
    );
  });

  test("is the sum over the thickness of stress times distance", () => {
    const job = { yield: 250, width: 1000, thickness: 2 };
    const layers = 2000;
    const each = job.thickness / layers;
    const at = Array.from({ length: layers }, (_, index) => Math.abs(-job.thickness / 2 + (index + 0.5) * each));
    const full = at.reduce((sum, distance) => sum + job.yield * job.width * each * distance, 0) / 1000;
    const elastic = at.reduce((sum, d) => sum + job.yield * (d / (job.thickness / 2)) * job.width * each * d, 0) / 1000;
    expect(fullPlasticMoment(job)).toBeCloseTo(full, 3);
    expect(firstYieldMoment(job)).toBeCloseTo(elastic, 3);
  });

  test("is 15 % more for a sheet that cannot narrow", () => {
    fc.assert(
      fc.property(strip, (job) => {
        expect(planeStrainMoment(job) / fullPlasticMoment(job)).toBeCloseTo(1.1547, 4);
      }),
    );
  });

  test("refuses a strip out of range", () => {
    expect(() => fullPlasticMoment({ yield: 250, width: 0, thickness: 1 })).toThrow("Length along the bend must be from 1.0");
  });
});
