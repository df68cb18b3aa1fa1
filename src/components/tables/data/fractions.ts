import { nearestFraction } from "../../../lib/quantity/fraction.ts";
import { toBase } from "../../../lib/quantity/units.ts";
import { number, type Table } from "../table.ts";

/** Parts of an inch on the finest common rule. */
const finest = 64;

/** All sixty-fourths of an inch. */
export function fractionTable(): Table {
  const from = { source: "inch-definition", note: "the rest is exact arithmetic" };
  return {
    id: "fractions",
    caption: "Every sixty-fourth of an inch",
    columns: [
      { label: "Fraction", unit: "in", kind: "key" },
      { label: "Rule divided in", kind: "key" },
      { label: "Sixty-fourths", kind: "key-number" },
      { label: "Decimal", unit: "in", kind: "number", from },
      { label: "Length", unit: "mm", kind: "number", from },
    ],
    rows: Array.from({ length: finest }, (_, index) => {
      const inches = (index + 1) / finest;
      const millimetres = toBase(inches, "length", "in");
      const { text, denominator } = nearestFraction(millimetres, finest);
      return {
        cells: [
          { text, order: inches },
          { text: denominator === 1 ? "whole inches" : `${denominator}ths`, order: denominator },
          number(index + 1, String(index + 1)),
          number(inches, inches.toFixed(6)),
          number(millimetres, millimetres.toFixed(4)),
        ],
      };
    }),
  };
}
