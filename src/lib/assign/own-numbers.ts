import { InputError } from "../input-error.ts";
import type { Inputs, Raw } from "../inputs.ts";
import { say } from "../quantity/phrase.ts";
import { isRange, limits, type Question, type Variation } from "./definition.ts";
import { placeAt, rawOfFixed, withTexts } from "./place.ts";
import { drawBelow, fnv1a64, splitMix64 } from "./random.ts";
import { rangeSteps, type Steps } from "./variation.ts";

/** A course name or student id as it is hashed: case, and spaces at its ends or doubled, make no other student. */
export function plainId(typed: string): string {
  return typed.normalize("NFC").trim().replace(/\s+/g, " ").toLowerCase();
}

/** Refuses an id that is empty or too long. @throws InputError */
export function checkId(field: "course" | "student", typed: string): void {
  const label = field === "course" ? "Course" : "Student id";
  const length = plainId(typed).length;
  if (length === 0 || length > limits[field])
    throw new InputError(
      field,
      typed,
      say`${label} must have 1 to ${limits[field]} characters; it ${length === 0 ? "is empty" : `has ${length}`}.`,
    );
}

/** Whose numbers. */
export interface Owner {
  readonly course: string;
  readonly student: string;
}

/** The values that a variation offers. @throws InputError for one that offers none, such as a range that cannot be stepped through */
export function variationSteps(inputs: Inputs, path: string, variation: Variation, field = `varied.${path}`): Steps {
  if (!isRange(variation)) {
    const { choices } = variation;
    if (choices.length === 0) throw new InputError(field, path, say`${path} has no choices to draw from.`);
    return { count: choices.length, text: (index) => choices[index] ?? "" };
  }
  const place = placeAt(inputs, path);
  if (place?.input.kind !== "quantity")
    throw new InputError(field, path, say`${place?.label ?? path} is not a number, so it cannot vary in a range; name choices.`);
  return rangeSteps(field, place.label, variation, place.input.quantity);
}

/**
 * The values that one student gets at the varied places of a question, each as likely as the other.
 *
 * Every value has a seed of its own, the FNV-1a hash of course, student, number of the question and path, divided by
 * zero characters. So a further varied input, or a later question, changes no other number; a change to a range, to the
 * order of its choices or to the order of the questions does.
 *
 * @param index - of the question, from 0
 * @remarks The numbers differ from student to student so that results cannot be copied unread. They are no secret: with
 * the assignment at hand anyone can compute anyone's numbers and answers.
 */
export function ownTexts(inputs: Inputs, question: Question, index: number, { course, student }: Owner): Record<string, string> {
  return Object.fromEntries(
    Object.entries(question.varied).map(([path, variation]) => {
      const steps = variationSteps(inputs, path, variation);
      const seed = fnv1a64([plainId(course), plainId(student), String(index + 1), path].join("\0"));
      return [path, steps.text(drawBelow(splitMix64(seed), steps.count))];
    }),
  );
}

/** The form of a question with some texts at its varied places. */
export function rawWith(inputs: Inputs, question: Question, texts: Readonly<Record<string, string>>): Raw {
  return withTexts(inputs, rawOfFixed(inputs, question.fixed), texts);
}
