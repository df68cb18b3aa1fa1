import type { machines as english } from "../en/machines.ts";

export const machines: typeof english = {
  marking: "Mesa de trazado",
  shear: "Cizalla",
  cornerCutter: "Cortadora de esquinas",
  bandSaw: "Sierra de cinta",
  punch: "Punzonadora",
  brake: "Plegadora",
  rolls: "Cilindradora",
  welder: "Soldadora por puntos",
  furnace: "Horno",
};
