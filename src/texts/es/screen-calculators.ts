import { calculator as englishCalculator } from "../en/calculator.ts";
import { display as englishDisplay } from "../en/display.ts";
import { lengths as englishLengths } from "../en/lengths.ts";
import { area } from "../translation.ts";
import { calculator } from "./calculator.ts";
import { display } from "./display.ts";
import { lengths } from "./lengths.ts";
import { shopNames } from "./library/shop.ts";
import { library } from "./library.ts";
import { spanish } from "./spanish.ts";

/** Spanish as the shop's screen fetches it with the first calculator. */
export default spanish(
  [area(englishCalculator, calculator), area(englishDisplay, display), area(englishLengths, lengths)],
  new Map([...library, ...Object.entries(shopNames)]),
);
