import type { prose as english } from "../en/prose.ts";

export const prose: typeof english = {
  allCautions: "Todas las precauciones en un solo lugar",
  fromMemory: "de memoria",
  faults: { see: "Qué se ve", why: "Por qué", remedy: "Qué hacer", do: "Qué hacer" },
  formulaRange: (from, to, above) => `${above ? "más de" : "de"} ${from} ${above ? "hasta" : "a"} ${to}`,
  settingOut: {
    caption: "Líneas de la escuadra, desde el borde de referencia",
    line: "Línea",
    how: "De dónde sale",
    rows: {
      blank: { line: "Borde lejano, cizallado", why: "suma de las alas menos la deducción" },
      first: { line: "Primera línea de tangencia", why: "ala larga menos el retroceso" },
      sight: { line: "Línea de mira", why: "un radio más allá; a 90° es también el ala larga menos T" },
      second: { line: "Segunda línea de tangencia", why: "primera línea de tangencia más el desarrollo de la curva" },
    },
  },
  sizeDoubt: {
    caption: "De qué se compone el ± del ala de 25 mm, en mm",
    cause: "Causa",
    handbook: "número de manual",
    own: "piezas de este taller",
    together: "Todo junto",
    causes: {
      bendData: "Deducción de plegado",
      marking: "Líneas trazadas",
      setting: "Nariz puesta en la línea a ojo",
      thickness: "Espesor de la chapa",
    },
  },
  studentTable: {
    caption: "t de Student para el 95,45 % y en qué queda el ± de la media",
    pieces: "Piezas",
    around: "± para una dispersión s",
  },
  seen: {
    read: "leído allí",
    memory: "de memoria, por verificar",
    practice: "sin documento",
  },
};
