import type { missingPage as english } from "../en/missing-page.ts";

export const missingPage: typeof english = {
  title: "No existe la página",
  description: "Esta dirección no lleva a ninguna parte del manual.",
  heading: "No hay ninguna página en esta dirección",
  text: "Puede estar mal escrita, o la página ha cambiado de sitio. Todas las páginas están en la lista del pie, y la búsqueda las encuentra por sus palabras.",
  first: "A la primera página",
};
