import type { offline as english } from "../en/offline.ts";

export const offline: typeof english = {
  ready: "Hay una nueva versión de estas páginas.",
  use: "Usarla ahora",
  closeOthers: (others) =>
    `Hay una nueva versión. Cierre antes ${others === 1 ? "la otra página" : "las otras páginas"} de este sitio.`,
};
