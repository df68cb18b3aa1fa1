import type { Formula } from "../formula.ts";
import { InputError } from "../input-error.ts";
import { exactly } from "../inputs.ts";
import { atMost, type Phrase, say } from "../quantity/phrase.ts";
import { bendAllowance, bendAllowanceFormula } from "./bend-allowance.ts";
import { dinAllowanceFormula, dinDeduction, dinFactor, dinFactorFormula, dinIgnoresBend, dinTableStart } from "./din-6935.ts";
import {
  faaAllowance,
  faaAllowanceFormula,
  groupAllowance,
  groupAllowanceFormula,
  type Hardness,
  hardnessGroups,
  navyAllowance,
  steppedKFactor,
  thumbDeduction,
} from "./handbook-allowances.ts";
import { setback } from "./setback.ts";
import { type LegEnd, usualLegEnd } from "./symbols.ts";

/** The methods a bend can be worked out by; ids are part of addresses and part files. */
export const bendMethods = {
  "neutral-line": "Neutral line with a K-factor",
  "faa-handbook": "Aircraft maintenance handbook (FAA)",
  "din-6935": "DIN 6935",
  "soft-medium-hard": "Soft, medium, hard (machinists' handbook)",
  measured: "Measured in this shop",
} as const;
export type BendMethod = keyof typeof bendMethods;

export interface BendSize {
  /** A [deg], turned through */
  readonly angle: number;
  /** R [mm], inside */
  readonly radius: number;
  /** T [mm] */
  readonly thickness: number;
}

export interface MethodChoice {
  readonly method: BendMethod;
  readonly kFactor: number;
  readonly hardness: Hardness;
  /** BD [mm] for `legTo`; needed by `measured` only. */
  readonly deduction?: number | undefined;
}

export interface MethodAnswer {
  /** BA [mm] */
  readonly allowance: number;
  readonly steps: readonly { readonly formula: Formula; readonly values: Readonly<Record<string, number>> }[];
  readonly source: string;
}

/**
 * Bend allowance by the method chosen, with its working.
 *
 * @param legTo - what a measured deduction was measured to
 * @throws InputError when the method cannot take this bend, or `measured` has no deduction
 */
export function allowanceBy(choice: MethodChoice, bend: BendSize, legTo: LegEnd): MethodAnswer {
  switch (choice.method) {
    case "neutral-line": {
      const allowance = bendAllowance({ ...bend, kFactor: choice.kFactor });
      return {
        allowance,
        steps: [{ formula: bendAllowanceFormula, values: { ...bend, kFactor: choice.kFactor, allowance } }],
        source: "navedtra-14119",
      };
    }
    case "faa-handbook": {
      const allowance = faaAllowance(bend);
      return {
        allowance,
        steps: [{ formula: faaAllowanceFormula, values: { ...bend, allowance } }],
        source: "faa-h-8083-31",
      };
    }
    case "soft-medium-hard": {
      const allowance = groupAllowance({ ...bend, hardness: choice.hardness });
      const { factor } = hardnessGroups[choice.hardness];
      return {
        allowance,
        steps: [{ formula: groupAllowanceFormula, values: { ...bend, factor, allowance } }],
        source: "machinerys-handbook-31",
      };
    }
    case "din-6935": {
      const factor = dinFactor(bend);
      // Both forms of the standard take the arc off twice the leg's reach, so the arc can be had back from either.
      const end = usualLegEnd(bend.angle);
      const allowance = 2 * setback({ ...bend, legTo: end }) - dinDeduction({ ...bend, factor });
      const arc = { formula: dinAllowanceFormula, values: { ...bend, factor, allowance } };
      const shown = bend.radius / bend.thickness > 5 ? [arc] : [{ formula: dinFactorFormula, values: { ...bend, factor } }, arc];
      return { allowance, steps: dinIgnoresBend(bend.angle) ? [] : shown, source: "din-6935" };
    }
    case "measured": {
      if (choice.deduction === undefined)
        throw new InputError(
          "deduction",
          "",
          say`Bend deduction is not entered. The method “measured in this shop” needs the deduction found with practice pieces.`,
        );
      const allowance = 2 * setback({ ...bend, legTo }) - choice.deduction;
      if (!(allowance > 0))
        throw new InputError(
          "deduction",
          choice.deduction,
          say`Bend deduction must be below twice the setback, ${atMost(2 * setback({ ...bend, legTo }))}, or nothing is left for the bend itself; it is ${exactly(choice.deduction, "length")}.`,
        );
      return { allowance, steps: [], source: "practice-pieces" };
    }
  }
}

