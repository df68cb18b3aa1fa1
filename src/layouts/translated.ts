import { getCollection } from "astro:content";
import { pageIn } from "../site/page-in.ts";
import { sitePath } from "../site/url.ts";
import { worksheetsInSpanish } from "../texts/es/worksheets.ts";
import { type Language, type LanguageCode, languageCodes } from "../texts/language.ts";
import { englishPath, pathIn } from "../texts/paths.ts";

/** Paths of the English pages that there are in Spanish too: pages below `src/pages/es`, pages in Markdown, calculators alone. */
export async function translatedPaths(): Promise<ReadonlySet<string>> {
  const written = ["/", "/safety/"].filter((path) => pageIn("src/pages/es", path));
  const entries = await getCollection("techniquesInSpanish");
  return new Set([...written, ...entries.map(({ id }) => `/${id}/`), ...worksheetsInSpanish.map((id) => `/embed/${id}/`)]);
}

/** Path of a page in a language where there is one, otherwise its English path. */
export function inLanguage(language: Language, path: string, translated: ReadonlySet<string>): string {
  return translated.has(path) ? language.path(path) : path;
}

/** The versions of a page in all its languages; none where it is in one only. */
export async function languageVersions({ pathname }: Pick<URL, "pathname">): Promise<{ code: LanguageCode; path: string }[]> {
  const path = englishPath(sitePath(pathname));
  if (!(await translatedPaths()).has(path)) return [];
  return languageCodes.map((code) => ({ code, path: pathIn(code, path) }));
}
