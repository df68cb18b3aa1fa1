import type { Formula } from "../formula.ts";
import { checkRange } from "../inputs.ts";
import { governing, weldDiameter } from "./symbols.ts";

/** Diameter over the root of the thickness, both in mm: what each rule asks for. */
export const buttonFactors = {
  /** to aim at; EN 1993-1-3 (memory), a web page (read, weak) */
  target: 5,
  /** smallest accepted; AWS D8.1M (memory) */
  least: 4,
  /** where the tips count as worn out; ISO (memory) */
  wornTips: 3.5,
} as const;

const factor = { label: "Factor of the rule", symbol: "k", tex: "k", quantity: "ratio" } as const;

export const buttonFormula: Formula = {
  id: "weld-button",
  name: "Weld diameter to aim at",
  result: "diameter",
  expression: String.raw`\v{factor}\sqrt{\v{governing}}`,
  symbols: { factor, governing, diameter: weldDiameter },
};

/**
 * Diameter of the weld, or of the button pulled out in a peel test, that a rule asks for.
 *
 * @param weld.governing - t [mm], the thinner sheet; 0.25 to 6.35
 * @param weld.factor - k, one of `buttonFactors`
 * @returns d [mm] = k√t, with t in mm; an empirical rule, good in millimetres only
 * @throws InputError for a thickness outside its range
 * @remarks Sources: as `buttonFactors`.
 * @example weldButton({ governing: 1, factor: buttonFactors.target }); // 5
 */
export function weldButton(weld: { readonly governing: number; readonly factor: number }): number {
  checkRange("governing", governing, weld.governing);
  return weld.factor * Math.sqrt(weld.governing);
}
