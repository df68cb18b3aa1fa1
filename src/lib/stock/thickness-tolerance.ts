import type { Catalogue, Material, ThicknessTolerance } from "../catalogue.ts";

/**
 * Permitted deviation of thickness for a nominal thickness and sheet width.
 *
 * @param table - one published table
 * @param thickness - nominal [mm]
 * @param width - of the sheet as ordered [mm]
 * @returns ± [mm], or undefined outside the table
 * @remarks Source: the table's own; whether a band holds its upper or its lower edge differs between standards.
 */
export function thicknessTolerance(table: ThicknessTolerance, thickness: number, width: number): number | undefined {
  const within = (value: number, above: number, upTo: number | null, edge: "upper" | "lower") =>
    edge === "upper" ? value > above && (upTo === null || value <= upTo) : value >= above && (upTo === null || value < upTo);
  const band = table.bands.find(({ above, upTo }) => within(thickness, above, upTo, table.edge));
  const column = table.widths.findIndex((upTo, index) => within(width, table.widths[index - 1] ?? 0, upTo, table.widthEdge));
  return column < 0 ? undefined : band?.tolerance[column];
}

/** The same ± [mm] for a material by the table its data name; undefined when none was read for it. */
export function materialThicknessTolerance(
  catalogue: Catalogue,
  material: Material,
  thickness: number,
  width: number,
): number | undefined {
  const table =
    material.thicknessTolerance === undefined ? undefined : catalogue.thicknessTolerances[material.thicknessTolerance];
  return table && thicknessTolerance(table, thickness, width);
}
