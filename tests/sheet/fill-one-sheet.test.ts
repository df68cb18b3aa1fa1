import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { patternTable } from "../../src/lib/sheet/best-pattern.ts";
import { countPieces } from "../../src/lib/sheet/cut-tree.ts";
import { fillOneSheet } from "../../src/lib/sheet/fill-one-sheet.ts";
import { grains, liesOf, type SheetJob, ticks } from "../../src/lib/sheet/model.ts";
import { cutSheets, finish } from "../../src/lib/sheet/sheet-plan.ts";
import { bestOfEach, bestValue } from "./brute-force.ts";
import gcut from "./gcut/gcut.json" with { type: "json" };
import { replayAll } from "./replay.ts";

const grain = fc.constantFrom(...grains);
const tiny = fc.record({ width: fc.integer({ min: 1, max: 9 }), length: fc.integer({ min: 1, max: 9 }), grain });
const named = <T extends object>(pieces: readonly T[]) => pieces.map((piece, index) => ({ name: `P${index + 1}`, ...piece }));

function filled(job: SheetJob, work?: number) {
  const plan = finish(fillOneSheet(job, work === undefined ? {} : { work }));
  const sheets = cutSheets(job, [{ sheet: plan.sheet, times: 1, tree: plan.tree }]);
  expect(replayAll(job, sheets, false)).toEqual([]);
  return { plan, sheets };
}

describe("published optima of unconstrained guillotine cutting", () => {
  const cases = gcut.instances.flatMap(({ name, sheet, pieces, optimum, optimumTurned }) => [
    { name, sheet, pieces, turned: "along" as const, optimum },
    { name: `${name} turned`, sheet, pieces, turned: "free" as const, optimum: optimumTurned },
  ]);

  test.each(cases)("$name: $optimum", ({ sheet, pieces, turned, optimum }) => {
    const [length = 0, width = 0] = sheet;
    const job: SheetJob = {
      sheets: [{ name: "stock", width, length }],
      trim: 0,
      pieces: named(pieces.map(([l = 0, w = 0, value = 0]) => ({ width: w, length: l, value, grain: turned }))),
    };
    const { plan } = filled(job);
    expect(plan.value).toBe(optimum);
    expect(plan.bound).toBe(optimum);
    expect(plan.proved).toBe(true);
  });
});

describe("one sheet, any number of each piece", () => {
  const job = fc.record({
    width: fc.integer({ min: 9, max: 17 }),
    length: fc.integer({ min: 9, max: 17 }),
    pieces: fc.array(tiny, { minLength: 1, maxLength: 4 }),
    values: fc.array(fc.integer({ min: 1, max: 60 }), { minLength: 4, maxLength: 4 }),
  });

  test("as good as trying every cut", () => {
    fc.assert(
      fc.property(job, ({ width, length, pieces, values }) => {
        const { plan } = filled({
          sheets: [{ name: "stock", width, length }],
          trim: 0,
          pieces: named(pieces.map((piece, index) => ({ ...piece, value: values[index] ?? 1 }))),
        });
        expect(plan.value).toBe(bestValue(pieces, values, width, length));
        expect(plan.proved).toBe(true);
      }),
      { numRuns: 60, seed: 5 },
    );
  });

  test("trim takes the same off as a smaller sheet", () => {
    fc.assert(
      fc.property(job, fc.integer({ min: 1, max: 20 }), ({ width, length, pieces, values }, trim) => {
        const wanted = named(pieces.map((piece, index) => ({ ...piece, value: values[index] ?? 1 })));
        const without = filled({ sheets: [{ name: "stock", width, length }], trim: 0, pieces: wanted });
        const larger = [{ name: "stock", width: width + 2 * trim, length: length + 2 * trim }];
        const { plan } = filled({ sheets: larger, trim, pieces: wanted });
        expect(plan.value).toBe(without.plan.value);
      }),
      { numRuns: 30, seed: 6 },
    );
  });

  test("turning a sheet and every grain with it changes nothing", () => {
    const across = { free: "free", along: "across", across: "along" } as const;
    fc.assert(
      fc.property(job, ({ width, length, pieces, values }) => {
        const value = (index: number) => values[index] ?? 1;
        const one = filled({
          sheets: [{ name: "stock", width, length }],
          trim: 0,
          pieces: named(pieces.map((piece, index) => ({ ...piece, value: value(index) }))),
        });
        const other = filled({
          sheets: [{ name: "stock", width: length, length: width }],
          trim: 0,
          pieces: named(pieces.map((piece, index) => ({ ...piece, grain: across[piece.grain], value: value(index) }))),
        });
        expect(other.plan.value).toBe(one.plan.value);
      }),
      { numRuns: 30, seed: 7 },
    );
  });
});

