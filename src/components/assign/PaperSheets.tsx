import { answerKey } from "../../lib/assign/answer-key.ts";
import { bankStudent } from "../../lib/assign/bank.ts";
import type { Assignment } from "../../lib/assign/definition.ts";
import type { WorksheetOf } from "../../lib/assign/own-question.ts";
import { printedSheets } from "../../lib/assign/printed-sheet.ts";
import type { Catalogue } from "../../lib/catalogue.ts";
import type { LengthView } from "../../lib/quantity/format.ts";
import { useTexts } from "../../texts/context.ts";
import { assign } from "../../texts/en/assign.ts";
import { StudentSheet } from "./Preview.tsx";

interface Props {
  readonly assignment: Assignment;
  readonly sets: number;
  readonly worksheetOf: WorksheetOf;
  readonly catalogue: Catalogue;
  readonly view: LengthView;
}

/** The sheets to work on, each with a set of numbers of its own, and the key on a page by itself. For paper only. */
export function PaperSheets({ assignment, sets, worksheetOf, catalogue, view }: Props) {
  const texts = useTexts(assign);
  const students = Array.from({ length: sets }, (_, index) => ({ id: bankStudent(index + 1), note: "" }));
  const { sheets, key } = printedSheets(assignment, answerKey(assignment, students, worksheetOf, catalogue), view);
  return (
    <div class="paper-sheets only-on-paper">
      {sheets.map((sheet, index) => (
        <section key={sheet.student} class="paper-sheet">
          <header>
            <p class="paper-course">
              {sheet.course} · {texts.printSet(index + 1)}
            </p>
            <h2>{sheet.title}</h2>
            <p class="paper-name">
              <span>{texts.printName}</span>
              <span>{texts.printDate}</span>
            </p>
          </header>
          <StudentSheet sheet={sheet} assignment={assignment} />
          <p class="small">{texts.printCheck(sheet.student)}</p>
        </section>
      ))}
      <section class="paper-key">
        <p class="paper-course">
          {key.course} · {texts.printKeyOnly}
        </p>
        <h2>
          {texts.printKey}: {key.title}
        </h2>
        <table>
          <thead>
            <tr>
              <th scope="col">{texts.printSetHead}</th>
              <th scope="col">{texts.printQuestion}</th>
              <th scope="col">{texts.printOwn}</th>
              <th scope="col">{texts.printAnswers}</th>
            </tr>
          </thead>
          {key.rows.map(({ student, questions }, row) => (
            <tbody key={student}>
              {questions.map(({ number, own, answers }, index) => (
                <tr key={number}>
                  {index === 0 && (
                    <th scope="rowgroup" rowSpan={questions.length}>
                      {row + 1}
                    </th>
                  )}
                  <td>{number}</td>
                  <td>{own.map(({ label, text }) => `${label}: ${text}`).join("; ") || "–"}</td>
                  <td>{answers.map(({ label, text, tolerance }) => `${label}: ${text} (${tolerance})`).join("; ")}</td>
                </tr>
              ))}
            </tbody>
          ))}
        </table>
      </section>
    </div>
  );
}
