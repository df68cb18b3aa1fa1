import calculators from "virtual:calculators";
import { useEffect, useMemo, useRef, useState } from "preact/hooks";
import type { Catalogue } from "../../lib/catalogue.ts";
import type { Raw } from "../../lib/inputs.ts";
import type { LengthView } from "../../lib/quantity/format.ts";
import type { MachineId } from "../../lib/shop/machine-cautions.ts";
import { type Answer, runWorksheet, type Worksheet } from "../../lib/worksheet.ts";
import { useLanguage, useTexts } from "../../texts/context.ts";
import { display } from "../../texts/en/display.ts";
import { lookOf } from "../calculator/Answer.tsx";
import { contextOf, fieldLook, rangeText, storedText } from "../calculator/texts.ts";
import { inputOf, otherInputs, textOf, withText } from "./fields.ts";
import { machines } from "./machines.ts";
import { Pad } from "./Pad.tsx";
import { Phone } from "./Phone.tsx";
import { Picker } from "./Picker.tsx";
import { keyOfKeyboard, type PadKey, press } from "./pad.ts";
import { phoneAddress } from "./phone.ts";
import { shortName } from "./words.ts";

export interface CalculateProps {
  readonly id: MachineId;
  readonly catalogue: Catalogue;
  readonly view: LengthView;
  /** Address of the handbook for phones; empty: where this page came from. */
  readonly site: string;
  /** Path of the calculator in the language of the screen; its own page where left out. */
  readonly page: string | undefined;
  /** What was typed here since the screen was at its start. */
  readonly raw: Raw | undefined;
  change(raw: Raw): void;
}

/** How long after a key a value that cannot be used yet is left in peace [ms]: gloves are slow. */
const patience = 1200;

/** The calculator of one machine, fetched when it is asked for. */
export function Calculate(props: CalculateProps) {
  const texts = useTexts(display);
  const { id } = props;
  const [sheet, setSheet] = useState<Worksheet>();
  const [failed, setFailed] = useState(false);
  useEffect(() => {
    let wanted = true;
    calculators[machines[id].sheet]?.().then(
      (loaded) => wanted && setSheet(loaded.sheet),
      () => wanted && setFailed(true),
    );
    return () => {
      wanted = false;
    };
  }, [id]);
  if (!sheet) return <p class="note">{failed ? texts.failed : texts.loading}</p>;
  return <Live {...props} sheet={sheet} />;
}

/** An answer's number in so many letters is set smaller. */
const longest = 9;

function Answers({
  shows,
  sheet,
  answer,
  view,
}: {
  shows: readonly string[];
  sheet: Worksheet;
  answer: Answer;
  view: LengthView;
}) {
  const language = useLanguage();
  const texts = useTexts(display);
  return (
    <dl class="answers">
      {shows.map((key) => {
        const output = sheet.outputs[key];
        if (!output) throw new Error(`${sheet.id} has no output ${key}`);
        const { number, unit, off } = lookOf({ sheet, answer, view }, output, answer.outputs[key], language);
        return (
          <div key={key} class={output.kind === "text" || number.length > longest ? "long" : undefined}>
            <dt>{language.say(output.label)}</dt>
            <dd>
              {number}
              {unit && <span class="answer-unit">{unit === "°" ? unit : ` ${unit}`}</span>}
              {off && <small>{texts.fractionOff(off.slice(1), off.startsWith("+"))}</small>}
            </dd>
          </div>
        );
      })}
    </dl>
  );
}

