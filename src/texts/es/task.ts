import type { task as english } from "../en/task.ts";

export const task: typeof english = {
  name: "Tarea",
  about: "La página que abre una tarea: preguntas con números propios y respuesta a lo que se escribe.",
  brand: "Flat to Formed",

  noScript:
    "Esta página necesita JavaScript: los números de su tarea se calculan en su dispositivo, y ahí se comprueban sus respuestas. Actívelo para este sitio o pida a su instructor la tarea en papel.",
  failed: "No se pudo cargar la página entera. Vuelva a cargarla.",

  emptyTitle: "Abra su tarea",
  emptyLead:
    "Una tarea llega como un enlace de su instructor. El enlace lleva las preguntas; abierto aquí, cada estudiante recibe números propios, trabaja a mano y sabe enseguida si las respuestas son correctas.",
  openLink: "Pegue el enlace de la tarea",
  openButton: "Abrirla",
  openFile: "Abrir un archivo de tarea",
  openNothing: "Ahí no hay ninguna tarea. Pegue el enlace entero, desde https hasta el final, o abra el archivo que vino con él.",
  openText: "El texto",
  openNoJson: (name) => `${name} no es un archivo de tarea: no es JSON.`,
  openProblem: (name, problem) => `${name}: ${problem}`,
  openUnread: "No se pudo leer el archivo.",

  damagedTitle: "Este enlace no funciona",
  damagedLead: "La dirección de esta página debería llevar una tarea, pero algo falta en ella o se ha cambiado:",
  damagedHow:
    "Quizá se copió solo una parte del enlace. Ábralo otra vez desde donde lo recibió o pida uno nuevo a su instructor. También puede pegarlo aquí.",

  whoTitle: "¿Quién es usted?",
  who: "Su identificador de estudiante",
  whoHelp:
    "Como lo tiene su instructor en la lista: un número, un nombre de usuario o su nombre. Las mayúsculas y los espacios de más dan igual.",
  whoButton: "Mostrar mis números",
  whoPrivate:
    "Sus números se hacen en este dispositivo, con el nombre del curso y su identificador. No se envía nada: ni el identificador ni sus respuestas.",
  whoKept: "Este navegador guarda las dos cosas para que pueda seguir más tarde.",
  worksHere: (student) => `Números de ${student}`,
  numbersProblem: (student, problem) =>
    `No hay números para ${student}: ${problem} Avise a su instructor; la tarea necesita otro intervalo.`,
  another: "¿No es usted? Escriba otro identificador",

  courseLine: (course) => `Curso: ${course}`,
  question: (number, title) => `${number}. ${title}`,
  given: "Datos",
  ownNote: "Los valores marcados «suyo» son solo para su identificador.",
  own: "suyo",
  asked: "Se pide",
  drawingNote: "Dibujado con sus números. Hay un signo de interrogación donde el dibujo daría una respuesta.",
  answerUnit: (unit) => `En ${unit}, o con otra unidad detrás del número.`,
  answerPlain: "Un número sin más.",
  tolerance: (text) => (text === "exactly" ? "Debe ser exacto." : `Correcto a ${text}.`),
  lengthHelp: "Las longitudes pueden ir en mm, en pulgadas decimales o en fracciones: 82,8, 3,26 in, 3 17/64 in.",
  check: "Comprobar",
  checkNothing: "Escriba antes una respuesta.",
  tries: (count) => (count === 1 ? "1 intento" : `${count} intentos`),
  right: "Correcto.",
  rightWithin: (tolerance) => `Correcto, a ${tolerance}.`,
  slip: "Todavía no, pero está cerca.",
  wrong: "Todavía no. Mire que cada valor entró como está dado, con su unidad, y repase los pasos una vez más.",
  wrongAgain: "Todavía no. Compare sus pasos con las fórmulas de abajo, uno tras otro.",
  wrongStuck: "Todavía no. Lea cómo se explica o pregunte a su instructor: lleve los pasos que escribió.",
  explained: (title) => `Cómo se explica: ${title}`,
  rightCount: (right, all) => `${right} de ${all} respuestas correctas`,

  predictTitle: "Primero, su previsión",
  predictHow: "¿Qué espera? Basta una estimación y no cuenta como intento. Después se abren las fórmulas.",
  predictLabel: (label) => `Para ${label.charAt(0).toLowerCase()}${label.slice(1)} espero`,
  predictButton: "Esa es mi previsión",
  predicted: (text) => `Usted previó ${text}.`,

  formulas: "Fórmulas",
  working: "El desarrollo con sus números",
  plan: "El plan con sus números",
  workingElsewhere: "Las fórmulas no se pudieron cargar aquí. Están en",
  workingPage: "la página de esta calculadora",

  doneTitle: "Todo correcto",
  doneLead: "Entregue este código como lo pidió su instructor:",
  partTitle: "¿Sin terminar? Un código de lo que ya está bien",
  partLead: "Este código dice qué preguntas están bien y cuáles ha probado. Más tarde se puede entregar otro con más.",
  copyCode: "Copiar el código",
  scan: "Mostrarlo como código para escanear",
  scanLabel: "Su identificador y su código de resultado, para escanear con un teléfono",
  codeAbout:
    "El código lleva una marca de esta tarea, una marca de su identificador y qué preguntas están bien. No lleva sus respuestas ni el número de intentos.",

  keptTitle: "Guardado en este dispositivo",
  kept: "Lo que escribe queda en este navegador hasta que lo borre aquí. En un ordenador compartido, bórrelo cuando haya entregado su código.",
  keptOff: "Este navegador no guarda nada de esta página: entregue su código antes de dejarla.",
  ownTab: "Abrir la tarea en su propia pestaña, donde se puede guardar",
  keptNewer: "Lo que guarda este navegador viene de páginas más nuevas que estas. Se deja como está; vuelva a cargar la página.",
  keptUnreadable: "No se pudo leer lo que este navegador guardaba de esta página. Se apartó, no se borró.",
  forget: "Borrar aquí mis respuestas",
  forgetSure: "Su identificador y todo lo que escribió en esta tarea desaparecerán de este dispositivo. ¿Borrarlo?",
  forgetYes: "Sí, borrarlo",
  forgetNo: "No, guardarlo",

  caution:
    "Estos números son un ejercicio. En una máquina van primero su placa y su manual, las reglas del taller y su instructor.",
};
