import type { Catalogue } from "../../../lib/catalogue.ts";
import { formatNumber } from "../../../lib/quantity/format.ts";
import { toBase } from "../../../lib/quantity/units.ts";
import { type Column, number, type Table } from "../table.ts";

/** Place of a gauge number from thick to thin: 2/0 stands before 0. */
const placeOf = (gauge: string) => (gauge.endsWith("/0") ? 1 - Number(gauge.slice(0, -2)) : Number(gauge));

/** Inches as printed, but never with fewer decimals than the lists use. */
function inchText(inches: number): string {
  const printed = String(inches);
  const decimals = printed.split(".")[1]?.length ?? 0;
  return decimals < 4 ? inches.toFixed(4) : printed;
}

/** All gauge lists side by side. */
export function gaugeTable({ gaugeSystems }: Catalogue): Table {
  const systems = Object.values(gaugeSystems);
  const numbers = [...new Set(systems.flatMap(({ rows }) => rows.map(({ gauge }) => gauge)))];
  numbers.sort((a, b) => placeOf(a) - placeOf(b));
  // A list is marked in its head by how most of its rows were seen; a row that differs says so itself.
  const usual = new Map(
    systems.map(({ id, rows }) => [id, rows.some(({ seen }) => seen === "read") ? "read" : "memory"] as const),
  );
  const columns: Column[] = systems.flatMap(({ id, name: group, source }) => {
    const from = { source, seen: usual.get(id) };
    return [
      { label: "thickness", unit: "in", group, kind: "number", from },
      { label: "thickness", unit: "mm", group, kind: "number", from },
    ] as const;
  });
  return {
    id: "gauges",
    caption: "Gauge numbers of all lists, from thick to thin",
    columns: [{ label: "No.", kind: "key" }, ...columns],
    rows: numbers.map((gauge) => ({
      cells: [
        { text: gauge, order: placeOf(gauge) },
        ...systems.flatMap(({ id, source, rows }) => {
          const row = rows.find((each) => each.gauge === gauge);
          if (!row) return [null, null];
          const from = row.seen === usual.get(id) ? undefined : { source, seen: row.seen };
          const millimetres = toBase(row.inches, "length", "in");
          return [
            number(row.inches, inchText(row.inches), { from }),
            number(millimetres, formatNumber(millimetres, 3), { from }),
          ];
        }),
      ],
    })),
    notes: ["Inches are as printed in the source; millimetres are worked out from them at 25.4 mm an inch."],
  };
}
