import { execFileSync } from "node:child_process";
import { tmpdir } from "node:os";
import { expect, test } from "vitest";
import { loadCatalogue } from "../../src/catalogue/load.ts";
import { type Material, materialIds, type Property } from "../../src/lib/catalogue.ts";
import { parseQuantity } from "../../src/lib/quantity/parse.ts";

const catalogue = loadCatalogue();
const materials = materialIds.map((id) => catalogue.materials[id]);
const propertyNames = ["density", "elasticModulus", "yield", "tensileStrength", "shearStrength", "areaReduction"] as const;

function eachProperty(check: (property: Property, name: (typeof propertyNames)[number], material: Material) => void): void {
  for (const material of materials)
    for (const name of propertyNames) {
      const property = material[name];
      if (property) check(property, name, material);
    }
}

test("every material of the contract is there under its own id", () => {
  expect(Object.keys(catalogue.materials)).toEqual([...materialIds]);
  for (const [id, material] of Object.entries(catalogue.materials)) expect(material.id).toBe(id);
});

test("no two entries share a name", () => {
  for (const all of [materials, Object.values(catalogue.gaugeSystems), Object.values(catalogue.thicknessTolerances)]) {
    const names = all.map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
  }
});

test("a metal yields before it breaks, and is cut at 0.5 to 0.95 of the stress that tears it (published pairs: 0.59 to 0.88)", () => {
  for (const { id, yield: yielding, tensileStrength, shearStrength } of materials) {
    expect.soft(yielding.value, id).toBeLessThan(tensileStrength.value);
    const ratio = shearStrength.value / tensileStrength.value;
    expect.soft(ratio, id).toBeGreaterThan(0.5);
    expect.soft(ratio, id).toBeLessThan(0.95);
  }
});

test("density and stiffness agree with the metal (rounded handbook ranges, from memory)", () => {
  const ranges = {
    "carbon-steel": [7800, 7900, 190_000, 215_000],
    stainless: [7600, 8100, 190_000, 225_000],
    aluminium: [2600, 2850, 68_000, 75_000],
    "copper-alloy": [8400, 9000, 100_000, 130_000],
    titanium: [4500, 4550, 100_000, 120_000],
  } as const;
  for (const { id, family, density, elasticModulus } of materials) {
    const [lightest, heaviest, softest, stiffest] = ranges[family];
    expect.soft(density.value >= lightest && density.value <= heaviest, id).toBe(true);
    expect.soft(elasticModulus.value >= softest && elasticModulus.value <= stiffest, id).toBe(true);
  }
});

test("a value lies in its band", () => {
  eachProperty(({ value, low = value, high = value }, name, { id }) => {
    expect.soft(low <= value && value <= high, `${id} ${name}`).toBe(true);
  });
});

test("a value said to be the middle of its own band is", () => {
  let checked = 0;
  eachProperty(({ value, low, high, basis }, name, { id }) => {
    if (!/^middle of the (specified|typical) range( |$)/.test(basis) || low === undefined || high === undefined) return;
    if (/ of A1008/.test(basis)) expect.soft(value, id).toBe(Math.round((140 + 275) / 2));
    else expect.soft(Math.abs(value - (low + high) / 2), `${id} ${name}`).toBeLessThanOrEqual(0.5);
    checked += 1;
  });
  expect(checked).toBeGreaterThan(8);
});

test("a shear strength worked out from the tensile strength is the product its basis states", () => {
  let checked = 0;
  eachProperty(({ value, low = 0, high = 0, basis }, _, { id, tensileStrength: tensile }) => {
    const rule = /^tensile strength × ([\d.]+) \(middle of ([\d.]+) to ([\d.]+)\)$/.exec(basis)?.slice(1).map(Number);
    if (!rule) return;
    const [factor = 0, least = 0, most = 0] = rule;
    expect.soft(factor, id).toBeCloseTo((least + most) / 2, 6);
    expect.soft(Math.abs(value - factor * tensile.value), id).toBeLessThanOrEqual(1);
    expect.soft(Math.abs(low - least * (tensile.low ?? 0)), id).toBeLessThanOrEqual(1);
    expect.soft(Math.abs(high - most * (tensile.high ?? 0)), id).toBeLessThanOrEqual(1);
    checked += 1;
  });
  expect(checked).toBe(6);
});

test("a value printed in another unit is that value, rounded", () => {
  let checked = 0;
  eachProperty(({ value, printed }, name, { id }) => {
    if (printed === undefined) return;
    const rounding = name === "elasticModulus" ? 400 : 0.6;
    expect.soft(Math.abs(parseQuantity(printed, "stress").value - value), `${id} ${name}`).toBeLessThan(rounding);
    checked += 1;
  });
  expect(checked).toBeGreaterThan(40);
});

test("typical strengths read in Kutz (2002), Table 5, are the printed ksi", () => {
  const printed = {
    "al-1100-o": [5, 13, 9],
    "al-1100-h14": [17, 18, 11],
    "al-3003-h14": [21, 22, 14],
    "al-2024-o": [11, 27, 18],
    "al-2024-t3": [50, 70, 41],
  } as const;
  for (const [id, ksi] of Object.entries(printed)) {
    const { yield: yielding, tensileStrength, shearStrength } = catalogue.materials[id as keyof typeof printed];
    expect
      .soft(
        [yielding, tensileStrength, shearStrength].map((each) => each.printed),
        id,
      )
      .toEqual(ksi.map((value) => `${value} ksi`));
  }
});

