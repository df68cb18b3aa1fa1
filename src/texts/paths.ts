import { type LanguageCode, languageCodes } from "./language.ts";

const [first, ...others] = languageCodes;

/** Code of the language of a page, from its path below the root of the site: `/es/bending/` is Spanish. */
export function codeOfPath(path: string): LanguageCode {
  return others.find((code) => path.startsWith(`/${code}/`)) ?? first;
}

/** Path of the English page that a page is a version of. */
export function englishPath(path: string): string {
  const code = codeOfPath(path);
  return code === first ? path : path.slice(code.length + 1);
}

/** Path of a page in a language, from the path of its English one. */
export function pathIn(code: LanguageCode, english: string): string {
  return code === first ? english : `/${code}${english}`;
}
