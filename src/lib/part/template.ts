import type { FlatLayout, FlatPoint } from "./flatten.ts";
import { inside, sidesOf } from "./geometry.ts";

/** Papers a template is printed on, with what is left inside the pages' margins of 12 mm, less a little for printers that round up [mm]. */
export const papers = {
  a4: { name: "A4", width: 184, height: 270 },
  letter: { name: "Letter", width: 184, height: 252 },
} as const;
export type PaperId = keyof typeof papers;

/** Heading of a sheet with its number and its bar, above the drawing [mm]. */
export const tileHead = 16;
/** How much of the drawing two neighbouring sheets share [mm]. */
export const overlap = 10;
/** Length of the bar to hold a rule against [mm]. */
export const barLength = 100;

/** One sheet: what it shows of the blank, from the west and the south edge [mm]. */
export interface Tile {
  /** From the north, then from the west, from 1. */
  readonly row: number;
  readonly column: number;
  readonly x: number;
  readonly y: number;
  /** Other sheets to join it to. */
  readonly joins: { readonly west: boolean; readonly east: boolean; readonly north: boolean; readonly south: boolean };
  /** Something of the part is on it. */
  readonly used: boolean;
}

export interface Tiling {
  readonly rows: number;
  readonly columns: number;
  /** What one sheet shows [mm]. */
  readonly width: number;
  readonly height: number;
  readonly tiles: readonly Tile[];
}

/** Room round the blank for the ends of its lines and their names [mm]. */
const edge = 6;

function crosses(a: FlatPoint, b: FlatPoint, low: FlatPoint, high: FlatPoint): boolean {
  // The part of the segment inside the rectangle, side by side.
  let [from, to] = [0, 1];
  for (const [start, move, least, most] of [
    [a.x, b.x - a.x, low.x, high.x],
    [a.y, b.y - a.y, low.y, high.y],
  ] as const) {
    if (move === 0) {
      if (start < least || start > most) return false;
      continue;
    }
    const [one, other] = [(least - start) / move, (most - start) / move];
    from = Math.max(from, Math.min(one, other));
    to = Math.min(to, Math.max(one, other));
  }
  return from <= to;
}

/**
 * How the flat layout is spread over sheets of paper at full size.
 *
 * @param layout - the flat layout
 * @param paper - the paper it is printed on
 * @returns sheets row by row from the north-west, neighbours sharing `overlap`, the whole in the middle of them
 */
export function tiling(layout: Pick<FlatLayout, "width" | "depth" | "outline">, paper: PaperId): Tiling {
  const { width, height: whole } = papers[paper];
  const height = whole - tileHead;
  const count = (length: number, room: number) => Math.max(1, Math.ceil((length - overlap) / (room - overlap) - 1e-9));
  const [wide, deep] = [layout.width + 2 * edge, layout.depth + 2 * edge];
  const columns = count(wide, width);
  const rows = count(deep, height);
  const covers = (number: number, room: number) => number * (room - overlap) + overlap;
  const left = -edge - (covers(columns, width) - wide) / 2;
  const bottom = -edge - (covers(rows, height) - deep) / 2;
  const tiles = Array.from({ length: rows * columns }, (_, index): Tile => {
    const row = Math.floor(index / columns);
    const column = index % columns;
    const x = left + column * (width - overlap);
    const y = bottom + (rows - 1 - row) * (height - overlap);
    const [low, high] = [
      { x, y },
      { x: x + width, y: y + height },
    ];
    return {
      row: row + 1,
      column: column + 1,
      x,
      y,
      joins: { west: column > 0, east: column < columns - 1, north: row > 0, south: row < rows - 1 },
      used:
        inside(layout.outline, { x: x + width / 2, y: y + height / 2 }) ||
        sidesOf(layout.outline).some(({ a, b }) => crosses(a, b, low, high)),
    };
  });
  return { rows, columns, width, height, tiles };
}
