import type { planSheet as english } from "../en/plan-sheet.ts";

const count = (number: number, one: string, more: string) => `${number} ${number === 1 ? one : more}`;

export const planSheet: typeof english = {
  planOf: (name) => `Plan de ${name}`,
  codeOf: "Código de la dirección de este plan, para escanear con un teléfono",
  noCode: "La dirección de este plan es demasiado larga para un código: páselo como archivo de pieza.",
  unit: { mm: "mm", inch: "in", fraction: "in" },
  unitInWords: { mm: "mm", inch: "pulgadas", fraction: "pulgadas" },

  block: {
    kind: "Clase",
    material: "Material",
    thickness: "Espesor",
    quantity: "Cantidad",
    measured: "Medidas tomadas",
    seam: "Costura",
    shop: "Taller",
    name: "Nombre",
    date: "Fecha",
  },
  kinds: { tube: "tubo cilindrado", cone: "cono cilindrado", partOfTube: "parte de un tubo cilindrado" },
  seams: { butt: "a tope", lap: "solapada", grooved: "engatillada", standing: "alzada" },
  none: "ninguna",
  blanks: {
    folded: "Desarrollo, de oeste a este × de sur a norte",
    tube: "Desarrollo, alrededor del tubo × a lo largo de su eje",
    cone: "Placa de la que se corta el desarrollo, de oeste a este × de sur a norte",
  },
  massOfOne: "Masa de una",

  seen: { read: "", memory: " (de memoria)", practice: "" },
  check: (value, least, limit, holds) =>
    `${value}, ${least ? "al menos" : "como mucho"} ${limit}: ${holds ? "se cumple" : "no se cumple"}.`,
  allHold: (checks) => `Las ${checks} comprobaciones se cumplen.`,
  someBroken: (broken, checks, labels) =>
    `${broken} de ${checks} comprobaciones no se ${broken === 1 ? "cumple" : "cumplen"}: ${labels.map((label) => label.toLowerCase()).join("; ")}.`,
  checks: "Comprobaciones",
  nothingAdjusted: "Nada se ajusta por usted: una comprobación que no se cumple la decide usted.",
  held: (checks) => count(checks, "comprobación se cumple", "comprobaciones se cumplen"),
  steps: "En este orden",
  beforeYouStart: "Antes de empezar",
  tickEach: ": lea cada una en la página de seguridad y márquela después",

  drawing: {
    flat: (name, width, depth) => `Desarrollo de ${name}: ${width} por ${depth}`,
    caption: (unit, edges) =>
      `El desarrollo, con la cara delantera arriba; ${unit} desde ${edges.length === 1 ? `el borde ${edges[0]}, la referencia` : `los bordes ${edges.join(" y ")}, las referencias`}. La línea dentro de cada pliegue es su línea de mira.`,
    tabs: (end) => `pestañas ${end}`,
    bent: (name, panels) => `${name}, plegada: ${panels.join(", ")}`,
    section: "La pieza terminada, vista a lo largo de sus pliegues.",
    sectionFrom: {
      y: "La pieza terminada, vista a lo largo de sus pliegues desde el oeste.",
      x: "La pieza terminada, vista a lo largo de sus pliegues desde el sur.",
    },
    afterBend: (bend) => `La pieza en sección después del pliegue ${bend}`,
    blank: (name, width, depth) => `Desarrollo de ${name}: ${width} por ${depth}`,
    sector: (name, outer, inner, angle) =>
      `Desarrollo de ${name}, el sector de un anillo: radio exterior ${outer}, radio interior ${inner}, ${angle}`,
    rolledCaption: (unit) =>
      `El desarrollo, con el futuro interior arriba, medidas en ${unit}. El borde A es el oeste, el B el este.`,
    brightLines: "Las líneas claras son de la costura.",
    chord: (length) => `cuerda ${length}`,
    centreFromSouth: (length) => `O está a ${length} del borde sur`,
    over: (angle) => `en ${angle}`,
    finished: (name) => `${name}, terminada: vista por su eje y de lado`,
    finishedCone: "La pieza terminada, vista por su extremo pequeño y de lado, diámetros exteriores.",
    finishedTube: (measured) => `La pieza terminada, vista por su eje y de lado, medida ${measured}.`,
  },

  printTemplate: "Imprimir la plantilla 1:1",
  signOff: "Hoja de autorización: máquinas, precauciones, preguntas",
  downloadFlat: "Descargar el dibujo del desarrollo (SVG, mm reales)",

  cuts: {
    title: "En la cizalla",
    blanks: (blanks, width, depth, unit) => `${count(blanks, "desarrollo", "desarrollos")} de ${width} × ${depth} ${unit}`,
    fromStock: (sheets, width, length) =>
      ` de ${sheets === 1 ? "una chapa de existencias" : `${sheets} chapas de existencias`} de ${width} × ${length}`,
    noStock: "; ninguna chapa de las existencias de este taller sirve, así que el tope se da para una justa",
    grain: { x: ", dirección de laminación de oeste a este", y: ", dirección de laminación de sur a norte" },
    diagonals: (length) => `. Para esquinas a escuadra, las dos diagonales ${length}.`,
    burr: "Quite la rebaba de todos los bordes; marque los bordes de referencia.",
    sector: "Después corte de ella el sector: los bordes rectos en la cizalla, los arcos con tijeras o con la sierra de cinta.",
    caption: (unit) => `Tope trasero, ${unit} desde la cuchilla, en el orden de corte`,
    heads: ["Ajuste", "Tope", "Corte", "A lo largo de la cuchilla"],
    scribe: (size) => `trace una línea a ${size}`,
    strip: (times) => (times === 1 ? "una tira de la chapa" : `${times} tiras de la chapa`),
    rest: (times) => (times === 1 ? "el resto fuera; quede la pieza" : "el resto fuera de cada una; queden las piezas"),
    blank: (times) => (times === 1 ? "el desarrollo de la tira" : `${times} desarrollos de las tiras`),
    practice: (times) => count(times, "tira de prueba", "tiras de prueba"),
    tooLong: (length) => `${length}, más largo que la cizalla: córtelo de otra manera`,
  },

  practice: {
    title: "Primero, piezas de prueba",
    strips: (pieces, length, width, angle, radius, bends) =>
      `${pieces} tiras de ${length} × ${width}, plegadas por la mitad a ${angle} con un radio de ${radius}, para ${bends.join(", ")}.`,
    enter: "Apunte lo que mida y escríbalo aquí: el plan se ajusta entonces a esta plegadora y a esta chapa.",
    caption: "Lo que miden",
    heads: (unit) => ["Pieza", `Plana antes, ${unit}`, "Ala A", "Ala B"],
    trialTitle: "Primero, tiras de ensayo",
    trialCaption: (length, width, unit) =>
      `Tiras de ${length} × ${width} de la misma chapa: subida, radio interior deseado y medido en reposo; ${unit}`,
    trialHeads: ["Tira", "Subida", "Radio", "Medido"],
    any: "cualquiera",
  },

  scribe: {
    title: "Lista de trazado",
    caption: (unit) => `Ajuste una vez, recorra el borde indicado, pase a la siguiente; ${unit}`,
    rolledCaption: (unit) => `En el orden de trazado, en la cara que será el interior; ${unit}`,
    heads: { line: "Línea", face: "Cara", from: "Desde", what: "Qué" },
    readings: ["mm", "pulgadas", "1/64 in más cercano (error en mm)"],
    back: "Las líneas de atrás se trazan con la chapa vuelta sobre el borde de referencia del que se miden, desde ese mismo borde.",
    sector: (angle) => `Sector: ${angle} entre las líneas de la costura. Su cuerda da el ángulo mejor que un transportador.`,
  },

  holes: {
    title: "Agujeros en el desarrollo",
    caption: (unit) => `Centros, ${unit} desde los bordes oeste y sur del desarrollo`,
    coneCaption: (unit) => `Centros, ${unit} desde los bordes oeste y sur del rectángulo`,
    heads: { hole: "Agujero", fromWest: "Desde el oeste", fromSouth: "Desde el sur", size: "Medida", panel: "Panel", by: "Con" },
    turned: (angle) => `, girado ${angle}`,
    die: (die) => `punzonadora, matriz ${die}`,
  },

  punching: {
    title: "Agujeros y muescas, mientras está plana",
    beforeRolling:
      "Antes de cilindrar: la punzonadora y el taladro de columna no llegan dentro de la pieza terminada, y los sitios se marcan en plano.",
    centrePunch: "Granetee donde se cruzan las líneas; después quite la rebaba.",
    caption: (unit) => `En este orden, medidas en ${unit}`,
    heads: ["Paso", "Haga", "Medida", "Con"],
    punch: (die, percent) => `punzonadora, matriz ${die}; ${percent} % de su fuerza`,
    drill: "taladro",
    drillAndSaw: "taladre sus extremos o esquinas, sierre o lime entre ellos",
    notPunched: {
      "no-punch": "aquí no hay un punzón así",
      force: "demasiada fuerza para la punzonadora",
      throat: "fuera del alcance de la garganta de la punzonadora",
    },
    cornerCutter: "escantonadora",
    toTheLines: "tijeras o sierra de cinta hasta las líneas",
    notCut: {
      size: "demasiado grande para la escantonadora",
      thickness: "demasiado gruesa para la escantonadora",
      shape: "más que una esquina cuadrada",
    },
    thenRelief: (size) => `; después el alivio cuadrado, ${size}`,
    holes: (numbers) => `${numbers.length === 1 ? "agujero" : "agujeros"} ${numbers.join(", ")}`,
    reliefs: (number) => count(number, "agujero de alivio", "agujeros de alivio"),
    notches: (number) => count(number, "muesca", "muescas"),
    everyCorner: (what) => `${what}, en cada esquina`,
    bothGuides: (size) => `las dos guías ${size}`,
    guides: (across, along) => `guías ${across} desde el oeste o el este, ${along} desde el sur o el norte`,
  },

  corners: {
    title: "Esquinas",
    caption: (unit) => `Guías desde los bordes del desarrollo, centros desde sus bordes oeste y sur, ${unit}`,
    heads: ["Esquina", "Guía desde el oeste o el este", "Guía desde el sur o el norte", "Los pliegues se cruzan en", "Alivio"],
  },

  bends: {
    title: "Pliegues",
    caption: (unit) => `En el desarrollo, ${unit} desde el borde indicado`,
    heads: {
      bend: "Pliegue",
      from: "Desde",
      tangents: "Líneas de tangencia",
      sight: "Línea de mira",
      angle: "Ángulo",
      way: "Sentido",
      swing: "Girar hasta",
      radius: "Radio interior",
      deduction: "Deducción",
    },
    springsBackFlat: "vuelve a quedar plana",
  },

  order: {
    title: "Orden de los pliegues",
    none: "Ningún orden de los pliegues sirve en esta plegadora.",
    tabsByHand: (tabs) =>
      `Antes del primero, doble las pestañas a mano, sobre el borde de un bloque o con alicates de plegar: ${tabs.join(", ")}.`,
    turnOver: "déle la vuelta; ",
    turned: { no: "", "end for end": "gírela de extremo a extremo; ", quarter: "gírela un cuarto; " },
    faceUp: (face) => `cara ${face} arriba, `,
    onLeaf: (end) => `extremo ${end} sobre el delantal`,
    nose: (distance, from) => ` Nariz en la línea de mira, a ${distance} de ${from}.`,
    swing: (angle) => ` Gire hasta ${angle}.`,
    rowStays: "La fila de segmentos puede quedarse.",
    setFingers: (fingers, place) => `Ponga los segmentos ${fingers}${place}.`,
    sameFingers: "Quedan los mismos segmentos.",
    places: { row: "", set: "", beside: ", junto al lado levantado", between: ", entre los lados levantados" },
    goesIn: {
      front: "",
      sideways: " Métala deslizando desde el extremo.",
      "with fingers": " Ponga los segmentos dentro de la pieza y después todo en la viga.",
    },
    comesOut: {
      front: "",
      sideways: " Sáquela deslizando por el extremo.",
      "with fingers": " Saque los segmentos junto con la pieza.",
    },
  },

  rolls: {
    title: "En la cilindradora",
    wholeLength: "Los dos tornillos iguales",
    atEnd: (end) => `En el extremo ${end}`,
    setting: (where, held, radius, flat) =>
      `${where}: sujeta a ${held} para ${radius} por dentro; extremos planos de unos ${flat}.`,
    caption: (unit) => `Desde el contacto en plano; radio interior después de la pasada; ${unit}`,
    pass: "Pasada",
    heads: { turns: "Vueltas", rise: "Subida", radius: "Radio" },
    headAt: (head, end) => `${head}, ${end}`,
  },

  joints: {
    tabs: "Unir las pestañas",
    seam: "Unir la costura",
    notWelded: (why) => `Este metal no se suelda aquí por puntos: ${why} Remáchelo.`,
    noSchedule: "No se ha leído ninguna tabla de ajustes para este espesor: pregunte a su instructor.",
    spotCaption: "Dónde empezar en la punteadora; deciden las probetas de las mismas dos chapas",
    spotHeads: ["Uniones", "Cara del electrodo", "Fuerza", "Corriente", "Tiempo", "Botón, al menos", "Probeta aprobada"],
    spots: (number) => count(number, "punto", "puntos"),
    beyond: " (fuera de esta punteadora)",
    between: (low, high) => (low === high ? low : `${low} a ${high}`),
    rivetCaption: "Taladre las dos capas juntas, quite la rebaba entre ellas y remache después",
    rivetHeads: ["Uniones", "Remache", "Broca", "Agarre", "Remache macizo, largo"],
    rivets: (number) => count(number, "remache", "remaches"),
    onto: (tab, side, number) => `${tab} sobre ${side}: ${number}`,
    folding: "Doblar la costura",
    foldCaption: (seam, size, high, unit) =>
      `Una costura ${seam}, acabada ${size} de ${high ? "alto" : "ancho"}; ${unit}, vista desde el futuro interior`,
    foldHeads: ["Doblez", "Desde el borde", "Distancia", "Sentido"],
  },

  sizes: {
    title: "Medidas acabadas",
    caption: (unit) => `En ${unit}; ± con k = 2 de trazado, ajuste, datos de plegado y espesor`,
    heads: ["Panel", "Medida", "±", "Medido"],
    rolledCaption: (unit) => `± con k = 2; ${unit}`,
    rolledHeads: ["Medida", "Deseada", "±", "Medido"],
    mayComeBackFlat: "puede volver a quedar plana",
    marking: (method, error) => `Trazado con ${method.toLowerCase()}: ±${error} por línea.`,
    nose: (error) => `Poner la nariz en una línea a ojo: ±${error}, práctica común.`,
    rolledFrom: "El ± viene del trazado, la costura, el retorno elástico y el espesor juntos.",
    template: "Cuán redonda es la pieza lo dice la plantilla.",
  },
};
