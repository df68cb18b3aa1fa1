import type { Formula, FormulaInput, FormulaSymbol } from "../formula.ts";
import { InputError } from "../input-error.ts";
import { checkRanges, exactly } from "../inputs.ts";
import { atLeast, say } from "../quantity/phrase.ts";
import { toBase } from "../quantity/units.ts";
import { sheet } from "./symbols.ts";

const length = { quantity: "length", fineness: "setting" } as const;

export const sideHeight = {
  ...length,
  label: "Height of the side, outside",
  symbol: "H",
  tex: "H",
  min: 1,
  max: 2000,
} as const satisfies FormulaInput;

export const cornerGap = {
  ...length,
  label: "Set back from the corner",
  symbol: "g",
  tex: "g",
  min: 0,
  max: 100,
} as const satisfies FormulaInput;

const deduction = {
  ...length,
  label: "Bend deduction",
  symbol: "BD",
  tex: String.raw`\mathrm{BD}`,
  min: -100,
  max: 1000,
} as const satisfies FormulaInput;
const setback = { ...length, label: "Setback", symbol: "SB", tex: String.raw`\mathrm{SB}` } as const satisfies FormulaSymbol;
const insideRadius = {
  ...length,
  label: "Inside radius",
  symbol: "R",
  tex: "R",
  min: 0,
  max: 1000,
} as const satisfies FormulaInput;

export const notchSideFormula: Formula = {
  id: "corner-notch-side",
  name: "Side of the square notch",
  result: "guide",
  expression: String.raw`\v{side} - \v{deduction} + \v{gap}`,
  symbols: {
    side: sideHeight,
    deduction,
    gap: cornerGap,
    guide: { ...length, label: "Guide setting", symbol: "n", tex: "n" },
  },
};

/**
 * How far a square corner notch reaches in from the edge of a blank with sides to be turned up by 90°.
 *
 * @param corner.side - H [mm], finished outside height of the side turned up along that edge; 1 to 2000
 * @param corner.deduction - BD [mm] of that bend; −100 to 1000
 * @param corner.gap - g [mm], how far the neighbouring side stops short of the outside face; 0 to 100
 * @returns n [mm] = H − BD + g
 * @throws InputError for a value outside its range, or when nothing would be left of the notch
 * @remarks With g = 0 the neighbouring side is as long as the base is wide, outside to outside. Source: drip-pan layout,
 *   NAVEDTRA 14251 chapter 2 (construction read), with the bend deduction taken off; geometry.
 * @example notchSide({ side: 40, deduction: 2.6, gap: 0 }); // 37.4
 */
export function notchSide(corner: { readonly side: number; readonly deduction: number; readonly gap: number }): number {
  checkRanges({ side: sideHeight, deduction, gap: cornerGap }, corner);
  const found = corner.side - corner.deduction + corner.gap;
  if (!(found > 0))
    throw new InputError(
      "side",
      corner.side,
      say`Height of the side must be above ${atLeast(corner.deduction - corner.gap)}, the bend deduction less the set-back; it is ${exactly(corner.side, "length")}.`,
    );
  return found;
}

export const reliefCentreFormula: Formula = {
  id: "relief-centre",
  name: "Centre of the relief hole from the edge",
  result: "centre",
  expression: String.raw`\v{side} - \v{deduction} + \v{setback}`,
  symbols: {
    side: sideHeight,
    deduction,
    setback,
    centre: { ...length, label: "Centre of the relief hole", symbol: "m", tex: "m" },
  },
};

/**
 * Distance of the inner tangent line of a bend from the edge of the blank: relief holes are centred where two of them cross.
 *
 * @param corner.side - H [mm]; 1 to 2000
 * @param corner.deduction - BD [mm]; −100 to 1000
 * @param setbackLength - SB [mm]
 * @returns m [mm] = (H − SB) + BA = H − BD + SB
 * @throws InputError for a value outside its range
 * @remarks Source: FAA text on relief holes (read) for the place, geometry for the distance.
 */
