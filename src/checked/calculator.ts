import type { Catalogue } from "../lib/catalogue.ts";
import type { Inputs, Raw } from "../lib/inputs.ts";
import { worksheetById } from "../lib/registry.ts";
import { runWorksheet, type Worksheet } from "../lib/worksheet.ts";
import type { Given, Subject } from "./subject.ts";

function rawOf(inputs: Inputs, typed: ReturnType<Given["typed"]>): Raw {
  return Object.fromEntries(
    typed.map(([key, value]) => {
      const input = inputs[key];
      if (typeof value === "string" || input?.kind !== "list") return [key, String(value)];
      const [column = ""] = Object.keys(input.columns);
      return [key, value.map((row) => (typeof row === "string" ? { [column]: row } : row))];
    }),
  );
}

/** The outputs of a calculator for what is typed. @throws Error when it refuses an input */
export function outputsOf(id: string, raw: Raw, catalogue: Catalogue): Readonly<Record<string, unknown>> {
  const sheet = worksheetById(id);
  if (!sheet) throw new Error(`no calculator “${id}”`);
  const { answer, problems } = runWorksheet(sheet, raw, catalogue);
  if (!answer) throw new Error(problems.map(({ message }) => message).join(" "));
  return answer.outputs;
}

/** A calculator as the subject of a check: it is run on the inputs as typed. */
export function calculator(sheet: Worksheet): Subject {
  return (given, catalogue) => outputsOf(sheet.id, rawOf(sheet.inputs, given.typed()), catalogue);
}
