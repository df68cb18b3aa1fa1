import { fewestSheets, type SheetPlan } from "./fewest-sheets.ts";
import { type FillPlan, fillOneSheet } from "./fill-one-sheet.ts";
import type { Goal, SheetJob } from "./model.ts";
import { type CutSheets, cutSheets, usedShare } from "./sheet-plan.ts";

/** What a plan is judged by: number of sheets, area of the sheets [m²], area of the pieces [mm²], or their worth. */
export type Measure = "sheets" | "sheet-area" | "piece-area" | "worth";

/** A finished plan, whatever its goal. */
export interface CutPlan {
  readonly goal: Goal;
  readonly sheets: readonly CutSheets[];
  /** Sheets in all. */
  readonly count: number;
  /** How many of each piece come out. */
  readonly pieces: readonly number[];
  /** Share of the area of the sheets that becomes pieces [1]. */
  readonly used: number;
  readonly measure: Measure;
  readonly found: number;
  /** No plan does better. */
  readonly bound: number;
  readonly proved: boolean;
  /** How far it may be from the best, as a share of the bound [1]; 0 when it is proved. */
  readonly gap: number;
  /** How often the stop is set, sheets that are cut alike counted once. */
  readonly stopSettings: number;
}

export interface PlanProgress {
  /** What is being tried. */
  readonly doing: string;
  /** The best so far, where there is one; the same function while it is the same plan. */
  readonly plan?: () => CutPlan;
  /** What identifies it: the same text, the same plan and bound. */
  readonly mark: string;
}

function made(job: SheetJob, goal: Goal, measure: Measure, plan: SheetPlan | FillPlan): CutPlan {
  const layouts = "layouts" in plan ? plan.layouts : [{ sheet: plan.sheet, times: 1, tree: plan.tree }];
  const sheets = cutSheets(job, layouts);
  const found = "layouts" in plan ? plan.cost : plan.value;
  const { bound, proved } = plan;
  const pieces = job.pieces.map((_, piece) =>
    sheets.reduce((sum, { times, cuts }) => sum + times * cuts.pieces.filter((part) => part.piece === piece).length, 0),
  );
  return {
    goal,
    sheets,
    count: sheets.reduce((sum, { times }) => sum + times, 0),
    pieces,
    used: usedShare(job, sheets),
    measure,
    found,
    bound,
    proved,
    gap: proved ? 0 : Math.abs(found - bound) / bound,
    stopSettings: sheets.reduce((sum, { cuts }) => sum + cuts.stopSettings, 0),
  };
}

/**
 * Plans a job step by step, so that it can be shown and stopped at any time; yields the best plan so far.
 *
 * @param effort.work - sums compared after which to be content; about 3e8 a second on a desk, a tenth of it on a phone
 * @throws InputError for a job that cannot be worked with
 */
export function* cutPlan(job: SheetJob, goal: Goal, effort: { readonly work?: number } = {}): Generator<PlanProgress, CutPlan> {
  const several = job.sheets.filter(({ count }) => count !== 0).length > 1;
  const measure: Measure =
    goal === "fewest-sheets"
      ? several
        ? "sheet-area"
        : "sheets"
      : job.pieces.some(({ value }) => value !== undefined)
        ? "worth"
        : "piece-area";
  const steps: Generator<{ readonly doing: string; readonly plan?: SheetPlan | FillPlan }, SheetPlan | FillPlan> =
    goal === "fewest-sheets" ? fewestSheets(job, effort) : fillOneSheet(job, effort);
  for (;;) {
    const step = steps.next();
    if (step.done) return made(job, goal, measure, step.value);
    const { doing, plan } = step.value;
    if (!plan) yield { doing, mark: "" };
    else {
      const found = "layouts" in plan ? plan.cost : plan.value;
      yield { doing, mark: `${found} ${plan.bound}`, plan: () => made(job, goal, measure, plan) };
    }
  }
}
