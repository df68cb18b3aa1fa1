import type { Seen } from "../catalogue.ts";
import type { Phrase } from "../quantity/phrase.ts";
import type { Quantity } from "../quantity/units.ts";

/** One rule held against the part: what it is now, what it may be, and why. Nothing is adjusted silently. */
export interface Check {
  readonly rule: string;
  readonly label: string;
  readonly ok: boolean;
  readonly value: number;
  readonly limit: number;
  /** `least`: the value must not be below the limit. */
  readonly side: "least" | "most";
  readonly quantity: Quantity;
  readonly why: Phrase;
  readonly source: string;
  readonly seen: Seen;
}

export const practice = { source: "common-practice", seen: "practice" } as const;
export const shopRule = { source: "this-shop", seen: "read" } as const;
const closeTo = 1e-9;

/** A rule with its verdict, taken from value and limit alone. */
export function check(entry: Omit<Check, "ok">): Check {
  const ok = entry.side === "least" ? entry.value >= entry.limit - closeTo : entry.value <= entry.limit + closeTo;
  return { ...entry, ok };
}

/** A share in words. */
export const percent = (share: number) => `${Math.round(100 * share)} %`;
