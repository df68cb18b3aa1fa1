import type { Language, LanguageCode } from "./language.ts";

/** What a page needs of its language: the words of the handbook's pages and calculators, or of the shop's screen. */
type Part = "pages" | "screen";

/** English comes with what needs it; every other language is fetched on its own pages only, and no more of it than they say. */
const fetched: Readonly<Record<Exclude<LanguageCode, "en">, Readonly<Record<Part, () => Promise<{ default: Language }>>>>> = {
  es: { pages: () => import("./es/in-browser.ts"), screen: () => import("./es/on-screen.ts") },
};

/** The language of the page that is open, where it is not English. Browser only. */
export async function foreignLanguage(part: Part = "pages"): Promise<Language | undefined> {
  const { lang } = document.documentElement;
  return Object.hasOwn(fetched, lang) ? (await fetched[lang as keyof typeof fetched][part]()).default : undefined;
}

/** The texts of an area in the language of the page that is open. Browser only. */
export async function pageTexts<T extends object>(area: T): Promise<T> {
  return (await foreignLanguage())?.texts(area) ?? area;
}
