import { rowsText } from "../../lib/address.ts";
import { isRange, type Question, type RangeVariation, type Variation } from "../../lib/assign/definition.ts";
import { rawWith } from "../../lib/assign/own-numbers.ts";
import { rawOfFixed, rowsOf } from "../../lib/assign/place.ts";
import type { Catalogue } from "../../lib/catalogue.ts";
import type { InputError } from "../../lib/input-error.ts";
import { type Input, type Inputs, type ListInput, type Raw, type RawRow, readInputs } from "../../lib/inputs.ts";
import type { LengthView } from "../../lib/quantity/format.ts";
import type { Worksheet } from "../../lib/worksheet.ts";
import { type Form, fieldId } from "../calculator/Fields.tsx";
import { contextOf, storedText } from "../calculator/texts.ts";

/** What is being typed just now, in the one field that has the cursor. */
export interface Typing {
  readonly instance: string;
  readonly field: string;
  readonly text: string;
}

interface Options {
  /** Names the question in the page. */
  readonly instance: string;
  readonly question: Question;
  readonly sheet: Worksheet;
  readonly catalogue: Catalogue;
  readonly view: LengthView;
  readonly typing: Typing | undefined;
  /** What is wrong with the question, by place within it: `varied.thickness.to`. */
  readonly faults: readonly { readonly place: string; readonly problem: InputError }[];
  setTyping(typing: Typing | undefined): void;
  setFocus(id: string): void;
  change(next: (before: Question) => Question): void;
}

/** Fields of a range are named `varied.thickness.from`, the list of choices `varied.thickness.choices`, a tolerance `asked.blank`. */
const rangeField = /^varied\.(.+)\.(from|to|step)$/;
const choicesField = /^varied\.(.+)\.choices$/;
const toleranceField = /^asked\.(.+)$/;

export const choicesText = (choices: readonly string[]) => choices.join("; ");

/** Texts divided by semicolons or lines; a comma may be a decimal sign. */
export const choicesOf = (text: string): string[] =>
  text
    .split(/[;\n]/)
    .map((each) => each.trim())
    .filter((each) => each !== "");

function withFixed(inputs: Inputs, question: Question, key: string, value: string | readonly RawRow[]): Question {
  const input = inputs[key];
  const text = typeof value === "string" ? value : input?.kind === "list" ? rowsText(value, input.columns) : "";
  const own = input?.kind === "list" ? rowsText(input.default, input.columns) : (input?.default ?? "");
  const { [key]: _, ...others } = question.fixed;
  return { ...question, fixed: text === own ? others : { ...question.fixed, [key]: text } };
}

/** Names of the cells that follow a row move up with their rows when it is taken out. */
function withoutRow(varied: Question["varied"], key: string, row: number): Record<string, Variation> {
  return Object.fromEntries(
    Object.entries(varied).flatMap(([path, variation]): [string, Variation][] => {
      const [list = "", place = "", ...column] = path.split(".");
      if (list !== key || column.length === 0) return [[path, variation]];
      const at = Number(place);
      return at === row ? [] : [[at > row ? [list, at - 1, ...column].join(".") : path, variation]];
    }),
  );
}

/** The form with the first value of everything that varies: what it shows depends on choices made in it. */
export function firstRaw(inputs: Inputs, question: Question): Raw {
  const first = Object.entries(question.varied).flatMap(([path, variation]) => {
    const text = isRange(variation) ? variation.from : variation.choices[0];
    return text ? [[path, text] as const] : [];
  });
  return rawWith(inputs, question, Object.fromEntries(first));
}

/** Inputs that matter for the question: for one of its choices at least. */
export function shownInputs(sheet: Worksheet, question: Question): [string, Input][] {
  const raw = firstRaw(sheet.inputs, question);
  const raws = Object.entries(question.varied).flatMap(([path, variation]) =>
    isRange(variation) || path.includes(".") ? [] : variation.choices.map((choice): Raw => ({ ...raw, [path]: choice })),
  );
  const isShown = (key: string) => {
    const rule = sheet.shownWhen?.[key];
    return !rule || [raw, ...raws].some((each) => rule(each)) || key in question.fixed || key in question.varied;
  };
  return Object.entries(sheet.inputs).filter(([key]) => isShown(key));
}

