import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { loadCatalogue } from "../../src/catalogue/load.ts";
import type { Raw, RawRow } from "../../src/lib/inputs.ts";
import { collision } from "../../src/lib/part/clear.ts";
import { fold, measure } from "../../src/lib/part/fold.ts";
import { type Facet, foldInSpace } from "../../src/lib/part/fold-in-space.ts";
import { area, narrowest } from "../../src/lib/part/geometry.ts";
import { type Plan, planFrom } from "../../src/lib/part/plan.ts";
import { down, form, up } from "./samples.ts";

const catalogue = loadCatalogue();

function planned(raw: Raw): Plan {
  const { plan, problems } = planFrom(raw, catalogue);
  expect(problems.map(({ field, message }) => `${field}: ${message}`)).toEqual([]);
  return plan as Plan;
}

function refusal(raw: Raw) {
  const { plan, problems } = planFrom(raw, catalogue);
  expect(plan).toBeUndefined();
  return { field: problems[0]?.field, message: problems[0]?.message };
}

// One 90° bend in 1 mm sheet at R = 1 mm and K = 0.5: BA = π/2 · 1.5, SB = 2, BD = 4 − BA.
const allowance = (Math.PI / 2) * 1.5;
const deduction = 4 - allowance;

const box = (fields: Raw = {}) =>
  form({
    width: "80mm",
    depth: "50mm",
    north: [up("25mm")],
    south: [up("25mm")],
    east: [up("25mm")],
    west: [up("25mm")],
    cornerGap: "0.3mm",
    relief: "none",
    ...fields,
  });

describe("an open box worked out by hand", () => {
  const plan = planned(box());

  test("the blank is the base and two sides less two deductions, each way (NAVEDTRA 14251, drip-pan layout)", () => {
    expect(plan.blank.width).toBeCloseTo(80 + 50 - 2 * deduction, 12);
    expect(plan.blank.depth).toBeCloseTo(50 + 50 - 2 * deduction, 12);
  });

  test("each notch reaches in by side − deduction + thickness + gap, so the sides meet with the gap", () => {
    expect(plan.corners).toHaveLength(4);
    for (const { guide } of plan.corners) {
      expect(guide.x).toBeCloseTo(25 - deduction + 1.3, 12);
      expect(guide.y).toBeCloseTo(25 - deduction + 1.3, 12);
    }
  });

  test("four square notches are all that is missing from the rectangle", () => {
    const notch = 25 - deduction + 1.3;
    expect(area(plan.layout.outline)).toBeCloseTo(plan.blank.width * plan.blank.depth - 4 * notch ** 2, 9);
    expect(plan.outline).toHaveLength(12);
  });

  test("relief holes sit where the inner tangent lines cross, wide enough to reach the corner of the notch", () => {
    const [corner] = planned(box({ relief: "hole", radius: "4mm", cornerGap: "0mm" })).corners;
    expect(corner?.bentTwice).toBeCloseTo(4 * Math.SQRT2, 12);
    expect(corner?.relief?.size).toBeCloseTo(8 * Math.SQRT2, 12);
    // South-west: the south leg's flat, 25 − (R + T), and its bend lie before the base.
    const ba = (Math.PI / 2) * 4.5;
    expect(corner?.y).toBeCloseTo(25 - 5 + ba, 12);
  });

  test("without a relief the doubly bent metal is a broken check, with one it holds", () => {
    const reliefCheck = (raw: Raw) => planned(raw).checks.filter(({ rule }) => rule === "corner-relief");
    expect(reliefCheck(box()).every(({ ok }) => !ok)).toBe(true);
    expect(reliefCheck(box({ relief: "hole" })).every(({ ok }) => ok)).toBe(true);
    expect(reliefCheck(box({ relief: "notch" })).every(({ ok }) => ok)).toBe(true);
  });

  test("sides turned opposite ways do not meet, so nothing is cut back for a gap", () => {
    const { corners } = planned(box({ east: [down("25mm")], west: [down("25mm")] }));
    for (const { guide, bentTwice } of corners) {
      expect(bentTwice).toBe(0);
      // To the tangent lines: the leg's flat and its bend.
      expect(guide.x).toBeCloseTo(23 + allowance, 12);
    }
  });
});

