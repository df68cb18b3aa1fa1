import { formatQuantity, type LengthView } from "../../lib/quantity/format.ts";
import { phraseText } from "../../lib/quantity/phrase.ts";
import type { Answer, AnswerTable, ListOutput, Output, Remark, Worksheet } from "../../lib/worksheet.ts";
import type { SourceTitles } from "./source-titles.ts";
import { lookText, type OutputLook, outputLook, outputText, plusMinusText, rangeLook } from "./texts.ts";

interface Shown {
  readonly sheet: Worksheet;
  readonly answer: Answer;
  readonly view: LengthView;
}

function Label({ output }: { output: Output }) {
  return (
    <>
      {output.label}
      {output.kind === "quantity" && output.symbol && (
        <>
          {" "}
          <i class="symbol">{output.symbol}</i>
        </>
      )}
    </>
  );
}

function plusMinus({ sheet, answer, view }: Shown, output: Output): string | undefined {
  if (output.kind !== "quantity" || !output.plusMinus) return undefined;
  const value = answer.outputs[output.plusMinus];
  const own = sheet.outputs[output.plusMinus];
  if (typeof value !== "number" || own?.kind !== "quantity") return undefined;
  return plusMinusText(value, own.quantity, view, own.fineness);
}

/** A value, together with the upper end of its range where it begins one. */
export function lookOf({ sheet, answer, view }: Shown, output: Output, value: unknown): OutputLook {
  const look = outputLook(output, value, view);
  if (output.kind !== "quantity" || !output.upTo) return look;
  const end = sheet.outputs[output.upTo];
  const to = answer.outputs[output.upTo];
  return end && typeof value === "number" && typeof to === "number" ? rangeLook(look, outputLook(end, to, view)) : look;
}

/** A number with more letters, such as a range, is set smaller, so that its unit stays beside it. */
const longest = 7;

function Main({ shown, output, value }: { shown: Shown; output: Output; value: unknown }) {
  const { number, unit, off } = lookOf(shown, output, value);
  const around = plusMinus(shown, output);
  const words = output.kind !== "quantity";
  return (
    <div class="main-answer">
      <p class="answer-label">
        <Label output={output} />
      </p>
      <output class={words ? "answer-words" : `answer-number${number.length > longest ? " long" : ""}`}>
        {number}
        {unit && <span class="answer-unit">{unit === "°" ? unit : ` ${unit}`}</span>}
        {around && <span class="answer-around"> ± {around}</span>}
      </output>
      {off && (
        <p class="answer-off">
          The fraction is {off.slice(1)} too {off.startsWith("+") ? "long" : "short"}.
        </p>
      )}
    </div>
  );
}

