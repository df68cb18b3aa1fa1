import type { LengthView } from "../../lib/quantity/format.ts";

/** Units that the address of the page asks for, `units=inch`; undefined where it asks for none, or for none there are. Browser only. */
export function askedUnits(): LengthView | undefined {
  const { units, unitsAsked } = document.documentElement.dataset;
  return unitsAsked !== undefined && unitsAsked === (units ?? "mm") ? (unitsAsked as LengthView) : undefined;
}

/** The units as the end of a query that has something before it. */
export function unitsEnd(units: LengthView | undefined): string {
  return units === undefined ? "" : `&units=${units}`;
}
