/** Names the plan's values in addresses. */
export const owner = "plan";

/** Where the last plan is kept on this device, as the query of its address. */
const shelf = "flat-to-formed:last-plan";

/** The query of the last plan; undefined where there is none, or storage is switched off. */
export function lastPlanQuery(): string | undefined {
  try {
    return localStorage.getItem(shelf) ?? undefined;
  } catch {
    return undefined;
  }
}

export function hasLastPlan(): boolean {
  return lastPlanQuery() !== undefined;
}

export function keepLastPlan(query: string): void {
  try {
    localStorage.setItem(shelf, query);
  } catch {
    // Storage is off or full; the address still holds everything.
  }
}
