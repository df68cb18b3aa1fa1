import type { keepBend as english } from "../en/keep-bend.ts";

export const keepBend: typeof english = {
  summary: "Guardar este resultado en este dispositivo",
  onePiece: "Una sola pieza no tiene ±, así que no se guarda. Pliegue dos o más, mejor cinco.",
  newer: "Los pliegues de este dispositivo vienen de páginas más nuevas que estas. Vuelva a cargar la página.",
  kept: "Guardado. Lo usan en este dispositivo los desarrollos con el método «medido en este taller» y el plan.",
  notKept: "Este navegador no guarda nada: su almacenamiento está apagado o lleno. Esta es la línea para el archivo del taller:",
  metal: "Metal de las piezas",
  lot: "Lote de la chapa, si se conoce",
  brake: "Plegadora",
  date: "Fecha",
  keep: "Guardarlo",
  seeShop: "Ver este taller (en inglés)",
};
