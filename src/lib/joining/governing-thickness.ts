import type { Formula } from "../formula.ts";
import { InputError } from "../input-error.ts";
import { checkRanges, exactly } from "../inputs.ts";
import { atLeast, atMost, say } from "../quantity/phrase.ts";
import { governing, otherSheet, sheet } from "./symbols.ts";

const inputs = { thickness: sheet, otherThickness: otherSheet };
/** A pair of sheets to be spot welded. */
export interface SheetPair {
  /** t₁ [mm] */
  readonly thickness: number;
  /** t₂ [mm] */
  readonly otherThickness: number;
}

/** Above this the heat no longer forms in the middle of the pair. Source: ISO 14373, scope. */
export const largestThicknessRatio = 3;

export const governingThicknessFormula: Formula = {
  id: "governing-thickness",
  name: "Governing thickness",
  result: "governing",
  expression: String.raw`\min(\v{thickness},\ \v{otherThickness})`,
  symbols: { ...inputs, governing },
};

export const thicknessRatioFormula: Formula = {
  id: "thickness-ratio",
  name: "Thickness ratio",
  result: "ratio",
  expression: String.raw`\frac{\max(\v{thickness},\ \v{otherThickness})}{\min(\v{thickness},\ \v{otherThickness})}`,
  symbols: { ...inputs, ratio: { label: "Thickness ratio", symbol: "q", tex: "q", quantity: "ratio" } },
};

/**
 * Thickness that the settings of a spot weld go by: the thinner of two sheets.
 *
 * @param pair.thickness - t₁ [mm]; 0.4 to 3
 * @param pair.otherThickness - t₂ [mm]; 0.4 to 3
 * @returns t [mm]
 * @throws InputError for a value outside its range, or sheets more unlike than 3 : 1
 * @remarks Source: AWS D8.1M, definitions (read); ranges and ratio: ISO 14373, scope (read).
 * @example governingThickness({ thickness: 0.8, otherThickness: 1.5 }); // 0.8
 */
export function governingThickness(pair: SheetPair): number {
  checkRanges(inputs, pair);
  const { thickness, otherThickness } = pair;
  const thin = Math.min(thickness, otherThickness);
  // 2.4/0.8 is not exactly 3 in binary, and exactly 3 : 1 is allowed.
  if (Math.max(thickness, otherThickness) > largestThicknessRatio * thin * (1 + 1e-9)) {
    const least = Math.max(otherSheet.min, thickness / largestThicknessRatio);
    const most = Math.min(otherSheet.max, thickness * largestThicknessRatio);
    throw new InputError(
      "otherThickness",
      otherThickness,
      say`${otherSheet.label} must be from ${atLeast(least)} to ${atMost(most)}, at most ${largestThicknessRatio} times unlike this one; it is ${exactly(otherThickness, "length")}.`,
    );
  }
  return thin;
}

/** Thicker over thinner sheet [1]; 1 or more. @throws InputError as `governingThickness` */
export function thicknessRatio(pair: SheetPair): number {
  return Math.max(pair.thickness, pair.otherThickness) / governingThickness(pair);
}
