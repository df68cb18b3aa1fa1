import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { loadCatalogue } from "../../src/catalogue/load.ts";
import type { Catalogue } from "../../src/lib/catalogue.ts";
import { InputError } from "../../src/lib/input-error.ts";
import { chord, holeCircle } from "../../src/lib/marking/hole-circle.ts";
import { chainError, datumPairError } from "../../src/lib/marking/line-error.ts";
import { angleError, diagonalMisfit, readingShare, squareOffset } from "../../src/lib/marking/squareness.ts";
import { phraseText } from "../../src/lib/quantity/phrase.ts";
import { runWorksheet } from "../../src/lib/worksheet.ts";
import holeCircleSheet from "../../src/lib/worksheets/hole-circle.ts";
import linePosition from "../../src/lib/worksheets/line-position.ts";
import squareCheck from "../../src/lib/worksheets/square-check.ts";

const read = loadCatalogue();
/** Marking methods of the tests' own: the real list is the shop's to change. */
const method = (error: number, reach?: number) => ({
  id: "any",
  name: "Any",
  error,
  ...(reach === undefined ? {} : { reach }),
  basis: "for tests",
  source: "common-practice",
  seen: "practice" as const,
});
const catalogue: Catalogue = {
  ...read,
  markingMethods: {
    "rule-and-scriber": method(0.5),
    "combination-square": method(0.4),
    "caliper-scribe": method(0.25, 150),
    "height-gauge": method(0.1),
  },
};

const remarksOf = (result: ReturnType<typeof runWorksheet>) =>
  result.answer?.remarks.map(({ level, phrase }) => `${level}: ${phraseText(phrase)}`).join("\n") ?? "";

describe("lines", () => {
  test("one line has the error of one line, whichever way it is measured", () => {
    expect(chainError({ perLine: 0.2, count: 1 })).toEqual({ worst: 0.2, likely: 0.2 });
  });

  test("a chain grows with its length, and its likely error is never above its worst", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 10, noNaN: true }), fc.integer({ min: 1, max: 199 }), (perLine, count) => {
        const error = chainError({ perLine, count });
        expect(error.likely).toBeLessThanOrEqual(error.worst * (1 + 1e-12));
        expect(chainError({ perLine, count: count + 1 }).likely).toBeGreaterThan(error.likely);
        // Two chains of independent steps put together add as squares.
        expect(Math.hypot(error.likely, error.likely)).toBeCloseTo(error.likely * Math.SQRT2, 9);
      }),
    );
  });

  test("a pair from one edge is as uncertain as a chain of two steps", () => {
    expect(datumPairError({ perLine: 0.3 })).toEqual(chainError({ perLine: 0.3, count: 2 }));
  });

  test.each([0, -1, 1.5, 201, Number.NaN])("a chain of %s lines is refused", (count) => {
    expect(() => chainError({ perLine: 0.2, count })).toThrow(InputError);
  });

  test("from one edge the last line is as good as the first, however many there are", () => {
    for (const count of ["1", "8", "200"]) {
      const { answer } = runWorksheet(linePosition, { count, distance: "0.1mm" }, catalogue);
      expect(answer?.outputs).toEqual({ perLine: 0.25, lastWorst: 0.25, lastLikely: 0.25 });
    }
  });

  test("end to end the errors of the steps add up", () => {
    const { answer } = runWorksheet(linePosition, { count: "16", layout: "end-to-end" }, catalogue);
    expect(answer?.outputs).toEqual({ perLine: 0.25, lastWorst: 4, lastLikely: 1 });
  });

  test("a line beyond the reach of the tool is named at its field", () => {
    const far = runWorksheet(linePosition, { count: "8", distance: "20mm" }, catalogue);
    expect(far.answer?.remarks.filter(({ field }) => field === "distance")).toHaveLength(1);
    expect(remarksOf(far)).toContain("The last line is 160.00 mm from the edge");
    const near = runWorksheet(linePosition, { count: "7", distance: "20mm" }, catalogue);
    expect(near.answer?.remarks.filter(({ field }) => field === "distance")).toHaveLength(0);
    const steps = runWorksheet(linePosition, { count: "8", distance: "20mm", layout: "end-to-end" }, catalogue);
    expect(steps.answer?.remarks.filter(({ field }) => field === "distance")).toHaveLength(0);
  });

  test("the tolerance classes are held against the last line, and left out beyond their table", () => {
    const captions = (raw: Record<string, string>) =>
      runWorksheet(linePosition, raw, catalogue).answer?.tables?.map(({ caption }) => caption.slice(0, 14));
    expect(captions({ count: "200", distance: "20mm" })).toContain("What a drawing");
    expect(captions({ count: "200", distance: "20.1mm" })).not.toContain("What a drawing");
    // 8 × 15 mm is 120 mm, where class m allows ±0.3 mm and class f ±0.15 mm (ISO 2768-1, read).
    const rows = runWorksheet(linePosition, {}, catalogue)
      .answer?.tables?.at(-1)
      ?.rows.map(({ cells }) => cells);
    expect(rows).toContainEqual(["ISO 2768-m", 0.3, "yes, even at worst"]);
    expect(rows).toContainEqual(["ISO 2768-f", 0.15, "no"]);
  });
});

