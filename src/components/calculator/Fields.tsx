import type { Fixed } from "../../lib/address.ts";
import { bendAngle } from "../../lib/bending/symbols.ts";
import type { Catalogue, Material, MaterialId, Property } from "../../lib/catalogue.ts";
import type { ChoiceInput, Input, ListInput, MaterialInput, QuantityInput, Raw, RawRow, TextInput } from "../../lib/inputs.ts";
import { formatQuantity, type LengthView, unitOfView } from "../../lib/quantity/format.ts";
import type { ParseContext } from "../../lib/quantity/parse.ts";
import { unitOf } from "../../lib/quantity/units.ts";
import { useLanguage, useTexts } from "../../texts/context.ts";
import { calculator } from "../../texts/en/calculator.ts";
import { given as givenTexts } from "../../texts/en/given.ts";
import type { Language } from "../../texts/language.ts";
import { TurnedAngle } from "../drawings/parts/TurnedAngle.tsx";
import { fieldLook, rangeText } from "./texts.ts";

/** What every field needs to know, and what it can do. A field inside a list is named `legs.1.leg`. */
export interface Form {
  readonly instance: string;
  readonly catalogue: Catalogue;
  readonly view: LengthView;
  readonly context: ParseContext;
  /** The same for one field, where a form is about more than one metal. */
  readonly contextAt?: (field: string) => ParseContext;
  readonly raw: Raw;
  /** What the address fixes, for a form that has one: shown, not to be changed. */
  readonly fixed?: Fixed;
  /** At build a choice of metals holds only the one chosen: the others are of no use before the form is live. */
  readonly live: boolean;
  /** Id of the metal chosen, which may be no metal at all. */
  readonly material: string;
  /** Message at each field that cannot be used. */
  readonly problems: ReadonlyMap<string, string>;
  /** Cautions about values that can be used, at the field they are about. */
  readonly cautions: ReadonlyMap<string, readonly string[]>;
  /** The field being typed into, with its text as typed. */
  readonly draft: { readonly field: string; readonly text: string } | undefined;
  type(field: string, input: Input, text: string): void;
  leave(): void;
  addRow(key: string, input: ListInput): void;
  removeRow(key: string, input: ListInput, index: number): void;
}

export function fieldId(instance: string, field: string): string {
  return `${instance}-${field.replaceAll(".", "-")}`;
}

/** Whether a field, or the list it is in, is fixed by the address. */
const isFixed = (form: Form, field: string): boolean => form.fixed?.keys.includes(field.split(".")[0] ?? "") ?? false;

/** `described` lists only what is there, because a name that leads nowhere is an error for a screen reader. */
function described(id: string, parts: Readonly<Record<string, unknown>>): string | undefined {
  const there = Object.entries(parts).flatMap(([name, part]) => (part ? [`${id}-${name}`] : []));
  return there.length > 0 ? there.join(" ") : undefined;
}

export function Messages({ form, field, id }: { form: Form; field: string; id: string }) {
  const texts = useTexts(calculator);
  const { mark } = useTexts(givenTexts);
  return (
    <>
      {form.fixed?.keys.includes(field) && (
        <p class="note given-mark" id={`${id}-given`}>
          {mark}
        </p>
      )}
      <p class="message" id={`${id}-message`} aria-live="polite">
        {form.problems.get(field)}
      </p>
      {form.cautions.get(field)?.map((text) => (
        <p class="field-caution" key={text}>
          <strong>{texts.caution}: </strong>
          {text}
        </p>
      ))}
    </>
  );
}

interface EntryProps {
  readonly form: Form;
  readonly field: string;
  readonly input: QuantityInput | TextInput;
  readonly text: string;
  readonly describedBy: string | undefined;
  readonly label?: string;
}

