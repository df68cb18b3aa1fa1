/** The first page in Spanish, which is shorter than the English one. */
export const home = {
  description:
    "Manual de un taller de enseñanza de chapa cuyas explicaciones calculan: desarrollos, líneas de trazado y ajustes con sus propios números.",
  title: "De la chapa plana a la pieza formada",
  lead: "Manual de un taller de enseñanza de chapa. Explica cómo se hace el trabajo, y sus explicaciones calculan: escriba sus propios números y lea el desarrollo, las líneas que hay que trazar y los ajustes, cada uno con su ± y su procedencia.",
  opening: "Una chapa plana cuyos dos lados suben paso a paso hasta formar un perfil en U",
  bending: "Plegado",
  safety: "Seguridad",
  calculators: "Un número, rápido",
  rest: "Todas las páginas",
  restText:
    "En español están el plegado, las precauciones y las calculadoras de plegado. Las páginas marcadas con «(en inglés)» todavía no están traducidas.",
};