describe("a tray with tabs", () => {
  const plan = planned(box({ tabs: "north-south", tabWidth: "12mm" }));

  test("has a tab at each end of the north and south sides, a bend with a line of its own", () => {
    expect(plan.tabs.map(({ id }) => id).sort()).toEqual(
      ["north.1.tab-east", "north.1.tab-west", "south.1.tab-east", "south.1.tab-west"].sort(),
    );
    expect(plan.bends.filter(({ id }) => id.includes("tab"))).toHaveLength(4);
    // Its flat is the width less one deduction, beyond the tangent line that lies T + gap inside the neighbour's.
    const tab = plan.tabs.find(({ id }) => id === "north.1.tab-east");
    const eastTangent = plan.blank.width - 23 - allowance;
    expect(tab?.tangents[0]).toBeCloseTo(eastTangent - 1.3, 12);
    expect(tab?.end).toBeCloseTo(eastTangent - 1.3 + allowance + 10, 12);
  });

  test("folded, a tab lies against the inside of its neighbour, one gap off", () => {
    const facets = foldInSpace(plan.layout);
    const tab = facets.find(({ id, kind }) => id === "north.1.tab-east" && kind === "tab") as Facet;
    const wall = facets.find(({ id, kind }) => id === "east.1" && kind === "panel") as Facet;
    // Walked on the bench-side faces: of a side turned up, the outside.
    const wallInside = wall.points[0]?.x as number;
    for (const { x } of tab.points) expect(wallInside - 1 - x).toBeCloseTo(0.3, 9);
  });

  test("the marks of a joint meet when the tray is folded", () => {
    for (const { joints } of plan.tabs) expect(joints.length).toBeGreaterThan(0);
    const { layout } = plan;
    const tab = layout.tabs.find(({ id }) => id === "north.1.tab-east");
    const base = { x: layout.chains[1]?.panels[1]?.from ?? 0, y: layout.chains[0]?.panels[1]?.from ?? 0 };
    const joint = tab?.joints[0];
    // Worked by hand: height above the bench from each flat, and distance in from the outside of the north side.
    const northTangent = base.y + 46;
    const eastTangent = base.x + 76;
    const heightOnTab = (joint?.tab.y ?? 0) - northTangent - allowance;
    const heightOnWall = (joint?.wall.x ?? 0) - eastTangent - allowance;
    expect(heightOnTab).toBeCloseTo(heightOnWall, 9);
    const inFromTabOutside = 2 + ((joint?.tab.x ?? 0) - (tab?.tangents[1] ?? 0));
    const inFromNorthOutside = northTangent + 2 - (joint?.wall.y ?? 0);
    expect(inFromTabOutside).toBeCloseTo(inFromNorthOutside, 9);
  });

  test.each([
    ["without a neighbour", { east: [], west: [] }, "tabs", /need two neighbouring sides/],
    ["on a leaning side", { east: [up("25mm", "60deg")] }, "tabs", /both turned by 90°/],
    ["narrower than their bend", { tabWidth: "1.5mm" }, "tabWidth", /must be above 2\.00 mm/],
    ["on sides too low", { north: [up("3mm")] }, "tabs", /no height for a tab/],
  ])("are refused %s", (_, fields, field, message) => {
    const found = refusal(box({ tabs: "north-south", ...fields }));
    expect(found.field).toBe(field);
    expect(found.message).toMatch(message);
  });
});

/** Which of the four sides a panel is on lies across from that of another. */
const neighbours = (one: string, other: string) => {
  const along = (id: string) => ({ north: "y", south: "y", east: "x", west: "x" })[id.split(".")[0] ?? ""];
  return along(one) !== undefined && along(other) !== undefined && along(one) !== along(other);
};

