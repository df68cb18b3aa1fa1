import { worksheetById } from "../lib/registry.ts";

/**
 * Ids of all sources a page rests on: those its text cites, those its calculators name, and what its front matter adds.
 * @param text - the page as written, with `<Cite id="…" />` and `<Calculator id="…" />`
 * @throws Error for a calculator there is not, or an id of the front matter that the page names anyway
 */
export function pageSources(text: string, added: readonly string[]): string[] {
  const named = (tag: string) =>
    [...text.matchAll(new RegExp(`<${tag}\\s[^>]*?\\bid="([^"]+)"`, "g"))].map((match) => match[1] as string);
  const calculators = named("Calculator").flatMap((id) => {
    const sheet = worksheetById(id);
    if (!sheet) throw new Error(`There is no calculator “${id}”`);
    return sheet.sources;
  });
  const found = new Set([...named("Cite"), ...calculators]);
  const twice = added.filter((id) => found.has(id));
  if (twice.length > 0)
    throw new Error(`The page names ${twice.join(", ")} in its text or its calculators; take it out of the front matter`);
  return [...found, ...added];
}
