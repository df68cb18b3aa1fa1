import type { Language } from "./language.ts";

/** The language of the page that is open, where it is not English: it is fetched, English comes with what needs it. Browser only. */
export async function foreignLanguage(): Promise<Language | undefined> {
  return document.documentElement.lang === "es" ? (await import("./es/in-browser.ts")).default : undefined;
}

/** The texts of an area in the language of the page that is open. Browser only. */
export async function pageTexts<T extends object>(area: T): Promise<T> {
  return (await foreignLanguage())?.texts(area) ?? area;
}