/** Every leg stays on the side of the base that its first bend turns it to; one that does not may pierce its own base. */
function onOwnSide({ layout }: Plan): boolean {
  const { thickness } = layout.part;
  return layout.chains.every((chain) => {
    const section = fold(chain);
    const base = chain.panels.findIndex(({ id }) => id === "base");
    return section.panels.every((panel, index) => {
      if (index === base) return true;
      const first = chain.bends[index > base ? base : base - 1];
      const heights = [panel.start.z, panel.end.z].flatMap((z) => [z, z + thickness * Math.cos((panel.heading * Math.PI) / 180)]);
      return first?.way === "up" ? Math.min(...heights) > -1e-6 : Math.max(...heights) < thickness + 1e-6;
    });
  });
}

describe("folding boxes back in space", () => {
  const leg = (angles: readonly number[]) =>
    fc
      .record({
        leg: fc.double({ min: 20, max: 60, noNaN: true }),
        angle: fc.constantFrom(...angles),
        way: fc.constantFrom("up", "up", "down"),
      })
      .map(({ leg: size, angle, way }): RawRow => ({ leg: `${size.toFixed(3)}mm`, angle: `${angle}deg`, way }));
  const first = leg([90, 90, 90, 75, 60, 105, 120]);
  const further = leg([90, 45]);
  const side = fc.oneof(
    fc.constant<RawRow[]>([]),
    first.map((row) => [row]),
    fc.tuple(first, further).map((rows) => [...rows]),
  );
  const part = fc.record({
    thickness: fc.double({ min: 0.5, max: 2, noNaN: true }).map((size) => `${size.toFixed(3)}mm`),
    radius: fc.double({ min: 0.5, max: 4, noNaN: true }).map((size) => `${size.toFixed(3)}mm`),
    measured: fc.constantFrom("outside", "inside"),
    width: fc.double({ min: 180, max: 400, noNaN: true }).map((size) => `${size.toFixed(3)}mm`),
    depth: fc.double({ min: 180, max: 400, noNaN: true }).map((size) => `${size.toFixed(3)}mm`),
    north: side,
    south: side,
    east: side,
    west: side,
    cornerGap: fc.double({ min: 0, max: 2, noNaN: true }).map((size) => `${size.toFixed(3)}mm`),
    relief: fc.constantFrom("hole", "notch", "none"),
    bendData: fc.constantFrom("neutral-line", "faa-handbook", "soft-medium-hard"),
  });

  test("returns every finished dimension, and neighbouring sides never run into each other", () => {
    let boxes = 0;
    let looked = 0;
    fc.assert(
      fc.property(part, (fields) => {
        const { plan, problems } = planFrom({ ...fields, material: "steel-cr" }, catalogue);
        expect(problems.map(({ message }) => message)).toEqual([]);
        if (!plan) return;
        if (plan.layout.corners.length > 0) boxes += 1;
        for (const chain of plan.layout.chains) {
          const sizes = measure(chain, fold(chain));
          for (const panel of chain.panels) expect(Math.abs((sizes[panel.id] as number) - panel.length)).toBeLessThan(1e-6);
        }
        expect(area(plan.layout.outline)).toBeGreaterThan(0);
        if (onOwnSide(plan)) {
          looked += 1;
          expect(collision(plan.layout, neighbours)?.depth ?? 0).toBeLessThan(1e-6);
        }
      }),
      { numRuns: 2000 },
    );
    expect(boxes).toBeGreaterThan(1000);
    expect(looked).toBeGreaterThan(1000);
  }, 120_000);

  test("a leg that comes back through its own base is a broken check", () => {
    const part = (leg: string) => box({ east: [up("20mm", "120deg"), up(leg, "90deg")], west: [] });
    const check = (leg: string) => planned(part(leg)).checks.find(({ rule }) => rule === "part-clear");
    expect(check("10mm")).toMatchObject({ ok: true, value: 0 });
    expect(check("60mm")).toMatchObject({ ok: false });
  });

  test("the clear width inside a plain box, measured in space, is the base less two thicknesses", () => {
    const facets = foldInSpace(planned(box()).layout);
    const x = (id: string) => facets.find((facet) => facet.id === id && facet.kind === "panel")?.points[0]?.x as number;
    expect(x("east.1") - x("west.1")).toBeCloseTo(80, 9);
  });

  test("unturned, every facet lies in the plane of the blank where the layout has it", () => {
    const plan = planned(box({ tabs: "east-west" }));
    for (const { points } of foldInSpace(plan.layout, 0))
      for (const { x, y, z } of points) {
        expect(z).toBeCloseTo(0, 9);
        expect(x).toBeGreaterThan(-1e-9);
        expect(x).toBeLessThan(plan.blank.width + 1e-9);
        expect(y).toBeGreaterThan(-1e-9);
        expect(y).toBeLessThan(plan.blank.depth + 1e-9);
      }
  });
});

