import { cutOrder, type SheetCuts } from "./cut-order.ts";
import type { Layout } from "./fewest-sheets.ts";
import type { SheetJob } from "./model.ts";

/** Sheets that are cut alike, with their strokes. */
export interface CutSheets {
  /** Number of the sheet in the job. */
  readonly sheet: number;
  readonly times: number;
  readonly cuts: SheetCuts;
}

/** The strokes of every layout of a plan. */
export function cutSheets(job: SheetJob, layouts: readonly Layout[]): CutSheets[] {
  return layouts.map(({ sheet, times, tree }) => {
    const stock = job.sheets[sheet];
    if (!stock) throw new Error(`the plan uses sheet ${sheet}, and the job has ${job.sheets.length}`);
    return { sheet, times, cuts: cutOrder(tree, stock, job) };
  });
}

/** Share of the area of the raw sheets that becomes pieces [1]. */
export function usedShare(job: SheetJob, sheets: readonly CutSheets[]): number {
  let pieces = 0;
  let whole = 0;
  for (const { sheet, times, cuts } of sheets) {
    const { width, length } = job.sheets[sheet] as SheetJob["sheets"][number];
    whole += times * width * length;
    pieces += times * cuts.pieces.reduce((sum, part) => sum + part.width * part.length, 0);
  }
  return pieces / whole;
}

/** The end of a computation that goes step by step. */
export function finish<Step, Result>(steps: Generator<Step, Result>): Result {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}
