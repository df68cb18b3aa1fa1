import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { overlap, type PaperId, papers, tileHead, tiling } from "../../src/lib/part/template.ts";

const rectangle = (width: number, depth: number) => ({
  width,
  depth,
  outline: [
    { x: 0, y: 0 },
    { x: width, y: 0 },
    { x: width, y: depth },
    { x: 0, y: depth },
  ],
});

describe("the sheets of a template", () => {
  test("fit both papers inside the margins of 12 mm that pages have: A4 is 210 × 297, Letter 215.9 × 279.4", () => {
    expect(papers.a4.width).toBeLessThanOrEqual(210 - 24);
    expect(papers.a4.height).toBeLessThanOrEqual(297 - 24);
    expect(papers.letter.width).toBeLessThanOrEqual(215.9 - 24);
    expect(papers.letter.height).toBeLessThanOrEqual(279.4 - 24);
    // Whichever is in the printer: nothing is wider than the narrower paper, so nothing is scaled to fit.
    expect(Math.max(papers.a4.width, papers.letter.width)).toBeLessThanOrEqual(210 - 24);
  });

  test("one for a part that fits, two beside each other for one that is too wide", () => {
    expect(tiling(rectangle(120, 95), "a4")).toMatchObject({ rows: 1, columns: 1 });
    expect(tiling(rectangle(275, 225), "a4")).toMatchObject({ rows: 1, columns: 2 });
  });

  test("cover the whole part, neighbours sharing the overlap", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 5, max: 2500, noNaN: true }),
        fc.double({ min: 5, max: 1250, noNaN: true }),
        fc.constantFrom<PaperId>("a4", "letter"),
        (width, depth, paper) => {
          const { tiles, rows, columns, width: wide, height } = tiling(rectangle(width, depth), paper);
          expect(tiles).toHaveLength(rows * columns);
          expect(height).toBe(papers[paper].height - tileHead);
          expect(Math.min(...tiles.map(({ x }) => x))).toBeLessThan(0);
          expect(Math.min(...tiles.map(({ y }) => y))).toBeLessThan(0);
          expect(Math.max(...tiles.map(({ x }) => x)) + wide).toBeGreaterThan(width);
          expect(Math.max(...tiles.map(({ y }) => y)) + height).toBeGreaterThan(depth);
          for (const tile of tiles) {
            const east = tiles.find(({ row, column }) => row === tile.row && column === tile.column + 1);
            expect(tile.joins.east).toBe(east !== undefined);
            if (east) expect(tile.x + wide - east.x).toBeCloseTo(overlap, 6);
            const south = tiles.find(({ row, column }) => row === tile.row + 1 && column === tile.column);
            expect(tile.joins.south).toBe(south !== undefined);
            if (south) expect(south.y + height - tile.y).toBeCloseTo(overlap, 6);
          }
          // A rectangle leaves no sheet empty: each shows some of it or of its edge.
          expect(tiles.every(({ used }) => used)).toBe(true);
        },
      ),
      { numRuns: 300 },
    );
  });

  test("a sheet that lies in a notch is not needed", () => {
    // An L of 60 mm wide arms, 800 mm long: the sheets inside its corner are empty.
    const outline = [
      { x: 0, y: 0 },
      { x: 800, y: 0 },
      { x: 800, y: 60 },
      { x: 60, y: 60 },
      { x: 60, y: 800 },
      { x: 0, y: 800 },
    ];
    const { tiles } = tiling({ width: 800, depth: 800, outline }, "a4");
    expect(tiles.some(({ used }) => !used)).toBe(true);
    const used = tiles.filter(({ used: needed }) => needed);
    expect(used.some(({ row, column }) => row === 1 && column === 1)).toBe(true);
    expect(used.some(({ row, column }) => row === 1 && column > 1)).toBe(false);
  });
});
