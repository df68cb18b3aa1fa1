import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { loadCatalogue } from "../../../src/catalogue/load.ts";
import type { Raw } from "../../../src/lib/inputs.ts";
import { flatSvg } from "../../../src/lib/part/flat-svg.ts";
import { depthIn } from "../../../src/lib/part/geometry.ts";
import { planFrom } from "../../../src/lib/part/plan.ts";
import { rolledFullSize } from "../../../src/lib/part/rolled/full-size.ts";
import type { RolledPlan } from "../../../src/lib/part/rolled/plan.ts";
import { seamPlaces } from "../../../src/lib/part/rolled/seam-places.ts";
import { tiling } from "../../../src/lib/part/template.ts";

const catalogue = loadCatalogue();

function planned(raw: Raw): RolledPlan {
  const { rolled, problems } = planFrom({ material: "steel-cr", thickness: "0.8mm", ...raw }, catalogue);
  expect(problems.map(({ field, message }) => `${field}: ${message}`)).toEqual([]);
  return rolled as RolledPlan;
}

const hole = { panel: "base", x: "60mm", y: "40mm", diameter: "5mm" };
const tube = planned({
  kind: "tube",
  diameter: "150mm",
  measured: "outside",
  length: "200mm",
  seam: "lap",
  seamWidth: "14mm",
  seamJoint: "spots",
  holes: [hole],
});
const coneSizes = { kind: "cone", largeDiameter: "200mm", smallDiameter: "120mm", height: "150mm" };
const cone = planned({ ...coneSizes, seam: "butt", holes: [hole] });

describe("the lists of a rolled part", () => {
  test("the shear cuts the blank and a strip for every trial", () => {
    const [blank, strips] = tube.cuts.pieces;
    expect(blank).toMatchObject({ of: "blank", width: tube.blank.width, depth: tube.blank.depth, count: 1 });
    expect(blank?.settings.map(({ size }) => size).sort((a, b) => a - b)).toEqual(
      expect.arrayContaining([expect.closeTo(Math.min(tube.blank.width, tube.blank.depth), 9)]),
    );
    expect(strips).toMatchObject({ of: "practice", count: tube.practice.length });
  });

  test("goes round a tube along the rolling direction, so that the folds of its seam run across it", () => {
    // 1000 × 2000 is the least sheet: either lie fits, and the narrower strip alone would turn this one.
    const long = planned({
      kind: "tube",
      diameter: "150mm",
      measured: "outside",
      length: "600mm",
      seam: "grooved",
      seamWidth: "6mm",
    });
    expect(long.blank.width).toBeLessThan(long.blank.depth);
    expect(long.cuts.pieces[0]?.grain).toBe("x");
    expect(tube.blank.width).toBeGreaterThan(tube.blank.depth);
    expect(tube.cuts.pieces[0]?.grain).toBe("x");
  });

  test("a hole is punched while the sheet is flat, with the punch of its size", () => {
    expect(tube.punching).toHaveLength(1);
    expect(tube.punching[0]).toMatchObject({ kind: "hole", for: ["1"], tool: { by: "punch", punch: { die: "C" } } });
  });

  test("a lap joined by spots has the settings of the welder, butted edges have none", () => {
    expect(tube.joints).toMatchObject({ kind: "spots", verdict: "yes", count: tube.sheet.joints.length });
    expect(cone.joints).toBeUndefined();
    const riveted = planned({
      kind: "tube",
      diameter: "150mm",
      length: "200mm",
      seam: "lap",
      seamWidth: "20mm",
      seamJoint: "rivets",
    });
    // 3 × 0.8 mm is a little more than 3/32 in, so the next size up; two layers to grip.
    expect(riveted.joints).toMatchObject({ kind: "rivets", grip: 1.6, inches: "1/8 in" });
  });
});

