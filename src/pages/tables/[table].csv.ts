import type { APIRoute, GetStaticPaths } from "astro";
import { loadCatalogue } from "../../catalogue/load.ts";
import { allTables } from "../../components/tables/all-tables.ts";
import { tableLines } from "../../components/tables/table-lines.ts";
import { safeCsv } from "../../lib/csv.ts";

/** Each table as a file, for visitors without scripts and for programs. */
export const getStaticPaths = (() =>
  allTables(loadCatalogue()).map(({ id }) => ({ params: { table: id } }))) satisfies GetStaticPaths;

export const GET: APIRoute = ({ params }) => {
  const catalogue = loadCatalogue();
  const table = allTables(catalogue).find(({ id }) => id === params.table);
  if (!table) throw new Error(`There is no table “${params.table}”`);
  return new Response(safeCsv(tableLines(catalogue, table)), { headers: { "Content-Type": "text/csv; charset=utf-8" } });
};
