import { formatNumber } from "../lib/quantity/format.ts";
import { unitOf } from "../lib/quantity/units.ts";
import { quantityOf, unitKey } from "./run.ts";
import type { Check } from "./schema.ts";

type Given = Check["inputs"][string];

/** A unit as it is printed after a number: a plain number has none. */
export function unitText(unit: string): string {
  return unit === "" ? "" : unitOf(quantityOf(unit), unitKey(unit)).text;
}

/** A number with its unit, as the source would print it. */
export function withUnit(digits: string, unit: string): string {
  const text = unitText(unit);
  return text === "" || text === "°" ? digits + text : `${digits}\u00a0${text}`;
}

/**
 * A number of ours with digits enough to be held against a tolerance: one more than its first one, at most nine.
 * @param tolerance - in the same unit; nothing or next to nothing shows the digits the source has
 */
export function digitsFor(value: number, expected: number, tolerance: number): string {
  const printed = String(expected).split(".")[1]?.length ?? 0;
  const wanted = tolerance < 1e-7 ? Math.min(printed, 6) : Math.ceil(-Math.log10(tolerance)) + 1;
  return formatNumber(value, Math.min(9, Math.max(0, wanted)));
}

/** Words for a key: `bendAngle` → `bend angle`. */
export const inWords = (key: string) => key.replace(/([a-z])([A-Z])/g, "$1 $2").toLowerCase();

function shown(value: Given): string {
  if (typeof value === "string") return value;
  if (Array.isArray(value))
    return value.map((row) => (typeof row === "string" ? row : Object.values(row).join(" : "))).join(", ");
  return withUnit(String(value.value), value.unit);
}

/** What a check puts in, in one line. */
export function inputsText(check: Check): string {
  return Object.entries(check.inputs)
    .map(([key, value]) => `${inWords(key)} ${shown(value)}`)
    .join("; ");
}