test("every source named anywhere is in the bibliography", () => {
  const cited = new Set<string>();
  const walk = (value: unknown): void => {
    if (typeof value !== "object" || value === null) return;
    for (const [key, inner] of Object.entries(value)) {
      if (key === "source") cited.add(String(inner));
      else walk(inner);
    }
  };
  walk({ ...catalogue, sources: {} });
  expect(cited.size).toBeGreaterThan(20);
  for (const id of cited) expect.soft(catalogue.sources, id).toHaveProperty([id]);
});

test("nothing counts as read whose source is only remembered or has no document", () => {
  const walk = (value: unknown, path: string): void => {
    if (typeof value !== "object" || value === null) return;
    const { source, seen } = value as { source?: string; seen?: string };
    if (source !== undefined && seen === "read") expect.soft(catalogue.sources[source]?.seen, path).toBe("read");
    for (const [key, inner] of Object.entries(value)) walk(inner, `${path}.${key}`);
  };
  walk({ ...catalogue, sources: {} }, "");
});

test("a source that was read says where, by an address or a place in the document", () => {
  for (const { id, seen, address, where, note } of Object.values(catalogue.sources))
    if (seen === "read") expect.soft(address ?? where ?? note, id).toBeTruthy();
});

test("tables that a material names exist, and carbon steel falls in a strength class", () => {
  for (const { id, gaugeSystem, thicknessTolerance, smallestRadius, tensileStrength } of materials) {
    if (gaugeSystem) expect.soft(catalogue.gaugeSystems, id).toHaveProperty([gaugeSystem]);
    if (thicknessTolerance) expect.soft(catalogue.thicknessTolerances, id).toHaveProperty([thicknessTolerance]);
    if (smallestRadius.by === "alloy-table") expect.soft(catalogue.radiusByAlloy.rows, id).toHaveProperty([smallestRadius.row]);
    if (smallestRadius.by === "tensile-class")
      expect.soft(tensileStrength.value, id).toBeLessThanOrEqual(catalogue.radiusByStrength.classes.at(-1)?.upTo ?? 0);
  }
});

test("thickness bands follow on each other, and thicker or wider sheet never has a smaller ±", () => {
  for (const { id, bands, widths } of Object.values(catalogue.thicknessTolerances))
    for (const [i, { above, upTo, tolerance }] of bands.entries()) {
      const before = bands[i - 1];
      expect.soft(above, id).toBeLessThan(upTo);
      expect.soft(tolerance, id).toHaveLength(widths.length);
      expect.soft(tolerance, id).toEqual([...tolerance].sort((a, b) => a - b));
      if (!before) continue;
      expect.soft(above, id).toBe(before.upTo);
      for (const [column, each] of tolerance.entries())
        expect.soft(each, `${id} ${upTo}`).toBeGreaterThanOrEqual(before.tolerance[column] ?? 0);
    }
});

test("smallest radii grow with thickness and strength", () => {
  const { classes } = catalogue.radiusByStrength;
  for (const [i, { radius }] of classes.entries()) {
    expect.soft(radius).toEqual([...radius].sort((a, b) => a - b));
    for (const [column, each] of radius.entries()) expect.soft(each).toBeGreaterThanOrEqual(classes[i - 1]?.radius[column] ?? 0);
  }
  for (const [alloy, ratios] of Object.entries(catalogue.radiusByAlloy.rows))
    expect.soft(ratios, alloy).toEqual([...ratios].sort((a, b) => a - b));
});

test("the alloy table keeps the printed inches beside the millimetres", () => {
  expect(catalogue.radiusByAlloy.inches).toEqual([1 / 64, 1 / 32, 1 / 16, 1 / 8, 3 / 16, 1 / 4, 3 / 8, 1 / 2]);
  for (const [i, mm] of catalogue.radiusByAlloy.thickness.entries())
    expect.soft(mm / 25.4).toBeCloseTo(catalogue.radiusByAlloy.inches[i] ?? 0, 12);
});

test("general tolerances: 10 mm medium is ±0.2 mm, a 60 mm leg ±20′ (ISO 2768-1, read)", () => {
  const { linear, angular } = catalogue.generalTolerances;
  expect(linear.classes.m[linear.upTo.findIndex((edge) => 10 <= edge)]).toBe(0.2);
  expect(angular.classes.m[angular.upTo.findIndex((edge) => edge === null || 60 <= edge)]).toBeCloseTo(20 / 60, 12);
  expect(linear.classes.f.at(-1)).toBeNull();
});

test("a coarser class never has a smaller ±", () => {
  const { linear, angular } = catalogue.generalTolerances;
  for (const { f, m, c, v } of [linear.classes, angular.classes])
    for (const i of m.keys())
      for (const [finer, coarser] of [
        [f, m],
        [m, c],
        [c, v],
      ] as const) {
        const [small, large] = [finer[i], coarser[i]];
        if (small != null && large != null) expect.soft(large).toBeGreaterThanOrEqual(small);
      }
});

test("the catalogue loads from any working directory", () => {
  const loader = new URL("../../src/catalogue/load.ts", import.meta.url).href;
  const script = `const { loadCatalogue } = await import(${JSON.stringify(loader)}); console.log(Object.keys(loadCatalogue().materials).length)`;
  const printed = execFileSync(process.execPath, ["--input-type=module", "--eval", script], { cwd: tmpdir(), encoding: "utf8" });
  expect(printed.trim()).toBe(String(materialIds.length));
});
