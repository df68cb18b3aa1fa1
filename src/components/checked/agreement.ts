import type { Tally } from "../../checked/run.ts";
import type { reference } from "../../texts/en/reference.ts";

/** How many checks of a subject agree, in words. */
export function agreement({ agree, run, memory, disputed }: Tally, texts: (typeof reference)["checked"]): string {
  return [
    texts.agree(agree, run - disputed),
    memory > 0 ? texts.fromMemory(memory) : "",
    disputed > 0 ? texts.notCounted(disputed) : "",
  ].join("");
}
