import type { planEdit as english } from "../en/plan-edit.ts";

export const planEdit: typeof english = {
  help: "Elija un panel, un borde doblado o un agujero. Toque un panel donde vaya un agujero y añádalo; arrastre un agujero o muévalo con las flechas.",
  title: "El desarrollo, para trabajar en él",
  edge: (side) => `Borde doblado en ${side}`,
  holeOn: (number, panel) => `Agujero ${number} en ${panel}`,
  hole: (number) => `Agujero ${number}`,
  holeCircle: "Círculo de agujeros",
  removeHole: (number) => `Quitar el agujero ${number}`,
  removeHoleCircle: "Quitar este círculo de agujeros",
  removeEdge: "Quitar el borde doblado",
  addHoleAtMark: "Añadir un agujero en la marca",
  addHoleInMiddle: "Añadir un agujero en medio",
  addLeg: (side) => `Añadir un ala en ${side}`,
  addLegBeyond: "Añadir un ala a continuación",
  removeLeg: "Quitar esta ala",
};
