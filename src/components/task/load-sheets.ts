import data from "virtual:calculator-data";
import calculators, { type CalculatorModule } from "virtual:calculators";
import type { Assignment } from "../../lib/assign/definition.ts";
import type { WorksheetOf } from "../../lib/assign/own-question.ts";
import type { Catalogue } from "../../lib/catalogue.ts";

/** The calculators that an assignment asks about, and the data they work with. */
export interface Sheets {
  readonly worksheetOf: WorksheetOf;
  readonly drawingOf: (id: string) => CalculatorModule["Drawing"];
  /** Of the site, not of this device: everybody's answers must be the same. */
  readonly catalogue: Catalogue;
}

/** A whole part is asked about through its plan, which is no calculator of a page. */
export const planId = "plan";

/** What stands behind a question; undefined where there is none of this id. */
export async function loadSheet(id: string): Promise<Pick<CalculatorModule, "sheet" | "Drawing"> | undefined> {
  if (id === planId) return { sheet: (await import("../../lib/part/plan-worksheet.ts")).default, Drawing: undefined };
  return Object.hasOwn(calculators, id) ? calculators[id]?.() : undefined;
}

/** Loads the calculators of an assignment; one that does not exist is left out. */
export async function loadSheets({ questions }: Assignment): Promise<Sheets> {
  const ids = [...new Set(questions.map(({ calculator }) => calculator))];
  const loaded = new Map(await Promise.all(ids.map(async (id) => [id, await loadSheet(id)] as const)));
  return {
    worksheetOf: (id) => loaded.get(id)?.sheet,
    drawingOf: (id) => loaded.get(id)?.Drawing,
    catalogue: data as unknown as Catalogue,
  };
}
