import type { Caution } from "../lib/catalogue.ts";
import type { Language } from "./language.ts";

/** A standing caution in the language of a page. At build only: its Spanish is in `es/cautions.ts`. */
export function cautionIn(language: Language, caution: Caution): Caution {
  return { ...caution, title: language.say(caution.title), text: language.say(caution.text) };
}
