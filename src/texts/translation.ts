import type { LengthView } from "../lib/quantity/format.ts";
import { amountText, type Phrase, phraseIn, phraseKey } from "../lib/quantity/phrase.ts";
import type { Language, LanguageCode } from "./language.ts";
import { pathIn } from "./paths.ts";

/** An area of the interface in English and in another language: both have the same shape, which the compiler sees to. */
export type Area = readonly [english: object, own: object];

export function area<T extends object>(english: T, own: T): Area {
  return [english, own];
}

/** `{2}` in a translation is the second value of the English sentence. */
function filled(translation: string, values: readonly string[]): string {
  return translation.replace(/\{(\d)\}/g, (_, place: string) => values[Number(place) - 1] ?? "");
}

/** Where the decimal sign is a comma, points may part groups of three: `1.234,5`, `1.234.567`. One point alone is a decimal point. */
function withoutPoints(text: string): string {
  const groups = /(?<![\d.,])\d{1,3}(?:(?:\.\d{3})+(?=,)|(?:\.\d{3}){2,}(?![\d.]))/;
  return text.replace(groups, (number) => number.replaceAll(".", ""));
}

export interface Translation {
  readonly code: LanguageCode;
  /** The decimal sign; groups of three stay parted by a thin space. */
  readonly decimal: "." | ",";
  /** Words people type for units, in small letters, and the spelling the library reads. */
  readonly spellings: Readonly<Record<string, string>>;
  /** The interface. */
  readonly areas: readonly Area[];
  /** What the library and its data say, by its English words; `{2}` in a translation is the second value. */
  readonly library: ReadonlyMap<string, string>;
  /** Told of every text that has no translation and is shown as it is. */
  readonly missing?: (text: string) => void;
}

/** A language that everything is translated into. */
export function translation({ code, decimal, spellings, areas, library, missing = () => {} }: Translation): Language {
  const own = new Map<object, object>(areas);

  const digits = (printed: string) => printed.replace(/(\d)\.(?=\d)/g, `$1${decimal}`);

  function words(text: string): string {
    const ready = library.get(text);
    if (ready !== undefined) return ready;
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
        const ready = library.get(key);
        if (ready !== undefined) return filled(ready, values);
        if (/\p{L}{2}/u.test(key.replaceAll("{}", ""))) missing(key);
        return parts.map((part, index) => part + (values[index] ?? "")).join("");
      },
    });
  }

  return {
    code,
    texts: <T extends object>(english: T) => (own.get(english) as T | undefined) ?? english,
    say: (text, view = "mm") => (typeof text === "string" ? words(text) : sentence(text, view)),
    digits,
    path: (english) => pathIn(code, english),
    toEnglish: { lang: "en", hreflang: "en" },
    typed: (text) => {
      const point = decimal === "," ? withoutPoints(text) : text;
      return point.replace(/\p{L}+(?=[.\s]*$)/u, (word) => spellings[word.toLowerCase()] ?? word);
    },
  };
}
