import type { calculator as english } from "../en/calculator.ts";

export const calculator: typeof english = {
  notLive: "Los scripts están desactivados y los campos no hacen nada: esto es un ejemplo resuelto.",
  failed: "No se pudo cargar la calculadora. Vuelva a cargar la página; esta respuesta es un ejemplo resuelto.",
  deviceShop: "Este taller",
  deviceShopChanged: (when) => `Se usan los cambios del taller guardados en este dispositivo, del ${when}.`,
  deviceShopUnusable:
    "Los cambios del taller guardados en este dispositivo no se pueden usar; se usa el archivo del propio taller.",

  otherMetalValues: "Usar otros valores para el metal",
  metalsOwn: (value) => `El del propio metal: ${value}.`,
  leftEmpty: (what) => `Si se deja vacío: ${what}.`,
  notChosen: "sin elegir",
  families: {
    "carbon-steel": "Acero al carbono",
    stainless: "Acero inoxidable",
    aluminium: "Aluminio",
    "copper-alloy": "Cobre y latón",
    titanium: "Titanio",
  },
  removeRow: (row, list) => `Quitar la fila ${row} de ${list}`,
  addRow: (list) => `Añadir a ${list}`,
  range: (from, to) => `${from} a ${to}`,
  rangeAbove: (from, to) => `más de ${from}, hasta ${to}`,
  keptAs: (text) => `guardado como ${text}`,
  strays: "Omitir lo que aquí no se conoce",

  answerOf: (title) => `${title}: respuesta`,
  staleAnswer: "Respuesta para los últimos valores válidos.",
  noAnswerYet: "Todavía no hay respuesta.",
  fieldsToMend: (count) => (count === 1 ? "Un campo necesita otro valor." : `${count} campos necesitan otros valores.`),
  caution: "Precaución",
  cautionAt: "en",
  notKnown: "no se sabe",
  none: "ninguno",
  fractionOff: (error, long) => `La fracción es ${error} demasiado ${long ? "larga" : "corta"}.`,
  from: "Según",
  inEnglish: "(en inglés)",
  thisAnswer: "esta respuesta",

  working: "Desarrollo del cálculo",
  workingElsewhere: { before: "Las fórmulas con sus números están en", link: "la página de esta calculadora sola" },
  lookedUp: "Esta respuesta se toma de una tabla, no se calcula.",
  workedIn: "Se calcula en milímetros, newtons y grados; se muestran cifras redondeadas y se usan sin redondear.",
  holds: "Dónde vale, precauciones y fuentes",
  whereHolds: "Dónde vale",
  cautions: "Precauciones",
  sources: "Fuentes",

  copyLink: "Copiar enlace con estos valores",
  startValues: "Volver a los valores iniciales",
  copied: "Copiado.",

  aloneTitle: (title) => `${title}, sola`,
  explainedIn: "Explicado en Flat to Formed",
};
