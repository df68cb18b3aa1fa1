import { useMemo } from "preact/hooks";
import { answerKeyCells, answerKeyCsv, type KeyColumn, type KeyRow, keyCell, keyColumns } from "../../lib/assign/answer-key.ts";
import { viewOf } from "../../lib/assign/own-question.ts";
import type { QuestionResult } from "../../lib/assign/result-code.ts";
import { answerText } from "../../lib/assign/tolerance.ts";
import { safeTabs } from "../../lib/csv.ts";
import type { LengthView } from "../../lib/quantity/format.ts";
import { useTexts } from "../../texts/context.ts";
import { answers } from "../../texts/en/answers.ts";
import { fileName } from "../assign/file-name.ts";
import { CopyButton } from "../calculator/CopyButton.tsx";
import { saveFile } from "../plan/save-file.ts";

interface Props {
  readonly title: string;
  readonly rows: readonly KeyRow[];
  readonly view: LengthView;
  /** Results of each student who handed in a code; undefined while there are no codes. */
  readonly results: ReadonlyMap<string, readonly QuestionResult[]> | undefined;
}

function statusOf(results: readonly QuestionResult[] | undefined, { status }: typeof answers): string {
  if (!results) return status.none;
  return results.every((each) => each === "right") ? status.right : status.part;
}

function textAt(row: KeyRow, column: KeyColumn, view: LengthView): string {
  const cell = keyCell(row, column);
  if (!cell) return "";
  return "right" in cell ? answerText(cell.output, cell.right, viewOf(column.own.question, view)) : cell.text;
}

/** Every student's numbers and answers. */
export function KeyTable({ title, rows, view, results }: Props) {
  const words = useTexts(answers);
  const columns = useMemo(() => keyColumns(rows), [rows]);
  const noted = rows.some(({ student }) => student.note !== "");
  const questions = [...new Set(columns.map(({ own }) => own))];
  return (
    <section class="answers-part answers-key" aria-labelledby="key">
      <h2 id="key">{words.keyTitle}</h2>
      {rows.length === 0 ? (
        <p>{words.keyEmpty}</p>
      ) : (
        <>
          <div class="actions not-on-paper">
            <button
              type="button"
              onClick={() => saveFile(fileName(`${title} answers`, "csv"), "text/csv", answerKeyCsv(rows, view))}
            >
              {words.saveKey}
            </button>
            <CopyButton text={() => safeTabs(answerKeyCells(rows, view))}>{words.copyKey}</CopyButton>
            <button type="button" onClick={() => print()}>
              {words.print}
            </button>
          </div>
          {/* biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls where it is too wide, and must do so from the keyboard */}
          <section class="table-frame" tabIndex={0} aria-label={words.keyTable}>
            <table>
              <thead>
                <tr>
                  <th rowSpan={2} scope="col">
                    {words.student}
                  </th>
                  {noted && (
                    <th rowSpan={2} scope="col">
                      {words.note}
                    </th>
                  )}
                  {results && (
                    <th rowSpan={2} scope="col">
                      {words.code}
                    </th>
                  )}
                  {questions.map((own) => (
                    <th
                      key={own.number}
                      scope="colgroup"
                      colSpan={columns.filter((column) => column.own === own).length}
                      class="of-question"
                    >
                      {own.number}. {own.sheet.title}
                    </th>
                  ))}
                </tr>
                <tr>
                  {columns.map((column) => (
                    <th
                      key={`${column.index} ${column.path ?? column.asked}`}
                      scope="col"
                      class={column.path === undefined ? "an-answer" : undefined}
                    >
                      {column.label}
                    </th>
                  ))}
                </tr>
              </thead>
              <tbody>
                {rows.map((row) => (
                  <tr key={row.student.id}>
                    <th scope="row">{row.student.id}</th>
                    {noted && <td>{row.student.note}</td>}
                    {results && <td>{statusOf(results.get(row.student.id), words)}</td>}
                    {row.problem ? (
                      <td colSpan={Math.max(1, columns.length)}>
                        <strong>{words.keyProblem}: </strong>
                        {row.problem.text(view)}
                      </td>
                    ) : (
                      columns.map((column) => (
                        <td
                          key={`${column.index} ${column.path ?? column.asked}`}
                          class={column.path === undefined ? "an-answer" : undefined}
                        >
                          {textAt(row, column, view)}
                        </td>
                      ))
                    )}
                  </tr>
                ))}
              </tbody>
            </table>
          </section>
          <p class="help not-on-paper">{words.csvHow}</p>
        </>
      )}
    </section>
  );
}
