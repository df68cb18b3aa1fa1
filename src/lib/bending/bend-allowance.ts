import type { Formula } from "../formula.ts";
import { checkRanges } from "../inputs.ts";
import { allowance, bendAngle, insideRadius, kFactor, thickness } from "./symbols.ts";

const inputs = { angle: bendAngle, radius: insideRadius, thickness, kFactor };

export const bendAllowanceFormula: Formula = {
  id: "bend-allowance",
  name: "Bend allowance along the neutral line",
  result: "allowance",
  expression: String.raw`\frac{\pi}{180^\circ}\,\v{angle}\,\left(\v{radius} + \v{kFactor}\cdot\v{thickness}\right)`,
  symbols: { ...inputs, allowance },
};

/**
 * Flat length one bend uses up: the arc of the neutral line, K·T outside the inside face.
 *
 * @param bend.angle - A [deg], turned through from flat; above 0 to 180
 * @param bend.radius - R [mm], inside, of the finished bend; 0 to 1000
 * @param bend.thickness - T [mm], measured; 0.1 to 13
 * @param bend.kFactor - K [1], depth of the neutral line over T; 0 to 1
 * @returns BA [mm]
 * @throws InputError for a value outside its range
 * @remarks Geometry of an arc; which K is right is a matter of metal, tool and radius. Source: NAVEDTRA 14119 p. 13-42 uses K = 0.5;
 *   NAVEDTRA 14315 ch. 13 and FAA-H-8083-31 fix it near 0.447.
 * @example bendAllowance({ angle: 90, radius: 3, thickness: 1, kFactor: 0.4 }); // 5.3407
 */
export function bendAllowance(bend: { angle: number; radius: number; thickness: number; kFactor: number }): number {
  checkRanges(inputs, bend);
  return (Math.PI / 180) * bend.angle * (bend.radius + bend.kFactor * bend.thickness);
}

export const kFromAllowanceFormula: Formula = {
  id: "k-from-allowance",
  name: "K-factor that an allowance stands for",
  result: "kFactor",
  expression: String.raw`\frac{1}{\v{thickness}}\left(\frac{180^\circ}{\pi}\cdot\frac{\v{allowance}}{\v{angle}} - \v{radius}\right)`,
  symbols: { angle: bendAngle, radius: insideRadius, thickness, allowance, kFactor },
};

/**
 * The K-factor an allowance stands for: `bendAllowance` turned round.
 *
 * @param bend.allowance - BA [mm], finite
 * @param bend.angle - A [deg], turned through; above 0 to 180
 * @param bend.radius - R [mm]; 0 to 1000
 * @param bend.thickness - T [mm]; 0.1 to 13
 * @returns K [1]; outside 0 to 1 when the allowance cannot belong to a sound bend of this size
 * @throws InputError for a value outside its range
 * @remarks Source: algebra.
 */
export function kFromAllowance(bend: { allowance: number; angle: number; radius: number; thickness: number }): number {
  checkRanges({ angle: bendAngle, radius: insideRadius, thickness }, bend);
  return (((180 / Math.PI) * bend.allowance) / bend.angle - bend.radius) / bend.thickness;
}
