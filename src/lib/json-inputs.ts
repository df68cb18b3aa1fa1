import { InputError } from "./input-error.ts";
import type { Inputs, ListInput, Raw, RawRow } from "./inputs.ts";
import { say } from "./quantity/phrase.ts";

/** A cell given as JSON: a number is in the base unit. */
function cellText(value: unknown): string {
  return typeof value === "string" ? value : typeof value === "number" ? String(value) : (JSON.stringify(value) ?? "");
}

function listRows(key: string, input: ListInput, text: string): RawRow[] {
  const shape = input.plain
    ? "a JSON array such as [60, 25]"
    : `a JSON array of objects with ${Object.keys(input.columns).join(", ")}`;
  let parsed: unknown;
  try {
    parsed = JSON.parse(text);
  } catch {
    parsed = undefined;
  }
  const [onlyColumn = ""] = Object.keys(input.columns);
  if (!Array.isArray(parsed))
    throw new InputError(key, text, say`${input.label} must be ${shape}; it is “${text.slice(0, 60)}”.`);
  return parsed.map((row: unknown) => {
    if (input.plain) return { [onlyColumn]: cellText(row) };
    if (typeof row !== "object" || row === null || Array.isArray(row))
      throw new InputError(key, text, say`${input.label} must be ${shape}; one entry is “${cellText(row).slice(0, 60)}”.`);
    return Object.fromEntries(Object.entries(row).map(([name, value]) => [name, cellText(value)]));
  });
}

/**
 * Inputs given as `key=text` words, lists as JSON, in the form that `readInputs` takes.
 * @throws InputError for a list that is not JSON of the right shape; unknown keys are left for `readInputs` to refuse
 */
export function rawFromWords(inputs: Inputs, words: Readonly<Record<string, string>>): Raw {
  return Object.fromEntries(
    Object.entries(words).map(([key, text]) => {
      const input = Object.hasOwn(inputs, key) ? inputs[key] : undefined;
      return [key, input?.kind === "list" ? listRows(key, input, text) : text];
    }),
  );
}
