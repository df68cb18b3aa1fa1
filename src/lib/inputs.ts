import { type Catalogue, type MaterialId, materialIds } from "./catalogue.ts";
import { InputError } from "./input-error.ts";
import type { Fineness } from "./quantity/format.ts";
import { type ParseContext, ParseError, parseQuantity } from "./quantity/parse.ts";
import { amount, asTyped, atLeast, atMost, type Phrase, say } from "./quantity/phrase.ts";
import { kindOf, type Quantity } from "./quantity/units.ts";
import { gaugeReader } from "./stock/gauge.ts";

interface Described {
  readonly label: string;
  /** One sentence under the field: what it is and how it is measured. */
  readonly help?: string;
}

export interface QuantityInput extends Described {
  readonly kind: "quantity";
  readonly quantity: Quantity;
  readonly fineness?: Fineness;
  /** Printed symbol, where the quantity has one. */
  readonly symbol?: string;
  /** In the base unit. */
  readonly min: number;
  readonly max: number;
  /** The lower limit itself is not allowed. */
  readonly aboveMin?: boolean;
  /** Text in the form a person types. */
  readonly default?: string;
  /** The input may be left out; what is used then, in words. */
  readonly whenEmpty?: string;
  /** A property of the material that this input replaces for one answer; kept with the less used fields. */
  readonly override?: boolean;
}

export interface ChoiceInput extends Described {
  readonly kind: "choice";
  readonly choices: Readonly<Record<string, string>>;
  readonly default?: string;
  readonly whenEmpty?: string;
}

export interface MaterialInput extends Described {
  readonly kind: "material";
  readonly default: MaterialId;
}

export interface TextInput extends Described {
  readonly kind: "text";
  readonly maxLength: number;
  readonly default?: string;
}

export type Cell = QuantityInput | ChoiceInput | TextInput;

export interface ListInput extends Described {
  readonly kind: "list";
  readonly columns: Readonly<Record<string, Cell>>;
  /** One column only: rows are plain values, `[60, 25]`, not objects. */
  readonly plain?: boolean;
  readonly rowName: string;
  readonly minRows: number;
  readonly maxRows: number;
  readonly default: readonly RawRow[];
}

export type Input = QuantityInput | ChoiceInput | MaterialInput | TextInput | ListInput;
export type Inputs = Readonly<Record<string, Input>>;

/** One row of a list, every cell as typed. */
export type RawRow = Readonly<Record<string, string>>;
/** Everything typed into a form, as typed. A key that is left out takes its default. */
export type Raw = Readonly<Record<string, string | readonly RawRow[] | undefined>>;

/** An input with neither a default nor words for `whenEmpty` must be entered. */
type Optional<C, Value> = C extends { default: string } ? Value : C extends { whenEmpty: string } ? Value | undefined : Value;

type CellValue<C> = C extends { kind: "quantity" }
  ? Optional<C, number>
  : C extends { kind: "choice"; choices: infer Choices }
    ? Optional<C, keyof Choices & string>
    : C extends { kind: "text" }
      ? string
      : never;

type RowValue<L> = L extends { columns: infer Columns }
  ? L extends { plain: true }
    ? number
    : { readonly [C in keyof Columns]: CellValue<Columns[C]> }
  : never;

/** The values of a table of inputs after reading: numbers in base units, choices narrowed. */
export type Values<I> = {
  readonly [K in keyof I]: I[K] extends { kind: "material" }
    ? MaterialId
    : I[K] extends { kind: "list" }
      ? readonly RowValue<I[K]>[]
      : CellValue<I[K]>;
};

/** The part of an input that `checkRange` reads. */
export interface Range {
  readonly label: string;
  readonly quantity: Quantity;
  readonly min: number;
  readonly max: number;
  readonly aboveMin?: boolean;
}

function allowed({ quantity, min, max, aboveMin }: Range): Phrase {
  const limit = (value: number) => amount(value, quantity, "setting");
  const most = quantity === "length" ? atMost(max) : limit(max);
  if (quantity === "count" || quantity === "ratio" || quantity === "percent")
    return aboveMin ? say`above ${min} to ${formatPlain(max, quantity)}` : say`from ${min} to ${formatPlain(max, quantity)}`;
  return aboveMin
    ? say`above ${limit(min)} and up to ${most}`
    : say`from ${quantity === "length" ? atLeast(min) : limit(min)} to ${most}`;
}

function formatPlain(value: number, quantity: Quantity): string {
  return quantity === "percent" ? `${value} %` : String(value);
}

/**
 * Refuses a value outside its range with one message naming the field, the value and the range.
 * @throws InputError also for NaN, Infinity and a count that is not whole
 */
export function checkRange(field: string, range: Range, value: number, typed: unknown = value): void {
  const { label, quantity, min, max, aboveMin } = range;
  if (quantity === "count" && Number.isFinite(value) && !Number.isInteger(value))
    throw new InputError(field, typed, say`${label} must be a whole number ${allowed(range)}; it is ${String(value)}.`);
  if (value >= min && value <= max && !(aboveMin && value === min)) return;
  const given = Number.isFinite(value) ? exactly(value, quantity) : say`not a number`;
  throw new InputError(field, typed, say`${label} must be ${allowed(range)}; it is ${given}.`);
}

/** The value given, with digits enough to see why it was refused: a size that rounds to its limit shows more. */
export function exactly(value: number, quantity: Quantity): Phrase {
  if (quantity === "length") return [{ ...amount(value, quantity, "setting"), exact: true }];
  const unit = kindOf(quantity).units[kindOf(quantity).base]?.text ?? "";
  return [`${Number(value.toPrecision(6))}${unit === "" || unit === "°" ? unit : ` ${unit}`}`];
}

