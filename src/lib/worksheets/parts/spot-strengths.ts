import type { Material } from "../../catalogue.ts";
import { governingThickness, type SheetPair } from "../../joining/governing-thickness.ts";
import { euroSpot, formulaSpotShear, nominalSpotShear, partialFactor } from "../../joining/spot-strength.ts";
import { type ScheduledSpot, scheduledSpot } from "../../joining/trade-schedules.ts";
import type { AnswerTable } from "../../worksheet.ts";

/** What one source says a spot holds, and what kind of number that is. */
interface Strength {
  readonly name: string;
  /** N, before any safety factor of the user's own */
  readonly strength: number;
  readonly source: string;
  readonly note?: string;
  /** A safety factor is in it already, so none is put on top. */
  readonly factored?: boolean;
}

export interface SpotStrengths {
  /** The one that counts as the answer. */
  readonly shown: Strength;
  readonly all: readonly Strength[];
  readonly schedule: ScheduledSpot;
  readonly scheduleSource: string;
}

/** The least that the grade promises where that is known: a design rule is meant for it, not for the middle. */
export function leastTensile({ tensileStrength }: Material): number {
  return tensileStrength.low ?? tensileStrength.value;
}

/**
 * Shear strength of one spot by every source there is. They differ by two to one, because they are different quantities.
 *
 * @param pair - two sheets of a weldable steel [mm]
 * @throws InputError for sheets that cannot be welded together
 */
export function spotStrengths(material: Material, pair: SheetPair): SpotStrengths {
  const governing = governingThickness(pair);
  const tensile = leastTensile(material);
  const euro = euroSpot({
    thickness: governing,
    otherThickness: Math.max(pair.thickness, pair.otherThickness),
    tensile,
  }).strength;
  const scheduleSource = material.family === "stainless" ? "stainless-schedule-reprint" : "spot-schedule-reprint";
  const schedule = scheduledSpot(material.family === "stainless" ? "stainless" : "low-carbon", { governing, tensile });
  const scheduled: Strength = {
    name: "Least of the trade schedule",
    strength: schedule.shear,
    source: scheduleSource,
    note: "provisional",
  };
  const design: Strength[] = [
    {
      name: "Design rule, before its partial factor",
      strength: euro,
      source: "en-1993-1-3",
      note: `from memory, with the least tensile strength, ${Math.round(tensile)} N/mm²`,
    },
    {
      name: `Design rule, divided by ${partialFactor}`,
      strength: euro / partialFactor,
      source: "en-1993-1-3",
      note: "from memory; has its safety in it, the loads get their own",
      factored: true,
    },
  ];
  if (material.family === "stainless") return { shown: scheduled, all: [scheduled, ...design], schedule, scheduleSource };
  const nominal: Strength = { name: "Nominal, table", strength: nominalSpotShear(governing), source: "merritt-ricketts" };
  const formula: Strength = {
    name: "Nominal, formula",
    strength: formulaSpotShear(governing),
    source: "aisi-s100",
    note: "from memory; another edition than the table",
  };
  return { shown: nominal, all: [nominal, formula, scheduled, ...design], schedule, scheduleSource };
}

/** The same as a table. @param counts - how many spots each strength makes of a load */
export function strengthTable({ shown, all }: SpotStrengths, counts?: (strength: number) => number): AnswerTable {
  return {
    caption: "Strength of one spot in shear: what each source calls it",
    columns: [
      { label: "Quantity" },
      { label: "One spot", quantity: "force" },
      ...(counts ? [{ label: "Spots for this load", quantity: "count" as const }] : []),
    ],
    rows: all.map((each) => ({
      cells: [each.name, each.strength, ...(counts ? [each.factored ? null : counts(each.strength)] : [])],
      chosen: each === shown,
      source: each.source,
      ...(each.note ? { note: each.note } : {}),
    })),
  };
}
