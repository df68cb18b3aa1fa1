import fc from "fast-check";
import { junkTexts } from "../../scripts/fire/junk-texts.ts";
import { materialIds } from "../../src/lib/catalogue.ts";
import type { Input, Inputs, ListInput, QuantityInput, Raw } from "../../src/lib/inputs.ts";
import { kindOf } from "../../src/lib/quantity/units.ts";
import { worksheets } from "../../src/lib/registry.ts";
import type { Worksheet } from "../../src/lib/worksheet.ts";

/** What people type that is not a value: by mistake, in haste, in another alphabet, or to see what happens. */
export const junk = fc.oneof(
  fc.constantFrom(...junkTexts),
  fc.string({ maxLength: 30 }),
  fc.string({ unit: "binary", maxLength: 12 }),
);

function numberText(value: number): string {
  return value.toString().replace("+", "");
}

function quantityText({ quantity, min, max }: QuantityInput): fc.Arbitrary<string> {
  const units = Object.entries(kindOf(quantity).units);
  const inside = fc.double({ min, max, noNaN: true }).map((value) => (quantity === "count" ? Math.round(value) : value));
  // Small values matter most in a shop, and a uniform draw would hardly ever give one.
  const small = fc.double({ min: 0, max: 1, noNaN: true }).map((share) => min + (max - min) * share ** 4);
  const round = fc.integer({ min: Math.ceil(min), max: Math.floor(max) });
  const good = fc.oneof(inside, small, round).map(numberText);
  const inUnit = fc
    .tuple(fc.oneof(inside, small), fc.constantFrom(...units))
    .map(([value, [key, { factor, offset = 0 }]]) => `${numberText((value - offset) / factor)} ${key}`);
  const edge = fc.constantFrom(min, max, min - 1, max + 1, min / 2, max * 2, 0, -1, 1e-12, 1e12).map(numberText);
  return fc.oneof({ weight: 4, arbitrary: good }, { weight: 3, arbitrary: inUnit }, edge, junk);
}

function listRows(list: ListInput): fc.Arbitrary<Record<string, string>[]> {
  const row = fc.record(Object.fromEntries(Object.entries(list.columns).map(([key, cell]) => [key, anyText(cell)])), {
    requiredKeys: [],
  }) as fc.Arbitrary<Record<string, string>>;
  return fc.array(row, { minLength: 0, maxLength: Math.min(list.maxRows + 1, 8) });
}

function anyText(input: Input): fc.Arbitrary<string> {
  switch (input.kind) {
    case "quantity":
      return quantityText(input);
    case "choice":
      return fc.oneof({ weight: 5, arbitrary: fc.constantFrom(...Object.keys(input.choices)) }, junk);
    case "material":
      return fc.oneof({ weight: 8, arbitrary: fc.constantFrom(...materialIds) }, junk);
    default:
      return junk;
  }
}

/** Anything a form, an address or a command line could hand to a calculator. */
export function anyRaw(inputs: Inputs): fc.Arbitrary<Raw> {
  const fields = Object.entries(inputs).map(([key, input]) => {
    const value = input.kind === "list" ? fc.oneof({ weight: 6, arbitrary: listRows(input) }, junk) : anyText(input);
    return [key, value] as const;
  });
  const known = fc.record(Object.fromEntries(fields), { requiredKeys: [] });
  const unknown = fc.dictionary(fc.string({ maxLength: 8 }), junk, { maxKeys: 1 });
  return fc.oneof(
    { weight: 9, arbitrary: known },
    fc.tuple(known, unknown).map(([some, more]) => ({ ...more, ...some })),
  ) as fc.Arbitrary<Raw>;
}

/** Values of one input that the calculator has to take, unless they clash with another input. */
export function goodRaw(inputs: Inputs): fc.Arbitrary<Raw> {
  const fields = Object.entries(inputs).flatMap(([key, input]): [string, fc.Arbitrary<string>][] => {
    if (input.kind === "material") return [[key, fc.constantFrom(...materialIds)]];
    if (input.kind === "choice") return [[key, fc.constantFrom(...Object.keys(input.choices))]];
    if (input.kind !== "quantity") return [];
    const { min, max, quantity } = input;
    const value = fc
      .double({ min: 0, max: 1, noNaN: true })
      .map((share) => min + (max - min) * share ** 3)
      .map((number) => (quantity === "count" ? Math.round(number) : number))
      .filter((number) => number > min || !input.aboveMin);
    return [[key, value.map(numberText)]];
  });
  return fc.record(Object.fromEntries(fields), { requiredKeys: [] }) as fc.Arbitrary<Raw>;
}

export const everySheet: readonly { id: string; sheet: Worksheet }[] = worksheets.map((sheet) => ({ id: sheet.id, sheet }));

/**
 * Every quantity input of every calculator, the cells of lists left out. The properties of a metal that may be entered are one
 * table shared by all calculators, so each stands here once.
 */
const everyUse = worksheets.flatMap((sheet) =>
  Object.entries(sheet.inputs).flatMap(([key, input]) =>
    input.kind === "quantity" ? [{ name: `${sheet.id}.${key}`, sheet, key, input }] : [],
  ),
);
export const everyQuantity = everyUse.filter(
  ({ key, input }, index) => !input.override || everyUse.findIndex((use) => use.input.override && use.key === key) === index,
);

/** A text just outside a range, in the base unit. */
export function outside({ min, max, quantity, aboveMin }: QuantityInput): { below: string; above: string } {
  const step = quantity === "count" ? 1 : Math.max(1e-6, Math.abs(max) * 1e-6);
  return { below: String(aboveMin ? min : min - step), above: String(max + step) };
}
