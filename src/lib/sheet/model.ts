import { InputError } from "../input-error.ts";
import { checkRange, exactly } from "../inputs.ts";
import { atMost, mm, say } from "../quantity/phrase.ts";

/**
 * Which way the rolling direction runs in a finished piece: along its length, across it (along its width), or either.
 * The rolling direction of a sheet runs along the sheet's length.
 */
export const grains = ["free", "along", "across"] as const;
export type Grain = (typeof grains)[number];

/** A size of stock, or one named offcut. Lengths in mm. */
export interface Sheet {
  readonly name: string;
  readonly width: number;
  /** Along the rolling direction. */
  readonly length: number;
  /** How many there are; left out: as many as needed. */
  readonly count?: number;
  /** What using one costs, in any unit that is the same for all; left out: its area [m²]. */
  readonly cost?: number;
}

/** A blank that is wanted. Lengths in mm. */
export interface Piece {
  readonly name: string;
  readonly width: number;
  readonly length: number;
  /** How many are wanted; left out, where one sheet is filled: any number. */
  readonly count?: number;
  readonly grain: Grain;
  /** What one is worth, where one sheet is filled; left out: its area [mm²]. */
  readonly value?: number;
}

/** What the shear can do. Lengths in mm. */
export interface ShearLimits {
  /** Longest cut. */
  readonly longestCut: number;
  /** Shortest part, from the blade towards the operator, that the hold-downs grip. */
  readonly shortestHold: number;
  /** Nearest and farthest setting of the back stop. */
  readonly shortestStop: number;
  readonly longestStop: number;
}

/** What is to be cut out of what. */
export interface SheetJob {
  readonly sheets: readonly Sheet[];
  /** Taken off every edge of a sheet before anything else counts [mm]. */
  readonly trim: number;
  readonly pieces: readonly Piece[];
  readonly shear?: ShearLimits;
}

export type Goal = "fewest-sheets" | "fill-one-sheet";

/** Below ten thousand: a plan of more is no longer one that anybody cuts on a foot shear. */
export const mostPieces = 9999;
/** Above this many pieces they are laid in lines and blocks only. */
export const mostSingle = 1000;
/** Different pieces in one plan. */
export const mostRows = 200;

const size = { quantity: "length", min: 1, max: 20_000 } as const;
export const sheetSize = { ...size, fineness: "size" } as const;
export const pieceSize = { ...size, fineness: "setting" } as const;
export const trimSize = { quantity: "length", fineness: "setting", min: 0, max: 200 } as const;
export const pieceCount = { quantity: "count", min: 1, max: mostPieces } as const;
export const pieceValue = { quantity: "ratio", min: 0, max: 1e9, aboveMin: true } as const;

/**
 * Lengths are counted in whole ticks of 1e-6 mm, so that sums of sizes are exact and 3 × 416.6 mm is not more than 1249.8 mm.
 * An inch in 64ths is a whole number of ticks too.
 */
const perMm = 1e6;
export const ticks = (millimetres: number): number => Math.round(millimetres * perMm);
export const millimetres = (count: number): number => count / perMm;

/** A piece as it may lie on a sheet, in ticks. */
export interface Lie {
  readonly piece: number;
  /** Its length lies across the sheet. */
  readonly turned: boolean;
  readonly width: number;
  readonly length: number;
}

/** The ways a piece may lie on a sheet whose rolling direction runs along its length. */
export function liesOf({ width, length, grain }: Piece, piece: number): Lie[] {
  const straight = { piece, turned: false, width: ticks(width), length: ticks(length) };
  const turned = { piece, turned: true, width: ticks(length), length: ticks(width) };
  if (grain === "along") return [straight];
  if (grain === "across") return [turned];
  return width === length ? [straight] : [straight, turned];
}

/** What is left of a sheet inside its trim, in ticks; never less than nothing. */
export function insideTrim({ width, length }: Sheet, trim: number): { readonly width: number; readonly length: number } {
  return { width: Math.max(0, ticks(width) - 2 * ticks(trim)), length: Math.max(0, ticks(length) - 2 * ticks(trim)) };
}

/** Cost of one sheet: its own, or its area [m²]. */
export const costOf = ({ cost, width, length }: Sheet): number => cost ?? (width * length) / 1e6;
/** Value of one piece: its own, or its area [mm²]. */
export const worthOf = ({ value, width, length }: Piece): number => value ?? width * length;

