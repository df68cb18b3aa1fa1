import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { loadCatalogue } from "../../src/catalogue/load.ts";
import { startingPoints } from "../../src/components/plan/starting-points.ts";
import type { Raw } from "../../src/lib/inputs.ts";
import { depthTree } from "../../src/lib/part/depth-order.ts";
import type { FlatPoint } from "../../src/lib/part/flatten.ts";
import { type Facet, foldInSpace, type Place } from "../../src/lib/part/fold-in-space.ts";
import { foldingSteps, stillPositions, turnedAt, usualFoldingOrder } from "../../src/lib/part/folding-steps.ts";
import { area, inside } from "../../src/lib/part/geometry.ts";
import { type Plan, planFrom } from "../../src/lib/part/plan.ts";
import { withOrder } from "../../src/lib/part/plan-order.ts";
import { poseOf, solidOf } from "../../src/lib/part/solid.ts";
import { extentOf, frameOf, type Painted, paint, project, usualView, type View } from "../../src/lib/part/view.ts";
import { down, form, up } from "./samples.ts";

const catalogue = loadCatalogue();

function planned(raw: Raw): Plan {
  const { plan, problems } = planFrom(raw, catalogue);
  expect(problems.map(({ field, message }) => `${field}: ${message}`)).toEqual([]);
  return plan as Plan;
}

/** With room at the corners for both bends, so that no metal is bent twice and no two pieces of the blank lie over each other. */
const roomy = (raw: Raw): Raw => ({ ...raw, cornerGap: "3mm", relief: "none" });

const start = (id: string) => startingPoints.find((point) => point.id === id)?.raw ?? {};
const hems = (kind: string, gap: string) =>
  ["north", "south", "east", "west"].map((side) => ({ side, kind, way: "up", width: "8mm", gap }));
const samples: Readonly<Record<string, Raw>> = {
  ...Object.fromEntries(startingPoints.filter(({ raw }) => planFrom(raw, catalogue).plan).map(({ id, raw }) => [id, raw])),
  "tray with tabs": { ...start("tray"), tabs: "north-south", tabWidth: "12mm", relief: "hole" },
  "tray with open hems": { ...start("tray"), edges: hems("open", "3mm"), relief: "notch" },
  "tray with closed hems": { ...start("tray"), edges: hems("closed", "") },
  "leaning sides": form({
    width: "120mm",
    depth: "90mm",
    north: [up("40mm", "60deg"), down("15mm", "45deg")],
    south: [down("30mm", "75deg")],
    east: [up("40mm", "120deg")],
  }),
};

function painting(plan: Plan, position: number, view: View) {
  const solid = solidOf(plan.layout);
  const turned = turnedAt(foldingSteps(plan.layout), position);
  return { solid, turned, painted: paint(solid, depthTree(poseOf(solid, turned)), view) };
}

const minus = (a: Place, b: Place): Place => ({ x: a.x - b.x, y: a.y - b.y, z: a.z - b.z });
const dot = (a: Place, b: Place) => a.x * b.x + a.y * b.y + a.z * b.z;

/** How near to the viewer a flat face is where it is drawn at a point; undefined where it is not. */
function nearness(corners: readonly Place[], through: Place, view: View, at: FlatPoint): number | undefined {
  const frame = frameOf(view);
  if (
    !inside(
      corners.map((corner) => project(corner, frame)),
      at,
    )
  )
    return undefined;
  const facing = dot(through, frame.towards);
  if (Math.abs(facing) < 1e-3) return undefined;
  const corner = corners[0] as Place;
  const there: Place = {
    x: at.x * frame.right.x + at.y * frame.up.x,
    y: at.x * frame.right.y + at.y * frame.up.y,
    z: at.x * frame.right.z + at.y * frame.up.z,
  };
  return dot(through, minus(corner, there)) / facing;
}

const faceNearness = (facet: Facet, view: View, at: FlatPoint) => {
  const both = [facet.points, facet.far].flatMap((face) => nearness(face, facet.through, view, at) ?? []);
  return both.length === 0 ? undefined : Math.max(...both);
};

/** What ends up on top at a point of the drawing. */
function shownAt(painted: readonly Painted[], at: FlatPoint): Painted | undefined {
  const inFace = ({ face }: Painted) => face.filter((ring) => inside(ring, at)).length % 2 === 1;
  return painted.findLast((piece) => inFace(piece) || piece.bands.some((band) => inside(band, at)));
}

