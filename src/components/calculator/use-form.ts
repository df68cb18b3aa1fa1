import { useLayoutEffect, useMemo, useRef, useState } from "preact/hooks";
import {
  addressParts,
  type Fixed,
  fixedFromAddress,
  nothingFixed,
  ownedParts,
  queryText,
  rawFromAddress,
  withFixed,
} from "../../lib/address.ts";
import type { Catalogue } from "../../lib/catalogue.ts";
import type { InputError } from "../../lib/input-error.ts";
import type { Inputs, ListInput, Raw, RawRow } from "../../lib/inputs.ts";
import type { LengthView } from "../../lib/quantity/format.ts";
import { useLanguage } from "../../texts/context.ts";
import type { Language } from "../../texts/language.ts";
import { unitsView, watchUnits } from "../units.ts";
import { addressParameters, replaceParameters, watchAddress, writeSoon } from "./address-bar.ts";
import { type Form, fieldId } from "./Fields.tsx";
import { contextOf, storedText } from "./texts.ts";

/** What a form is worth: something to show, or what is wrong with it. */
export interface Outcome<Good> {
  readonly good?: Good | undefined;
  readonly problems: readonly InputError[];
}

interface Options<Good> {
  /** Names the form in addresses and in the page. */
  readonly instance: string;
  readonly inputs: Inputs;
  /** All values of the form, from those the address holds; with none, what the server rendered. Must stay the same function. */
  readonly first: (held: Raw) => Raw;
  readonly catalogue: Catalogue;
  /** Must be the same function from one rendering to the next. */
  readonly compute: (raw: Raw) => Outcome<Good>;
  /** Cautions to stand at fields whose values can be used. */
  readonly fieldCautions?: (good: Good, view: LengthView, language: Language) => ReadonlyMap<string, readonly string[]>;
}

export interface FormState<Good> {
  readonly raw: Raw;
  readonly view: LengthView;
  /** `[key, text]` of everything that belongs into the address: values that are not at their defaults, and what is fixed. */
  readonly parts: readonly [string, string][];
  readonly form: Form;
  /** What the address fixes. */
  readonly fixed: Fixed;
  /** Keys of fixed values that were to be changed a moment ago and were not. */
  readonly refused: readonly string[];
  /** The last outcome that could be shown; of earlier values while `stale`. */
  readonly good: Good | undefined;
  readonly problems: readonly InputError[];
  readonly stale: boolean;
  change(next: (before: Raw) => Raw): void;
  /** Forgets what the address holds for this form and the form does not have. */
  leaveOutUnknown(): void;
  /**
   * Puts other values in place of all that are not fixed; the back button brings the old ones back.
   * @param otherwise - what the address holds of this form when all are at their defaults
   */
  replaceBy(next: Raw, otherwise?: readonly [string, string][]): void;
}

/** How long after a stroke a value that cannot be used is left in peace: `3/` is on its way to `3/64`. */
const patience = 500;

/** An error in one row of a list belongs to the same cell after rows were moved, so fields are named by their place. */
function withCell(rows: readonly RawRow[], field: string, text: string): RawRow[] {
  const [, index, column] = field.split(".");
  return rows.map((row, at) => (String(at) === index && column !== undefined ? { ...row, [column]: text } : row));
}

function rowsOf(before: Raw, key: string, input: ListInput): readonly RawRow[] {
  const rows = before[key];
  return Array.isArray(rows) ? rows : input.default;
}

function materialOf(inputs: Inputs, raw: Raw): string {
  for (const [key, input] of Object.entries(inputs)) {
    const typed = raw[key];
    if (input.kind === "material") return typeof typed === "string" ? typed : input.default;
  }
  return "";
}

/** Every input at its default, so that one that is left out compares like one that is there. */
const defaultsOf = (inputs: Inputs): Raw =>
  Object.fromEntries(Object.entries(inputs).map(([key, input]) => [key, input.default]));

const sameText = (a: Raw[string], b: Raw[string]) => JSON.stringify(a) === JSON.stringify(b);

const noCautions: ReadonlyMap<string, readonly string[]> = new Map();

/**
 * A form whose state is the address: rendered from its start values, then whatever the address holds, then what is typed.
 * Values that cannot be used stay in the form and in the address, and the last outcome that could be shown stays beside them.
 */
