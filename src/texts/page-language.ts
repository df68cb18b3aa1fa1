import type { Language } from "./language.ts";

/** English comes with what needs it; every other language is fetched on its own pages only. */
const fetched: Readonly<Record<string, () => Promise<{ default: Language }>>> = {
  es: () => import("./es/in-browser.ts"),
};

/** The language of the page that is open, where it is not English. Browser only. */
export async function foreignLanguage(): Promise<Language | undefined> {
  return (await fetched[document.documentElement.lang]?.())?.default;
}

/** The texts of an area in the language of the page that is open. Browser only. */
export async function pageTexts<T extends object>(area: T): Promise<T> {
  return (await foreignLanguage())?.texts(area) ?? area;
}