function problemsOf({ question, sheet, catalogue, view, faults }: Options): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  const raw = rawOfFixed(sheet.inputs, question.fixed);
  for (const problem of readInputs(sheet.inputs, raw, catalogue).problems)
    if (!Object.hasOwn(question.varied, problem.field)) found.set(problem.field, problem.text(view));
  for (const { place, problem } of faults) {
    const [, choices] = /^(varied\..+\.choices)\.\d+$/.exec(place) ?? [];
    const [, asked] = /^asked\.(\d+)\.tolerance$/.exec(place) ?? [];
    const output = asked === undefined ? undefined : question.asked[Number(asked)]?.output;
    const field = choices ?? (output === undefined ? place.replace(/^fixed\./, "") : `asked.${output}`);
    if (!found.has(field)) found.set(field, problem.text(view));
  }
  return found;
}

/** A question as a form that the fields of the calculators can show. */
export function questionForm(options: Options): Form {
  const { instance, question, sheet, catalogue, view, typing, setTyping, setFocus, change } = options;
  const { inputs } = sheet;
  const raw = rawOfFixed(inputs, question.fixed);
  const context = contextOf(inputs, firstRaw(inputs, question), catalogue);
  const material = Object.entries(inputs).find(([, { kind }]) => kind === "material");
  const chosen = material && (raw[material[0]] ?? material[1].default);
  const rows = (before: Question, key: string) => rowsOf(inputs, rawOfFixed(inputs, before.fixed), key);

  function typed(before: Question, field: string, input: Input, text: string): Question {
    const stored = (each: string) => (input.kind === "quantity" ? storedText(each, input.quantity, view, context) : each);
    const [, ranged, end] = rangeField.exec(field) ?? [];
    if (ranged !== undefined && end !== undefined) {
      const variation = before.varied[ranged];
      const range: RangeVariation = variation && isRange(variation) ? variation : { from: "", to: "", step: "" };
      return { ...before, varied: { ...before.varied, [ranged]: { ...range, [end]: stored(text) } } };
    }
    const [, listed] = choicesField.exec(field) ?? [];
    if (listed !== undefined)
      return { ...before, varied: { ...before.varied, [listed]: { choices: choicesOf(text).map(stored) } } };
    const [, output] = toleranceField.exec(field) ?? [];
    if (output !== undefined) {
      const asked = before.asked.map((each) => (each.output === output ? { ...each, tolerance: stored(text) } : each));
      return { ...before, asked };
    }
    const [key = "", row, column] = field.split(".");
    if (row === undefined || column === undefined) return withFixed(inputs, before, key, stored(text));
    const cells = rows(before, key).map((each, at) => (String(at) === row ? { ...each, [column]: stored(text) } : each));
    return withFixed(inputs, before, key, cells);
  }

  const firstColumn = (input: ListInput) => Object.keys(input.columns)[0] ?? "";
  return {
    instance,
    catalogue,
    view,
    context,
    raw,
    live: true,
    material: typeof chosen === "string" ? chosen : "",
    problems: problemsOf(options),
    cautions: new Map(),
    draft: typing?.instance === instance ? { field: typing.field, text: typing.text } : undefined,
    type(field, input, text) {
      if (input.kind === "quantity" || input.kind === "text") setTyping({ instance, field, text });
      change((before) => typed(before, field, input, text));
    },
    leave: () => setTyping(undefined),
    addRow(key, input) {
      const empty = Object.entries(input.columns).map(([name, cell]) => [name, ("default" in cell && cell.default) || ""]);
      setFocus(fieldId(instance, `${key}.${rows(question, key).length}.${firstColumn(input)}`));
      change((before) => withFixed(inputs, before, key, [...rows(before, key), Object.fromEntries(empty)]));
    },
    removeRow(key, input, index) {
      const left = rows(question, key).length - 1;
      setFocus(
        left === 0
          ? `${fieldId(instance, key)}-add`
          : fieldId(instance, `${key}.${Math.min(index, left - 1)}.${firstColumn(input)}`),
      );
      change((before) => ({
        ...withFixed(
          inputs,
          before,
          key,
          rows(before, key).filter((_, at) => at !== index),
        ),
        varied: withoutRow(before.varied, key, index),
      }));
    },
  };
}
