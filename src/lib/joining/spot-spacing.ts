import type { Formula, FormulaSymbol } from "../formula.ts";
import { checkRange } from "../inputs.ts";
import { toBase } from "../quantity/units.ts";
import { governing, weldDiameter } from "./symbols.ts";
import { buttonFactors, weldButton } from "./weld-button.ts";

/** Spots nearer than this share the current whatever the sheet: 1/2 in. */
export const leastSpotPitch = toBase(0.5, "length", "in");
/** Thicknesses between spots: least, and where the first spot hardly takes current from the next. */
export const pitchFactors = { least: 10, better: 20 } as const;
/** Weld diameters between spots and to the edge, for a joint that carries load. */
export const jointFactors = { pitch: 3, widestPitch: 8, edge: 2, widestEdge: 6 } as const;

const pitch = { label: "Pitch of the spots", symbol: "p", tex: "p", quantity: "length", fineness: "setting" } as const;
const edge = { label: "Spot to edge", symbol: "e", tex: "e", quantity: "length", fineness: "setting" } as const;

export const spotPitchFormula: Formula = {
  id: "spot-pitch",
  name: "Least pitch of the spots",
  result: "pitch",
  expression: String.raw`\max\left(${pitchFactors.least}\cdot\v{governing},\ ${leastSpotPitch}\right)`,
  symbols: { governing, pitch },
};

/**
 * Distance between spots.
 *
 * @param weld.governing - t [mm], the thinner sheet; 0.25 to 6.35
 * @param weld.factor - thicknesses, one of `pitchFactors`
 * @returns p [mm] = the larger of so many thicknesses and 12.7 mm
 * @throws InputError for a thickness outside its range
 * @remarks Source: design text of a metalforming association, unattributed copy (read, weak): 0.6 in for 0.060 in.
 * @example spotPitch({ governing: 1.524, factor: pitchFactors.least }); // 15.24
 */
export function spotPitch(weld: { readonly governing: number; readonly factor: number }): number {
  checkRange("governing", governing, weld.governing);
  return Math.max(weld.factor * weld.governing, leastSpotPitch);
}

export const jointPitchFormula: Formula = {
  id: "spot-joint-pitch",
  name: "Least pitch of the spots of a joint",
  result: "pitch",
  expression: String.raw`\max\left(${pitchFactors.least}\cdot\v{governing},\ ${leastSpotPitch},\ ${jointFactors.pitch}\cdot\v{diameter}\right)`,
  symbols: { governing, diameter: weldDiameter, pitch },
};

export const spotEdgeFormula: Formula = {
  id: "spot-edge",
  name: "Least distance of a spot from the edge",
  result: "edge",
  expression: String.raw`${jointFactors.edge}\cdot\v{diameter}`,
  symbols: { diameter: weldDiameter, edge },
};

export const spotLapFormula: Formula = {
  id: "spot-lap",
  name: "Lap of the sheets",
  result: "lap",
  expression: String.raw`2\cdot\v{edge}`,
  symbols: {
    edge,
    lap: { label: "Lap", symbol: "w", tex: "w", quantity: "length", fineness: "setting" } satisfies FormulaSymbol,
  },
};

/** Where the spots of a loaded joint go, all in mm. */
export interface JointSpacing {
  readonly pitch: number;
  readonly widestPitch: number;
  readonly edge: number;
  readonly widestEdge: number;
}

/**
 * Least and largest distances of the spots of a joint that carries load.
 *
 * @param thickness - t [mm], the thinner sheet; 0.25 to 6.35
 * @returns pitch from the larger of `spotPitch` and 3 d, up to 8 d; edge in the direction of the load from 2 d to 6 d, with d = 5√t
 * @throws InputError for a thickness outside its range
 * @remarks Source: EN 1993-1-3, 8.4 (memory), and `spotPitch`.
 */
export function jointSpacing(thickness: number): JointSpacing {
  const diameter = weldButton({ governing: thickness, factor: buttonFactors.target });
  return {
    pitch: Math.max(spotPitch({ governing: thickness, factor: pitchFactors.least }), jointFactors.pitch * diameter),
    widestPitch: jointFactors.widestPitch * diameter,
    edge: jointFactors.edge * diameter,
    widestEdge: jointFactors.widestEdge * diameter,
  };
}
