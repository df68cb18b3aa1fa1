import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  area,
  clipTo,
  depthIn,
  type FlatPoint,
  inside,
  narrowest,
  overlaps,
  sidesOf,
  toSegment,
} from "../../src/lib/part/geometry.ts";

const polygon = (...places: readonly (readonly [number, number])[]): FlatPoint[] => places.map(([x, y]) => ({ x, y }));

const rectangle = (width: number, height: number) => polygon([0, 0], [width, 0], [width, height], [0, height]);

/** An angle of metal 20 wide standing and 30 high lying. */
const angle = polygon([0, 0], [100, 0], [100, 30], [20, 30], [20, 80], [0, 80]);
/** A notch 10 wide and 40 deep in the top of a blank. */
const notched = polygon([0, 0], [100, 0], [100, 60], [55, 60], [55, 20], [45, 20], [45, 60], [0, 60]);

const size = fc.double({ min: 1, max: 500, noNaN: true });
const place = fc.record({
  x: fc.double({ min: -600, max: 600, noNaN: true }),
  y: fc.double({ min: -600, max: 600, noNaN: true }),
});

/** A convex polygon: points of an ellipse in order, turned. */
const convex = fc
  .record({
    turns: fc.uniqueArray(fc.integer({ min: 0, max: 359 }), { minLength: 3, maxLength: 9 }),
    across: size,
    along: size,
  })
  .map(({ turns, across, along }) =>
    turns
      .toSorted((a, b) => a - b)
      .map((turn) => ({
        x: across * Math.cos((turn * Math.PI) / 180),
        y: along * Math.sin((turn * Math.PI) / 180),
      })),
  );

describe("area", () => {
  test("is base times height, and negative when walked the other way", () => {
    expect(area(rectangle(30, 20))).toBe(600);
    expect(area(rectangle(30, 20).toReversed())).toBe(-600);
    expect(area(angle)).toBe(100 * 30 + 20 * 50);
    expect(area(notched)).toBe(100 * 60 - 10 * 40);
  });

  test("is the sum of the triangles from one corner, by Heron's formula", () => {
    fc.assert(
      fc.property(convex, (shape) => {
        const [first, ...rest] = shape as [FlatPoint, ...FlatPoint[]];
        const distance = (a: FlatPoint, b: FlatPoint) => Math.hypot(a.x - b.x, a.y - b.y);
        const triangles = rest.slice(1).map((point, index) => {
          const before = rest[index] as FlatPoint;
          const sides = [distance(first, before), distance(before, point), distance(point, first)] as const;
          const half = (sides[0] + sides[1] + sides[2]) / 2;
          return Math.sqrt(Math.max(0, half * (half - sides[0]) * (half - sides[1]) * (half - sides[2])));
        });
        const sum = triangles.reduce((all, each) => all + each, 0);
        // Heron's formula loses digits on thin triangles.
        const longest = Math.max(...shape.map(({ x, y }) => Math.hypot(x, y)));
        expect(Math.abs(area(shape) - sum)).toBeLessThan(1e-5 * longest ** 2);
      }),
    );
  });
});

describe("inside", () => {
  test("knows a notch and the corner of an angle as air", () => {
    expect(inside(angle, { x: 10, y: 70 })).toBe(true);
    expect(inside(angle, { x: 90, y: 10 })).toBe(true);
    expect(inside(angle, { x: 60, y: 50 })).toBe(false);
    expect(inside(notched, { x: 50, y: 40 })).toBe(false);
    expect(inside(notched, { x: 50, y: 10 })).toBe(true);
    expect(inside(notched, { x: 20, y: 59 })).toBe(true);
    expect(inside(notched, { x: -1, y: 30 })).toBe(false);
    expect(inside(notched, { x: 101, y: 30 })).toBe(false);
  });

  test("of a convex blank is the left of all its sides", () => {
    fc.assert(
      fc.property(convex, place, (shape, point) => {
        const turns = sidesOf(shape).map(({ a, b }) => (b.x - a.x) * (point.y - a.y) - (b.y - a.y) * (point.x - a.x));
        fc.pre(turns.every((turn) => Math.abs(turn) > 1e-6));
        expect(inside(shape, point)).toBe(turns.every((turn) => turn > 0));
      }),
    );
  });
});