describe("one sheet, only so many of each piece", () => {
  test("as good as trying every set", () => {
    const pieces = fc.array(fc.tuple(tiny, fc.integer({ min: 1, max: 60 })), { minLength: 1, maxLength: 5 });
    fc.assert(
      fc.property(pieces, (list) => {
        const each = list.map(([piece]) => piece);
        const values = list.map(([, value]) => value);
        const { plan } = filled({
          sheets: [{ name: "stock", width: 10, length: 11 }],
          trim: 0,
          pieces: named(list.map(([piece, value]) => ({ ...piece, value, count: 1 }))),
        });
        expect(plan.value).toBe(bestOfEach(each, values, 10, 11));
        expect(plan.proved).toBe(true);
      }),
      { numRuns: 30, seed: 8 },
    );
  });

  test("many pieces: the counts hold and the bound is never below the plan", () => {
    const piece = fc.record({
      width: fc.integer({ min: 600, max: 4000 }).map((tenth) => tenth / 10),
      length: fc.integer({ min: 600, max: 4000 }).map((tenth) => tenth / 10),
      count: fc.integer({ min: 1, max: 6 }),
      grain,
    });
    fc.assert(
      fc.property(fc.array(piece, { minLength: 8, maxLength: 14 }), (pieces) => {
        const { plan } = filled({ sheets: [{ name: "stock", width: 1250, length: 1500 }], trim: 5, pieces: named(pieces) }, 1e7);
        expect(plan.bound).toBeGreaterThanOrEqual(plan.value);
        expect(plan.proved).toBe(plan.value >= plan.bound * (1 - 1e-12));
      }),
      { numRuns: 8, seed: 9 },
    );
  });
});

describe("sizes that need too many cut positions", () => {
  const pieces = Array.from({ length: 12 }, (_, index) => ({
    name: `P${index}`,
    width: 40.01 + 7.3 * index,
    length: 151.07 - 6.1 * index,
    grain: "free" as const,
  }));
  const setting = { width: ticks(900), length: ticks(900), lies: pieces.flatMap(liesOf) };
  const worth = pieces.map(({ width, length }) => width * length);

  test("are rounded: the plan is sound, and lies below the bound", () => {
    const table = patternTable({ ...setting, mostWork: 2e6 });
    expect(table.coarse).toBe(true);
    const { value, tree } = table.best(worth);
    const counted = countPieces(tree, pieces.length).reduce((sum, count, piece) => sum + count * (worth[piece] ?? 0), 0);
    expect(counted).toBeCloseTo(value, 3);
    expect(value).toBeGreaterThan(0.75 * 900 * 900);
    expect(table.bound(worth)).toBeGreaterThanOrEqual(value);
  });

  test("with more work allowed the plan gets no worse", () => {
    const little = patternTable({ ...setting, mostWork: 5e5 });
    const much = patternTable({ ...setting, mostWork: 1e8 });
    expect(much.value(worth)).toBeGreaterThanOrEqual(little.value(worth));
    expect(little.bound(worth)).toBeGreaterThanOrEqual(much.value(worth));
  });
});
