import { formatQuantity, type LengthView } from "../../lib/quantity/format.ts";
import type { Answer, AnswerTable, ListOutput, Output, Remark, Worksheet } from "../../lib/worksheet.ts";
import { useLanguage, useTexts } from "../../texts/context.ts";
import { calculator } from "../../texts/en/calculator.ts";
import { english } from "../../texts/english.ts";
import type { Language } from "../../texts/language.ts";
import type { SourceTitles } from "./source-titles.ts";
import { lookText, type OutputLook, outputLook, outputText, plusMinusText, rangeLook } from "./texts.ts";

interface Shown {
  readonly sheet: Worksheet;
  readonly answer: Answer;
  readonly view: LengthView;
}

function Label({ output }: { output: Output }) {
  const language = useLanguage();
  return (
    <>
      {language.say(output.label)}
      {output.kind === "quantity" && output.symbol && (
        <>
          {" "}
          <i class="symbol">{output.symbol}</i>
        </>
      )}
    </>
  );
}

function plusMinus({ sheet, answer, view }: Shown, output: Output, language: Language): string | undefined {
  if (output.kind !== "quantity" || !output.plusMinus) return undefined;
  const value = answer.outputs[output.plusMinus];
  const own = sheet.outputs[output.plusMinus];
  if (typeof value !== "number" || own?.kind !== "quantity") return undefined;
  return plusMinusText(value, own.quantity, view, own.fineness, language);
}

/** A value, together with the upper end of its range where it begins one. */
export function lookOf({ sheet, answer, view }: Shown, output: Output, value: unknown, language = english): OutputLook {
  const look = outputLook(output, value, view, language);
  if (output.kind !== "quantity" || !output.upTo) return look;
  const end = sheet.outputs[output.upTo];
  const to = answer.outputs[output.upTo];
  return end && typeof value === "number" && typeof to === "number" ? rangeLook(look, outputLook(end, to, view, language)) : look;
}

/** A number with more letters, such as a range, is set smaller, so that its unit stays beside it. */
const longest = 7;

function Main({ shown, output, value }: { shown: Shown; output: Output; value: unknown }) {
  const language = useLanguage();
  const texts = useTexts(calculator);
  const { number, unit, off } = lookOf(shown, output, value, language);
  const around = plusMinus(shown, output, language);
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
      {off && <p class="answer-off">{texts.fractionOff(off.slice(1), off.startsWith("+"))}</p>}
    </div>
  );
}

/** More columns than this do not fit beside one another in a calculator. */
const mostColumns = 6;

function ListTable({ output, value, view }: { output: ListOutput; value: unknown; view: LengthView }) {
  const language = useLanguage();
  const texts = useTexts(calculator);
  const rows: readonly unknown[] = Array.isArray(value) ? value : [];
  const columns = Object.entries(output.columns);
  if (output.plain) {
    const [, column] = columns[0] ?? [];
    if (column?.kind === "text" && rows.length > 0)
      return (
        <ul class="sentences">
          {rows.map((row) => (
            <li key={String(row)}>{language.say(String(row))}</li>
          ))}
        </ul>
      );
    return <>{column ? rows.map((row) => outputText(column, row, view, language)).join(", ") || texts.none : ""}</>;
  }
  return (
    <div class={columns.length > mostColumns ? "table-room of-many" : "table-room"}>
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
                <td key={key} class={column.kind === "quantity" ? "number" : undefined} data-label={language.say(column.label)}>
                  {row[key] === null ? "" : outputText(column, row[key], view, language)}
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
              {language.say(label)}: {language.say(help)}
            </p>
          ),
      )}
    </div>
  );
}

/** The output asked for, larger than anything else. */
export function MainAnswer(shown: Shown) {
  const { sheet, answer, view } = shown;
  const language = useLanguage();
  const main = sheet.outputs[sheet.main];
  const value = answer.outputs[sheet.main];
  if (main?.kind !== "list") return main ? <Main shown={shown} output={main} value={value} /> : null;
  return (
    <div class="main-answer">
      <p class="answer-label">{language.say(main.label)}</p>
      <ListTable output={main} value={value} view={view} />
    </div>
  );
}

