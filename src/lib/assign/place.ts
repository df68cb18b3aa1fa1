import { textRows } from "../address.ts";
import type { ChoiceInput, Inputs, MaterialInput, QuantityInput, Raw, RawRow, TextInput } from "../inputs.ts";

/** An input that holds one value: an input of its own, or a cell of a list. */
export interface Place {
  readonly path: string;
  readonly key: string;
  readonly row?: number;
  readonly column?: string;
  readonly input: QuantityInput | ChoiceInput | MaterialInput | TextInput;
  /** With the number of its row. */
  readonly label: string;
}

function cellPlace(key: string, row: number, column: string, label: string, input: Place["input"]): Place {
  return { path: `${key}.${row}.${column}`, key, row, column, input, label: `${label} ${row + 1}` };
}

/** The place a path names; undefined where the calculator has none such. */
export function placeAt(inputs: Inputs, path: string): Place | undefined {
  const [key = "", row, column, ...more] = path.split(".");
  const input = Object.hasOwn(inputs, key) ? inputs[key] : undefined;
  if (!input || more.length > 0) return undefined;
  if (input.kind !== "list") return row === undefined ? { path, key, input, label: input.label } : undefined;
  if (row === undefined || column === undefined || !/^\d{1,3}$/.test(row)) return undefined;
  const cell = Object.hasOwn(input.columns, column) ? input.columns[column] : undefined;
  return cell && String(Number(row)) === row ? cellPlace(key, Number(row), column, cell.label, cell) : undefined;
}

/** Rows of a list as they stand: given, or the calculator's own. */
export function rowsOf(inputs: Inputs, raw: Raw, key: string): readonly RawRow[] {
  const input = inputs[key];
  const given = raw[key];
  if (Array.isArray(given)) return given;
  return input?.kind === "list" ? input.default : [];
}

/** Every place of a form, lists with the rows they have. */
export function placesOf(inputs: Inputs, raw: Raw): Place[] {
  return Object.entries(inputs).flatMap(([key, input]): Place[] => {
    if (input.kind !== "list") return [{ path: key, key, input, label: input.label }];
    return rowsOf(inputs, raw, key).flatMap((_, row) =>
      Object.entries(input.columns).map(([column, cell]) => cellPlace(key, row, column, cell.label, cell)),
    );
  });
}

/** The text that stands at a place, the calculator's own where nothing is given; undefined where there is none either. */
export function textAt(inputs: Inputs, raw: Raw, { key, row, column, input }: Place): string | undefined {
  const given = row === undefined ? raw[key] : rowsOf(inputs, raw, key)[row]?.[column ?? ""];
  return typeof given === "string" && given.trim() !== "" ? given : input.default;
}

/** A form with other texts at some places. A row that the list does not have is left out. */
export function withTexts(inputs: Inputs, raw: Raw, texts: Readonly<Record<string, string>>): Raw {
  const changed: Record<string, string | readonly RawRow[] | undefined> = { ...raw };
  for (const [path, text] of Object.entries(texts)) {
    const place = placeAt(inputs, path);
    if (!place) continue;
    const { key, row, column } = place;
    changed[key] =
      row === undefined
        ? text
        : rowsOf(inputs, changed, key).map((cells, index) => (index === row ? { ...cells, [column ?? ""]: text } : cells));
  }
  return changed;
}

/** A form with the fixed values of a question; lists are read from their address form. */
export function rawOfFixed(inputs: Inputs, fixed: Readonly<Record<string, string>>): Raw {
  return Object.fromEntries(
    Object.entries(fixed).map(([key, text]) => {
      const input = Object.hasOwn(inputs, key) ? inputs[key] : undefined;
      return [key, input?.kind === "list" ? textRows(text, Object.keys(input.columns)) : text];
    }),
  );
}
