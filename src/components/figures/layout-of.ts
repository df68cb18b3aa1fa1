import { loadCatalogue } from "../../catalogue/load.ts";
import { type Raw, readInputs } from "../../lib/inputs.ts";
import { type FlatChain, type FlatLayout, flatten } from "../../lib/part/flatten.ts";
import { partInputs } from "../../lib/part/form.ts";
import { partFrom } from "../../lib/part/model.ts";

/** A part written as the plan's form is, unbent. @throws Error for a part that cannot be made: the page is wrong then */
export function blankOf(raw: Raw): FlatLayout {
  const catalogue = loadCatalogue();
  const { values, problems } = readInputs(partInputs, raw, catalogue);
  if (!values) throw new Error(`Part of a figure: ${problems.map((problem) => problem.message).join(" ")}`);
  return flatten(partFrom(values, catalogue));
}

/** A part bent one way, written as the plan's form is, unbent. @throws Error for a part that cannot be made: the page is wrong then */
export function layoutOf(raw: Raw): FlatChain {
  const [chain, other] = blankOf(raw).chains;
  if (!chain || other) throw new Error("Part of a figure: it must be bent one way");
  return chain;
}
