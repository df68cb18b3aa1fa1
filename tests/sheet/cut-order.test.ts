import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { cutOrder, type SheetCuts } from "../../src/lib/sheet/cut-order.ts";
import type { CutTree } from "../../src/lib/sheet/cut-tree.ts";
import { fewestSheets } from "../../src/lib/sheet/fewest-sheets.ts";
import { grains, type SheetJob, ticks } from "../../src/lib/sheet/model.ts";
import { cutSheets, finish } from "../../src/lib/sheet/sheet-plan.ts";
import { replay } from "./replay.ts";

const shear = { longestCut: 1270, shortestHold: 50, shortestStop: 10, longestStop: 600 };
const piece = (number: number, width: number, length: number): CutTree => ({
  kind: "piece",
  piece: number,
  turned: false,
  width: ticks(width),
  length: ticks(length),
});
const rest = (width: number, length: number): CutTree => ({ kind: "rest", width: ticks(width), length: ticks(length) });
const split = (across: "width" | "length", width: number, length: number, parts: readonly CutTree[]): CutTree => ({
  kind: "split",
  across,
  width: ticks(width),
  length: ticks(length),
  parts,
});
const jobOf = (width: number, length: number, pieces: readonly [number, number][], trim = 0): SheetJob => ({
  sheets: [{ name: "sheet", width, length }],
  trim,
  pieces: pieces.map(([w, l], index) => ({ name: `P${index}`, width: w, length: l, grain: "along" })),
  shear,
});
function ordered(tree: CutTree, job: SheetJob): SheetCuts {
  const [sheet] = job.sheets;
  if (!sheet) throw new Error("no sheet");
  const cuts = cutOrder(tree, sheet, job);
  expect(replay(job, 0, cuts)).toEqual([]);
  return cuts;
}
const stops = ({ settings }: SheetCuts) => settings.map(({ stop, cuts }) => [stop, cuts]);

describe("the order of the strokes", () => {
  const strips = (pieces: readonly CutTree[]) => split("length", 100, 300, pieces);

  test("equal strips are cut at one setting, and then all of them across at the next", () => {
    const strip = split("width", 1000, 200, [piece(0, 300, 200), piece(0, 300, 200), piece(0, 300, 200), rest(100, 200)]);
    const tree = split("length", 1000, 500, [strip, strip, rest(1000, 100)]);
    const cuts = ordered(tree, jobOf(1000, 500, [[300, 200]]));
    expect(stops(cuts)).toEqual([
      [200, 2],
      [300, 6],
    ]);
    expect(cuts.stopSettings).toBe(2);
    expect(cuts.offcuts.map(({ width, length }) => [width, length])).toEqual([
      [1000, 100],
      [100, 200],
      [100, 200],
    ]);
  });

  test("the setting that the next stage needs too comes last", () => {
    const tall = split("length", 500, 1000, [piece(0, 500, 400), piece(0, 500, 400), rest(500, 200)]);
    const tree = split("width", 1000, 1000, [tall, piece(1, 400, 1000), rest(100, 1000)]);
    const cuts = ordered(
      tree,
      jobOf(1000, 1000, [
        [500, 400],
        [400, 1000],
      ]),
    );
    // 500 and 400 for the plates, 400 again across the first: two settings, not three.
    expect(stops(cuts)).toEqual([
      [500, 1],
      [400, 3],
    ]);
  });

  test("what is measured falls behind the blade, what is left over is held", () => {
    const tree = strips([piece(0, 100, 80), piece(0, 100, 80), piece(0, 100, 80), rest(100, 60)]);
    const cuts = ordered(tree, jobOf(100, 300, [[100, 80]]));
    expect(cuts.cuts.map(({ off, held }) => [off.kind, held.kind])).toEqual([
      ["piece", "plate"],
      ["piece", "plate"],
      ["piece", "rest"],
    ]);
  });

  test("what is left over is dropped when it is too short to hold", () => {
    const tree = strips([piece(0, 100, 90), piece(0, 100, 90), piece(0, 100, 90), rest(100, 30)]);
    const { cuts } = ordered(tree, jobOf(100, 300, [[100, 90]]));
    for (const { held, faults } of cuts) {
      expect(held.length).toBeGreaterThanOrEqual(50);
      expect(faults).toEqual([]);
    }
    expect(cuts.map(({ off }) => off.kind)).toContain("rest");
  });

  test("a part beyond the stop is held, not measured", () => {
    const tree = split("length", 500, 1000, [piece(0, 500, 700), piece(1, 500, 300)]);
    const { cuts } = ordered(
      tree,
      jobOf(500, 1000, [
        [500, 700],
        [500, 300],
      ]),
    );
    expect(cuts.map(({ stop, held }) => [stop, held.length])).toEqual([[300, 700]]);
  });

  test("two parts beyond the stop are cut to a line", () => {
    const tree = split("length", 500, 1400, [piece(0, 500, 700), piece(0, 500, 700)]);
    const cuts = ordered(tree, jobOf(500, 1400, [[500, 700]]));
    expect(cuts.cuts.map(({ stop }) => stop)).toEqual([undefined]);
    expect(cuts.stopSettings).toBe(0);
  });

  test("a plate with nothing long enough to hold is said", () => {
    const tree = split("length", 500, 80, [piece(0, 500, 40), piece(0, 500, 40)]);
    const { cuts } = ordered(tree, jobOf(500, 80, [[500, 40]]));
    expect(cuts.map(({ faults }) => faults)).toEqual([["too-small-to-hold"]]);
  });

  test("a cut longer than the shear is said", () => {
    const tree = split("width", 1000, 1500, [piece(0, 400, 1500), rest(600, 1500)]);
    const { cuts } = ordered(tree, jobOf(1000, 1500, [[400, 1500]]));
    expect(cuts.map(({ faults }) => faults)).toEqual([["longer-than-shear"]]);
  });

  test("without a shear nothing limits the stop", () => {
    const tree = split("length", 500, 1400, [piece(0, 500, 700), piece(0, 500, 700)]);
    const { shear: _, ...job } = jobOf(500, 1400, [[500, 700]]);
    expect(ordered(tree, job).cuts.map(({ stop }) => stop)).toEqual([700]);
  });
});

