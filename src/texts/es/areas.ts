import { calculator as english } from "../en/calculator.ts";
import { drawings as englishDrawings } from "../en/drawings.ts";
import { given as englishGiven } from "../en/given.ts";
import { keepBend as englishKeep } from "../en/keep-bend.ts";
import { linkUnits as englishUnits } from "../en/link-units.ts";
import { links as englishLinks } from "../en/links.ts";
import { search as englishSearch } from "../en/search.ts";
import { type Area, area } from "../translation.ts";
import { calculator } from "./calculator.ts";
import { drawings } from "./drawings.ts";
import { given } from "./given.ts";
import { keepBend } from "./keep-bend.ts";
import { linkUnits } from "./link-units.ts";
import { links } from "./links.ts";
import { search } from "./search.ts";

/** Areas of the interface that are said in the browser too. */
export const inBrowser: readonly Area[] = [
  area(english, calculator),
  area(englishDrawings, drawings),
  area(englishKeep, keepBend),
  area(englishGiven, given),
  area(englishUnits, linkUnits),
  area(englishLinks, links),
  area(englishSearch, search),
];