describe("a rolled part at full size", () => {
  test("is written in true millimetres, with the edge of its blank", () => {
    const svg = flatSvg(rolledFullSize(cone));
    const size = /width="([\d.]+)mm" height="([\d.]+)mm" viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(svg);
    expect(Number(size?.[1])).toBeCloseTo(cone.blank.width + 10, 2);
    expect(size?.[1]).toBe(size?.[3]);
    expect(size?.[2]).toBe(size?.[4]);
    const edge = /<g id="outline"[^>]*>\s*<path d="M([^"]+)Z"/.exec(svg)?.[1]?.split("L") ?? [];
    expect(edge).toHaveLength(cone.sheet.outline.length);
    const [x, y] = (edge[0] ?? "").split(" ").map(Number);
    expect(x).toBeCloseTo((cone.sheet.outline[0]?.x ?? 0) + 5, 2);
    expect(y).toBeCloseTo(cone.blank.depth + 5 - (cone.sheet.outline[0]?.y ?? 0), 2);
  });

  test("marks laps, joints, the middle, and the centre its arcs are struck from", () => {
    const { drawing } = rolledFullSize(cone);
    // Its butted edges are the seam lines: nothing is folded, and nothing drawn twice.
    expect(drawing["fold-lines"]).toEqual([]);
    expect(drawing["seam-lines"]).toEqual([]);
    expect(drawing["hole-centres"].map((mark) => ("name" in mark ? mark.name : undefined))).toContain("centre O of the arcs");
    const flat = rolledFullSize(tube).drawing;
    expect(flat["fold-lines"]).toEqual([]);
    expect(flat["seam-lines"]).toMatchObject([{ from: { x: 14 }, to: { x: 14 } }]);
    expect(flat["hole-centres"]).toHaveLength(1 + 2 * tube.sheet.joints.length);
    expect(flat["middle-line"]).toMatchObject([{ from: { x: tube.blank.width / 2, y: 0 }, to: { y: 200 } }]);
  });

  test.each(["lap", "grooved", "standing"])(
    "of a cone with a %s seam, every line is as far from its edge as the seam says",
    (seam) => {
      const { sheet } = planned({ ...coneSizes, seam, seamWidth: "6mm", seamJoint: "rivets" });
      const sector = sheet.sector as NonNullable<typeof sheet.sector>;
      const places = seamPlaces(sheet);
      const marked = places.filter(({ kind }) => kind !== "seam");
      expect(marked.map(({ what }) => what)).toEqual(sheet.seam.lines.map(({ what }) => what));
      const far = (point: { x: number; y: number }) => Math.hypot(point.x - sector.centre.x, point.y - sector.centre.y);
      for (const { side, what, from, to } of places) {
        const line = sheet.seam.lines.find((each) => each.what === what);
        const strip = side === "A" ? sheet.seam.sideA : sheet.seam.sideB;
        const { outer, inner } = sector.seamLines.find((each) => each.side === side) as (typeof sector.seamLines)[number];
        // Distance from the seam line by the cross product; outwards is away from the middle line.
        const length = Math.hypot(outer.x - inner.x, outer.y - inner.y);
        for (const end of [from, to]) {
          const cross = ((outer.x - inner.x) * (end.y - inner.y) - (outer.y - inner.y) * (end.x - inner.x)) / length;
          expect(side === "A" ? -cross : cross).toBeCloseTo(strip - (line?.distance ?? strip), 6);
          expect(Math.abs(depthIn(sheet.outline, end))).toBeLessThan(1e-6);
        }
        // The large end is an arc; straight steps leave it by 0.01 mm at most.
        expect(Math.abs(Math.max(far(from), far(to)) - sector.outerRadius)).toBeLessThan(0.011);
      }
    },
  );

  test("lines of any seam lie from edge to edge of the blank, all of them, however short the cone", () => {
    const length = (min: number, max: number) => fc.integer({ min: 10 * min, max: 10 * max }).map((tenths) => tenths / 10);
    let planned = 0;
    fc.assert(
      fc.property(
        fc.constantFrom("lap", "grooved", "standing"),
        length(3, 25),
        length(20, 300),
        length(0, 250),
        length(5, 300),
        fc.boolean(),
        (seam, width, large, small, height, isTube) => {
          const sizes = isTube
            ? { kind: "tube", diameter: `${large}mm`, length: `${height}mm` }
            : { kind: "cone", largeDiameter: `${large}mm`, smallDiameter: `${small}mm`, height: `${height}mm` };
          const raw = { material: "steel-cr", thickness: "0.5mm", ...sizes, seam, seamWidth: `${width}mm`, seamJoint: "rivets" };
          // What cannot be made is refused with its reason; that is tested elsewhere.
          const { rolled } = planFrom(raw, catalogue);
          if (!rolled) return;
          planned += 1;
          const { sheet } = rolled;
          const places = seamPlaces(sheet);
          for (const { what } of sheet.seam.lines) expect(places.filter((place) => place.what === what)).toHaveLength(1);
          for (const { from, to } of places)
            for (const end of [from, to]) expect(Math.abs(depthIn(sheet.outline, end))).toBeLessThan(1e-6);
        },
      ),
      { numRuns: 400 },
    );
    expect(planned).toBeGreaterThan(100);
  });

  test("hooks of a grooved cone are on the layer of fold lines, its seam lines are not", () => {
    const { drawing } = rolledFullSize(planned({ ...coneSizes, seam: "grooved", seamWidth: "6mm" }));
    const names = (id: "fold-lines" | "seam-lines") => drawing[id].map((mark) => ("name" in mark ? mark.name : undefined));
    expect(names("fold-lines")).toEqual(["fold of hook A, up", "fold of hook B, down"]);
    expect(names("seam-lines")).toEqual(["seam line A", "seam line B"]);
  });

  test("is spread over sheets that together show all of it", () => {
    const { tiles, width, height } = tiling(rolledFullSize(tube), "a4");
    for (const { x, y } of tube.sheet.outline)
      expect(tiles.some((tile) => tile.used && x >= tile.x && x <= tile.x + width && y >= tile.y && y <= tile.y + height)).toBe(
        true,
      );
  });
});
