import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { loadCatalogue } from "../../src/catalogue/load.ts";
import { InputError } from "../../src/lib/input-error.ts";
import {
  euroBearingFactor,
  fullStrengthRivets,
  rivetLayout,
  rivetLength,
  rivetRows,
  rivetShear,
  rivetSizeFor,
  rivetSizes,
} from "../../src/lib/joining/rivets.ts";
import { groovedMiddleLine, pittsburghLock, type SeamKind, seamAllowance, seamKinds } from "../../src/lib/joining/seams.ts";
import { phraseText } from "../../src/lib/quantity/phrase.ts";
import { worksheetById } from "../../src/lib/registry.ts";
import { runWorksheet } from "../../src/lib/worksheet.ts";
import { countFor } from "../../src/lib/worksheets/parts/count-for.ts";
import rivetJoint from "../../src/lib/worksheets/rivet-joint.ts";
import seamSheet from "../../src/lib/worksheets/seam-allowance.ts";

const catalogue = loadCatalogue();
const joint = (raw: Record<string, string>) => runWorksheet(rivetJoint, raw, catalogue);
const remarks = (raw: Record<string, string>) =>
  (joint(raw).answer?.remarks ?? []).map(({ level, field, phrase }) => `${level} ${field ?? "-"}: ${phraseText(phrase)}`);

describe("rivet sizes", () => {
  test("the next size that is not below three thicknesses, never a smaller one", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.2, max: 4, noNaN: true }), (thicker) => {
        const { diameter } = rivetSizeFor(thicker);
        const largest = rivetSizes[rivetSizes.length - 1]?.diameter ?? 0;
        if (diameter < largest) expect(diameter).toBeGreaterThanOrEqual(3 * thicker - 1e-9);
        const smaller = rivetSizes.filter((size) => size.diameter < diameter);
        for (const size of smaller) expect(size.diameter).toBeLessThan(3 * thicker);
        expect(diameter).toBeGreaterThanOrEqual(thicker);
      }),
    );
  });

  test("every hole is wider than its rivet, or as wide, and sizes rise", () => {
    rivetSizes.forEach(({ diameter, hole, olderHole }, i) => {
      expect(hole).toBeGreaterThan(diameter);
      expect(olderHole).toBeGreaterThanOrEqual(diameter);
      expect(diameter).toBeGreaterThan(rivetSizes[i - 1]?.diameter ?? 0);
    });
  });

  test("out of range is refused", () => {
    expect(() => rivetSizeFor(4.1)).toThrow(InputError);
    expect(() => rivetLength({ grip: 2, diameter: 11 })).toThrow(InputError);
    expect(() => rivetLayout(0.5)).toThrow(InputError);
    expect(() => rivetShear({ stress: 186, diameter: Number.NaN })).toThrow(InputError);
  });
});

test("rows stand 0.75 of the pitch apart, but never nearer than 2.5 diameters", () => {
  expect(rivetRows({ pitch: 16, diameter: 4 })).toBe(12);
  expect(rivetRows({ pitch: 12, diameter: 4 })).toBe(10);
});

test("the factor of the European bearing rule rises with the thicker sheet to 2.1, and never beyond", () => {
  const alpha = (thicker: number) => euroBearingFactor({ thinner: 1, thicker, diameter: 3.2 });
  expect(alpha(1)).toBeCloseTo(3.2 * Math.sqrt(1 / 3.2), 12);
  expect(alpha(1.75)).toBeCloseTo((alpha(1) + 2.1) / 2, 12);
  expect(alpha(2.5)).toBeCloseTo(2.1, 12);
  expect(alpha(4)).toBeCloseTo(2.1, 12);
  expect(euroBearingFactor({ thinner: 4, thicker: 4, diameter: 2 })).toBeCloseTo(2.1, 12);
});

test("rivets of full strength: by the hole in thin sheet, by the rivet in thick", () => {
  const perMillimetre = (thinner: number) => fullStrengthRivets({ tensile: 400, stress: 200, diameter: 3, thinner });
  expect(perMillimetre(0.3)).toBeCloseTo(perMillimetre(0.4), 12);
  expect(perMillimetre(4)).toBeCloseTo(2 * perMillimetre(2), 12);
});

test("a count is rounded up, but not by a tail of binary arithmetic", () => {
  expect(countFor({ load: 1000, safetyFactor: 3, strength: 1000 })).toBe(3);
  expect(countFor({ load: 0.1 + 0.2, safetyFactor: 10, strength: 0.3 })).toBe(10);
  expect(countFor({ load: 1001, safetyFactor: 3, strength: 1000 })).toBe(4);
  expect(countFor({ load: 1e-6, safetyFactor: 1, strength: 1000 })).toBe(1);
});

