import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { loadCatalogue } from "../../src/catalogue/load.ts";
import { commandLine } from "../../src/components/calculator/command-line.ts";
import { contextOf, fieldLook, outputLook, rangeText, storedText } from "../../src/components/calculator/texts.ts";
import { stepTexts } from "../../src/components/calculator/working.ts";
import { addressParts } from "../../src/lib/address.ts";
import { symbolKeys } from "../../src/lib/formula.ts";
import { rawFromWords } from "../../src/lib/json-inputs.ts";
import { lengthViews } from "../../src/lib/quantity/format.ts";
import { runWorksheet } from "../../src/lib/worksheet.ts";
import { anyRaw, everySheet, goodRaw, junk } from "../worksheets/arbitrary.ts";

const catalogue = loadCatalogue();
const view = fc.constantFrom(...lengthViews);
const digits = fc
  .tuple(fc.integer({ min: 0, max: 9999 }), fc.option(fc.stringMatching(/^\d{1,4}$/)))
  .map(([whole, part]) => (part === null ? `${whole}` : `${whole}.${part}`));
const fraction = fc
  .tuple(fc.integer({ min: 0, max: 40 }), fc.integer({ min: 1, max: 63 }))
  .map(([whole, part]) => (whole === 0 ? `${part}/64` : `${whole}-${part}/64`));

describe("what a field keeps", () => {
  test("a number gets the unit it was typed in", () => {
    expect(storedText("1.2", "length", "mm", {})).toBe("1.2mm");
    expect(storedText("0.048", "length", "inch", {})).toBe("0.048in");
    expect(storedText("3/64", "length", "fraction", {})).toBe("3/64in");
    expect(storedText("1,5", "length", "mm", {})).toBe("1.5mm");
    expect(storedText("0.048 in", "length", "mm", {})).toBe("0.048in");
    expect(storedText("90", "angle", "inch", {})).toBe("90deg");
    expect(storedText("45 ksi", "stress", "mm", {})).toBe("45ksi");
  });

  test("a gauge number stays one, so that it follows the metal", () => {
    const inputs = { material: { kind: "material", label: "Material", default: "steel-cr" } } as const;
    const steel = contextOf(inputs, {}, catalogue);
    expect(storedText("18 ga", "length", "mm", steel)).toBe("18ga");
    // Manufacturers' Standard gauge 18 is 0.0478 in; 0.0478 · 25.4 = 1.214 mm.
    expect(fieldLook("18ga", undefined, "length", "mm", steel)).toEqual({ text: "18ga", unit: "", note: "= 1.21 mm" });
    expect(fieldLook("18ga", undefined, "length", "inch", steel).note).toBe("= 0.048 in");
  });

  test("whatever cannot be read is kept letter for letter", () => {
    fc.assert(
      fc.property(junk, view, view, (typed, one, other) => {
        const stored = storedText(typed, "length", one, {});
        if (stored !== typed) return;
        expect(fieldLook(stored, undefined, "length", other, {}).text.trim()).toBeTypeOf("string");
        expect(storedText(stored, "length", one, {})).toBe(stored);
      }),
    );
  });

  test("switching units back and forth gives back the digits that were typed", () => {
    fc.assert(
      fc.property(digits, fc.constantFrom("mm", "inch" as const), view, (typed, one, other) => {
        const stored = storedText(typed, "length", one, {});
        fieldLook(stored, undefined, "length", other, {});
        expect(fieldLook(stored, undefined, "length", one, {}).text).toBe(typed);
      }),
    );
    fc.assert(
      fc.property(fraction, (typed) => {
        const stored = storedText(typed, "length", "fraction", {});
        expect(fieldLook(stored, undefined, "length", "fraction", {}).text).toBe(typed);
      }),
    );
  });

  test("storing what is stored changes nothing, in any view", () => {
    fc.assert(
      fc.property(fc.oneof(digits, fraction), view, view, (typed, one, other) => {
        const stored = storedText(typed, "length", one, {});
        expect(storedText(stored, "length", other, {})).toBe(stored);
      }),
    );
  });
});

