import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { loadCatalogue } from "../../src/catalogue/load.ts";
import type { Catalogue, Welder } from "../../src/lib/catalogue.ts";
import { InputError } from "../../src/lib/input-error.ts";
import { governingThickness, thicknessRatio } from "../../src/lib/joining/governing-thickness.ts";
import { enclosing, interpolate } from "../../src/lib/joining/lookup.ts";
import { type SpotRegime, spotConditions, spotRegimes, zincConditions } from "../../src/lib/joining/spot-conditions.ts";
import { jointSpacing, pitchFactors, spotPitch } from "../../src/lib/joining/spot-spacing.ts";
import { euroSpot, formulaSpotShear, nominalSpotShear } from "../../src/lib/joining/spot-strength.ts";
import { aluminiumSpot, scheduledSpot } from "../../src/lib/joining/trade-schedules.ts";
import { powerAtDuty } from "../../src/lib/joining/welder-duty.ts";
import { phraseText } from "../../src/lib/quantity/phrase.ts";
import { worksheetById } from "../../src/lib/registry.ts";
import { runWorksheet, type Worksheet } from "../../src/lib/worksheet.ts";
import spotJoint from "../../src/lib/worksheets/spot-joint.ts";
import spotSetting from "../../src/lib/worksheets/spot-setting.ts";

const catalogue = loadCatalogue();
const regimes = Object.keys(spotRegimes) as SpotRegime[];
const weldable = fc.double({ min: 0.4, max: 3, noNaN: true });

/** A shop of the tests' own: the real file is the instructor's to change. */
const welder: Welder = {
  name: "Welder A",
  power: 12,
  largestForce: 1500,
  largestCurrent: 7,
  tipFace: 5,
  throat: 200,
  thinnest: 0.5,
  thickest: 1.2,
  time: "timer",
};
const shopWith = (changes: Partial<Welder>): Catalogue => ({
  ...catalogue,
  shop: { ...catalogue.shop, welder: { ...welder, ...changes } },
});

function remarksOf(sheet: Worksheet, raw: Record<string, string>, shop: Catalogue) {
  const { answer, problems } = runWorksheet(sheet, raw, shop);
  expect(problems).toEqual([]);
  return (answer?.remarks ?? []).map(({ level, field, phrase }) => `${level} ${field ?? "-"}: ${phraseText(phrase)}`);
}
const setting = (raw: Record<string, string>, shop: Catalogue = catalogue) => runWorksheet(spotSetting, raw, shop);

describe("rows of a table", () => {
  const rows = [1, 2, 4];
  const self = (row: number) => row;

  test("a value on a row has that row on both sides, one between has two", () => {
    expect(enclosing(rows, self, 2)).toEqual([2, 2]);
    expect(enclosing(rows, self, 3)).toEqual([2, 4]);
    expect(enclosing(rows, self, 2 + 1e-12)).toEqual([2, 2]);
  });

  test("outside the table there is none", () => {
    expect(() => enclosing(rows, self, 0.99)).toThrow(RangeError);
    expect(() => enclosing(rows, self, 4.01)).toThrow(RangeError);
    expect(() => enclosing([] as number[], self, 1)).toThrow(RangeError);
  });

  test("a column is read on the line between its rows", () => {
    const square = (row: number) => row * row;
    expect(interpolate(rows, self, square, 2)).toBe(4);
    expect(interpolate(rows, self, square, 3)).toBe(10);
  });
});

describe("thickness of a pair", () => {
  test("does not depend on which sheet is named first", () => {
    fc.assert(
      fc.property(weldable, fc.double({ min: 1, max: 2.999, noNaN: true }), (thin, ratio) => {
        const thick = Math.min(3, thin * ratio);
        const [one, other] = [
          { thickness: thin, otherThickness: thick },
          { thickness: thick, otherThickness: thin },
        ];
        expect(governingThickness(one)).toBe(thin);
        expect(governingThickness(other)).toBe(thin);
        expect(thicknessRatio(one)).toBe(thicknessRatio(other));
        expect(thicknessRatio(one)).toBeGreaterThanOrEqual(1);
      }),
    );
  });

  test("sheets too unlike are refused at the other sheet, with the range that would do", () => {
    expect(() => governingThickness({ thickness: 0.8, otherThickness: 2.5 })).toThrow(
      "Thickness of the other sheet must be from 0.40 mm to 2.40 mm, at most 3 times unlike this one; it is 2.50 mm.",
    );
    expect(() => governingThickness({ thickness: 3, otherThickness: 0.9 })).toThrow("from 1.00 mm to 3.00 mm");
    try {
      governingThickness({ thickness: 2, otherThickness: 0.5 });
      expect.unreachable();
    } catch (error) {
      expect(error).toBeInstanceOf(InputError);
      expect((error as InputError).field).toBe("otherThickness");
    }
  });

  test("the ends of the range are in it, and nothing beyond", () => {
    expect(governingThickness({ thickness: 0.4, otherThickness: 1.2 })).toBe(0.4);
    expect(governingThickness({ thickness: 3, otherThickness: 1 })).toBe(1);
    expect(() => governingThickness({ thickness: 0.39, otherThickness: 1 })).toThrow("Thickness must be from 0.40 mm");
    expect(() => governingThickness({ thickness: 1, otherThickness: Number.NaN })).toThrow("not a number");
  });
});

