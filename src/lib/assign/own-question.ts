import type { Catalogue, MaterialId } from "../catalogue.ts";
import { InputError } from "../input-error.ts";
import type { Raw } from "../inputs.ts";
import type { LengthView } from "../quantity/format.ts";
import { ParseError, parseQuantity } from "../quantity/parse.ts";
import { say } from "../quantity/phrase.ts";
import { kindOf, type Quantity } from "../quantity/units.ts";
import { type Answer, type QuantityOutput, runWorksheet, type Worksheet } from "../worksheet.ts";
import type { Assignment, Question } from "./definition.ts";
import { type Owner, ownTexts, rawWith } from "./own-numbers.ts";
import { type Place, placesOf, textAt } from "./place.ts";
import { readTolerance, type Tolerance } from "./tolerance.ts";

/** Finds a calculator by its id. The registry does; a page may know only those it has loaded. */
export type WorksheetOf = (id: string) => Worksheet | undefined;

/** One line of what a question states. */
export interface Given {
  readonly path: string;
  readonly label: string;
  /** As it was written by the instructor, with its unit. */
  readonly text: string;
  /** Drawn for this student. */
  readonly own: boolean;
}

export interface AskedAnswer {
  readonly key: string;
  readonly output: QuantityOutput;
  readonly tolerance: Tolerance;
  /** The right answer, in the base unit. */
  readonly right: number;
}

/** A question with one student's numbers and their answers. */
export interface OwnQuestion {
  /** Counted from 1. */
  readonly number: number;
  readonly question: Question;
  readonly sheet: Worksheet;
  readonly raw: Raw;
  readonly given: readonly Given[];
  readonly answer: Answer;
  readonly asked: readonly AskedAnswer[];
}

/** `1.2mm` as one writes it: `1.2 mm`. */
export function spacedText(text: string, quantity: Quantity): string {
  try {
    const { digits, unit } = parseQuantity(text, quantity, { gauge: () => 1 });
    const printed = unit === "ga" ? "gauge" : (kindOf(quantity).units[unit]?.text ?? "");
    const shown = digits.replace(/^-/, "−");
    return printed === "" || printed === "°" ? shown + printed : `${shown} ${printed}`;
  } catch (error) {
    if (error instanceof ParseError) return text;
    throw error;
  }
}

function placeText({ input, row }: Place, text: string | undefined, catalogue: Catalogue): string | undefined {
  if (text === undefined) {
    if (input.kind === "material" || input.kind === "text") return undefined;
    // A cell left empty follows something the question states elsewhere.
    if (row !== undefined) return undefined;
    // What a calculator takes by itself is part of the question, but not that each property is the material's own.
    return input.kind === "quantity" && input.override ? undefined : input.whenEmpty;
  }
  if (input.kind === "quantity") return spacedText(text, input.quantity);
  if (input.kind === "choice") return input.choices[text] ?? text;
  if (input.kind === "material") return catalogue.materials[text as MaterialId]?.name ?? text;
  return text;
}

/** Everything the calculator works with, as the question has to state it. */
function givenLines(sheet: Worksheet, raw: Raw, own: ReadonlySet<string>, catalogue: Catalogue): Given[] {
  return placesOf(sheet.inputs, raw).flatMap((place) => {
    if (sheet.shownWhen?.[place.key]?.(raw) === false) return [];
    const text = placeText(place, textAt(sheet.inputs, raw, place), catalogue);
    return text === undefined || text === "" ? [] : [{ path: place.path, label: place.label, text, own: own.has(place.path) }];
  });
}

/** So many outputs are named where one is asked for that is not there; a plan has hundreds. */
const listedOutputs = 24;