export interface Published {
  readonly name: string;
  readonly source: string;
  /** BA [mm], or the reason why this method has none for this bend. */
  readonly allowance: number | Phrase;
  /** Of which method of `bendMethods` this row is the answer. */
  readonly method?: BendMethod;
  readonly hardness?: Hardness;
}

function attempt(compute: () => number): number | Phrase {
  try {
    return compute();
  } catch (error) {
    if (error instanceof InputError) return error.phrase;
    throw error;
  }
}

/** What every published method in the handbook says for one bend, side by side; they do not agree. */
export function publishedAllowances(bend: BendSize): readonly Published[] {
  const mid = (kFactor: number) => attempt(() => bendAllowance({ ...bend, kFactor }));
  return [
    {
      name: "Soft group, c = 0.55",
      source: "machinerys-handbook-31",
      allowance: attempt(() => groupAllowance({ ...bend, hardness: "soft" })),
      method: "soft-medium-hard",
      hardness: "soft",
    },
    {
      name: "Medium group, c = 0.64",
      source: "machinerys-handbook-31",
      allowance: attempt(() => groupAllowance({ ...bend, hardness: "medium" })),
      method: "soft-medium-hard",
      hardness: "medium",
    },
    {
      name: "Hard group, c = 0.71",
      source: "machinerys-handbook-31",
      allowance: attempt(() => groupAllowance({ ...bend, hardness: "hard" })),
      method: "soft-medium-hard",
      hardness: "hard",
    },
    {
      name: "DIN 6935",
      source: "din-6935",
      allowance: attempt(() => allowanceBy({ method: "din-6935", kFactor: 0, hardness: "soft" }, bend, "apex").allowance),
      method: "din-6935",
    },
    {
      name: "K 0.33 below R = 2T, 0.50 from there",
      source: "groover",
      allowance: attempt(() => bendAllowance({ ...bend, kFactor: steppedKFactor(bend) })),
    },
    {
      name: "Aircraft handbook (FAA)",
      source: "faa-h-8083-31",
      allowance: attempt(() => faaAllowance(bend)),
      method: "faa-handbook",
    },
    { name: "Naval aviation manual", source: "navedtra-14315", allowance: attempt(() => navyAllowance(bend)) },
    { name: "Middle of the thickness, K = 0.5", source: "navedtra-14119", allowance: mid(0.5) },
    {
      name: "Rule of thumb, ½R + 1½T off",
      source: "trade-tables-book",
      allowance:
        bend.angle === 90
          ? attempt(() => 2 * setback({ ...bend, legTo: "apex" }) - thumbDeduction(bend))
          : say`given for 90° only`,
    },
  ];
}

export interface MethodLimit {
  /** `caution`: the bend is outside what the source covers. */
  readonly level: "note" | "caution";
  readonly phrase: Phrase;
}

/** What is to be said about using a method for a bend. */
export function methodLimits(method: BendMethod, bend: BendSize): readonly MethodLimit[] {
  const ratio = bend.radius / bend.thickness;
  const limits: MethodLimit[] = [];
  if (method === "din-6935" && ratio < dinTableStart)
    limits.push({
      level: "caution",
      phrase: say`The factor table of DIN 6935 starts at R/T = ${dinTableStart}; here it is ${ratio.toFixed(2)}, so the formula is carried on beyond its table.`,
    });
  if (method === "din-6935" && dinIgnoresBend(bend.angle))
    limits.push({ level: "note", phrase: say`DIN 6935 sets the compensation to nothing for bends of less than 15°.` });
  if (method === "din-6935")
    limits.push({
      level: "note",
      phrase: say`DIN 6935 rounds the developed length up to a full millimetre; the length here is not rounded.`,
    });
  if (method === "faa-handbook")
    limits.push({
      level: "note",
      phrase: say`The constants were made for aluminium aircraft sheet; the handbook's own worked channel rounds them to a hundredth of an inch.`,
    });
  if (method === "soft-medium-hard")
    limits.push({ level: "note", phrase: say`The rule is meant for bends made with simple tools or at the bench.` });
  return limits;
}
