import { phraseText } from "../lib/quantity/phrase.ts";
import type { Language } from "./language.ts";

/** The language that everything is written in: what comes in goes out. */
export const english: Language = {
  code: "en",
  texts: (own) => own,
  say: (text, view) => (typeof text === "string" ? text : phraseText(text, view)),
  digits: (printed) => printed,
  path: (own) => own,
  toEnglish: {},
  typed: (text) => text,
};
