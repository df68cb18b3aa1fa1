import { english, type Language } from "./language.ts";

/** The language of the page that is open. English comes with the page, every other one is fetched. Browser only. */
export async function pageLanguage(): Promise<Language> {
  return document.documentElement.lang === "es" ? (await import("./es/in-browser.ts")).default : english;
}
