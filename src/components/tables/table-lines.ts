import type { Catalogue } from "../../lib/catalogue.ts";
import { dataTable } from "../../texts/en/data-table.ts";
import { type Cell, cellOf, headText, rowSource, type Table } from "./table.ts";

/** What a file holds of a cell: the exact number, with a plain minus. */
export function plainText({ text, value }: Cell): string {
  return value === undefined ? text : String(value);
}

/** A table as lines of fields: head with units, rows, and the source of each row in the last column. */
export function tableLines(catalogue: Catalogue, table: Table): string[][] {
  const head = [...table.columns.map(headText), dataTable.source];
  const rows = table.rows.map((row) => [
    ...table.columns.map((_, index) => plainText(cellOf(row.cells[index]))),
    rowSource(catalogue, table, row),
  ]);
  return [head, ...rows];
}
