import type { GaugeRow } from "../lib/catalogue.ts";

/** The number after a gauge number: 2/0, 0, 1, … */
function nextGauge(gauge: string): string {
  const noughts = /^(\d)\/0$/.exec(gauge)?.[1];
  if (noughts === undefined) return String(Number(gauge) + 1);
  return noughts === "2" ? "0" : `${Number(noughts) - 1}/0`;
}

/**
 * Gauge rows as one short text, because their names and numbers would fill a quarter of the browser's data:
 * `gauge,inches,seen` a row; a number that follows the one before is left out, and so is `read`.
 */
export function packGaugeRows(rows: readonly GaugeRow[]): string {
  let expected = "";
  return rows
    .map(({ gauge, inches, seen }) => {
      const number = gauge === expected ? "" : gauge;
      expected = nextGauge(gauge);
      return `${number},${inches}${seen === "read" ? "" : `,${seen}`}`;
    })
    .join(";");
}

/** The rows again. */
export function unpackGaugeRows(packed: string): GaugeRow[] {
  let expected = "";
  return packed.split(";").map((row) => {
    const [number, inches, seen = "read"] = row.split(",");
    const gauge = number || expected;
    expected = nextGauge(gauge);
    return { gauge, inches: Number(inches), seen: seen as GaugeRow["seen"] };
  });
}
