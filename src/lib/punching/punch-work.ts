import type { MaterialId } from "../catalogue.ts";
import type { Formula, FormulaInput } from "../formula.ts";
import { checkRanges } from "../inputs.ts";
import { punchForceSymbol, sheet } from "./symbols.ts";

/** How deep the punch goes before the slug breaks off, as a share of the thickness. */
export interface Penetration {
  /** The one used: the deep end, so that the work is not underrated. */
  readonly value: number;
  readonly low?: number;
  readonly basis: string;
}

/** All from memory of the Die Design Handbook; its table names metals, not our grades. */
const softSteel: Penetration = { value: 0.5, low: 0.38, basis: "0.10 % carbon steel, annealed 50 %, cold rolled 38 %" };
const stainless: Penetration = { value: 0.39, basis: "stainless steel, about 39 %" };
const aluminium: Penetration = { value: 0.6, basis: "aluminium, 60 %; hard alloys break sooner" };
const copper: Penetration = { value: 0.55, basis: "copper, 55 %" };

/** Left out for a metal that no table we know names. */
export const penetrations: Readonly<Partial<Record<MaterialId, Penetration>>> = {
  "steel-cr": softSteel,
  "steel-dc04": softSteel,
  "steel-s235": { value: 0.4, low: 0.28, basis: "0.20 % carbon steel, annealed 40 %, cold rolled 28 %" },
  "steel-galv": softSteel,
  "stainless-304": stainless,
  "stainless-316": stainless,
  "stainless-430": stainless,
  "al-1100-o": aluminium,
  "al-1100-h14": aluminium,
  "al-3003-h14": aluminium,
  "al-5052-h32": aluminium,
  "al-6061-o": aluminium,
  "al-6061-t4": aluminium,
  "al-6061-t6": aluminium,
  "al-2024-o": aluminium,
  "al-2024-t3": aluminium,
  "copper-soft": copper,
  "copper-half-hard": copper,
  "brass-half-hard": { value: 0.5, basis: "brass, 50 %" },
};

export const penetrationSymbol = {
  label: "Penetration before the slug breaks off, as a share of the thickness",
  symbol: "p",
  tex: "p",
  quantity: "ratio",
  min: 0,
  max: 1,
} as const satisfies FormulaInput;

const inputs = { force: punchForceSymbol, penetration: penetrationSymbol, thickness: sheet };

/** Newton millimetres in a joule. */
const millimetres = 1000;

export const punchWorkFormula: Formula = {
  id: "punch-work",
  name: "Work of one hole",
  result: "work",
  expression: String.raw`\v{force}\cdot\v{penetration}\cdot\v{thickness}\cdot\frac{1\,\mathrm{m}}{1000\,\mathrm{mm}}`,
  symbols: { ...inputs, work: { label: "Work", symbol: "W", tex: "W", quantity: "energy" } },
};

/**
 * Work of one hole, at most: the largest force held until the slug breaks off.
 *
 * @param hole.force - F [N]; 0 to 100 000 000
 * @param hole.penetration - p [1], share of the thickness cut before the rest breaks; 0 to 1
 * @param hole.thickness - T [mm]; 0.1 to 13
 * @returns W [J] = F p T/1000
 * @throws InputError for a value outside its range
 * @remarks A force that falls evenly to nothing would take half of it. Source: worked examination questions (read).
 * @example punchWork({ force: 97_389, penetration: 0.5, thickness: 2 }); // 97.39
 */
export function punchWork(hole: { readonly force: number; readonly penetration: number; readonly thickness: number }): number {
  checkRanges(inputs, hole);
  return (hole.force * hole.penetration * hole.thickness) / millimetres;
}
