/** Names the job's values in addresses. */
export const owner = "sheet";

/** Where the last list is kept on this device, as the query of its address. */
const shelf = "flat-to-formed:last-sheet";

/** The query of the last list; undefined where there is none, or storage is switched off. */
export function lastListQuery(): string | undefined {
  try {
    return localStorage.getItem(shelf) ?? undefined;
  } catch {
    return undefined;
  }
}

export function keepLastList(query: string): void {
  try {
    localStorage.setItem(shelf, query);
  } catch {
    // Storage is off or full; the address still holds everything.
  }
}
