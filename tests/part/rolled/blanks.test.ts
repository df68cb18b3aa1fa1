import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Raw } from "../../../src/lib/inputs.ts";
import { area, inside, overlaps } from "../../../src/lib/part/geometry.ts";
import { planFrom } from "../../../src/lib/part/plan.ts";
import type { RolledSheet } from "../../../src/lib/part/rolled/model.ts";
import { catalogue, cone, hole, refused, rolled, tube } from "./samples.ts";

const radians = (degrees: number) => (degrees * Math.PI) / 180;

/** Expected values: Cyclopedia of Drawing, L = π (Di + t), read; tests/published/rolling.json has the same. */
describe("the blank of a tube", () => {
  test("is the published length for a tube measured inside, and outside", () => {
    expect(rolled(tube()).blank.width).toBeCloseTo(474.3805, 4);
    expect(rolled(tube({ diameter: "152mm", measured: "outside" })).blank.width).toBeCloseTo(474.3805, 4);
    expect(rolled(tube({ diameter: "100mm" })).blank.width).toBeCloseTo(317.3009, 4);
  });

  test("of a third of a tube is a third of its circle", () => {
    const { blank, sheet } = rolled(tube({ diameter: "400mm", thickness: "2mm", arc: "120deg" }));
    expect(blank.width).toBeCloseTo(420.973, 3);
    expect(blank.depth).toBe(300);
    expect(sheet.joints).toEqual([]);
  });

  test("grows by the published allowance of its seam", () => {
    const butt = rolled(tube()).blank.width;
    // Lock-seam page (read): three widths in all. Copper Roofings (read): 1 1/4 and 1 in for a seam of 3/4 in.
    expect(rolled(tube({ seam: "grooved", seamWidth: "6mm" })).blank.width).toBeCloseTo(butt + 18, 9);
    expect(rolled(tube({ seam: "standing", seamWidth: "0.75in" })).blank.width).toBeCloseTo(butt + 2.25 * 25.4, 9);
    expect(rolled(tube({ seam: "lap", seamWidth: "12mm" })).blank.width).toBeCloseTo(butt + 12, 9);
  });

  test("weighs what its rectangle weighs, less its holes", () => {
    const { blank, part } = rolled(tube({ holes: [hole(100, 50, 40)] }));
    const metal = 474.3805 * 300 - Math.PI * 20 ** 2;
    expect(blank.mass).toBeCloseTo((metal * part.material.density.value) / 1e9, 6);
  });

  test("has holes from its seam line, beyond the allowance of edge A", () => {
    const { sheet } = rolled(tube({ seam: "grooved", seamWidth: "6mm", holes: [hole(100, 50)] }));
    expect(sheet.holes[0]).toMatchObject({ flatX: 109, flatY: 50 });
  });
});

describe("the blank of a cone", () => {
  test("is the sector of Longfield's frustum of 6, 3 and 3 in", () => {
    const { sheet } = rolled(cone({ largeDiameter: "6in", smallDiameter: "3in", height: "3in" }));
    expect((sheet.sector?.outerRadius ?? 0) / 25.4).toBeCloseTo(6.708204, 6);
    expect((sheet.sector?.innerRadius ?? 0) / 25.4).toBeCloseTo(3.354102, 6);
    expect(sheet.sector?.angle).toBeCloseTo(160.99689, 5);
    expect((sheet.sector?.chord ?? 0) / 25.4).toBeCloseTo(13.23235, 5);
    // Its area, recomputed in the reference: 47.42 in².
    expect(area(sheet.outline) / 25.4 ** 2).toBeCloseTo(47.42, 1);
  });

  test("is 254.6° for an apex of 90°, as the smith's page prints, and 60° for a slant of six radii", () => {
    expect(rolled(cone({ largeDiameter: "100mm", smallDiameter: "0mm", height: "50mm" })).sheet.sector?.angle).toBeCloseTo(
      254.6,
      1,
    );
    const six = rolled(cone({ largeDiameter: "20mm", smallDiameter: "0mm", height: "59.16079783mm" })).sheet.sector;
    expect(six?.angle).toBeCloseTo(60, 6);
    expect(six?.outerRadius).toBeCloseTo(60, 6);
    // The chord of 60° is the radius; half of it, stepped from the middle, is 2 R sin 15°.
    expect(six?.chord).toBeCloseTo(60, 6);
    expect(six?.halfChord).toBeCloseTo(120 * Math.sin(radians(15)), 6);
  });

  test("lies with the centre of its arcs one outer radius from the south edge, and as wide as its chord below a half ring", () => {
    const { sheet, blank } = rolled(cone());
    const { sector } = sheet;
    expect(sector?.centre.y).toBeCloseTo(sector?.outerRadius ?? 0, 9);
    expect(blank.width).toBeCloseTo(sector?.chord ?? 0, 9);
    expect(sector?.centre.x).toBeCloseTo(blank.width / 2, 9);
  });

  test("has strips for the seam as wide as its allowance along both edges", () => {
    const plain = area(rolled(cone()).sheet.outline);
    const { sheet } = rolled(cone({ seam: "lap", seamWidth: "12mm" }));
    const slant = sheet.sector?.slant ?? 0;
    // Ends on both arcs: a strip of that width along the slant, but for the slivers at the arcs.
    expect(area(sheet.outline) - plain).toBeGreaterThan(12 * slant * 0.99);
    expect(area(sheet.outline) - plain).toBeLessThan(12 * slant * 1.01);
  });
});