describe("what a field shows", () => {
  test("the unit is behind a bare number only", () => {
    expect(fieldLook("1.2mm", undefined, "length", "mm", {})).toEqual({ text: "1.2", unit: "mm", note: "" });
    expect(fieldLook("1.2mm", "1.2 mm", "length", "mm", {})).toEqual({ text: "1.2 mm", unit: "", note: "" });
    expect(fieldLook("3/64in", "3/64 in", "length", "mm", {})).toEqual({ text: "3/64 in", unit: "", note: "= 1.19 mm" });
    expect(fieldLook("45ksi", undefined, "stress", "mm", {}).note).toBe("= 310 N/mm²");
    expect(fieldLook("0.45", undefined, "ratio", "mm", {})).toEqual({ text: "0.45", unit: "", note: "" });
  });

  test("a range has no more digits than it needs", () => {
    const range = { kind: "quantity", label: "x", quantity: "length", min: 0, max: 10_000 } as const;
    expect(rangeText(range, "mm")).toBe("0 to 10\u202f000 mm");
    expect(rangeText({ ...range, aboveMin: true }, "inch")).toBe("above 0, up to 393.701 in");
    expect(rangeText({ ...range, quantity: "angle", min: 1, max: 180 }, "inch")).toBe("1 to 180°");
  });
});

test("a fraction says how far it is from the answer, unless it is exact", () => {
  const output = { kind: "quantity", label: "x", quantity: "length" } as const;
  expect(outputLook(output, 25.4, "fraction")).toEqual({ number: "1", unit: "in" });
  // 82 mm = 3.2283 in; 207/64 in = 82.153 mm.
  expect(outputLook(output, 82, "fraction")).toEqual({ number: "3-15/64", unit: "in", off: "+0.15 mm" });
});

test("an output with decimals of its own is shown with them; a length goes by its fineness", () => {
  const angle = { kind: "quantity", label: "Angle", quantity: "angle", decimals: 3 } as const;
  expect(outputLook(angle, 0.08607, "mm")).toEqual({ number: "0.086", unit: "°" });
  const length = { kind: "quantity", label: "Length", quantity: "length", decimals: 5 } as const;
  expect(outputLook(length, 25.4, "inch")).toEqual({ number: "1.000", unit: "in" });
});

describe("the working", () => {
  test.each(everySheet)("of $id has a text for every slot, whatever the values", ({ sheet }) => {
    fc.assert(
      fc.property(goodRaw(sheet.inputs), (raw) => {
        for (const step of runWorksheet(sheet, raw, catalogue).answer?.working ?? []) {
          const texts = stepTexts(step);
          for (const key of [...symbolKeys(step.formula), step.formula.result]) {
            expect(texts[key], `${step.formula.id} ${key}`).toMatch(/\S/);
            expect(texts[key]).not.toMatch(/NaN|Infinity/);
          }
        }
      }),
      { numRuns: 40 },
    );
  });
});

describe("the command line of a calculator", () => {
  test.each(everySheet)("of $id gives the same answer", ({ id, sheet }) => {
    fc.assert(
      fc.property(anyRaw(sheet.inputs), (raw) => {
        const { answer } = runWorksheet(sheet, raw, catalogue);
        if (!answer) return;
        const parts = addressParts(sheet.inputs, raw);
        const text = commandLine(id, sheet.inputs, parts, raw);
        const prefix = `npm run -s calc -- ${id}`;
        expect(text.startsWith(prefix)).toBe(true);
        // Undoes the quoting of a POSIX shell: a word is bare or in single quotes, a quote in it is '\''.
        const words = [...text.slice(prefix.length).matchAll(/ ((?:'[^']*'|\\'|[^ '\\])+)/g)].map(([, word = ""]) =>
          word.replace(/'([^']*)'|\\(')/g, (_, quoted: string | undefined, single: string | undefined) => quoted ?? single ?? ""),
        );
        const given = Object.fromEntries(
          words.map((word) => [word.slice(0, word.indexOf("=")), word.slice(word.indexOf("=") + 1)]),
        );
        expect(runWorksheet(sheet, rawFromWords(sheet.inputs, given), catalogue).answer?.outputs).toEqual(answer.outputs);
      }),
      { numRuns: 30 },
    );
  });
});
