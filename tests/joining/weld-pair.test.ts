import { describe, expect, test } from "vitest";
import { loadCatalogue } from "../../src/catalogue/load.ts";
import { type MaterialId, materialIds } from "../../src/lib/catalogue.ts";
import { weldPair } from "../../src/lib/joining/weld-pair.ts";
import { worksheetById } from "../../src/lib/registry.ts";
import { runWorksheet } from "../../src/lib/worksheet.ts";
import sheet from "../../src/lib/worksheets/weld-pair.ts";

const catalogue = loadCatalogue();
const { materials } = catalogue;
const pairOf = (a: MaterialId, b: MaterialId) => weldPair(materials[a], materials[b]);
const every = materialIds.flatMap((a) => materialIds.map((b) => [a, b] as const));

describe("every pair of metals", () => {
  test("the order does not matter, there is a reason, and its source is kept", () => {
    for (const [a, b] of every) {
      const pair = pairOf(a, b);
      expect(pair, `${a} ${b}`).toEqual(pairOf(b, a));
      expect(pair.reasons.length).toBeGreaterThan(0);
      for (const { source } of pair.reasons) {
        expect(catalogue.sources, source).toHaveProperty([source]);
        expect(sheet.sources).toContain(source);
      }
      expect(new Set(pair.reasons.map(({ text }) => text)).size).toBe(pair.reasons.length);
    }
  });

  test("what cannot be welded always has another joint, what can without care needs none", () => {
    for (const [a, b] of every) {
      const { verdict, instead } = pairOf(a, b);
      if (verdict === "no") expect(instead, `${a} ${b}`).toContain("rivet");
      if (verdict === "yes") expect(instead, `${a} ${b}`).toEqual([]);
    }
  });

  test("a metal that is refused by itself is refused with every other", () => {
    for (const a of materialIds)
      if (pairOf(a, a).verdict === "no") for (const b of materialIds) expect(pairOf(a, b).verdict, `${a} ${b}`).toBe("no");
  });

  test("zinc is never without care", () => {
    for (const other of materialIds) expect(pairOf("steel-galv", other).verdict).not.toBe("yes");
  });
});

test("copper to copper may be soldered, copper to steel is not offered solder", () => {
  expect(pairOf("copper-soft", "brass-half-hard").instead).toContain("solder");
  expect(pairOf("copper-soft", "steel-cr").instead).not.toContain("solder");
});

test("the calculator hands on what it knows to calculators that take it", () => {
  for (const [materialA, materialB] of every) {
    const { values, answer } = runWorksheet(sheet, { materialA, materialB }, catalogue);
    if (!values || !answer) throw new Error("no answer");
    for (const { to, raw } of sheet.handoffs?.(values, answer) ?? []) {
      const next = worksheetById(to);
      expect(next, to).toBeDefined();
      if (next) expect(runWorksheet(next, raw, catalogue).problems, `${materialA} ${materialB} ${to}`).toEqual([]);
    }
  }
});

test("rivets of steel to aluminium start from the aluminium, whichever is named first", () => {
  const rivetsOf = (materialA: string, materialB: string) => {
    const { values, answer } = runWorksheet(sheet, { materialA, materialB }, catalogue);
    if (!values || !answer) throw new Error("no answer");
    return sheet.handoffs?.(values, answer).find(({ to }) => to === "rivet-joint")?.raw.material;
  };
  expect(rivetsOf("steel-cr", "al-3003-h14")).toBe("al-3003-h14");
  expect(rivetsOf("al-3003-h14", "steel-cr")).toBe("al-3003-h14");
});
