import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { loadCatalogue } from "../../src/catalogue/load.ts";
import { startingPoints } from "../../src/components/plan/starting-points.ts";
import type { Raw } from "../../src/lib/inputs.ts";
import { type Facet, foldInSpace, type Place } from "../../src/lib/part/fold-in-space.ts";
import type { Plan } from "../../src/lib/part/plan.ts";
import { planFrom } from "../../src/lib/part/plan.ts";
import { down, form, up } from "./samples.ts";

const catalogue = loadCatalogue();

function planned(raw: Raw): Plan {
  const { plan, problems } = planFrom(raw, catalogue);
  expect(problems.map(({ field, message }) => `${field}: ${message}`)).toEqual([]);
  return plan as Plan;
}

const both = (facets: readonly Facet[]) => facets.flatMap(({ points, far }) => [...points, ...far]);
const edgeOf = (facets: readonly Facet[], id: string) => both(facets.filter((facet) => facet.id === id));
const range = (places: readonly Place[], axis: keyof Place) => {
  const values = places.map((place) => place[axis]);
  return { low: Math.min(...values), high: Math.max(...values) };
};

/** 60 × 40 base, 1 mm sheet, one folded edge and nothing else. */
const edged = (kind: string, width: number, gap = 0, fields: Raw = {}) =>
  planned(
    form({
      width: "60mm",
      depth: "40mm",
      edges: [{ side: "north", kind, way: "up", width: `${width}mm`, gap: gap === 0 ? "" : `${gap}mm` }],
      ...fields,
    }),
  );

describe("a folded edge in space", () => {
  test("open: the base keeps its finished depth, the edge its width, and the gap is clear", () => {
    const { layout } = edged("open", 8, 3);
    const facets = foldInSpace(layout);
    expect(range(both(facets), "y").high).toBeCloseTo(40, 9);
    const edge = edgeOf(facets, "north.edge");
    expect(range(edge, "y").low).toBeCloseTo(40 - 8, 9);
    // Sheet, gap, sheet.
    expect(range(edge, "z").high).toBeCloseTo(1 + 3 + 1, 9);
  });

  test("teardrop: the base keeps its depth, the end of the edge touches the sheet, W from the outermost point", () => {
    const facets = foldInSpace(edged("teardrop", 10, 4).layout);
    // The outermost point lies between two seams of the arc, 18° apart at most.
    const chord = 3 * (1 - Math.cos((9 * Math.PI) / 180));
    const { high } = range(both(facets), "y");
    expect(high).toBeLessThanOrEqual(40 + 1e-9);
    expect(high).toBeGreaterThan(40 - chord);
    const straight = facets.find(({ id, kind }) => id === "north.edge" && kind === "panel") as Facet;
    const touching = straight.far.toSorted((a, b) => a.z - b.z)[0] as Place;
    expect(touching.z).toBeCloseTo(1, 9);
    expect(touching.y).toBeCloseTo(40 - 10, 9);
  });

  // The rule counts no thickness. Along the middle of the sheet an arc of 180° at T/2 is π T/2 long and reaches T out, so each of the two
  // sides comes out T (1 − π/4) longer.
  test("closed: both sides come back, longer by the thickness the rule leaves out", () => {
    const facets = foldInSpace(edged("closed", 6).layout);
    const over = 1 - Math.PI / 4;
    expect(range(both(facets), "y").high).toBeCloseTo(40 + over, 9);
    const edge = edgeOf(facets, "north.edge");
    expect(range(edge, "y").low).toBeCloseTo(40 - 6, 9);
    expect(range(edge, "z")).toEqual({ low: expect.closeTo(0, 9), high: expect.closeTo(2, 9) });
  });

  test("double: three sheets lie on each other", () => {
    const facets = foldInSpace(edged("double", 10).layout);
    expect(range(edgeOf(facets, "north.edge"), "z").high).toBeCloseTo(3, 9);
    const { high } = range(both(facets.filter(({ kind }) => kind === "bend")), "y");
    // Second fold: radius T/2, so 3 T/2 out from its start, half of π T before the edge of the base.
    expect(high).toBeCloseTo(40 - Math.PI / 2 + 1.5, 9);
  });

  test("downwards it is the same, below the bench", () => {
    const rows = (way: string) => [{ side: "north", kind: "open", way, width: "8mm", gap: "3mm" }];
    const top = foldInSpace(edged("open", 8, 3).layout);
    const under = foldInSpace(edged("open", 8, 3, { edges: rows("down") }).layout);
    expect(range(both(under), "z").low).toBeCloseTo(1 - range(both(top), "z").high, 9);
    expect(range(both(under), "y").high).toBeCloseTo(40, 9);
  });

  test("on a leg it goes with the leg, whichever side that is on", () => {
    const one = (side: string) =>
      foldInSpace(
        planned(
          form({
            width: "40mm",
            depth: "40mm",
            [side]: [up("25mm")],
            edges: [{ side, kind: "open", way: "up", width: "8mm", gap: "2mm" }],
          }),
        ).layout,
      );
    for (const side of ["north", "south", "east", "west"]) {
      const places = both(one(side));
      // To the outermost point of the fold: the leg's own finished height.
      expect(range(places, "z").high).toBeCloseTo(25, 9);
    }
  });

  test("two neighbouring edges of a flat sheet do not tear its corner off", () => {
    const rows = ["north", "east"].map((side) => ({ side, kind: "closed", way: "up", width: "6mm", gap: "" }));
    const facets = foldInSpace(edged("closed", 6, 0, { edges: rows }).layout, 0);
    const covered = facets.reduce((sum, { points }) => {
      const [origin] = points as [Place];
      return (
        sum +
        Math.abs(
          points.reduce((doubled, a, index) => {
            const b = points[(index + 1) % points.length] as Place;
            return doubled + (a.x - origin.x) * (b.y - origin.y) - (a.y - origin.y) * (b.x - origin.x);
          }, 0),
        ) /
          2
      );
    }, 0);
    const { layout } = edged("closed", 6, 0, { edges: rows });
    const whole = Math.abs(
      layout.outline.reduce((sum, a, index) => {
        const b = layout.outline[(index + 1) % layout.outline.length] as { x: number; y: number };
        return sum + (a.x * b.y - b.x * a.y) / 2;
      }, 0),
    );
    expect(covered).toBeCloseTo(whole, 6);
  });
});

