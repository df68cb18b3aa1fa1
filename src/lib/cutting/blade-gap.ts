import type { Formula } from "../formula.ts";
import { checkRange } from "../inputs.ts";
import { sheet } from "./symbols.ts";

/** Gap between the blades of a shear over the thickness: the band of the rule, and its middle. */
export const bladeGapRule = { low: 0.05, use: 0.075, high: 0.1 } as const;

export const bladeGapFormula: Formula = {
  id: "blade-gap",
  name: "Gap between the blades, middle of 1/20 to 1/10",
  result: "clearance",
  expression: String.raw`${bladeGapRule.use}\cdot\v{thickness}`,
  symbols: {
    thickness: sheet,
    clearance: {
      label: "Gap between the blades",
      symbol: "c",
      tex: "c",
      quantity: "length",
      fineness: "setting",
      decimals: 3,
    },
  },
};

/**
 * Gap between the blades of a shear.
 *
 * @param thickness - T [mm]; 0.1 to 13
 * @param part - `low` 1/20, `use` the middle, `high` 1/10 of the thickness
 * @returns c [mm]
 * @throws InputError for a value outside its range
 * @remarks Too small wears and loads the blades; too large bends the edge over and leaves a burr. Source: trade-journal article by a
 *   trainer (read): one twentieth to one tenth of the thickness.
 * @example bladeGap(1.2); // 0.09
 */
export function bladeGap(thickness: number, part: keyof typeof bladeGapRule = "use"): number {
  checkRange("thickness", sheet, thickness);
  return bladeGapRule[part] * thickness;
}
