import type { Raw } from "../../lib/inputs.ts";

/** What the page opens with when its address holds no job: the blanks of one class. */
export const example: Raw = { thickness: "1mm" };
