import { calculator as english } from "../en/calculator.ts";
import { calculator } from "./calculator.ts";
import { type Area, area } from "./spanish.ts";

/** Areas of the interface that are said in the browser too. */
export const inBrowser: readonly Area[] = [area(english, calculator)];
