import type { Catalogue, Material, RadiusByAlloy, RadiusByStrength, Seen } from "../catalogue.ts";
import type { Formula } from "../formula.ts";
import { InputError } from "../input-error.ts";
import { checkRange, checkRanges, exactly } from "../inputs.ts";
import { amount, atMost, type Phrase, say } from "../quantity/phrase.ts";
import { insideRadius, thickness } from "./symbols.ts";

const areaReduction = {
  label: "Reduction of area",
  symbol: "r",
  tex: "r",
  quantity: "percent",
  min: 1,
  max: 99,
} as const;

export const ductilityRadiusFormula: Formula = {
  id: "ductility-radius",
  name: "Smallest radius from ductility",
  result: "radius",
  expression: String.raw`\max\!\left(0,\;\v{thickness}\left(\frac{50}{\v{areaReduction}} - 1\right)\right)`,
  symbols: { thickness, areaReduction, radius: insideRadius },
};

/**
 * Smallest inside radius from how far the metal necks before it breaks.
 *
 * @param sheet.thickness - T [mm]; 0.1 to 13
 * @param sheet.areaReduction - r [%], reduction of area in the tension test, not elongation; 1 to 99
 * @returns R [mm] = T (50/r − 1), 0 from r = 50 on
 * @throws InputError for a value outside its range
 * @remarks Outer fibre reaches the strain of the neck with the neutral line at mid-thickness. Source: Kalpakjian and Schmid (from memory);
 *   arithmetic read in a copy.
 * @example ductilityRadius({ thickness: 0.5, areaReduction: 10 }); // 2
 */
export function ductilityRadius(sheet: { thickness: number; areaReduction: number }): number {
  checkRanges({ thickness, areaReduction }, sheet);
  return Math.max(0, sheet.thickness * (50 / sheet.areaReduction - 1));
}

export const outerStrainFormula: Formula = {
  id: "outer-strain",
  name: "Stretch of the outer face",
  result: "strain",
  expression: String.raw`\frac{1}{2\,\v{radius} / \v{thickness} + 1}`,
  symbols: {
    radius: insideRadius,
    thickness,
    strain: { label: "Stretch of the outer face", symbol: "e", tex: "e", quantity: "ratio" },
  },
};

/**
 * Stretch of the outer face of a bend, with the neutral line at mid-thickness.
 *
 * @param bend.radius - R [mm]; 0 to 1000
 * @param bend.thickness - T [mm]; 0.1 to 13
 * @returns e [1] = 1 / (2R/T + 1)
 * @throws InputError for a value outside its range
 * @remarks Source: geometry; Kalpakjian and Schmid (from memory).
 */
export function outerStrain(bend: { radius: number; thickness: number }): number {
  checkRanges({ radius: insideRadius, thickness }, bend);
  return 1 / ((2 * bend.radius) / bend.thickness + 1);
}

export const radiusRatioFormula: Formula = {
  id: "radius-ratio",
  name: "Radius in thicknesses",
  result: "ratio",
  expression: String.raw`\frac{\v{radius}}{\v{thickness}}`,
  symbols: {
    radius: insideRadius,
    thickness,
    ratio: { label: "Radius over thickness", symbol: "R/T", tex: "R/T", quantity: "ratio" },
  },
};

/** Index of the first column whose upper edge is not below the thickness. @throws InputError for a thickness beyond the table */
function columnFor(edges: readonly number[], sheet: number): number {
  const column = edges.findIndex((edge) => sheet <= edge + 1e-9);
  if (column >= 0) return column;
  throw new InputError(
    "thickness",
    sheet,
    say`The table of smallest radii goes up to a thickness of ${atMost(edges.at(-1) ?? 0)}; it is ${exactly(sheet, "length")}.`,
  );
}

/**
 * Smallest inside radius by tensile strength class, bent across the rolling direction by up to 120°.
 *
 * @param table - the published table
 * @param sheet.thickness - s [mm]
 * @param sheet.tensileStrength - Rm [N/mm²], up to the strongest class of the table
 * @param sheet.severe - along the rolling direction or beyond 120°: the next thickness column counts
 * @returns r [mm]
 * @throws InputError for a thickness or strength beyond the table
 * @remarks Source: DIN 6935 (text of 1975-10, read in a copy).
 */
export function radiusByStrength(
  table: RadiusByStrength,
  sheet: { thickness: number; tensileStrength: number; severe?: boolean },
): number {
  checkRange("thickness", thickness, sheet.thickness);
  const row = table.classes.find(({ upTo }) => sheet.tensileStrength <= upTo);
  if (!row)
    throw new InputError(
      "tensileStrength",
      sheet.tensileStrength,
      say`The table of smallest radii goes up to a tensile strength of ${amount(table.classes.at(-1)?.upTo ?? 0, "stress")}; it is ${exactly(sheet.tensileStrength, "stress")}.`,
    );
  const column = columnFor(table.thickness, sheet.thickness) + (sheet.severe ? 1 : 0);
  return row.radius[Math.min(column, row.radius.length - 1)] as number;
}

/**
 * Smallest inside radius of an aluminium alloy at 90°, from the column of the next greater thickness.
 *
 * @param table - the published table of R/T
 * @param row - alloy and temper as the table names it
 * @param sheet - T [mm]
 * @returns R [mm]
 * @throws InputError for a thickness beyond the table; Error for a row it does not have
 * @remarks Source: table of unattributed copies, read; its attribution to the Aluminum Association is from memory.
 */
export function radiusByAlloy(table: RadiusByAlloy, row: string, sheet: number): number {
  checkRange("thickness", thickness, sheet);
  const ratios = table.rows[row];
  if (!ratios) throw new Error(`The alloy table has no row “${row}”. Its rows: ${Object.keys(table.rows).join(", ")}`);
  return (ratios[columnFor(table.thickness, sheet)] as number) * sheet;
}

export interface SmallestRadius {
  /** [mm] */
  readonly radius: number;
  readonly how: Phrase;
  readonly source: string;
  readonly seen: Seen;
}

/**
 * Smallest inside radius for a material in this thickness by the rule its data names; an entered reduction of area takes precedence.
 *
 * @throws InputError beyond the table that applies
 */
export function smallestRadius(catalogue: Catalogue, material: Material, sheet: number): SmallestRadius {
  if (material.areaReduction?.source === "entered")
    return {
      radius: ductilityRadius({ thickness: sheet, areaReduction: material.areaReduction.value }),
      how: say`From the reduction of area entered, ${amount(material.areaReduction.value, "percent")}.`,
      source: "kalpakjian-schmid",
      seen: "memory",
    };
  const rule = material.smallestRadius;
  if (rule.by === "tensile-class") {
    const table = catalogue.radiusByStrength;
    return {
      radius: radiusByStrength(table, { thickness: sheet, tensileStrength: material.tensileStrength.value }),
      how: say`From the table for a tensile strength of ${amount(material.tensileStrength.value, "stress")}, bent across the rolling direction by up to 120°.`,
      source: table.source,
      seen: table.seen,
    };
  }
  if (rule.by === "alloy-table") {
    const table = catalogue.radiusByAlloy;
    return {
      radius: radiusByAlloy(table, rule.row, sheet),
      how: say`From the table for ${rule.row} at 90°, next greater thickness.`,
      source: table.source,
      seen: table.seen,
    };
  }
  return {
    radius: rule.use * sheet,
    how: say`${rule.use} × thickness, out of a band of ${rule.low} to ${rule.high} from soft to hard${rule.seen === "practice" ? " that is common practice without a source" : ""}.`,
    source: rule.source,
    seen: rule.seen,
  };
}
