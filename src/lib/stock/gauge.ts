import type { Catalogue, GaugeSystem, MaterialId } from "../catalogue.ts";
import type { GaugeReader } from "../quantity/parse.ts";
import { asTyped, say } from "../quantity/phrase.ts";
import { toBase } from "../quantity/units.ts";

/**
 * Thickness of a gauge number.
 *
 * @param system - the gauge system; the number means nothing without it
 * @param gauge - `16`, `2/0`
 * @returns thickness [mm], or undefined when the system has no such number
 */
export function gaugeThickness(system: GaugeSystem, gauge: string): number | undefined {
  const row = system.rows.find((each) => each.gauge === gauge);
  return row && toBase(row.inches, "length", "in");
}

export interface NearestGauge {
  readonly gauge: string;
  /** [mm] */
  readonly thickness: number;
  /** nominal minus given [mm] */
  readonly difference: number;
}

/** The gauge number whose nominal thickness is nearest to a thickness [mm]; undefined for an empty system. */
export function nearestGauge(system: GaugeSystem, thickness: number): NearestGauge | undefined {
  let best: NearestGauge | undefined;
  for (const row of system.rows) {
    const nominal = toBase(row.inches, "length", "in");
    const difference = nominal - thickness;
    if (!best || Math.abs(difference) < Math.abs(best.difference)) best = { gauge: row.gauge, thickness: nominal, difference };
  }
  return best;
}

/** Reads gauge numbers in the system of a material; says in a sentence when the system has no such number. */
export function gaugeReader(catalogue: Pick<Catalogue, "materials" | "gaugeSystems">, material: MaterialId): GaugeReader {
  const { name, gaugeSystem } = catalogue.materials[material];
  const system = gaugeSystem === undefined ? undefined : catalogue.gaugeSystems[gaugeSystem];
  return (gauge) => {
    if (!system) return say`No gauge list is kept for ${name}. Write the thickness in mm or inches.`;
    const thickness = gaugeThickness(system, gauge);
    if (thickness !== undefined) return thickness;
    const first = system.rows[0]?.gauge ?? "";
    const last = system.rows.at(-1)?.gauge ?? "";
    return say`${system.name} has no number ${asTyped(gauge)}; it runs from ${asTyped(first)} to ${asTyped(last)}.`;
  };
}
