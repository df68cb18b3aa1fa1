import { sitePath } from "../site/url.ts";
import { english } from "./english.ts";
import spanish from "./es/at-build.ts";
import type { Language, LanguageCode } from "./language.ts";
import { codeOfPath } from "./paths.ts";

export const languages: Readonly<Record<LanguageCode, Language>> = { en: english, es: spanish };

/** The language of the page that is being made: `languageOf(Astro.url)`. At build only. */
export function languageOf({ pathname }: Pick<URL, "pathname">): Language {
  return languages[codeOfPath(sitePath(pathname))];
}

/** The texts of an area on the page that is being made: `const texts = textsOf(Astro.url, shell)`. At build only. */
export function textsOf<T extends object>(page: Pick<URL, "pathname">, area: T): T {
  return languageOf(page).texts(area);
}
