/** What one can stand at in the shop, in the order the work goes. */
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

/** Ids of the standing cautions at each machine, the one nobody may miss first; common practice. */
export const machineCautions: Readonly<Record<MachineId, readonly string[]>> = {
  marking: ["scriber-points", "sharp-edges", "centre-punch", "layout-fluids", "defer-to-manual"],
  shear: [
    "shear-blades",
    "shear-hold-downs",
    "shear-treadle",
    "shear-offcuts",
    "within-rating",
    "sharp-edges",
    "defer-to-manual",
  ],
  cornerCutter: ["corner-cutter", "sharp-edges", "within-rating", "defer-to-manual"],
  bandSaw: ["band-saw", "eyes", "sharp-edges", "lock-out", "defer-to-manual"],
  punch: ["punch-fingers", "punch-and-die-match", "within-rating", "eyes", "defer-to-manual"],
  brake: [
    "pinch-points",
    "counterweight-and-handle",
    "loose-fingers",
    "stored-energy",
    "within-rating",
    "flying-sheet",
    "defer-to-manual",
  ],
  rolls: ["rolls-draw-in", "gloves-at-rolls", "roll-release", "flying-sheet", "within-rating", "defer-to-manual"],
  welder: ["electrode-pinch", "weld-sparks", "zinc-fume", "magnetic-field", "welder-electricity", "hot-work", "defer-to-manual"],
  furnace: ["furnace-heat", "furnace-load", "over-temperature", "zinc-fume", "hot-work", "defer-to-manual"],
};
