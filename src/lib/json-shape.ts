import { InputError } from "./input-error.ts";
import { say } from "./quantity/phrase.ts";

export type Json = Readonly<Record<string, unknown>>;

/** How much of a refused value is shown [characters]. */
const shown = 60;

/** How a kind of file is called in messages. */
interface FileWords {
  /** At the start of a sentence: `The part file`. */
  readonly the: string;
  /** `a part file` */
  readonly one: string;
  /** What a text of it may be, behind "must be". */
  readonly text: string;
}

/**
 * Readers for the parts of one kind of JSON file. `field` is the path of a value in it, `legs.0.angle`; empty for the file.
 * Each throws InputError naming that path where the value has another shape.
 */
export function jsonShape({ the, one, text: textShape }: FileWords) {
  function refuse(field: string, value: unknown, expected: string): InputError {
    const found = value === undefined ? "missing" : String(JSON.stringify(value) ?? value).slice(0, shown);
    return new InputError(field, value, say`${field === "" ? the : field} must be ${expected}; it is ${found}.`);
  }

  /** @param keys - all it may hold; without them it may hold any */
  function object(value: unknown, field: string, keys?: readonly string[]): Json {
    if (typeof value !== "object" || value === null || Array.isArray(value))
      throw refuse(field, value, keys ? `an object with ${keys.join(", ")}` : "an object");
    for (const key of Object.keys(value))
      if (keys && !keys.includes(key))
        throw new InputError(
          field === "" ? key : `${field}.${key}`,
          (value as Json)[key],
          say`There is no “${key.slice(0, 40)}” in ${field === "" ? one : field}. The keys are ${keys.join(", ")}.`,
        );
    return value as Json;
  }

  function list(value: unknown, field: string): readonly unknown[] {
    if (!Array.isArray(value)) throw refuse(field, value, "a list");
    return value;
  }

  /** A text as typed; a bare number is a value in its base unit. */
  function text(value: unknown, field: string): string {
    if (typeof value === "string") return value;
    if (typeof value === "number" && Number.isFinite(value)) return String(value);
    throw refuse(field, value, textShape);
  }

  return { refuse, object, list, text };
}
