import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { loadCatalogue } from "../../src/catalogue/load.ts";
import type { Catalogue } from "../../src/lib/catalogue.ts";
import type { Raw } from "../../src/lib/inputs.ts";
import { cutList } from "../../src/lib/part/cut-list.ts";
import type { FlatLayout } from "../../src/lib/part/flatten.ts";
import { planFrom } from "../../src/lib/part/plan.ts";
import { form, up } from "./samples.ts";

const catalogue = loadCatalogue();

/** One sheet of 1000 × 2000 and a shear whose stop goes from 10 to 600; at least 50 mm must stay under the hold-downs. */
const shop = {
  ...catalogue.shop,
  stock: [{ material: "steel-cr" as const, thickness: 1, width: 1000, length: 2000 }],
  shear: { ...catalogue.shop.shear, cuttingLength: 1270, shortestStop: 10, longestStop: 600, shortestPiece: 50 },
};
const data: Catalogue = { ...catalogue, shop };

function planned(raw: Raw) {
  const { plan, problems } = planFrom(raw, data);
  if (!plan) throw new Error(problems[0]?.message);
  return plan;
}

/** A flat plate, which needs no practice strips. */
const plate = (width: number, depth: number, quantity = 1) =>
  planned(form({ width: `${width}mm`, depth: `${depth}mm`, quantity: String(quantity) })).cuts;

describe("the cut list of one blank", () => {
  test("a strip across the sheet first, then the blank off the strip", () => {
    const [blank] = plate(300, 200).pieces;
    expect(blank).toMatchObject({ of: "blank", width: 300, depth: 200, count: 1, sheets: 1 });
    expect(blank?.settings).toEqual([
      { number: 1, stop: 200, size: 200, cutLength: 1000, times: 1, off: "strip", reaches: true },
      { number: 2, stop: 300, size: 300, cutLength: 200, times: 1, off: "piece", reaches: true },
    ]);
    // A right triangle of 3 : 4 : 5 by hand.
    expect(plate(300, 400).pieces[0]?.diagonal).toBeCloseTo(500, 12);
  });

  test("a rest too short for the hold-downs is cut off behind the blade", () => {
    // 1000 − 970 = 30 mm would be held, less than 50 mm.
    const [blank] = plate(970, 200).pieces;
    expect(blank?.settings[1]).toMatchObject({ stop: 30, off: "rest", times: 1 });
  });

  test("a blank as wide as the sheet needs one stroke", () => {
    expect(plate(1000, 200).pieces[0]?.settings).toHaveLength(1);
  });

  test("beyond the travel of the stop a line is scribed", () => {
    const [first, second] = plate(700, 650).pieces[0]?.settings ?? [];
    expect(first).toMatchObject({ size: 650, off: "strip" });
    expect(first?.stop).toBeUndefined();
    expect(second).toMatchObject({ size: 700, off: "piece" });
    expect(second?.stop).toBeUndefined();
  });

  test("bends lie across the rolling direction where the sheet allows", () => {
    const channel = planned(form({ width: "80mm", depth: "50mm", north: [up("25mm")], south: [up("25mm")] }));
    expect(channel.cuts.pieces[0]?.grain).toBe("y");
    // 1500 mm along the bends does not fit across 1000 mm of sheet, so the grain has to give way.
    const long = planned(form({ width: "1500mm", depth: "50mm", north: [up("25mm")] }));
    expect(long.cuts.pieces[0]?.grain).toBe("x");
  });

  test("practice strips of one size are cut together", () => {
    const plan = planned(form({ width: "80mm", depth: "50mm", north: [up("25mm")], south: [up("25mm", "60deg")] }));
    const strips = plan.cuts.pieces.filter(({ of }) => of === "practice");
    expect(strips).toHaveLength(1);
    expect(strips[0]).toMatchObject({ width: 100, depth: 50, count: 10 });
    expect(strips[0]?.settings.map(({ stop, times }) => [stop, times])).toEqual([
      [100, 1],
      [50, 10],
    ]);
  });

  test("says when no sheet is right", () => {
    const cuts = planned(form({ thickness: "2mm", radius: "2mm" })).cuts;
    expect(cuts.sheet).toBeUndefined();
    expect(cuts.pieces[0]?.grain).toBeUndefined();
    expect(cuts.pieces[0]?.settings.map(({ off }) => off)).toEqual(["strip", "piece"]);
  });
});

test("the strokes leave as many pieces as are wanted, and nothing too short is held", () => {
  const layout = { part: planned(form({})).part, chains: [] } as unknown as FlatLayout;
  fc.assert(
    fc.property(
      fc.integer({ min: 60, max: 990 }),
      fc.integer({ min: 60, max: 990 }),
      fc.integer({ min: 1, max: 60 }),
      (width, depth, quantity) => {
        const part = { ...layout.part, quantity };
        const { pieces } = cutList({ ...layout, part }, { width, depth }, [], data);
        const [blank] = pieces;
        const settings = blank?.settings ?? [];
        const { grain, sheets } = blank as NonNullable<typeof blank>;
        const [strip, across] = grain === "x" ? [width, depth] : [depth, width];
        // Replayed: strips fall off or one is left of a sheet; pieces fall off or one is left of a strip.
        const strokes = (off: string, size: number) =>
          settings.filter((each) => each.off === off && each.size === size).reduce((sum, { times }) => sum + times, 0);
        const perStrip = Math.floor(1000 / across);
        const strips = Math.ceil(quantity / perStrip);
        const perSheet = Math.floor(2000 / strip);
        expect(sheets).toBe(Math.ceil(strips / perSheet));
        const fallen = strokes("strip", strip);
        expect(fallen).toBeLessThanOrEqual(strips);
        expect(fallen).toBeGreaterThanOrEqual(strips - sheets);
        const offStrips = strokes("piece", across);
        expect(offStrips).toBeLessThanOrEqual(quantity);
        expect(offStrips).toBeGreaterThanOrEqual(quantity - strips);
        for (const { off, size } of settings) if (off === "rest") expect(size).toBeLessThan(50);
        for (const { stop } of settings)
          if (stop !== undefined) {
            expect(stop).toBeGreaterThanOrEqual(10);
            expect(stop).toBeLessThanOrEqual(600);
          }
      },
    ),
    { numRuns: 500 },
  );
});
