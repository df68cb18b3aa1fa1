import type { Formula, FormulaInput, FormulaSymbol } from "../formula.ts";
import { InputError } from "../input-error.ts";
import { checkRanges, exactly } from "../inputs.ts";
import { atMost, say } from "../quantity/phrase.ts";
import { sheet } from "./symbols.ts";

/** A larger arc is not swung on a bench [mm]; common practice. */
export const longestSwing = 2000;

const size = { quantity: "length", fineness: "setting" } as const;

export const largeDiameter = {
  ...size,
  label: "Large diameter",
  symbol: "D",
  tex: "D",
  min: 1,
  max: 5000,
} as const satisfies FormulaInput;

export const smallDiameter = {
  ...size,
  label: "Small diameter",
  symbol: "d",
  tex: "d",
  min: 0,
  max: 5000,
} as const satisfies FormulaInput;

export const coneHeight = {
  ...size,
  label: "Height",
  symbol: "H",
  tex: "H",
  min: 0,
  max: 5000,
  aboveMin: true,
} as const satisfies FormulaInput;

const slantSymbol = { ...size, label: "Slant length", symbol: "l", tex: "l" } as const satisfies FormulaSymbol;
const outerSymbol = { ...size, label: "Outer radius", symbol: "R1", tex: "R_1" } as const satisfies FormulaSymbol;
const innerSymbol = { ...size, label: "Inner radius", symbol: "R2", tex: "R_2" } as const satisfies FormulaSymbol;
const sectorSymbol = {
  label: "Angle of the sector",
  symbol: "A",
  tex: "A",
  quantity: "angle",
  decimals: 2,
} as const satisfies FormulaSymbol;

const diameters = { largeDiameter, smallDiameter };

export const slantFormula: Formula = {
  id: "cone-slant",
  name: "Slant length",
  result: "slant",
  expression: String.raw`\sqrt{\left(\frac{\v{largeDiameter} - \v{smallDiameter}}{2}\right)^2 + \v{height}^2}`,
  symbols: { ...diameters, height: coneHeight, slant: slantSymbol },
};

export const outerRadiusFormula: Formula = {
  id: "cone-outer-radius",
  name: "Outer radius of the blank",
  result: "outerRadius",
  expression: String.raw`\frac{\v{slant}\cdot\v{largeDiameter}}{\v{largeDiameter} - \v{smallDiameter}}`,
  symbols: { ...diameters, slant: slantSymbol, outerRadius: outerSymbol },
};

export const innerRadiusFormula: Formula = {
  id: "cone-inner-radius",
  name: "Inner radius of the blank",
  result: "innerRadius",
  expression: String.raw`\v{outerRadius} - \v{slant}`,
  symbols: { slant: slantSymbol, outerRadius: outerSymbol, innerRadius: innerSymbol },
};

export const sectorAngleFormula: Formula = {
  id: "cone-sector",
  name: "Angle of the sector",
  result: "sectorAngle",
  expression: String.raw`\frac{180\cdot\v{largeDiameter}}{\v{outerRadius}}`,
  symbols: { largeDiameter, outerRadius: outerSymbol, sectorAngle: sectorSymbol },
};

export const chordFormula: Formula = {
  id: "cone-chord",
  name: "Chord of the outer arc",
  result: "chord",
  expression: String.raw`2\cdot\v{outerRadius}\cdot\sin\frac{\v{sectorAngle}}{2}`,
  symbols: {
    outerRadius: outerSymbol,
    sectorAngle: sectorSymbol,
    chord: { ...size, label: "Chord", symbol: "c", tex: "c" },
  },
};

/** A cone or frustum; both diameters at mid-thickness, the height between them along the axis [mm]. */
export interface Cone {
  readonly largeDiameter: number;
  /** 0: the cone ends in a point */
  readonly smallDiameter: number;
  readonly height: number;
}

/** Its blank: a sector of a ring. Lengths in mm. */
export interface ConeBlank {
  readonly slant: number;
  readonly outerRadius: number;
  readonly innerRadius: number;
  /** degrees */
  readonly sectorAngle: number;
  /** between the ends of the outer arc, straight across the gap when the sector is more than half a ring */
  readonly chord: number;
  /** mm² */
  readonly area: number;
  /** The rectangle it is cut from, one side along the chord. */
  readonly width: number;
  readonly depth: number;
}

/**
 * Blank of a cone or frustum.
 *
 * @param cone.largeDiameter - D [mm], at mid-thickness; 1 to 5000
 * @param cone.smallDiameter - d [mm], at mid-thickness; 0 to below D
 * @param cone.height - H [mm], along the axis; above 0 to 5000
 * @returns R1 = l D/(D − d), R2 = R1 − l, A = 180 D/R1, chord 2 R1 sin(A/2); l = √(((D − d)/2)² + H²)
 * @throws InputError for a value outside its range, for a cylinder, and for diameters the wrong way round
 * @remarks Without a seam. Source: geometry; sector rules read in Longfield 1921 and two other works.
 * @example coneBlank({ largeDiameter: 6, smallDiameter: 3, height: 3 }); // R1 6.708, R2 3.354, A 161.0°
 */
export function coneBlank(cone: Cone): ConeBlank {
  checkRanges({ ...diameters, height: coneHeight }, cone);
  const { largeDiameter: large, smallDiameter: small, height } = cone;
  if (large === small)
    throw new InputError(
      "smallDiameter",
      small,
      say`Small diameter must be from 0 to below the large one, ${atMost(large)}; it is ${exactly(small, "length")}. With both alike this is a cylinder: take the calculator “Blank of a rolled cylinder” (rolled-blank).`,
    );
  if (large < small)
    throw new InputError(
      "smallDiameter",
      small,
      say`Small diameter must be from 0 to below the large one, ${atMost(large)}; it is ${exactly(small, "length")}. Exchange the two.`,
    );
  const slant = Math.hypot((large - small) / 2, height);
  const outerRadius = (slant * large) / (large - small);
  // R1 − l, without its loss of digits on a long slender cone.
  const innerRadius = (slant * small) / (large - small);
  const sectorAngle = (180 * large) / outerRadius;
  const half = (Math.PI * sectorAngle) / 360;
  const chord = 2 * outerRadius * Math.sin(half);
  const wide = sectorAngle > 180;
  return {
    slant,
    outerRadius,
    innerRadius,
    sectorAngle,
    chord,
    area: (Math.PI * (large + small) * slant) / 2,
    width: wide ? 2 * outerRadius : chord,
    depth: outerRadius - (wide ? outerRadius : innerRadius) * Math.cos(half),
  };
}

/**
 * How far a face of the cone stands out from mid-thickness, measured across the diameter at an end.
 *
 * @param cone - D, d and H [mm]
 * @param thickness - T [mm]; 0.1 to 13
 * @returns [mm] = T cos α, α half the apex angle: outside diameter = diameter at mid-thickness + this, inside = − this
 * @throws InputError as `coneBlank`
 * @remarks On the lines where the middle of the thickness ends; edges are cut square to the sheet. Source: plane geometry.
 */
export function faceOffset(cone: Cone, thickness: number): number {
  checkRanges({ thickness: sheet }, { thickness });
  return (thickness * cone.height) / coneBlank(cone).slant;
}
