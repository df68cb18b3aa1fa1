import type { Language } from "../language.ts";
import { type Translation, translation } from "../translation.ts";
import { spellings } from "./spellings.ts";

export function spanish(
  areas: Translation["areas"],
  library: Translation["library"],
  missing?: Translation["missing"],
): Language {
  return translation({ code: "es", decimal: ",", spellings, areas, library, ...(missing ? { missing } : {}) });
}