/** Any cone, and any seam of it that has room. */
const cones = fc
  .record({
    large: fc.double({ min: 40, max: 2000, noNaN: true }),
    share: fc.double({ min: 0.05, max: 0.95, noNaN: true }),
    height: fc.double({ min: 20, max: 2000, noNaN: true }),
    seam: fc.constantFrom("butt", "lap", "grooved", "standing"),
  })
  .map(({ large, share, height, seam }) => ({
    large,
    small: large * share,
    height,
    raw: cone({
      thickness: "0.8mm",
      largeDiameter: `${large}mm`,
      smallDiameter: `${large * share}mm`,
      height: `${height}mm`,
      seam,
      seamWidth: "6mm",
      seamJoint: "rivets",
    }),
  }));

/** The sheet of a cone, of which there is none where its seam has no room: the blank of a very flat cone is nearly a full disc. */
function sheetOf(raw: Raw): RolledSheet {
  const { problems } = planFrom(raw, catalogue);
  fc.pre(!problems.some(({ field }) => field === "seamWidth"));
  return rolled(raw).sheet;
}

/** Rolls a flat place up, from what is drawn on the blank alone: two radii and the angle of the sector. */
function rollUp({ sector }: RolledSheet, place: { x: number; y: number }) {
  if (!sector) throw new Error("no sector");
  const { centre, outerRadius } = sector;
  const share = sector.angle / 360;
  const radius = Math.hypot(place.x - centre.x, place.y - centre.y);
  // From the seam line A, which lies half the angle to the west of south.
  const along = (Math.atan2(place.x - centre.x, centre.y - place.y) * 180) / Math.PI + sector.angle / 2;
  const turn = (2 * Math.PI * along) / sector.angle;
  const height = Math.sqrt(1 - share ** 2) * (outerRadius - radius);
  return { round: radius * share, turn, x: radius * share * Math.cos(turn), y: radius * share * Math.sin(turn), z: height };
}

describe("rolled up again", () => {
  test("a cone has its diameters and its height, and both seam lines come together", () => {
    fc.assert(
      fc.property(cones, ({ large, small, height, raw }) => {
        const sheet = sheetOf(raw);
        const [a, b] = sheet.sector?.seamLines ?? [];
        if (!a || !b) throw new Error("no seam lines");
        for (const [end, diameter, z] of [
          ["outer", large, 0],
          ["inner", small, height],
        ] as const) {
          const [from, to] = [rollUp(sheet, a[end]), rollUp(sheet, b[end])];
          expect(2 * from.round).toBeCloseTo(diameter, 5);
          expect(from.z).toBeCloseTo(z, 5);
          expect(Math.hypot(from.x - to.x, from.y - to.y, from.z - to.z)).toBeLessThan(1e-4);
        }
      }),
      { numRuns: 60 },
    );
  });

  test("a hole comes to its height, and as far round as it was asked for", () => {
    fc.assert(
      fc.property(
        cones,
        fc.double({ min: 0.1, max: 0.9, noNaN: true }),
        fc.double({ min: 0.2, max: 0.8, noNaN: true }),
        ({ large, small, height, raw }, up, round) => {
          const y = up * height;
          const diameter = large + (small - large) * up;
          const x = round * Math.PI * diameter;
          // Farther round than any form takes.
          fc.pre(x < 5000);
          const sheet = sheetOf({ ...raw, holes: [hole(x, y, 0.5)] });
          const [made] = sheet.holes;
          const place = rollUp(sheet, { x: made?.flatX ?? 0, y: made?.flatY ?? 0 });
          expect(place.z).toBeCloseTo(y, 5);
          expect(place.turn / (2 * Math.PI)).toBeCloseTo(round, 6);
          expect(inside(sheet.outline, { x: made?.flatX ?? 0, y: made?.flatY ?? 0 })).toBe(true);
        },
      ),
      { numRuns: 60 },
    );
  });

  test("the outline never crosses itself, fills its rectangle, and runs anticlockwise", () => {
    fc.assert(
      fc.property(cones, ({ raw }) => {
        const sheet = sheetOf(raw);
        expect(overlaps(sheet.outline)).toEqual([]);
        expect(area(sheet.outline)).toBeGreaterThan(0);
        expect(Math.min(...sheet.outline.map(({ x }) => x))).toBeCloseTo(0, 9);
        expect(Math.min(...sheet.outline.map(({ y }) => y))).toBeCloseTo(0, 9);
      }),
      { numRuns: 40 },
    );
  });

  test("joints of a lap come to lie over each other", () => {
    fc.assert(
      fc.property(cones, ({ raw }) => {
        const sheet = sheetOf({ ...raw, seam: "lap", seamWidth: "12mm" });
        const { sector } = sheet;
        if (!sector) throw new Error("no sector");
        expect(sheet.joints.length).toBeGreaterThan(0);
        for (const { a, b } of sheet.joints) {
          const [one, other] = [rollUp(sheet, a), rollUp(sheet, b)];
          expect(one.round).toBeCloseTo(other.round, 6);
          // Side A goes on past its seam line, a full turn on from where side B has its own.
          expect(one.turn + 2 * Math.PI).toBeCloseTo(other.turn, 6);
        }
      }),
      { numRuns: 40 },
    );
  });

  test("a tube has its diameter, whatever its seam takes", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 60, max: 2000, noNaN: true }),
        fc.constantFrom("inside", "outside"),
        fc.constantFrom("butt", "lap", "grooved", "standing"),
        (diameter, measured, seam) => {
          const { sheet, blank } = rolled(tube({ diameter: `${diameter}mm`, measured, seam, seamWidth: "10mm" }));
          const round = (blank.width - sheet.seam.sideA - sheet.seam.sideB) / Math.PI;
          expect(round + (measured === "inside" ? -1 : 1)).toBeCloseTo(diameter, 6);
        },
      ),
      { numRuns: 60 },
    );
  });
});

