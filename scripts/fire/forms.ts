import { placesOf, rowsOf } from "../../src/lib/assign/place.ts";
import { materialIds } from "../../src/lib/catalogue.ts";
import type { Input, Inputs, ListInput, QuantityInput, Raw, RawRow } from "../../src/lib/inputs.ts";
import { rawFromWords } from "../../src/lib/json-inputs.ts";
import { parseQuantity } from "../../src/lib/quantity/parse.ts";
import { kindOf } from "../../src/lib/quantity/units.ts";
import type { Draw } from "./draw.ts";
import { junkTexts } from "./junk-texts.ts";

/** Words for fields that take any text; none of them looks like a number gone wrong, so that such a word in an answer is a fault. */
const words = [
  "",
  " ",
  "base",
  "north.1",
  "south.2",
  "west.1",
  "tray",
  "ß",
  "a:b;c",
  "<i>",
  "__proto__",
  "x".repeat(200),
] as const;

const numberText = (value: number) => String(value).replace("+", "");

/** A value in the range of an input: evenly, by size, near the lower end, or an end itself. */
export function valueInside({ quantity, min, max, aboveMin }: QuantityInput, draw: Draw): number {
  const span = max - min;
  const small = Math.max(min, span * 1e-6);
  const value = [
    () => min + span * draw.share(),
    () => min + span * draw.share() ** 4,
    () => small * (max / small) ** draw.share(),
    () => Math.round(min + span * draw.share() ** 2),
    () => (draw.chance(0.5) ? min : max),
  ][draw.below(5)]?.() as number;
  const whole = quantity === "count" ? Math.round(value) : value;
  const kept = Math.min(max, Math.max(min, whole));
  return aboveMin && kept === min ? max : kept;
}

/** A value as a person or a program hands it over: bare in the base unit, or in any unit with fewer digits. */
function asTyped(value: number, input: QuantityInput, draw: Draw): string {
  if (draw.chance(0.4)) return numberText(value);
  const [unit, { factor, offset = 0 }] = draw.of(Object.entries(kindOf(input.quantity).units));
  const inUnit = (value - offset) / factor;
  return `${numberText(draw.chance(0.5) ? inUnit : Number(inUnit.toPrecision(1 + draw.below(6))))} ${unit}`;
}

function badText(input: Input, draw: Draw): string {
  if (input.kind !== "quantity" || draw.chance(0.4)) return draw.of(junkTexts);
  const { min, max } = input;
  const value = draw.of([
    min - 1,
    max + 1,
    min - Number.EPSILON,
    max * (1 + 1e-12),
    -max,
    max * 1e6,
    min / 2,
    0,
    -1,
    1e-12,
    1e12,
    1e300,
  ]);
  return numberText(value);
}

function goodText(input: Exclude<Input, ListInput>, draw: Draw): string {
  switch (input.kind) {
    case "quantity":
      return asTyped(valueInside(input, draw), input, draw);
    case "choice":
      return draw.of(Object.keys(input.choices));
    case "material":
      return draw.of(materialIds);
    case "text":
      return draw.of(words).slice(0, input.maxLength);
  }
}

/**
 * How a form is filled in. `near`: a few fields other than in a form that works; `inside`: every value in its range; `slip`: all
 * but one; `wild`: anything anywhere.
 */
export type Manner = "near" | "inside" | "slip" | "wild";

function anyRows(list: ListInput, manner: Manner, draw: Draw): RawRow[] {
  const most = manner === "wild" ? list.maxRows + 1 : list.maxRows;
  const count = Math.max(manner === "wild" ? 0 : list.minRows, Math.min(most, Math.floor(draw.share() ** 3 * 12)));
  return Array.from({ length: count }, () =>
    Object.fromEntries(
      Object.entries(list.columns).flatMap(([key, cell]): [string, string][] => {
        const optional = cell.default !== undefined || cell.kind === "text" || cell.whenEmpty !== undefined;
        if (draw.chance(optional ? 0.4 : manner === "wild" ? 0.1 : 0)) return [];
        return [[key, manner === "wild" && draw.chance(0.3) ? badText(cell, draw) : goodText(cell, draw)]];
      }),
    ),
  );
}

