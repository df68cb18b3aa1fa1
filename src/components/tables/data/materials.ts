import type { Catalogue, Material, Property } from "../../../lib/catalogue.ts";
import { formatNumber } from "../../../lib/quantity/format.ts";
import { kindOf, type Quantity } from "../../../lib/quantity/units.ts";
import { propertyInputs } from "../../../lib/stock/material.ts";
import { type Cell, type Column, number, type Origin, type Table } from "../table.ts";

type PropertyName = keyof typeof propertyInputs;

/** In the order of a data sheet; name, letter and quantity are the calculators' own. */
const names: readonly PropertyName[] = [
  "density",
  "elasticModulus",
  "yield",
  "tensileStrength",
  "shearStrength",
  "areaReduction",
];

function unitOf(quantity: Quantity): string {
  const { base, units } = kindOf(quantity);
  return units[base]?.text ?? "";
}

const show = (value: number) => formatNumber(value, 0);

function bandText({ value, low, high }: Property): string | undefined {
  if (low === undefined && high === undefined) return undefined;
  if (high === undefined) return `from ${show(low ?? value)}`;
  return `${show(low ?? value)} to ${show(high)}`;
}

const originOf = ({ source, seen }: Property): Origin => ({ source, seen });

/** Every metal with the values that the calculators use. */
export function materialTable({ materials }: Catalogue): Table {
  const columns = names.map(
    (name): Column => ({ label: propertyInputs[name].label, unit: unitOf(propertyInputs[name].quantity), kind: "number" }),
  );
  return {
    id: "materials",
    caption: "The values the calculators use, with the band they lie in",
    columns: [{ label: "Metal", kind: "key" }, ...columns],
    rows: Object.values<Material>(materials).map((material) => ({
      cells: [
        material.name,
        ...names.map((name) => {
          const property = material[name];
          return (
            property && number(property.value, show(property.value), { small: bandText(property), from: originOf(property) })
          );
        }),
      ].map((cell) => cell ?? null),
    })),
  };
}

/** One row for each property of each metal: what kind of number it is and where it comes from. */
export function propertyTable({ materials }: Catalogue): Table {
  const plain = (value: number | undefined): Cell | null => (value === undefined ? null : number(value, show(value)));
  return {
    id: "material-properties",
    caption: "Each property by itself, with what kind of number it is",
    columns: [
      { label: "Metal", kind: "key" },
      { label: "Property", kind: "key" },
      { label: "Value", kind: "number" },
      { label: "Unit", kind: "key" },
      { label: "Low", kind: "number" },
      { label: "High", kind: "number" },
      { label: "What the value is" },
      { label: "To know" },
    ],
    rows: Object.values<Material>(materials).flatMap((material) =>
      names.flatMap((name) => {
        const property = material[name];
        if (!property) return [];
        const { label, quantity } = propertyInputs[name];
        const known = [property.printed && `printed as ${property.printed}`, property.note].filter(Boolean).join("; ");
        const cells = [
          // Without what stands in brackets: the name is repeated in six rows.
          material.name.replace(/ \(.*\)$/, ""),
          label,
          plain(property.value),
          unitOf(quantity),
          plain(property.low),
          plain(property.high),
          property.basis,
          known || null,
        ];
        return [{ cells, from: originOf(property) }];
      }),
    ),
  };
}
