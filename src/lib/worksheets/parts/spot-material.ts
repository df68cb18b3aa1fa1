import type { Material } from "../../catalogue.ts";
import { InputError } from "../../input-error.ts";
import { thickestFold } from "../../joining/seams.ts";
import { aluminiumSpot } from "../../joining/trade-schedules.ts";
import { otherJoints, weldPair } from "../../joining/weld-pair.ts";
import { amount, mm, type Phrase, say } from "../../quantity/phrase.ts";
import type { Handoff } from "../../worksheet.ts";
import { typedLength } from "./typed-length.ts";

/** Two sheets of one metal that someone wants to join. */
export interface Sheets {
  readonly material: Material;
  /** mm */
  readonly thickness: number;
  /** mm */
  readonly otherThickness: number;
}

/** Calculators for a joint that needs no welding, filled in with the sheets; `more` goes to the rivets too. */
export function joinOtherwise({ material, thickness, otherThickness }: Sheets, more: Record<string, string> = {}): Handoff[] {
  const thicker = Math.max(thickness, otherThickness);
  const folds = thicker <= thickestFold && weldPair(material, material).instead.includes("folded-seam");
  return [
    {
      to: "rivet-joint",
      label: "Rivet it instead",
      raw: { material: material.id, thicknessA: typedLength(thickness), thicknessB: typedLength(otherThickness), ...more },
    },
    {
      to: "seam-allowance",
      label: folds ? "Fold a seam instead" : "Lap to allow for rivets",
      raw: { kind: folds ? "grooved" : "lap", thickness: typedLength(thicker) },
    },
  ];
}

function insteadWords({ instead }: { readonly instead: readonly (keyof typeof otherJoints)[] }): string {
  const words = instead.map((joint) => otherJoints[joint]);
  return words.join(", ").replace(/, ([^,]*)$/, " or $1");
}

/** What this sheet would ask for, where that is known. */
function wouldNeed({ material, thickness, otherThickness }: Sheets): Phrase {
  if (material.family !== "aluminium") return [];
  const { thickness: row, current, force, time } = aluminiumSpot(Math.min(thickness, otherThickness));
  return say` Two sheets of ${mm(row)} would take ${amount(current, "current")} and ${amount(force, "force")} for ${amount(time, "time")}.`;
}

/**
 * Refuses a metal that a small welder for steel cannot spot weld, and says what to do instead.
 * @throws InputError at the material, with the calculators that can help
 */
export function requireWeldable(sheets: Sheets, more: Record<string, string> = {}): void {
  const { material } = sheets;
  const pair = weldPair(material, material);
  if (pair.verdict !== "no") return;
  const [reason] = pair.reasons;
  throw new InputError(
    "material",
    material.id,
    say`Material must be carbon steel or stainless steel for this welder; it is ${material.name}. ${reason?.text ?? ""}${wouldNeed(sheets)} Use ${insteadWords(pair)} instead.`,
    joinOtherwise(sheets, more),
  );
}
