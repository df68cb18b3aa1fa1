import type { LengthView } from "../../lib/quantity/format.ts";

/** Units that the address of the page asks for, `units=inch`; undefined where it asks for none, or for none there are. Browser only. */
export function askedUnits(): LengthView | undefined {
  const { units, unitsAsked } = document.documentElement.dataset;
  return unitsAsked !== undefined && unitsAsked === (units ?? "mm") ? (unitsAsked as LengthView) : undefined;
}

/** Name of the units in the address of any page. */
export const unitsKey = "units";

/** The units as a part of a query; empty where none are asked for. */
export function unitsPart(units: LengthView | "" | undefined): string {
  return units ? `${unitsKey}=${units}` : "";
}
