import { queryText } from "../../lib/address.ts";
import { addressParameters } from "../calculator/address-bar.ts";
import { askedUnits } from "./asked-units.ts";

/**
 * The link of a page that is one form: its values, those that are fixed, and the units the page was asked for. Browser only.
 * @param query - what the form says of itself, as in the address; empty for the example of the page
 */
export async function pageLink(owner: string, query: string): Promise<string> {
  // Whoever looks up while copying sees in the address what is copied.
  addressParameters();
  const { sharedQuery } = await import("../packed.ts");
  const units = askedUnits();
  const parts = [query === "" ? "" : await sharedQuery(owner, query), units ? queryText([["units", units]]) : ""];
  const whole = parts.filter((part) => part !== "").join("&");
  return `${location.origin}${location.pathname}${whole === "" ? "" : `?${whole}`}`;
}