function Entry({ form, field, input, text, describedBy, label }: EntryProps) {
  const number = input.kind === "quantity";
  return (
    <input
      id={fieldId(form.instance, field)}
      type="text"
      // A number pad has no stroke for fractions.
      inputMode={number ? (input.quantity === "length" && form.view === "fraction" ? "text" : "decimal") : "text"}
      autocomplete="off"
      spellcheck={false}
      readOnly={isFixed(form, field)}
      value={text}
      aria-label={label}
      aria-invalid={form.problems.has(field) ? "true" : undefined}
      aria-describedby={describedBy}
      onInput={(event) => form.type(field, input, event.currentTarget.value)}
      onBlur={() => form.leave()}
    />
  );
}

function draftOf(form: Form, field: string): string | undefined {
  return form.draft?.field === field ? form.draft.text : undefined;
}

const contextAt = (form: Form, field: string) => form.contextAt?.(field) ?? form.context;

/** The metal's own value of a property that a field may replace. */
function ownValue(form: Form, key: string, input: QuantityInput, language: Language): string {
  const material = form.catalogue.materials[form.material as MaterialId];
  const property = material?.[key as keyof typeof material] as Property | undefined;
  if (!input.override || !property) return "";
  return language.texts(calculator).metalsOwn(language.digits(formatQuantity(property.value, input.quantity, form.view)));
}

/** Bend angles, not directions: those are mixed up with the corner left inside. */
function isBendAngle(input: Input): boolean {
  return input.kind === "quantity" && input.symbol === bendAngle.symbol && input.quantity === bendAngle.quantity;
}

function QuantityField({ form, field, input, stored }: { form: Form; field: string; input: QuantityInput; stored: string }) {
  const id = fieldId(form.instance, field);
  const context = contextAt(form, field);
  const language = useLanguage();
  const texts = useTexts(calculator);
  const look = fieldLook(stored, draftOf(form, field), input.quantity, form.view, context, language);
  const own = ownValue(form, field, input, language);
  const empty = input.default === undefined && !own && input.whenEmpty ? texts.leftEmpty(language.say(input.whenEmpty)) : "";
  const help = [input.help && language.say(input.help), own, empty].filter(Boolean).join(" ");
  const problem = form.problems.has(field);
  return (
    <div class="field">
      <label for={id}>
        {language.say(input.label)}
        {input.symbol && (
          <>
            {" "}
            <i class="symbol">{input.symbol}</i>
          </>
        )}
      </label>
      <div class="entry">
        <Entry
          form={form}
          field={field}
          input={input}
          text={look.text}
          describedBy={described(id, {
            unit: look.unit,
            note: look.note,
            given: isFixed(form, field),
            message: problem,
            help: true,
          })}
        />
        <span class="unit" id={`${id}-unit`}>
          {look.unit}
        </span>
        {isBendAngle(input) && <TurnedAngle stored={stored} context={context} />}
      </div>
      {look.note && (
        <p class="note" id={`${id}-note`}>
          {look.note}
        </p>
      )}
      <Messages form={form} field={field} id={id} />
      <p class="help" id={`${id}-help`}>
        {help} <span class="range">{rangeText(input, form.view, language)}</span>
      </p>
    </div>
  );
}

function metalOption({ id, name }: Material, language: Language) {
  return (
    <option key={id} value={id}>
      {language.say(name)}
    </option>
  );
}

