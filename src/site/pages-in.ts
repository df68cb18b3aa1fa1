import { existsSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { projectFolder } from "../catalogue/load.ts";
import { worksheetsInSpanish } from "../texts/es/worksheets.ts";
import type { LanguageCode } from "../texts/language.ts";
import { pageIn } from "./page-in.ts";

/** Calculators that have a page of their own in a language. */
const worksheetsIn: Readonly<Record<Exclude<LanguageCode, "en">, readonly string[]>> = { es: worksheetsInSpanish };

/** Pages that are no Markdown and may be translated. */
const written = ["/", "/safety/", "/display/"];

/** Pages in Markdown, by their files: `bending/index.mdx` is `/bending/`. A language may have none yet. */
function markdownPages(code: LanguageCode): string[] {
  const folder = join(projectFolder(), `src/content/techniques-${code}`);
  if (!existsSync(folder)) return [];
  return readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".mdx"))
    .map((file) => `/${file.replaceAll("\\", "/").replace(/(?:\/?index)?\.mdx$/, "")}/`);
}

/** English paths of the pages that there are in another language too; none for English. */
export function pagesIn(code: LanguageCode): ReadonlySet<string> {
  if (code === "en") return new Set();
  return new Set([
    ...written.filter((path) => pageIn(`src/pages/${code}`, path)),
    ...markdownPages(code),
    ...worksheetsIn[code].map((id) => `/embed/${id}/`),
  ]);
}
