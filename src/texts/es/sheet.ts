import type { sheet as english } from "../en/sheet.ts";

const times = (count: number, one: string, many: string) => `${count} ${count === 1 ? one : many}`;

export const sheet: typeof english = {
  title: "Plan de corte",
  heading: "Plan de corte: piezas planas de las chapas",
  description:
    "Muchas piezas planas de chapas enteras y retales, con cortes que una cizalla puede hacer: las menos chapas posibles y todos los ajustes del tope en orden.",
  lead: "Diga qué hay que cortar y de qué. El plan gasta la menor chapa que puede, dice cuánto le falta para lo mejor que hay y da todos los ajustes del tope trasero en orden. Todo lo que escriba está en la dirección de esta página: un enlace es el archivo.",
  noScript: "Los scripts están desactivados y los campos no hacen nada: esto es un ejemplo resuelto.",
  failed: "No se pudo cargar el formulario. Vuelva a cargar la página; este plan es un ejemplo resuelto.",

  howTitle: "Cómo corta una cizalla",
  how: [
    {
      term: "De borde a borde",
      text: "Una cizalla de escuadrar corta de un borde de la placa al otro y no puede parar en medio, así que cada golpe hace de un rectángulo dos. Un dibujo en el que las piezas se traban como ladrillos no se puede cortar así, por bien que llene la chapa. Ningún plan de aquí tiene un sitio como ese.",
    },
    {
      term: "Tope trasero",
      text: "Lo que se mide va contra el tope, detrás de la cuchilla, y cae ahí; lo que usted sujeta queda delante. Se dan todos los golpes con un ajuste antes de mover el tope: menos ajustes, menos errores y piezas todas iguales.",
    },
    {
      term: "Dirección de laminación",
      text: "La chapa se lamina a lo largo, y se agrieta antes cuando un pliegue agudo va en esa dirección. Una pieza con un pliegue así debe ir en un solo sentido; las demás se pueden girar, y eso ahorra chapa.",
    },
    {
      term: "Recorte",
      text: "Los bordes golpeados en el transporte, o que no están a escuadra, se quitan primero. El recorte que no hace falta cuesta chapa y golpes.",
    },
    {
      term: "El corte no se lleva nada",
      text: "Una cizalla no quita ancho, al contrario que una sierra. Un tope desviado medio milímetro lo está en todas las piezas: mida la primera.",
    },
  ],

  continueWith: (name) => `Seguir con «${name}», la última lista de este dispositivo`,
  addFromLast: (name, count) =>
    `Añadir ${count === 1 ? "la pieza" : `las ${count} piezas`} de «${name}», la última lista de este dispositivo`,

  groups: { goal: "Para qué es", stock: "Chapas", pieces: "Piezas" },
  stockLabel: "De las existencias de este taller",
  takeStock: "Tomarla como chapa",
  addStock: "Añadirla a las otras chapas",
  shelfTitle: "Retales guardados en este dispositivo",
  shelfNone: "Todavía ninguno. Los retales de un plan se pueden guardar debajo de él.",
  shelfUse: "Usarlo en este plan",
  shelfUsed: "en este plan",
  otherMetal: "otro metal u otro espesor",
  removeOffcut: (name) => `Quitar «${name}» de este dispositivo`,
  storageOff: "No se puede guardar nada: el almacenamiento está apagado o lleno.",
  storageNewer: "Una versión más nueva de estas páginas guarda los retales; vuelva a cargar esta página.",
  storageUnreadable: (key) =>
    `No se pudieron leer los retales guardados aquí. No se han borrado: están en este navegador con el nombre «${key}».`,

  pasteTitle: "Pegar una lista",
  pasteLabel: "Líneas de una hoja de cálculo o de un archivo CSV",
  pasteHelp:
    "Nombre, ancho, largo, cantidad, dirección de laminación (along, a lo largo; across, a través), valor: una pieza por línea, con las celdas separadas por tabuladores, puntos y comas o comas. Con una línea de títulos las columnas pueden ir en cualquier orden; las unidades pueden ir en el título o junto al número.",
  pasteReplace: "Tomar estas piezas en lugar de las otras",
  pasteAdd: "Añadirlas a las piezas",
  pasteNothing: "No hay ninguna línea que leer.",
  pasteTaken: (count, bad) =>
    bad === 0
      ? `${times(count, "línea tomada", "líneas tomadas")}.`
      : `${times(count, "línea tomada", "líneas tomadas")}; ${bad === 1 ? "1 línea no se pudo leer y queda" : `${bad} líneas no se pudieron leer y quedan`} aquí abajo.`,

  print: "Imprimir el plan",
  copyLink: "Copiar el enlace de este plan",
  stop: "Parar y quedarse con lo mejor hasta ahora",
  goOn: "Planear otra vez",

  staleGood: "Plan para los últimos valores válidos. ",
  staleNone: "Todavía no hay plan. ",
  staleOne: "Un campo necesita otro valor: ",
  staleMany: (count) => `${count} campos necesitan otro valor: `,
  planning: "Planeando",
  notYet: "todavía no hay plan",
  doing: {
    "laying out": "colocando piezas",
    "trying all": "probando todas las maneras",
    pricing: "sopesando patrones entre sí",
    rounding: "haciendo chapas enteras de los patrones",
    repacking: "rehaciendo grupos de chapas",
    "comparing cuts": "comparando cortes",
    weighing: "sopesando piezas escasas",
  },
  bestSoFar: (found, bound, gap) =>
    `Lo mejor hasta ahora, ${found}; ningún plan puede bajar de ${bound}; a ${gap} de ese límite.`,
  stopped: "Parado: esto es lo mejor que se había encontrado.",
  usedUp: "Esto es lo mejor de muchos intentos. ",

  proved: {
    sheets: (count) =>
      `Demostrado el mejor: con cortes de borde a borde no basta con menos de ${times(count, "chapa", "chapas")}.`,
    "sheet-area": (area) => `Demostrado el mejor: con cortes de borde a borde no basta con menos de ${area} de estas chapas.`,
    "piece-area": (area) => `Demostrado el mejor: con cortes de borde a borde no salen más de ${area} de una chapa.`,
    worth: (worth) => `Demostrado el mejor: con cortes de borde a borde una chapa no da más valor que ${worth}.`,
  },
  within: {
    sheets: (gap, bound) => `A ${gap} del límite: todo plan necesita al menos ${bound}.`,
    "sheet-area": (gap, bound) => `A ${gap} del límite: todo plan necesita al menos ${bound} de estas chapas.`,
    "piece-area": (gap, bound) => `A ${gap} del límite: ningún plan saca más de ${bound} de una chapa.`,
    worth: (gap, bound) => `A ${gap} del límite: ningún plan vale más de ${bound}.`,
  },

  planOf: (name) => `Plan de corte de ${name}`,
  noName: "Plan de corte sin nombre",
  material: "Material",
  thickness: "Espesor",
  shop: "Taller",
  cutBy: "Cortado por",
  date: "Fecha",
  sheetCount: (count) => times(count, "chapa", "chapas"),
  sheetsAnswer: "Chapas",
  usedAnswer: "Usado",
  settingsAnswer: "El tope se ajusta",
  settingsTimes: (count) => times(count, "vez", "veces"),
  strokes: (count) => times(count, "golpe", "golpes"),
  massAnswer: "Masa de las chapas",

  sheetName: (index) => `Medida ${index + 1}`,
  mainSheet: "chapa",
  sheetNumber: (first, last) => (first === last ? `Chapa ${first}` : `Chapas ${first} a ${last}, cortadas igual`),
  outOf: (name, size) => (name === "" ? size : `${name}, ${size}`),
  drawingTitle: (sheets, size, pieces, strokes) =>
    `${sheets}, ${size}: ${times(pieces, "pieza", "piezas")}, ${times(strokes, "golpe", "golpes")}`,
  rolling: "dirección de laminación",
  drawingCaption: (unit) =>
    `Las letras son las piezas de la lista, los números de las líneas son los pasos de abajo, lo rayado sobra; ${unit}.`,
  strokesUnnumbered: "Las líneas demasiado cortas para un número están en la lista de todos los golpes.",

  piecesTitle: "Piezas",
  piecesCaption: (unit) => `Ancho × largo, ${unit}`,
  piecesHead: {
    letter: "Pieza",
    name: "Nombre",
    size: "Medidas",
    wanted: "Pedidas",
    cut: "Cortadas",
    grain: "Dirección de laminación",
    mass: "Masa de una",
  },
  anyNumber: "cuantas salgan",
  grain: { free: "da igual", along: "a lo largo de la pieza", across: "a lo ancho de la pieza" },
  unnamed: (index) => `pieza ${index + 1}`,

  stepsTitle: (sheets) => `${sheets}: ajustes en orden`,
  stepsCaption: (unit) => `Tope trasero y medidas en ${unit}; las placas llevan el número con el que caen`,
  stepsHead: {
    step: "Paso",
    stop: "Tope",
    strokes: "Golpes",
    put: "Se mete",
    off: "Cae detrás de la cuchilla",
    held: "Queda en sus manos",
  },
  stopStays: "sigue en",
  toLine: (size) => `trace una línea a ${size}`,
  theSheet: "la chapa",
  plate: (ids) => `placa ${ids}`,
  plates: (count, ids) => `${count} placas, ${ids}, una tras otra`,
  platesPlain: (count, ids) => `${count} placas, ${ids}`,
  to: "a",
  toStep: (step) => `al paso ${step}`,
  offcut: (ids) => `retal ${ids}`,
  offcuts: (count, ids) => `${count} retales, ${ids}`,
  trimStrip: (count) => (count === 1 ? "recorte" : `${count} tiras de recorte`),
  ofEach: (count) => `${count} ×`,
  faults: {
    "longer-than-shear": "más largo que la cizalla: córtelo de otra manera",
    "too-small-to-hold": "demasiado corto para los pisadores: use tijeras, nunca lo sujete con la mano",
  },

  everyStroke: (count) => `Todos los golpes (${count}) y dónde queda cada cosa`,
  strokesCaption: (unit) => `Medidas ancho × largo, ${unit}; los extremos, como en el dibujo`,
  strokesHead: {
    stroke: "Golpe",
    put: "Se mete",
    putSize: "Sus medidas",
    stop: "Tope",
    end: "Extremo contra el tope",
    blade: "A lo largo de la cuchilla",
    off: "Cae",
    offSize: "Medidas de lo que cae",
    held: "Queda",
    heldSize: "Medidas de lo que queda",
    note: "Nota",
  },
  ends: { width: { start: "abajo", end: "arriba" }, length: { start: "izquierda", end: "derecha" } },
  line: "línea",
  placesCaption: (unit) => `Esquina de abajo a la izquierda del dibujo: a lo largo y a lo ancho; ${unit}`,
  placesHead: { part: "Parte", size: "Ancho × largo", along: "A lo largo", across: "A lo ancho", turned: "Colocada" },
  turned: "girada",
  straight: "derecha",

  restTitle: "Lo que sobra",
  restCaption: (unit) => `Ancho × largo, ${unit}; el largo va en la dirección de laminación`,
  restHead: { part: "Retal", count: "Cantidad", size: "Medidas", mass: "Masa de uno", keep: "Guardar" },
  restNone: "Nada que se pueda volver a cortar.",
  scrap: (count, least) =>
    `${times(count, "tira", "tiras")} con un lado menor que los ${least} que necesitan los pisadores: chatarra.`,
  keep: "Guardarlo como existencia en este dispositivo",
  kept: "guardado en este dispositivo",
  keptName: (job, id) => `${job} ${id}`,
  takeUsed: "Ya están cortados: quitar los retales usados de este dispositivo",

  cautionsTitle: "Antes de empezar",

  fromPlan: "Cortar estos desarrollos de chapas enteras, con otros o solos",
};
