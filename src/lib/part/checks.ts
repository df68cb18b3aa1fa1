import type { Catalogue } from "../catalogue.ts";
import { attachmentChecks } from "./attachment-checks.ts";
import { bendChecks } from "./bend-checks.ts";
import type { Check } from "./check.ts";
import { cornerChecks } from "./corner-checks.ts";
import type { FlatLayout } from "./flatten.ts";
import { holeChecks } from "./hole-checks.ts";
import { jointChecks } from "./joint-checks.ts";
import { cutChecks, stockChecks } from "./stock-checks.ts";

/**
 * Holds the part against the material, the drawing rules and this shop's machines and stock.
 * @returns every rule that applies, kept or broken
 */
export function checkPart(layout: FlatLayout, catalogue: Catalogue): readonly Check[] {
  return [
    ...bendChecks(layout, catalogue),
    ...cornerChecks(layout),
    ...holeChecks(layout, catalogue),
    ...jointChecks(layout, catalogue),
    ...attachmentChecks(layout, catalogue),
    ...cutChecks(layout, catalogue),
    ...stockChecks(layout, catalogue),
  ];
}