describe("the trim", () => {
  test("comes off all four edges before anything else", () => {
    const tree = split("length", 980, 480, [piece(0, 980, 240), piece(0, 980, 240)]);
    const { cuts } = ordered(tree, jobOf(1000, 500, [[980, 240]], 10));
    expect(cuts.map(({ off, stop }) => [off.kind, stop])).toEqual([
      ["trim", 10],
      ["trim", 10],
      ["trim", 10],
      ["trim", 10],
      ["piece", 240],
    ]);
  });

  test("a strip narrower than the stop goes is cut to a line", () => {
    const { cuts } = ordered(piece(0, 992, 492), jobOf(1000, 500, [[992, 492]], 4));
    expect(cuts.map(({ stop }) => stop)).toEqual([undefined, undefined, undefined, undefined]);
  });

  test("an offcut at the far edge keeps its raw edge, which saves a cut", () => {
    const tree = split("length", 980, 480, [piece(0, 980, 240), rest(980, 240)]);
    const { cuts, offcuts } = ordered(tree, jobOf(1000, 500, [[980, 240]], 10));
    expect(cuts).toHaveLength(4);
    expect(offcuts.map(({ width, length }) => [width, length])).toEqual([[980, 250]]);
  });

  test("long edges that the shear cannot reach come off the shorter plates", () => {
    const strip = piece(0, 980, 600);
    const tree = split("length", 980, 1980, [strip, strip, strip, rest(980, 180)]);
    const { cuts } = ordered(tree, jobOf(1000, 2000, [[980, 600]], 10));
    for (const { faults } of cuts) expect(faults).toEqual([]);
    expect(cuts.filter(({ off }) => off.kind === "trim")).toHaveLength(1 + 2 * 3);
  });
});

