import type { linkUnits as english } from "../en/link-units.ts";

export const linkUnits: typeof english = {
  locked: (units) => `Fijado por el enlace: ${units}. Su propia elección se guarda para otras páginas.`,
  refused: (asked, known) => `El enlace pide las unidades «${asked}». Puede pedir ${known}.`,
};
