import type { Property } from "../../catalogue.ts";
import { amount, say } from "../../quantity/phrase.ts";
import type { Quantity } from "../../quantity/units.ts";
import type { Remark } from "../../worksheet.ts";

/** What kind of number a property is, so that nobody takes a typical value for a promise. */
export function propertyRemark(label: string, quantity: Quantity, property: Property): Remark {
  const used = amount(property.value, quantity);
  if (property.source === "entered") return { level: "note", phrase: say`${label} as entered: ${used}.` };
  const memory = property.seen === "memory" ? ", from memory" : "";
  return {
    level: "note",
    phrase: say`${label} taken as ${used}: ${property.basis}${memory}. A mill certificate gives the number of your sheet.`,
    source: property.source,
  };
}

export interface BandCase {
  readonly name: string;
  readonly value: number;
  /** The value the answer is made with. */
  readonly chosen: boolean;
}

/** The value used and the ends of the band it lies in, from low to high; one case where no band is known. */
export function bandCases({ low, value, high }: Property, names: { readonly low: string; readonly high: string }): BandCase[] {
  return [
    ...(low !== undefined && low < value ? [{ name: names.low, value: low, chosen: false }] : []),
    { name: "As used above", value, chosen: true },
    ...(high !== undefined && high > value ? [{ name: names.high, value: high, chosen: false }] : []),
  ];
}