describe("conditions", () => {
  test("0.4 mm, which the scope includes, has the first band, and each upper edge its own", () => {
    const first = spotConditions({ governing: 0.4, regime: "medium-force" });
    expect(spotConditions({ governing: 0.6, regime: "medium-force" })).toEqual(first);
    expect(spotConditions({ governing: 0.61, regime: "medium-force" })).not.toEqual(first);
    expect(() => spotConditions({ governing: 0.399, regime: "medium-force" })).toThrow(InputError);
    expect(() => spotConditions({ governing: 3.001, regime: "medium-force" })).toThrow(InputError);
  });

  test("thicker sheet never takes less force, time, current or tip", () => {
    fc.assert(
      fc.property(weldable, weldable, fc.constantFrom(...regimes), (one, other, regime) => {
        const [thin, thick] = [Math.min(one, other), Math.max(one, other)].map((governing) =>
          spotConditions({ governing, regime }),
        );
        for (const key of Object.keys(thin ?? {}) as (keyof typeof thin & string)[])
          expect(thick?.[key as keyof typeof thick], key).toBeGreaterThanOrEqual(Number(thin?.[key as keyof typeof thin]));
      }),
    );
  });

  test("from is never above to, and high force goes with more current and less time", () => {
    fc.assert(
      fc.property(weldable, (governing) => {
        const [medium, high] = regimes.map((regime) => spotConditions({ governing, regime }));
        for (const each of [medium, high]) {
          expect(each?.forceMin).toBeLessThanOrEqual(each?.forceMax ?? 0);
          expect(each?.timeMin).toBeLessThanOrEqual(each?.timeMax ?? 0);
          expect(each?.currentMin).toBeLessThanOrEqual(each?.currentMax ?? 0);
        }
        expect(high?.forceMin).toBeGreaterThan(medium?.forceMax ?? Number.POSITIVE_INFINITY);
        expect(high?.timeMax).toBeLessThan(medium?.timeMax ?? 0);
        expect(high?.currentMax).toBeGreaterThan(medium?.currentMax ?? Number.POSITIVE_INFINITY);
      }),
    );
  });

  test("zinc asks for more of everything but the tip", () => {
    fc.assert(
      fc.property(weldable, fc.constantFrom(...regimes), (governing, regime) => {
        const bare = spotConditions({ governing, regime });
        const coated = zincConditions(bare);
        expect(coated.tipFace).toBe(bare.tipFace);
        for (const key of ["forceMin", "forceMax", "timeMin", "timeMax", "currentMin", "currentMax"] as const)
          expect(coated[key]).toBeGreaterThan(bare[key]);
      }),
    );
  });

  test("stainless takes more force and a shorter time than mild steel by the same kind of schedule", () => {
    fc.assert(
      fc.property(weldable, (governing) => {
        const mild = scheduledSpot("low-carbon", { governing, tensile: 300 });
        const stainless = scheduledSpot("stainless", { governing, tensile: 600 });
        expect(stainless.forceMax).toBeGreaterThan(mild.forceMax);
        expect(stainless.timeMax).toBeLessThan(mild.timeMax);
      }),
    );
  });

  test("aluminium takes the row that is not thinner", () => {
    expect(aluminiumSpot(0.4).thickness).toBe(0.8);
    expect(aluminiumSpot(1.01).thickness).toBe(1.6);
    expect(aluminiumSpot(3).thickness).toBe(3.2);
    expect(() => aluminiumSpot(3.3)).toThrow(InputError);
  });
});

