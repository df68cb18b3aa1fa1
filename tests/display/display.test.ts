import { describe, expect, test } from "vitest";
import { loadCatalogue } from "../../src/catalogue/load.ts";
import { cardsOf } from "../../src/components/display/cards.ts";
import { inputOf, otherInputs, textOf, withText } from "../../src/components/display/fields.ts";
import { limitsOf } from "../../src/components/display/limits.ts";
import { machines, machinesOf } from "../../src/components/display/machines.ts";
import { isOnlyHere, phoneAddress } from "../../src/components/display/phone.ts";
import { idleTimes, readSettings, usual } from "../../src/components/display/settings.ts";
import { longestPiece, pieces, shortName } from "../../src/components/display/words.ts";
import { rawFromAddress } from "../../src/lib/address.ts";
import { worksheetById } from "../../src/lib/registry.ts";
import { machineCautions, machineIds } from "../../src/lib/shop/machine-cautions.ts";
import { runWorksheet, type Worksheet } from "../../src/lib/worksheet.ts";

const catalogue = loadCatalogue();

function sheetOf(id: string): Worksheet {
  const sheet = worksheetById(id);
  if (!sheet) throw new Error(`There is no worksheet ${id}`);
  return sheet;
}

describe.each(machineIds)("%s", (id) => {
  const machine = machines[id];
  const sheet = sheetOf(machine.sheet);
  const raw = machine.start?.(catalogue.shop) ?? {};

  test("has fields, answers and cautions that exist", () => {
    for (const field of machine.fields) expect(inputOf(sheet.inputs, field).label).toMatch(/\w/);
    for (const key of machine.shows) expect(Object.keys(sheet.outputs)).toContain(key);
    for (const caution of machineCautions[id]) expect(Object.keys(catalogue.cautions)).toContain(caution);
    expect(machineCautions[id]).toContain("defer-to-manual");
  });

  test("has an answer with the values it begins with", () => {
    expect(runWorksheet(sheet, raw, catalogue).problems).toEqual([]);
  });

  test("has limits in every unit", () => {
    for (const view of ["mm", "inch", "fraction"] as const)
      for (const { label, value } of limitsOf(id, catalogue, view)) {
        expect(label).toMatch(/\w/);
        expect(value).toMatch(/\w/);
        expect(value).not.toMatch(/NaN|undefined/);
      }
  });

  test("a phone that opens the address has the same values and the same answer", () => {
    const typed = machine.fields.reduce((before, field) => {
      const input = inputOf(sheet.inputs, field);
      return input.kind === "quantity" && /thickness/i.test(field) ? withText(sheet.inputs, before, field, "1.1mm") : before;
    }, raw);
    const address = new URL(phoneAddress("https://shop.example/book/", sheet, typed));
    expect(address.pathname).toBe(`/book${sheet.page}`);
    expect(address.hash).toBe(`#${sheet.id}`);
    const there = rawFromAddress(sheet.id, sheet.inputs, address.searchParams);
    expect(runWorksheet(sheet, there, catalogue).answer?.outputs).toEqual(runWorksheet(sheet, typed, catalogue).answer?.outputs);
  });
});

test("limits are rounded so that who keeps to them keeps to the plate", () => {
  // The stop of the demo shop goes from 10 to 600 mm: 0.394 and 23.622 in.
  const stop = limitsOf("shear", catalogue, "inch").find(({ value }) => value.includes("–"));
  expect(stop?.value).toBe("0.394–23.622 in");
  // 1.5 mm is 0.0590551 in: 0.060 would be too much.
  expect(limitsOf("shear", catalogue, "fraction")[0]?.value).toBe("up to 0.059 in");
});

test("a cell of a list is a field like any other", () => {
  const { inputs } = sheetOf("bend-length");
  const raw = withText(inputs, {}, "legs.1.leg", "30mm");
  expect(textOf(inputs, raw, "legs.0.leg")).toBe("60mm");
  expect(textOf(inputs, raw, "legs.1.leg")).toBe("30mm");
});

test("what cannot be changed is named, the strengths of the metal aside", () => {
  expect(otherInputs(sheetOf("shear-load"), machines.shear.fields, {})).toEqual(["rake"]);
});

test("a shop without a furnace has no place for one", () => {
  expect(machinesOf({ ...catalogue.shop, furnaces: [] })).not.toContain("furnace");
});

describe("pieces of a caution", () => {
  test("are whole sentences that can be read at a glance, and nothing is left out", () => {
    for (const { text } of Object.values(catalogue.cautions)) {
      const found = pieces(text);
      expect(found.join(" ")).toBe(text.trim());
      for (const piece of found.filter((each) => /[.!?]\s/.test(each))) expect(piece.length).toBeLessThanOrEqual(longestPiece);
    }
  });

  test("names lose only their brackets", () => {
    expect(shortName("Copper, soft (C11000 annealed)")).toBe("Copper, soft");
    expect(shortName("Structural steel (S235)")).toBe("Structural steel");
  });
});

test("the cards are of three kinds, and no two of a kind follow each other", () => {
  const cards = cardsOf(catalogue, catalogue.cautions, "mm");
  expect(new Set(cards.map(({ kind }) => kind))).toEqual(new Set(["limits", "caution", "number"]));
  cards.forEach((card, at) => {
    expect(card.kind).not.toBe(cards[(at + 1) % cards.length]?.kind);
    expect(card.lines.length + card.text.length).toBeGreaterThan(0);
  });
  // 1.5 mm × 1250 mm × 2500 mm at 7850 kg/m³ = 36.8 kg
  expect(cards.flatMap(({ lines }) => lines).map(({ value }) => value)).toContain("36.80 kg");
});

describe("settings", () => {
  test("an address sets them, and what cannot be used is named and passed over", () => {
    expect(readSettings(null, "?idle=120&units=inch&site=https://shop.example/book")).toEqual({
      settings: { idle: 120, units: "inch", site: "https://shop.example/book/" },
      refused: [],
      changed: true,
    });
    for (const bad of ["idle=14", "idle=1801", "idle=1e2", "idle=", "units=cm", "site=javascript:alert(1)", "site=shop"])
      expect(readSettings(null, `?${bad}`)).toEqual({ settings: usual, refused: [bad], changed: false });
  });

  test("what is kept comes back, also when something in it cannot be read", () => {
    expect(readSettings('{"idle":60,"units":"fraction","site":""}', "").settings).toEqual({
      ...usual,
      idle: 60,
      units: "fraction",
    });
    expect(readSettings('{"idle":5,"units":"inch"}', "").settings).toEqual({ ...usual, units: "inch" });
    for (const broken of ["", "nonsense", "null", "7", "[]"]) expect(readSettings(broken, "").settings).toEqual(usual);
  });

  test("ninety seconds are usual, and the warning leaves time to read it", () => {
    expect(idleTimes(usual).forgetAfter).toBe(90_000);
    expect(idleTimes({ ...usual, idle: 15 }).warnBefore).toBe(5000);
  });
});

test.each([
  ["http://127.0.0.1:4321/x", true],
  ["http://localhost/", true],
  ["http://[::1]:80/", true],
  ["https://shop.example/", false],
  ["http://192.168.1.20:4321/", false],
])("%s leads to another machine on every phone: %s", (address, expected) => {
  expect(isOnlyHere(address)).toBe(expected);
});
