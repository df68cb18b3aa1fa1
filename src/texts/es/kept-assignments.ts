import type { keptAssignments as english } from "../en/kept-assignments.ts";

export const keptAssignments: typeof english = {
  name: "Tareas en este dispositivo",
  keep: "Guardar esta tarea en el dispositivo",
  kept: (name) => `«${name}» está guardada en este dispositivo.`,
  removed: (name) => `«${name}» se ha quitado.`,
  undo: (name) => `Deshacer: recuperar «${name}»`,
  back: (name) => `«${name}» está de vuelta.`,
  remove: (name) => `Quitar «${name}» de este dispositivo`,
  troubles: {
    off: "Este navegador no guarda nada de este sitio: guarde el archivo de la tarea o el enlace.",
    newer: "Las tareas de este dispositivo las guardó un manual más nuevo. Vuelva a cargar esta página.",
    unreadable: "No se pudo leer la lista de tareas de este dispositivo. Se apartó, no se borró.",
  },
  full: "No hay sitio en este dispositivo, o el almacenamiento está apagado: guarde el archivo de la tarea.",
  unnamed: "Tarea sin título",
};
