import type { Formula, FormulaInput } from "../formula.ts";
import { InputError } from "../input-error.ts";
import { checkRanges, exactly } from "../inputs.ts";
import { atLeast, say } from "../quantity/phrase.ts";
import { sheet } from "./symbols.ts";

const size = { quantity: "length", fineness: "setting" } as const;

export const tubeDiameter = {
  ...size,
  label: "Diameter",
  symbol: "D",
  tex: "D",
  min: 1,
  max: 5000,
} as const satisfies FormulaInput;

export const arcAngle = {
  label: "Arc",
  symbol: "A",
  tex: "A",
  quantity: "angle",
  min: 0,
  max: 360,
  aboveMin: true,
} as const satisfies FormulaInput;

export const seamAllowance = {
  ...size,
  label: "Seam",
  symbol: "s",
  tex: "s",
  min: 0,
  max: 500,
} as const satisfies FormulaInput;

/** Inside radius over thickness below which the middle of the thickness is no longer neutral (from memory). */
export const leastRatio = 5;

export const measuredFaces = { inside: "inside", outside: "outside" } as const;
export type MeasuredFace = keyof typeof measuredFaces;

const middle = { ...size, label: "Diameter at mid-thickness", symbol: "Dm", tex: "D_m" } as const;

function middleFormula(face: MeasuredFace, sign: string): Formula {
  return {
    id: `middle-diameter-${face}`,
    name: "Diameter at mid-thickness",
    result: "middle",
    expression: String.raw`\v{diameter} ${sign} \v{thickness}`,
    symbols: { diameter: tubeDiameter, thickness: sheet, middle },
  };
}

/** By the face the diameter is measured at. */
export const middleFormulas: Readonly<Record<MeasuredFace, Formula>> = {
  inside: middleFormula("inside", "+"),
  outside: middleFormula("outside", "-"),
};

/**
 * Diameter in the middle of the thickness, where the sheet neither stretches nor shrinks.
 *
 * @param tube.diameter - D [mm]; 1 to 5000
 * @param tube.thickness - T [mm]; 0.1 to 13
 * @param tube.measured - face at which D is measured
 * @returns Dm [mm] = D + T inside, D − T outside
 * @throws InputError for a value outside its range, or an outside diameter that leaves no hole
 * @remarks Source: geometry; Cyclopedia of Drawing (read).
 * @example middleDiameter({ diameter: 150, thickness: 1, measured: "inside" }); // 151
 */
export function middleDiameter(tube: {
  readonly diameter: number;
  readonly thickness: number;
  readonly measured: MeasuredFace;
}): number {
  checkRanges({ diameter: tubeDiameter, thickness: sheet }, tube);
  if (tube.measured === "inside") return tube.diameter + tube.thickness;
  if (!(tube.diameter > 2 * tube.thickness))
    throw new InputError(
      "diameter",
      tube.diameter,
      say`Outside diameter must be above ${atLeast(2 * tube.thickness)}, twice the thickness; it is ${exactly(tube.diameter, "length")}.`,
    );
  return tube.diameter - tube.thickness;
}

export const rolledBlankFormula: Formula = {
  id: "rolled-blank",
  name: "Blank length",
  result: "blank",
  expression: String.raw`\frac{\v{arc}}{360}\,\pi\cdot\v{middle} + \v{seam}`,
  symbols: {
    arc: arcAngle,
    middle,
    seam: seamAllowance,
    blank: { ...size, label: "Blank length", symbol: "L", tex: "L" },
  },
};

/**
 * Length of the blank for a rolled cylinder or part of one.
 *
 * @param curve.middle - Dm [mm], of `middleDiameter`
 * @param curve.arc - A [deg]; above 0 to 360
 * @param curve.seam - s [mm], all that the seam takes, both edges together; 0 to 500
 * @returns L [mm] = A/360 π Dm + s
 * @throws InputError for an arc or a seam outside its range
 * @remarks The middle of the thickness keeps its length: right when the inside radius is five thicknesses or more (from memory).
 *   Source: Cyclopedia of Drawing, L = π (Di + T) (read).
 * @example rolledBlank({ middle: 151, arc: 360, seam: 0 }); // 474.38
 */
export function rolledBlank(curve: { readonly middle: number; readonly arc: number; readonly seam: number }): number {
  checkRanges({ arc: arcAngle, seam: seamAllowance }, curve);
  return (curve.arc / 360) * Math.PI * curve.middle + curve.seam;
}

/** Thicknesses that shops of a century ago added to the inside circumference, beside the 3.1416 of theory. */
export const shopAllowances = [0, 3, 7] as const;