describe("the riveted joint", () => {
  test("does not depend on which sheet is named first", () => {
    const one = joint({ thicknessA: "0.8mm", thicknessB: "1.5mm" }).answer?.outputs;
    expect(joint({ thicknessA: "1.5mm", thicknessB: "0.8mm" }).answer?.outputs).toEqual(one);
  });

  test("more load or a weaker rivet never takes fewer", () => {
    const count = (load: number, stress: number) =>
      joint({ load: `${load}N`, rivetShearStress: `${stress}` }).answer?.outputs.count ?? 0;
    fc.assert(
      fc.property(fc.double({ min: 1, max: 1e5, noNaN: true }), fc.double({ min: 40, max: 900, noNaN: true }), (load, stress) => {
        expect(count(2 * load, stress)).toBeGreaterThanOrEqual(count(load, stress));
        expect(count(load, stress / 2)).toBeGreaterThanOrEqual(count(load, stress));
      }),
      { numRuns: 40 },
    );
  });

  test("the row that counts is the lowest of those it may go by, and makes the count", () => {
    const { answer } = joint({ thicknessA: "0.5mm", thicknessB: "0.5mm", load: "3kN" });
    const rows = answer?.tables?.[0]?.rows ?? [];
    const chosen = rows.filter((row) => row.chosen);
    expect(chosen).toHaveLength(1);
    expect(chosen[0]?.cells[2]).toBe(answer?.outputs.count);
    const used = rows.filter(({ cells }) => cells[0] !== "Rivet cut through, on its hole").map(({ cells }) => Number(cells[1]));
    expect(chosen[0]?.cells[1]).toBe(Math.min(...used));
  });

  test("rivets too thin, too thick or too small say so", () => {
    expect(
      remarks({ thicknessA: "4mm", rivetDiameter: "3.2mm" }).some((text) =>
        /^caution rivetDiameter: .*at least as wide/.test(text),
      ),
    ).toBe(true);
    expect(remarks({ rivetDiameter: "4mm" }).some((text) => /^note rivetDiameter: Wider than three/.test(text))).toBe(true);
    expect(
      remarks({ thicknessA: "0.5mm", thicknessB: "0.5mm", rivetDiameter: "1.6mm" }).some((text) => /below 3\/32/.test(text)),
    ).toBe(true);
  });

  test("a sheet thin for its rivet needs a test joint: below 0.18 of the diameter, not at it", () => {
    const doubtful = (thicknessA: string, rivetDiameter: string) =>
      remarks({ thicknessA, thicknessB: "2mm", rivetDiameter }).some((text) => /less than 0.18/.test(text));
    expect(doubtful("0.032in", "3/16in")).toBe(true);
    expect(doubtful("0.72mm", "4mm")).toBe(false);
    expect(doubtful("0.71mm", "4mm")).toBe(true);
  });

  test("a size that is in no list gets a hole a little wider", () => {
    expect(remarks({ rivetDiameter: "3mm" }).some((text) => /Drill about 3.10 mm/.test(text))).toBe(true);
    expect(remarks({ rivetDiameter: "3.2mm" }).some((text) => /Sold as 1\/8 in, in metric lists 3.2 mm/.test(text))).toBe(true);
  });

  test("its holes and its lap go on to calculators that take them, and the holes are well placed there", () => {
    const { values, answer } = joint({ thicknessA: "1mm", thicknessB: "1mm" });
    if (!values || !answer) throw new Error("no answer");
    for (const { to, raw } of rivetJoint.handoffs?.(values, answer) ?? []) {
      const next = worksheetById(to);
      if (!next) throw new Error(`no calculator ${to}`);
      const { answer: further, problems } = runWorksheet(next, raw, catalogue);
      expect(problems).toEqual([]);
      if (to === "hole-place") expect(further?.outputs.ok).toBe("yes");
      if (to === "seam-allowance") expect(further?.outputs.allowance).toBeCloseTo(4 * (answer.outputs.diameter ?? 0), 3);
    }
  });
});

describe("seams", () => {
  const kinds = Object.keys(seamKinds) as SeamKind[];

  test("both sides are the whole, and a wider seam takes more", () => {
    fc.assert(
      fc.property(fc.constantFrom(...kinds), fc.double({ min: 1, max: 150, noNaN: true }), (kind, width) => {
        const seam = seamAllowance({ kind, width });
        expect(seam.sideA + seam.sideB).toBe(seam.allowance);
        expect(seamAllowance({ kind, width: 1.2 * width }).allowance).toBeGreaterThan(seam.allowance);
      }),
    );
  });

  test("the middle line takes a little less than the rule, the more the thicker the sheet", () => {
    const rule = seamAllowance({ kind: "grooved", width: 8 }).allowance;
    expect(rule - groovedMiddleLine({ width: 8, thickness: 0.5 })).toBeCloseTo((8 - 2 * Math.PI) * 0.5, 12);
    expect(groovedMiddleLine({ width: 8, thickness: 1 })).toBeLessThan(groovedMiddleLine({ width: 8, thickness: 0.5 }));
  });

  test("out of range is refused", () => {
    expect(() => seamAllowance({ kind: "lap", width: 0.5 })).toThrow(InputError);
    expect(() => groovedMiddleLine({ width: 5, thickness: 5 })).toThrow(InputError);
    expect(() => pittsburghLock(Number.POSITIVE_INFINITY)).toThrow(InputError);
  });

  const said = (raw: Record<string, string>) =>
    (runWorksheet(seamSheet, raw, catalogue).answer?.remarks ?? []).map(
      ({ level, field, phrase }) => `${level} ${field ?? "-"}: ${phraseText(phrase)}`,
    );

  test("sheet too thick to fold and hooks too narrow are cautioned, but not for a lap", () => {
    expect(
      said({ kind: "grooved", thickness: "1.2mm" }).some((text) => /^caution thickness: .*Lap it and rivet it/.test(text)),
    ).toBe(true);
    expect(
      said({ kind: "grooved", thickness: "0.8mm", width: "3mm" }).some((text) => /^caution width: Hooks narrower/.test(text)),
    ).toBe(true);
    expect(said({ kind: "lap", thickness: "3mm", width: "3mm" }).filter((text) => text.startsWith("caution"))).toEqual([]);
  });
});
