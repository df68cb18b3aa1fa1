import type { Shop } from "../../lib/catalogue.ts";
import type { Raw } from "../../lib/inputs.ts";
import { type MachineId, machineCautions, machineIds } from "../../lib/shop/machine-cautions.ts";

/** What one can stand at, and what the display shows there. */

export interface Machine {
  /** Id of its calculator. */
  readonly sheet: string;
  /** Inputs that can be changed here; a cell of a list as `legs.0.leg`. The others stay at their defaults. */
  readonly fields: readonly string[];
  /** Outputs shown large, the first one largest. */
  readonly shows: readonly string[];
  /** Values of this shop in place of the worksheet's defaults. */
  readonly start?: (shop: Shop) => Raw;
}

export const machines: Readonly<Record<MachineId, Machine>> = {
  marking: {
    sheet: "bend-length",
    fields: ["material", "thickness", "radius", "legs.0.leg", "legs.1.leg"],
    shows: ["blank", "deduction"],
  },
  shear: {
    sheet: "shear-load",
    fields: ["material", "thickness", "length"],
    shows: ["force", "clearance"],
    start: ({ shear }) => ({ rake: `${shear.rake}deg` }),
  },
  cornerCutter: {
    sheet: "corner-cut",
    fields: ["thickness", "radius", "sideA", "sideB"],
    shows: ["guideA", "guideB", "reliefDiameter"],
  },
  bandSaw: {
    sheet: "saw-blade",
    fields: ["material", "thickness"],
    shows: ["teethPerInchMin", "bandSpeed", "inclined"],
  },
  punch: {
    sheet: "punch-load",
    fields: ["material", "thickness", "diameter"],
    shows: ["force", "strippingForce"],
  },
  brake: {
    sheet: "springback",
    fields: ["material", "thickness", "radius", "angle"],
    shows: ["swingAngle", "toolRadius"],
    start: ({ brake }) => ({ radius: `${brake.noseRadius}mm` }),
  },
  rolls: {
    sheet: "roll-setting",
    fields: ["material", "thickness", "radius"],
    shows: ["turns", "rearRollRise", "smallestDiameter"],
  },
  welder: {
    sheet: "spot-setting",
    fields: ["material", "thickness", "otherThickness"],
    shows: ["timeMin", "forceMin", "currentMin"],
  },
  furnace: {
    sheet: "anneal",
    fields: ["material"],
    shows: ["temperature", "time", "cooling"],
  },
};

/** A machine the shop does not have is not offered. */
export function machinesOf({ furnaces }: Shop): MachineId[] {
  return machineIds.filter((id) => id !== "furnace" || furnaces.length > 0);
}

/** All cautions that the display can show. */
export const cautionIds: readonly string[] = [...new Set(Object.values(machineCautions).flat())];
