/** A size along one direction, and how often it may be used. */
export interface Step {
  readonly size: number;
  readonly times: number;
}

/**
 * Every place, from an edge, where a cut can be needed: sums of sizes up to `room`, from small to large, beginning with 0.
 * Parts can always be pushed together until each cut lies at such a sum, so no better plan has a cut elsewhere.
 *
 * @returns undefined when there are more than `most` of them
 * @remarks Source: the canonical or normal patterns of Herz 1972 and Christofides and Whitlock 1977; from memory.
 */
export function cutPositions(steps: readonly Step[], room: number, most: number): number[] | undefined {
  const sums = new Set([0]);
  // Large steps first: they add few sums, and a step that is a multiple of a later one then costs nothing.
  for (const { size, times } of [...steps].sort((a, b) => b.size - a.size)) {
    let from = [...sums];
    for (let used = 0; used < times && from.length > 0; used += 1) {
      const next: number[] = [];
      for (const sum of from) {
        const further = sum + size;
        if (further > room || sums.has(further)) continue;
        sums.add(further);
        next.push(further);
      }
      if (sums.size > most) return undefined;
      from = next;
    }
  }
  return [...sums].sort((a, b) => a - b);
}
