import { InputError } from "../../lib/input-error.ts";
import type { Phrase } from "../../lib/quantity/phrase.ts";
import { type CutPlan, cutPlan } from "../../lib/sheet/cut-plan.ts";
import type { Goal, SheetJob } from "../../lib/sheet/model.ts";

/**
 * Plans the cutting of sheets away from the page, so that typing never waits for it. Tells the best plan so far while it goes on;
 * the page ends it when something is typed, or when the best so far is good enough for the reader.
 */

export interface CutTask {
  readonly job: SheetJob;
  readonly goal: Goal;
}

export type CutReport =
  | { readonly kind: "progress"; readonly doing: string; readonly plan?: CutPlan }
  | { readonly kind: "done"; readonly plan: CutPlan }
  | { readonly kind: "problem"; readonly field: string; readonly value: string; readonly phrase: Phrase };

/** Sums compared before a plan is left as it is: some seconds on a desk. Whoever has seen enough stops it sooner. */
const pageWork = 2e9;
/** Between two reports [ms]. */
const between = 150;

const report = (message: CutReport) => postMessage(message);

addEventListener("message", ({ data: { job, goal } }: MessageEvent<CutTask>) => {
  try {
    const steps = cutPlan(job, goal, { work: pageWork });
    let told = "";
    let next = 0;
    for (;;) {
      const step = steps.next();
      if (step.done) {
        report({ kind: "done", plan: step.value });
        return;
      }
      const { doing, plan, mark } = step.value;
      const now = performance.now();
      if (now < next) continue;
      next = now + between;
      report({ kind: "progress", doing, ...(plan && mark !== told ? { plan: plan() } : {}) });
      if (plan) told = mark;
    }
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    report({ kind: "problem", field: error.field, value: error.value, phrase: error.phrase });
  }
});
