import type { Language, LanguageCode } from "./language.ts";

/** What a page needs of its language: the words of the handbook's pages and calculators, or of the shop's screen without and with them. */
type Part = "pages" | "screen" | "screenCalculators";

type Fetched = Readonly<Record<Part, () => Promise<{ default: Language }>>>;

/** English comes with what needs it; every other language is fetched on its own pages only, and no more of it than they say. */
const foreign: Readonly<Record<Exclude<LanguageCode, "en">, Fetched>> = {
  es: {
    pages: () => import("./es/in-browser.ts"),
    screen: () => import("./es/on-screen.ts"),
    screenCalculators: () => import("./es/screen-calculators.ts"),
  },
};
/** By the code that a page has. */
const fetched: Readonly<Partial<Record<string, Fetched>>> = foreign;

/** The language of the page that is open, where it is not English. Browser only. */
export async function foreignLanguage(part: Part = "pages"): Promise<Language | undefined> {
  return (await fetched[document.documentElement.lang]?.[part]())?.default;
}

/** The texts of an area in the language of the page that is open. Browser only. */
export async function pageTexts<T extends object>(area: T): Promise<T> {
  return (await foreignLanguage())?.texts(area) ?? area;
}
