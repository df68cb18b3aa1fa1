import type { FormulaInput } from "../formula.ts";
import { checkRanges } from "../inputs.ts";
import { penetrationSymbol } from "./punch-work.ts";
import { punchForceSymbol, sheet } from "./symbols.ts";

const shearHeight = {
  label: "Shear ground on the punch",
  symbol: "I",
  tex: "I",
  quantity: "length",
  fineness: "setting",
  min: 0,
  max: 50,
} as const satisfies FormulaInput;

const inputs = { force: punchForceSymbol, penetration: penetrationSymbol, thickness: sheet, shearHeight };

/** A punch whose face is ground so that it enters little by little: I [mm] from its first to its last point. */
export interface ShearedPunch {
  /** F₀ [N], of a flat punch */
  readonly force: number;
  /** p [1] */
  readonly penetration: number;
  readonly thickness: number;
  readonly shearHeight: number;
}

/**
 * Force of a sheared punch by the balance of work: the same work is spread over a longer way.
 *
 * @param punch.force - F₀ [N], of a flat punch; 0 to 100 000 000
 * @param punch.penetration - p [1]; 0 to 1
 * @param punch.thickness - T [mm]; 0.1 to 13
 * @param punch.shearHeight - I [mm]; 0 to 50
 * @returns F [N] = F₀ p T/(p T + I)
 * @throws InputError for a value outside its range
 * @remarks Disagrees with `shearedForceByRatio`. Source: the only form that gives one of the answers offered in an
 *   examination question of 2004 (question read).
 * @example shearedForceByWork({ force: 201_062, penetration: 0.25, thickness: 4, shearHeight: 1 }); // 100531
 */
export function shearedForceByWork(punch: ShearedPunch): number {
  checkRanges(inputs, punch);
  const depth = punch.penetration * punch.thickness;
  return depth + punch.shearHeight === 0 ? punch.force : (punch.force * depth) / (depth + punch.shearHeight);
}

/**
 * Force of a sheared punch by the ratio of penetration to shear, never more than a flat punch needs.
 *
 * @param punch - as for `shearedForceByWork`
 * @returns F [N] = F₀ p T/I, or F₀ where I is p T or less
 * @throws InputError for a value outside its range
 * @remarks Gives more than `shearedForceByWork`. Source: worked examination question (read).
 * @example shearedForceByRatio({ force: 37_699, penetration: 0.4, thickness: 3, shearHeight: 2 }); // 22619
 */
export function shearedForceByRatio(punch: ShearedPunch): number {
  checkRanges(inputs, punch);
  const depth = punch.penetration * punch.thickness;
  return punch.shearHeight <= depth ? punch.force : (punch.force * depth) / punch.shearHeight;
}
