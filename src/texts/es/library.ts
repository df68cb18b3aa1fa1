import { bending } from "./library/bending.ts";
import { bendingMore } from "./library/bending-more.ts";
import { inputs } from "./library/inputs.ts";
import { metals } from "./library/metals.ts";
import { units } from "./library/units.ts";

/** Spanish of what the library says on the pages that there are in Spanish, by its English words. */
export const library: ReadonlyMap<string, string> = new Map(
  [bending, bendingMore, inputs, metals, units].flatMap((words) => Object.entries(words)),
);
