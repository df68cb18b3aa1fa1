import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { InputError } from "../../src/lib/input-error.ts";
import { fewestSheets, type SheetPlan } from "../../src/lib/sheet/fewest-sheets.ts";
import { fillOneSheet } from "../../src/lib/sheet/fill-one-sheet.ts";
import { type Goal, grains, mostPieces, type Piece, type Sheet, type SheetJob } from "../../src/lib/sheet/model.ts";
import { cutSheets, finish, usedShare } from "../../src/lib/sheet/sheet-plan.ts";
import { fewestPlates } from "./brute-force.ts";
import { replayAll } from "./replay.ts";

const shear = { longestCut: 1270, shortestHold: 50, shortestStop: 10, longestStop: 600 };
const grain = fc.constantFrom(...grains);
const named = <T extends object>(pieces: readonly T[]) => pieces.map((piece, index) => ({ name: `P${index + 1}`, ...piece }));

function planned(job: SheetJob, work = 2e7) {
  const plan = finish(fewestSheets(job, { work }));
  const sheets = cutSheets(job, plan.layouts);
  expect(replayAll(job, sheets, true)).toEqual([]);
  expect(plan.cost).toBeGreaterThanOrEqual(plan.bound - 1e-9);
  expect(plan.sheets).toBe(plan.layouts.reduce((sum, { times }) => sum + times, 0));
  return { plan, sheets };
}

const tray: Piece = { name: "tray", width: 276, length: 226, count: 30, grain: "free" };
const lid: Piece = { name: "lid", width: 232.4, length: 182.4, count: 30, grain: "free" };
const full: Sheet = { name: "full sheet", width: 1250, length: 2500 };

describe("a class set of trays", () => {
  const classSet = (pieces: readonly Piece[]): SheetJob => ({ sheets: [full], trim: 5, pieces, shear });

  test("thirty trays come out of one sheet: their area is six tenths of it", () => {
    const { plan, sheets } = planned(classSet([tray]));
    expect(plan.sheets).toBe(1);
    expect(plan.proved).toBe(true);
    expect(usedShare(classSet([tray]), sheets)).toBeCloseTo((30 * 276 * 226) / (1250 * 2500), 12);
  });

  test("thirty trays and their lids need two: together they are just over one sheet", () => {
    expect(30 * (276 * 226 + 232.4 * 182.4)).toBeGreaterThan(1240 * 2490);
    const { plan, sheets } = planned(classSet([tray, lid]));
    expect(plan.sheets).toBe(2);
    expect(plan.bound).toBe(2);
    for (const { cuts } of sheets) for (const { faults } of cuts.cuts) expect(faults).toEqual([]);
  });

  test("no stroke is longer than the shear, although the sheet is", () => {
    const { sheets } = planned(classSet([tray]));
    for (const { cuts } of sheets) for (const { cutLength } of cuts.cuts) expect(cutLength).toBeLessThanOrEqual(1270);
  });
});

describe("few pieces", () => {
  const tiny = fc.record({ width: fc.integer({ min: 2, max: 7 }), length: fc.integer({ min: 2, max: 7 }), grain });

  test("as good as trying every cut", () => {
    fc.assert(
      fc.property(fc.array(tiny, { minLength: 2, maxLength: 6 }), (pieces) => {
        const { plan } = planned({
          sheets: [{ name: "stock", width: 8, length: 9 }],
          trim: 0,
          pieces: named(pieces.map((piece) => ({ ...piece, count: 1 }))),
        });
        expect(plan.sheets).toBe(fewestPlates(pieces, 8, 9));
        expect(plan.proved).toBe(true);
      }),
      { numRuns: 60, seed: 11 },
    );
  });

  test("as good as trying every cut that a short shear can make", () => {
    fc.assert(
      fc.property(fc.array(tiny, { minLength: 2, maxLength: 4 }), (pieces) => {
        const { plan } = planned({
          sheets: [{ name: "stock", width: 7, length: 11 }],
          trim: 0,
          pieces: named(pieces.map((piece) => ({ ...piece, count: 1 }))),
          shear: { longestCut: 7, shortestHold: 0, shortestStop: 0, longestStop: 100 },
        });
        expect(plan.sheets).toBe(fewestPlates(pieces, 7, 11, 7));
      }),
      { numRuns: 40, seed: 12 },
    );
  });

  test("two that fit only the five-piece spiral, which no shear can cut, need a second sheet", () => {
    // Four 2 × 3 round a 1 × 1 fill 5 × 5, but no edge-to-edge cut separates them.
    const spiral: Piece[] = [
      { name: "arm", width: 2, length: 3, count: 4, grain: "free" },
      { name: "heart", width: 1, length: 1, count: 1, grain: "free" },
    ];
    const { plan } = planned({ sheets: [{ name: "stock", width: 5, length: 5 }], trim: 0, pieces: spiral });
    expect(plan.sheets).toBe(2);
    expect(plan.proved).toBe(true);
  });
});

