import type { ChoiceInput, QuantityInput } from "../inputs.ts";
import { type Hardness, hardnessGroups } from "./handbook-allowances.ts";
import { type BendMethod, bendMethods } from "./methods.ts";
import { kFactor } from "./symbols.ts";

const hardnessChoices = Object.fromEntries(
  Object.entries(hardnessGroups).map(([id, { factor, metals }]) => [id, `${id}, ${factor}: ${metals}`]),
) as Record<Hardness, string>;

const firstMethod = "neutral-line" satisfies BendMethod;

/** The fields in which a form asks how a bend is to be worked out. */
export const methodInputs = {
  method: { kind: "choice", label: "Method", choices: bendMethods, default: firstMethod },
  kFactor: { ...kFactor, kind: "quantity", default: "0.45" },
  hardness: { kind: "choice", label: "Hardness", choices: hardnessChoices, default: "medium" },
} as const satisfies Record<string, ChoiceInput | QuantityInput>;

/** The method a form's text stands for; nothing entered is the first one. */
export function usesMethod(typed: unknown, method: BendMethod): boolean {
  return (typed ?? firstMethod) === method;
}
