/** What the keys of the number pad do to the text of a field. Pure, so that tests can read it. */

export const denominators = [2, 4, 8, 16, 32, 64] as const;

export type PadKey =
  | { readonly kind: "digit"; readonly digit: string }
  | { readonly kind: "point" }
  /** Between whole inches and their fraction. */
  | { readonly kind: "and" }
  /** Makes a fraction of the number just typed: 5, then ⁄16. */
  | { readonly kind: "over"; readonly denominator: number }
  | { readonly kind: "unit"; readonly unit: "mm" | "in" | "ga" }
  | { readonly kind: "back" }
  | { readonly kind: "clear" };

export interface PadText {
  readonly text: string;
  /** Nothing was typed since the field was chosen: the first key begins anew, as in a field whose text is selected. */
  readonly fresh: boolean;
}

/** No field needs more; what would be longer is not taken. */
export const longestText = 14;

const unitAtEnd = /\s*[a-z"″°%][a-z0-9/²]*$/i;

function typed(text: string, key: PadKey): string {
  const bare = text.replace(unitAtEnd, "");
  switch (key.kind) {
    case "digit":
      // Nothing is divided by nought, and no denominator begins with it.
      return key.digit === "0" && bare.endsWith("/") ? text : bare + key.digit;
    case "point":
      // After whole inches only a fraction can come.
      if (/[./]\d*$/.test(bare) || /\s/.test(bare)) return text;
      return /\d$/.test(bare) ? `${bare}.` : `${bare}0.`;
    case "and":
      return /^\d+$/.test(bare) ? `${bare} ` : text;
    case "over": {
      const top = bare.replace(/\/\d*$/, "");
      if (top.includes(".")) return text;
      return /\d$/.test(top) ? `${top}/${key.denominator}` : `${top}1/${key.denominator}`;
    }
    case "unit":
      // A whole number with half a fraction after it is no length yet.
      return /\d$/.test(bare) && !/\s\d+$/.test(bare) ? `${bare} ${key.unit}` : text;
    case "back":
      return unitAtEnd.test(text) ? bare : text.slice(0, -1).trimEnd();
    case "clear":
      return "";
  }
}

/** The text after a key. */
export function press({ text, fresh }: PadText, key: PadKey): PadText {
  const changesEnd = key.kind === "back" || key.kind === "unit";
  const next = typed(fresh && !changesEnd ? "" : text, key);
  return next.length > longestText ? { text, fresh } : { text: next, fresh: false };
}

/** The pad's key for a key of a real keyboard, where it has one. */
export function keyOfKeyboard(key: string): PadKey | undefined {
  if (/^\d$/.test(key)) return { kind: "digit", digit: key };
  if (key === "." || key === ",") return { kind: "point" };
  if (key === "Backspace") return { kind: "back" };
  if (key === "Delete") return { kind: "clear" };
  return undefined;
}
