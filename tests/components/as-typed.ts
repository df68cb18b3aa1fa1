import type { Inputs, Raw, RawRow } from "../../src/lib/inputs.ts";

/** Every value as a form holds it: a cell that is left out is empty, and a browser has no lone halves of a pair. */
export function asTyped(inputs: Inputs, raw: Raw): Raw {
  const whole = (text: string) =>
    text.replace(/[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g, "\ufffd");
  return Object.fromEntries(
    Object.entries(raw).flatMap(([key, value]): [string, string | readonly RawRow[]][] => {
      const input = Object.hasOwn(inputs, key) ? inputs[key] : undefined;
      if (!input || value === undefined) return [];
      if (input.kind !== "list") return typeof value === "string" ? [[key, whole(value)]] : [];
      if (typeof value === "string") return [];
      const columns = Object.keys(input.columns);
      const rows = value.map((row) => Object.fromEntries(columns.map((column) => [column, whole(row[column] ?? "")])));
      // One row of one empty cell is written like no row at all.
      const nothing = rows.length === 1 && columns.length === 1 && rows[0]?.[columns[0] ?? ""] === "";
      return nothing ? [] : [[key, rows]];
    }),
  );
}
