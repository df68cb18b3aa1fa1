import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { calc } from "../../scripts/calc/command.ts";
import { loadCatalogue } from "../../src/catalogue/load.ts";
import { startingAt } from "../../src/components/calculator/Calculator.tsx";
import { readSettings, usual } from "../../src/components/display/settings.ts";
import { addressParts, fixedFromAddress, fixedKey, queryText, rawFromAddress, withFixed } from "../../src/lib/address.ts";
import type { Raw } from "../../src/lib/inputs.ts";
import { partInputs } from "../../src/lib/part/form.ts";
import { worksheets } from "../../src/lib/registry.ts";
import { asTyped } from "../components/as-typed.ts";
import { anyRaw, everySheet } from "../worksheets/arbitrary.ts";

/** What a link fixes: written beside the values, read again, kept whatever is done to the rest. */

const catalogue = loadCatalogue();
const inputs = worksheets.find(({ id }) => id === "bend-length")?.inputs ?? {};
const read = (query: string) => fixedFromAddress("bend-length", inputs, new URLSearchParams(query));

test("no form has an input that would be taken for the list of fixed ones, or for a packed address", () => {
  const keys = [...worksheets.map((sheet) => sheet.inputs), partInputs].flatMap((each) => Object.keys(each));
  expect(keys.length).toBeGreaterThan(100);
  expect(keys.filter((key) => key === fixedKey || key === "packed")).toEqual([]);
});

describe("reading", () => {
  test.each([
    ["bend-length.fixed=thickness,material", ["thickness", "material"], []],
    ["bend-length.fixed=thickness,+material+,", ["thickness", "material"], []],
    ["bend-length.fixed=thickness&bend-length.fixed=thickness,angle", ["thickness", "angle"], []],
    ["bend-length.fixed=", [], []],
    ["bend-length.fixed=colour,thickness,toString", ["thickness"], ["colour", "toString"]],
    ["shear-load.fixed=thickness", [], []],
  ])("%s", (query, keys, unknown) => {
    expect(read(query)).toEqual({ keys, unknown });
  });

  test("the list itself is no value of the form", () => {
    const raw = rawFromAddress("bend-length", inputs, new URLSearchParams("bend-length.fixed=thickness&bend-length.angle=45"));
    expect(raw).toEqual({ angle: "45" });
  });
});

test("stays readable, and a fixed value is written even where it is the default of the page", () => {
  const parts = addressParts(
    inputs,
    { thickness: "1.2mm", angle: "45deg" },
    { keys: ["thickness", "material"], unknown: ["colour"] },
  );
  expect(queryText(parts.map(([key, text]): [string, string] => [`bend-length.${key}`, text]))).toBe(
    "bend-length.material=steel-cr&bend-length.thickness=1.2mm&bend-length.angle=45deg&bend-length.fixed=thickness,material,colour",
  );
});

describe("a link with fixed values means the same on a page with other start values", () => {
  test.each(everySheet)("$id", ({ id, sheet }) => {
    const keys = Object.keys(sheet.inputs);
    fc.assert(
      fc.property(anyRaw(sheet.inputs), anyRaw(sheet.inputs), fc.subarray(keys), (typed, preset, fixed) => {
        const raw = asTyped(sheet.inputs, typed);
        const held = { keys: fixed, unknown: [] };
        const parts = addressParts(sheet.inputs, raw, held).map(([key, text]): [string, string] => [`${id}.${key}`, text]);
        const parameters = [...new URLSearchParams(queryText(parts))];
        const other = startingAt(sheet.inputs, asTyped(sheet.inputs, preset));
        expect(fixedFromAddress(id, other, parameters)).toEqual(held);
        const back = rawFromAddress(id, other, parameters);
        const own = addressParts(sheet.inputs, raw, held);
        for (const key of fixed) {
          const [, text] = own.find(([name]) => name === key) ?? [];
          if (text !== undefined) expect(addressParts(other, back, held).find(([name]) => name === key)?.[1], key).toBe(text);
        }
      }),
      { numRuns: 40 },
    );
  });
});

test("whatever is put in place of the values, the fixed ones stay", () => {
  const keys = Object.keys(inputs);
  fc.assert(
    fc.property(anyRaw(inputs), anyRaw(inputs), fc.subarray(keys), (before, next, fixed) => {
      const after: Raw = withFixed(asTyped(inputs, next), asTyped(inputs, before), { keys: fixed, unknown: [] });
      for (const key of keys)
        expect(after[key]).toEqual((fixed.includes(key) ? asTyped(inputs, before) : asTyped(inputs, next))[key]);
    }),
  );
});

describe("elsewhere such an address stays sane", () => {
  test("the screen of the shop takes its units and nothing else", () => {
    expect(readSettings(null, "?bend-length.fixed=thickness&bend-length.thickness=2mm&units=inch")).toEqual({
      settings: { ...usual, units: "inch" },
      refused: [],
      changed: true,
    });
  });

  test("the command line, which has nothing to fix, says so by name", () => {
    const { code, error } = calc(["bend-length", "thickness=1.2mm", "fixed=thickness"], catalogue);
    expect(code).toBe(2);
    expect(error).toMatchObject({ field: "fixed", value: "thickness" });
  });
});
