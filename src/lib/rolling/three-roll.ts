import type { Formula, FormulaSymbol } from "../formula.ts";
import { InputError } from "../input-error.ts";
import { checkRange, checkRanges, exactly } from "../inputs.ts";
import { atLeast, atMost, say } from "../quantity/phrase.ts";
import { frontRoll, loadedRadius, rearRoll, riseSymbol, rollSpacing, screwPitch, sheet, turnsSymbol } from "./symbols.ts";

/*
 * Geometry of a pinch roll with a rear roll, from flat contact.
 *
 * Put the origin where the lower face of the sheet lies on the lower front roll, on the pinch line; x runs level to the
 * rear, y up. The pinch holds the sheet level there, so the arc behind it begins level and its centre stands straight
 * above, at height T + Ri: the lower face has the radius Ri + T.
 * The rear roll, radius r = D3/2, presses from below. Flat contact puts its centre at (x, −r); a rise h puts it at
 * (x, h − r). It touches the arc from outside, so its centre is Ri + T + r from the arc's centre. Call that ρ:
 *     x² + (Ri + T + r − h)² = ρ²,  so  (ρ − h)² = ρ² − x²,  and with the lower root  h = ρ − √(ρ² − x²).
 * Turned round: ρ = (x² + h²)/(2h), Ri = ρ − T − r.
 *
 * A pyramid of two outer rolls and a middle one that moves is the same picture twice: x is half the distance of the outer
 * rolls and r their radius, because by symmetry the sheet is level under the middle roll.
 */

const reachSymbol = {
  label: "Centre of the curve to centre of the rear roll",
  symbol: "ρ",
  tex: String.raw`\rho`,
  quantity: "length",
  fineness: "setting",
} as const satisfies FormulaSymbol;

/** The rolls and the sheet between them [mm]. */
export interface RearRoll {
  readonly thickness: number;
  readonly rearRoll: number;
  readonly rollSpacing: number;
}

const rolls = { thickness: sheet, rearRoll, rollSpacing };

export const reachFormula: Formula = {
  id: "rear-roll-reach",
  name: "From the centre of the curve to the centre of the rear roll",
  result: "reach",
  expression: String.raw`\v{loadedRadius} + \v{thickness} + \frac{\v{rearRoll}}{2}`,
  symbols: { loadedRadius, thickness: sheet, rearRoll, reach: reachSymbol },
};

/**
 * Distance from the centre of the curve to the centre of the rear roll.
 *
 * @param curve.loadedRadius - Ri [mm], inside, while the rolls hold the sheet; 0 to 1000
 * @param curve.thickness - T [mm]; 0.1 to 13
 * @param curve.rearRoll - D3 [mm]; 5 to 500
 * @returns ρ [mm]
 * @throws InputError for a value outside its range
 * @remarks Source: plane geometry, derived at the top of this file.
 */
export function reach(curve: { readonly loadedRadius: number; readonly thickness: number; readonly rearRoll: number }): number {
  checkRanges({ loadedRadius, thickness: sheet, rearRoll }, curve);
  return curve.loadedRadius + curve.thickness + curve.rearRoll / 2;
}

export const riseFormula: Formula = {
  id: "rear-roll-rise",
  name: "Rise of the rear roll from flat contact",
  result: "rise",
  expression: String.raw`\v{reach} - \sqrt{\v{reach}^2 - \v{rollSpacing}^2}`,
  symbols: { reach: reachSymbol, rollSpacing, rise: riseSymbol },
};

/**
 * Rise at which the rear roll stands at a distance from the centre of the curve.
 *
 * @param far - ρ [mm]; x or more, without an upper limit
 * @param spacing - x [mm]
 * @returns h [mm] = ρ − √(ρ² − x²), written so that the small difference keeps its digits
 */
export function riseAtReach(far: number, spacing: number): number {
  return spacing ** 2 / (far + Math.sqrt(far ** 2 - spacing ** 2));
}

/**
 * How far the rear roll has to rise from flat contact to hold the sheet at a radius.
 *
 * @param curve.loadedRadius - Ri [mm], inside, while the rolls hold the sheet; 0 to 1000
 * @param curve.thickness - T [mm]; 0.1 to 13
 * @param curve.rearRoll - D3 [mm]; 5 to 500
 * @param curve.rollSpacing - x [mm], level from the pinch line to the centre of the rear roll; 5 to 1000
 * @returns h [mm] = ρ − √(ρ² − x²), ρ = Ri + T + D3/2
 * @throws InputError for a value outside its range, and for a radius so small that the rear roll would pass its centre
 * @remarks One radius from the pinch to the rear roll, level at the pinch. In truth the curve is sharpest at the front roll and
 *   nearly straight at the rear one, so this is a first setting. The rear roll moves straight up. Source: plane geometry,
 *   derived at the top of this file; the literature that refines it was seen in abstract only.
 * @example rearRollRise({ loadedRadius: 75, thickness: 1, rearRoll: 50, rollSpacing: 40 }); // 8.258
 */
export function rearRollRise(curve: RearRoll & { readonly loadedRadius: number }): number {
  checkRange("rollSpacing", rollSpacing, curve.rollSpacing);
  const far = reach(curve);
  if (far < curve.rollSpacing)
    throw new InputError(
      "loadedRadius",
      curve.loadedRadius,
      say`Inside radius between the rolls must be at least ${atLeast(curve.rollSpacing - curve.thickness - curve.rearRoll / 2)}, where the rear roll stands level with the centre of the curve; it is ${exactly(curve.loadedRadius, "length")}.`,
    );
  return riseAtReach(far, curve.rollSpacing);
}

