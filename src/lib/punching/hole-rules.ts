import { insideRadius } from "../bending/symbols.ts";
import type { MaterialFamily } from "../catalogue.ts";
import type { Formula } from "../formula.ts";
import { checkRanges } from "../inputs.ts";
import { sheet } from "./symbols.ts";

/**
 * How near a punched hole may come, in thicknesses. Rules of the trade from memory: no standard or handbook with them was found.
 * `low` is where most rules begin, `use` the safe end that the answers are made with.
 */
export const holeRules = {
  edge: { low: 1.5, use: 2 },
  spacing: { low: 2, use: 2 },
  bend: { low: 1.5, use: 2 },
} as const;

/** Smallest round hole in thicknesses: a thinner punch breaks. */
export const smallestHole: Readonly<Record<MaterialFamily, { readonly low: number; readonly use: number }>> = {
  "carbon-steel": { low: 1, use: 1.2 },
  stainless: { low: 2, use: 2 },
  aluminium: { low: 1, use: 1 },
  "copper-alloy": { low: 1, use: 1 },
  // Nothing was met for titanium; its shear strength is that of a stainless steel.
  titanium: { low: 2, use: 2 },
};

const length = { quantity: "length", fineness: "setting" } as const;
const multiple = { label: "Thicknesses", symbol: "n", tex: "n", quantity: "ratio" } as const;

function multipleFormula(id: string, name: string, result: string, label: string, tex: string): Formula {
  return {
    id,
    name,
    result,
    expression: String.raw`\v{multiple}\cdot\v{thickness}`,
    symbols: { multiple, thickness: sheet, [result]: { ...length, label, symbol: label, tex } },
  };
}

export const smallestHoleFormula = multipleFormula(
  "smallest-hole",
  "Smallest hole",
  "minDiameter",
  "Smallest hole",
  String.raw`d_{\min}`,
);
export const edgeDistanceFormula = multipleFormula(
  "hole-to-edge",
  "Hole to edge of the part",
  "minEdge",
  "Hole to edge",
  String.raw`e_{\min}`,
);
export const holeSpacingFormula = multipleFormula(
  "hole-to-hole",
  "Hole to hole",
  "minSpacing",
  "Hole to hole",
  String.raw`s_{\min}`,
);
export const bendDistanceFormula: Formula = {
  id: "hole-to-bend",
  name: "Hole to the inside face of the next leg",
  result: "minBend",
  expression: String.raw`\v{multiple}\cdot\v{thickness} + \v{radius}`,
  symbols: {
    multiple,
    thickness: sheet,
    radius: insideRadius,
    minBend: { ...length, label: "Hole to bend", symbol: "Hole to bend", tex: String.raw`b_{\min}` },
  },
};

/** Smallest sizes and distances of a punched hole [mm], each from the edge of the hole. */
export interface HoleLimits {
  readonly minDiameter: number;
  readonly minEdge: number;
  readonly minSpacing: number;
  readonly minBend: number;
}

/**
 * Smallest punched hole, and how near it may come to an edge, another hole and a bend.
 *
 * @param part.family - of the metal
 * @param part.thickness - T [mm]; 0.1 to 13
 * @param part.radius - R [mm], inside, of the nearest bend; 0 to 1000
 * @param end - `use`: the safe end of the rules; `low`: where they begin
 * @returns every limit [mm]; the one to a bend runs from the edge of the hole to the inside face of the leg, so it holds R
 * @throws InputError for a value outside its range
 * @remarks Source: common practice, from memory.
 * @example holeLimits({ family: "stainless", thickness: 1, radius: 1.6 }); // 2, 2, 2, 3.6
 */
export function holeLimits(
  part: { readonly family: MaterialFamily; readonly thickness: number; readonly radius: number },
  end: "low" | "use" = "use",
): HoleLimits {
  checkRanges({ thickness: sheet, radius: insideRadius }, part);
  return {
    minDiameter: smallestHole[part.family][end] * part.thickness,
    minEdge: holeRules.edge[end] * part.thickness,
    minSpacing: holeRules.spacing[end] * part.thickness,
    minBend: holeRules.bend[end] * part.thickness + part.radius,
  };
}
