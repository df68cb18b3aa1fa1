import type { embed as english } from "../en/embed.ts";

export const embed: typeof english = {
  title: "Planear una pieza, solo",
  plan: "Planear una pieza",
  planAbout: "Solo el plan de una pieza: su formulario y su hoja.",
  wholePlan: "Planear una pieza en Flat to Formed",
};