describe("many pieces", () => {
  const piece = fc.record({
    width: fc.integer({ min: 500, max: 7000 }).map((tenth) => tenth / 10),
    length: fc.integer({ min: 500, max: 7000 }).map((tenth) => tenth / 10),
    count: fc.integer({ min: 1, max: 20 }),
    grain,
  });

  test("the strokes give just the pieces, and no plan lies below its bound", () => {
    fc.assert(
      fc.property(
        fc.array(piece, { minLength: 1, maxLength: 12 }),
        fc.constantFrom(0, 4, 10, 12.5),
        fc.boolean(),
        (pieces, trim, withShear) => {
          const job: SheetJob = { sheets: [full], trim, pieces: named(pieces), ...(withShear ? { shear } : {}) };
          const { plan } = planned(job, 4e6);
          const area = pieces.reduce((sum, { width, length, count }) => sum + width * length * count, 0);
          expect(plan.bound).toBeGreaterThanOrEqual(Math.ceil(area / ((1250 - 2 * trim) * (2500 - 2 * trim)) - 1e-6));
        },
      ),
      { numRuns: 25, seed: 13 },
    );
  });

  test("a job with fewer of each piece never has the higher bound", () => {
    fc.assert(
      fc.property(fc.array(piece, { minLength: 2, maxLength: 6 }), (pieces) => {
        const job: SheetJob = { sheets: [full], trim: 5, pieces: named(pieces) };
        const half = named(pieces.map((each) => ({ ...each, count: Math.ceil(each.count / 2) })));
        expect(planned({ ...job, pieces: half }, 2e6).plan.bound).toBeLessThanOrEqual(planned(job, 2e6).plan.sheets);
      }),
      { numRuns: 10, seed: 14 },
    );
  });

  test("the same job gives the same plan", () => {
    const pieces = named([
      { width: 311, length: 277, count: 17, grain: "free" as const },
      { width: 453, length: 128, count: 23, grain: "along" as const },
      { width: 95, length: 640, count: 31, grain: "across" as const },
    ]);
    const job: SheetJob = { sheets: [full], trim: 5, pieces };
    expect(planned(job).plan).toEqual(planned(job).plan);
  });
});

describe("several stock sizes and offcuts", () => {
  const small: Sheet = { name: "small sheet", width: 1000, length: 2000 };
  const offcut: Sheet = { name: "offcut by the window", width: 600, length: 700, count: 1, cost: 0.1 };

  test("a cheap offcut that holds all is taken before a full sheet", () => {
    const job: SheetJob = { sheets: [full, offcut], trim: 0, pieces: [{ ...tray, count: 4 }] };
    const { plan } = planned(job);
    expect(plan.layouts.map(({ sheet, times }) => ({ sheet, times }))).toEqual([{ sheet: 1, times: 1 }]);
    expect(plan.proved).toBe(true);
  });

  test("an offcut is used once, and full sheets for the rest", () => {
    const job: SheetJob = { sheets: [full, { ...offcut, cost: 0.01 }], trim: 0, pieces: [{ ...tray, count: 52 }] };
    const { plan } = planned(job);
    expect(plan.cost).toBeCloseTo(3.125 + 0.01, 9);
  });

  test("the smaller sheet is taken where it costs less", () => {
    const { plan } = planned({ sheets: [full, small], trim: 0, pieces: [{ ...tray, count: 20 }] });
    expect(plan.layouts.map(({ sheet }) => sheet)).toEqual([1]);
    expect(plan.cost).toBeCloseTo(2, 9);
  });

  test("sheets that do not suffice are said", () => {
    const job: SheetJob = { sheets: [{ ...small, count: 1 }], trim: 0, pieces: [{ ...tray, count: 60 }] };
    expect(() => planned(job)).toThrow(/No way was found/);
  });

  test("sheets there are none of are left alone", () => {
    const { plan } = planned({ sheets: [{ ...small, count: 0 }, full], trim: 0, pieces: [{ ...tray, count: 3 }] });
    expect(plan.layouts.map(({ sheet }) => sheet)).toEqual([1]);
  });
});

