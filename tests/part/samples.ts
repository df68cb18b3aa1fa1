import type { Raw, RawRow } from "../../src/lib/inputs.ts";

/** A form with the given fields over plain defaults: 1 mm sheet, radius 1 mm, K = 0.5, so that sums can be checked by hand. */
export function form(fields: Raw): Raw {
  return { material: "steel-cr", thickness: "1mm", radius: "1mm", bendData: "neutral-line", kFactor: "0.5", ...fields };
}

export const up = (leg: string, angle = "90deg"): RawRow => ({ leg, angle, way: "up" });
export const down = (leg: string, angle = "90deg"): RawRow => ({ leg, angle, way: "down" });
