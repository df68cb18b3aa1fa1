import type { drawings as english } from "../en/drawings.ts";

export const drawings: typeof english = {
  sizesInMm: "medidas en mm",
  sizesInInches: "medidas en pulgadas",
  thickerSheet: "chapa dibujada más gruesa",
  fromFlat: "desde plano",
  blankFromAbove: "el desarrollo, desde arriba",
  bend: "pliegue",
  eachBend: "cada pliegue",
  rating: "capacidad",
  ofRating: (share) => `${share} de ella`,
  between: "; ",
  finger: "segmento",
  bed: "mesa",
  leaf: "delantal",

  bendLength: {
    title: "La tira plegada y su desarrollo",
    text: (legs, angle, radius, blank, units) =>
      `Una tira con alas exteriores de ${legs}, cada pliegue girado ${angle} desde plano con un radio interior de ${radius}, y debajo el desarrollo, de ${blank} de largo; ${units}.`,
  },
  brakeLoad: {
    title: "La carga de la plegadora",
    text: (thickness, length, share, units) =>
      `Chapa de ${thickness} de espesor y ${length} de largo sujeta entre la mesa y el segmento mientras sube el delantal; exige ${share} de la capacidad; ${units}.`,
    side: "vista lateral, sin escala",
    along: (thickness, length) => `T ${thickness}, ${length} de pliegue`,
  },
  smallestRadius: {
    title: "El pliegue más agudo para esta chapa",
    text: (thickness, radius, units) =>
      `Sección de un pliegue recto en chapa de ${thickness} de espesor con un radio interior de ${radius}, dibujada a escala; su cara exterior se alarga; ${units}.`,
    toScale: (units) => `a escala, ${units}`,
    stretched: "alargado",
  },
  practicePieces: {
    title: "Lo que se mide en una pieza de prueba",
    means: (count) => `medias de ${count} piezas, `,
    and: " y ",
    text: (flat, angle, legs, units) =>
      `Desarrollo ${flat}; después de girar ${angle} desde plano, alas exteriores ${legs}; ${units}.`,
    flat: (size) => `desarrollo = ${size}`,
  },
  springback: {
    title: "Girado hasta el final y soltado",
    text: (swing, tool, over, angle, radius, units) =>
      `El delantal gira hasta ${swing} desde plano sobre una herramienta de radio ${tool}; al soltarla, la tira se abre ${over} y queda en ${angle} con un radio interior de ${radius}; ${units}.`,
    held: "a trazos: sujeta al final del giro",
    free: "línea llena: soltada",
    swing: "giro",
    endsAt: "queda en",
  },
  foldedEdge: {
    title: "El borde doblado y sus líneas en el desarrollo",
    and: " y ",
    text: (width, lines, units) =>
      `En sección, un borde doblado de ${width} de ancho; debajo, el desarrollo visto desde arriba, con el centro de cada doblez a ${lines} del borde vivo; ${units}.`,
    flat: "el desarrollo, desde arriba; centro de cada doblez",
  },
  fingerSet: {
    title: "Segmentos en la caja",
    text: (width, fingers, total, left, units) =>
      `Entre lados a ${width} hay segmentos de ${fingers}, juntos ${total}, y quedan ${left}; ${units}.`,
    front: (units) => `de frente, ${units}`,
    beam: "viga del pisador",
    sum: (total, left) => `segmentos ${total}, quedan ${left}`,
  },
};
