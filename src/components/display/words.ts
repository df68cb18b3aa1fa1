/** Texts cut to what is read at one glance from across the room. */

/** Most letters of a piece: five lines of the display's large letters. */
export const longestPiece = 190;

/** Whole sentences of a text, put together while they stay within one glance; a longer sentence stands alone. */
export function pieces(text: string, most: number = longestPiece): string[] {
  const found: string[] = [];
  for (const sentence of text.trim().split(/(?<=[.!?])\s+/)) {
    const last = found.at(-1);
    if (last !== undefined && last.length + 1 + sentence.length <= most) found[found.length - 1] = `${last} ${sentence}`;
    else found.push(sentence);
  }
  return found;
}

/** The name of a metal without what stands in brackets behind it. */
export function shortName(name: string): string {
  return name.replace(/\s*\([^)]*\)$/, "");
}