/** A list as JSON with bare numbers, as the command line takes it. */
function throughJson(inputs: Inputs, raw: Raw): Raw {
  const asNumber = (text: string) => (/^-?\d+(\.\d+)?$/.test(text) ? Number(text) : text);
  const inWords = Object.entries(raw).map(([key, value]) => {
    if (typeof value === "string" || value === undefined) return [key, value ?? ""];
    const input = inputs[key];
    const rows = value.map((row) => Object.fromEntries(Object.entries(row).map(([name, text]) => [name, asNumber(text)])));
    const plain = input?.kind === "list" && input.plain;
    return [key, JSON.stringify(plain ? rows.map((row) => Object.values(row)[0] ?? null) : rows)];
  });
  return rawFromWords(inputs, Object.fromEntries(inWords));
}

/** A value of the size that stands there, or anything in the range. */
function textNear(input: Exclude<Input, ListInput>, text: string | undefined, draw: Draw): string {
  if (input.kind !== "quantity" || text === undefined || draw.chance(0.15)) return goodText(input, draw);
  const { value } = parseQuantity(text, input.quantity);
  const moved = (value === 0 ? draw.share() : value) * 2 ** (2 * draw.share() - 1);
  const whole = input.quantity === "count" ? Math.round(moved) : moved;
  return asTyped(Math.min(input.max, Math.max(input.min, whole)), input, draw);
}

/** A form that works, with a few fields and cells changed. */
function nearForm(inputs: Inputs, start: Raw, draw: Draw): Raw {
  const raw: Record<string, string | readonly RawRow[] | undefined> = { ...start };
  // One to six changes in a form of any length, more or less.
  const often = Math.min(0.6, (1 + 5 * draw.share()) / placesOf(inputs, start).length);
  for (const [key, input] of Object.entries(inputs)) {
    if (input.kind === "list") {
      const rows = rowsOf(inputs, raw, key);
      raw[key] = rows.map((row) =>
        Object.fromEntries(
          Object.entries(input.columns).flatMap(([name, cell]): [string, string][] => {
            const text = row[name];
            if (draw.chance(often) && (text !== undefined || draw.chance(0.3)))
              return [[name, textNear(cell, text || cell.default, draw)]];
            return text === undefined ? [] : [[name, text]];
          }),
        ),
      );
    } else if (draw.chance(input.kind === "quantity" && input.override ? often / 5 : often)) {
      const text = raw[key] ?? input.default;
      raw[key] = textNear(input, typeof text === "string" && text !== "" ? text : undefined, draw);
    }
  }
  return raw;
}

/**
 * One form filled in.
 * @param starts - forms that work, for `near`
 */
export function anyForm(inputs: Inputs, manner: Manner, draw: Draw, starts: readonly Raw[] = [{}]): Raw {
  if (manner === "near") return nearForm(inputs, draw.of(starts), draw);
  const raw: Record<string, string | readonly RawRow[]> = {};
  const keys = Object.keys(inputs);
  const slipped = manner === "slip" ? draw.of(keys) : undefined;
  for (const key of keys) {
    const input = inputs[key] as Input;
    const bad = key === slipped || (manner === "wild" && draw.chance(0.25));
    // Properties of a metal are hardly ever entered.
    const left = input.kind === "quantity" && input.override ? 0.8 : 0.25;
    if (!bad && draw.chance(left)) continue;
    if (input.kind === "list")
      raw[key] =
        bad && draw.chance(0.3) ? draw.of(junkTexts) : anyRows(input, bad ? "wild" : manner === "wild" ? "wild" : "inside", draw);
    else raw[key] = bad ? badText(input, draw) : goodText(input, draw);
  }
  if (manner === "wild" && draw.chance(0.1)) raw[draw.of(junkTexts)] = draw.of(junkTexts);
  return manner === "inside" && draw.chance(0.2) ? throughJson(inputs, raw) : raw;
}