describe("distances and strength", () => {
  test("grow with the thickness", () => {
    fc.assert(
      fc.property(weldable, fc.double({ min: 1.0001, max: 2, noNaN: true }), (thin, more) => {
        const thick = Math.min(3, thin * more);
        const pair = (thickness: number) => ({ thickness, otherThickness: thickness, tensile: 300 });
        for (const of of [
          (t: number) => nominalSpotShear(t),
          (t: number) => formulaSpotShear(t),
          (t: number) => euroSpot(pair(t)).strength,
          (t: number) => scheduledSpot("low-carbon", { governing: t, tensile: 300 }).shear,
          (t: number) => spotPitch({ governing: t, factor: pitchFactors.better }),
          (t: number) => jointSpacing(t).edge,
        ])
          expect(of(thick)).toBeGreaterThanOrEqual(of(thin));
      }),
    );
  });

  test("the formula stays within a quarter more and a fifth less of the table over its rows", () => {
    for (let inches = 0.01; inches <= 0.125; inches += 0.005) {
      const ratio = formulaSpotShear(inches * 25.4) / nominalSpotShear(inches * 25.4);
      expect(ratio).toBeGreaterThan(0.8);
      expect(ratio).toBeLessThan(1.3);
    }
  });

  test("a much thicker partner tears less easily, never more", () => {
    const alike = euroSpot({ thickness: 1, otherThickness: 2.5, tensile: 360 });
    const unlike = euroSpot({ thickness: 1, otherThickness: 2.6, tensile: 360 });
    // 0.7 d² fu is 6300 N and 3.1 t d fu 5580 N; 2.7 √t d fu is 4860 N and governs both.
    expect(alike.tearing).toBeCloseTo(4860, 9);
    expect(unlike.tearing).toBeCloseTo(4860, 9);
    // At 3 mm, 3.1 t d fu lies above it as well; at 0.4 mm it is the lowest.
    expect(euroSpot({ thickness: 0.4, otherThickness: 1.1, tensile: 360 }).tearing).toBeCloseTo(
      Math.min(2.7 * 5 * 0.4, 3.1 * 0.4 * 5 * Math.sqrt(0.4)) * 360,
      9,
    );
  });

  test("spots of a joint stay inside the widest distances", () => {
    fc.assert(
      fc.property(weldable, (thickness) => {
        const { pitch, widestPitch, edge, widestEdge } = jointSpacing(thickness);
        expect(pitch).toBeLessThan(widestPitch);
        expect(edge).toBeLessThan(widestEdge);
      }),
    );
  });

  test("a welder's plate holds at half the time; nothing on is no duty", () => {
    expect(powerAtDuty({ power: 10, duty: 0.5 })).toBe(10);
    expect(() => powerAtDuty({ power: 10, duty: 0 })).toThrow(InputError);
    expect(() => powerAtDuty({ power: 10, duty: 1.01 })).toThrow(InputError);
  });
});

