/** What divides the cells of a pasted list: tabs, semicolons or commas, whichever comes first in that order. */
export function dividerOf(text: string): string | undefined {
  return ["\t", ";", ","].find((each) => text.includes(each));
}

/** Cells of one line of a pasted list; quotes as in CSV. */
export function cellsOf(line: string, divider = dividerOf(line)): string[] {
  const cells: string[] = [];
  let cell = "";
  let quoted = false;
  for (let at = 0; at < line.length; at++) {
    const sign = line[at] as string;
    if (quoted && sign === '"' && line[at + 1] === '"') {
      cell += '"';
      at++;
    } else if (sign === '"' && (quoted || cell.trim() === "")) quoted = !quoted;
    else if (sign === divider && !quoted) {
      cells.push(cell.trim());
      cell = "";
    } else cell += sign;
  }
  return [...cells, cell.trim()];
}
