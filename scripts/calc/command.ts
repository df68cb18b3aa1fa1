import { type Catalogue, materialIds } from "../../src/lib/catalogue.ts";
import { InputError } from "../../src/lib/input-error.ts";
import type { Input } from "../../src/lib/inputs.ts";
import { rawFromWords } from "../../src/lib/json-inputs.ts";
import { phraseText, say } from "../../src/lib/quantity/phrase.ts";
import { kindOf } from "../../src/lib/quantity/units.ts";
import { worksheetById, worksheets } from "../../src/lib/registry.ts";
import { type Output, runWorksheet, type Worksheet } from "../../src/lib/worksheet.ts";

/** What the command prints, and the code it ends with: 0, or 2 for a mistake in what was given. */
export interface Printed {
  readonly code: 0 | 2;
  readonly out?: unknown;
  readonly error?: { readonly field: string; readonly value: string; readonly message: string };
}

type Described = Readonly<Record<string, unknown>>;
const each = <T>(table: Readonly<Record<string, T>>, describe: (entry: T) => Described) =>
  Object.fromEntries(Object.entries(table).map(([key, entry]) => [key, describe(entry)]));

function describeInput(input: Input): Described {
  const { label, help } = input;
  switch (input.kind) {
    case "quantity": {
      const { kind, quantity, min, max, aboveMin, default: start, whenEmpty, override } = input;
      return {
        kind,
        label,
        help,
        quantity,
        unit: kindOf(quantity).base,
        min,
        max,
        aboveMin,
        default: start,
        whenEmpty,
        override,
      };
    }
    case "choice":
      return { kind: "choice", label, help, choices: input.choices, default: input.default, whenEmpty: input.whenEmpty };
    case "material":
      return { kind: "material", label, help, choices: materialIds, default: input.default };
    case "text":
      return { kind: "text", label, help, maxLength: input.maxLength, default: input.default };
    case "list": {
      const { kind, columns, plain, minRows, maxRows, default: rows } = input;
      const start = plain ? rows.map((row) => Object.values(row)[0]) : rows;
      return { kind, label, help, json: true, plain, columns: each(columns, describeInput), minRows, maxRows, default: start };
    }
  }
}

function describeOutput(output: Output): Described {
  const { kind, label, help } = output;
  switch (output.kind) {
    case "quantity":
      return { kind, label, help, quantity: output.quantity, unit: kindOf(output.quantity).base };
    case "choice":
      return { kind, label, help, choices: output.choices };
    case "text":
      return { kind, label, help };
    case "list":
      return { kind, label, help, json: true, plain: output.plain, columns: each(output.columns, describeOutput) };
  }
}

function describe({ id, title, summary, page, inputs, outputs }: Worksheet): Described {
  return { id, title, summary, page, inputs: each(inputs, describeInput), outputs: each(outputs, describeOutput) };
}

/** @throws InputError for a word that is not `key=value`, or a key that is given twice */
function readWords(words: readonly string[]): Record<string, string> {
  const read = new Map<string, string>();
  for (const word of words) {
    const split = word.indexOf("=");
    if (split < 1) throw new InputError(word, word, say`Write each input as key=value, like thickness=1.2mm; this is “${word}”.`);
    const key = word.slice(0, split);
    const value = word.slice(split + 1);
    if (read.has(key)) throw new InputError(key, value, say`${key} is given twice.`);
    read.set(key, value);
  }
  return Object.fromEntries(read);
}

function calculate(id: string, words: readonly string[], catalogue: Catalogue): Described {
  const sheet = worksheetById(id);
  if (!sheet) {
    const known = worksheets.map((each) => each.id).join(", ");
    throw new InputError("id", id, say`There is no calculator “${id}”. There are ${known}.`);
  }
  const { values, answer, problems } = runWorksheet(sheet, rawFromWords(sheet.inputs, readWords(words)), catalogue);
  const [problem] = problems;
  if (problem) throw problem;
  if (!answer) throw new Error("neither an answer nor a problem");
  const inputs = Object.fromEntries(Object.keys(sheet.inputs).map((key) => [key, values?.[key] ?? null]));
  const cautions = answer.remarks.filter(({ level }) => level === "caution").map(({ phrase }) => phraseText(phrase));
  return { id, inputs, outputs: answer.outputs, cautions, sources: answer.sources };
}

/**
 * The command line of the calculators: `list`, or an id and its inputs as `key=value`.
 *
 * @param args - what stands after the command
 * @returns an answer with numbers in base units at full precision, or one error naming field and value
 */
export function calc(args: readonly string[], catalogue: Catalogue): Printed {
  const [id, ...words] = args;
  try {
    if (id === undefined)
      throw new InputError("id", "", say`Give a calculator and its inputs, like bend-length thickness=1.2mm, or list.`);
    if (id !== "list") return { code: 0, out: calculate(id, words, catalogue) };
    if (words.length > 0) throw new InputError("list", words.join(" "), say`list takes no inputs.`);
    return { code: 0, out: worksheets.map(describe) };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return { code: 2, error: { field: error.field, value: error.value, message: error.message } };
  }
}
