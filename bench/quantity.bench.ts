import { formatQuantity } from "../src/lib/quantity/format.ts";
import { parseQuantity } from "../src/lib/quantity/parse.ts";

export const plainNumber = () => parseQuantity("1.2", "length");
export const mixedFraction = () => parseQuantity("2 1/16 in", "length");
export const decimalComma = () => parseQuantity("3,25 mm", "length");
export const force = () => parseQuantity("12 kN", "force");
export const asFraction = () => formatQuantity(52.39, "length", "fraction");
