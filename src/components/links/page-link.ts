import { addressParameters } from "../calculator/address-bar.ts";
import { askedUnits, unitsPart } from "./asked-units.ts";

/** The whole address of a page of this site with some parts of a query; those that are empty are left out. Browser only. */
export function wholeAddress(page: string, parts: readonly string[]): string {
  const query = parts.filter((part) => part !== "").join("&");
  return `${location.origin}${page}${query === "" ? "" : `?${query}`}`;
}

/**
 * The link of a page that is one form: its values, those that are fixed, and the units the page was asked for. Browser only.
 * @param query - what the form says of itself, as in the address; empty for the example of the page
 * @param page - path of the page, this one where left out
 */
export async function pageLink(owner: string, query: string, page: string = location.pathname): Promise<string> {
  // Whoever looks up while copying sees in the address what is copied.
  addressParameters();
  const { sharedQuery } = await import("../packed.ts");
  return wholeAddress(page, [query === "" ? "" : await sharedQuery(owner, query), unitsPart(askedUnits())]);
}
