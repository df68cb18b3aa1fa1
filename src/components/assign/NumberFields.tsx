import { useRef } from "preact/hooks";
import { isRange, type Question, type Variation } from "../../lib/assign/definition.ts";
import { type Place, placeAt, placesOf, textAt } from "../../lib/assign/place.ts";
import { rangeAbout } from "../../lib/assign/range-about.ts";
import type { Input, ListInput } from "../../lib/inputs.ts";
import type { Worksheet } from "../../lib/worksheet.ts";
import { useTexts } from "../../texts/context.ts";
import { assign } from "../../texts/en/assign.ts";
import { Field, type Form, fieldId } from "../calculator/Fields.tsx";
import { Fold } from "../calculator/Fold.tsx";
import { planId } from "../task/load-sheets.ts";
import { shownInputs } from "./question-form.ts";
import { VariedField } from "./VariedField.tsx";

type Mode = keyof typeof assign.modes;

const modeOf = (variation: Variation | undefined): Mode =>
  variation === undefined ? "fixed" : isRange(variation) ? "range" : "choices";

interface Props {
  readonly form: Form;
  readonly sheet: Worksheet;
  readonly question: Question;
  change(next: (before: Question) => Question): void;
}

/** What an input begins to differ by: about the value that stood there. */
function firstVariation({ form, sheet }: Props, place: Place, mode: Mode): Variation {
  const text = textAt(sheet.inputs, form.raw, place) ?? "";
  const about = place.input.kind === "quantity" ? rangeAbout(text, place.input) : undefined;
  if (mode === "range") return about ?? { from: text, to: "", step: "" };
  return { choices: [text, ...(about ? [about.to] : [])].filter((each) => each !== "") };
}

function withVaried(question: Question, path: string, variation: Variation | undefined): Question {
  const { [path]: _, ...others } = question.varied;
  if (!variation) return { ...question, varied: others };
  // An input is fixed or it varies; a cell of a list keeps the value it has in the list.
  const { [path]: was, ...fixed } = question.fixed;
  return { ...question, fixed, varied: { ...question.varied, [path]: variation } };
}

/** The numbers of a question: which are the same for everyone, and how the others differ. */
export function NumberFields(props: Props) {
  const texts = useTexts(assign);
  const { form, sheet, question, change } = props;
  /** What was entered in a way of differing that is not chosen now, and the fixed values. */
  const put = useRef(new Map<string, Variation | string>());

  const choose = (place: Place, mode: Mode) => {
    const { path } = place;
    const now = question.varied[path];
    const was = modeOf(now);
    if (was === mode) return;
    const fixed = question.fixed[path];
    if (now) put.current.set(`${path} ${was}`, now);
    else if (fixed !== undefined) put.current.set(`${path} fixed`, fixed);
    const before = put.current.get(`${path} ${mode}`);
    if (mode === "fixed")
      change((each) => {
        const plain = withVaried(each, path, undefined);
        return typeof before === "string" ? { ...plain, fixed: { ...plain.fixed, [path]: before } } : plain;
      });
    else {
      const next = typeof before === "object" ? before : firstVariation(props, place, mode);
      change((each) => withVaried(each, path, next));
    }
  };

  const mode = (place: Place) => {
    const modes: readonly Mode[] = place.input.kind === "quantity" ? ["fixed", "range", "choices"] : ["fixed", "choices"];
    return (
      <select
        class="mode"
        aria-label={texts.modeOf(place.label)}
        autocomplete="off"
        value={modeOf(question.varied[place.path])}
        onChange={(event) => choose(place, event.currentTarget.value as Mode)}
      >
        {modes.map((each) => (
          <option key={each} value={each}>
            {texts.modes[each]}
          </option>
        ))}
      </select>
    );
  };
  const varied = (place: Place, variation: Variation) => (
    <VariedField
      form={form}
      place={place}
      variation={variation}
      change={(next) => change((each) => withVaried(each, place.path, next))}
    />
  );

  const one = (key: string, input: Input) => {
    const place = placeAt(sheet.inputs, key);
    const variation = question.varied[key];
    if (!place || place.input.kind === "text") return <Field key={key} form={form} field={key} input={input} />;
    return (
      <div class="number-row" key={key}>
        {variation ? <p class="label">{place.label}</p> : <Field form={form} field={key} input={input} />}
        {mode(place)}
        {variation && varied(place, variation)}
      </div>
    );
  };

  /** Those places that differ already, and a list of the others to choose from. */
  const differing = (isOurs: (place: Place) => boolean, words: string, picker: string) => {
    const varying = Object.entries(question.varied).flatMap(([path, variation]) => {
      const place = placeAt(sheet.inputs, path);
      return place && isOurs(place) ? [{ place, variation }] : [];
    });
    const others = placesOf(sheet.inputs, form.raw).filter(
      (place) => isOurs(place) && place.input.kind !== "text" && !Object.hasOwn(question.varied, place.path),
    );
    return (
      <>
        {varying.map(({ place, variation }) => (
          <div class="number-row" key={place.path}>
            <p class="label">{place.label}</p>
            {mode(place)}
            {varied(place, variation)}
          </div>
        ))}
        {others.length > 0 && (
          <div class="field">
            <label for={picker}>{words}</label>
            <select
              id={picker}
              autocomplete="off"
              value=""
              onChange={(event) => {
                const place = placeAt(sheet.inputs, event.currentTarget.value);
                event.currentTarget.value = "";
                if (place) choose(place, place.input.kind === "quantity" ? "range" : "choices");
              }}
            >
              <option value="">{texts.letDifferNone}</option>
              {others.map((place) => (
                <option key={place.path} value={place.path}>
                  {place.label}
                </option>
              ))}
            </select>
          </div>
        )}
      </>
    );
  };

  const list = (key: string, input: ListInput) => (
    <div class="number-list" key={key}>
      <Field form={form} field={key} input={input} />
      {differing((place) => place.key === key, texts.letDiffer(input.label), fieldId(form.instance, `${key}.differs`))}
    </div>
  );

  const shown = shownInputs(sheet, question);
  if (sheet.id === planId) {
    const keys = new Set(shown.map(([key]) => key));
    // A part has a hundred sizes: those that differ stand out, the others are taken from a link or found below.
    return (
      <>
        {differing((place) => keys.has(place.key), texts.letAnyDiffer, fieldId(form.instance, "differs"))}
        <Fold class="overrides" summary={texts.allNumbers}>
          {() =>
            shown.map(([key, input]) =>
              Object.hasOwn(question.varied, key) ? null : <Field key={key} form={form} field={key} input={input} />,
            )
          }
        </Fold>
      </>
    );
  }
  const isOverride = (input: Input) => input.kind === "quantity" && input.override === true;
  const overrides = shown.filter(([, input]) => isOverride(input));
  const used = overrides.some(([key]) => key in question.fixed || key in question.varied);
  return (
    <>
      {shown.map(([key, input]) => (isOverride(input) ? null : input.kind === "list" ? list(key, input) : one(key, input)))}
      {overrides.length > 0 && (
        <Fold class="overrides" summary={texts.otherMetalValues} open={used}>
          {() => overrides.map(([key, input]) => one(key, input))}
        </Fold>
      )}
    </>
  );
}