describe("distances", () => {
  test("to a segment end at its ends", () => {
    const segment = { a: { x: 0, y: 0 }, b: { x: 10, y: 0 } };
    expect(toSegment({ x: 4, y: 3 }, segment)).toBe(3);
    expect(toSegment({ x: 4, y: -3 }, segment)).toBe(3);
    expect(toSegment({ x: 13, y: 4 }, segment)).toBe(5);
    expect(toSegment({ x: -6, y: 8 }, segment)).toBe(10);
    expect(toSegment({ x: 3, y: 4 }, { a: { x: 0, y: 0 }, b: { x: 0, y: 0 } })).toBe(5);
  });

  test("to a segment are those to the nearest of many points of it", () => {
    fc.assert(
      fc.property(place, place, place, (point, a, b) => {
        const steps = 2000;
        const near = Array.from({ length: steps + 1 }, (_, step) =>
          Math.hypot(point.x - a.x - (step / steps) * (b.x - a.x), point.y - a.y - (step / steps) * (b.y - a.y)),
        );
        const nearest = Math.min(...near);
        const reach = Math.hypot(b.x - a.x, b.y - a.y) / steps;
        expect(toSegment(point, { a, b })).toBeLessThanOrEqual(nearest + 1e-9);
        expect(toSegment(point, { a, b })).toBeGreaterThanOrEqual(nearest - reach);
      }),
      { numRuns: 50 },
    );
  });

  test("from the edge of a blank are negative outside it", () => {
    expect(depthIn(rectangle(100, 40), { x: 50, y: 10 })).toBe(10);
    expect(depthIn(rectangle(100, 40), { x: 98, y: 20 })).toBe(2);
    expect(depthIn(rectangle(100, 40), { x: 103, y: 44 })).toBe(-5);
    expect(depthIn(notched, { x: 50, y: 40 })).toBe(-5);
  });
});

describe("narrowest strip", () => {
  test("is looked for between a corner and an edge across metal: a plain blank has none", () => {
    expect(narrowest(rectangle(100, 4))).toBeUndefined();
  });

  test("of an angle is its thinner arm, and a notch is no strip", () => {
    expect(narrowest(angle)?.width).toBe(20);
    expect(narrowest(notched)?.width).toBe(20);
    const thin = polygon([0, 0], [100, 0], [100, 60], [55, 60], [55, 4], [45, 4], [45, 60], [0, 60]);
    expect(narrowest(thin)).toMatchObject({ width: 4, at: { y: 4 } });
  });
});

describe("metal that would have to be there twice", () => {
  test("is found where sides cross, and only there", () => {
    expect(overlaps(polygon([0, 0], [10, 10], [10, 0], [0, 10]))).toHaveLength(1);
    expect(overlaps(polygon([0, 0], [10, 0], [0, 10], [10, 10]))).toHaveLength(1);
    expect(overlaps(angle)).toEqual([]);
    expect(overlaps(notched)).toEqual([]);
  });

  test("is never found in a convex blank", () => {
    fc.assert(
      fc.property(convex, (shape) => {
        expect(overlaps(shape)).toEqual([]);
      }),
    );
  });
});

describe("clipping", () => {
  test("at a line gives two pieces that make up the whole, each on its own side", () => {
    fc.assert(
      fc.property(
        convex,
        fc.double({ min: -500, max: 500, noNaN: true }),
        fc.double({ min: 0, max: 360, noNaN: true }),
        (shape, from, turn) => {
          const [cos, sin] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)];
          const within = ({ x, y }: FlatPoint) => x * cos + y * sin - from;
          const kept = clipTo(shape, within);
          const off = clipTo(shape, (point) => -within(point));
          expect(area(kept) + area(off)).toBeCloseTo(area(shape), 5);
          for (const point of kept) expect(within(point)).toBeGreaterThan(-1e-9 * 1000);
          for (const point of off) expect(within(point)).toBeLessThan(1e-9 * 1000);
        },
      ),
    );
  });

  test("keeps a corner that lies on the line", () => {
    expect(clipTo(rectangle(10, 10), ({ x }) => x - 10)).toEqual([
      { x: 10, y: 0 },
      { x: 10, y: 10 },
    ]);
    expect(clipTo(rectangle(10, 10), ({ x }) => 5 - x)).toEqual([
      { x: 0, y: 0 },
      { x: 5, y: 0 },
      { x: 5, y: 10 },
      { x: 0, y: 10 },
    ]);
  });
});