describe("random plans", () => {
  const wanted = fc.record({
    width: fc.integer({ min: 60, max: 600 }),
    length: fc.integer({ min: 60, max: 600 }),
    count: fc.integer({ min: 1, max: 12 }),
    grain: fc.constantFrom(...grains),
  });
  const job = fc.tuple(fc.array(wanted, { minLength: 1, maxLength: 6 }), fc.constantFrom(0, 4, 12)).map(
    ([pieces, trim]): SheetJob => ({
      sheets: [{ name: "sheet", width: 1250, length: 2500 }],
      trim,
      pieces: pieces.map((each, index) => ({ name: `P${index}`, ...each })),
      shear,
    }),
  );
  const plans = (run: (made: SheetCuts, of: SheetJob) => void) =>
    fc.assert(
      fc.property(job, (of) => {
        for (const { cuts } of cutSheets(of, finish(fewestSheets(of, { work: 2e6 })).layouts)) run(cuts, of);
      }),
      { numRuns: 20, seed: 21 },
    );

  test("blanks of 60 mm and more are never held by less than the hold-downs grip", () =>
    plans(({ cuts }) => {
      for (const { faults } of cuts) expect(faults).toEqual([]);
    }));

  test("heavy first: no plate is cut before the plate it came out of, and stages follow each other", () =>
    plans(({ cuts }) => {
      const depth = (id: string) => (id === "" ? 0 : id.split(".").length);
      const depths = cuts.map(({ from }) => depth(from.id));
      expect(depths).toEqual([...depths].sort((a, b) => a - b));
    }));

  test("within a stage no setting comes twice", () =>
    plans(({ cuts }) => {
      const seen = new Map<string, number>();
      cuts.forEach(({ from, stop, off }, index) => {
        if (stop === undefined || off.kind === "trim") return;
        const key = `${from.id.split(".").length}${from.id === ""}:${stop}`;
        const before = seen.get(key);
        if (before !== undefined)
          for (const between of cuts.slice(before, index)) if (between.off.kind !== "trim") expect(between.stop).toBe(stop);
        seen.set(key, index);
      });
    }));
});

describe("the replay notices", () => {
  const strip = split("width", 980, 200, [piece(0, 300, 200), piece(0, 300, 200), piece(0, 300, 200), rest(80, 200)]);
  const tree = split("length", 980, 480, [strip, strip, rest(980, 80)]);
  const job = jobOf(1000, 500, [[300, 200]], 10);
  const good = ordered(tree, job);
  const first = good.cuts[0] as SheetCuts["cuts"][number];
  const last = good.cuts[good.cuts.length - 1] as SheetCuts["cuts"][number];
  const [one, ...others] = good.pieces;
  if (!one) throw new Error("no piece");

  test.each<[string, SheetCuts, SheetJob]>([
    ["a stroke left out", { ...good, cuts: good.cuts.slice(1) }, job],
    [
      "a stroke that stops short of the edge",
      { ...good, cuts: [{ ...first, cutLength: first.cutLength - 1 }, ...good.cuts.slice(1)] },
      job,
    ],
    ["a wrong stop", { ...good, cuts: [...good.cuts.slice(0, -1), { ...last, stop: 299 }] }, job],
    ["a piece where none was cut", { ...good, pieces: [{ ...one, x: one.x + 1 }, ...others] }, job],
    ["a piece of another size", { ...good, pieces: [{ ...one, width: one.width - 1 }, ...others] }, job],
    ["two pieces in one place", { ...good, pieces: [one, one, ...others.slice(1)] }, job],
    ["a piece forgotten", { ...good, pieces: others }, job],
    ["a piece across the grain", { ...good, pieces: [{ ...one, turned: true }, ...others] }, job],
    ["a piece in the trim", good, { ...job, trim: 11 }],
    ["a cut too long", good, { ...job, shear: { ...shear, longestCut: 900 } }],
    ["a part too short to hold", good, { ...job, shear: { ...shear, shortestHold: 200 } }],
    ["a stop out of range", good, { ...job, shear: { ...shear, longestStop: 250 } }],
    ["settings miscounted", { ...good, stopSettings: good.stopSettings + 1 }, job],
  ])("%s", (_, cuts, of) => {
    expect(replay(of, 0, cuts)).not.toEqual([]);
  });
});
