import { readdirSync } from "node:fs";
import { join } from "node:path";
import { projectFolder } from "../catalogue/load.ts";
import { worksheetsInSpanish } from "../texts/es/worksheets.ts";
import { pageIn } from "./page-in.ts";

const written = ["/", "/safety/"];

/** Pages in Markdown, by their files: `bending/index.mdx` is `/bending/`. */
function markdownPages(): string[] {
  const folder = join(projectFolder(), "src/content/techniques-es");
  return readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".mdx"))
    .map((file) => `/${file.replaceAll("\\", "/").replace(/(?:\/?index)?\.mdx$/, "")}/`);
}

/** Paths of the English pages that there are in Spanish too: pages below `src/pages/es`, pages in Markdown, calculators alone. */
export function pagesInSpanish(): ReadonlySet<string> {
  return new Set([
    ...written.filter((path) => pageIn("src/pages/es", path)),
    ...markdownPages(),
    ...worksheetsInSpanish.map((id) => `/embed/${id}/`),
  ]);
}
