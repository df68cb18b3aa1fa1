import type { LengthView } from "../quantity/format.ts";

/** Values from `from` in steps up to `to`, all three as a person types them, in one unit. */
export interface RangeVariation {
  readonly from: string;
  readonly to: string;
  readonly step: string;
}

export interface ChoiceVariation {
  readonly choices: readonly string[];
}

/** How the value of an input differs from student to student. */
export type Variation = RangeVariation | ChoiceVariation;

export interface AskedOutput {
  /** Key of a numeric output. */
  readonly output: string;
  /** `0.5mm` either way, `2%` of the right answer, or `rounding`: the last figure that the handbook shows. */
  readonly tolerance: string;
}

/**
 * One question on a calculator. Inputs that are neither fixed nor varied keep the calculator's own start value.
 * `path` below is the key of an input, or `legs.0.leg` for a cell of a list, rows counted from 0.
 */
export interface Question {
  readonly calculator: string;
  readonly intro?: string;
  /** Text by key of the input; a list in the form it has in an address: `60mm;25mm`. */
  readonly fixed: Readonly<Record<string, string>>;
  /** By path. */
  readonly varied: Readonly<Record<string, Variation>>;
  readonly asked: readonly AskedOutput[];
  /** The working stays hidden until the student has given a first answer. */
  readonly predictFirst?: boolean;
  /** Lengths are asked for in these units whatever the student has chosen. */
  readonly units?: LengthView;
}

/** What an instructor hands out. It holds no names and no answers: both come out of the calculators on each device. */
export interface Assignment {
  readonly title: string;
  /** With the student's id it decides the student's numbers. */
  readonly course: string;
  readonly intro?: string;
  readonly questions: readonly Question[];
}

/** Counts up when an assignment is written in another way; every earlier way stays readable. */
export const assignmentVersion = 1;

/** How much an assignment may hold. A result code has room for `questions` of them. */
export const limits = {
  title: 120,
  course: 60,
  student: 60,
  intro: 2000,
  /** Of a fixed value. */
  text: 2000,
  /** Of one end or choice of a variation, or of a tolerance. */
  value: 60,
  questions: 20,
  varied: 12,
  asked: 8,
  choices: 60,
  /** Values in one range. */
  steps: 10_000,
  students: 1000,
} as const;

export const isRange = (variation: Variation): variation is RangeVariation => "from" in variation;
