import { describe, expect, test } from "vitest";
import { loadCatalogue } from "../../src/catalogue/load.ts";
import type { Catalogue } from "../../src/lib/catalogue.ts";
import { materialIds } from "../../src/lib/catalogue.ts";
import { annealing, canAnneal, slowCooling } from "../../src/lib/furnace/annealing.ts";
import { heatColour, heatColours } from "../../src/lib/furnace/heat-colours.ts";
import { InputError } from "../../src/lib/input-error.ts";
import { phraseText } from "../../src/lib/quantity/phrase.ts";
import { runWorksheet } from "../../src/lib/worksheet.ts";
import sheet from "../../src/lib/worksheets/anneal.ts";

const catalogue = loadCatalogue();
const answerOf = (material: string, shop: Catalogue = catalogue) => {
  const { answer, problems } = runWorksheet(sheet, { material }, shop);
  expect(problems).toEqual([]);
  if (!answer) throw new Error("no answer");
  return answer;
};
const said = (material: string, shop?: Catalogue) =>
  answerOf(material, shop).remarks.map(({ level, phrase }) => `${level}: ${phraseText(phrase)}`);

describe("every metal", () => {
  test("is either annealed inside the ranges of its sources and below its melting point, or refused with a reason", () => {
    for (const id of materialIds) {
      const how = annealing[id];
      if (!canAnneal(how)) {
        expect(how.why.length, id).toBeGreaterThan(40);
        expect(catalogue.sources, id).toHaveProperty([how.source]);
        continue;
      }
      expect(
        how.ranges.some(({ low, high }) => how.temperature >= low && how.temperature <= high),
        id,
      ).toBe(true);
      expect(how.temperature, id).toBeLessThan(how.melts);
      if (how.slow) expect(how.slow.to, id).toBeLessThan(how.temperature);
    }
  });

  test("what counts as read was read", () => {
    for (const id of materialIds) {
      const how = annealing[id];
      if (!canAnneal(how)) continue;
      for (const { source, seen } of how.ranges) {
        expect(catalogue.sources, source).toHaveProperty([source]);
        if (seen === "read") expect(catalogue.sources[source]?.seen, source).toBe("read");
      }
    }
  });
});

test.each(["steel-galv", "stainless-304", "stainless-316", "stainless-430", "titanium-2"])(
  "%s must not be annealed here",
  (id) => {
    const { outputs, remarks } = answerOf(id);
    expect(outputs).toMatchObject({ temperature: null, time: null, cooling: "Do not anneal it here." });
    expect(remarks.some(({ level, field }) => level === "caution" && field === "material")).toBe(true);
  },
);

test("zinc fume is the reason for galvanised steel", () => {
  expect(answerOf("steel-galv").outputs.note).toMatch(/zinc .*fume/);
});

test("remembered temperatures say so; the one that was read does not", () => {
  expect(said("al-5052-h32").some((text) => /^caution: This temperature is from memory/.test(text))).toBe(true);
  expect(said("al-6061-t6").some((text) => /This temperature is from memory/.test(text))).toBe(false);
});

test("aluminium is never given a colour, steel is", () => {
  const captions = (material: string) =>
    answerOf(material)
      .tables?.map(({ caption }) => caption)
      .join() ?? "";
  expect(captions("al-1100-h14")).not.toMatch(/Colour/);
  expect(said("al-1100-h14").some((text) => /shows no usable colour/.test(text))).toBe(true);
  expect(captions("steel-cr")).toMatch(/Colour/);
});

describe("this shop's furnaces", () => {
  const furnace = { name: "Furnace A", hottest: 500, control: 15, width: 200, height: 120, depth: 250 };
  const shop = (furnaces: readonly (typeof furnace)[]): Catalogue => ({ ...catalogue, shop: { ...catalogue.shop, furnaces } });

  test("one that gets hot enough is named with its size", () => {
    expect(said("al-3003-h14", shop([furnace])).some((text) => /^note: Furnace A: up to 500 °C/.test(text))).toBe(true);
  });

  test("none that does, or none at all, is a caution", () => {
    expect(
      said("steel-cr", shop([furnace])).some((text) => /^caution: No furnace of this shop gets as hot as 650 °C/.test(text)),
    ).toBe(true);
    expect(said("steel-cr", shop([])).some((text) => /^caution: This shop has no furnace/.test(text))).toBe(true);
  });
});

describe("slow cooling", () => {
  test("takes the difference over the rate", () => {
    expect(slowCooling({ from: 413, to: 260, rate: 28 }) / 3600).toBeCloseTo(153 / 28, 12);
    expect(slowCooling({ from: 300, to: 300, rate: 28 })).toBe(0);
  });

  test("cannot end hotter than it began, nor go on at no rate", () => {
    expect(() => slowCooling({ from: 200, to: 260, rate: 28 })).toThrow(InputError);
    expect(() => slowCooling({ from: 400, to: 260, rate: 0 })).toThrow(InputError);
  });
});

describe("colours", () => {
  test("bands follow on each other without a gap", () => {
    heatColours.forEach(({ from, to }, i) => {
      expect(from).toBeLessThan(to);
      const before = heatColours[i - 1];
      if (before) expect(from).toBe(before.to + 1);
    });
    expect(heatColour(593.9)).toBe("black red");
    expect(heatColour(594)).toBe("very dark red");
  });

  test("below and above the bands there is none", () => {
    expect(heatColour(425)).toBeUndefined();
    expect(heatColour(1315)).toBeUndefined();
    expect(() => heatColour(-1)).toThrow(InputError);
  });
});
