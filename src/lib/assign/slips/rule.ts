import type { Catalogue, MaterialId } from "../../catalogue.ts";
import type { QuantityInput, Raw } from "../../inputs.ts";
import type { Typed } from "../../quantity/parse.ts";
import type { Phrase } from "../../quantity/phrase.ts";
import type { QuantityOutput, Worksheet } from "../../worksheet.ts";

/** What the answer would be with one slip in it. */
export interface SlipValue {
  readonly value: number;
  readonly phrase: Phrase;
}

/** A question as far as slips go. */
export interface SlipQuestion {
  readonly sheet: Worksheet;
  readonly raw: Raw;
  readonly outputs: Readonly<Record<string, unknown>>;
  /** Key of the output asked for. */
  readonly asked: string;
  readonly catalogue: Catalogue;
}

/** A number that the question gives. */
export interface GivenNumber {
  readonly path: string;
  readonly key: string;
  readonly label: string;
  readonly input: QuantityInput;
  readonly typed: Typed;
}

export interface SlipContext extends SlipQuestion {
  readonly output: QuantityOutput;
  readonly right: number;
  /** The unit of the answer that was entered. */
  readonly unit: string;
  readonly numbers: readonly GivenNumber[];
  readonly values: Readonly<Record<string, unknown>>;
  readonly material: MaterialId | undefined;
  /** The answer asked for with other texts at some inputs; undefined where the calculator refuses them. */
  again(texts: Readonly<Record<string, string>>): number | undefined;
}

/** Gives the values that one kind of slip would lead to. */
export type Rule = (context: SlipContext) => Iterable<SlipValue>;

/** A length [mm] as the text of an input. */
export const millimetres = (value: number) => `${value}mm`;

/** One value, unless the calculator has none. */
export function* once(value: number | undefined, phrase: () => Phrase): Generator<SlipValue> {
  if (value !== undefined) yield { value, phrase: phrase() };
}
