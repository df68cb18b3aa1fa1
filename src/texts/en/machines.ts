/** What one can stand at in a shop: the kind of each machine, whatever the shop calls its own. */
export const machines = {
  marking: "Marking bench",
  shear: "Shear",
  cornerCutter: "Corner cutter",
  bandSaw: "Band saw",
  punch: "Punch",
  brake: "Folding brake",
  rolls: "Rolls",
  welder: "Spot welder",
  furnace: "Furnace",
};
