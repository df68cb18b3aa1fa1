import type { Formula, FormulaInput, FormulaSymbol } from "../formula.ts";
import { checkRanges } from "../inputs.ts";

export const circleDiameter = {
  label: "Diameter of the hole circle",
  symbol: "D",
  tex: "D",
  quantity: "length",
  fineness: "setting",
  min: 0.1,
  max: 5000,
} as const satisfies FormulaInput;

export const holeCount = {
  label: "Number of holes",
  symbol: "N",
  tex: "N",
  quantity: "count",
  min: 2,
  max: 360,
} as const satisfies FormulaInput;

export const startAngle = {
  label: "Angle of the first hole",
  symbol: "α",
  tex: String.raw`\alpha`,
  quantity: "angle",
  min: -360,
  max: 360,
} as const satisfies FormulaInput;

const coordinate = { quantity: "length", fineness: "setting", min: -10_000, max: 10_000 } as const;
export const centreX = {
  ...coordinate,
  label: "Centre, from the left edge",
  symbol: "x₀",
  tex: "x_0",
} as const satisfies FormulaInput;
export const centreY = {
  ...coordinate,
  label: "Centre, from the lower edge",
  symbol: "y₀",
  tex: "y_0",
} as const satisfies FormulaInput;

const holeNumber = { label: "Number of the hole", symbol: "P", tex: "P", quantity: "count" } as const;
const holeAngle = { label: "Angle of the hole", symbol: "θ", tex: String.raw`\theta`, quantity: "angle" } as const;
const place = { quantity: "length", fineness: "setting" } as const;
const holeX = { ...place, label: "Hole, from the left edge", symbol: "x", tex: "x" } as const satisfies FormulaSymbol;
const holeY = { ...place, label: "Hole, from the lower edge", symbol: "y", tex: "y" } as const satisfies FormulaSymbol;
const chordSymbol = { ...place, label: "Chord", symbol: "c", tex: "c" } as const satisfies FormulaSymbol;

export const holeAngleFormula: Formula = {
  id: "hole-circle-angle",
  name: "Angle of a hole",
  result: "angle",
  expression: String.raw`\v{start} + \left(\v{hole} - 1\right)\frac{360^\circ}{\v{count}}`,
  symbols: { start: startAngle, hole: holeNumber, count: holeCount, angle: holeAngle },
};

export const holeXFormula: Formula = {
  id: "hole-circle-x",
  name: "Place of that hole, from the left edge",
  result: "x",
  expression: String.raw`\v{centreX} + \frac{\v{diameter}}{2}\cos\v{angle}`,
  symbols: { centreX, diameter: circleDiameter, angle: holeAngle, x: holeX },
};

export const holeYFormula: Formula = {
  id: "hole-circle-y",
  name: "Place of that hole, from the lower edge",
  result: "y",
  expression: String.raw`\v{centreY} + \frac{\v{diameter}}{2}\sin\v{angle}`,
  symbols: { centreY, diameter: circleDiameter, angle: holeAngle, y: holeY },
};

export interface CircleHole {
  /** From the first direction, anticlockwise [deg], 0 to below 360 */
  readonly angle: number;
  /** [mm] */
  readonly x: number;
  /** [mm] */
  readonly y: number;
}

/** Cosine of an angle [deg], without the dust that π leaves at the quarter turns. */
function cosine(angle: number): number {
  const turned = ((angle % 360) + 360) % 360;
  if (turned === 90 || turned === 270) return 0;
  return Math.cos((turned * Math.PI) / 180);
}

/**
 * Centres of holes spaced evenly round a circle.
 *
 * @param circle.diameter - D [mm], of the circle through the centres; 0.1 to 5000
 * @param circle.count - N; 2 to 360
 * @param circle.startAngle - α [deg] of the first hole, from pointing right, anticlockwise; −360 to 360
 * @param circle.centreX - x₀ [mm], to the right; −10 000 to 10 000
 * @param circle.centreY - y₀ [mm], upwards; −10 000 to 10 000
 * @returns one centre a hole, anticlockwise
 * @throws InputError for a value outside its range
 * @remarks Source: X = R cos((P − 1) 360/N), Y = R sin((P − 1) 360/N), workshop note on hole circles (read).
 * @example holeCircle({ diameter: 100, count: 5, startAngle: 0, centreX: 0, centreY: 0 })[1]; // { angle: 72, x: 15.451, y: 47.553 }
 */
export function holeCircle(circle: {
  readonly diameter: number;
  readonly count: number;
  readonly startAngle: number;
  readonly centreX: number;
  readonly centreY: number;
}): readonly CircleHole[] {
  checkRanges({ diameter: circleDiameter, count: holeCount, startAngle, centreX, centreY }, circle);
  const radius = circle.diameter / 2;
  return Array.from({ length: circle.count }, (_, index) => {
    const turned = circle.startAngle + (index * 360) / circle.count;
    const angle = ((turned % 360) + 360) % 360;
    return { angle, x: circle.centreX + radius * cosine(angle), y: circle.centreY + radius * cosine(angle - 90) };
  });
}

export const chordFormula: Formula = {
  id: "hole-circle-chord",
  name: "Straight distance between neighbours",
  result: "chord",
  expression: String.raw`\v{diameter}\cdot\sin\frac{180^\circ}{\v{count}}`,
  symbols: { diameter: circleDiameter, count: holeCount, chord: chordSymbol },
};

/**
 * Straight distance between two holes of an evenly spaced circle: what dividers are set to.
 *
 * @param circle.diameter - D [mm]; 0.1 to 5000
 * @param circle.count - N; 2 to 360
 * @param steps - how many spaces apart the holes are; 1, neighbours, when left out
 * @returns c [mm] = D sin(steps · 180°/N)
 * @throws InputError for a value outside its range
 * @remarks Source: chordal spacing table, c/D = sin(180°/N) for N = 3 to 45 (read); it misprints N = 15.
 * @example chord({ diameter: 70, count: 6 }); // 35
 */
export function chord(circle: { readonly diameter: number; readonly count: number }, steps = 1): number {
  checkRanges({ diameter: circleDiameter, count: holeCount }, circle);
  return circle.diameter * Math.sin((steps * Math.PI) / circle.count);
}