describe("a hole circle", () => {
  const circle = (fields: Record<string, string> = {}) => [
    { panel: "base", x: "150mm", y: "60mm", around: "40mm", count: "4", start: "0deg", diameter: "5mm", ...fields },
  ];

  test("keeps its shape on the blank of a cone", () => {
    const { sheet } = rolled(cone({ circles: circle() }));
    const middle = {
      x: sheet.holes.reduce((sum, { flatX }) => sum + flatX / 4, 0),
      y: sheet.holes.reduce((sum, { flatY }) => sum + flatY / 4, 0),
    };
    for (const { flatX, flatY } of sheet.holes) expect(Math.hypot(flatX - middle.x, flatY - middle.y)).toBeCloseTo(20, 9);
    // At height 60 the cone is 168 across; the middle of the circle is 150 round from the seam there.
    const place = rollUp(sheet, middle);
    expect(2 * place.round).toBeCloseTo(168, 9);
    expect(place.round * place.turn).toBeCloseTo(150, 9);
  });

  test("must lie on the part with every hole", () => {
    expect(refused(cone({ circles: circle({ y: "15mm" }) })).field).toMatch(/^circles\.0\.y$/);
    expect(refused(cone({ circles: circle({ x: "10mm" }) })).field).toBe("circles.0.x");
  });
});

describe("what cannot be rolled is refused at its field", () => {
  test.each([
    ["diameter", tube({ diameter: "4mm", measured: "outside", thickness: "2mm" })],
    ["seam", tube({ arc: "180deg", seam: "lap" })],
    ["smallDiameter", cone({ smallDiameter: "200mm" })],
    ["smallDiameter", cone({ smallDiameter: "250mm" })],
    ["smallDiameter", cone({ smallDiameter: "0.5mm" })],
    ["seamWidth", cone({ seam: "grooved", seamWidth: "150mm" })],
    ["seamWidth", cone({ largeDiameter: "100mm", smallDiameter: "90mm", height: "1mm", seam: "lap", seamWidth: "12mm" })],
    ["holes.0.panel", tube({ holes: [{ ...hole(50, 50), panel: "north.1" }] })],
    ["holes.0.x", tube({ holes: [hole(2, 50)] })],
    ["holes.0.y", tube({ holes: [hole(50, 299)] })],
    ["holes.0.diameter", tube({ length: "20mm", holes: [hole(50, 10, 30)] })],
    ["holes.0.y", cone({ holes: [hole(50, 149)] })],
    ["holes.0.x", cone({ holes: [hole(600, 100)] })],
    ["thickness", tube({ thickness: "5mm", seam: "grooved" })],
    ["kind", tube({ kind: "sphere" })],
  ])("%s", (field, raw) => {
    expect(refused(raw).field).toBe(field);
  });
});
