import { InputError } from "../../src/lib/input-error.ts";
import type { Raw } from "../../src/lib/inputs.ts";
import { formatQuantity, lengthViews } from "../../src/lib/quantity/format.ts";
import { type Phrase, phraseText } from "../../src/lib/quantity/phrase.ts";
import type { Answer, Result, Worksheet } from "../../src/lib/worksheet.ts";

const noNumber = /\bNaN\b|Infinity|∞|undefined|\[object|\bnull\b/;

/** Every number and text anywhere below a value. */
function* leaves(value: unknown, path: string): Generator<[string, number | string | undefined]> {
  if (typeof value === "number" || typeof value === "string" || value === undefined) yield [path, value];
  else if (typeof value === "object" && value !== null)
    for (const [key, inner] of Object.entries(value)) yield* leaves(inner, `${path}.${key}`);
}

function* badLeaves(value: unknown, path: string): Generator<string> {
  for (const [at, leaf] of leaves(value, path)) {
    if (leaf === undefined) yield `${at} is undefined`;
    else if (typeof leaf === "number" ? !Number.isFinite(leaf) : noNumber.test(leaf)) yield `${at} is ${leaf}`;
  }
}

/** A sentence in every view. What was typed is quoted; it may say anything. */
function* badWords(phrase: Phrase, path: string): Generator<string> {
  for (const [at, leaf] of leaves(phrase, path))
    if (typeof leaf === "number" && !Number.isFinite(leaf)) yield `${at} is the amount ${leaf}`;
  for (const view of lengthViews) {
    const text = phraseText(phrase, view);
    if (noNumber.test(text.replace(/“[^”]*”/g, ""))) yield `${path} says: ${text}`;
  }
}

function* answerFaults(sheet: Worksheet, answer: Answer, knows: Knowledge): Generator<string> {
  for (const [key, output] of Object.entries(sheet.outputs)) {
    const value = answer.outputs[key];
    if (value === undefined) yield `outputs.${key} is missing`;
    if (output.kind === "quantity" && value !== null && typeof value !== "number") yield `outputs.${key} is no number`;
    if (output.kind === "quantity" && typeof value === "number")
      for (const view of lengthViews) {
        const shown = formatQuantity(value, output.quantity, view, output.fineness);
        if (noNumber.test(shown)) yield `outputs.${key} shows as ${shown}`;
      }
    if (output.kind === "choice" && !Object.hasOwn(output.choices, String(value))) yield `outputs.${key} is “${value}”`;
  }
  yield* badLeaves(answer.outputs, "outputs");
  for (const [place, { phrase, source, field }] of answer.remarks.entries()) {
    yield* badWords(phrase, `remark ${place}`);
    if (source !== undefined && source !== "entered" && !knows.sources.has(source)) yield `remark ${place} cites ${source}`;
    if (field !== undefined && !Object.hasOwn(sheet.inputs, field.split(".")[0] ?? "")) yield `remark ${place} is at ${field}`;
  }
  for (const { formula, values } of answer.working) {
    if (!sheet.formulas.includes(formula)) yield `working: ${formula.id} is not declared`;
    yield* badLeaves(values, `working.${formula.id}`);
  }
  for (const [place, { rows }] of (answer.tables ?? []).entries())
    for (const [row, { cells, note }] of rows.entries()) {
      yield* badLeaves(cells, `tables.${place}.${row}`);
      if (note !== undefined) yield* badWords(typeof note === "string" ? [note] : note, `tables.${place}.${row}.note`);
    }
  for (const source of answer.sources) if (!knows.sources.has(source)) yield `cites ${source}`;
}

export interface Knowledge {
  readonly sources: ReadonlySet<string>;
  /** Ids of calculators, and of the plan. */
  readonly places: ReadonlySet<string>;
}

/** Everything that is wrong with what a calculator gave for a form. */
export function* faultsOf(sheet: Worksheet, raw: Raw, { values, answer, problems }: Result, knows: Knowledge): Generator<string> {
  if (answer && problems.length > 0) yield "an answer and problems";
  if (!answer && problems.length === 0) yield "neither an answer nor a problem";
  if (answer && values) {
    yield* answerFaults(sheet, answer, knows);
    for (const handoff of sheet.handoffs?.(values, answer) ?? []) {
      if (!knows.places.has(handoff.to)) yield `handed on to ${handoff.to}`;
      yield* badLeaves(handoff.raw, `handed on to ${handoff.to}`);
    }
  }
  for (const problem of problems) {
    if (!(problem instanceof InputError)) yield `a problem that is no InputError: ${String(problem)}`;
    const [key = ""] = problem.field.split(".");
    if (!Object.hasOwn(sheet.inputs, key) && !Object.hasOwn(raw, key) && !Object.hasOwn(raw, problem.field))
      yield `a problem at “${problem.field}”, which is no field`;
    if (typeof problem.value !== "string") yield `the problem at ${problem.field} has the value ${typeof problem.value}`;
    yield* badWords(problem.phrase, `the problem at ${problem.field}`);
  }
}
