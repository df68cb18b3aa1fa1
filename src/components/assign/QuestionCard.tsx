import type { Question } from "../../lib/assign/definition.ts";
import { limits } from "../../lib/assign/definition.ts";
import { taskText } from "../../lib/assign/task-text.ts";
import { type LengthView, lengthViews } from "../../lib/quantity/format.ts";
import type { Worksheet } from "../../lib/worksheet.ts";
import { useTexts } from "../../texts/context.ts";
import { assign } from "../../texts/en/assign.ts";
import { type Form, fieldId, Messages } from "../calculator/Fields.tsx";
import { AskedFields } from "./AskedFields.tsx";
import { NumberFields } from "./NumberFields.tsx";
import { TakeOver } from "./TakeOver.tsx";

interface Props {
  readonly number: number;
  /** How many questions there are. */
  readonly count: number;
  readonly question: Question;
  /** Undefined while it is fetched, or where there is none. */
  readonly sheet: Worksheet | undefined;
  readonly form: Form | undefined;
  readonly instance: string;
  readonly waiting: boolean;
  change(next: (before: Question) => Question): void;
  moveUp(): void;
  moveDown(): void;
  copy(): void;
  remove(): void;
}

/** One question: what is asked, which numbers differ, and its place among the others. */
export function QuestionCard(props: Props) {
  const texts = useTexts(assign);
  const { number, count, question, sheet, form, instance, waiting, change } = props;
  const title = sheet?.title ?? (waiting ? texts.loading : texts.unknownCalculator(question.calculator));
  const intro = fieldId(instance, "intro");
  const units = fieldId(instance, "units");
  const button = (what: string, act: () => void) => (
    <button type="button" aria-label={texts.questionNamed(what, number)} onClick={act}>
      {what}
    </button>
  );
  return (
    <section class="question" aria-labelledby={`${instance}-head`} id={instance}>
      <h3 id={`${instance}-head`} tabIndex={-1}>
        {texts.questionHead(number, title)}
      </h3>
      <div class="assign-actions">
        {number > 1 && button(texts.up, props.moveUp)}
        {number < count && button(texts.down, props.moveDown)}
        {count < limits.questions && button(texts.copy, props.copy)}
        {button(texts.remove, props.remove)}
      </div>
      {sheet && form && (
        <>
          <div class="field">
            <label for={intro}>
              {texts.taskLabel} <span class="quiet">({texts.optional})</span>
            </label>
            <textarea
              id={intro}
              rows={2}
              value={question.intro ?? ""}
              aria-invalid={form.problems.has("intro") ? "true" : undefined}
              aria-describedby={`${intro}-help`}
              onInput={(event) => {
                const text = event.currentTarget.value;
                change(({ intro: _, ...before }) => (text === "" ? before : { ...before, intro: text }));
              }}
            />
            <Messages form={form} field="intro" id={intro} />
            <p class="help" id={`${intro}-help`}>
              {texts.taskHelp(taskText(sheet, { ...question, intro: "" }))}
            </p>
          </div>
          <AskedFields form={form} sheet={sheet} question={question} change={change} />
          <fieldset class="numbers">
            <legend>{texts.numbers}</legend>
            <p class="help">{texts.numbersHelp}</p>
            <TakeOver instance={instance} sheet={sheet} change={change} />
            <NumberFields form={form} sheet={sheet} question={question} change={change} />
          </fieldset>
          <div class="question-rest">
            <label class="tick-line">
              <input
                type="checkbox"
                checked={question.predictFirst === true}
                onChange={(event) => {
                  const { checked } = event.currentTarget;
                  change(({ predictFirst: _, ...before }) => (checked ? { ...before, predictFirst: true } : before));
                }}
              />
              <span>{texts.predict}</span>
            </label>
            <div class="field">
              <label for={units}>{texts.units}</label>
              <select
                id={units}
                autocomplete="off"
                value={question.units ?? "own"}
                onChange={(event) => {
                  const view = lengthViews.find((each) => each === event.currentTarget.value) as LengthView | undefined;
                  change(({ units: _, ...before }) => (view ? { ...before, units: view } : before));
                }}
              >
                {(["own", ...lengthViews] as const).map((each) => (
                  <option key={each} value={each}>
                    {texts.unitsChoices[each]}
                  </option>
                ))}
              </select>
            </div>
          </div>
        </>
      )}
    </section>
  );
}
