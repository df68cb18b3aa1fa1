import { jsonShape } from "../json-shape.ts";
import { type LengthView, lengthViews } from "../quantity/format.ts";
import { type AskedOutput, type Assignment, assignmentVersion, type Question, type Variation } from "./definition.ts";

/**
 * The assignment file: JSON that a person can write and read. Reading looks at its shape only;
 * whether the calculators can do what it asks for is told by `checkAssignment`.
 */

const { refuse, object, list, text } = jsonShape({ the: "The assignment file", one: "an assignment file", text: "a text" });

const optional = <T>(value: unknown, read: (value: unknown) => T): T | undefined =>
  value === undefined ? undefined : read(value);

function variation(value: unknown, field: string): Variation {
  if (typeof value === "object" && value !== null && Object.hasOwn(value, "choices")) {
    const { choices } = object(value, field, ["choices"]);
    return { choices: list(choices, `${field}.choices`).map((each, index) => text(each, `${field}.choices.${index}`)) };
  }
  const range = object(value, field, ["from", "to", "step"]);
  return {
    from: text(range.from, `${field}.from`),
    to: text(range.to, `${field}.to`),
    step: text(range.step, `${field}.step`),
  };
}

function asked(value: unknown, field: string): AskedOutput {
  const { output, tolerance } = object(value, field, ["output", "tolerance"]);
  return { output: text(output, `${field}.output`), tolerance: text(tolerance, `${field}.tolerance`) };
}

function entries<T>(value: unknown, field: string, read: (value: unknown, field: string) => T): Record<string, T> {
  if (value === undefined) return {};
  return Object.fromEntries(Object.entries(object(value, field)).map(([key, each]) => [key, read(each, `${field}.${key}`)]));
}

const questionKeys = ["calculator", "intro", "fixed", "varied", "asked", "predictFirst", "units"];

function question(value: unknown, field: string): Question {
  const read = object(value, field, questionKeys);
  const intro = optional(read.intro, (each) => text(each, `${field}.intro`));
  if (read.predictFirst !== undefined && typeof read.predictFirst !== "boolean")
    throw refuse(`${field}.predictFirst`, read.predictFirst, "true or false");
  if (read.units !== undefined && !(lengthViews as readonly unknown[]).includes(read.units))
    throw refuse(`${field}.units`, read.units, `one of ${lengthViews.join(", ")}`);
  return {
    calculator: text(read.calculator, `${field}.calculator`),
    ...(intro === undefined ? {} : { intro }),
    fixed: entries(read.fixed, `${field}.fixed`, text),
    varied: entries(read.varied, `${field}.varied`, variation),
    asked: list(read.asked, `${field}.asked`).map((each, index) => asked(each, `${field}.asked.${index}`)),
    ...(read.predictFirst ? { predictFirst: true } : {}),
    ...(read.units === undefined ? {} : { units: read.units as LengthView }),
  };
}

/**
 * Reads an assignment file.
 * @param value - JSON, parsed
 * @throws InputError naming the first field that has not the shape it must have, or a version that is not known yet
 */
export function readAssignment(value: unknown): Assignment {
  const read = object(value, "", ["version", "title", "course", "intro", "questions"]);
  if (read.version !== assignmentVersion)
    throw refuse(
      "version",
      read.version,
      `${assignmentVersion}, the only one this handbook knows (a newer handbook may know more)`,
    );
  const intro = optional(read.intro, (each) => text(each, "intro"));
  return {
    title: text(read.title, "title"),
    course: text(read.course, "course"),
    ...(intro === undefined ? {} : { intro }),
    questions: list(read.questions, "questions").map((each, index) => question(each, `questions.${index}`)),
  };
}

/** The assignment as the text of a file that `readAssignment` reads. */
export function assignmentFile(assignment: Assignment): string {
  return `${JSON.stringify({ version: assignmentVersion, ...assignment }, undefined, 2)}\n`;
}
