import type { Catalogue, Material, MaterialId, Property } from "../catalogue.ts";
import type { MaterialInput, QuantityInput } from "../inputs.ts";

/** The material field that every calculator about metal starts with. */
export const materialInput = {
  kind: "material",
  label: "Material",
  default: "steel-cr",
} as const satisfies MaterialInput;

const property = { kind: "quantity", override: true, whenEmpty: "the material's own" } as const;

/** Properties that may be replaced for one answer, e.g. from a mill certificate. */
export const propertyInputs = {
  yield: { ...property, label: "Yield strength", symbol: "Y", quantity: "stress", min: 5, max: 2500 },
  tensileStrength: { ...property, label: "Tensile strength", symbol: "Rm", quantity: "stress", min: 10, max: 3000 },
  shearStrength: { ...property, label: "Shear strength", symbol: "τ", quantity: "stress", min: 5, max: 2500 },
  elasticModulus: { ...property, label: "Elastic modulus", symbol: "E", quantity: "stress", min: 10_000, max: 500_000 },
  density: { ...property, label: "Density", symbol: "ρ", quantity: "density", min: 500, max: 25_000 },
  areaReduction: { ...property, label: "Reduction of area", symbol: "r", quantity: "percent", min: 1, max: 99 },
} as const satisfies Record<string, QuantityInput>;

export type PropertyOverrides = { readonly [K in keyof typeof propertyInputs]?: number | undefined };

const entered = (value: number): Property => ({ value, basis: "entered for this answer", source: "entered", seen: "practice" });

/** The material with the properties that were entered in place of its own. */
export function materialWith(catalogue: Catalogue, id: MaterialId, overrides: PropertyOverrides): Material {
  const material = { ...catalogue.materials[id] };
  for (const key of Object.keys(propertyInputs) as (keyof typeof propertyInputs)[]) {
    const value = overrides[key];
    if (value !== undefined) Object.assign(material, { [key]: entered(value) });
  }
  return material;
}