export function useForm<Good>(options: Options<Good>): FormState<Good> {
  const { instance, inputs, first, catalogue, compute } = options;
  const language = useLanguage();
  const [raw, setRaw] = useState<Raw>(() => first({}));
  const [view, setView] = useState<LengthView>("mm");
  const [fixed, setFixed] = useState<Fixed>(nothingFixed);
  const [refused, setRefused] = useState<readonly string[]>([]);
  const [draft, setDraft] = useState<Form["draft"]>();
  const [typing, setTyping] = useState(false);
  const [live, setLive] = useState(false);
  const timer = useRef<ReturnType<typeof setTimeout>>();
  const focusNext = useRef("");
  const edited = useRef(false);

  const parts = addressParts(inputs, raw, fixed);
  const query = queryText(parts);
  const written = useRef("");
  written.current = query;

  const outcome = useMemo(() => compute(raw), [compute, raw]);
  const settled = useRef(outcome);
  if (!typing || outcome.problems.length === 0) settled.current = outcome;
  const { problems } = settled.current;
  const lastGood = useRef<Good>();
  if (outcome.good !== undefined) lastGood.current = outcome.good;
  const stale = problems.length > 0;

  useLayoutEffect(() => {
    const read = (kept: readonly string[] = []) => {
      const parameters = addressParameters();
      const given = first(rawFromAddress(instance, inputs, parameters));
      const held = fixedFromAddress(instance, inputs, parameters);
      const own = `${instance}.`;
      setRefused(kept.flatMap((name) => (name.startsWith(own) ? [name.slice(own.length)] : [])));
      if (queryText(addressParts(inputs, given, held)) === written.current && Object.keys(given).every((key) => key in inputs))
        return;
      setFixed(held);
      // Answers to what stood here before are not the last good ones of these values.
      lastGood.current = undefined;
      setDraft(undefined);
      setTyping(false);
      setRaw(given);
    };
    read();
    setView(unitsView());
    setLive(true);
    const leave = [watchAddress(read), watchUnits(() => setView(unitsView()))];
    return () => {
      for (const stop of leave) stop();
    };
  }, [instance, inputs, first]);

  // The query is the parts as one text, which can be compared.
  useLayoutEffect(() => {
    if (edited.current) writeSoon(instance, parts);
  }, [instance, query]);

  useLayoutEffect(() => {
    if (focusNext.current === "") return;
    document.getElementById(focusNext.current)?.focus();
    focusNext.current = "";
  });

  const context = contextOf(inputs, raw, catalogue);
  /** The values that are fixed and would have been changed: they stay, and the form says so. */
  const refusedOf = (next: Raw, before: Raw) => fixed.keys.filter((key) => !sameText(next[key], before[key]));
  const latest = useRef(raw);
  latest.current = raw;
  const change = (next: (before: Raw) => Raw) => {
    edited.current = true;
    const before = latest.current;
    const wanted = next(before);
    latest.current = withFixed(wanted, before, fixed);
    setRaw(latest.current);
    setRefused(refusedOf(wanted, before));
  };
  const replaceBy = (next: Raw, otherwise: readonly [string, string][] = []) => {
    const kept = addressParts(inputs, withFixed(next, raw, fixed), fixed);
    replaceParameters(instance, ownedParts(instance, kept.length > 0 ? kept : otherwise));
    setRefused(refusedOf({ ...defaultsOf(inputs), ...next }, { ...defaultsOf(inputs), ...raw }));
  };
  const leaveOutUnknown = () => {
    setFixed({ ...fixed, unknown: [] });
    change((before) => Object.fromEntries(Object.entries(before).filter(([key]) => Object.hasOwn(inputs, key))));
  };
  const firstColumn = (input: ListInput) => Object.keys(input.columns)[0] ?? "";
  const good = lastGood.current;

  const form: Form = {
    instance,
    catalogue,
    view,
    context,
    raw,
    fixed,
    live,
    material: materialOf(inputs, raw),
    draft,
    problems: new Map(problems.map((problem) => [problem.field, language.say(problem.phrase, view)])),
    cautions: (!stale && good !== undefined && options.fieldCautions?.(good, view, language)) || noCautions,
    type(field, input, text) {
      const stored = input.kind === "quantity" ? storedText(text, input.quantity, view, context, language) : text;
      if (input.kind === "quantity" || input.kind === "text") {
        setDraft({ field, text });
        setTyping(true);
        clearTimeout(timer.current);
        timer.current = setTimeout(() => setTyping(false), patience);
      }
      change((before) => {
        const [key = ""] = field.split(".");
        const list = inputs[key];
        return { ...before, [key]: list?.kind === "list" ? withCell(rowsOf(before, key, list), field, stored) : stored };
      });
    },
    leave() {
      setDraft(undefined);
      setTyping(false);
    },
    addRow(key, input) {
      change((before) => {
        const rows = rowsOf(before, key, input);
        focusNext.current = fieldId(instance, `${key}.${rows.length}.${firstColumn(input)}`);
        const empty = Object.entries(input.columns).map(([name, cell]) => [name, ("default" in cell && cell.default) || ""]);
        return { ...before, [key]: [...rows, Object.fromEntries(empty)] };
      });
    },
    removeRow(key, input, index) {
      change((before) => {
        const after = rowsOf(before, key, input).filter((_, at) => at !== index);
        const next = Math.min(index, after.length - 1);
        focusNext.current =
          after.length === 0
            ? `${fieldId(instance, key)}-add`
            : after.length > input.minRows
              ? `${fieldId(instance, `${key}.${next}`)}-remove`
              : fieldId(instance, `${key}.${next}.${firstColumn(input)}`);
        return { ...before, [key]: after };
      });
    },
  };
  return { raw, view, parts, form, fixed, refused, good, problems, stale, change, leaveOutUnknown, replaceBy };
}
