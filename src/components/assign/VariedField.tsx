import type { ComponentChildren } from "preact";
import { isRange, type Variation } from "../../lib/assign/definition.ts";
import type { Place } from "../../lib/assign/place.ts";
import type { QuantityInput } from "../../lib/inputs.ts";
import { fieldText } from "../../lib/quantity/format.ts";
import { useTexts } from "../../texts/context.ts";
import { assign } from "../../texts/en/assign.ts";
import { type Form, fieldId, ListCell, Messages } from "../calculator/Fields.tsx";
import { choicesText } from "./question-form.ts";

interface Props {
  readonly form: Form;
  readonly place: Place;
  readonly variation: Variation;
  change(variation: Variation): void;
}

function Part({ name, children }: { name: string; children: ComponentChildren }) {
  return (
    <div class="range-part">
      <span class="part-name" aria-hidden="true">
        {name}
      </span>
      {children}
    </div>
  );
}

function Range({ form, place, variation }: Props) {
  const texts = useTexts(assign);
  if (!isRange(variation) || place.input.kind !== "quantity") return null;
  const input: QuantityInput = place.input;
  const cell = (end: "from" | "to" | "step") => ({
    form,
    field: `varied.${place.path}.${end}`,
    cell: input,
    text: variation[end],
  });
  return (
    <>
      <div class="range-parts">
        <Part name={texts.fromShort}>
          <ListCell {...cell("from")} label={texts.from(place.label)} />
        </Part>
        <Part name={texts.toShort}>
          <ListCell {...cell("to")} label={texts.to(place.label)} />
        </Part>
        <Part name={texts.stepShort}>
          <ListCell {...cell("step")} label={texts.step(place.label)} />
        </Part>
      </div>
      {(["from", "to", "step"] as const).map((end) => (
        <Messages
          key={end}
          form={form}
          field={`varied.${place.path}.${end}`}
          id={fieldId(form.instance, `varied.${place.path}.${end}`)}
        />
      ))}
    </>
  );
}

/** Values of a number to choose from, as one text. */
function Values({ form, place, variation }: Props) {
  const texts = useTexts(assign);
  const { input } = place;
  if (isRange(variation) || input.kind !== "quantity") return null;
  const field = `varied.${place.path}.choices`;
  const id = fieldId(form.instance, field);
  const shown = variation.choices.map((choice) => fieldText(choice, input.quantity, form.view, form.context));
  const text = form.draft?.field === field ? form.draft.text : choicesText(shown);
  return (
    <>
      <label class="part-name" for={id}>
        {texts.choices(place.label)}
      </label>
      <input
        id={id}
        type="text"
        autocomplete="off"
        spellcheck={false}
        value={text}
        aria-invalid={form.problems.has(field) ? "true" : undefined}
        aria-describedby={form.problems.has(field) ? `${id}-message ${id}-help` : `${id}-help`}
        onInput={(event) => form.type(field, input, event.currentTarget.value)}
        onBlur={() => form.leave()}
      />
      <p class="help" id={`${id}-help`}>
        {texts.choicesHelp}
      </p>
      <Messages form={form} field={field} id={id} />
    </>
  );
}

/** Words to choose from. */
function Words({ form, place, variation, change }: Props) {
  const texts = useTexts(assign);
  const { input } = place;
  if (isRange(variation) || (input.kind !== "choice" && input.kind !== "material")) return null;
  const field = `varied.${place.path}.choices`;
  const id = fieldId(form.instance, field);
  const options =
    input.kind === "choice"
      ? Object.entries(input.choices)
      : Object.values(form.catalogue.materials).map((metal): [string, string] => [metal.id, metal.name]);
  // Someone else's choice from an address stays in sight until it is taken off.
  const strange = variation.choices.filter((choice) => !options.some(([key]) => key === choice));
  const all = [...options, ...strange.map((choice): [string, string] => [choice, choice])];
  return (
    <fieldset class="words" id={id}>
      <legend>{texts.choices(place.label)}</legend>
      <ul>
        {all.map(([key, words]) => (
          <li key={key}>
            <label class="tick-line">
              <input
                type="checkbox"
                checked={variation.choices.includes(key)}
                onChange={(event) => {
                  const { checked } = event.currentTarget;
                  // In the order of the list: the order decides which student gets which.
                  change({
                    choices: all.flatMap(([each]) => ((each === key ? checked : variation.choices.includes(each)) ? [each] : [])),
                  });
                }}
              />
              <span>{words}</span>
            </label>
          </li>
        ))}
      </ul>
      <Messages form={form} field={field} id={id} />
    </fieldset>
  );
}

/** How one input differs from student to student. */
export function VariedField(props: Props) {
  const { form, place, variation } = props;
  return (
    <div class="varied">
      {isRange(variation) ? <Range {...props} /> : place.input.kind === "quantity" ? <Values {...props} /> : <Words {...props} />}
      <Messages form={form} field={`varied.${place.path}`} id={fieldId(form.instance, `varied.${place.path}`)} />
    </div>
  );
}