describe("the settings of a spot weld", () => {
  test.each(["al-1100-o", "al-3003-h14", "al-2024-t3", "copper-soft", "brass-half-hard", "titanium-2"])(
    "%s is refused at the material, with the way on",
    (material) => {
      const { problems, answer } = setting({ material, thickness: "0.8mm", otherThickness: "1.2mm" });
      expect(answer).toBeUndefined();
      expect(problems).toHaveLength(1);
      const [problem] = problems;
      expect(problem?.field).toBe("material");
      expect(problem?.message).toMatch(/must be carbon steel or stainless steel .*; it is .*Use rivets/);
      const rivets = problem?.instead.find(({ to }) => to === "rivet-joint");
      expect(rivets?.raw).toMatchObject({ material, thicknessA: "0.8mm", thicknessB: "1.2mm" });
      const seam = problem?.instead.find(({ to }) => to === "seam-allowance");
      expect(seam?.raw).toMatchObject({ thickness: "1.2mm" });
      for (const { to, raw } of problem?.instead ?? []) {
        const next = worksheetById(to);
        expect(next, to).toBeDefined();
        if (next) expect(runWorksheet(next, raw, catalogue).problems).toEqual([]);
      }
    },
  );

  test("a seam is offered only for sheet that folds", () => {
    const instead = (material: string, thickness: string) =>
      setting({ material, thickness, otherThickness: thickness }).problems[0]?.instead.find(({ to }) => to === "seam-allowance");
    expect(instead("al-1100-o", "0.8mm")?.raw).toMatchObject({ kind: "grooved" });
    expect(instead("al-1100-o", "2mm")?.raw).toMatchObject({ kind: "lap" });
    expect(instead("titanium-2", "0.5mm")?.raw).toMatchObject({ kind: "lap" });
  });

  test("the aluminium refusal says what the sheet would take", () => {
    expect(setting({ material: "al-5052-h32", thickness: "1.6mm", otherThickness: "2mm" }).problems[0]?.message).toContain(
      "Two sheets of 1.60 mm would take 43.0 kA and 5.2 kN for 0.14 s.",
    );
  });

  test("sheets too unlike are refused at the other sheet, but a metal that cannot be welded first", () => {
    expect(setting({ otherThickness: "3mm", thickness: "0.5mm" }).problems.map(({ field }) => field)).toEqual(["otherThickness"]);
    expect(
      setting({ material: "copper-soft", otherThickness: "3mm", thickness: "0.5mm" }).problems.map(({ field }) => field),
    ).toEqual(["material"]);
  });

  test("both regimes stand side by side in seconds and in cycles of both mains", () => {
    const { answer } = setting({ thickness: "1mm", otherThickness: "1mm" });
    const table = answer?.tables?.[0];
    expect(table?.columns.map(({ label }) => label)).toEqual([
      "Regime",
      "Force",
      "Current",
      "Time",
      "Cycles at 50 Hz",
      "Cycles at 60 Hz",
    ]);
    expect(table?.rows[0]).toMatchObject({
      chosen: true,
      cells: [spotRegimes["medium-force"], "1.40 to 1.50 kN", "6.0 to 8.0 kA", "0.18 to 0.24 s", "9 to 12", "11 to 14"],
    });
    expect(table?.rows[1]).toMatchObject({
      chosen: false,
      cells: expect.arrayContaining(["0.14 to 0.20 s", "7 to 10", "8 to 12"]),
    });
  });

  test("the other sheet changes nothing while it is the thicker one", () => {
    const same = setting({ thickness: "1mm", otherThickness: "1mm" }).answer?.outputs;
    expect(setting({ thickness: "1mm", otherThickness: "2.5mm" }).answer?.outputs).toEqual(same);
    expect(setting({ thickness: "2.5mm", otherThickness: "1mm" }).answer?.outputs).toEqual(same);
  });

  test("provisional numbers are said to be so", () => {
    expect(remarksOf(spotSetting, { material: "stainless-304" }, catalogue).join()).toMatch(/provisional/);
    expect(remarksOf(spotSetting, { material: "stainless-430" }, catalogue).join()).toMatch(
      /none for this ferritic one was read/,
    );
    const rows = setting({}).answer?.tables?.flatMap((table) => table.rows) ?? [];
    for (const row of rows)
      if (row.source === "spot-schedule-reprint") expect(row.note).toMatch(/provisional/);
      else if (catalogue.sources[row.source ?? ""]?.seen === "memory") expect(row.note).toMatch(/memory/);
  });

  test("zinc gets its caution at the material", () => {
    expect(
      remarksOf(spotSetting, { material: "steel-galv" }, catalogue).some((text) => /^caution material: Zinc/.test(text)),
    ).toBe(true);
    expect(remarksOf(spotSetting, {}, catalogue).some((text) => /Zinc/.test(text))).toBe(false);
  });

  test("the least button is in the peel test, in the units of the reader", () => {
    const { answer } = setting({ thickness: "2.25mm", otherThickness: "2.25mm" });
    const peel = answer?.remarks.find(({ phrase }) => phraseText(phrase).startsWith("Peel test"));
    expect(phraseText(peel?.phrase ?? [])).toContain("6.00 mm");
    expect(phraseText(peel?.phrase ?? [], "inch")).toContain("0.236 in");
  });
});

