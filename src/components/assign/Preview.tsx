import { answerKey } from "../../lib/assign/answer-key.ts";
import type { Assignment } from "../../lib/assign/definition.ts";
import { viewOf, type WorksheetOf } from "../../lib/assign/own-question.ts";
import { type PrintedSheet, printedSheets } from "../../lib/assign/printed-sheet.ts";
import { answerText } from "../../lib/assign/tolerance.ts";
import type { Catalogue } from "../../lib/catalogue.ts";
import type { LengthView } from "../../lib/quantity/format.ts";
import { useTexts } from "../../texts/context.ts";
import { assign } from "../../texts/en/assign.ts";

interface Props {
  readonly assignment: Assignment;
  readonly student: string;
  readonly worksheetOf: WorksheetOf;
  readonly catalogue: Catalogue;
  readonly view: LengthView;
}

/** The questions of one student as they are asked: what is given, what to find. */
export function StudentSheet({ sheet, assignment }: { readonly sheet: PrintedSheet; readonly assignment: Assignment }) {
  const texts = useTexts(assign);
  return (
    <div class="student-sheet">
      {sheet.intro && <p class="task-intro">{sheet.intro}</p>}
      {sheet.questions.map(({ number, title, intro, given, asked }, index) => (
        <section key={number} class="task">
          <h4>{texts.questionHead(number, title)}</h4>
          <p class="task-intro">{intro}</p>
          <dl class="given">
            <dt>{texts.given}</dt>
            {given.map(({ path, label, text, own }) => (
              <dd key={path} class={own ? "own" : undefined}>
                {label}: <b>{text}</b>
                {own && <small> {texts.yours}</small>}
              </dd>
            ))}
            <dt>{texts.find}</dt>
            {asked.map(({ label, symbol, tolerance }) => (
              <dd key={label} class="ask">
                <span>
                  {label}
                  {symbol && (
                    <>
                      {" "}
                      <i class="symbol">{symbol}</i>
                    </>
                  )}
                  <small> {tolerance.startsWith("to ") ? tolerance : texts.within(tolerance)}</small>
                </span>
                <span class="write-here" aria-hidden="true" />
              </dd>
            ))}
          </dl>
          {assignment.questions[index]?.predictFirst && <p class="quiet small not-on-paper">{texts.hidden}</p>}
        </section>
      ))}
    </div>
  );
}

/** What one student sees, and the numbers and answers of some others. */
export function Preview({ assignment, student, worksheetOf, catalogue, view }: Props) {
  const texts = useTexts(assign);
  const ids = [student, ...texts.otherIds];
  const rows = answerKey(
    assignment,
    ids.map((id) => ({ id, note: "" })),
    worksheetOf,
    catalogue,
  );
  const { sheets } = printedSheets(assignment, rows, view);
  const [own] = sheets;
  if (!own || own.student !== student) return <p>{texts.cannotShow}</p>;
  return (
    <>
      <div class="as-student">
        <p class="as-course quiet">{assignment.course}</p>
        <h3>{assignment.title}</h3>
        <StudentSheet sheet={own} assignment={assignment} />
      </div>
      <h3>{texts.others}</h3>
      {assignment.questions.map((question, index) => {
        const first = rows.find(({ problem }) => !problem)?.questions[index];
        if (!first) return null;
        const shown = viewOf(question, view);
        return (
          <section
            key={index}
            class="table-frame"
            // biome-ignore lint/a11y/noNoninteractiveTabindex: a frame that scrolls must be reached by keyboard
            tabIndex={0}
            aria-label={`${texts.othersOf(index + 1)}: ${first.sheet.title}`}
          >
            <table>
              <caption>{texts.questionHead(index + 1, first.sheet.title)}</caption>
              <thead>
                <tr>
                  <th scope="col">{texts.student}</th>
                  {first.given
                    .filter(({ own: isOwn }) => isOwn)
                    .map(({ path, label }) => (
                      <th key={path} scope="col">
                        {label}
                      </th>
                    ))}
                  {first.asked.map(({ key, output }) => (
                    <th key={key} scope="col" class="answer-column">
                      {output.label}
                    </th>
                  ))}
                </tr>
              </thead>
              <tbody>
                {rows.map(({ student: { id }, questions, problem }) => (
                  <tr key={id}>
                    <th scope="row">{id}</th>
                    {problem && <td colSpan={first.asked.length + 1}>{problem.text(view)}</td>}
                    {questions[index]?.given
                      .filter(({ own: isOwn }) => isOwn)
                      .map(({ path, text }) => (
                        <td key={path}>{text}</td>
                      ))}
                    {questions[index]?.asked.map(({ key, output, right }) => (
                      <td key={key} class="answer-column">
                        {answerText(output, right, shown)}
                      </td>
                    ))}
                  </tr>
                ))}
              </tbody>
            </table>
          </section>
        );
      })}
    </>
  );
}
