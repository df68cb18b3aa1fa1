import type { LengthView } from "./quantity/format.ts";
import { type Phrase, phraseText } from "./quantity/phrase.ts";
import type { Handoff } from "./worksheet.ts";

/** An input that cannot be worked with: which field, what was given, and what would be accepted. */
export class InputError extends Error {
  override name = "InputError";
  /** Key of the input; for a cell of a list `pieces.2.legA` (rows counted from 0). */
  readonly field: string;
  /** What was given, as typed. */
  readonly value: string;
  readonly phrase: Phrase;
  /** Other calculators that can do what this one refuses, filled in with what is known. */
  readonly instead: readonly Handoff[];

  constructor(field: string, value: unknown, phrase: Phrase, instead: readonly Handoff[] = []) {
    super(phraseText(phrase));
    this.field = field;
    this.value = typeof value === "string" ? value : value === undefined ? "" : (JSON.stringify(value) ?? String(value));
    this.phrase = phrase;
    this.instead = instead;
  }

  /** The message with its lengths in the reader's units. */
  text(view: LengthView): string {
    return phraseText(this.phrase, view);
  }
}
