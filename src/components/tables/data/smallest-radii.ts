import type { Catalogue, Material } from "../../../lib/catalogue.ts";
import { formatNumber } from "../../../lib/quantity/format.ts";
import { nearestFraction } from "../../../lib/quantity/fraction.ts";
import { type Column, number, type Table } from "../table.ts";

/** Digits of a printed number, no more and no fewer. */
const printed = (value: number) => number(value, String(value));

/** Carbon steel by its tensile strength: one column a strength class. */
export function steelRadiusTable({ radiusByStrength: { source, seen, note, thickness, classes } }: Catalogue): Table {
  const columns = classes.map(
    ({ above, upTo }): Column => ({
      group: "Smallest inside radius (mm) for a tensile strength",
      label: above === 0 ? `up to ${upTo}` : `over ${above} to ${upTo}`,
      unit: "N/mm²",
      kind: "number",
    }),
  );
  return {
    id: "smallest-radius-steel",
    caption: "Carbon steel, by tensile strength and thickness",
    from: { source, seen, note },
    columns: [
      { label: "Thickness over", unit: "mm", kind: "key-number" },
      { label: "up to", unit: "mm", kind: "key-number" },
      ...columns,
    ],
    rows: thickness.map((upTo, index) => ({
      cells: [printed(thickness[index - 1] ?? 0), printed(upTo), ...classes.map(({ radius }) => printed(radius[index] ?? 0))],
    })),
    notes: [
      "For bends across the rolling direction, turned through up to 120°. Along the rolling direction, or further than 120°, take the next row down.",
      "A row holds its upper edge.",
    ],
  };
}

/** Aluminium by alloy and temper: radius in thicknesses, one column a thickness. */
export function aluminiumRadiusTable({ radiusByAlloy: { source, seen, note, thickness, rows } }: Catalogue): Table {
  const columns = thickness.map(
    (each): Column => ({
      group: "Smallest inside radius, in thicknesses, for sheet of",
      label: `${nearestFraction(each).text} in`,
      unit: `${formatNumber(each, 2)} mm`,
      kind: "number",
    }),
  );
  return {
    id: "smallest-radius-aluminium",
    caption: "Aluminium, by alloy and temper, bent through 90°",
    from: { source, seen, note },
    columns: [{ label: "Alloy and temper", kind: "key" }, ...columns],
    rows: Object.entries(rows).map(([alloy, ratios]) => ({ cells: [alloy, ...ratios.map(printed)] })),
    notes: [
      "A number is the radius divided by the thickness: 1.5 on 2 mm sheet is a radius of 3 mm. 0 means that it can be bent sharp.",
      "The calculator takes the next thicker column for a thickness between two.",
    ],
  };
}

/** The metals that neither published table covers. */
export function bandRadiusTable({ materials }: Catalogue): Table {
  return {
    id: "smallest-radius-others",
    caption: "Metals that neither table covers: a band only",
    columns: [
      { label: "Metal", kind: "key" },
      { label: "Used here", unit: "radius ÷ thickness", kind: "number" },
      { label: "Low", unit: "radius ÷ thickness", kind: "number" },
      { label: "High", unit: "radius ÷ thickness", kind: "number" },
      { label: "To know" },
    ],
    rows: Object.values<Material>(materials).flatMap(({ name, smallestRadius: rule }) =>
      rule.by === "ratio-band"
        ? [
            {
              cells: [name, printed(rule.use), printed(rule.low), printed(rule.high), rule.note ?? null],
              from: { source: rule.source, seen: rule.seen },
            },
          ]
        : [],
    ),
  };
}
