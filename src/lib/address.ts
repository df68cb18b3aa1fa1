import type { Input, Inputs, Raw, RawRow } from "./inputs.ts";

/**
 * The readable address of a calculator's state: one `id.key=text` for each input that is not at its default.
 * Lists are written `100mm:52mm:51mm;100mm:52.1mm:51mm`: cells between colons, rows between semicolons.
 */

const escapeCell = (text: string) => text.replace(/[%:;]/g, (sign) => `%${sign.charCodeAt(0).toString(16).toUpperCase()}`);
const unescapeCell = (text: string) =>
  text.replace(/%(25|3A|3B)/g, (_, code: string) => String.fromCharCode(Number.parseInt(code, 16)));

type Column = { readonly default?: string };
/** Cells of a list by name, or their names alone where none has a default. */
type Columns = Readonly<Record<string, Column>> | readonly string[];

const columnsOf = (columns: Columns): readonly (readonly [string, Column])[] =>
  Array.isArray(columns) ? columns.map((name: string) => [name, {}] as const) : Object.entries(columns);

/**
 * Rows as one text. Cells at the end of a row are left off where nothing is in them that reading would not put there:
 * so a list can gain columns, and old addresses still read.
 */
export function rowsText(rows: readonly RawRow[], columns: Columns): string {
  const names = columnsOf(columns);
  return rows
    .map((row) => {
      let kept = names.length;
      while (kept > 1) {
        const [name, column] = names[kept - 1] as (typeof names)[number];
        const cell = row[name];
        if (cell !== undefined && !(cell === "" && column.default === undefined)) break;
        kept -= 1;
      }
      const cells = names.slice(0, kept).map(([name, column]) => escapeCell(row[name] ?? column.default ?? ""));
      // A lone empty cell would read as no row at all.
      return cells.length === 1 && cells[0] === "" && names.length > 1 ? ":" : cells.join(":");
    })
    .join(";");
}

/** Rows from such a text; cells that are missing take their default, surplus ones are kept in the last cell so that nothing is lost. */
export function textRows(text: string, columns: Columns): RawRow[] {
  if (text === "") return [];
  const names = columnsOf(columns);
  return text.split(";").map((rowText) => {
    const cells = rowText.split(":");
    if (cells.length > names.length) cells.push(cells.splice(names.length - 1).join(":"));
    return Object.fromEntries(
      names.flatMap(([name, column], index) => {
        const cell = cells[index];
        if (cell !== undefined) return [[name, unescapeCell(cell)]];
        return column.default === undefined ? [[name, ""]] : [];
      }),
    );
  });
}

function defaultText(input: Input): string {
  if (input.kind === "list") return rowsText(input.default, input.columns);
  return input.default ?? "";
}

/**
 * Key of the inputs whose values the maker of an address fixed, `bend-length.fixed=thickness,material`: they are shown and
 * cannot be changed. No form has an input of this name.
 */
export const fixedKey = "fixed";

/** What an address fixes in one form, in the order of the address. */
export interface Fixed {
  /** Keys of inputs. */
  readonly keys: readonly string[];
  /** Words that are no inputs of this form; kept, so that they can be named as errors. */
  readonly unknown: readonly string[];
}

export const nothingFixed: Fixed = { keys: [], unknown: [] };

/** What the parameters of an address fix in the form `id`. */
export function fixedFromAddress(id: string, inputs: Inputs, parameters: Iterable<readonly [string, string]>): Fixed {
  const words = new Set<string>();
  for (const [name, text] of parameters)
    if (name === `${id}.${fixedKey}`) for (const word of text.split(",")) if (word.trim() !== "") words.add(word.trim());
  if (words.size === 0) return nothingFixed;
  const keys = [...words].filter((word) => Object.hasOwn(inputs, word));
  return { keys, unknown: [...words].filter((word) => !Object.hasOwn(inputs, word)) };
}

/**
 * `[key, text]` for every input that was given and is not at its default, in the order of the inputs.
 * Fixed values are written whatever they are, since a page or a later handbook may have other defaults; their keys come last.
 */
export function addressParts(inputs: Inputs, raw: Raw, fixed: Fixed = nothingFixed): [string, string][] {
  const parts: [string, string][] = [];
  for (const [key, input] of Object.entries(inputs)) {
    const isFixed = fixed.keys.includes(key);
    const given = raw[key] ?? (isFixed ? input.default : undefined);
    if (given === undefined) continue;
    const text = typeof given === "string" ? given : input.kind === "list" ? rowsText(given, input.columns) : "";
    if (isFixed || text !== defaultText(input)) parts.push([key, text]);
  }
  const words = [...fixed.keys, ...fixed.unknown];
  if (words.length > 0) parts.push([fixedKey, words.join(",")]);
  return parts;
}

/** The values of `next` with the fixed ones as they were in `before`. */
export function withFixed(next: Raw, before: Raw, { keys }: Fixed): Raw {
  return keys.length === 0 ? next : { ...next, ...Object.fromEntries(keys.map((key) => [key, before[key]])) };
}

/** The values an address holds for a calculator; unknown keys of that calculator are kept, so that they can be named as errors. */
export function rawFromAddress(id: string, inputs: Inputs, parameters: Iterable<readonly [string, string]>): Raw {
  const raw: Record<string, string | RawRow[]> = {};
  for (const [name, text] of parameters) {
    if (!name.startsWith(`${id}.`)) continue;
    const key = name.slice(id.length + 1);
    if (key === fixedKey) continue;
    const input = Object.hasOwn(inputs, key) ? inputs[key] : undefined;
    raw[key] = input?.kind === "list" ? textRows(text, input.columns) : text;
  }
  return raw;
}

const readable = /[A-Za-z0-9\-._~!$'()*,;:@/]/;

/** A query text that stays readable: only what must be escaped is escaped; a space becomes `+`. */
export function queryText(parameters: Iterable<readonly [string, string]>): string {
  const encode = (text: string) =>
    [...text].map((sign) => (sign === " " ? "+" : readable.test(sign) ? sign : encodeWellFormed(sign))).join("");
  return [...parameters].map(([key, text]) => `${encode(key)}=${encode(text)}`).join("&");
}

/** The parts of one form under the name it has in addresses: what stands beside the parts of other forms. */
export const ownedParts = (id: string, parts: readonly (readonly [string, string])[]): [string, string][] =>
  parts.map(([key, text]) => [`${id}.${key}`, text]);

/** The query of an address that holds one form alone. */
export const formQuery = (id: string, inputs: Inputs, raw: Raw, fixed: Fixed = nothingFixed): string =>
  queryText(ownedParts(id, addressParts(inputs, raw, fixed)));

// A lone surrogate, which encodeURIComponent refuses, becomes the replacement character as in URLSearchParams.
function encodeWellFormed(sign: string): string {
  return encodeURIComponent(/^[\ud800-\udfff]$/.test(sign) ? "\ufffd" : sign);
}