describe("progress", () => {
  const job: SheetJob = {
    sheets: [{ name: "bin", width: 100, length: 100 }],
    trim: 0,
    pieces: Array.from({ length: 40 }, (_, index) => ({
      name: `P${index}`,
      width: 11 + ((index * 37) % 71),
      length: 13 + ((index * 53) % 67),
      count: 1,
      grain: "along" as const,
    })),
  };

  test("the bound only rises, the plan only gets better, and every plan on the way is sound", () => {
    let bound = 0;
    let cost = Infinity;
    let steps = 0;
    for (const step of fewestSheets(job, { work: 3e7 })) {
      steps += 1;
      expect(step.bound).toBeGreaterThanOrEqual(bound);
      bound = step.bound;
      if (!step.plan) continue;
      expect(step.plan.cost).toBeLessThanOrEqual(cost);
      cost = step.plan.cost;
      if (steps % 7 === 1) expect(replayAll(job, cutSheets(job, step.plan.layouts), true)).toEqual([]);
    }
    expect(steps).toBeGreaterThan(3);
    expect(bound).toBeLessThanOrEqual(cost);
  });

  test("stopped after the first step there is a plan already", () => {
    const first = fewestSheets(job).next();
    if (first.done) throw new Error("it was done at once");
    const plan = first.value.plan as SheetPlan;
    expect(replayAll(job, cutSheets(job, plan.layouts), true)).toEqual([]);
    expect(plan.bound).toBeLessThanOrEqual(plan.sheets);
  });
});

describe("jobs that cannot be worked with", () => {
  const job = (pieces: readonly Partial<Piece>[], sheet: Partial<Sheet> = {}, trim = 0): SheetJob => ({
    sheets: [{ ...full, ...sheet }],
    trim,
    pieces: pieces.map((piece) => ({ ...tray, ...piece })),
  });
  const problem = (bad: SheetJob, goal: Goal = "fewest-sheets"): InputError => {
    try {
      if (goal === "fewest-sheets") finish(fewestSheets(bad));
      else finish(fillOneSheet(bad));
    } catch (error) {
      if (error instanceof InputError) return error;
      throw error;
    }
    throw new Error("it was accepted");
  };

  test.each([
    [
      "wider than every sheet",
      job([{}, { width: 1300, length: 1300 }]),
      "pieces.1.width",
      /larger than every sheet.*1250.* × .*2500/,
    ],
    ["longer than every sheet", job([{ length: 2600 }]), "pieces.0.length", /larger than every sheet/],
    [
      "as large as the sheet, but for the trim",
      job([{ width: 1250, length: 2500 }], {}, 1),
      "pieces.0.length",
      /1248.* × .*2498/,
    ],
    ["fitting only across its grain", job([{ width: 2000, length: 900, grain: "along" }]), "pieces.0.grain", /against its grain/],
    ["fitting only along its grain", job([{ width: 900, length: 2000, grain: "across" }]), "pieces.0.grain", /against its grain/],
    ["none", job([]), "pieces", /1 to 200 different pieces; there are 0/],
    ["no count", job([{ count: undefined }]), "pieces.0.count", /not entered/],
    ["count 0", job([{ count: 0 }]), "pieces.0.count", /from 1 to 9999; it is 0/],
    ["ten thousand", job([{ count: 10_000 }]), "pieces.0.count", /from 1 to 9999; it is 10000/],
    ["ten thousand in all", job([{ count: 5000 }, { count: 5000 }]), "pieces", /there are 10000/],
    ["half a piece", job([{ count: 1.5 }]), "pieces.0.count", /whole number/],
    ["not a number", job([{ width: Number.NaN }]), "pieces.0.width", /not a number/],
    ["no width", job([{ width: 0 }]), "pieces.0.width", /it is .*0/],
    ["a sheet of nothing", job([{}], { width: 0 }), "sheets.0.width", /from/],
    ["trim that leaves nothing", job([{ width: 1, length: 1 }], { width: 100 }, 50), "trim", /below .*50/],
    ["a negative trim", job([{}], {}, -1), "trim", /from/],
    ["no sheet left", job([{}], { count: 0 }), "sheets", /every number of sheets is 0/],
  ])("%s", (_, bad, field, message) => {
    const error = problem(bad);
    expect(error.field).toBe(field);
    expect(error.message).toMatch(message);
  });

  test("where one sheet is filled a count may be left out", () => {
    expect(() => finish(fillOneSheet(job([{ count: undefined }])))).not.toThrow();
    expect(problem(job([{ value: 0 }]), "fill-one-sheet").field).toBe("pieces.0.value");
  });

  test(`${mostPieces} pieces are planned`, () => {
    const { plan } = planned(job([{ count: mostPieces }]), 1e6);
    expect(plan.sheets).toBeGreaterThanOrEqual(plan.bound);
  });
});
