import { pagesIn } from "../site/pages-in.ts";
import { sitePath } from "../site/url.ts";
import { type Language, type LanguageCode, languageCodes } from "../texts/language.ts";
import { englishPath, pathIn } from "../texts/paths.ts";

/** Path of a page in a language where there is one, otherwise its English path. */
export function inLanguage(language: Language, path: string): string {
  return pagesIn(language.code).has(path) ? language.path(path) : path;
}

/** The versions of a page in all its languages, English first; none where it is in English only. */
export function languageVersions({ pathname }: Pick<URL, "pathname">): { code: LanguageCode; path: string }[] {
  const english = englishPath(sitePath(pathname));
  const codes = languageCodes.filter((code) => code === "en" || pagesIn(code).has(english));
  return codes.length > 1 ? codes.map((code) => ({ code, path: pathIn(code, english) })) : [];
}