function SelectField({
  form,
  field,
  input,
  stored,
}: {
  form: Form;
  field: string;
  input: ChoiceInput | MaterialInput;
  stored: string;
}) {
  const id = fieldId(form.instance, field);
  const language = useLanguage();
  const texts = useTexts(calculator);
  const materials = Object.values(form.catalogue.materials);
  const known = input.kind === "choice" ? Object.keys(input.choices) : materials.map((material) => material.id as string);
  const optional = input.kind === "choice" && input.default === undefined;
  const fixed = isFixed(form, field);
  /** A list of choices with one choice cannot be changed, and still reads as what it is. */
  const offered = (value: string) => !fixed || value === stored;
  const sentence = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
  return (
    <div class="field wide">
      <label for={id}>{language.say(input.label)}</label>
      <select
        id={id}
        value={stored}
        autocomplete="off"
        aria-invalid={form.problems.has(field) ? "true" : undefined}
        aria-describedby={described(id, { given: fixed, message: form.problems.has(field), help: input.help })}
        aria-readonly={fixed ? "true" : undefined}
        onChange={(event) => form.type(field, input, event.currentTarget.value)}
        onBlur={() => form.leave()}
      >
        {optional && offered("") && (
          <option value="">
            {sentence(input.kind === "choice" && input.whenEmpty ? language.say(input.whenEmpty) : texts.notChosen)}
          </option>
        )}
        {/* Someone else's text from an address: kept in sight until it is corrected. */}
        {stored !== "" && !known.includes(stored) && <option value={stored}>{stored}</option>}
        {input.kind === "choice"
          ? Object.entries(input.choices)
              .filter(([value]) => offered(value))
              .map(([value, words]) => (
                <option key={value} value={value}>
                  {sentence(language.say(words))}
                </option>
              ))
          : form.live && !fixed
            ? Object.entries(texts.families).map(([family, name]) => (
                <optgroup key={family} label={name}>
                  {materials.filter((material) => material.family === family).map((metal) => metalOption(metal, language))}
                </optgroup>
              ))
            : materials.filter(({ id: metal }) => metal === stored).map((metal) => metalOption(metal, language))}
      </select>
      <Messages form={form} field={field} id={id} />
      {input.help && (
        <p class="help" id={`${id}-help`}>
          {language.say(input.help)}
        </p>
      )}
    </div>
  );
}

function TextField({ form, field, input, stored }: { form: Form; field: string; input: TextInput; stored: string }) {
  const language = useLanguage();
  const id = fieldId(form.instance, field);
  return (
    <div class="field wide">
      <label for={id}>{language.say(input.label)}</label>
      <Entry
        form={form}
        field={field}
        input={input}
        text={stored}
        describedBy={described(id, { given: isFixed(form, field), message: form.problems.has(field), help: input.help })}
      />
      <Messages form={form} field={field} id={id} />
      {input.help && (
        <p class="help" id={`${id}-help`}>
          {language.say(input.help)}
        </p>
      )}
    </div>
  );
}

export function ListCell({
  form,
  field,
  cell,
  text,
  label,
}: {
  form: Form;
  field: string;
  cell: Input;
  text: string;
  label: string;
}) {
  const language = useLanguage();
  const texts = useTexts(calculator);
  const fixed = isFixed(form, field);
  if (cell.kind === "choice")
    return (
      <select
        id={fieldId(form.instance, field)}
        value={text}
        autocomplete="off"
        aria-label={label}
        aria-invalid={form.problems.has(field) ? "true" : undefined}
        aria-readonly={fixed ? "true" : undefined}
        onChange={(event) => form.type(field, cell, event.currentTarget.value)}
        onBlur={() => form.leave()}
      >
        {cell.default === undefined && !(fixed && text !== "") && (
          <option value="">{cell.whenEmpty ? language.say(cell.whenEmpty) : texts.notChosen}</option>
        )}
        {text !== "" && !Object.hasOwn(cell.choices, text) && <option value={text}>{text}</option>}
        {Object.entries(cell.choices)
          .filter(([value]) => !fixed || value === text)
          .map(([value, words]) => (
            <option key={value} value={value}>
              {language.say(words)}
            </option>
          ))}
      </select>
    );
  if (cell.kind !== "quantity" && cell.kind !== "text") return null;
  const id = fieldId(form.instance, field);
  const look =
    cell.kind === "quantity"
      ? fieldLook(text, draftOf(form, field), cell.quantity, form.view, contextAt(form, field), language)
      : { text, unit: "", note: "" };
  return (
    <div class="entry">
      <Entry
        form={form}
        field={field}
        input={cell}
        text={look.text}
        label={label}
        describedBy={described(id, { note: look.note, message: form.problems.has(field) })}
      />
      <span class="unit">{look.unit}</span>
      {look.note && (
        <p class="note" id={`${id}-note`}>
          {look.note}
        </p>
      )}
      {isBendAngle(cell) && <TurnedAngle stored={text} context={form.context} />}
    </div>
  );
}

