import type { figuresBending as english } from "../en/figures-bending.ts";

export const figuresBending: typeof english = {
  brakeParts: {
    title: "Vista lateral de una plegadora manual: chapa entre la mesa y el segmento, el delantal delante, el contrapeso detrás",
    lever: "palanca del pisador",
    beam: "viga del pisador",
    finger: ["segmento,", "uno de varios"],
    nose: "nariz",
    backStop: "tope",
    sheet: "chapa",
    leaf: "delantal",
    hinge: ["eje de giro", "del delantal"],
    handle: "palanca",
    bed: "mesa",
    counterweight: ["contra-", "peso"],
  },
  fibres: {
    title:
      "Una tira con líneas trazadas a distancias iguales, plana y plegada: las líneas se separan por fuera, se juntan por dentro y guardan su distancia en la línea neutra",
    used: "longitud que usa el pliegue (desarrollo)",
    radius: "radio interior R",
    stretched: "estirado",
    squeezed: "comprimido",
    neutral: ["línea neutra", "guarda su", "longitud"],
  },
  angleNames: {
    title: "Tres pliegues, girados 30, 90 y 135 grados; los ángulos que quedan dentro son 150, 90 y 45 grados",
    turned: (angle) => `giro ${angle}°`,
    inside: (angle) => `interior ${angle}°`,
  },
  setback: {
    title:
      "Sección de un ángulo: las alas exteriores llegan al vértice; el retroceso va del vértice hacia atrás hasta cada línea de tangencia",
    symbol: "SB",
    leg: "ala exterior",
    apex: "vértice",
    tangent: "línea de tangencia",
  },
  flatStrip: {
    title: (blank, sight, first, second) =>
      `Desarrollo de ${blank} mm de largo; línea de mira a ${sight} mm; líneas de tangencia a ${first} y ${second} mm del borde de referencia`,
    datum: "borde de referencia",
    long: "ala larga, sujeta",
    short: ["ala corta,", "delantal"],
    zone: (size) => `zona del pliegue ${size}`,
    tangent: ["línea de", "tangencia"],
    sight: "línea de mira",
    units: "milímetros desde el borde de referencia",
  },
  sightLine: {
    title:
      "Chapa sujeta bajo el segmento, desde arriba y de lado: la línea de mira queda justo bajo el frente de la nariz, un radio por delante de la línea de tangencia",
    fingerAbove: ["segmento,", "desde arriba"],
    onLeaf: ["chapa en", "el delantal"],
    tangent: "tangencia",
    sight: "línea de mira",
    finger: "segmento",
    bed: "mesa",
    leaf: "delantal",
    hinge: "eje de giro",
  },
  nose: {
    title:
      "Nariz del segmento ampliada: ala levantada 90 grados contra el delantal, segmento retirado del eje de giro el espesor",
    setback: "retirada del segmento",
    hinge: "eje de giro",
    radius: ["radio de la nariz =", "radio interior R"],
    finger: "segmento",
    bed: "mesa",
    leaf: "delantal",
  },
  swing: {
    title:
      "Tres pasos de un pliegue: sujeta por la línea de mira; delantal girado más allá de 90 grados; delantal abajo y pisador abierto, el ala vuelve a 90 grados",
    steps: [
      ["sujetar en la", "línea de mira"],
      ["girar más allá", "del ángulo"],
      ["bajar, abrir", "y medir"],
    ],
  },
  bendOrder: {
    title: "Perfiles en U, Z, omega y J, cada pliegue numerado en el orden en que se hace",
    channel: "perfil en U",
    z: "perfil en Z",
    hat: "perfil omega",
    j: "J, con borde cerrado",
  },
  grain: {
    title:
      "Dirección de laminación de una chapa y tres desarrollos: línea de pliegue a través, lo mejor; inclinada, después; a lo largo se agrieta primero",
    across: ["a través:", "lo mejor"],
    slanted: ["inclinada:", "si va en ambos"],
    along: ["a lo largo:", "se agrieta"],
    direction: "← dirección de laminación de la chapa →",
  },
  outerStretch: {
    title:
      "La cara exterior de un pliegue se alarga un 50 por ciento con un radio de medio espesor, un 33 con un espesor, un 20 con dos y un 11 con cuatro",
    ratio: "radio interior ÷ espesor",
    stretch: "alargamiento de la cara exterior",
  },
  unevenBend: {
    title:
      "Alas de dos pliegues desiguales vistas a lo largo del pliegue: una está abierta en medio, la otra cambia de un extremo al otro",
    open: ["abierto en medio", "la máquina cede"],
    tapered: ["cónico", "segmentos desiguales"],
    places: ["izq.", "medio", "der."],
    ends: "extremos",
  },
};
