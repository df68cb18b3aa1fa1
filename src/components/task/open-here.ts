import { frameProblems } from "../../lib/assign/check-assignment.ts";
import type { Assignment } from "../../lib/assign/definition.ts";
import { ownQuestions } from "../../lib/assign/own-question.ts";
import { InputError } from "../../lib/input-error.ts";
import { heldAssignment } from "../assign/held-assignment.ts";
import { loadSheets, type Sheets } from "./load-sheets.ts";

/** An assignment that can be worked with. */
export interface Usable {
  readonly assignment: Assignment;
  readonly sheets: Sheets;
}

/** Somebody to try an assignment with before an id is known. */
const anybody = "anybody";

/** What the calculators cannot work with in it, whoever works on it. */
function damageOf(assignment: Assignment, { worksheetOf, catalogue }: Sheets): string | undefined {
  const [problem] = frameProblems(assignment);
  if (problem) return problem.message;
  try {
    ownQuestions(assignment, anybody, worksheetOf, catalogue);
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    // The numbers of one student may be refused where those of others are not.
    const [, number] = /^questions\.(\d+)\.varied$/.exec(error.field) ?? [];
    const varied = number === undefined ? undefined : assignment.questions[Number(number)]?.varied;
    if (!varied || Object.keys(varied).length === 0) return error.message;
  }
  return undefined;
}

/** The assignment in the address of the page, with its calculators; neither where the address holds none. */
export async function openHere(): Promise<{ readonly usable?: Usable; readonly damage?: string }> {
  const { assignment, damage } = await heldAssignment(location.search);
  if (!assignment) return damage === undefined ? {} : { damage };
  const sheets = await loadSheets(assignment);
  const found = damageOf(assignment, sheets);
  return found === undefined ? { usable: { assignment, sheets } } : { damage: found };
}
