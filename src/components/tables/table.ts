import type { Catalogue, Seen, Source } from "../../lib/catalogue.ts";
import { dataTable } from "../../texts/en/data-table.ts";

/** Where a number comes from. */
export interface Origin {
  /** Id in sources.yaml. */
  readonly source: string;
  /** How the source of this very number was seen; the source's own when left out. */
  readonly seen?: Seen;
  /** What else to know about it. */
  readonly note?: string;
}

export interface Column {
  readonly label: string;
  readonly unit?: string;
  /** Head over several neighbours. */
  readonly group?: string;
  /** `key`: says what its row is about and needs no origin. `number`: set to the right and sorted by size. */
  readonly kind?: "key" | "number" | "key-number";
  readonly from?: Origin;
}

export interface Cell {
  /** As it is read. */
  readonly text: string;
  /** At full precision, for sorting, copying and files; the text when left out. */
  readonly value?: number;
  /** Place in the order, where neither text nor value gives it. */
  readonly order?: number;
  /** A second line, shown only. */
  readonly small?: string;
  readonly from?: Origin;
}

export interface Row {
  /** A cell a column; `null` where the table has no value. */
  readonly cells: readonly (Cell | string | null)[];
  readonly from?: Origin;
}

/** One table of the handbook: what is shown, copied, saved and checked. An origin holds for all in it that has none of its own. */
export interface Table {
  /** Part of addresses and the name of its file. */
  readonly id: string;
  readonly caption: string;
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
  readonly from?: Origin;
  /** What a reader has to know before using a number. */
  readonly notes?: readonly string[];
}

export const isKey = ({ kind }: Column) => kind === "key" || kind === "key-number";
export const isNumber = ({ kind }: Column) => kind === "number" || kind === "key-number";

export function cellOf(cell: Row["cells"][number] | undefined): Cell {
  return typeof cell === "string" ? { text: cell } : (cell ?? { text: "" });
}

/** A number as it is shown, with the exact one behind it. */
export function number(value: number, text: string, more: Omit<Cell, "text" | "value"> = {}): Cell {
  return { text, value: withoutTail(value), ...more };
}

/** Without the tail that binary arithmetic leaves, and finer than any measurement. */
export function withoutTail(value: number): number {
  return Number(value.toPrecision(12));
}

/** What holds for a cell; undefined for one that says what its row is about. */
export function originOf(table: Table, row: Row, column: number): Origin | undefined {
  const head = table.columns[column];
  const cell = cellOf(row.cells[column]);
  if (!head || isKey(head) || cell.text === "") return undefined;
  return cell.from ?? row.from ?? head.from ?? table.from;
}

export function sourceOf(catalogue: Catalogue, { source }: Origin): Source {
  const found = catalogue.sources[source];
  if (!found) throw new Error(`A table names the source “${source}”, which is not in src/content/sources.yaml`);
  return found;
}

export function seenOf(catalogue: Catalogue, origin: Origin): Seen {
  return origin.seen ?? sourceOf(catalogue, origin).seen;
}

/** Title of a source as far as one needs it to find it in the list. */
export const shortTitle = ({ title }: Source) => title.split(/[,:;]/)[0] ?? title;

/** An origin in words, for files: `EN 10131, read`. */
export function originText(catalogue: Catalogue, origin: Origin): string {
  const words = [shortTitle(sourceOf(catalogue, origin)), dataTable.seen[seenOf(catalogue, origin)]].join(", ");
  return origin.note ? `${words}; ${origin.note}` : words;
}

const same = (one: Origin, other: Origin) => one.source === other.source && one.seen === other.seen && one.note === other.note;

/** Every origin of a table once, in the order it comes up: column heads first. */
export function originsOf(table: Table): Origin[] {
  const found: Origin[] = [];
  const add = (origin: Origin | undefined) => {
    if (origin && !found.some((each) => same(each, origin))) found.push(origin);
  };
  for (const { from } of table.columns) add(from);
  for (const row of table.rows) for (const index of table.columns.keys()) add(originOf(table, row, index));
  return found;
}

/** Place of an origin in the list of those of its table. @throws Error when it is not there */
export function placeOf(origins: readonly Origin[], origin: Origin): number {
  const place = origins.findIndex((each) => same(each, origin));
  if (place < 0) throw new Error(`${origin.source} is no origin of this table`);
  return place;
}

/** Letters of the marks: a to z, then aa, ab, … */
export function markOf(place: number): string {
  const last = String.fromCharCode(97 + (place % 26));
  return place < 26 ? last : markOf(Math.floor(place / 26) - 1) + last;
}

/** Head of a column as one text, for files: `Brown & Sharpe gauge: thickness (mm)`. */
export function headText({ group, label, unit }: Column): string {
  return `${group ? `${group}: ` : ""}${label}${unit ? ` (${unit})` : ""}`;
}

/** Names of columns in one text; those of a whole group go by its name. */
function columnNames(all: readonly Column[], named: readonly Column[]): string {
  const whole = (group: string | undefined) =>
    group !== undefined && all.every((each) => each.group !== group || named.includes(each));
  return [...new Set(named.map((column) => (whole(column.group) ? (column.group ?? "") : headText(column))))].join(", ");
}

/** Where all cells of a row come from, in words: one origin alone, or each with the columns it holds for. */
export function rowSource(catalogue: Catalogue, table: Table, row: Row): string {
  const found: { origin: Origin; columns: Column[] }[] = [];
  const filled = table.columns.filter((_, index) => cellOf(row.cells[index]).text !== "");
  for (const [index, column] of table.columns.entries()) {
    const origin = originOf(table, row, index);
    if (!origin) continue;
    const own = found.find((each) => same(each.origin, origin));
    if (own) own.columns.push(column);
    else found.push({ origin, columns: [column] });
  }
  const words = (origin: Origin) => `${originText(catalogue, origin)} [${origin.source}]`;
  const [first] = found;
  if (first && found.length === 1) return words(first.origin);
  return found.map(({ origin, columns }) => `${columnNames(filled, columns)}: ${words(origin)}`).join(" | ");
}