describe("a bend on its way", () => {
  const sample = fc.constantFrom(
    ...startingPoints.flatMap(({ raw }) => (planFrom(raw, catalogue).plan?.bends.length ? [raw] : [])),
  );

  test("never jumps: a little more turn moves nothing far", () => {
    fc.assert(
      fc.property(sample, fc.double({ min: 0, max: 0.999, noNaN: true }), (raw, share) => {
        const { layout } = planned({ ...form({}), ...raw });
        const [now, next] = [foldInSpace(layout, share), foldInSpace(layout, share + 1e-4)];
        const size = Math.hypot(layout.width, layout.depth);
        now.forEach((facet, index) => {
          facet.points.forEach((a, corner) => {
            const b = next[index]?.points[corner] as Place;
            expect(Math.hypot(a.x - b.x, a.y - b.y, a.z - b.z)).toBeLessThan(1e-4 * size * 2 * Math.PI);
          });
        });
      }),
      { numRuns: 60 },
    );
  });

  test("keeps both faces one thickness apart and every panel its size", () => {
    const flatSizes = (facets: readonly Facet[]) =>
      facets
        .filter(({ kind }) => kind !== "bend")
        .map(({ points }) =>
          points.map((a, index) => {
            const b = points[(index + 1) % points.length] as Place;
            return Math.hypot(a.x - b.x, a.y - b.y, a.z - b.z);
          }),
        );
    fc.assert(
      fc.property(sample, fc.double({ min: 0, max: 1, noNaN: true }), (raw, share) => {
        const { layout, part } = planned({ ...form({}), ...raw });
        const facets = foldInSpace(layout, share);
        for (const { points, far } of facets)
          points.forEach((a, index) => {
            const b = far[index] as Place;
            expect(Math.hypot(a.x - b.x, a.y - b.y, a.z - b.z)).toBeCloseTo(part.thickness, 9);
          });
        const before = flatSizes(foldInSpace(layout, 0));
        flatSizes(facets).forEach((sizes, facet) => {
          sizes.forEach((size, side) => {
            expect(size).toBeCloseTo(before[facet]?.[side] as number, 6);
          });
        });
      }),
      { numRuns: 60 },
    );
  });

  test("of a tab is made on its side, wherever that stands", () => {
    const { layout } = planned(
      form({ width: "80mm", depth: "50mm", north: [up("25mm")], east: [up("25mm")], tabs: "north-south", tabWidth: "12mm" }),
    );
    const id = "north.1.tab-east";
    const tab = foldInSpace(layout, { [id]: 1, "north.1": 0, "east.1": 0 }).filter((facet) => facet.id === id);
    // Finished width above the bench while its side still lies flat.
    expect(range(both(tab), "z").high).toBeCloseTo(12, 9);
    expect(range(both(foldInSpace(layout, { [id]: 0, "north.1": 0, "east.1": 0 })), "z").high).toBeCloseTo(1, 9);
  });

  test("down goes down", () => {
    const { layout } = planned(form({ width: "80mm", depth: "50mm", north: [down("25mm")] }));
    expect(range(both(foldInSpace(layout)), "z").low).toBeCloseTo(1 - 25, 9);
  });
});
