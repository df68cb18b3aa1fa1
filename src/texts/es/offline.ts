import type { offline as english } from "../en/offline.ts";

export const offline: typeof english = {
  newVersion: "Hay una versión nueva de estas páginas. Lo que ha escrito se conserva.",
  othersOpen: "Hay una versión nueva. Cierre antes las otras páginas abiertas de este sitio y vuelva a elegirla.",
  stuck: "No se pudo poner en uso la versión nueva. Cierre todas las páginas de este sitio y vuelva a abrirlo.",
  useIt: "Usarla ahora",
  later: "Más tarde",
  missingPart:
    "No se pudo cargar una parte de esta página: no hay red, o la página se renovó después de abrirla. Lo que ha escrito se conserva.",
  reload: "Cargar la página de nuevo",
};
