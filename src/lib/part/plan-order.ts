import type { Catalogue } from "../catalogue.ts";
import { say } from "../quantity/phrase.ts";
import { type Check, check, shopRule } from "./check.ts";
import { mostOperations } from "./order/check.ts";
import type { FormingJob } from "./order/job.ts";
import { formingJob } from "./order/job-of.ts";
import { type BendOrder, bendOrder } from "./order/order.ts";
import type { Plan } from "./plan.ts";
import { stepsFor } from "./steps.ts";

/**
 * What the brake has to do for a plan.
 * @returns the job; undefined where nothing is bent, or more than is searched for
 */
export function orderJob(plan: Plan): FormingJob | undefined {
  const job = formingJob(plan.layout);
  const folds = job.chains.reduce(
    (sum, { bends, startEdge, endEdge }) => sum + bends.length + (startEdge ? 1 : 0) + (endEdge ? 1 : 0),
    0,
  );
  return folds > 0 && folds <= mostOperations ? job : undefined;
}

function orderCheck(order: BendOrder, folds: number): Check | undefined {
  if ("stopped" in order) return undefined;
  const rule = {
    rule: "bend-order",
    label: "Bends that one order can make",
    limit: folds,
    side: "least",
    quantity: "count",
    ...shopRule,
  } as const;
  return "trapped" in order
    ? check({ ...rule, value: order.trapped.made.length, why: order.trapped.why })
    : check({ ...rule, value: order.steps.length, why: say`The part clears bed, leaf, fingers and beam at every bend.` });
}

/**
 * A plan with the order of its bends: the list, its check, and the step that says it.
 * @param order - found for `orderJob(plan)`
 */
export function orderedPlan(plan: Plan, order: BendOrder): Plan {
  const folds = plan.layout.chains.reduce(
    (sum, { bends, startEdge, endEdge }) => sum + bends.length + (startEdge ? 1 : 0) + (endEdge ? 1 : 0),
    0,
  );
  const found = orderCheck(order, folds);
  const ordered = { ...plan, order };
  return { ...ordered, checks: found ? [found, ...plan.checks] : plan.checks, steps: stepsFor(ordered) };
}

/**
 * Searches the order of a plan's bends at once.
 * @param options.shouldStop - asked now and then; the plan stays without an order when it says so
 */
export function withOrder(
  plan: Plan,
  catalogue: Pick<Catalogue, "shop">,
  options: { readonly shouldStop?: () => boolean } = {},
): Plan {
  const job = orderJob(plan);
  return job ? orderedPlan(plan, bendOrder(job, catalogue.shop.brake, options)) : plan;
}
