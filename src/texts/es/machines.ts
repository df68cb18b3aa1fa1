import type { machines as english } from "../en/machines.ts";

/** With places to break a word where a key is too narrow for it. */
export const machines: typeof english = {
  marking: "Mesa de trazado",
  shear: "Cizalla",
  cornerCutter: "Escanto\u00adnadora",
  bandSaw: "Sierra de cinta",
  punch: "Punzona\u00addora",
  brake: "Plega\u00addora",
  rolls: "Cilindra\u00addora",
  welder: "Puntea\u00addora",
  furnace: "Horno",
};
