/** A, B, … Z, AA, AB, …: the letter of a piece, by its place in the list counted from 0. */
export function letterOf(index: number): string {
  const last = String.fromCharCode(65 + (index % 26));
  return index < 26 ? last : letterOf(Math.floor(index / 26) - 1) + last;
}

/** Ids of plates as one reads them: `1 to 4, 6, 7.1 to 7.3`. */
export function idsText(ids: readonly string[], to: string): string {
  const parts: string[] = [];
  let begin = 0;
  const split = (id: string) => {
    const [number = ""] = /\d+$/.exec(id) ?? [];
    return [id.slice(0, id.length - number.length), Number(number)] as const;
  };
  ids.forEach((id, index) => {
    const [stem, number] = split(id);
    const next = ids[index + 1];
    if (next !== undefined) {
      const [nextStem, nextNumber] = split(next);
      if (nextStem === stem && nextNumber === number + 1) return;
    }
    const first = ids[begin] as string;
    parts.push(index === begin ? id : index === begin + 1 ? `${first}, ${id}` : `${first} ${to} ${id}`);
    begin = index + 1;
  });
  return parts.join(", ");
}