function ListField({ form, field: key, input }: { form: Form; field: string; input: ListInput }) {
  const language = useLanguage();
  const texts = useTexts(calculator);
  const id = fieldId(form.instance, key);
  const given = form.raw[key];
  const rows: readonly RawRow[] = Array.isArray(given) ? given : input.default;
  const columns = Object.entries(input.columns);
  const fixed = isFixed(form, key);
  const unit = (cell: Input) =>
    cell.kind === "quantity" ? language.say(unitOf(cell.quantity, unitOfView(cell.quantity, form.view)).text) : "";
  return (
    <fieldset
      class="field wide list"
      id={id}
      data-columns={columns.length}
      aria-describedby={described(id, { given: fixed, help: input.help })}
    >
      <legend>{language.say(input.label)}</legend>
      {input.help && (
        <p class="help" id={`${id}-help`}>
          {language.say(input.help)}
        </p>
      )}
      <Messages form={form} field={key} id={id} />
      {!input.plain && (
        <div class="list-head" aria-hidden="true">
          {columns.map(([name, cell]) => (
            <span key={name}>
              {language.say(cell.label)}
              {unit(cell) && <span class="quiet"> {unit(cell)}</span>}
            </span>
          ))}
        </div>
      )}
      {rows.map((row, index) => {
        const fields = columns.map(([name, cell]) => ({ name, cell, field: `${key}.${index}.${name}` }));
        return (
          // Rows have no name of their own: their place is what the reader counts by.
          <div class="list-row" key={index}>
            {input.plain && (
              <span class="row-name" aria-hidden="true">
                {language.say(columns[0]?.[1].label ?? "")} {index + 1}
              </span>
            )}
            {fields.map(({ name, cell, field }) => (
              <div class="list-cell" key={name}>
                {!input.plain && (
                  <span class="cell-name" aria-hidden="true">
                    {language.say(cell.label)}
                    {unit(cell) && <span class="quiet"> {unit(cell)}</span>}
                  </span>
                )}
                <ListCell
                  form={form}
                  field={field}
                  cell={cell}
                  text={row[name] ?? ("default" in cell ? (cell.default as string | undefined) : undefined) ?? ""}
                  label={`${language.say(cell.label)} ${index + 1}`}
                />
              </div>
            ))}
            {rows.length > input.minRows && !fixed && (
              <button
                type="button"
                class="remove"
                id={`${id}-${index}-remove`}
                aria-label={texts.removeRow(index + 1, language.say(input.rowName))}
                onClick={() => form.removeRow(key, input, index)}
              >
                <svg viewBox="0 0 16 16" aria-hidden="true">
                  <path d="M3 3L13 13M13 3L3 13" />
                </svg>
              </button>
            )}
            {fields.map(({ field }) => (
              <Messages key={field} form={form} field={field} id={fieldId(form.instance, field)} />
            ))}
          </div>
        );
      })}
      {rows.length < input.maxRows && !fixed && (
        <button type="button" class="add" id={`${id}-add`} onClick={() => form.addRow(key, input)}>
          {texts.addRow(language.say(input.rowName))}
        </button>
      )}
    </fieldset>
  );
}

export function Field({ form, field, input }: { form: Form; field: string; input: Input }) {
  if (input.kind === "list") return <ListField form={form} field={field} input={input} />;
  const given = form.raw[field] ?? input.default ?? "";
  const stored = typeof given === "string" ? given : "";
  switch (input.kind) {
    case "quantity":
      return <QuantityField form={form} field={field} input={input} stored={stored} />;
    case "text":
      return <TextField form={form} field={field} input={input} stored={stored} />;
    default:
      return <SelectField form={form} field={field} input={input} stored={stored} />;
  }
}
