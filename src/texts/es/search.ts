import type { search as english } from "../en/search.ts";

export const search: typeof english = {
  searching: "Buscando",
  found: (count, shown) => {
    if (count === 0) return "No se encontró nada";
    const pages = count === 1 ? "1 página encontrada" : `${count} páginas encontradas`;
    return count > shown ? `${pages}; se muestran las ${shown} mejores` : pages;
  },
  failed: "No se pudo cargar la búsqueda. Conéctese a la red y escriba otra vez.",
};
