import type { Formula, FormulaInput } from "../formula.ts";
import { checkRanges } from "../inputs.ts";

const inputs = {
  current: { label: "Current", symbol: "I", tex: "I", quantity: "current", min: 0, max: 200 },
  resistance: { label: "Resistance between the tips, in µΩ", symbol: "R", tex: "R", quantity: "ratio", min: 1, max: 100_000 },
  time: { label: "Weld time", symbol: "T", tex: "T", quantity: "time", min: 0, max: 60 },
} as const satisfies Record<string, FormulaInput>;

/** Resistance between the tips of a textbook example [µΩ]. Source: Groover (memory). */
export const textbookResistance = 100;

export const weldHeatFormula: Formula = {
  id: "weld-heat",
  name: "Heat of one weld in the middle of the ranges, with a textbook resistance",
  result: "heat",
  expression: String.raw`\v{current}^2\cdot\v{resistance}\cdot\v{time}`,
  symbols: { ...inputs, heat: { label: "Heat", symbol: "Q", tex: "Q", quantity: "energy" } },
};

/**
 * Heat that the current of one weld sets free.
 *
 * @param weld.current - I [kA]; 0 to 200
 * @param weld.resistance - R [µΩ] between the tips; 1 to 100 000
 * @param weld.time - T [s]; 0 to 60
 * @returns Q [J] = I² R T; kA² times µΩ is just W. Most of it goes into the tips and the sheet, about a third into the nugget
 * @throws InputError for a value outside its range
 * @remarks Joule's law. A set of slides prints 0.241 I²RT "in J": that factor gives calories.
 * @example weldHeat({ current: 12, resistance: 100, time: 0.2 }); // 2880
 */
export function weldHeat(weld: { readonly current: number; readonly resistance: number; readonly time: number }): number {
  checkRanges(inputs, weld);
  return weld.current ** 2 * weld.resistance * weld.time;
}
