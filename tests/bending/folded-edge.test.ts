import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { edgeSteps, foldedEdge, foldedEdgeMiddleLine } from "../../src/lib/bending/folded-edge.ts";

type Point = readonly [number, number];

/**
 * The inside face of an edge, walked in small steps from the sheet round the loop and along the folded part.
 * Nothing of the formulas is used but the fold's angle, radius and the length of its straight part.
 */
function walk(turned: number, radius: number, straight: number): { inside: Point[]; end: Point } {
  const steps = 20_000;
  const inside: Point[] = [[0, 0]];
  let heading = Math.PI;
  let [x, y] = [0, 0];
  const turn = (turned * Math.PI) / 180 / steps;
  for (let step = 0; step < steps; step += 1) {
    heading -= turn / 2;
    x += 2 * radius * Math.sin(turn / 2) * Math.cos(heading);
    y += 2 * radius * Math.sin(turn / 2) * Math.sin(heading);
    heading -= turn / 2;
    inside.push([x, y]);
  }
  const end: Point = [x + straight * Math.cos(heading), y + straight * Math.sin(heading)];
  return { inside, end };
}

const size = fc.record({
  thickness: fc.double({ min: 0.3, max: 3, noNaN: true }),
  gap: fc.double({ min: 0.5, max: 10, noNaN: true }),
  more: fc.double({ min: 0.1, max: 40, noNaN: true }),
});

describe("open and teardrop edges", () => {
  test("a teardrop's end touches the sheet, at the width asked for", () => {
    fc.assert(
      fc.property(size, ({ thickness, gap, more }) => {
        const width = gap + thickness + more;
        const { turns } = foldedEdge({ kind: "teardrop", thickness, gap, width });
        const [turn] = turns;
        const straight = width - gap / 2 - thickness;
        const { inside, end } = walk(turn?.angle ?? 0, turn?.radius ?? 0, straight);
        expect(end[1]).toBeCloseTo(0, 6);
        const outermost = Math.min(...inside.map(([x]) => x)) - thickness;
        expect(end[0] - outermost).toBeCloseTo(width, 5);
        expect(turn?.angle).toBeGreaterThan(180);
        expect(turn?.angle).toBeLessThanOrEqual(270);
      }),
      { numRuns: 30 },
    );
  });

  test("an open edge stands off by its gap, at the width asked for", () => {
    fc.assert(
      fc.property(size, ({ thickness, gap, more }) => {
        const width = gap / 2 + thickness + more;
        const { turns } = foldedEdge({ kind: "open", thickness, gap, width });
        const [turn] = turns;
        const { inside, end } = walk(turn?.angle ?? 0, turn?.radius ?? 0, more);
        expect(end[1]).toBeCloseTo(gap, 6);
        expect(end[0] - (Math.min(...inside.map(([x]) => x)) - thickness)).toBeCloseTo(width, 5);
      }),
      { numRuns: 30 },
    );
  });

  test("the allowance is the flat length less what the finished size already covers", () => {
    fc.assert(
      fc.property(size, fc.constantFrom("open" as const, "teardrop" as const), ({ thickness, gap, more }, kind) => {
        const width = gap + thickness + more;
        const { allowance, turns } = foldedEdge({ kind, thickness, gap, width });
        const [turn] = turns;
        const straight = width - gap / 2 - thickness;
        const arc = ((turn?.angle ?? 0) * Math.PI * (gap / 2 + thickness / 2)) / 180;
        expect(allowance).toBeCloseTo(straight + arc - (gap / 2 + thickness), 9);
        expect(turn?.line).toBeCloseTo(straight + arc / 2, 9);
      }),
    );
  });

  test("a wider edge takes more, and a long teardrop is nearly an open edge", () => {
    const at = (kind: "open" | "teardrop", width: number) => foldedEdge({ kind, thickness: 1, gap: 3, width }).allowance;
    expect(at("teardrop", 12)).toBeGreaterThan(at("teardrop", 10));
    expect(at("teardrop", 10)).toBeGreaterThan(at("open", 10));
    expect(at("teardrop", 200) - at("open", 200)).toBeCloseTo(2 * Math.atan(1.5 / 197.5) * 2, 9);
  });

  test.each([
    ["open", 10, 0, "Gap must be above 0 for this kind of edge; it is 0.00 mm. Choose closed for none."],
    ["teardrop", 10, 0, "Gap must be above 0"],
    ["open", 1.9, 2, "Width of the folded edge must be at least 2.00 mm"],
    ["teardrop", 2.5, 2, "Width of the folded edge must be at least 3.00 mm"],
    ["closed", 0, 0, "Width of the folded edge must be above 0.00 mm and up to 200.00 mm; it is 0.00 mm"],
    ["closed", 10, 51, "Gap must be from 0.00 mm to 50.00 mm; it is 51.00 mm"],
  ] as const)("refuses a %s edge %s wide with a gap of %s", (kind, width, gap, message) => {
    expect(() => foldedEdge({ kind, thickness: 1, width, gap })).toThrow(message);
  });
});

describe("closed and double edges", () => {
  test("the rule leaves the thickness out, the middle line does not", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 3, noNaN: true }),
        fc.double({ min: 5, max: 50, noNaN: true }),
        (thickness, width) => {
          expect(foldedEdge({ kind: "closed", thickness, width, gap: 0 }).allowance).toBe(width);
          expect(foldedEdge({ kind: "double", thickness, width, gap: 0 }).allowance).toBe(2 * width);
          expect(foldedEdgeMiddleLine({ kind: "closed", thickness, width })).toBeCloseTo(width - 0.4292 * thickness, 3);
          expect(foldedEdgeMiddleLine({ kind: "double", thickness, width })).toBeCloseTo(2 * width - 1.7876 * thickness, 3);
        },
      ),
    );
  });

  test("the double edge's middle line, piece by piece", () => {
    const [thickness, width] = [1, 10];
    const sheetLost = 1.5 * thickness;
    const outerFold = Math.PI * thickness;
    const outerFlap = width - 1.5 * thickness - thickness;
    const innerFold = (Math.PI * thickness) / 2;
    const innerFlap = width - 1.5 * thickness - thickness;
    expect(foldedEdgeMiddleLine({ kind: "double", thickness, width })).toBeCloseTo(
      outerFold + outerFlap + innerFold + innerFlap - sheetLost,
      12,
    );
  });
});

describe("steps at the brake", () => {
  const { turns } = foldedEdge({ kind: "double", thickness: 0.8, width: 6, gap: 0 });

  test("each fold is swung as far as the leaf goes, then pressed", () => {
    expect(edgeSteps(turns, 135).map(({ turn, how, angle, line }) => [turn, how, angle, line])).toEqual([
      [1, "swing", 135, 6],
      [1, "press flat", 180, 6],
      [2, "swing", 135, 12],
      [2, "press flat", 180, 12],
    ]);
  });

  test("a leaf that swings far enough needs no pressing, but for a fold without radius", () => {
    const open = foldedEdge({ kind: "open", thickness: 0.8, width: 6, gap: 2 });
    expect(edgeSteps(open.turns, 180).map(({ how }) => how)).toEqual(["swing"]);
    const closed = foldedEdge({ kind: "closed", thickness: 0.8, width: 6, gap: 0 });
    expect(edgeSteps(closed.turns, 180).map(({ how }) => how)).toEqual(["swing", "press flat"]);
  });
});