/** Checks every value of a formula's input table. @throws InputError for the first that is missing or out of range */
export function checkRanges<R extends Readonly<Record<string, Range>>>(
  ranges: R,
  values: { readonly [K in keyof R]: number },
): void {
  for (const [key, range] of Object.entries(ranges)) checkRange(key, range, values[key] as number);
}

function readCell(field: string, cell: Cell, typed: string, context: ParseContext): unknown {
  if (cell.kind === "text") {
    if (typed.length > cell.maxLength)
      throw new InputError(field, typed, say`${cell.label} may have up to ${cell.maxLength} characters; it has ${typed.length}.`);
    return typed;
  }
  if (cell.kind === "choice") {
    if (Object.hasOwn(cell.choices, typed)) return typed;
    throw new InputError(
      field,
      typed,
      say`${cell.label} must be one of ${asTyped(Object.keys(cell.choices).join(", "))}; it is “${asTyped(typed.slice(0, 40))}”.`,
    );
  }
  let value: number;
  try {
    value = parseQuantity(typed, cell.quantity, context).value;
  } catch (error) {
    if (!(error instanceof ParseError)) throw error;
    throw new InputError(field, typed, say`${cell.label}: ${error.phrase} Allowed is ${allowed(cell)}.`);
  }
  checkRange(field, cell, value, typed);
  return value;
}

/** A cell, or its default where nothing is entered. @throws InputError when nothing is entered and something must be */
function readEntry(field: string, cell: Cell, typed: string | undefined, context: ParseContext): unknown {
  const empty = typed === undefined || (typed.trim() === "" && cell.default === undefined);
  const text = empty ? cell.default : typed;
  if (text !== undefined) return readCell(field, cell, text, context);
  if (cell.kind === "text") return "";
  if (cell.whenEmpty !== undefined) return undefined;
  const range = cell.kind === "quantity" ? allowed(cell) : say`one of ${asTyped(Object.keys(cell.choices).join(", "))}`;
  throw new InputError(field, typed, say`${cell.label} is not entered. Allowed is ${range}.`);
}

export interface Reading<I> {
  /** Only when there is no problem. */
  readonly values?: Values<I>;
  /** One for each input that cannot be used, in the order of the inputs. */
  readonly problems: readonly InputError[];
}

/**
 * Reads what was typed against a table of inputs: fills in defaults, converts to base units, checks ranges.
 * Collects every problem instead of stopping at the first, so that a form can mark each field.
 */
export function readInputs<I extends Inputs>(inputs: I, raw: Raw, catalogue: Catalogue): Reading<I> {
  const values: Record<string, unknown> = {};
  const problems: InputError[] = [];
  const attempt = (read: () => void) => {
    try {
      read();
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      problems.push(error);
    }
  };

  for (const key of Object.keys(raw)) {
    if (!Object.hasOwn(inputs, key))
      problems.push(
        new InputError(
          key,
          raw[key],
          say`There is no input “${asTyped(key.slice(0, 40))}” here. The inputs are ${asTyped(Object.keys(inputs).join(", "))}.`,
        ),
      );
  }

  // The material comes first because gauge numbers are read in its gauge system.
  let context: ParseContext = {};
  for (const [key, input] of Object.entries(inputs)) {
    if (input.kind !== "material") continue;
    const typed = raw[key] ?? input.default;
    attempt(() => {
      if (!(materialIds as readonly unknown[]).includes(typed))
        throw new InputError(
          key,
          typed,
          say`${input.label} must be one of ${asTyped(materialIds.join(", "))}; it is “${asTyped(String(typed).slice(0, 40))}”.`,
        );
      values[key] = typed;
      context = { gauge: gaugeReader(catalogue, typed as MaterialId) };
    });
  }

  for (const [key, input] of Object.entries(inputs)) {
    if (input.kind === "material") continue;
    const typed = raw[key];
    if (input.kind === "list") {
      attempt(() => {
        if (typed !== undefined && !Array.isArray(typed))
          throw new InputError(
            key,
            typed,
            say`${input.label} must be a list of ${input.minRows} to ${input.maxRows} ${input.rowName}.`,
          );
        const rows = (typed as readonly RawRow[] | undefined) ?? input.default;
        if (rows.length < input.minRows || rows.length > input.maxRows)
          throw new InputError(
            key,
            rows.length,
            say`${input.label} must hold ${input.minRows} to ${input.maxRows} ${input.rowName}; it holds ${rows.length}.`,
          );
        values[key] = rows.map((row, index) => readRow(key, input, row, index, context, attempt));
      });
      continue;
    }
    attempt(() => {
      if (typed !== undefined && typeof typed !== "string")
        throw new InputError(key, typed, say`${input.label} must be a single value.`);
      values[key] = readEntry(key, input, typed, context);
    });
  }
  return problems.length === 0 ? { values: values as Values<I>, problems } : { problems };
}

function readRow(
  key: string,
  list: ListInput,
  row: RawRow,
  index: number,
  context: ParseContext,
  attempt: (read: () => void) => void,
): unknown {
  const read: Record<string, unknown> = {};
  for (const name of Object.keys(row)) {
    if (!Object.hasOwn(list.columns, name))
      attempt(() => {
        throw new InputError(
          `${key}.${index}.${name}`,
          row[name],
          say`There is no “${asTyped(name.slice(0, 40))}” in ${list.label}. Each of the ${list.rowName} has ${asTyped(Object.keys(list.columns).join(", "))}.`,
        );
      });
  }
  for (const [name, cell] of Object.entries(list.columns)) {
    const field = `${key}.${index}.${name}`;
    attempt(() => {
      read[name] = readEntry(field, cell, row[name], context);
    });
  }
  return list.plain ? Object.values(read)[0] : read;
}