export function reliefCentre(corner: { readonly side: number; readonly deduction: number }, setbackLength: number): number {
  checkRanges({ side: sideHeight, deduction }, corner);
  return corner.side - corner.deduction + setbackLength;
}

/** Smallest relief hole by thickness, inches as printed; the sizes between two rows are given to the thicker one. */
const smallestRelief = [
  { upTo: 0.064, diameter: 1 / 8 },
  { upTo: 0.128, diameter: 3 / 16 },
] as const;

/** Thickest sheet in that list [mm]. */
export const thickestListed = toBase(smallestRelief[1].upTo, "length", "in");

/** A relief hole, and what it rests on. */
export interface Relief {
  /** [mm] */
  readonly diameter: number;
  /** Smallest by thickness [mm]. */
  readonly least: number;
  /** The thickness is within the printed list. */
  readonly listed: boolean;
}

export const reliefFormula: Formula = {
  id: "relief-diameter",
  name: "Relief hole",
  result: "diameter",
  expression: String.raw`\max\!\left(\v{times}\cdot\v{radius},\;\v{least}\right)`,
  symbols: {
    times: { label: "Radii", symbol: "k", tex: "k", quantity: "ratio" },
    radius: insideRadius,
    least: { ...length, label: "Smallest hole for this thickness", symbol: "d min", tex: String.raw`d_{\min}` },
    diameter: { ...length, label: "Relief hole", symbol: "d", tex: "d" },
  },
};

/**
 * Diameter of the hole that keeps two bends from tearing where they meet.
 *
 * @param corner.radius - R [mm], inside; 0 to 1000
 * @param corner.thickness - T [mm]; 0.1 to 13
 * @param times - radii it is wide: the source says about 2 in one place and 1 in another
 * @returns d [mm] = max(times · R, smallest for the thickness)
 * @throws InputError for a value outside its range
 * @remarks Smallest for aluminium: 1/8 in up to 0.064 in, 3/16 in from 0.072 to 0.128 in. Beyond 0.128 in nothing is printed; the last
 *   row is kept and `listed` is false. Source: FAA-H-8083-31 chapter 4, republished text (read).
 * @example reliefHole({ radius: 1.6, thickness: 1.2 }).diameter; // 3.2
 */
export function reliefHole(corner: { readonly radius: number; readonly thickness: number }, times: 1 | 2 = 2): Relief {
  checkRanges({ radius: insideRadius, thickness: sheet }, corner);
  // Sheet is bought by the thickness in millimetres that stands for a row, so a micrometre above it still counts.
  const row = smallestRelief.find(({ upTo }) => corner.thickness <= toBase(upTo, "length", "in") + 1e-3);
  const least = toBase((row ?? smallestRelief[1]).diameter, "length", "in");
  return { diameter: Math.max(times * corner.radius, least), least, listed: row !== undefined };
}

/**
 * Smallest relief hole, centred on the inner tangent lines, that opens into the corner of the notch.
 *
 * @param setbackLength - SB [mm]
 * @param gap - g [mm]
 * @returns [mm] = 2 √2 (SB − g); 0 when the notch reaches beyond the tangent lines by itself
 * @remarks The corner of the notch lies SB − g outwards of the centre in both directions. Source: geometry.
 */
export function reliefToNotch(setbackLength: number, gap: number): number {
  return Math.max(0, 2 * Math.SQRT2 * (setbackLength - gap));
}

/**
 * Clear gap between two sides turned up, both set back by the same g from the outside corner.
 *
 * @param gap - g [mm]
 * @param thickness - T [mm]
 * @returns [mm] = √2 (g − T); negative: they meet before they are up
 * @remarks Their inside edges face each other across the corner. Source: geometry.
 */
export function clearGap(gap: number, thickness: number): number {
  return Math.SQRT2 * (gap - thickness);
}
