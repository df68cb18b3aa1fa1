import type { Material, MaterialFamily, Seen } from "../catalogue.ts";
import { toBase } from "../quantity/units.ts";

/** Speed of a saw band for a metal, and how sure that is. Speeds in m/min. */
export interface SawSpeed {
  readonly use: number;
  readonly low: number;
  readonly high: number;
  readonly basis: string;
  readonly source: string;
  readonly seen: Seen;
}

const feet = (value: number) => toBase(value, "speed", "ft/min");

/**
 * For work 4 in deep, a bimetal band and coolant. Only three lines of the handbook's table could be read for certain; the ranges
 * of the other metals are remembered.
 */
const stainless = {
  use: feet(120),
  low: feet(90),
  high: feet(425),
  source: "machinerys-handbook-31-sawing",
  seen: "read",
} as const;
const families: Readonly<Record<MaterialFamily, SawSpeed>> = {
  "carbon-steel": {
    use: 75,
    low: 60,
    high: 90,
    basis: "middle of the usual range for low-carbon steel; the handbook’s steels lie between 27 and 130 m/min",
    source: "saw-speed-ranges",
    seen: "memory",
  },
  stainless: {
    ...stainless,
    basis: "the handbook’s value for 304, taken for this grade too; its steels lie between 27 and 130 m/min",
    seen: "practice",
  },
  aluminium: {
    use: 150,
    low: 150,
    high: 600,
    basis: "slow end of the usual range for aluminium; fast wood-cutting speeds need a machine made for them",
    source: "saw-speed-ranges",
    seen: "memory",
  },
  "copper-alloy": {
    use: 90,
    low: 60,
    high: 120,
    basis: "middle of the usual range for brass and copper",
    source: "saw-speed-ranges",
    seen: "memory",
  },
  titanium: {
    use: (feet(65) + feet(80)) / 2,
    low: feet(65),
    high: feet(80),
    basis: "middle of the handbook’s range for titanium",
    source: "machinerys-handbook-31-sawing",
    seen: "read",
  },
};

/**
 * Speed of a saw band in a metal.
 *
 * @param material - by its family; 304 has a value of its own
 * @returns m/min for work 4 in deep, a bimetal band and coolant, with its band and where it comes from
 * @remarks Source: Machinery's Handbook, 31st edition, p. 1245, for 304 and titanium (read); otherwise from memory.
 */
export function sawSpeed(material: Pick<Material, "id" | "family">): SawSpeed {
  return material.id === "stainless-304"
    ? { ...stainless, basis: "the handbook’s value for 304; its steels lie between 27 and 130 m/min" }
    : families[material.family];
}

/** What the same page of the handbook does to that speed. */
export const speedChanges = {
  thin: { factor: 1.15, name: "Work about 1/4 in deep or thinner" },
  dryFast: { factor: 0.7, name: "Dry, at best" },
  drySlow: { factor: 0.5, name: "Dry, to be safe" },
  carbonBand: { factor: 0.5, name: "Carbon-steel band" },
} as const;

/**
 * The speed after one of the handbook's changes.
 *
 * @param speed - in any unit of speed
 * @param change - which
 * @returns in the same unit
 * @remarks Source: Machinery's Handbook, 31st edition, p. 1245 (read).
 * @example changedSpeed(120, "thin"); // 138
 */
export function changedSpeed(speed: number, change: keyof typeof speedChanges): number {
  return speed * speedChanges[change].factor;
}
