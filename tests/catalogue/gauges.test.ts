import { expect, test } from "vitest";
import { loadCatalogue } from "../../src/catalogue/load.ts";

const { gaugeSystems } = loadCatalogue();

/** n for the formulas: 2/0 is −1, 0 is 0, 1 is 1. */
const step = (gauge: string) => (gauge.endsWith("/0") ? 1 - Number(gauge.slice(0, -2)) : Number(gauge));

/**
 * Ounces per square foot of iron, from 7/0 to 38: the table of 15 USC 206, whose weights are primary.
 * Read for 7/0 to 27; from memory for 28 to 38.
 */
const ounces = [
  320, 300, 280, 260, 240, 220, 200, 180, 170, 160, 150, 140, 130, 120, 110, 100, 90, 80, 70, 60, 50, 45, 40, 36, 32, 28, 24, 22,
  20, 18, 16, 14, 12, 11, 10, 9, 8, 7, 6.5, 6, 5.5, 5, 4.5, 4.25, 4,
];
const ouncesOf = (gauge: string) => ounces[step(gauge) + 6] ?? Number.NaN;

const rules: Record<string, { rule: (gauge: string) => number; rows: number; where: string }> = {
  "us-standard": { rule: (gauge) => ouncesOf(gauge) / 640, rows: 45, where: "15 USC 206: 40 pounds per square foot and inch" },
  "manufacturers-standard": {
    rule: (gauge) => ouncesOf(gauge) / 16 / 41.82,
    rows: 36,
    where: "public reproductions: 41.82 pounds per square foot and inch",
  },
  galvanised: {
    rule: (gauge) => (ouncesOf(gauge) + 2.5) / 16 / 41.82,
    rows: 25,
    where: "2.5 ounces of zinc, confirmed by Longfield 1921 p. 102",
  },
  stainless: { rule: (gauge) => ouncesOf(gauge) / 640, rows: 44, where: "US Standard cut to 4 decimals, public reproduction" },
  "brown-sharpe": { rule: (gauge) => 0.005 * 92 ** ((36 - step(gauge)) / 39), rows: 44, where: "ASTM B258 as reproduced" },
};

for (const [id, { rule, rows, where }] of Object.entries(rules))
  test(`every row of ${id} is within 0.00006 in of its published rule (${where})`, () => {
    const system = gaugeSystems[id];
    expect(system?.rows).toHaveLength(rows);
    for (const { gauge, inches } of system?.rows ?? []) expect.soft(Math.abs(inches - rule(gauge)), gauge).toBeLessThan(0.00006);
  });

test("galvanised sheet of 24 gauge weighs 1.156 pounds per square foot (Longfield 1921, p. 102)", () => {
  const row = gaugeSystems.galvanised?.rows.find(({ gauge }) => gauge === "24");
  expect((row?.inches ?? 0) * 41.82).toBeCloseTo(1.156, 2);
});

test("the Birmingham sheet gauge halves about every six numbers (Machinery's Handbook, from memory)", () => {
  const rows = new Map(gaugeSystems["birmingham-sheet"]?.rows.map(({ gauge, inches }) => [gauge, inches]));
  for (const [gauge, inches] of rows) {
    const half = rows.get(String(Number(gauge) + 6));
    if (half !== undefined) expect.soft(inches / half, gauge).toBeCloseTo(2, 1);
  }
});

test("16 gauge is another thickness in each system (cutting reference, section 1)", () => {
  const sixteen = (id: string) => gaugeSystems[id]?.rows.find(({ gauge }) => gauge === "16")?.inches;
  expect(
    ["manufacturers-standard", "galvanised", "stainless", "stainless-stock-list", "brown-sharpe", "birmingham-wire"].map(sixteen),
  ).toEqual([0.0598, 0.0635, 0.0625, 0.0595, 0.0508, 0.065]);
});

test("every list runs from thick to thin", () => {
  for (const { id, rows } of Object.values(gaugeSystems))
    for (const [i, { gauge, inches }] of rows.entries()) {
      const before = rows[i - 1];
      if (!before) continue;
      expect.soft(inches, `${id} ${gauge}`).toBeLessThan(before.inches);
      expect.soft(step(gauge), `${id} ${gauge}`).toBeGreaterThan(step(before.gauge));
    }
});

test("rows that were not seen say so", () => {
  const remembered = (id: string) => gaugeSystems[id]?.rows.filter(({ seen }) => seen === "memory").map(({ gauge }) => gauge);
  expect(remembered("us-standard")).toEqual(["28", "29", "30", "31", "32", "33", "34", "35", "36", "37", "38"]);
  expect(remembered("galvanised")).toEqual(["8"]);
  expect(remembered("birmingham-sheet")).toHaveLength(27);
});
