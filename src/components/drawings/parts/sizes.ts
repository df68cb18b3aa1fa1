import { formatNumber, type LengthView, showQuantity } from "../../../lib/quantity/format.ts";
import { useLanguage } from "../../../texts/context.ts";
import { drawings } from "../../../texts/en/drawings.ts";

/** A length on a drawing: a number without its unit, which stands once in a corner. */
export function sizeText(value: number, view: LengthView): string {
  const { number } = showQuantity(value, "length", view, "setting");
  return view === "mm" ? number.replace(/\.?0+$/, "") : number;
}

function unitNote(view: LengthView, texts: typeof drawings): string {
  return view === "mm" ? texts.sizesInMm : texts.sizesInInches;
}

export function angleText(value: number): string {
  return `${formatNumber(value, 1).replace(/\.0$/, "")}°`;
}

/** The same in the language of the page. */
export function useSizes(view: LengthView) {
  const language = useLanguage();
  return {
    size: (value: number) => language.digits(sizeText(value, view)),
    angle: (value: number) => language.digits(angleText(value)),
    units: unitNote(view, language.texts(drawings)),
  };
}
