import type { safety as english } from "../en/safety.ts";

export const safety: typeof english = {
  title: "Seguridad",
  description: "Todas las precauciones del manual en un solo lugar, cada una con su procedencia.",
  lead: "Todas las precauciones que hay en una página o en una calculadora, en un solo lugar. Nada de esto sustituye el manual y la placa de la máquina, las reglas de su taller, la ley del lugar donde trabaja ni a las personas formadas en la máquina.",
  before:
    "Antes de usar una máquina: deje que le enseñe alguien formado en ella y autorizado a enseñarla, sepa dónde está su paro o su bloqueo y pregunte cuando algo no esté claro. Si estas páginas y su instructor no coinciden, su instructor tiene razón.",
  hurt: "Si alguien se hace daño: pare la máquina, pida ayuda y siga las reglas de primeros auxilios expuestas en su taller. Sepa dónde están antes de necesitarlas.",
  always: "En todo trabajo",
  trades: {
    marking: "Trazado",
    cutting: "Corte",
    punching: "Punzonado",
    bending: "Plegado",
    rolling: "Cilindrado",
    joining: "Unión",
    furnace: "Horno",
  },
  also: (trades) => `También para ${trades.join(", ").toLowerCase()}. `,
  practice: "Práctica común; no se cita ningún documento.",
  source: "Fuente:",
  fromMemory: ", de memoria",
  origin: "De dónde vienen",
  originText:
    "La mayoría son práctica común del oficio, transmitida de palabra y en reglas de taller, y así se marcan. Se guardan en un solo archivo para que un taller pueda añadir las suyas. Los documentos están en la",
  sources: "lista de fuentes",
};