/** Points of a grid over the drawing at which a face is hidden by one that is clearly further away. */
function wrongPoints(plan: Plan, position: number, view: View, grid = 24) {
  // Without holes, through which what lies behind is rightly seen.
  const bare: Plan = { ...plan, layout: { ...plan.layout, holes: [], corners: [] } };
  const { solid, turned, painted } = painting(bare, position, view);
  const facets = foldInSpace(bare.layout, turned);
  const { left, right, bottom, top } = extentOf(solid, [turned], view);
  const wrong: string[] = [];
  let covered = 0;
  for (let row = 0; row < grid; row += 1)
    for (let column = 0; column < grid; column += 1) {
      const at = {
        x: left + ((column + 0.37) / grid) * (right - left),
        y: bottom + ((row + 0.61) / grid) * (top - bottom),
      };
      const depths = facets.map((facet) => faceNearness(facet, view, at));
      const nearest = Math.max(...depths.map((depth) => depth ?? Number.NEGATIVE_INFINITY));
      const shown = shownAt(painted, at);
      if (nearest === Number.NEGATIVE_INFINITY) continue;
      covered += 1;
      if (!shown) {
        wrong.push(`nothing at ${at.x}, ${at.y}`);
        continue;
      }
      const depth = depths[shown.facet];
      // Looked at along a face, its own thickness already reaches far towards the viewer.
      const facing = Math.abs(dot((facets[shown.facet] as Facet).through, frameOf(view).towards));
      if (depth !== undefined && nearest - depth > (4 * plan.part.thickness) / facing)
        wrong.push(`${shown.id} over ${facets[depths.indexOf(nearest)]?.id}, ${(nearest - depth).toFixed(2)} mm nearer`);
    }
  return { wrong, covered };
}

describe("what hides what", () => {
  test.each(Object.entries(samples))(
    "%s: from no side is a nearer face covered by a farther one",
    (_, raw) => {
      const plan = planned(raw);
      const last = foldingSteps(plan.layout).length;
      let covered = 0;
      for (const position of [0, 0.4, last / 2 + 0.3, Math.max(0, last - 0.5), last])
        for (const from of [152, 20, 245])
          for (const above of [34, -25]) {
            const found = wrongPoints(plan, Math.min(last, position), { from, above }, 16);
            expect(found.wrong).toEqual([]);
            covered += found.covered;
          }
      expect(covered).toBeGreaterThan(1000);
    },
    60_000,
  );

  test("nor at any angle in any order of folding", () => {
    const names = Object.keys(samples);
    fc.assert(
      fc.property(
        fc.constantFrom(...names),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.integer({ min: 0, max: 359 }),
        fc.integer({ min: -80, max: 80 }),
        (name, share, from, above) => {
          const plan = planned(samples[name] as Raw);
          const last = foldingSteps(plan.layout).length;
          expect(wrongPoints(plan, share * last, { from, above }, 12).wrong).toEqual([]);
        },
      ),
      { numRuns: 60 },
    );
  }, 30_000);

  test("the test notices when the order is turned round", () => {
    const plan = planned(start("tray"));
    const { painted } = painting(plan, 4, usualView);
    const facets = foldInSpace(plan.layout);
    const frame = frameOf(usualView);
    const south = facets.findIndex(({ id, kind }) => id === "south.1" && kind === "panel");
    const corners = (facets[south]?.points ?? []).map((place) => project(place, frame));
    const low = { x: 0, y: 0 };
    for (const { x, y } of corners) {
      low.x += x / corners.length;
      low.y += y / corners.length;
    }
    expect(shownAt(painted, low)?.id).toBe("south.1");
    expect(shownAt(painted.toReversed(), low)?.id).not.toBe("south.1");
  });
});

