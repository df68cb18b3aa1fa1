import { furnace, techniques } from "../../layouts/site-map.ts";
import { worksheets } from "../../lib/registry.ts";
import type { PickerGroup } from "./Picker.tsx";

/** The calculators that can ask a question, by technique, in the order of the handbook. At build only. */
export function pickerGroups(): readonly PickerGroup[] {
  const asking = worksheets.filter(({ outputs }) => Object.values(outputs).some(({ kind }) => kind === "quantity"));
  return [...techniques, furnace].flatMap(({ path, title }) => {
    const calculators = asking
      .filter(({ page }) => page.startsWith(path))
      .map(({ id, title: name, summary }) => ({ id, title: name, summary }));
    return calculators.length === 0 ? [] : [{ title, calculators }];
  });
}
