import { calculator as english } from "../en/calculator.ts";
import { drawings as englishDrawings } from "../en/drawings.ts";
import { keepBend as englishKeep } from "../en/keep-bend.ts";
import { search as englishSearch } from "../en/search.ts";
import { type Area, area } from "../translation.ts";
import { calculator } from "./calculator.ts";
import { drawings } from "./drawings.ts";
import { keepBend } from "./keep-bend.ts";
import { search } from "./search.ts";

/** Areas of the interface that are said in the browser too. */
export const inBrowser: readonly Area[] = [
  area(english, calculator),
  area(englishDrawings, drawings),
  area(englishKeep, keepBend),
  area(englishSearch, search),
];
