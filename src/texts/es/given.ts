import type { given as english } from "../en/given.ts";

export const given: typeof english = {
  links: "Enlace y página de curso",
  plan: "Plan de una pieza",
  mark: "Dado por el enlace",
  lead: "Dado por el enlace:",
  cannotChange: "Puede usar estos valores, pero aquí no cambiarlos.",
  unusable: "El enlace da un valor que no se puede usar. Avise a quien le dio el enlace.",
  startOver: "Empezar de nuevo con valores propios",
  stays: (labels) => `Dado por el enlace, así que queda como está: ${labels}.`,
  unknown: (words, known) => `El enlace fija ${words}, que aquí no es ningún dato. Los datos son ${known}.`,
  more: (count) => `y ${count} más`,
};
