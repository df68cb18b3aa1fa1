import type { links as english } from "../en/links.ts";

export const links: typeof english = {
  lead: "Para una clase: elija lo que pueden cambiar sus estudiantes y copie el enlace o el marco. Los dos llevan los valores como están aquí ahora.",
  more: "Cómo funcionan los enlaces y los marcos (en inglés)",
  fixed: "Valores que sus estudiantes no pueden cambiar",
  all: "Fijar todos",
  none: "No fijar ninguno",
  units: "Las longitudes se muestran en",
  unitsOwn: "lo que cada visitante haya elegido",
  link: "Enlace a esta página",
  copyLink: "Copiar el enlace",
  frame: "Marco para una página de curso",
  copyFrame: "Copiar para una página de curso",
  script: "Script para esa página de curso, una vez, si admite scripts: da a cada marco la altura que necesita",
  copyScript: "Copiar el script",
  commandLine: "Línea de comandos",
  copyCommandLine: "Copiar la orden",
  code: "Código para escanear con un teléfono",
  showCode: "Mostrar el código",
  codeName: "Código de este enlace, para escanear con un teléfono",
  codeTooLong: "El enlace es demasiado largo para un código.",
  packing: "Un momento …",
};
