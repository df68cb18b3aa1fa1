import type { Formula } from "../formula.ts";
import { checkRange } from "../inputs.ts";
import { punchForceSymbol } from "./symbols.ts";

/** Share of the punching force that pulls the sheet off the punch again: the high worked example. */
export const strippingShare = 0.2;

/** Every share met, so that nobody takes one of them for a law. */
export const strippingShares = [
  { name: "Low end of the remembered band", share: 0.03, source: "common-practice", seen: "memory" },
  { name: "Lecture notes, rule", share: 0.1, source: "press-tool-module", seen: "read" },
  { name: "Lecture notes, worked example", share: strippingShare, source: "press-tool-module", seen: "read" },
] as const;

export const strippingForceFormula: Formula = {
  id: "stripping-force",
  name: "Stripping force",
  result: "strippingForce",
  expression: String.raw`${strippingShare}\cdot\v{force}`,
  symbols: {
    force: punchForceSymbol,
    strippingForce: { label: "Stripping force", symbol: "Fs", tex: "F_s", quantity: "force" },
  },
};

/**
 * Force that strips the sheet off the punch on its way back.
 *
 * @param force - F [N], punching force; 0 to 100 000 000
 * @param share - of the punching force; 0.03 to 0.2 are met
 * @returns Fs [N]
 * @throws InputError for a force outside its range
 * @remarks Depends on the finish of the punch, the clearance and the metal; only ever an estimate.
 *   Source: press-tool lecture module, 10 % as a rule and 20 % in its worked example (read); 3 to 20 % from memory.
 * @example strippingForce(100_800); // 20160
 */
export function strippingForce(force: number, share: number = strippingShare): number {
  checkRange("force", punchForceSymbol, force);
  return share * force;
}
