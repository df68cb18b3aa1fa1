import { expect } from "vitest";
import { loadCatalogue } from "../../../src/catalogue/load.ts";
import type { Catalogue } from "../../../src/lib/catalogue.ts";
import type { Raw } from "../../../src/lib/inputs.ts";
import { planFrom } from "../../../src/lib/part/plan.ts";
import type { RolledPlan } from "../../../src/lib/part/rolled/plan.ts";

export const catalogue = loadCatalogue();

/** Forms with plain numbers, to be changed field by field: 1 mm of mild steel. */
export const tube = (fields: Raw = {}): Raw => ({
  kind: "tube",
  thickness: "1mm",
  diameter: "150mm",
  measured: "inside",
  length: "300mm",
  ...fields,
});
export const cone = (fields: Raw = {}): Raw => ({
  kind: "cone",
  thickness: "1mm",
  largeDiameter: "200mm",
  smallDiameter: "120mm",
  height: "150mm",
  ...fields,
});

export const hole = (x: number, y: number, diameter = 5) => ({
  panel: "base",
  x: `${x}mm`,
  y: `${y}mm`,
  diameter: `${diameter}mm`,
});

export function rolled(raw: Raw, shop: Catalogue = catalogue): RolledPlan {
  const { rolled: plan, problems } = planFrom(raw, shop);
  expect(problems.map(({ field, message }) => `${field}: ${message}`)).toEqual([]);
  if (!plan) throw new Error("no plan of a rolled part");
  return plan;
}

/** The one problem of a form. */
export function refused(raw: Raw) {
  const { problems, rolled: plan } = planFrom(raw, catalogue);
  expect(plan).toBeUndefined();
  expect(problems).toHaveLength(1);
  const [problem] = problems;
  return { field: problem?.field, message: problem?.message ?? "" };
}
