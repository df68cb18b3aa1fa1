import { formatNumber, type LengthView, showQuantity } from "../../../lib/quantity/format.ts";

/** A length on a drawing: a number without its unit, which stands once in a corner. */
export function sizeText(value: number, view: LengthView): string {
  const { number } = showQuantity(value, "length", view, "setting");
  return view === "mm" ? number.replace(/\.?0+$/, "") : number;
}

export function unitNote(view: LengthView): string {
  return view === "mm" ? "sizes in mm" : "sizes in inches";
}

export function angleText(value: number): string {
  return `${formatNumber(value, 1).replace(/\.0$/, "")}°`;
}