describe("hole circles", () => {
  const circle = { diameter: 70, count: 8, startAngle: 0, centreX: 50, centreY: 40 };

  test("quarter turns are exact", () => {
    const holes = holeCircle({ ...circle, centreX: 0, centreY: 0, count: 4 });
    expect(holes.map(({ x, y }) => [x, y])).toEqual([
      [35, 0],
      [0, 35],
      [-35, 0],
      [0, -35],
    ]);
  });

  test("every hole is on the circle, every neighbour one chord away, and their middle is the centre", () => {
    fc.assert(
      fc.property(
        fc.record({
          diameter: fc.double({ min: 0.1, max: 5000, noNaN: true }),
          count: fc.integer({ min: 2, max: 360 }),
          startAngle: fc.double({ min: -360, max: 360, noNaN: true }),
          centreX: fc.double({ min: -1000, max: 1000, noNaN: true }),
          centreY: fc.double({ min: -1000, max: 1000, noNaN: true }),
        }),
        (any) => {
          const holes = holeCircle(any);
          expect(holes).toHaveLength(any.count);
          const near = 1e-9 * (1 + any.diameter + Math.abs(any.centreX) + Math.abs(any.centreY));
          const step = chord(any);
          holes.forEach(({ x, y, angle }, index) => {
            expect(angle).toBeGreaterThanOrEqual(0);
            expect(angle).toBeLessThan(360);
            expect(Math.abs(Math.hypot(x - any.centreX, y - any.centreY) - any.diameter / 2)).toBeLessThan(near);
            const next = holes[(index + 1) % any.count] as (typeof holes)[number];
            expect(Math.abs(Math.hypot(next.x - x, next.y - y) - step)).toBeLessThan(near);
          });
          const mean = (axis: "x" | "y") => holes.reduce((sum, hole) => sum + hole[axis], 0) / any.count;
          expect(Math.abs(mean("x") - any.centreX)).toBeLessThan(near);
          expect(Math.abs(mean("y") - any.centreY)).toBeLessThan(near);
        },
      ),
      { numRuns: 60 },
    );
  });

  test("turning the start by one space gives the same holes, one number on", () => {
    const turned = holeCircle({ ...circle, startAngle: 45 });
    holeCircle(circle).forEach(({ x, y }, index) => {
      const same = turned[(index + 7) % 8];
      expect(same?.x).toBeCloseTo(x, 9);
      expect(same?.y).toBeCloseTo(y, 9);
    });
  });

  test("six holes stand one radius apart, two one diameter", () => {
    expect(chord({ diameter: 70, count: 6 })).toBeCloseTo(35, 12);
    expect(chord({ diameter: 70, count: 2 })).toBeCloseTo(70, 12);
    expect(chord({ diameter: 70, count: 8 }, 4)).toBeCloseTo(70, 12);
  });

  test.each([
    ["count", "1", "Number of holes must be from 2 to 360; it is 1."],
    ["count", "8.5", "Number of holes must be a whole number from 2 to 360; it is 8.5."],
    ["diameter", "0mm", "Diameter of the hole circle must be from 0.10 mm to 5000.00 mm; it is 0.00 mm."],
    ["startAngle", "361", "Angle of the first hole must be from −360.0° to 360.0°; it is 361°."],
  ])("%s = %s is refused", (field, typed, message) => {
    const { problems } = runWorksheet(holeCircleSheet, { [field]: typed }, catalogue);
    expect(problems.map((each) => [each.field, each.message])).toEqual([[field, message]]);
  });

  test("the printed misprint is named where someone might meet it, and only there", () => {
    expect(remarksOf(runWorksheet(holeCircleSheet, { count: "15" }, catalogue))).toContain("0.2070");
    expect(remarksOf(runWorksheet(holeCircleSheet, { count: "14" }, catalogue))).not.toContain("0.2070");
  });
});

describe("square", () => {
  test("a corner that leans comes back from its own diagonals", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 10, max: 3000, noNaN: true }),
        fc.double({ min: 10, max: 3000, noNaN: true }),
        fc.double({ min: -30, max: 30, noNaN: true }),
        (width, height, lean) => {
          const sine = Math.sin((lean * Math.PI) / 180);
          const diagonal = (sign: number) => Math.sqrt(width ** 2 + height ** 2 + 2 * sign * width * height * sine);
          const blank = { width, height, diagonalA: diagonal(1), diagonalB: diagonal(-1) };
          expect(angleError(blank)).toBeCloseTo(lean, 6);
          expect(squareOffset(height, angleError(blank))).toBeCloseTo(height * sine, 6);
          expect(diagonalMisfit(blank)).toBeCloseTo(0, 6);
          // The other way round it leans the other way.
          const mirrored = { ...blank, diagonalA: blank.diagonalB, diagonalB: blank.diagonalA };
          expect(angleError(mirrored)).toBeCloseTo(-lean, 6);
        },
      ),
    );
  });

  test("the reading share is the change that one reading makes, √2 of it for two", () => {
    const blank = { width: 600, height: 400 };
    const right = Math.hypot(600, 400);
    const one = angleError({ ...blank, diagonalA: right + 0.05, diagonalB: right });
    expect(readingShare(blank, 0.05)).toBeCloseTo(one * Math.SQRT2, 6);
  });

  test("a diagonal that these sides cannot have is refused at its field", () => {
    const { problems } = runWorksheet(squareCheck, { diagonalA: "1000mm" }, catalogue);
    expect(problems.map(({ field, message }) => [field, message])).toEqual([
      [
        "diagonalA",
        "Diagonal A, lower left to upper right must be between 200.00 mm and 1000.00 mm with these sides; it is 1000.00 mm.",
      ],
    ]);
  });

  test("sizes that do not fit together are noticed", () => {
    expect(remarksOf(runWorksheet(squareCheck, { diagonalA: "730mm", diagonalB: "730mm" }, catalogue))).toContain(
      "8.89 mm too long on average",
    );
    expect(remarksOf(runWorksheet(squareCheck, {}, catalogue))).not.toContain("on average");
  });
});
