import calculators from "virtual:calculators";
import type { Worksheet } from "../../lib/worksheet.ts";

/** Questions about a whole part are asked of its plan, which is no calculator of a page. */
export const planId = "plan";

/** Fetches the definition behind a question; undefined where there is none of this id. */
export async function fetchWorksheet(id: string): Promise<Worksheet | undefined> {
  if (id === planId) return (await import("../../lib/part/plan-worksheet.ts")).default;
  return Object.hasOwn(calculators, id) ? (await calculators[id]?.())?.sheet : undefined;
}