function Live({ id, catalogue, view, site, page, raw: typed, change, sheet }: CalculateProps & { readonly sheet: Worksheet }) {
  const language = useLanguage();
  const { say } = language;
  const texts = useTexts(display);
  const { fields, shows, start } = machines[id];
  const { inputs } = sheet;
  const raw: Raw = useMemo(() => typed ?? start?.(catalogue.shop) ?? {}, [typed, start, catalogue]);
  const numbers = fields.filter((field) => inputOf(inputs, field).kind === "quantity");
  const [at, setAt] = useState(numbers[0] ?? "");
  const [draft, setDraft] = useState<string>();
  const [fresh, setFresh] = useState(true);
  const [typing, setTyping] = useState(false);
  const [picking, setPicking] = useState<string>();
  const [phone, setPhone] = useState(false);
  const timer = useRef<ReturnType<typeof setTimeout>>();
  const boxes = useRef(new Map<string, HTMLInputElement>());

  const context = contextOf(inputs, raw, catalogue);
  const { answer, problems } = useMemo(() => runWorksheet(sheet, raw, catalogue), [sheet, raw, catalogue]);
  const lookAt = (field: string) => {
    const input = inputOf(inputs, field);
    if (input.kind !== "quantity") throw new Error(`${field} is no quantity`);
    return fieldLook(textOf(inputs, raw, field), field === at ? draft : undefined, input.quantity, view, context, language);
  };
  const labelOf = (field: string) => {
    const [, row] = field.split(".");
    return row === undefined ? say(inputOf(inputs, field).label) : (texts.legs[Number(row)] ?? field);
  };

  const select = (field: string) => {
    setAt(field);
    setDraft(undefined);
    setFresh(true);
    setTyping(false);
  };
  const put = (text: string) => {
    const input = inputOf(inputs, at);
    if (input.kind !== "quantity") return;
    setDraft(text);
    setFresh(false);
    setTyping(true);
    clearTimeout(timer.current);
    timer.current = setTimeout(() => setTyping(false), patience);
    change(withText(inputs, raw, at, storedText(text, input.quantity, view, context, language)));
  };
  const pressed = (key: PadKey) => {
    if (at === "") return;
    // The pad writes decimal points.
    const next = press({ text: lookAt(at).text.replace(",", "."), fresh }, key);
    if (!next.fresh) put(next.text.replace(".", texts.point));
  };
  const next = () => {
    const field = numbers[(numbers.indexOf(at) + 1) % numbers.length];
    if (field === undefined) return;
    select(field);
    boxes.current.get(field)?.focus();
  };

  // Another view shows the same value in its own digits: what was typed stays what it is.
  useEffect(() => setDraft(undefined), [view]);
  useEffect(() => () => clearTimeout(timer.current), []);

  const latest = useRef({ pressed, picking, phone });
  latest.current = { pressed, picking, phone };
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      const now = latest.current;
      if (event.key === "Escape") {
        setPicking(undefined);
        setPhone(false);
      }
      if (event.ctrlKey || event.metaKey || event.altKey || now.picking !== undefined || now.phone) return;
      // In a field the browser itself types.
      if (event.target instanceof HTMLInputElement) return;
      const key = keyOfKeyboard(event.key);
      if (!key) return;
      event.preventDefault();
      now.pressed(key);
    };
    document.addEventListener("keydown", onKey);
    return () => document.removeEventListener("keydown", onKey);
  }, []);

  const metals = Object.fromEntries(
    Object.values(catalogue.materials).map(({ id: metal, name }) => [metal, shortName(say(name))]),
  );
  const optionsOf = (field: string) => {
    const input = inputOf(inputs, field);
    return input.kind === "choice"
      ? Object.fromEntries(Object.entries(input.choices).map(([key, words]) => [key, say(words)]))
      : metals;
  };
  const pick = (field: string, key: string) => {
    change(withText(inputs, raw, field, key));
    setPicking(undefined);
  };

  if (phone) {
    const here = new URL(import.meta.env.BASE_URL, location.origin).href;
    return <Phone address={phoneAddress(site || here, page ? { ...sheet, page } : sheet, raw)} close={() => setPhone(false)} />;
  }
  if (picking !== undefined)
    return (
      <Picker
        title={texts.choose(labelOf(picking))}
        options={optionsOf(picking)}
        chosen={textOf(inputs, raw, picking)}
        pick={(key) => pick(picking, key)}
        close={() => setPicking(undefined)}
      />
    );

  const [problem] = problems;
  const selected = at === "" ? undefined : inputOf(inputs, at);
  const others = otherInputs(sheet, fields, raw).map((key) => {
    const input = inputOf(inputs, key);
    const text = textOf(inputs, raw, key);
    if (text === "") return `${say(input.label)} ${"whenEmpty" in input && input.whenEmpty ? say(input.whenEmpty) : ""}`;
    if (input.kind === "choice") return `${say(input.label)} ${say(input.choices[text] ?? text)}`;
    if (input.kind !== "quantity") return `${say(input.label)} ${text}`;
    const { text: digits, unit } = fieldLook(text, undefined, input.quantity, view, context, language);
    return `${say(input.label)} ${digits}${unit === "" || unit === "°" ? unit : ` ${unit}`}`;
  });
  return (
    <div class={`calculate${numbers.length > 0 ? "" : " unnumbered"}`}>
      <div class="sums">
        <div class="fields">
          {fields.map((field) => {
            const input = inputOf(inputs, field);
            const wrong = problem?.field === field && !typing;
            if (input.kind !== "quantity")
              return (
                <button key={field} type="button" class="field pick" onClick={() => setPicking(field)}>
                  <span class="field-label">{labelOf(field)}</span>
                  <span class="field-text">{optionsOf(field)[textOf(inputs, raw, field)]}</span>
                </button>
              );
            const look = lookAt(field);
            return (
              <label key={field} class={`field${field === at ? " chosen" : ""}${wrong ? " bad" : ""}`}>
                <span class="field-label">{labelOf(field)}</span>
                <span class="field-row">
                  <input
                    ref={(box) => {
                      if (box) boxes.current.set(field, box);
                      else boxes.current.delete(field);
                    }}
                    type="text"
                    inputMode="none"
                    autocomplete="off"
                    spellcheck={false}
                    maxLength={40}
                    size={6}
                    value={look.text}
                    aria-invalid={wrong}
                    onFocus={({ currentTarget }) => {
                      if (field !== at) select(field);
                      else setFresh(true);
                      currentTarget.select();
                    }}
                    onInput={({ currentTarget }) => put(currentTarget.value)}
                    onKeyDown={({ key }) => key === "Enter" && next()}
                  />
                  {look.unit && <span class="field-unit">{look.unit}</span>}
                </span>
                {look.note && <span class="field-note">{look.note}</span>}
              </label>
            );
          })}
        </div>
        <div class="outcome" aria-live="polite">
          {answer && <Answers shows={shows} sheet={sheet} answer={answer} view={view} />}
          {!answer &&
            (typing ? <p class="waiting">{texts.waiting}</p> : <p class="problem">{problem && say(problem.phrase, view)}</p>)}
        </div>
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keyboard */}
        <section class="remarks" tabIndex={0} aria-label={say(sheet.title)}>
          {answer?.remarks.map(({ level, phrase }) => (
            <p key={say(phrase, view)} class={level}>
              {level === "caution" && <strong>{texts.caution} </strong>}
              {say(phrase, view)}
            </p>
          ))}
          {others.length > 0 && (
            <p>
              {texts.atDefaults} {others.join("; ")}.
            </p>
          )}
          {selected?.kind === "quantity" && (
            <p>
              {labelOf(at)}: {rangeText(selected, view, language)}.
            </p>
          )}
        </section>
      </div>
      <div class="side">
        {numbers.length > 0 && (
          <Pad
            isLength={selected?.kind === "quantity" && selected.quantity === "length"}
            takesGauge={/thickness/i.test(at)}
            hasNext={numbers.length > 1}
            press={pressed}
            next={next}
          />
        )}
        <button type="button" class="key words to-phone" disabled={!answer} onClick={() => setPhone(true)}>
          {texts.phone}
        </button>
      </div>
    </div>
  );
}
