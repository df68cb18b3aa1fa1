import { rm } from "node:fs/promises";
import { join } from "node:path";
import { close, createIndex } from "pagefind";
import type { BuiltPage } from "./pages.ts";

/** Files for search boxes we do not use. */
const unused = ["pagefind-ui", "pagefind-component-ui", "pagefind-modular-ui", "pagefind-highlight"].flatMap((name) => [
  `${name}.js`,
  `${name}.css`,
]);

function stopOn(errors: readonly string[], what: string): void {
  if (errors.length > 0) throw new Error(`Search index, ${what}: ${errors.join("; ")}`);
}

/** Writes the search index of the pages that have a `data-pagefind-body`. @returns how many these are */
export async function writeSearchIndex(folder: string, pages: readonly BuiltPage[]): Promise<number> {
  const searched = pages.filter((page) => page.hasSearchText);
  if (searched.length === 0) return 0;
  try {
    // The visual part of an equation is a heap of single letters; its MathML reads in order.
    const { errors, index } = await createIndex({ excludeSelectors: [".katex-html"] });
    stopOn(errors, "start");
    if (!index) throw new Error("Search index: it did not start");
    for (const { file, html } of searched) stopOn((await index.addHTMLFile({ sourcePath: file, content: html })).errors, file);
    stopOn((await index.writeFiles({ outputPath: join(folder, "pagefind") })).errors, "writing");
  } finally {
    await close();
  }
  for (const file of unused) await rm(join(folder, "pagefind", file), { force: true });
  return searched.length;
}
