import type { Formula, FormulaInput, FormulaSymbol } from "../formula.ts";
import { checkRange, checkRanges } from "../inputs.ts";
import { toBase } from "../quantity/units.ts";

/** The seams of the handbook; ids are part of addresses. */
export const seamKinds = {
  lap: "lap: one edge over the other",
  grooved: "grooved: two hooks locked and set down flat",
  standing: "standing: a folded rib that stands up",
} as const;
export type SeamKind = keyof typeof seamKinds;

/** Thickest sheet of which a seam is folded by hand [mm]. Common practice, for mild steel. */
export const thickestFold = 1;

/** Narrowest hook that can be folded, in thicknesses. Common practice. */
export const leastHook = 4;

const length = { quantity: "length", fineness: "setting" } as const;

export const seamWidth = {
  ...length,
  label: "Width of the finished seam",
  symbol: "W",
  tex: "W",
  min: 1,
  max: 200,
} as const satisfies FormulaInput;

export const seamThickness = {
  ...length,
  label: "Thickness",
  symbol: "t",
  tex: "t",
  min: 0.2,
  max: 4,
} as const satisfies FormulaInput;

const symbol = (label: string, letter: string): FormulaSymbol => ({ ...length, label, symbol: letter, tex: letter });
export const sideASymbol = symbol("Side A", "A");
export const sideBSymbol = symbol("Side B", "B");
const allowanceSymbol = symbol("Add in all", "S");

/** Widths that each edge takes in a grooved seam: four layers, one of which the sheet has anyway. */
const groovedWidths = 1.5;
/** What the two edges of a standing seam have beyond its height: 1/2 in and 1/4 in. */
const standingExtra = { sideA: toBase(0.5, "length", "in"), sideB: toBase(0.25, "length", "in") } as const;

/** What a seam adds to the flat, in mm. */
export interface Seam {
  /** both edges together */
  readonly allowance: number;
  readonly sideA: number;
  readonly sideB: number;
}

const sideFormula = (kind: SeamKind, side: "sideA" | "sideB", expression: string): Formula => ({
  id: `${kind}-seam-${side === "sideA" ? "a" : "b"}`,
  name: `${side === "sideA" ? "Side A" : "Side B"} of a ${kind} seam`,
  result: side,
  expression,
  symbols: { width: seamWidth, [side]: side === "sideA" ? sideASymbol : sideBSymbol },
});

/** Formulas of the edges, by kind; of a lap only one edge gets more. */
export const seamSideFormulas: Readonly<Record<SeamKind, readonly Formula[]>> = {
  lap: [sideFormula("lap", "sideA", String.raw`\v{width}`)],
  grooved: [
    sideFormula("grooved", "sideA", String.raw`${groovedWidths}\cdot\v{width}`),
    sideFormula("grooved", "sideB", String.raw`${groovedWidths}\cdot\v{width}`),
  ],
  standing: [
    sideFormula("standing", "sideA", String.raw`\v{width} + ${standingExtra.sideA}`),
    sideFormula("standing", "sideB", String.raw`\v{width} + ${standingExtra.sideB}`),
  ],
};

export const seamFormula: Formula = {
  id: "seam-allowance",
  name: "Seam allowance",
  result: "allowance",
  expression: String.raw`\v{sideA} + \v{sideB}`,
  symbols: { sideA: sideASymbol, sideB: sideBSymbol, allowance: allowanceSymbol },
};

/**
 * What a seam adds to the flat.
 *
 * @param seam.kind - lap, grooved or standing
 * @param seam.width - W [mm] of the finished seam; of a standing one its height; 1 to 200
 * @returns both edges together and each [mm]: lap W and nothing; grooved 1.5 W each; standing W + 12.7 and W + 6.35
 * @throws InputError for a width outside its range
 * @remarks The rules leave the thickness out; see `groovedMiddleLine`. Grooved: a smith's page (read), the same in trade texts (memory).
 *   Standing: Copper Roofings (read): 1 1/4 and 1 in for a seam of 3/4 in; 1 1/2 and 1 1/4 in fit a seam of 1 in the same way.
 * @example seamAllowance({ kind: "grooved", width: 6 }).allowance; // 18
 */
export function seamAllowance({ kind, width }: { readonly kind: SeamKind; readonly width: number }): Seam {
  checkRange("width", seamWidth, width);
  const sides = {
    lap: { sideA: width, sideB: 0 },
    grooved: { sideA: groovedWidths * width, sideB: groovedWidths * width },
    standing: { sideA: width + standingExtra.sideA, sideB: width + standingExtra.sideB },
  }[kind];
  return { ...sides, allowance: sides.sideA + sides.sideB };
}

/**
 * Allowance of a grooved seam along the middle of the thickness, when each hook fills the other.
 *
 * @param seam.width - W [mm]; 1 to 200
 * @param seam.thickness - t [mm]; 0.2 to 4
 * @returns [mm] = 3 W + 2 (π − 4) t, about 3 W − 1.7 t
 * @throws InputError for a value outside its range
 * @remarks Derived. Each hook closes round one thickness of the other sheet: inside radius t/2, middle line an arc of π t. Its outermost
 *   point is at the edge of the seam, so the sheet runs W − 1½ t to the arc and back W − 1½ t − t, to the inside of the other hook's arc.
 *   Together 2 (2 W − 4 t + π t), less the width W that the two sheets share. Setting the seam down takes a little more.
 */
export function groovedMiddleLine(seam: { readonly width: number; readonly thickness: number }): number {
  checkRanges({ width: seamWidth, thickness: seamThickness }, seam);
  return 3 * seam.width + 2 * (Math.PI - 4) * seam.thickness;
}

/** Extra of a Pittsburgh lock's pocket, and its flange: 3/16 in. */
const pittsburghExtra = toBase(3 / 16, "length", "in");

/**
 * The two edges of a Pittsburgh lock, made by machine or on a brake.
 *
 * @param width - W [mm], depth of the pocket; 1 to 200
 * @returns pocket 2 W + 3/16 in and flange 3/16 in [mm]
 * @throws InputError for a width outside its range
 * @remarks Source: NAVEDTRA 14250, chapter 2 (memory): 11/16 and 3/16 in for 1/4 in.
 * @example pittsburghLock(6.35).pocket; // 17.4625
 */
export function pittsburghLock(width: number): { readonly pocket: number; readonly flange: number } {
  checkRange("width", seamWidth, width);
  return { pocket: 2 * width + pittsburghExtra, flange: pittsburghExtra };
}
