import type { lengths as english } from "../en/lengths.ts";

export const lengths: typeof english = {
  showIn: "Mostrar las longitudes en",
  views: {
    mm: { short: "mm", long: "milímetros" },
    inch: { short: "0,001 in", long: "pulgadas decimales" },
    fraction: { short: "1/64 in", long: "pulgadas y sesentaicuatroavos" },
  },
};
