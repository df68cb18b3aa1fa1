import type { Formula } from "../formula.ts";
import { checkRange } from "../inputs.ts";
import { type HoleShape, holeDiameter, holeHeight, holeWidth, perimeterSymbol } from "./symbols.ts";

function perimeterFormula(shape: HoleShape, expression: string, symbols: Formula["symbols"]): Formula {
  return {
    id: `perimeter-${shape}`,
    name: "Length of the cut",
    result: "perimeter",
    expression,
    symbols: { ...symbols, perimeter: perimeterSymbol },
  };
}

/** By shape of the hole. */
export const perimeterFormulas: Readonly<Record<HoleShape, Formula>> = {
  round: perimeterFormula("round", String.raw`\pi\cdot\v{diameter}`, { diameter: holeDiameter }),
  square: perimeterFormula("square", String.raw`4\cdot\v{width}`, { width: holeWidth }),
  rectangle: perimeterFormula("rectangle", String.raw`2\cdot(\v{width} + \v{height})`, { width: holeWidth, height: holeHeight }),
};

/** A hole by its shape: d for a round one, a for a square one, a and b for a rectangle [mm]. Other sizes are not looked at. */
export interface Hole {
  readonly shape: HoleShape;
  readonly diameter: number;
  readonly width: number;
  readonly height: number;
}

/**
 * How much edge a punch cuts at once.
 *
 * @param hole - d, a or b [mm], those its shape has; 0.3 to 200
 * @returns L [mm]
 * @throws InputError for a value outside its range
 * @remarks Sharp corners. Source: plane geometry.
 * @example perimeter({ shape: "round", diameter: 10, width: 0, height: 0 }); // 31.42
 */
export function perimeter(hole: Hole): number {
  if (hole.shape === "round") {
    checkRange("diameter", holeDiameter, hole.diameter);
    return Math.PI * hole.diameter;
  }
  checkRange("width", holeWidth, hole.width);
  if (hole.shape === "square") return 4 * hole.width;
  checkRange("height", holeHeight, hole.height);
  return 2 * (hole.width + hole.height);
}
