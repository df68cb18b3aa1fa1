import { materialIds, toleranceClasses } from "../lib/catalogue.ts";
import { nearestFraction } from "../lib/quantity/fraction.ts";
import { parseQuantity } from "../lib/quantity/parse.ts";
import { meanUncertainty } from "../lib/stats/mean-uncertainty.ts";
import { outlierLimit } from "../lib/stats/outlier.ts";
import { studentQuantile } from "../lib/stats/student.ts";
import { gaugeThickness } from "../lib/stock/gauge.ts";
import { angularTolerance, linearTolerance } from "../lib/stock/general-tolerance.ts";
import { thicknessTolerance } from "../lib/stock/thickness-tolerance.ts";
import { oneOf, type Subjects } from "./subject.ts";

function entry<T>(table: Readonly<Record<string, T>>, id: string): T {
  const found = table[id];
  if (found === undefined) throw new Error(`no “${id}”; there are ${Object.keys(table).join(", ")}`);
  return found;
}

/** What of stock, lengths and statistics can be checked apart from the calculators. */
export const stockAndStatistics: Subjects = {
  gaugeThickness: (given, { gaugeSystems }) => ({
    thickness: gaugeThickness(entry(gaugeSystems, given.word("system")), given.word("gauge")),
  }),
  readLength: (given) => {
    const { value } = parseQuantity(given.word("text"), "length");
    return { mm: value, fraction: nearestFraction(value).text };
  },
  materialStrength: (given, { materials }) => {
    const { shearStrength, tensileStrength } = materials[oneOf(materialIds, given.word("material"))];
    return { shearStrength: shearStrength.value, tensileStrength: tensileStrength.value };
  },
  thicknessTolerance: (given, { thicknessTolerances }) => ({
    tolerance: thicknessTolerance(
      entry(thicknessTolerances, given.word("table")),
      given.number("thickness"),
      given.number("width"),
    ),
  }),
  linearTolerance: (given, { generalTolerances }) => ({
    tolerance: linearTolerance(generalTolerances, oneOf(toleranceClasses, given.word("class")), given.number("size")),
  }),
  angularTolerance: (given, { generalTolerances }) => ({
    tolerance: angularTolerance(generalTolerances, oneOf(toleranceClasses, given.word("class")), given.number("side")),
  }),
  studentQuantile: (given) => ({ t: studentQuantile(given.number("probability") / 100, given.number("freedom")) }),
  meanUncertainty: (given) => ({
    uncertainty: meanUncertainty({ spread: given.number("spread"), count: given.number("count") }),
  }),
  outlierLimit: (given) => ({ limit: outlierLimit(given.number("count")) }),
};
