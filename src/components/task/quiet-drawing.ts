import type { OwnQuestion } from "../../lib/assign/own-question.ts";
import { placeAt } from "../../lib/assign/place.ts";
import { formatNumber, formatQuantity, type LengthView } from "../../lib/quantity/format.ts";
import type { Quantity } from "../../lib/quantity/units.ts";
import { sizeText } from "../drawings/parts/sizes.ts";

/**
 * Takes out of a drawing what a question asks for: every number that is none of the values given becomes a question mark.
 * Working out what may stay, instead of what must go, also covers steps between and drawings yet to be written.
 */

/** A number, and the unit behind it. */
const sizes =
  /(\d+-\d+\/\d+|\d+\/\d+|\d[\d\u202f]*(?:\.\d+)?)(\s?(?:°C?|%|(?:mm|in|kN|N|J|kg|g|s|min|h|kA|m)(?:[/·][a-zA-Z²]+)?(?![a-zA-Z])))?/g;

/** Bare numbers on a drawing are lengths, or count something. */
const isBare = (unit: string) => ["", "mm", "in"].includes(unit);

const trimmed = (text: string) => (text.includes(".") ? text.replace(/\.?0+(?=\D*$)/, "") : text);

/** One value in every way a drawing writes it. */
function writings(value: number, quantity: Quantity, view: LengthView): string[] {
  const size = Math.abs(value);
  const numbers = [1, 2, 3].map((places) => formatNumber(size, places));
  const texts =
    quantity === "length"
      ? [sizeText(size, view), formatQuantity(size, "length", view).replace(/ (mm|in)$/, ""), ...(view === "mm" ? numbers : [])]
      : quantity === "angle"
        ? numbers.map((number) => `${number}°`)
        : quantity === "count" || quantity === "ratio"
          ? numbers
          : [formatQuantity(size, quantity, view)];
  return texts.flatMap((text) => [text, trimmed(text)]);
}

/** What stands at a place of a form: a value, or a cell of a list, which is bare where the list has one column. */
function valueAt(values: unknown, path: string): unknown {
  let found = values;
  for (const key of path.split("."))
    if (typeof found === "object" && found !== null) found = Object.hasOwn(found, key) ? Reflect.get(found, key) : undefined;
  return found;
}

/** Texts that number the holes or steps of a drawing: 1, 2, 3 … without a gap. */
function ordinals(texts: readonly string[]): Set<string> {
  const bare = new Set(texts.map((text) => text.trim()));
  const found = new Set<string>();
  for (let number = 1; bare.has(String(number)); number++) found.add(String(number));
  return found;
}

/**
 * The texts of a question's drawing without what is not given.
 * @param values - of the calculator's inputs, which hold more than is given
 */
export function quietTexts(
  { sheet, given, asked }: OwnQuestion,
  values: unknown,
  view: LengthView,
  texts: readonly string[],
): string[] {
  const allowed = new Set(
    given.flatMap(({ path }) => {
      const input = placeAt(sheet.inputs, path)?.input;
      const value = valueAt(values, path);
      return input?.kind === "quantity" && typeof value === "number" ? writings(value, input.quantity, view) : [];
    }),
  );
  const answers = new Set(asked.map(({ right }) => String(Math.round(right))));
  const numbering = ordinals(texts);
  return texts.map((text) => {
    if (numbering.has(text.trim()) && !answers.has(text.trim())) return text;
    return text.replace(sizes, (whole, number: string, unit = "") => {
      // A scale begins at nought, which tells nobody anything.
      const known = whole === "0" || allowed.has(isBare(unit.trim()) ? number : whole);
      return known ? whole : `?${unit}`;
    });
  });
}
