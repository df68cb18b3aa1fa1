import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { loadCatalogue } from "../../src/catalogue/load.ts";
import { readCatalogue } from "../../src/catalogue/read-catalogue.ts";
import { parseYaml } from "../../src/catalogue/read-yaml.ts";
import { readShopText } from "../../src/components/shop/open-shop.ts";
import type { MaterialId } from "../../src/lib/catalogue.ts";
import { fieldAt, fileFrom, fileOf, formFrom, type ShopFile, shopInputs } from "../../src/lib/shop/form.ts";
import { readShop } from "../../src/lib/shop/read-shop.ts";
import { bendsCsv, shopText } from "../../src/lib/shop/write-shop.ts";
import { gaugeReader } from "../../src/lib/stock/gauge.ts";
import { shop } from "../../src/texts/en/shop.ts";
import { onDisk, testShop } from "../catalogue/test-shop.ts";

const catalogue = loadCatalogue();
const gaugesOf = (id: MaterialId) => gaugeReader(catalogue, id);
const parsed = (text: string) => parseYaml("shop.yaml", text, []).value as ShopFile;
const files = { "the demo shop": onDisk.shop, "the shop of the tests": testShop };

describe.each(Object.entries(files))("%s", (_, text) => {
  const { shop } = readCatalogue({ ...onDisk, shop: text });

  test("goes through the form without a change", () => {
    const file = fileFrom(formFrom(parsed(text)));
    expect(readShop(file, gaugesOf)).toEqual({ shop, faults: [] });
  });

  test("is the same after it was saved and built with", () => {
    const saved = shopText(parsed(text), "A test");
    expect(readCatalogue({ ...onDisk, shop: saved }).shop).toEqual(shop);
  });

  test("can be written from its numbers", () => {
    const again = readShop(fileOf(shop), gaugesOf);
    expect(again.faults).toEqual([]);
    expect(again.shop?.stock.map(({ thickness }) => thickness.toFixed(6))).toEqual(
      shop.stock.map(({ thickness }) => thickness.toFixed(6)),
    );
  });
});

test("words that YAML would take for something else come back as they were", () => {
  const [shop] = [parsed(testShop)];
  const names = [
    "yes",
    "12",
    "1.5",
    "a: b",
    'so "called"',
    "# no",
    "- x",
    "{",
    "Bänk & Söhne",
    "null",
    "2026-11-25",
    "~",
    "x, y",
  ];
  for (const name of names) {
    const bends = [{ ...(shop.bends as ShopFile[])[0], lot: name, brake: name }];
    const saved = shopText({ ...shop, name, bends }, "A test");
    const read = readCatalogue({ ...onDisk, shop: saved }).shop;
    expect([read.name, read.bends[0]?.lot, read.bends[0]?.brake], name).toEqual([name, name, name]);
  }
});

test("any text that may be a name survives being saved", () => {
  fc.assert(
    fc.property(fc.string({ unit: "grapheme", minLength: 1, maxLength: 60 }), (name) => {
      fc.pre(name.trim() === name && name.trim() !== "" && !/\p{C}/u.test(name) && name.length <= 80);
      const saved = shopText({ ...parsed(testShop), name }, "A test");
      expect(parsed(saved).name).toBe(name);
    }),
  );
});

test("a version that is not known is refused by its number", () => {
  expect(readShop({ ...parsed(testShop), version: 2 }, gaugesOf).faults).toEqual([
    { path: ["version"], message: "2; this handbook reads version 1" },
  ]);
});

test.each([
  ["2026-02-28", true],
  ["2028-02-29", true],
  ["2026-02-29", false],
  ["2026-04-31", false],
  ["2026-13-01", false],
  ["26-1-1", false],
])("%s as the date of a bend: %s", (date, allowed) => {
  const file = parsed(testShop);
  const bends = [{ ...(file.bends as ShopFile[])[0], date }];
  const message = "must be a date like 2026-09-14";
  expect(readShop({ ...file, bends }, gaugesOf).faults).toEqual(allowed ? [] : [{ path: ["bends", 0, "date"], message }]);
});

test("every fault is at a field of the form", () => {
  const file = parsed(testShop);
  const bad = readShop(
    {
      ...file,
      name: "",
      brake: {
        ...(file.brake as object),
        fingers: ["25 mm", "9 m"],
        rating: { material: "steel-cr", thickness: "9 mm", length: "1 m" },
      },
      stock: [{ material: "steel-cr", thickness: "0.8", width: "1 m", length: "2 m" }],
    },
    gaugesOf,
  );
  expect(bad.faults.map(({ path }) => fieldAt(path))).toEqual([
    "name",
    "brake.rating.thickness",
    "brake.fingers.1.finger",
    "stock.0.thickness",
  ]);
  for (const field of Object.keys(shopInputs)) expect(field).toMatch(/^[\w.]+$/);
});

describe("opening a file", () => {
  test("JSON of the same shape is read too", () => {
    expect(readShopText("x.json", JSON.stringify(parsed(testShop)), catalogue, shop).faults).toEqual([]);
  });

  test("what an older file leaves out of a machine is filled and named; a whole machine is not", () => {
    const older = testShop.replace("  noseRadius: 1 mm\n", "");
    const { file, filled, faults } = readShopText("x.yaml", older, catalogue, shop);
    expect(faults).toEqual([]);
    expect(filled).toEqual(["brake.noseRadius"]);
    expect(file?.brake).toMatchObject({ noseRadius: "1.6 mm" });
    expect(readShopText("x.yaml", testShop.replace(/rolls:\n( .*\n)+/, ""), catalogue, shop).faults).toEqual([
      expect.stringMatching(/^Line \d+, rolls: is missing$/),
    ]);
  });

  test("anything else is refused with its line, and never throws", () => {
    expect(readShopText("x.yaml", "name: [", catalogue, shop).faults[0]).toMatch(/^Line 1/);
    expect(readShopText("x.yaml", "x".repeat(600_000), catalogue, shop).faults).toHaveLength(1);
    fc.assert(
      fc.property(fc.string({ maxLength: 300 }), (text) => {
        const { file, faults } = readShopText("x.yaml", text, catalogue, shop);
        expect(file).toBeUndefined();
        expect(faults.length).toBeGreaterThan(0);
      }),
    );
  });
});

test("the table for a spreadsheet quotes what has a comma in it", () => {
  const [bend] = catalogue.shop.bends;
  if (!bend) throw new Error("the demo shop has no bend");
  const [head, row] = bendsCsv([{ ...bend, lot: 'A, "b"' }]).split("\r\n");
  expect(head).toMatch(/^\uFEFFmaterial,thickness \(mm\),radius \(mm\),angle \(deg\),deduction \(mm\)/);
  expect(row).toContain('"A, ""b"""');
});
