import type { Catalogue } from "./catalogue.ts";
import type { Formula } from "./formula.ts";
import { InputError } from "./input-error.ts";
import { type Inputs, type Raw, readInputs, type Values } from "./inputs.ts";
import type { Fineness } from "./quantity/format.ts";
import type { Phrase } from "./quantity/phrase.ts";
import type { Quantity } from "./quantity/units.ts";

interface OutputText {
  readonly label: string;
  readonly help?: string;
}

export interface QuantityOutput extends OutputText {
  readonly kind: "quantity";
  readonly quantity: Quantity;
  readonly symbol?: string;
  readonly fineness?: Fineness;
  /** Decimals shown, where the quantity's own are too few or too many; lengths go by their fineness. */
  readonly decimals?: number;
  /** Key of the output that is this one's ±. */
  readonly plusMinus?: string;
  /** Key of the output that is the upper end of the range this one begins: both are shown as one answer. */
  readonly upTo?: string;
  /** Shown as a percentage: 0.63 → 63 %. */
  readonly asPercent?: boolean;
}

/** A word from a fixed list, e.g. a verdict. */
export interface ChoiceOutput extends OutputText {
  readonly kind: "choice";
  readonly choices: Readonly<Record<string, string>>;
}

export interface TextOutput extends OutputText {
  readonly kind: "text";
}

/** Rows of values. One column only and `plain`: an array of values. */
export interface ListOutput extends OutputText {
  readonly kind: "list";
  readonly plain?: boolean;
  readonly columns: Readonly<Record<string, QuantityOutput | TextOutput | ChoiceOutput>>;
}

export type Output = QuantityOutput | ChoiceOutput | TextOutput | ListOutput;
export type Outputs = Readonly<Record<string, Output>>;

type CellOut<C> = C extends { kind: "quantity" }
  ? number | null
  : C extends { choices: infer Choices }
    ? keyof Choices & string
    : string;

type OutputValue<T> = T extends { kind: "list"; columns: infer Columns }
  ? T extends { plain: true }
    ? readonly (number | string)[]
    : readonly { readonly [C in keyof Columns]: CellOut<Columns[C]> }[]
  : CellOut<T>;

/** Values of a table of outputs, in base units. `null`: not known from these inputs; a caution says why. */
export type OutputValues<O> = { readonly [K in keyof O]: OutputValue<O[K]> };

/** Something to know beside an answer. `caution`: outside what the source covers, or a risk. */
export interface Remark {
  readonly level: "note" | "caution";
  readonly phrase: Phrase;
  readonly source?: string;
  /** Key of the input it concerns, so that it can stand at the field. */
  readonly field?: string;
}

/** One line of the working: the formula and the numbers put into it, in base units or as text. */
export interface Step {
  readonly formula: Formula;
  readonly values: Readonly<Record<string, number | string>>;
}

/** A table shown below an answer, such as what other published methods would have said. */
export interface AnswerTable {
  readonly caption: string;
  readonly columns: readonly { readonly label: string; readonly quantity?: Quantity; readonly fineness?: Fineness }[];
  readonly rows: readonly {
    readonly cells: readonly (number | string | Phrase | null)[];
    /** This row is the answer above. */
    readonly chosen?: boolean;
    readonly source?: string;
    readonly note?: string | Phrase;
  }[];
}

export interface Answer<O extends Outputs = Outputs> {
  readonly outputs: OutputValues<O>;
  readonly remarks: readonly Remark[];
  readonly working: readonly Step[];
  readonly tables?: readonly AnswerTable[];
  /** Sources used for this answer, by id. */
  readonly sources: readonly string[];
}

/** An answer handed on: the inputs it fills in another calculator, or `measured.…` values for the plan. */
export interface Handoff {
  readonly to: string;
  readonly label: string;
  readonly raw: Raw;
}

/** One calculator, defined once: form, answer, address, command line and reference row are all made from it. */
export interface Worksheet<I extends Inputs = Inputs, O extends Outputs = Outputs> {
  readonly id: string;
  readonly title: string;
  /** What it answers, in one sentence. */
  readonly summary: string;
  /** Path of the page that explains it. */
  readonly page: string;
  readonly inputs: I;
  readonly outputs: O;
  /** The output shown largest. */
  readonly main: keyof O & string;
  /** Inputs that do not matter for some choices, with the rule for when they do. */
  readonly shownWhen?: Readonly<Partial<Record<keyof I & string, (raw: Raw) => boolean>>>;
  /** Every formula that `compute` may put into the working. */
  readonly formulas: readonly Formula[];
  /** Where the answer holds, in sentences. */
  readonly validity: readonly string[];
  /** Ids of the standing cautions of this work. */
  readonly cautions: readonly string[];
  /** Everything `compute` may cite. */
  readonly sources: readonly string[];
  compute(values: Values<I>, catalogue: Catalogue): Answer<O>;
  handoffs?(values: Values<I>, answer: Answer<O>): readonly Handoff[];
}

/** Keeps the types of the two tables while checking the shape of the definition. */
export function worksheet<const I extends Inputs, const O extends Outputs>(definition: Worksheet<I, O>): Worksheet<I, O> {
  return definition;
}

export interface Result<I extends Inputs = Inputs, O extends Outputs = Outputs> {
  readonly values?: Values<I>;
  readonly answer?: Answer<O>;
  readonly problems: readonly InputError[];
}

/** @throws Error when a worksheet gives something that is not a number: that is a fault of the worksheet, not of the user */
function checkFinite(id: string, value: unknown, path: string): void {
  if (typeof value === "number" && !Number.isFinite(value)) throw new Error(`${id} computed ${value} for ${path}`);
  if (typeof value === "object" && value !== null)
    for (const [key, inner] of Object.entries(value)) checkFinite(id, inner, `${path}.${key}`);
}

/** The problem with the text that was typed in place of the number that was read from it. */
function asTyped(problem: InputError, raw: Raw): InputError {
  let typed: unknown = raw;
  for (const key of problem.field.split("."))
    typed = typeof typed === "object" && typed !== null && Object.hasOwn(typed, key) ? Reflect.get(typed, key) : undefined;
  return typeof typed === "string" ? new InputError(problem.field, typed, problem.phrase, problem.instead) : problem;
}

/**
 * Reads what was typed and computes the answer.
 * @returns the answer, or one problem for each input that cannot be used; never both
 */
export function runWorksheet<I extends Inputs, O extends Outputs>(
  sheet: Worksheet<I, O>,
  raw: Raw,
  catalogue: Catalogue,
): Result<I, O> {
  const { values, problems } = readInputs(sheet.inputs, raw, catalogue);
  if (!values) return { problems };
  try {
    const answer = sheet.compute(values, catalogue);
    checkFinite(sheet.id, answer.outputs, "outputs");
    return { values, answer, problems: [] };
  } catch (error) {
    if (error instanceof InputError) return { values, problems: [asTyped(error, raw)] };
    throw error;
  }
}
