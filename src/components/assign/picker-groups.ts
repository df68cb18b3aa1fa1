import { furnace, techniques } from "../../layouts/site-map.ts";
import planWorksheet from "../../lib/part/plan-worksheet.ts";
import { worksheets } from "../../lib/registry.ts";
import type { Worksheet } from "../../lib/worksheet.ts";
import type { assign } from "../../texts/en/assign.ts";
import type { PickerGroup } from "./Picker.tsx";

const entry = ({ id, title, summary }: Pick<Worksheet, "id" | "title" | "summary">) => ({ id, title, summary });

/** The calculators that can ask a question, by technique, in the order of the handbook. At build only. */
export function pickerGroups(texts: typeof assign): readonly PickerGroup[] {
  const asking = worksheets.filter(({ outputs }) => Object.values(outputs).some(({ kind }) => kind === "quantity"));
  const groups = [...techniques, furnace].flatMap(({ path, title }) => {
    const calculators = asking.filter(({ page }) => page.startsWith(path)).map(entry);
    return calculators.length === 0 ? [] : [{ title, calculators }];
  });
  return [...groups, { title: texts.wholePart, calculators: [entry(planWorksheet)] }];
}
