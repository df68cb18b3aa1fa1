import type { Cell, Input, Inputs, Raw, RawRow } from "../../lib/inputs.ts";
import type { Worksheet } from "../../lib/worksheet.ts";

/** A field of the display: an input of a worksheet by its key, or a cell of a list as `legs.0.leg`. */

/** The input behind a field; the column for a cell of a list. */
export function inputOf(inputs: Inputs, field: string): Exclude<Input, { kind: "list" }> {
  const [key = "", , column = ""] = field.split(".");
  const input = inputs[key];
  const found: Input | Cell | undefined = input?.kind === "list" ? input.columns[column] : input;
  if (!found) throw new Error(`There is no input ${field}`);
  return found as Exclude<Input, { kind: "list" }>;
}

function rowsOf(inputs: Inputs, raw: Raw, key: string): readonly RawRow[] {
  const given = raw[key];
  const input = inputs[key];
  return Array.isArray(given) ? given : input?.kind === "list" ? input.default : [];
}

/** What a field holds, as typed. */
export function textOf(inputs: Inputs, raw: Raw, field: string): string {
  const [key = "", row, column = ""] = field.split(".");
  if (row !== undefined) return rowsOf(inputs, raw, key)[Number(row)]?.[column] ?? "";
  const given = raw[key] ?? inputs[key]?.default;
  return typeof given === "string" ? given : "";
}

/** The values with another text in one field. */
export function withText(inputs: Inputs, raw: Raw, field: string, text: string): Raw {
  const [key = "", row, column = ""] = field.split(".");
  if (row === undefined) return { ...raw, [key]: text };
  return { ...raw, [key]: rowsOf(inputs, raw, key).map((each, at) => (at === Number(row) ? { ...each, [column]: text } : each)) };
}

/** Inputs that count just now and cannot be changed here, so that they are shown beside the answer. */
export function otherInputs(sheet: Pick<Worksheet, "inputs" | "shownWhen">, fields: readonly string[], raw: Raw): string[] {
  const here = new Set(fields.map((field) => field.split(".")[0]));
  return Object.entries(sheet.inputs).flatMap(([key, input]) => {
    if (here.has(key) || input.kind === "list" || (input.kind === "quantity" && input.override)) return [];
    return sheet.shownWhen?.[key] && !sheet.shownWhen[key](raw) ? [] : [key];
  });
}
