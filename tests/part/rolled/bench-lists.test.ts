import { describe, expect, test } from "vitest";
import { loadCatalogue } from "../../../src/catalogue/load.ts";
import type { Raw } from "../../../src/lib/inputs.ts";
import { flatSvg } from "../../../src/lib/part/flat-svg.ts";
import { planFrom } from "../../../src/lib/part/plan.ts";
import { rolledFullSize } from "../../../src/lib/part/rolled/full-size.ts";
import type { RolledPlan } from "../../../src/lib/part/rolled/plan.ts";
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
const cone = planned({
  kind: "cone",
  largeDiameter: "200mm",
  smallDiameter: "120mm",
  height: "150mm",
  seam: "butt",
  holes: [hole],
});

describe("the lists of a rolled part", () => {
  test("the shear cuts the blank and a strip for every trial", () => {
    const [blank, strips] = tube.cuts.pieces;
    expect(blank).toMatchObject({ of: "blank", width: tube.blank.width, depth: tube.blank.depth, count: 1 });
    expect(blank?.settings.map(({ size }) => size).sort((a, b) => a - b)).toEqual(
      expect.arrayContaining([expect.closeTo(Math.min(tube.blank.width, tube.blank.depth), 9)]),
    );
    expect(strips).toMatchObject({ of: "practice", count: tube.practice.length });
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

  test("marks the seam lines, and the centre its arcs are struck from", () => {
    const { drawing } = rolledFullSize(cone);
    expect(drawing["fold-lines"]).toHaveLength(2);
    expect(drawing["hole-centres"].map((mark) => ("name" in mark ? mark.name : undefined))).toContain("centre O of the arcs");
    expect(rolledFullSize(tube).drawing["fold-lines"]).toHaveLength(1);
    expect(rolledFullSize(tube).drawing["hole-centres"]).toHaveLength(1 + 2 * tube.sheet.joints.length);
  });

  test("is spread over sheets that together show all of it", () => {
    const { tiles, width, height } = tiling(rolledFullSize(tube), "a4");
    for (const { x, y } of tube.sheet.outline)
      expect(tiles.some((tile) => tile.used && x >= tile.x && x <= tile.x + width && y >= tile.y && y <= tile.y + height)).toBe(
        true,
      );
  });
});