/** The other outputs; one that is the ± of another, or the end of its range, stands only beside that one. */
export function OtherAnswers(shown: Shown) {
  const { sheet, answer } = shown;
  const language = useLanguage();
  const beside = new Set(
    Object.values(sheet.outputs).flatMap((output) => (output.kind === "quantity" ? [output.plusMinus, output.upTo] : [])),
  );
  const others = Object.entries(sheet.outputs).filter(([key]) => key !== sheet.main && !beside.has(key));
  if (others.length === 0) return null;
  return (
    <dl class="other-answers">
      {others.map(([key, output]) => {
        const value = answer.outputs[key];
        const around = plusMinus(shown, output, language);
        return (
          <div key={key} class={output.kind === "quantity" ? undefined : "wide"}>
            <dt>
              <Label output={output} />
            </dt>
            <dd>
              {output.kind === "list" ? (
                <ListTable output={output} value={value} view={shown.view} />
              ) : (
                <>
                  {lookText(lookOf(shown, output, value, language))}
                  {around && <span class="unbroken"> ± {around}</span>}
                </>
              )}
            </dd>
            {output.help && <dd class="help">{language.say(output.help)}</dd>}
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
  const language = useLanguage();
  const texts = useTexts(calculator);
  const title = titles[id];
  return title ? (
    <span class="source">
      {texts.from}{" "}
      <a href={`${sourcesPage}#${id}`} {...language.toEnglish}>
        {title}
      </a>
      .
    </span>
  ) : null;
}

/** Remarks that belong to no field. */
export function Remarks({ remarks, view, ...linked }: Linked & { remarks: readonly Remark[]; view: LengthView }) {
  const language = useLanguage();
  const texts = useTexts(calculator);
  if (remarks.length === 0) return null;
  return (
    <ul class="remarks">
      {remarks.map((remark) => {
        const text = language.say(remark.phrase, view);
        return (
          <li key={text} class={remark.level === "caution" ? "caution" : undefined}>
            {remark.level === "caution" && <strong>{texts.caution}: </strong>}
            {text} {remark.source && <SourceLink id={remark.source} {...linked} />}
          </li>
        );
      })}
    </ul>
  );
}

type Column = AnswerTable["columns"][number];
type Cell = AnswerTable["rows"][number]["cells"][number];

function cellText(cell: Cell, column: Column | undefined, view: LengthView, language: Language): string {
  if (cell === null) return "–";
  if (typeof cell !== "number") return language.say(cell, view);
  if (!column?.quantity) return language.say(String(cell));
  return language.digits(formatQuantity(cell, column.quantity, view, column.fineness));
}

/** A table beside an answer. The row that is the answer says so in words, not by its look alone. */
export function ComparisonTable({ table, view, ...linked }: Linked & { table: AnswerTable; view: LengthView }) {
  const language = useLanguage();
  const texts = useTexts(calculator);
  return (
    <div class="table-room">
      <table class="comparison cards">
        <caption>{language.say(table.caption)}</caption>
        <thead>
          <tr>
            {table.columns.map((column) => (
              <th key={column.label} scope="col" class={column.quantity ? "number" : undefined}>
                {language.say(column.label)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {table.rows.map((row, at) => {
            const [first = "", ...rest] = row.cells;
            const empty = rest.every((cell) => cell === null);
            const note = row.note && language.say(row.note, view);
            return (
              <tr key={at} class={row.chosen ? "chosen" : undefined}>
                <th scope="row">
                  {cellText(first, table.columns[0], view, language)}
                  {row.chosen && <span class="chosen-mark"> {texts.thisAnswer}</span>}
                  {row.source && <SourceLink id={row.source} {...linked} />}
                  {note && !empty && <small>{note}</small>}
                </th>
                {empty && note ? (
                  <td class="quiet" colSpan={rest.length}>
                    {note}
                  </td>
                ) : (
                  rest.map((cell, index) => {
                    const column = table.columns[index + 1];
                    return column ? (
                      <td
                        key={column.label}
                        class={column.quantity ? "number" : undefined}
                        data-label={language.say(column.label)}
                      >
                        {cellText(cell, column, view, language)}
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
