import type { Catalogue } from "../lib/catalogue.ts";
import type { RawRow } from "../lib/inputs.ts";

/** The inputs of a check, in whichever form its subject takes them. */
export interface Given {
  /** In the base unit. */
  number(key: string): number;
  word(key: string): string;
  /** Every input as typed, lists as rows. */
  typed(): [string, string | readonly (string | RawRow)[]][];
}

/** What a check checks: from its inputs to outputs by name, numbers in base units. */
export type Subject = (given: Given, catalogue: Catalogue) => Readonly<Record<string, unknown>>;
export type Subjects = Readonly<Record<string, Subject>>;

/** One of a list of words. @throws Error for another */
export function oneOf<Word extends string>(words: readonly Word[], given: string): Word {
  const found = words.find((word) => word === given);
  if (found === undefined) throw new Error(`“${given}” is none of ${words.join(", ")}`);
  return found;
}
