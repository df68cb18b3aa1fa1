import type { Strip } from "../bending/springback.ts";
import type { Formula, FormulaSymbol } from "../formula.ts";
import { meanUncertainty } from "../stats/mean-uncertainty.ts";
import { mean, sampleDeviation } from "../stats/sample.ts";
import { radiusLeft } from "./loaded-radius.ts";
import { finishedRadius } from "./symbols.ts";
import { type RearRoll, radiusAtRise } from "./three-roll.ts";

/** A piece rolled and measured: rise of the rear roll from flat contact, inside radius it came out with [mm]. */
export interface TrialPiece {
  readonly rise: number;
  readonly radius: number;
}

/** What one piece says. Curvature is 1/R [1/mm]. */
export interface TrialFinding {
  readonly loadedRadius: number;
  /** [mm]; undefined where the calculation says flat */
  readonly calculated: number | undefined;
  /** Measured curvature less the calculated one [1/mm]; above 0: curved more than calculated */
  readonly offset: number;
}

/**
 * How far a rolled piece is from what was calculated for its setting.
 *
 * @param job - T [mm], Y and E [N/mm²]; D3 and x [mm]
 * @param piece - h [mm] and the measured inside radius [mm]
 * @throws InputError for a rise these rolls cannot make
 * @remarks Compared by curvature, because springback, slack in the screws and a wrong zero each shift the curvature by nearly the same
 *   amount at neighbouring settings, but the radius by very different ones.
 */
export function trialFinding(job: Strip & RearRoll, piece: TrialPiece): TrialFinding {
  const loadedRadius = radiusAtRise({ ...job, rise: piece.rise });
  const calculated = radiusLeft(job, loadedRadius);
  return { loadedRadius, calculated, offset: 1 / piece.radius - (calculated === undefined ? 0 : 1 / calculated) };
}

/** What several pieces say together [1/mm]. */
export interface CurvatureOffset {
  readonly offset: number;
  /** ±, k = 2; undefined for a single piece */
  readonly uncertainty: number | undefined;
}

/**
 * Mean of the offsets of several pieces, with its ±.
 *
 * @param findings - one or more
 * @remarks Source of the ±: JCGM 100 (GUM), as `meanUncertainty`.
 */
export function curvatureOffset(findings: readonly TrialFinding[]): CurvatureOffset {
  const offsets = findings.map(({ offset }) => offset);
  return {
    offset: mean(offsets),
    uncertainty: offsets.length < 2 ? undefined : meanUncertainty({ spread: sampleDeviation(offsets), count: offsets.length }),
  };
}

const offsetSymbol = {
  label: "Curvature beyond the calculated one, per mm",
  symbol: "Δ(1/R)",
  tex: String.raw`\Delta\tfrac{1}{R}`,
  quantity: "ratio",
  decimals: 6,
} as const satisfies FormulaSymbol;

export const aimedRadiusFormula: Formula = {
  id: "aimed-radius",
  name: "Radius to set the rolls for, after the trial pieces",
  result: "aimed",
  expression: String.raw`\frac{1}{\frac{1}{\v{radius}} - \v{offset}}`,
  symbols: {
    radius: finishedRadius,
    offset: offsetSymbol,
    aimed: { ...finishedRadius, label: "Radius to set the rolls for", symbol: "Ra", tex: "R_a" },
  },
};

/**
 * Radius to put into the calculation so that the wanted one comes out of these rolls.
 *
 * @param radius - Rf [mm], wanted; above 0
 * @param offset - [1/mm], of `curvatureOffset`
 * @returns Ra [mm] = 1/(1/Rf − offset); undefined when the pieces curve by more than the wanted curve altogether
 */
export function aimedRadius(radius: number, offset: number): number | undefined {
  const curvature = 1 / radius - offset;
  return curvature > 0 ? 1 / curvature : undefined;
}
