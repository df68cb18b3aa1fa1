import type { LengthView } from "../lib/quantity/format.ts";
import type { Phrase } from "../lib/quantity/phrase.ts";

/** Languages of the interface, by their code as in the `lang` of a page; the first is the one everything is written in. */
export const languageCodes = ["en", "es"] as const;
export type LanguageCode = (typeof languageCodes)[number];

/**
 * How everything on a page is said. What is written in English in a component's texts or in the library comes in,
 * what the reader sees comes out; the library itself knows one language only.
 */
export interface Language {
  readonly code: LanguageCode;
  /** The texts of an area: its English ones, from `src/texts/en`, give those of this language. */
  texts<T extends object>(english: T): T;
  /** A label, a help, a choice, a unit, a sentence or a message of the library, its amounts in the view asked for. */
  say(text: string | Phrase, view?: LengthView): string;
  /** A number as the library prints it, with or without its unit, in the figures of this language. */
  digits(printed: string): string;
  /** Path of a page in this language, from the path of its English one. */
  path(english: string): string;
  /** What a link to a page that is only in English carries. */
  readonly toEnglish: { readonly lang?: "en"; readonly hreflang?: "en" };
  /** What somebody typed as a quantity, in a spelling that the library reads. */
  typed(text: string): string;
}
