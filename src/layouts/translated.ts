import { pagesInSpanish } from "../site/pages-in-spanish.ts";
import { sitePath } from "../site/url.ts";
import { type Language, type LanguageCode, languageCodes } from "../texts/language.ts";
import { englishPath, pathIn } from "../texts/paths.ts";

/** Path of a page in a language where there is one, otherwise its English path. */
export function inLanguage(language: Language, path: string): string {
  return language.code !== "en" && pagesInSpanish().has(path) ? language.path(path) : path;
}

/** The versions of a page in all its languages; none where it is in one only. */
export function languageVersions({ pathname }: Pick<URL, "pathname">): { code: LanguageCode; path: string }[] {
  const path = englishPath(sitePath(pathname));
  if (!pagesInSpanish().has(path)) return [];
  return languageCodes.map((code) => ({ code, path: pathIn(code, path) }));
}
