import type { signOff as english } from "../en/sign-off.ts";
import { machines } from "./machines.ts";

export const signOff: typeof english = {
  description:
    "Las máquinas que usa un plan, con sus precauciones y las preguntas que se contestan antes de empezar, para firmar.",
  lead: "Las máquinas que usa este plan y lo que hay que contestar en cada una antes de encender nada.",
  planLink: "Volver al plan",
  failed: "No se pudo cargar la página entera. Vuelva a cargarla: puede que muestre otra pieza.",
  example: "Esta es la hoja de un ejemplo. Ábrala desde su propio plan.",
  noPlan: "Todavía no hay plan que firmar: la pieza tiene un valor que no se puede usar.",
  whichCopy: "Mostrar e imprimir",
  copies: { student: "la hoja del estudiante", supervisor: "la copia del supervisor, con buenas respuestas" },
  print: "Imprimir esta hoja",

  sheetOf: (name) => `Hoja de autorización: ${name}`,
  withoutName: "Pieza sin nombre",
  copy: { student: "Hoja del estudiante", supervisor: "Copia del supervisor: no es para estudiantes" },
  block: { material: "Material", thickness: "Espesor", shop: "Taller", student: "Estudiante", date: "Fecha" },
  stations: { ...machines, snips: "Tijeras", drill: "Taladro", rivets: "Remaches" },
  machine: (station, name) => `${station}: ${name}`,
  cautions: "Precauciones",
  askedAbove: "Sus otras precauciones se preguntan arriba.",
  broken: (count) =>
    count === 1
      ? "Una comprobación de este plan no se cumple. No firme antes de resolverla."
      : `${count} comprobaciones de este plan no se cumplen. No firme antes de resolverlas.`,
  goodAnswer: "Buena respuesta:",
  mayStart: "Puede empezar aquí, firmado:",
  signature: "Firma del supervisor",
  defer:
    "Firmado solo para esta pieza, esta máquina y este día. El manual y la placa de la máquina, las reglas del taller y la ley del lugar van primero; esta hoja no sustituye ninguna formación ni licencia. El supervisor puede preguntar más, y para el trabajo ante cualquier respuesta equivocada.",
};
