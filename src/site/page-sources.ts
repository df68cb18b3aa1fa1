/**
 * Ids of the sources a page's own text rests on, in the order they come up, then those its front matter adds.
 * The calculators on the page list theirs themselves.
 * @param text - the page as written, with `<Cite id="…" />`
 * @throws Error for an id of the front matter that the text cites anyway
 */
export function pageSources(text: string, added: readonly string[]): string[] {
  const cited = new Set([...text.matchAll(/<Cite\s[^>]*?\bid="([^"]+)"/g)].map((match) => match[1] as string));
  const twice = added.filter((id) => cited.has(id));
  if (twice.length > 0) throw new Error(`The page cites ${twice.join(", ")} in its text; take it out of the front matter`);
  return [...cited, ...added];
}