describe("the drawing", () => {
  test("seen from straight above, the flat blank has its own size and area", () => {
    const plan = planned(roomy(start("tray")));
    const { solid, turned, painted } = painting({ ...plan, layout: { ...plan.layout, holes: [] } }, 0, {
      from: 180,
      above: 89.9999,
    });
    const { left, right, bottom, top } = extentOf(solid, [turned], { from: 180, above: 89.9999 });
    expect(right - left).toBeCloseTo(plan.blank.width, 3);
    expect(top - bottom).toBeCloseTo(plan.blank.depth, 3);
    const drawn = painted.reduce((sum, { face }) => sum + Math.abs(area(face[0] ?? [])), 0);
    expect(drawn).toBeCloseTo(Math.abs(area(plan.layout.outline)), 1);
  });

  test("north is up and east to the right when looked at from the south", () => {
    const frame = frameOf({ from: 180, above: 45 });
    expect(project({ x: 1, y: 0, z: 0 }, frame).x).toBeCloseTo(1, 12);
    expect(project({ x: 0, y: 1, z: 0 }, frame).y).toBeCloseTo(Math.SQRT1_2, 12);
    expect(project({ x: 0, y: 0, z: 1 }, frame).y).toBeCloseTo(Math.SQRT1_2, 12);
  });

  test("holes are open: what lies behind shows through", () => {
    const plan = planned(
      form({ width: "60mm", depth: "40mm", holes: [{ panel: "base", x: "30mm", y: "20mm", diameter: "10mm" }] }),
    );
    const view = { from: 180, above: 89 };
    const { painted } = painting(plan, 0, view);
    const at = (x: number, y: number) => project({ x, y, z: 1 }, frameOf(view));
    expect(painted[0]?.face[1]?.length).toBeGreaterThanOrEqual(24);
    expect(shownAt(painted, at(30, 20))).toBeUndefined();
    expect(shownAt(painted, at(40, 20))?.id).toBe("base");
    // Its area on the drawing: a polygon of 24 sides, foreshortened by sin 89°.
    const polygon = 12 * 25 * Math.sin(Math.PI / 12) * Math.sin((89 * Math.PI) / 180);
    expect(Math.abs(area(painted[0]?.face[1] ?? []))).toBeCloseTo(polygon, 6);
  });

  test("a hole in a leg goes up with it, and a slot keeps its length", () => {
    const plan = planned(
      form({
        width: "80mm",
        depth: "40mm",
        north: [up("40mm")],
        cutouts: [{ panel: "north.1", shape: "slot", x: "40mm", y: "20mm", width: "30mm", height: "8mm", turn: "0" }],
      }),
    );
    const solid = solidOf(plan.layout);
    const holes = poseOf(solid, 1).flatMap((piece) => piece.holes);
    expect(holes).toHaveLength(1);
    const [hole] = holes;
    const xs = hole?.near.map(({ x }) => x) ?? [];
    const zs = hole?.near.map(({ z }) => z) ?? [];
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(30, 9);
    expect(Math.max(...zs) - Math.min(...zs)).toBeCloseTo(8, 9);
    // 20 mm from the outside of the bend, as it is measured.
    expect((Math.max(...zs) + Math.min(...zs)) / 2).toBeCloseTo(20, 9);
  });

  test("every edge of the blank is an edge of the drawing, and nothing else is", () => {
    for (const raw of Object.values(samples)) {
      const { layout } = planned(roomy(raw));
      const length = solidOf(layout).facets.reduce(
        (sum, { polygon, sides }) =>
          sum +
          sides.reduce((own, side, index) => {
            const [a, b] = [polygon[index], polygon[(index + 1) % polygon.length]] as [FlatPoint, FlatPoint];
            return own + (side === "edge" ? Math.hypot(b.x - a.x, b.y - a.y) : 0);
          }, 0),
        0,
      );
      const outline = layout.outline.reduce((sum, a, index) => {
        const b = layout.outline[(index + 1) % layout.outline.length] as FlatPoint;
        return sum + Math.hypot(b.x - a.x, b.y - a.y);
      }, 0);
      expect(length).toBeCloseTo(outline, 4);
    }
  });
});

