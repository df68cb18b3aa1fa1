import type { Inputs, Raw, RawRow } from "../../lib/inputs.ts";

/** Text of every input that is not at its default, as words for the command line; lists as JSON. */
export function commandLine(id: string, inputs: Inputs, parts: readonly (readonly [string, string])[], raw: Raw): string {
  const words = parts.map(([key, text]) => {
    const input = inputs[key];
    const rows = raw[key];
    const value = input?.kind === "list" && Array.isArray(rows) ? rowsJson(rows, input.plain) : text;
    return shellWord(`${key}=${value}`);
  });
  return ["npm run -s calc --", id, ...words].join(" ");
}

function rowsJson(rows: readonly RawRow[], plain: boolean | undefined): string {
  const filled = rows.map((row) => Object.fromEntries(Object.entries(row).filter(([, cell]) => cell !== "")));
  return JSON.stringify(plain ? rows.map((row) => Object.values(row)[0] ?? "") : filled);
}

function shellWord(word: string): string {
  return /^[\w./:=,+-]+$/.test(word) ? word : `'${word.replaceAll("'", String.raw`'\''`)}'`;
}
