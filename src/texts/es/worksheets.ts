/** Calculators whose every text has its Spanish, which a test sees to; each has a page of its own below `/es/embed/`. */
export const worksheetsInSpanish: readonly string[] = [
  "bend-length",
  "practice-pieces",
  "smallest-radius",
  "springback",
  "brake-load",
  "folded-edge",
  "finger-set",
];