describe("whatever is entered", () => {
  const size = (min: number, max: number) => fc.double({ min, max, noNaN: true }).map((value) => `${value.toFixed(2)}mm`);
  const leg = fc.record({
    leg: size(4, 60),
    angle: fc.constantFrom("90deg", "45deg", "120deg", "170deg", "5deg"),
    way: fc.constantFrom("up", "down"),
    radius: fc.constantFrom("", "4mm"),
  });
  const legs = fc.array(leg, { maxLength: 3 });
  const edge = (side: string) =>
    fc.option(
      fc.record({
        side: fc.constant(side),
        kind: fc.constantFrom("closed", "open", "teardrop", "double"),
        way: fc.constantFrom("up", "down"),
        width: size(3, 15),
        gap: fc.constantFrom("1mm", "2mm"),
      }),
      { nil: undefined },
    );
  const part = fc.record({
    thickness: size(0.4, 3),
    width: size(20, 200),
    depth: size(20, 200),
    north: legs,
    south: legs,
    east: legs,
    west: legs,
    edges: fc.tuple(edge("north"), edge("east"), edge("south")).map((rows) => rows.flatMap((row) => row ?? [])),
    cornerGap: size(0, 3),
    relief: fc.constantFrom("hole", "notch", "none"),
    cutouts: fc.constant([{ panel: "base", shape: "slot", x: "10mm", y: "10mm", width: "12mm", height: "6mm", turn: "30deg" }]),
  });

  test("that can be planned can be drawn: every place is a number, and no part falls to splinters", () => {
    let drawn = 0;
    fc.assert(
      fc.property(part, fc.double({ min: 0, max: 1, noNaN: true }), fc.integer({ min: 0, max: 359 }), (fields, share, from) => {
        const { plan } = planFrom({ ...fields, material: "steel-cr" }, catalogue);
        if (!plan) return;
        drawn += 1;
        const position = share * foldingSteps(plan.layout).length;
        const { solid, painted } = painting(plan, position, { ...usualView, from });
        const numbers = painted.flatMap(({ face, bands, outlines, folds }) =>
          [...face, ...bands, ...outlines, ...folds].flat().flatMap(({ x, y }) => [x, y]),
        );
        expect(numbers.every(Number.isFinite)).toBe(true);
        expect(painted.length).toBeGreaterThanOrEqual(solid.facets.length);
        expect(painted.length).toBeLessThan(12 * solid.facets.length + 50);
      }),
      { numRuns: 300 },
    );
    expect(drawn).toBeGreaterThan(60);
  }, 30_000);
});

describe("steps of the picture", () => {
  test("fold edges first, then tabs, then rims, then walls: pair by pair, the shorter side first", () => {
    const rims = [up("25mm"), up("10mm")];
    const { layout } = planned(
      form({
        width: "120mm",
        depth: "80mm",
        north: rims,
        south: rims,
        east: [up("25mm")],
        west: [up("25mm")],
        tabs: "east-west",
        tabWidth: "12mm",
        edges: [{ side: "east", kind: "closed", way: "up", width: "6mm", gap: "" }],
      }),
    );
    const order = usualFoldingOrder(layout);
    expect(order[0]).toBe("east.edge");
    expect(order.slice(1, 5).every((id) => id.includes(".tab-"))).toBe(true);
    expect(order.slice(5)).toEqual(["north.2", "south.2", "east.1", "west.1", "north.1", "south.1"]);
  });

  test("keep to an order that is given, and say what it leaves out", () => {
    const { layout } = planned({ ...samples["tray with tabs"] });
    const tabs = layout.tabs.map(({ id }) => id);
    const [first, ...others] = tabs as [string, ...string[]];
    const steps = foldingSteps(layout, [{ bend: "west.1", tabs: [first] }, { bend: "north.1" }, { bend: "south.1" }]);
    expect(steps.map(({ id }) => id)).toEqual([...others, "west.1", "north.1", "south.1", "east.1"]);
    expect(turnedAt(steps, others.length + 0.5)).toMatchObject({ "west.1": 0.5, [first]: 0.5, "north.1": 0 });
    expect(() => foldingSteps(layout, [{ bend: "north.7" }])).toThrow(/order holds “north\.7”; bends of this part are/);
  });

  test("take every order that the search finds for this shop's brake, and add nothing to it but tabs bent by hand", () => {
    let found = 0;
    for (const raw of Object.values(samples)) {
      const plan = withOrder(planned(raw), catalogue);
      if (!plan.order || !("steps" in plan.order)) continue;
      found += 1;
      const ids = plan.order.steps.map(({ bend }) => bend);
      const steps = foldingSteps(plan.layout, plan.order.steps);
      expect(steps.filter(({ id }) => !plan.tabs.some((tab) => tab.id === id)).map(({ id }) => id)).toEqual(ids);
      expect(Object.keys(turnedAt(steps, 0)).toSorted()).toEqual(usualFoldingOrder(plan.layout).toSorted());
    }
    expect(found).toBeGreaterThan(5);
  });

  test("show from three to six stills, flat first and finished last", () => {
    for (const raw of Object.values(samples)) {
      const steps = foldingSteps(planned(raw).layout);
      const positions = stillPositions(steps);
      if (steps.length === 0) continue;
      expect(positions.length).toBeGreaterThanOrEqual(3);
      expect(positions.length).toBeLessThanOrEqual(6);
      expect(positions[0]).toBe(0);
      expect(positions.at(-1)).toBe(steps.length);
      expect(new Set(positions).size).toBe(positions.length);
    }
  });
});