function checkPiece(sheets: readonly Sheet[], trim: number, piece: Piece, index: number): void {
  const field = `pieces.${index}`;
  checkRange(`${field}.width`, { ...pieceSize, label: "Width" }, piece.width);
  checkRange(`${field}.length`, { ...pieceSize, label: "Length" }, piece.length);
  if (piece.count !== undefined) checkRange(`${field}.count`, { ...pieceCount, label: "Number of pieces" }, piece.count);
  if (piece.value !== undefined) checkRange(`${field}.value`, { ...pieceValue, label: "Value" }, piece.value);

  const fits = (lies: readonly Lie[]) =>
    lies.some((lie) =>
      sheets.some((sheet) => {
        const inside = insideTrim(sheet, trim);
        return lie.width <= inside.width && lie.length <= inside.length;
      }),
    );
  if (fits(liesOf(piece, index))) return;
  const name = piece.name === "" ? `Piece ${index + 1}` : `“${piece.name}”`;
  if (piece.grain !== "free" && fits(liesOf({ ...piece, grain: "free" }, index)))
    throw new InputError(
      `${field}.grain`,
      piece.grain,
      say`${name}, ${exactly(piece.width, "length")} × ${exactly(piece.length, "length")} with the grain ${piece.grain} its length, fits the sheet only the other way round, against its grain. Take a longer sheet, or let the grain be free.`,
    );
  const largest = sheets
    .map((sheet) => insideTrim(sheet, trim))
    .reduce((best, each) => (each.width * each.length > best.width * best.length ? each : best), { width: 0, length: 0 });
  const tooLong = Math.max(piece.width, piece.length) > millimetres(Math.max(largest.width, largest.length));
  const longSide = piece.length >= piece.width === tooLong ? "length" : "width";
  throw new InputError(
    `${field}.${longSide}`,
    piece[longSide],
    say`${name}, ${exactly(piece.width, "length")} × ${exactly(piece.length, "length")}, is larger than every sheet. It must fit into the ${mm(millimetres(largest.width))} × ${mm(millimetres(largest.length))} that the largest leaves inside its trim.`,
  );
}

/**
 * Refuses a job that cannot be worked with.
 *
 * @throws InputError naming field, value and range: for a size, count, cost or trim out of range, no pieces or too many, a
 * piece larger than every sheet, a piece that fits only against its grain, and a count left out where sheets are to be few
 */
export function checkJob(job: SheetJob, goal: Goal): void {
  if (job.sheets.length < 1) throw new InputError("sheets", 0, say`There must be at least one sheet.`);
  job.sheets.forEach((sheet, index) => {
    checkRange(`sheets.${index}.width`, { ...sheetSize, label: "Width of the sheet" }, sheet.width);
    checkRange(`sheets.${index}.length`, { ...sheetSize, label: "Length of the sheet" }, sheet.length);
    if (sheet.count !== undefined)
      checkRange(`sheets.${index}.count`, { label: "Sheets there are", quantity: "count", min: 0, max: mostPieces }, sheet.count);
    if (sheet.cost !== undefined)
      checkRange(
        `sheets.${index}.cost`,
        { label: "Cost of a sheet", quantity: "ratio", min: 0, max: 1e9, aboveMin: true },
        sheet.cost,
      );
  });
  const available = job.sheets.filter(({ count }) => count !== 0);
  if (available.length === 0) throw new InputError("sheets", 0, say`There is no sheet to cut from: every number of sheets is 0.`);
  checkRange("trim", { ...trimSize, label: "Trim" }, job.trim);
  job.sheets.forEach((sheet, index) => {
    const short = Math.min(sheet.width, sheet.length);
    if (!(2 * job.trim < short) && available.length === 1 && sheet.count !== 0)
      throw new InputError(
        "trim",
        job.trim,
        say`Trim must be below ${atMost(short / 2)}, half the short side of sheet ${index + 1}, or nothing of it is left; it is ${exactly(job.trim, "length")}.`,
      );
  });
  if (job.pieces.length < 1 || job.pieces.length > mostRows)
    throw new InputError(
      "pieces",
      job.pieces.length,
      say`There must be 1 to ${mostRows} different pieces; there are ${job.pieces.length}.`,
    );
  job.pieces.forEach((piece, index) => {
    if (piece.count === undefined && goal === "fewest-sheets")
      throw new InputError(
        `pieces.${index}.count`,
        undefined,
        say`Number of pieces is not entered. Allowed is from 1 to ${mostPieces}; it may be left out only where one sheet is filled.`,
      );
    checkPiece(available, job.trim, piece, index);
  });
  const total = job.pieces.reduce((sum, { count = 1 }) => sum + count, 0);
  if (total > mostPieces)
    throw new InputError("pieces", total, say`There must be 1 to ${mostPieces} pieces in all; there are ${total}.`);
}
