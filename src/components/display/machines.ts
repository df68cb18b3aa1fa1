import type { Shop } from "../../lib/catalogue.ts";
import type { Raw } from "../../lib/inputs.ts";

/** What one can stand at, and what the display shows there. */

export const machineIds = [
  "marking",
  "shear",
  "cornerCutter",
  "bandSaw",
  "punch",
  "brake",
  "rolls",
  "welder",
  "furnace",
] as const;
export type MachineId = (typeof machineIds)[number];

export interface Machine {
  /** Id of its calculator. */
  readonly sheet: string;
  /** Inputs that can be changed here; a cell of a list as `legs.0.leg`. The others stay at their defaults. */
  readonly fields: readonly string[];
  /** Outputs shown large, the first one largest. */
  readonly shows: readonly string[];
  /** Values of this shop in place of the worksheet's defaults. */
  readonly start?: (shop: Shop) => Raw;
  /** Ids of its cautions, the one nobody may miss first. */
  readonly cautions: readonly string[];
}

export const machines: Readonly<Record<MachineId, Machine>> = {
  marking: {
    sheet: "bend-length",
    fields: ["material", "thickness", "radius", "legs.0.leg", "legs.1.leg"],
    shows: ["blank", "deduction"],
    cautions: ["scriber-points", "sharp-edges", "centre-punch", "layout-fluids", "defer-to-manual"],
  },
  shear: {
    sheet: "shear-load",
    fields: ["material", "thickness", "length"],
    shows: ["force", "clearance"],
    start: ({ shear }) => ({ rake: `${shear.rake}deg` }),
    cautions: [
      "shear-blades",
      "shear-hold-downs",
      "shear-treadle",
      "shear-offcuts",
      "within-rating",
      "sharp-edges",
      "defer-to-manual",
    ],
  },
  cornerCutter: {
    sheet: "corner-cut",
    fields: ["thickness", "radius", "sideA", "sideB"],
    shows: ["guideA", "guideB", "reliefDiameter"],
    cautions: ["corner-cutter", "sharp-edges", "within-rating", "defer-to-manual"],
  },
  bandSaw: {
    sheet: "saw-blade",
    fields: ["material", "thickness"],
    shows: ["teethPerInchMin", "bandSpeed", "inclined"],
    cautions: ["band-saw", "eyes", "sharp-edges", "lock-out", "defer-to-manual"],
  },
  punch: {
    sheet: "punch-load",
    fields: ["material", "thickness", "diameter"],
    shows: ["force", "strippingForce"],
    cautions: ["punch-fingers", "punch-and-die-match", "within-rating", "eyes", "defer-to-manual"],
  },
  brake: {
    sheet: "springback",
    fields: ["material", "thickness", "radius", "angle"],
    shows: ["swingAngle", "toolRadius"],
    start: ({ brake }) => ({ radius: `${brake.noseRadius}mm` }),
    cautions: [
      "pinch-points",
      "counterweight-and-handle",
      "loose-fingers",
      "stored-energy",
      "within-rating",
      "flying-sheet",
      "defer-to-manual",
    ],
  },
  rolls: {
    sheet: "roll-setting",
    fields: ["material", "thickness", "radius"],
    shows: ["turns", "rearRollRise", "smallestDiameter"],
    cautions: ["rolls-draw-in", "gloves-at-rolls", "roll-release", "flying-sheet", "within-rating", "defer-to-manual"],
  },
  welder: {
    sheet: "spot-setting",
    fields: ["material", "thickness", "otherThickness"],
    shows: ["timeMin", "forceMin", "currentMin"],
    cautions: [
      "electrode-pinch",
      "weld-sparks",
      "zinc-fume",
      "magnetic-field",
      "welder-electricity",
      "hot-work",
      "defer-to-manual",
    ],
  },
  furnace: {
    sheet: "anneal",
    fields: ["material"],
    shows: ["temperature", "time", "cooling"],
    cautions: ["furnace-heat", "furnace-load", "over-temperature", "zinc-fume", "hot-work", "defer-to-manual"],
  },
};

/** A machine the shop does not have is not offered. */
export function machinesOf({ furnaces }: Shop): MachineId[] {
  return machineIds.filter((id) => id !== "furnace" || furnaces.length > 0);
}

/** All cautions that the display can show. */
export const cautionIds: readonly string[] = [...new Set(Object.values(machines).flatMap(({ cautions }) => cautions))];