/** The output asked for, with its tolerance read. @throws InputError naming `fields.output` or `fields.tolerance` */
export function askedOutput(
  sheet: Worksheet,
  asked: { readonly output: string; readonly tolerance: string },
  field: string,
): { readonly output: QuantityOutput; readonly tolerance: Tolerance } {
  const output = Object.hasOwn(sheet.outputs, asked.output) ? sheet.outputs[asked.output] : undefined;
  const numeric = Object.keys(sheet.outputs).filter((key) => sheet.outputs[key]?.kind === "quantity");
  const more = numeric.length > listedOutputs ? `, … (${numeric.length} in all)` : "";
  const choice = numeric.length > 0 ? ` It has ${numeric.slice(0, listedOutputs).join(", ")}${more}.` : " It has none.";
  if (!output)
    throw new InputError(
      `${field}.output`,
      asked.output,
      say`${sheet.title} has no output “${asked.output.slice(0, 40)}”. Asked can be a numeric output.${choice}`,
    );
  if (output.kind !== "quantity")
    throw new InputError(
      `${field}.output`,
      asked.output,
      say`${output.label} is not one number, so it cannot be checked. Asked can be a numeric output of ${sheet.title}.${choice}`,
    );
  return { output, tolerance: readTolerance(`${field}.tolerance`, asked.tolerance, output) };
}

/**
 * A question with given texts at its varied places.
 *
 * @param index - of the question, from 0
 * @param texts - by path
 * @throws InputError when the calculator refuses these numbers or does not know an answer for them
 */
export function questionWith(
  question: Question,
  index: number,
  texts: Readonly<Record<string, string>>,
  worksheetOf: WorksheetOf,
  catalogue: Catalogue,
): OwnQuestion {
  const field = `questions.${index}`;
  const sheet = worksheetOf(question.calculator);
  if (!sheet)
    throw new InputError(
      `${field}.calculator`,
      question.calculator,
      say`Question ${index + 1}: there is no calculator “${question.calculator.slice(0, 40)}”.`,
    );
  const raw = rawWith(sheet.inputs, question, texts);
  const { answer, problems } = runWorksheet(sheet, raw, catalogue);
  const [problem] = problems;
  if (!answer)
    throw new InputError(
      `${field}.varied`,
      problem?.value,
      problem?.phrase ?? say`${sheet.title} gives no answer.`,
      problem?.instead,
    );
  const asked = question.asked.map((each, place): AskedAnswer => {
    const at = `${field}.asked.${place}`;
    const { output, tolerance } = askedOutput(sheet, each, at);
    const right = answer.outputs[each.output];
    if (typeof right !== "number")
      throw new InputError(`${at}.output`, each.output, say`${output.label} is not known from these numbers.`);
    return { key: each.output, output, tolerance, right };
  });
  const given = givenLines(sheet, raw, new Set(Object.keys(texts)), catalogue);
  return { number: index + 1, question, sheet, raw, given, answer, asked };
}

/**
 * One student's question.
 * @throws InputError as `questionWith`; `checkAssignment` finds out beforehand whether that can happen
 */
export function ownQuestion(
  assignment: Assignment,
  index: number,
  student: string,
  worksheetOf: WorksheetOf,
  catalogue: Catalogue,
): OwnQuestion {
  const question = assignment.questions[index];
  if (!question) throw new Error(`The assignment has no question ${index + 1}`);
  const sheet = worksheetOf(question.calculator);
  const texts = sheet ? ownTexts(sheet.inputs, question, index, { course: assignment.course, student } satisfies Owner) : {};
  return questionWith(question, index, texts, worksheetOf, catalogue);
}

/** All questions of one student. @throws InputError as `questionWith` */
export function ownQuestions(
  assignment: Assignment,
  student: string,
  worksheetOf: WorksheetOf,
  catalogue: Catalogue,
): readonly OwnQuestion[] {
  return assignment.questions.map((_, index) => ownQuestion(assignment, index, student, worksheetOf, catalogue));
}

/** The units lengths of a question are shown and read in: the instructor's, or else the reader's own. */
export const viewOf = (question: Question, own: LengthView = "mm"): LengthView => question.units ?? own;
