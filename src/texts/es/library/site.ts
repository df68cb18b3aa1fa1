/** Names of pages, as menus and neighbours have them, and of what is no document, as citations have it. */
export const site: Readonly<Record<string, string>> = {
  "Marking out": "Trazado",
  Cutting: "Corte",
  Punching: "Punzonado",
  Bending: "Plegado",
  Rolling: "Cilindrado",
  Joining: "Unión",
  Furnace: "Horno",
  "Plan a part": "Planear una pieza",
  "Cut plan": "Plan de corte",
  "This shop": "Este taller",
  "On this device": "En este dispositivo",
  Tables: "Tablas",
  Calculators: "Calculadoras",
  "Checked values": "Valores comprobados",
  Sources: "Fuentes",
  Safety: "Seguridad",
  Glossary: "Glosario",
  Assignments: "Tareas",
  "Shop display": "Pantalla del taller",
  Assignments: "Tareas",
  "Angle and springback": "Ángulo y retorno elástico",
  "Why a bend opens again when it is let go, and how far past the angle to swing.":
    "Por qué un pliegue se abre al soltarlo y cuánto hay que girar más allá del ángulo.",
  "Folded edges": "Bordes doblados",
  "Fold the raw edge back on itself, so that it is safe, stiff and straight.":
    "Doblar el borde vivo sobre sí mismo para que sea seguro, rígido y recto.",
  "Boxes and their fingers": "Cajas y sus segmentos",
  "Which sides of a box are bent first, and which fingers stand between the sides that are up already.":
    "Qué lados de una caja se pliegan primero y qué segmentos van entre los lados ya levantados.",
  "Bend and measure a few strips, and every blank after them comes nearer to size.":
    "Plegar y medir unas tiras, y los desarrollos siguientes salen más cerca de la medida.",
  geometry: "geometría",
};