describe("the outline", () => {
  test("turned by 90° it is the same outline", () => {
    const rows = { north: [up("25mm"), up("8mm")], east: [up("25mm"), up("8mm")], south: [up("30mm")], west: [up("20mm")] };
    const a = planned(box(rows)).layout;
    const turned = { east: rows.north, south: rows.east, west: rows.south, north: rows.west };
    const b = planned(box({ ...turned, width: "50mm", depth: "80mm" })).layout;
    const key = (points: readonly { x: number; y: number }[]) =>
      points.map(({ x, y }) => `${x.toFixed(6)} ${y.toFixed(6)}`).sort();
    // A quarter turn clockwise takes (x, y) to (y, width − x).
    expect(key(b.outline)).toEqual(key(a.outline.map(({ x, y }) => ({ x: y, y: a.width - x }))));
  });

  test("says when the flat part would lie over itself", () => {
    const lid = (flange: string) => {
      const rows = [up("25mm"), up(flange)];
      return planned(box({ north: rows, south: rows, east: rows, west: rows })).checks.find(({ rule }) => rule === "overlap");
    };
    expect(lid("15mm")).toMatchObject({ ok: true, value: 0 });
    // Flanges mitred at both ends that are deeper than half the base cross over themselves.
    expect(lid("45mm")).toMatchObject({ ok: false });
  });

  test("inward flanges of equal sides are mitred by 45°", () => {
    const flanged = [up("25mm"), up("10mm")];
    const { layout } = planned(box({ north: flanged, south: flanged, east: flanged, west: flanged }));
    const span = layout.spans["north.2"];
    // Its free edge is 2 × the flange shorter than the box, less the gaps: mitred corners start one flange in.
    const free = layout.outline.filter(({ y }) => Math.abs(y - layout.depth) < 1e-9).map(({ x }) => x);
    expect(Math.max(...free) - Math.min(...free)).toBeCloseTo(80 - 2 * (10 + 0.3), 9);
    expect((span?.to ?? 0) - (span?.from ?? 0)).toBeGreaterThan(0);
  });
});

describe("the narrowest strip", () => {
  test("is found between a notch and an edge, not across air or along an edge", () => {
    // A plate 100 × 60 with a slot of air 10 wide cut in from the top, 3 from its right edge.
    const plate = [
      { x: 0, y: 0 },
      { x: 100, y: 0 },
      { x: 100, y: 60 },
      { x: 97, y: 60 },
      { x: 97, y: 20 },
      { x: 87, y: 20 },
      { x: 87, y: 60 },
      { x: 0, y: 60 },
    ];
    expect(narrowest(plate)?.width).toBeCloseTo(3, 9);
  });

  test("of a tray with tabs is that of its tabs, not the step beside them", () => {
    const { outline } = planned(box({ tabs: "north-south", tabWidth: "12mm" })).layout;
    expect(narrowest(outline)?.width).toBeGreaterThan(8);
  });
});