describe("the settings beside this shop's welder", () => {
  const remarks = (raw: Record<string, string>, changes: Partial<Welder> = {}) => remarksOf(spotSetting, raw, shopWith(changes));
  const one = { thickness: "1mm", otherThickness: "1mm" };

  test("sheets it is not for are marked, each at its field", () => {
    const texts = remarks({ thickness: "0.45mm", otherThickness: "1.3mm" });
    expect(texts.some((text) => /^caution thickness: Welder A is for sheets from 0.50 mm to 1.20 mm/.test(text))).toBe(true);
    expect(texts.some((text) => /^caution otherThickness: .*this one is 1.30 mm/.test(text))).toBe(true);
    expect(remarks(one).some((text) => /is for sheets/.test(text))).toBe(false);
  });

  test("too little force or current is a caution, a part of the range a note", () => {
    expect(remarks(one, { largestForce: 1300 }).some((text) => /^caution -: Welder A presses with up to 1.3 kN/.test(text))).toBe(
      true,
    );
    expect(remarks(one, { largestForce: 1450 }).some((text) => /^note -: Welder A presses/.test(text))).toBe(true);
    expect(remarks(one, { largestForce: 1500 }).some((text) => /presses/.test(text))).toBe(false);
    expect(remarks(one, { largestCurrent: 5 }).some((text) => /^caution -: Welder A gives up to 5.0 kA/.test(text))).toBe(true);
    expect(remarks(one, { largestCurrent: 7 }).some((text) => /^note -: Welder A gives/.test(text))).toBe(true);
    expect(remarks(one, { largestCurrent: 8 }).some((text) => /gives/.test(text))).toBe(false);
  });

  test("tips of another size are noted, with what they do", () => {
    expect(remarks(one).some((text) => /tips of/.test(text))).toBe(false);
    expect(remarks(one, { tipFace: 6 }).some((text) => /A larger face/.test(text))).toBe(true);
    expect(remarks(one, { tipFace: 4 }).some((text) => /A smaller face/.test(text))).toBe(true);
  });

  test("a finger switch gets advice on the time, a timer on its mains", () => {
    const finger = remarks(one, { time: "finger-switch" });
    expect(finger.some((text) => /^caution -: Welder A welds for as long as you press/.test(text))).toBe(true);
    expect(finger.some((text) => /Weld a row of coupons/.test(text))).toBe(true);
    expect(finger.some((text) => /take the regime with the longer time/.test(text))).toBe(false);
    expect(
      remarks({ ...one, regime: "high-force" }, { time: "finger-switch" }).some((text) =>
        /take the regime with the longer time/.test(text),
      ),
    ).toBe(true);
    expect(remarks(one).some((text) => /as long as you press/.test(text))).toBe(false);
    expect(remarks(one).some((text) => /12 cycles are 0.20 s at 60 Hz and 0.24 s at 50 Hz/.test(text))).toBe(true);
  });
});

describe("spots for a load", () => {
  const joint = (raw: Record<string, string>) => runWorksheet(spotJoint, raw, catalogue);

  test("more load, more safety or thinner sheet never takes fewer spots", () => {
    const spots = (load: number, safetyFactor: number, thickness: number) =>
      joint({
        load: `${load}`,
        safetyFactor: `${safetyFactor}`,
        thickness: `${thickness}`,
        otherThickness: `${thickness}`,
      }).answer?.outputs.spots ?? 0;
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 1e5, noNaN: true }),
        fc.double({ min: 1, max: 10, noNaN: true }),
        weldable,
        (load, factor, thickness) => {
          const few = spots(load, factor, thickness);
          expect(few).toBeGreaterThanOrEqual(1);
          expect(spots(2 * load, factor, thickness)).toBeGreaterThanOrEqual(few);
          expect(spots(load, 1.5 * factor, thickness)).toBeGreaterThanOrEqual(few);
          expect(spots(load, factor, Math.min(3, 1.3 * thickness))).toBeLessThanOrEqual(few);
        },
      ),
      { numRuns: 40 },
    );
  });

  test("an aluminium joint is refused and the load goes on to the rivets", () => {
    const { problems } = joint({ material: "al-6061-t6", load: "3kN", safetyFactor: "4" });
    expect(problems[0]?.field).toBe("material");
    const rivets = problems[0]?.instead.find(({ to }) => to === "rivet-joint");
    expect(rivets?.raw).toMatchObject({ material: "al-6061-t6", load: "3000N", safetyFactor: "4" });
  });

  test("one spot is cautioned against, and the most cautious source is named where it asks for more", () => {
    expect(remarksOf(spotJoint, { load: "10N" }, catalogue).some((text) => /turns like a hinge/.test(text))).toBe(true);
    expect(remarksOf(spotJoint, { load: "20kN" }, catalogue).some((text) => /most cautious source would have/.test(text))).toBe(
      true,
    );
  });

  test("no second safety factor is put on a strength that has one", () => {
    const rows = joint({}).answer?.tables?.[0]?.rows ?? [];
    const factored = rows.find(({ cells }) => /divided by/.test(String(cells[0])));
    expect(factored?.cells[2]).toBeNull();
  });
});
