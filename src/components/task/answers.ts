import { answerUnit } from "../../lib/assign/answer-key.ts";
import { checkAnswer, type Verdict } from "../../lib/assign/check-answer.ts";
import { type AskedAnswer, type OwnQuestion, viewOf } from "../../lib/assign/own-question.ts";
import type { QuestionResult } from "../../lib/assign/result-code.ts";
import type { Catalogue } from "../../lib/catalogue.ts";
import type { LengthView } from "../../lib/quantity/format.ts";
import type { KeptAnswer, KeptTask, TypedText } from "./task-shelf.ts";

/** What a student's entries are worth. */

export const answerKey = (own: OwnQuestion, asked: AskedAnswer): string => `${own.number}.${asked.key}`;

export function keptAnswer(task: KeptTask, own: OwnQuestion, asked: AskedAnswer, view: LengthView): KeptAnswer {
  const key = answerKey(own, asked);
  const kept = Object.hasOwn(task.answers, key) ? task.answers[key] : undefined;
  return kept ?? { typed: { text: "", view }, tries: 0 };
}

/** What is said about a text; nothing about an empty one. */
export function verdictOn(
  own: OwnQuestion,
  asked: AskedAnswer,
  typed: TypedText | undefined,
  catalogue: Catalogue,
): Verdict | undefined {
  if (!typed || typed.text.trim() === "") return undefined;
  return checkAnswer(own, own.asked.indexOf(asked), typed.text, catalogue, typed.view);
}

/** An entry as one writes it, with the unit it was meant in: `82.8 mm`. */
export function entryText({ text, view }: TypedText, own: OwnQuestion, { output }: AskedAnswer): string {
  const written = text.trim();
  if (/[a-z°%"'′″”#]/i.test(written)) return written;
  const unit = answerUnit(output, viewOf(own.question, view));
  return unit === "" || unit === "°" ? written + unit : `${written} ${unit}`;
}

export interface Standing {
  /** One for each question, as a result code holds them. */
  readonly results: readonly QuestionResult[];
  readonly right: number;
  readonly asked: number;
}

/** How far a student is. */
export function standing(task: KeptTask, questions: readonly OwnQuestion[], catalogue: Catalogue): Standing {
  let right = 0;
  let asked = 0;
  const results = questions.map((own): QuestionResult => {
    const answers = own.asked.map((each) => keptAnswer(task, own, each, "mm"));
    const good = answers.filter(({ checked }, place) => {
      const each = own.asked[place];
      return each !== undefined && verdictOn(own, each, checked, catalogue)?.kind === "right";
    }).length;
    right += good;
    asked += answers.length;
    if (good === answers.length) return "right";
    return answers.some(({ tries }) => tries > 0) ? "tried" : "untried";
  });
  return { results, right, asked };
}