function ListTable({ output, value, view }: { output: ListOutput; value: unknown; view: LengthView }) {
  const rows: readonly unknown[] = Array.isArray(value) ? value : [];
  const columns = Object.entries(output.columns);
  if (output.plain) {
    const [, column] = columns[0] ?? [];
    if (column?.kind === "text" && rows.length > 0)
      return (
        <ul class="sentences">
          {rows.map((row) => (
            <li key={String(row)}>{String(row)}</li>
          ))}
        </ul>
      );
    return <>{column ? rows.map((row) => outputText(column, row, view)).join(", ") || "none" : ""}</>;
  }
  return (
    <div class="table-room">
      <table class="answer-list cards">
        <thead>
          <tr>
            {columns.map(([key, column]) => (
              <th key={key} scope="col" class={column.kind === "quantity" ? "number" : undefined}>
                <Label output={column} />
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {(rows as readonly Readonly<Record<string, unknown>>[]).map((row, index) => (
            <tr key={index}>
              {columns.map(([key, column]) => (
                <td key={key} class={column.kind === "quantity" ? "number" : undefined} data-label={column.label}>
                  {row[key] === null ? "" : outputText(column, row[key], view)}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      {columns.map(
        ([key, { label, help }]) =>
          help && (
            <p class="help" key={key}>
              {label}: {help}
            </p>
          ),
      )}
    </div>
  );
}

/** The output asked for, larger than anything else. */
export function MainAnswer(shown: Shown) {
  const { sheet, answer, view } = shown;
  const main = sheet.outputs[sheet.main];
  const value = answer.outputs[sheet.main];
  if (main?.kind !== "list") return main ? <Main shown={shown} output={main} value={value} /> : null;
  return (
    <div class="main-answer">
      <p class="answer-label">{main.label}</p>
      <ListTable output={main} value={value} view={view} />
    </div>
  );
}

/** The other outputs; one that is the ± of another, or the end of its range, stands only beside that one. */
export function OtherAnswers(shown: Shown) {
  const { sheet, answer, view } = shown;
  const beside = new Set(
    Object.values(sheet.outputs).flatMap((output) => (output.kind === "quantity" ? [output.plusMinus, output.upTo] : [])),
  );
  const others = Object.entries(sheet.outputs).filter(([key]) => key !== sheet.main && !beside.has(key));
  if (others.length === 0) return null;
  return (
    <dl class="other-answers">
      {others.map(([key, output]) => {
        const value = answer.outputs[key];
        const around = plusMinus(shown, output);
        return (
          <div key={key} class={output.kind === "quantity" ? undefined : "wide"}>
            <dt>
              <Label output={output} />
            </dt>
            <dd>
              {output.kind === "list" ? (
                <ListTable output={output} value={value} view={view} />
              ) : (
                <>
                  {lookText(lookOf(shown, output, value))}
                  {around && <span class="unbroken"> ± {around}</span>}
                </>
              )}
            </dd>
            {output.help && <dd class="help">{output.help}</dd>}
          </div>
        );
      })}
    </dl>
  );
}

interface Linked {
  readonly titles: SourceTitles;
  /** Address of the page of sources. */
  readonly sourcesPage: string;
}

function SourceLink({ id, titles, sourcesPage }: Linked & { id: string }) {
  const title = titles[id];
  return title ? (
    <span class="source">
      From <a href={`${sourcesPage}#${id}`}>{title}</a>.
    </span>
  ) : null;
}

/** Remarks that belong to no field. */
export function Remarks({ remarks, view, ...linked }: Linked & { remarks: readonly Remark[]; view: LengthView }) {
  if (remarks.length === 0) return null;
  return (
    <ul class="remarks">
      {remarks.map((remark) => {
        const text = phraseText(remark.phrase, view);
        return (
          <li key={text} class={remark.level === "caution" ? "caution" : undefined}>
            {remark.level === "caution" && <strong>Caution: </strong>}
            {text} {remark.source && <SourceLink id={remark.source} {...linked} />}
          </li>
        );
      })}
    </ul>
  );
}

function cellText(cell: number | string | null, column: AnswerTable["columns"][number], view: LengthView): string {
  if (cell === null) return "–";
  if (typeof cell === "string" || !column.quantity) return String(cell);
  return formatQuantity(cell, column.quantity, view, column.fineness);
}

/** A table beside an answer. The row that is the answer says so in words, not by its look alone. */
export function ComparisonTable({ table, view, ...linked }: Linked & { table: AnswerTable; view: LengthView }) {
  return (
    <div class="table-room">
      <table class="comparison cards">
        <caption>{table.caption}</caption>
        <thead>
          <tr>
            {table.columns.map((column) => (
              <th key={column.label} scope="col" class={column.quantity ? "number" : undefined}>
                {column.label}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {table.rows.map((row) => {
            const [first = "", ...rest] = row.cells;
            const empty = rest.every((cell) => cell === null);
            return (
              <tr key={String(first)} class={row.chosen ? "chosen" : undefined}>
                <th scope="row">
                  {first}
                  {row.chosen && <span class="chosen-mark"> this answer</span>}
                  {row.source && <SourceLink id={row.source} {...linked} />}
                  {row.note && !empty && <small>{row.note}</small>}
                </th>
                {empty && row.note ? (
                  <td class="quiet" colSpan={rest.length}>
                    {row.note}
                  </td>
                ) : (
                  rest.map((cell, index) => {
                    const column = table.columns[index + 1];
                    return column ? (
                      <td key={column.label} class={column.quantity ? "number" : undefined} data-label={column.label}>
                        {cellText(cell, column, view)}
                      </td>
                    ) : null;
                  })
                )}
              </tr>
            );
          })}
        </tbody>
      </table>
    </div>
  );
}
