import { loadCatalogue } from "../../catalogue/load.ts";
import { type Raw, readInputs } from "../../lib/inputs.ts";
import { type FlatLayout, flatten } from "../../lib/part/flatten.ts";
import { partInputs } from "../../lib/part/form.ts";
import { partFrom } from "../../lib/part/model.ts";

/** The flat layout of a part written as the plan's form is. @throws Error for a part that cannot be made: the page is wrong then */
export function layoutOf(raw: Raw): FlatLayout {
  const catalogue = loadCatalogue();
  const { values, problems } = readInputs(partInputs, raw, catalogue);
  if (!values) throw new Error(`Part of a figure: ${problems.map((problem) => problem.message).join(" ")}`);
  return flatten(partFrom(values, catalogue));
}
