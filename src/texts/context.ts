import { createContext } from "preact";
import { useContext } from "preact/hooks";
import { english } from "./english.ts";
import type { Language } from "./language.ts";

/** The language of everything below; English where nothing says otherwise. */
export const LanguageContext = createContext<Language>(english);

export function useLanguage(): Language {
  return useContext(LanguageContext);
}

/** The texts of an area in the language of the page: `const texts = useTexts(calculator)`, `calculator` being from `src/texts/en`. */
export function useTexts<T extends object>(area: T): T {
  return useContext(LanguageContext).texts(area);
}
