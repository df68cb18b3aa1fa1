import type { LengthView } from "../../lib/quantity/format.ts";
import { amountText, type Phrase, phraseIn, phraseKey } from "../../lib/quantity/phrase.ts";
import type { Language } from "../language.ts";
import { pathIn } from "../paths.ts";
import { spellings } from "./spellings.ts";

/** An area of the interface and its Spanish: both have the same shape, which the compiler sees to. */
export type Area = readonly [english: object, spanish: object];

export function area<T extends object>(english: T, spanish: T): Area {
  return [english, spanish];
}

const digits = (printed: string) => printed.replace(/(\d)\.(?=\d)/g, "$1,");

/** `{2}` in a translation is the second value of the English sentence. */
function filled(translation: string, values: readonly string[]): string {
  return translation.replace(/\{(\d)\}/g, (_, place: string) => values[Number(place) - 1] ?? "");
}

/**
 * @param areas - of the interface
 * @param library - what the library and its data say, by its English words; `{2}` in a translation is the second value
 * @param missing - told of every text that has no Spanish and is shown as it is
 */
export function spanish(
  areas: readonly Area[],
  library: ReadonlyMap<string, string>,
  missing: (text: string) => void = () => {},
): Language {
  const own = new Map<object, object>(areas);

  function words(text: string): string {
    const translation = library.get(text);
    if (translation !== undefined) return translation;
    // Numbers and what has no letters is the same in every language, but for its decimal sign.
    if (/^[−+±-]?\d/.test(text) || !/\p{L}{2}/u.test(text)) return digits(text);
    missing(text);
    return text;
  }

  function sentence(phrase: Phrase, view: LengthView): string {
    return phraseIn(phrase, {
      words,
      amount: (amount) => words(amountText(amount, view)),
      said(parts, values) {
        const key = phraseKey(parts);
        const translation = library.get(key);
        if (translation !== undefined) return filled(translation, values);
        if (/\p{L}{2}/u.test(key.replaceAll("{}", ""))) missing(key);
        return parts.map((part, index) => part + (values[index] ?? "")).join("");
      },
    });
  }

  return {
    code: "es",
    texts: <T extends object>(english: T) => (own.get(english) as T | undefined) ?? english,
    say: (text, view = "mm") => (typeof text === "string" ? words(text) : sentence(text, view)),
    digits,
    path: (english) => pathIn("es", english),
    toEnglish: { lang: "en", hreflang: "en" },
    typed: (text) =>
      text
        .replace(/(?<![\d.,])\d{1,3}(?:(?:\.\d{3})+(?=,)|(?:\.\d{3}){2,}(?![\d.]))/, (groups) => groups.replaceAll(".", ""))
        .replace(/\p{L}+(?=[.\s]*$)/u, (word) => spellings[word.toLowerCase()] ?? word),
  };
}
