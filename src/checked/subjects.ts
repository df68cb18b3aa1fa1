import { worksheetById } from "../lib/registry.ts";
import { bending } from "./bending.ts";
import { calculator } from "./calculator.ts";
import { joiningSubjects } from "./joining.ts";
import { markingAndCutting } from "./marking-and-cutting.ts";
import { punchingAndRolling } from "./punching-and-rolling.ts";
import { stockAndStatistics } from "./stock-and-statistics.ts";
import type { Subject, Subjects } from "./subject.ts";

/** Library functions and tables by name. Calculators need no entry: their id is enough. */
const subjects: Subjects = {
  ...stockAndStatistics,
  ...markingAndCutting,
  ...bending,
  ...punchingAndRolling,
  ...joiningSubjects,
};

/** What a check checks. @throws Error for a name that is neither in the lists nor a calculator's id */
export function subjectOf(name: string): Subject {
  const sheet = worksheetById(name);
  const subject = sheet ? calculator(sheet) : subjects[name];
  if (!subject) throw new Error(`nothing to check is called “${name}”`);
  return subject;
}
