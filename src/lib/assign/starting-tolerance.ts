import type { QuantityOutput } from "../worksheet.ts";

/** A tolerance to begin with: what careful work with a calculator and rounded steps stays within. */
export function startingTolerance({ quantity, asPercent }: QuantityOutput): string {
  if (quantity === "count") return "rounding";
  if (asPercent) return "2%";
  if (quantity === "length") return "0.2mm";
  return quantity === "angle" ? "0.5deg" : "2%";
}
