import { useRef } from "preact/hooks";
import type { AskedOutput, Question } from "../../lib/assign/definition.ts";
import { startingTolerance } from "../../lib/assign/starting-tolerance.ts";
import type { QuantityInput } from "../../lib/inputs.ts";
import { kindOf } from "../../lib/quantity/units.ts";
import { type QuantityOutput, runWorksheet, type Worksheet } from "../../lib/worksheet.ts";
import { useTexts } from "../../texts/context.ts";
import { assign } from "../../texts/en/assign.ts";
import { type Form, fieldId, ListCell, Messages } from "../calculator/Fields.tsx";
import { firstRaw } from "./question-form.ts";

type Kind = keyof typeof assign.toleranceKinds;

const kindOfText = (text: string): Kind =>
  text.trim() === "rounding" ? "rounding" : text.trim().endsWith("%") ? "percent" : "absolute";

/** A tolerance of another kind to begin with. */
function firstTolerance(kind: Kind, output: QuantityOutput): string {
  if (kind === "rounding") return "rounding";
  const start = startingTolerance(output);
  if (kind === "percent") return start.endsWith("%") ? start : "2%";
  if (start !== "rounding" && !start.endsWith("%")) return start;
  return `${output.quantity === "count" ? 0 : 10 ** -kindOf(output.quantity).decimals}${kindOf(output.quantity).base}`;
}

interface Props {
  readonly form: Form;
  readonly sheet: Worksheet;
  readonly question: Question;
  change(next: (before: Question) => Question): void;
}

/** Answers that can be asked for: numbers, which the calculator knows from the numbers given. */
function askable({ form, sheet, question }: Props): [string, QuantityOutput][] {
  const raw = firstRaw(sheet.inputs, question);
  const answer = runWorksheet(sheet, raw, form.catalogue).answer ?? runWorksheet(sheet, {}, form.catalogue).answer;
  const chosen = new Set(question.asked.map(({ output }) => output));
  return Object.entries(sheet.outputs).flatMap(([key, output]): [string, QuantityOutput][] =>
    output.kind === "quantity" && (chosen.has(key) || typeof answer?.outputs[key] === "number") ? [[key, output]] : [],
  );
}

function Tolerance({
  form,
  asked,
  output,
  change,
}: Omit<Props, "sheet" | "question"> & { asked: AskedOutput; output: QuantityOutput }) {
  const texts = useTexts(assign);
  const put = useRef(new Map<Kind, string>());
  const kind = kindOfText(asked.tolerance);
  // A share is given per cent already: ± a size of it would be read as ± per cent of it.
  const kinds: readonly Kind[] = output.asPercent ? ["percent", "rounding"] : ["absolute", "percent", "rounding"];
  const field = `asked.${asked.output}`;
  const cell: QuantityInput = {
    kind: "quantity",
    quantity: kind === "percent" ? "percent" : output.quantity,
    label: output.label,
    min: 0,
    max: Number.MAX_VALUE,
  };
  const choose = (next: Kind) => {
    put.current.set(kind, asked.tolerance);
    const tolerance = put.current.get(next) ?? firstTolerance(next, output);
    change((before) => ({
      ...before,
      asked: before.asked.map((each) => (each.output === asked.output ? { ...each, tolerance } : each)),
    }));
  };
  return (
    <div class="tolerance">
      <select
        aria-label={texts.tolerance(output.label)}
        autocomplete="off"
        value={kind}
        onChange={(event) => choose(event.currentTarget.value as Kind)}
      >
        {(kinds.includes(kind) ? kinds : [kind, ...kinds]).map((each) => (
          <option key={each} value={each}>
            {texts.toleranceKinds[each]}
          </option>
        ))}
      </select>
      {kind !== "rounding" && (
        <ListCell form={form} field={field} cell={cell} text={asked.tolerance} label={texts.toleranceSize(output.label)} />
      )}
      <Messages form={form} field={field} id={fieldId(form.instance, field)} />
    </div>
  );
}

/** The answers a question asks for, each with how near a student has to come. */
export function AskedFields(props: Props) {
  const texts = useTexts(assign);
  const { form, sheet, question, change } = props;
  /** Tolerances of answers that are not asked for now. */
  const put = useRef(new Map<string, string>());
  const answers = askable(props);
  const toggle = (key: string, output: QuantityOutput, isAsked: boolean) => {
    const now = question.asked.find((each) => each.output === key);
    if (now) put.current.set(key, now.tolerance);
    change((before) => {
      const others = before.asked.filter((each) => each.output !== key);
      if (!isAsked) return { ...before, asked: others };
      const asked = [...others, { output: key, tolerance: put.current.get(key) ?? startingTolerance(output) }];
      const place = (each: AskedOutput) => Object.keys(sheet.outputs).indexOf(each.output);
      return { ...before, asked: asked.sort((one, other) => place(one) - place(other)) };
    });
  };
  // What an address asks for and the calculator does not have.
  const strange = question.asked.filter(({ output }) => !answers.some(([key]) => key === output));
  return (
    <fieldset class="asked" id={fieldId(form.instance, "asked")}>
      <legend>{texts.asked}</legend>
      <ul>
        {answers.map(([key, output]) => {
          const asked = question.asked.find((each) => each.output === key);
          return (
            <li key={key}>
              <label class="tick-line">
                <input
                  type="checkbox"
                  checked={asked !== undefined}
                  onChange={(event) => toggle(key, output, event.currentTarget.checked)}
                />
                <span>
                  {output.label}
                  {output.symbol && (
                    <>
                      {" "}
                      <i class="symbol">{output.symbol}</i>
                    </>
                  )}
                </span>
              </label>
              {asked && <Tolerance form={form} asked={asked} output={output} change={change} />}
            </li>
          );
        })}
        {strange.map(({ output }) => (
          <li key={output}>
            <label class="tick-line">
              <input
                type="checkbox"
                checked
                onChange={() => change((before) => ({ ...before, asked: before.asked.filter((each) => each.output !== output) }))}
              />
              <span>{output}</span>
            </label>
          </li>
        ))}
      </ul>
      <Messages form={form} field="asked" id={fieldId(form.instance, "asked")} />
    </fieldset>
  );
}
