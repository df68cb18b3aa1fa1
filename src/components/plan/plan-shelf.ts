import { type Found, find, isGroup, keep, type Store, shelfVersion } from "../shop/shelf.ts";

/** Plans kept on this device, each as the query of its address: what opens from a link opens from here. */

export const planShelf = "flat-to-formed.plans";

export interface KeptPlan {
  readonly name: string;
  /** On the clock of the device, `2026-11-25T14:05`. */
  readonly kept: string;
  readonly query: string;
}

interface KeptPlans {
  readonly version: typeof shelfVersion;
  readonly plans: readonly KeptPlan[];
}

const isPlan = (value: unknown): value is KeptPlan =>
  isGroup(value) && typeof value.name === "string" && typeof value.kept === "string" && typeof value.query === "string";

/** The plans kept, the newest first, or why there are none to be had. */
export function findPlans(store: Store | undefined): Found<KeptPlans> {
  return find(store, planShelf, ({ plans }) => Array.isArray(plans) && plans.every(isPlan));
}

/** Keeps a list of plans; false where storage is off or full. */
export function keepPlans(store: Store | undefined, plans: readonly KeptPlan[]): boolean {
  return keep(store, planShelf, plans.length === 0 ? undefined : { version: shelfVersion, plans });
}

/** The list with a plan put first; one of the same name is replaced, as saving a file does. */
export function withPlan(plans: readonly KeptPlan[], plan: KeptPlan): readonly KeptPlan[] {
  return [plan, ...plans.filter(({ name }) => name !== plan.name)];
}
