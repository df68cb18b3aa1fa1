import type { Catalogue } from "../../src/lib/catalogue.ts";
import planWorksheet from "../../src/lib/part/plan-worksheet.ts";
import { worksheets } from "../../src/lib/registry.ts";
import type { Worksheet } from "../../src/lib/worksheet.ts";
import type { Knowledge } from "./faults.ts";

/** Every calculator, and the plan. */
export const targets: readonly Worksheet[] = [...worksheets, planWorksheet];

/** How often a slow one is called for each call of the others: a plan, and a search for the best cuts. */
const shares: Readonly<Record<string, number>> = { plan: 0.1, "sheet-cuts": 0.005 };

/** Calls of each target, at least `total` in all. */
export function callsOf(total: number): ReadonlyMap<Worksheet, number> {
  const weight = targets.reduce((sum, { id }) => sum + (shares[id] ?? 1), 0);
  return new Map(targets.map((sheet) => [sheet, Math.ceil(((shares[sheet.id] ?? 1) * total) / weight)]));
}

export const knowledgeOf = (catalogue: Catalogue): Knowledge => ({
  sources: new Set(Object.keys(catalogue.sources)),
  places: new Set(targets.map(({ id }) => id)),
});
