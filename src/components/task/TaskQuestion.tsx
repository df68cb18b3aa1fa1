import { useState } from "preact/hooks";
import { formQuery } from "../../lib/address.ts";
import { type AskedAnswer, type OwnQuestion, viewOf } from "../../lib/assign/own-question.ts";
import type { QuestionResult } from "../../lib/assign/result-code.ts";
import { taskText } from "../../lib/assign/task-text.ts";
import type { LengthView } from "../../lib/quantity/format.ts";
import { useTexts } from "../../texts/context.ts";
import { task as taskTexts } from "../../texts/en/task.ts";
import { AnswerField } from "./AnswerField.tsx";
import { answerKey, keptAnswer, verdictOn } from "./answers.ts";
import { planId, type Sheets } from "./load-sheets.ts";
import { QuietDrawing } from "./QuietDrawing.tsx";
import { TaskWorking } from "./TaskWorking.tsx";
import type { KeptAnswer, KeptTask } from "./task-shelf.ts";

/** Titles of the pages that explain, by path. */
export type Explained = Readonly<Record<string, string>>;

interface Props {
  readonly own: OwnQuestion;
  readonly result: QuestionResult;
  readonly sheets: Sheets;
  readonly task: KeptTask;
  readonly view: LengthView;
  /** Path the site is published under, without a slash at its end. */
  readonly root: string;
  readonly explained: Explained;
  change(answers: Readonly<Record<string, KeptAnswer>>): void;
}

/** One question: what is given, the answers, and the working once it is earned. */
export function TaskQuestion({ own, result, sheets, task, view, root, explained, change }: Props) {
  const words = useTexts(taskTexts);
  const [problems, setProblems] = useState<Readonly<Record<string, string>>>({});
  const [empty, setEmpty] = useState(false);
  const { number, question, sheet, given, asked, answer } = own;
  const shown = viewOf(question, view);
  const of = (each: AskedAnswer) => keptAnswer(task, own, each, view);
  const predicting = question.predictFirst === true && asked.some((each) => of(each).predicted === undefined);
  const explains = explained[sheet.page];
  /** The plan has no list of formulas: the finished plan itself is its working. */
  const isPlan = sheet.id === planId;

  /** Reads every field that holds something; what cannot be read is said and is no try. */
  const submit = () => {
    const unread: Record<string, string> = {};
    const changed: Record<string, KeptAnswer> = {};
    let entered = 0;
    for (const each of asked) {
      const key = answerKey(own, each);
      const kept = of(each);
      const { typed, checked, tries } = kept;
      const verdict = verdictOn(own, each, typed, sheets.catalogue);
      if (!verdict) continue;
      entered++;
      if (verdict.kind === "unreadable") unread[key] = verdict.problem.text(shown);
      else if (predicting) changed[key] = { typed: { text: "", view }, predicted: typed, tries: 0 };
      else if (checked?.text.trim() !== typed.text.trim() || checked.view !== typed.view)
        changed[key] = { ...kept, checked: typed, tries: tries + 1 };
    }
    setProblems(unread);
    setEmpty(predicting ? entered < asked.length : entered === 0);
    // Predictions count together, so that none is made after the formulas were seen.
    if (predicting && Object.keys(changed).length < asked.length) return;
    change(changed);
  };

  return (
    <section class="task-question calculator" data-settled="" aria-labelledby={`question-${number}-title`}>
      <header class="calculator-head">
        <h2 id={`question-${number}-title`}>{words.question(number, sheet.title)}</h2>
        <p class="written">{taskText(sheet, question)}</p>
      </header>
      <div class="task-given">
        <h3>{words.given}</h3>
        <dl>
          {given.map(({ path, label, text, own: isOwn }) => (
            <div key={path} class={isOwn ? "own" : undefined}>
              <dt>{label}</dt>
              <dd>
                {text}
                {isOwn && (
                  <>
                    {" "}
                    <span class="mine">{words.own}</span>
                  </>
                )}
              </dd>
            </div>
          ))}
        </dl>
      </div>
      <QuietDrawing own={own} sheets={sheets} view={shown} />
      <form
        class="fields"
        autocomplete="off"
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          submit();
        }}
      >
        <h3>{predicting ? words.predictTitle : words.asked}</h3>
        {predicting && <p>{words.predictHow}</p>}
        <div class="field-grid">
          {asked.map((each) => {
            const key = answerKey(own, each);
            const kept = of(each);
            const { typed, checked } = kept;
            const same = checked?.text === typed.text && checked.view === typed.view;
            return (
              <AnswerField
                key={key}
                own={own}
                asked={each}
                kept={kept}
                view={view}
                verdict={same ? verdictOn(own, each, checked, sheets.catalogue) : undefined}
                problem={problems[key]}
                predicting={predicting}
                onType={(next) => {
                  setEmpty(false);
                  setProblems(({ [key]: _, ...others }) => others);
                  change({ [key]: { ...kept, typed: next } });
                }}
              />
            );
          })}
        </div>
        {result !== "right" && (
          <div class="actions">
            <button type="submit" class="button first">
              {predicting ? words.predictButton : words.check}
            </button>
            <span class="message" role="status">
              {empty ? words.checkNothing : ""}
            </span>
          </div>
        )}
      </form>
      {!predicting && (
        <>
          {isPlan ? (
            result === "right" && (
              <p class="explained">
                <a href={`${root}${sheet.page}?${formQuery(planId, sheet.inputs, own.raw)}`} target="_blank" rel="noopener">
                  {words.plan}
                </a>
              </p>
            )
          ) : (
            <TaskWorking page={`${root}/embed/${sheet.id}/`} steps={answer.working} withNumbers={result === "right"} />
          )}
          {explains && (
            <p class="explained not-on-paper">
              <a href={`${root}${sheet.page}${isPlan ? "" : `#${sheet.id}`}`} target="_blank" rel="noopener">
                {words.explained(explains)}
              </a>
            </p>
          )}
        </>
      )}
    </section>
  );
}
