import { InputError } from "../input-error.ts";
import { type LengthView, lengthViews } from "../quantity/format.ts";
import { say } from "../quantity/phrase.ts";
import { type AskedOutput, type Assignment, assignmentVersion, type Question, type Variation } from "./definition.ts";

/**
 * The assignment file: JSON that a person can write and read. Reading looks at its shape only;
 * whether the calculators can do what it asks for is told by `checkAssignment`.
 */

type Json = Readonly<Record<string, unknown>>;

function refuse(field: string, value: unknown, expected: string): InputError {
  const shown = value === undefined ? "missing" : String(JSON.stringify(value) ?? value).slice(0, 60);
  return new InputError(field, value, say`${field === "" ? "The assignment file" : field} must be ${expected}; it is ${shown}.`);
}

function object(value: unknown, field: string, keys?: readonly string[]): Json {
  if (typeof value !== "object" || value === null || Array.isArray(value))
    throw refuse(field, value, keys ? `an object with ${keys.join(", ")}` : "an object");
  for (const key of Object.keys(value))
    if (keys && !keys.includes(key))
      throw new InputError(
        field === "" ? key : `${field}.${key}`,
        (value as Json)[key],
        say`There is no “${key.slice(0, 40)}” in ${field === "" ? "an assignment file" : field}. The keys are ${keys.join(", ")}.`,
      );
  return value as Json;
}

function list(value: unknown, field: string): readonly unknown[] {
  if (!Array.isArray(value)) throw refuse(field, value, "a list");
  return value;
}

/** A text; a bare number is a value in its base unit. */
function text(value: unknown, field: string): string {
  if (typeof value === "string") return value;
  if (typeof value === "number" && Number.isFinite(value)) return String(value);
  throw refuse(field, value, "a text");
}

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
