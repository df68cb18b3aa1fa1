import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { loadCatalogue } from "../../src/catalogue/load.ts";
import { addressParts, rawFromAddress } from "../../src/lib/address.ts";
import { letterTex, numberTex, symbolKeys } from "../../src/lib/formula.ts";
import { lengthViews } from "../../src/lib/quantity/format.ts";
import { parseQuantity } from "../../src/lib/quantity/parse.ts";
import { phraseText } from "../../src/lib/quantity/phrase.ts";
import type { Quantity } from "../../src/lib/quantity/units.ts";
import { type Answer, runWorksheet, type Worksheet } from "../../src/lib/worksheet.ts";
import { anyRaw, everyQuantity, everySheet, goodRaw, junk, outside } from "./arbitrary.ts";

const catalogue = loadCatalogue();
const sourceIds = Object.keys(catalogue.sources);
const noNumber = /NaN|Infinity|undefined|\[object/;

function rowsOf(value: unknown): readonly object[] {
  expect(Array.isArray(value)).toBe(true);
  return value as readonly object[];
}

/** Everything an answer shows has to be showable, not only its outputs. */
function expectSound(sheet: Worksheet, answer: Answer): void {
  expect(Object.keys(answer.outputs).sort()).toEqual(Object.keys(sheet.outputs).sort());
  expect(JSON.stringify(answer.outputs)).not.toMatch(noNumber);
  for (const [key, output] of Object.entries(sheet.outputs)) {
    const value = answer.outputs[key];
    if (output.kind === "quantity") expect(value === null || Number.isFinite(value), `${key}: ${value}`).toBe(true);
    if (output.kind === "choice") expect(Object.keys(output.choices)).toContain(value);
    if (output.kind === "list" && !output.plain)
      for (const row of rowsOf(value)) expect(Object.keys(row).sort()).toEqual(Object.keys(output.columns).sort());
  }
  if (Object.values(answer.outputs).includes(null))
    expect(
      answer.remarks.some(({ level }) => level === "caution"),
      "a value not known needs a caution saying why",
    ).toBe(true);

  for (const { phrase, source, field } of answer.remarks) {
    for (const view of lengthViews) expect(phraseText(phrase, view)).not.toMatch(noNumber);
    if (source !== undefined && source !== "entered") expect(sourceIds).toContain(source);
    if (field !== undefined) expect(Object.keys(sheet.inputs)).toContain(field.split(".")[0]);
  }
  for (const { formula, values } of answer.working) {
    expect(sheet.formulas).toContain(formula);
    expect(letterTex(formula)).not.toMatch(/\\v\{/);
    const shown = numberTex(formula, (key) => String(values[key]));
    expect(shown, `${formula.id}: ${JSON.stringify(values)}`).not.toMatch(noNumber);
    for (const key of [...symbolKeys(formula), formula.result]) expect(values, formula.id).toHaveProperty(key);
  }
  for (const { columns, rows } of answer.tables ?? [])
    for (const { cells, source } of rows) {
      expect(cells).toHaveLength(columns.length);
      for (const cell of cells) if (typeof cell === "number") expect(Number.isFinite(cell)).toBe(true);
      if (source !== undefined && source !== "entered") expect(sourceIds).toContain(source);
    }
  for (const source of answer.sources) expect(sourceIds).toContain(source);
}

describe("every calculator", () => {
  test.each(everySheet)("$id answers or names what is wrong, whatever is typed", ({ sheet }) => {
    fc.assert(
      fc.property(anyRaw(sheet.inputs), (raw) => {
        const { answer, problems } = runWorksheet(sheet, raw, catalogue);
        if (answer) {
          expect(problems).toEqual([]);
          expectSound(sheet, answer);
          return;
        }
        expect(problems.length).toBeGreaterThan(0);
        for (const problem of problems) {
          const [key = ""] = problem.field.split(".");
          expect(
            [...Object.keys(sheet.inputs), ...Object.keys(raw)].some((known) => known === key || known === problem.field),
          ).toBe(true);
          expect(typeof problem.value).toBe("string");
          for (const view of lengthViews) {
            // What was typed is quoted; it may say anything.
            expect(problem.text(view).replace(/“[^”]*”/g, "")).not.toMatch(noNumber);
            expect(problem.text(view).length).toBeGreaterThan(10);
          }
        }
      }),
      { numRuns: 120 },
    );
  });

  test.each(everySheet)("$id answers for values within its ranges, or says which two do not go together", ({ sheet }) => {
    let answered = 0;
    fc.assert(
      fc.property(goodRaw(sheet.inputs), (raw) => {
        const { answer, problems } = runWorksheet(sheet, raw, catalogue);
        if (answer) {
          answered += 1;
          expectSound(sheet, answer);
        } else
          for (const { message } of problems) expect(message).toMatch(/must|needs|Choose|only|not entered|cannot|no |goes up to/);
      }),
      { numRuns: 80 },
    );
    expect(answered).toBeGreaterThan(0);
  });

  test.each(everySheet)("$id gives the same answer for the same input, and for its own address", ({ sheet }) => {
    fc.assert(
      fc.property(goodRaw(sheet.inputs), (raw) => {
        const first = runWorksheet(sheet, raw, catalogue);
        expect(runWorksheet(sheet, raw, catalogue).answer).toEqual(first.answer);
        const parts = addressParts(sheet.inputs, raw).map(([key, text]): [string, string] => [`${sheet.id}.${key}`, text]);
        expect(runWorksheet(sheet, rawFromAddress(sheet.id, sheet.inputs, parts), catalogue).answer).toEqual(first.answer);
      }),
      { numRuns: 30 },
    );
  });

  test.each(everySheet)("$id works with its defaults and cites only what is in the data", ({ sheet }) => {
    const { answer, problems } = runWorksheet(sheet, {}, catalogue);
    expect(problems.map(({ message }) => message)).toEqual([]);
    if (answer) expectSound(sheet, answer);
    for (const source of sheet.sources) expect(sourceIds).toContain(source);
    for (const caution of sheet.cautions) expect(Object.keys(catalogue.cautions)).toContain(caution);
    expect(sheet.validity.length).toBeGreaterThan(0);
    expect(new Set(sheet.formulas.map(({ id }) => id)).size).toBe(sheet.formulas.length);
    expect(Object.keys(sheet.outputs)).toContain(sheet.main);
  });
});

function isValue(text: string, quantity: Quantity): boolean {
  try {
    return Number.isFinite(parseQuantity(text, quantity).value);
  } catch {
    return false;
  }
}

describe("every quantity of every calculator", () => {
  test.each(everyQuantity)("$name refuses what is out of range with field, value and range", ({ sheet, key, input }) => {
    for (const text of Object.values(outside(input))) {
      const problem = runWorksheet(sheet, { [key]: text }, catalogue).problems.find(({ field }) => field === key);
      expect(problem, `${key}=${text}`).toBeDefined();
      expect(problem?.value).toBe(text);
      expect(problem?.message).toContain(input.label);
      expect(problem?.message).toMatch(/must be (a whole number )?(from|above) .* (to|up to) .*; it is .*\d/);
    }
  });

  test.each(everyQuantity)("$name refuses junk with field, value and range", ({ sheet, key, input }) => {
    fc.assert(
      fc.property(junk, (text) => {
        const problem = runWorksheet(sheet, { [key]: text }, catalogue).problems.find(({ field }) => field === key);
        if (!problem) return;
        expect(problem.value).toBe(text);
        expect(problem.message).toMatch(/must be|Allowed is/);
        // What is a value after all, as “1,5”, may clash with another input; then the sentence has words of its own.
        if (!isValue(text, input.quantity)) expect(problem.message).toContain(input.label.split(" ").slice(0, 2).join(" "));
      }),
      { numRuns: 15 },
    );
  });
});
