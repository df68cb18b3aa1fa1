import type { shell as english } from "../en/shell.ts";

export const shell: typeof english = {
  language: "Español",
  otherLanguages: "Esta página en otro idioma",
  inEnglish: "(en inglés)",

  skip: "Ir al contenido",
  menu: "Menú",
  close: "Cerrar",
  mainMenu: "Principal",
  look: "Aspecto",
  looks: { device: "como el dispositivo", light: "claro", dark: "oscuro", contrast: "alto contraste" },
  search: "Buscar",
  allPages: "Todas las páginas",
  promise: {
    title: "Lo que prometen estas páginas:",
    parts: [
      "la aritmética de las ",
      { link: "fuentes", to: "/sources/" },
      " que nombran, ",
      { link: "comprobada con valores impresos", to: "/checked/" },
      ", y sus límites dichos. No conocen su máquina ni su chapa. El manual y la placa de la máquina, las reglas de su taller y su personal formado van primero: vea las ",
      { link: "precauciones", to: "/safety/" },
      ".",
    ],
  },

  onThisPage: "En esta página",
  sources: "Fuentes",
  moreOnThis: "Más sobre esto",
  nextPages: "Páginas siguientes",
  before: (title) => `Antes: ${title}`,
  after: (title) => `Después: ${title}`,
};
