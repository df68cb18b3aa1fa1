import type { planTemplate as english } from "../en/plan-template.ts";

const sheets = (count: number) => `${count} ${count === 1 ? "hoja" : "hojas"}`;
const rows = (count: number) => `${count} ${count === 1 ? "fila" : "filas"}`;
const columns = (count: number) => `${count} ${count === 1 ? "columna" : "columnas"}`;

export const planTemplate: typeof english = {
  title: (name) => `Plantilla a tamaño real: ${name}`,
  withoutName: "pieza sin nombre",
  howToPrint: (paper) =>
    `Imprímala en ${paper} al 100 %, sin «ajustar a la página», y ponga una regla sobre la barra de 100 mm de cada hoja antes de pegar.`,
  blank: (width, depth, used, down, across, emptyLeftOut) =>
    `El desarrollo mide ${width} × ${depth}: ${sheets(used)}, ${rows(down)} de ${columns(across)}${emptyLeftOut ? ", sin las vacías" : ""}.`,
  paperMoves:
    "El papel se mueve con la humedad y la cola unas décimas de milímetro (práctica común). Marque a través de él con el punzón los centros de los agujeros y los extremos de las líneas, y trace desde los bordes de referencia lo que deba ser más exacto.",
  linesOnBack: "Las líneas de mira de los pliegues hacia abajo van por detrás.",
  paper: "Papel",
  print: (count) => `Imprimir ${sheets(count)}`,
  back: "Volver al plan",
  overview: (down, across) => `Cómo van ${down} × ${across} hojas sobre la pieza`,

  place: (row, down, column, across) => `fila ${row} de ${down}, columna ${column} de ${across}`,
  sheet: (name, place) => `Plantilla de ${name}, ${place}`,
  cut: "Corte por las líneas a trazos; una contorno con contorno.",
  glue: "Péguela con el contorno en el borde.",
  bar: (length) => `Esta barra mide ${length} mm. Si no, imprima al 100 %, sin ajustar.`,
};
