import { display as englishDisplay } from "../en/display.ts";
import { lengths as englishLengths } from "../en/lengths.ts";
import { area } from "../translation.ts";
import { display } from "./display.ts";
import { lengths } from "./lengths.ts";
import { metals } from "./library/metals.ts";
import { shopNames } from "./library/shop.ts";
import { spanish } from "./spanish.ts";

/** Spanish as the shop's screen fetches it at once: without its calculators. Its cautions come in the page itself. */
export default spanish(
  [area(englishDisplay, display), area(englishLengths, lengths)],
  new Map([...Object.entries(metals), ...Object.entries(shopNames)]),
);
