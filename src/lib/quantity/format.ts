import { nearestFraction } from "./fraction.ts";
import { type ParseContext, parseQuantity } from "./parse.ts";
import { fromBase, kindOf, type Quantity } from "./units.ts";

/** How lengths are shown. It never changes a stored value. */
export const lengthViews = ["mm", "inch", "fraction"] as const;
export type LengthView = (typeof lengthViews)[number];

/** `size`: a part is read to 0.1 mm. `setting`: a caliper, stop or radius is set to 0.01 mm. */
export type Fineness = "size" | "setting";

const minus = "−";
const thinSpace = "\u202f";

/** A number for reading: grouped in threes above 9999, a true minus sign, no negative zero. */
export function formatNumber(value: number, decimals: number): string {
  // A decimal half has no exact binary form: 3.175 would print as 3.17 where everyone who sees the number expects 3.18.
  const size = Math.abs(value);
  const fixed = (size + size * 1e-12).toFixed(decimals);
  const [whole = "0", part] = fixed.split(".");
  const grouped = whole.length > 4 ? whole.replace(/\B(?=(\d{3})+$)/g, thinSpace) : whole;
  const negative = value < 0 && Number(fixed) !== 0;
  return (negative ? minus : "") + grouped + (part === undefined ? "" : `.${part}`);
}

/** Decimals a value is shown with, in its base unit or, for lengths, in the view's unit. */
export function decimalsOf(quantity: Quantity, view: LengthView, fineness: Fineness): number {
  if (quantity === "length") return view === "mm" ? (fineness === "setting" ? 2 : 1) : 3;
  return kindOf(quantity).decimals;
}

export interface Shown {
  readonly number: string;
  readonly unit: string;
  /** Only for a fraction view: how far the fraction is from the true length, e.g. `+0.12 mm`. */
  readonly error?: string;
}

/**
 * A value ready to be read: number and unit apart, so that a page can set them apart.
 * Rounding happens only here: mm to 0.1 (0.01 for settings), decimal inch to 0.001, fractions to 1/64.
 */
export function showQuantity(value: number, quantity: Quantity, view: LengthView = "mm", fineness: Fineness = "size"): Shown {
  const kind = kindOf(quantity);
  if (quantity === "length" && view !== "mm") {
    if (view === "inch") return { number: formatNumber(fromBase(value, "length", "in"), 3), unit: "in" };
    const fraction = nearestFraction(value);
    const error = `${fraction.error < 0 ? minus : "+"}${formatNumber(Math.abs(fraction.error), 2)} mm`;
    return { number: fraction.text, unit: "in", error };
  }
  if (quantity === "force" && Math.abs(value) >= 1000) return { number: formatNumber(value / 1000, 1), unit: "kN" };
  if (quantity === "time" && Math.abs(value) >= 60) {
    const hours = Math.abs(value) >= 3600;
    return { number: formatNumber(value / (hours ? 3600 : 60), hours ? 1 : 0), unit: hours ? "h" : "min" };
  }
  if (quantity === "mass" && Math.abs(value) < 1) return { number: formatNumber(value * 1000, 0), unit: "g" };
  return { number: formatNumber(value, decimalsOf(quantity, view, fineness)), unit: kind.units[kind.base]?.text ?? "" };
}

/** `showQuantity` as one text: `52.4 mm`, `90.0°`, `2-1/16 in`. */
export function formatQuantity(value: number, quantity: Quantity, view: LengthView = "mm", fineness: Fineness = "size"): string {
  const { number, unit } = showQuantity(value, quantity, view, fineness);
  return unit === "" || unit === "°" ? number + unit : `${number} ${unit}`;
}

const viewUnit = { mm: "mm", inch: "in", fraction: "in" } as const;

/** Unit key a bare number is taken in when lengths are shown in this view. */
export function unitOfView(quantity: Quantity, view: LengthView): string {
  return quantity === "length" ? viewUnit[view] : kindOf(quantity).base;
}

/**
 * What a field shows for a stored text under a view. A text typed in the view's own unit comes back digit for digit;
 * a text that cannot be read comes back as it is, so that nothing typed disappears.
 */
export function fieldText(stored: string, quantity: Quantity, view: LengthView, context: ParseContext = {}): string {
  if (stored.trim() === "") return stored;
  try {
    const typed = parseQuantity(stored, quantity, context);
    const own = unitOfView(quantity, view);
    if (typed.unit === own) {
      const isFraction = typed.digits.includes("/");
      if (quantity !== "length" || view === "mm" || isFraction === (view === "fraction")) return typed.digits;
    }
    if (quantity !== "length" || typed.unit === "ga") return stored;
    if (view === "mm") return trimZeros(typed.value.toFixed(4));
    if (view === "inch") return trimZeros(fromBase(typed.value, "length", "in").toFixed(4));
    return nearestFraction(typed.value).text.replace(minus, "-");
  } catch {
    return stored;
  }
}

function trimZeros(digits: string): string {
  return digits.replace(/\.?0+$/, "");
}