/**
 * Radius at which the rolls hold the sheet after a rise of the rear roll: `rearRollRise` turned round.
 *
 * @param setting.rise - h [mm], from flat contact; above 0, up to x
 * @param setting.thickness - T [mm]; 0.1 to 13
 * @param setting.rearRoll - D3 [mm]; 5 to 500
 * @param setting.rollSpacing - x [mm]; 5 to 1000
 * @returns Ri [mm] = (x² + h²)/(2h) − T − D3/2
 * @throws InputError for a value outside its range, a rise above x, and one that leaves no radius inside the sheet
 * @remarks For a slide that leans, x and h are those of the raised roll. Source: as `rearRollRise`.
 * @example radiusAtRise({ rise: 8.258, thickness: 1, rearRoll: 50, rollSpacing: 40 }); // 75.0
 */
export function radiusAtRise(setting: RearRoll & { readonly rise: number }): number {
  const { rise, thickness: t, rearRoll: diameter, rollSpacing: x } = setting;
  checkRanges({ ...rolls, rise: riseSymbol }, setting);
  const found = (x ** 2 + rise ** 2) / (2 * rise) - t - diameter / 2;
  if (rise > x || found < 0) {
    // The radius falls with the rise up to x, so the largest rise is x or the one at which the radius is 0.
    const largest = x <= t + diameter / 2 ? riseAtReach(t + diameter / 2, x) : x;
    throw new InputError(
      "rise",
      rise,
      say`Rise of the rear roll must be at most ${atMost(largest)}, where the sheet would be wrapped ${largest < x ? "to no radius at all" : "as far as this roll can press it"}; it is ${exactly(rise, "length")}.`,
    );
  }
  return found;
}

/**
 * Tightest inside radius the rolls can hold.
 *
 * @param machine.frontRoll - D1 [mm], of the roll the sheet is wrapped round; 5 to 500
 * @param machine.rearRoll - D3 [mm]; 5 to 500
 * @param machine.rollSpacing - x [mm]; 5 to 1000
 * @param machine.thickness - T [mm]; 0.1 to 13
 * @returns Ri [mm]: D1/2, or x − T − D3/2 where the rear roll reaches the height of the centre first
 * @throws InputError for a value outside its range
 * @remarks Source: plane geometry; a published abstract also puts the smallest diameter just above that of the bending roll (read).
 * @example tightestLoadedRadius({ frontRoll: 50, rearRoll: 50, rollSpacing: 56, thickness: 1 }); // 30
 */
export function tightestLoadedRadius(machine: RearRoll & { readonly frontRoll: number }): number {
  checkRanges({ ...rolls, frontRoll }, machine);
  return Math.max(machine.frontRoll / 2, machine.rollSpacing - machine.thickness - machine.rearRoll / 2);
}

/**
 * Least level distance of the rear roll that keeps it off the lower front roll in flat contact.
 *
 * @param machine.frontRoll - D1 [mm]
 * @param machine.rearRoll - D3 [mm]
 * @returns x [mm] = √(D1 D3): both rolls touch one flat sheet and each other
 * @remarks Source: plane geometry.
 */
export function leastSpacing(machine: { readonly frontRoll: number; readonly rearRoll: number }): number {
  return Math.sqrt(machine.frontRoll * machine.rearRoll);
}

export const flatEndFormula: Formula = {
  id: "flat-end",
  name: "Flat end, about",
  result: "flatEnd",
  expression: String.raw`\left(\v{loadedRadius} + \frac{\v{thickness}}{2}\right)\arcsin\frac{\v{rollSpacing}}{\v{reach}}`,
  symbols: {
    loadedRadius,
    thickness: sheet,
    rollSpacing,
    reach: reachSymbol,
    flatEnd: { label: "Flat end", symbol: "f", tex: "f", quantity: "length" },
  },
};

/**
 * Length at each end of the sheet that stays nearly flat: the stretch between the pinch and where the rear roll touches.
 *
 * @param curve - as for `rearRollRise`
 * @returns f [mm] = (Ri + T/2) arcsin(x/ρ), along the middle of the thickness
 * @throws InputError as `rearRollRise`
 * @remarks The end that has left the pinch, or not yet reached the rear roll, feels no bending. Source: geometry; that the flat is about
 *   this distance is from memory.
 * @example flatEnd({ loadedRadius: 75, thickness: 1, rearRoll: 50, rollSpacing: 40 }); // 30.74
 */
export function flatEnd(curve: RearRoll & { readonly loadedRadius: number }): number {
  checkRange("rollSpacing", rollSpacing, curve.rollSpacing);
  const far = reach(curve);
  return (curve.loadedRadius + curve.thickness / 2) * Math.asin(Math.min(1, curve.rollSpacing / far));
}

export const turnsFormula: Formula = {
  id: "screw-turns",
  name: "Turns of each of the two screws",
  result: "turns",
  expression: String.raw`\frac{\v{rise}}{\v{screwPitch}}`,
  symbols: { rise: riseSymbol, screwPitch, turns: turnsSymbol },
};
