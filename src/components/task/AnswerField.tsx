import { answerUnit } from "../../lib/assign/answer-key.ts";
import type { Verdict } from "../../lib/assign/check-answer.ts";
import { type AskedAnswer, type OwnQuestion, viewOf } from "../../lib/assign/own-question.ts";
import { toleranceText } from "../../lib/assign/tolerance.ts";
import type { LengthView } from "../../lib/quantity/format.ts";
import { phraseText } from "../../lib/quantity/phrase.ts";
import { useTexts } from "../../texts/context.ts";
import { task } from "../../texts/en/task.ts";
import { entryText } from "./answers.ts";
import type { KeptAnswer, TypedText } from "./task-shelf.ts";

interface Props {
  readonly own: OwnQuestion;
  readonly asked: AskedAnswer;
  readonly kept: KeptAnswer;
  readonly view: LengthView;
  /** About what was checked last; none while the field holds something else. */
  readonly verdict: Verdict | undefined;
  /** Why what stands there cannot be read. */
  readonly problem: string | undefined;
  readonly predicting: boolean;
  onType(typed: TypedText): void;
}

function wrongWords(tries: number, texts: typeof task): string {
  if (tries < 2) return texts.wrong;
  return tries === 2 ? texts.wrongAgain : texts.wrongStuck;
}

/** One answer: a field, what was said about it, and how often it was tried. */
export function AnswerField({ own, asked, kept, view, verdict, problem, predicting, onType }: Props) {
  const texts = useTexts(task);
  const { typed, predicted, tries } = kept;
  const { output, right, tolerance } = asked;
  const id = `answer-${own.number}-${asked.key}`;
  /** Bare numbers keep the unit they were begun in. */
  const meant = typed.text.trim() === "" ? view : typed.view;
  const shown = viewOf(own.question, meant);
  const unit = answerUnit(output, shown);
  const within = toleranceText(tolerance, right, output, shown);
  const isRight = !predicting && verdict?.kind === "right";
  const name =
    output.symbol && !predicting ? (
      <>
        {" "}
        <i class="symbol">{output.symbol}</i>
      </>
    ) : null;
  return (
    <div class={`field task-answer${isRight ? " is-right" : ""}`}>
      <label for={id}>
        {predicting ? texts.predictLabel(output.label) : output.label}
        {name}
      </label>
      <div class="entry">
        <input
          id={id}
          type="text"
          inputMode={output.quantity === "length" && shown === "fraction" ? "text" : "decimal"}
          autocomplete="off"
          spellcheck={false}
          value={typed.text}
          readOnly={isRight}
          aria-invalid={problem || (verdict && !isRight) ? "true" : undefined}
          aria-describedby={`${id}-unit ${id}-said ${id}-help`}
          onInput={(event) => onType({ text: event.currentTarget.value, view: meant })}
        />
        <span class="unit" id={`${id}-unit`}>
          {unit}
        </span>
      </div>
      <p class={isRight ? "verdict good" : "verdict"} id={`${id}-said`} role="status">
        {problem}
        {!problem && verdict?.kind === "right" && <strong>{verdict.within ? texts.rightWithin(within) : texts.right}</strong>}
        {!problem && verdict?.kind === "slip" && (
          <>
            <strong>{texts.slip}</strong> {phraseText(verdict.phrase, shown)}
          </>
        )}
        {!problem && verdict?.kind === "wrong" && wrongWords(tries, texts)}
      </p>
      <p class="help" id={`${id}-help`}>
        {!predicting && (predicted ? `${texts.predicted(entryText(predicted, own, asked))} ` : "")}
        {!predicting && tries > 0 && `${texts.tries(tries)}. `}
        {!isRight && (unit === "" ? texts.answerPlain : texts.answerUnit(unit))}{" "}
        {!isRight && !predicting && texts.tolerance(within)}
      </p>
    </div>
  );
}
