import type { ComponentType } from "preact";
import { useCallback, useLayoutEffect, useMemo, useState } from "preact/hooks";
import { fixedKey, queryText, rowsText } from "../../lib/address.ts";
import type { Catalogue } from "../../lib/catalogue.ts";
import type { Input, Inputs, Raw } from "../../lib/inputs.ts";
import type { LengthView } from "../../lib/quantity/format.ts";
import { type Answer, type Handoff, runWorksheet, type Worksheet } from "../../lib/worksheet.ts";
import { LanguageContext, useLanguage, useTexts } from "../../texts/context.ts";
import { calculator } from "../../texts/en/calculator.ts";
import type { Language } from "../../texts/language.ts";
import type { DrawingProps } from "../drawings/parts/Drawing.tsx";
import { LazyLinkPanel } from "../links/LazyLinkPanel.tsx";
import { ComparisonTable, MainAnswer, OtherAnswers, Remarks } from "./Answer.tsx";
import { flushAddress, goToParameters } from "./address-bar.ts";
import type { AfterProps } from "./after.ts";
import { CopyButton } from "./CopyButton.tsx";
import { Field, fieldId } from "./Fields.tsx";
import { Fold } from "./Fold.tsx";
import { Given } from "./Given.tsx";
import { Strays } from "./Strays.tsx";
import type { SourceTitles } from "./source-titles.ts";
import { type Outcome, useForm } from "./use-form.ts";
import { showWorking } from "./working.ts";

/** What the server puts into the page for the browser: small, and the same on both sides. */
export interface Setting {
  /** Names the calculator in addresses and in the page; the worksheet's id unless the page has two of a kind. */
  readonly instance: string;
  /** Values of this page, in place of the worksheet's defaults. */
  readonly start: Raw;
  /** Path the site is published under, `/` or `/name/`. */
  readonly base: string;
  /** Page of each calculator that answers are handed on to. */
  readonly pages: Readonly<Record<string, string>>;
}

export interface CalculatorProps extends Setting {
  readonly sheet: Worksheet;
  readonly catalogue: Catalogue;
  readonly titles: SourceTitles;
  readonly Drawing?: ComponentType<DrawingProps> | undefined;
  /** What may be done with the answer of this calculator alone. */
  readonly After?: ComponentType<AfterProps> | undefined;
  /** The worked formulas below the calculator, set at build; only in the browser. */
  readonly working?: Element | null;
}

/** A calculator in the language of its page. */
export function CalculatorIn({ language, ...props }: CalculatorProps & { readonly language: Language }) {
  return (
    <LanguageContext.Provider value={language}>
      <Calculator {...props} />
    </LanguageContext.Provider>
  );
}

interface Good {
  readonly answer: Answer;
  readonly values: unknown;
}

/** The inputs with the values of the page as their defaults: what is not at its default is what the address holds. */
export function startingAt(inputs: Inputs, start: Raw): Inputs {
  return Object.fromEntries(
    Object.entries(inputs).map(([key, input]) => [
      key,
      start[key] === undefined ? input : ({ ...input, default: start[key] } as Input),
    ]),
  );
}

/** Cautions about a field stand at that field; everything else stands below the answer. */
function fieldCautions({ answer }: Good, view: LengthView, language: Language): ReadonlyMap<string, readonly string[]> {
  const map = new Map<string, string[]>();
  for (const { level, field, phrase } of answer.remarks)
    if (field && level === "caution") map.set(field, [...(map.get(field) ?? []), language.say(phrase, view)]);
  return map;
}

function handoffParameters({ to, raw }: Handoff): [string, string][] {
  return Object.entries(raw).flatMap(([key, value]): [string, string][] => {
    if (value === undefined) return [];
    return [[`${to}.${key}`, typeof value === "string" ? value : rowsText(value, Object.keys(value[0] ?? {}))]];
  });
}

/** About how tall a calculator alone is in a column of a course page [px]. */
const frameHeight = 760;

const isOverride = (input: Input) => input.kind === "quantity" && input.override === true;

/** One calculator, made from its worksheet alone. Rendered at build with its start values, live afterwards. */
export function Calculator(props: CalculatorProps) {
  const { sheet, catalogue, titles, Drawing, After, working, instance, start, base, pages } = props;
  const language = useLanguage();
  const texts = useTexts(calculator);
  const inputs = useMemo(() => startingAt(sheet.inputs, start), [sheet, start]);
  const first = useCallback((held: Raw): Raw => ({ ...start, ...held }), [start]);
  const compute = useCallback(
    (raw: Raw): Outcome<Good> => {
      const { answer, values, problems } = runWorksheet(sheet, raw, catalogue);
      return { good: answer && { answer, values }, problems };
    },
    [sheet, catalogue],
  );
  const state = useForm<Good>({ instance, inputs, first, catalogue, compute, fieldCautions });
  const { raw, view, parts, form, fixed, refused, good, problems, stale, leaveOutUnknown, replaceBy } = state;

  /** Where the site is published: the server does not know it. */
  const [here, setHere] = useState({ origin: "", path: "", embedded: false });
  useLayoutEffect(() => {
    const { origin, pathname: path } = location;
    setHere({ origin, path, embedded: document.documentElement.classList.contains("embedded") });
  }, []);

  useLayoutEffect(() => {
    if (!working) return;
    working.classList.toggle("stale", stale);
    if (good) showWorking(working, good.answer.working, language);
  }, [working, good, stale, language]);

  const isShown = (key: string) => {
    const rule = sheet.shownWhen?.[key];
    // A value that cannot be used must not hide.
    return !rule || rule(raw) || problems.some(({ field }) => field === key || field.startsWith(`${key}.`));
  };
  const shown = Object.entries(inputs).filter(([key]) => isShown(key));
  const overrides = shown.filter(([, input]) => isOverride(input));
  const overridden = overrides.some(([key]) => (raw[key] ?? "") !== "" || form.problems.has(key));
  const instead = problems.flatMap((problem) => problem.instead);
  const root = base.replace(/\/$/, "");
  const linked = { titles, sourcesPage: `${root}/sources/` };
  const linkHere = () => {
    flushAddress();
    return `${location.origin}${location.pathname}${location.search}#${instance}`;
  };

  return (
    <div class="calculator-body">
      <form class="fields" autocomplete="off" onSubmit={(event) => event.preventDefault()} noValidate>
        <Given
          form={form}
          fixed={fixed}
          refused={refused}
          inputs={inputs}
          ownPage={here.embedded ? undefined : `${here.path}#${instance}`}
        />
        <Strays form={form} fixed={fixed} inputs={inputs} leaveOutUnknown={leaveOutUnknown} />
        <div class="field-grid">
          {shown.map(([key, input]) => (isOverride(input) ? null : <Field key={key} form={form} field={key} input={input} />))}
        </div>
        {overrides.length > 0 && (
          <Fold class="overrides" summary={texts.otherMetalValues} open={overridden}>
            {() => (
              <div class="field-grid">
                {overrides.map(([key, input]) => (
                  <Field key={key} form={form} field={key} input={input} />
                ))}
              </div>
            )}
          </Fold>
        )}
      </form>

      <section class={`answer answer-head${stale ? " stale" : ""}`} aria-label={texts.answerOf(language.say(sheet.title))}>
        {stale && (
          <p class="stale-mark">
            {good ? texts.staleAnswer : texts.noAnswerYet} {texts.fieldsToMend(problems.length)}
          </p>
        )}
        {instead.length > 0 && (
          <p class="stale-mark not-on-paper">
            <Handoffs handoffs={instead} root={root} pages={pages} />
          </p>
        )}
        {good && <MainAnswer sheet={sheet} answer={good.answer} view={view} />}
      </section>
      {good && (
        <div class={`answer answer-rest${stale ? " stale" : ""}`}>
          {form.cautions.size > 0 && (
            <p class="caution-pointer">
              <strong>{texts.caution}</strong> {texts.cautionAt}{" "}
              {[...form.cautions.keys()].map((field, index) => (
                <span key={field}>
                  {index > 0 && ", "}
                  <a href={`#${fieldId(instance, field)}`}>{language.say(inputs[field.split(".")[0] ?? ""]?.label ?? field)}</a>
                </span>
              ))}
            </p>
          )}
          {Drawing && (
            <Drawing id={instance} values={good.values} outputs={good.answer.outputs} view={view} shop={catalogue.shop} />
          )}
          <OtherAnswers sheet={sheet} answer={good.answer} view={view} />
        </div>
      )}

      {good && !stale && (
        <div class="beside">
          <Remarks
            remarks={good.answer.remarks.filter(({ level, field }) => !(field && level === "caution"))}
            view={view}
            {...linked}
          />
          {good.answer.tables?.map((table) => (
            <ComparisonTable key={table.caption} table={table} view={view} {...linked} />
          ))}
        </div>
      )}

      <div class="actions not-on-paper">
        {good && !stale && (
          <Handoffs handoffs={sheet.handoffs?.(good.values as never, good.answer as never) ?? []} root={root} pages={pages} />
        )}
        <CopyButton text={linkHere}>{texts.copyLink}</CopyButton>
        {parts.some(([key]) => key !== fixedKey && !fixed.keys.includes(key)) && (
          <button type="button" onClick={() => replaceBy(start)}>
            {texts.startValues}
          </button>
        )}
        {After && good && !stale && (
          <After instance={instance} values={good.values} outputs={good.answer.outputs} catalogue={catalogue} root={root} />
        )}
        <LazyLinkPanel
          owner={instance}
          title={language.say(sheet.title)}
          inputs={inputs}
          shown={shown.map(([key]) => key)}
          raw={raw}
          fixed={fixed}
          root={root}
          embed={{
            owner: sheet.id,
            inputs: sheet.inputs,
            path: `${root}${language.path(`/embed/${sheet.id}/`)}`,
            height: frameHeight,
          }}
          hash={here.embedded ? "" : `#${instance}`}
          sheet={sheet}
        />
      </div>
    </div>
  );
}

/** Links that carry values on: real addresses; on this page the values are put in without loading it again. */
function Handoffs({
  handoffs,
  root,
  pages,
}: {
  handoffs: readonly Handoff[];
  root: string;
  pages: Readonly<Record<string, string>>;
}) {
  const language = useLanguage();
  const texts = useTexts(calculator);
  return (
    <>
      {handoffs.map((handoff) => {
        const parameters = handoffParameters(handoff);
        const page = pages[handoff.to] ?? `/embed/${handoff.to}/`;
        const path = root + page;
        const abroad = language.code !== "en" && !page.startsWith(language.path("/"));
        // The plan is a page of its own, a calculator a place on its page.
        const hash = handoff.to === "plan" ? "" : `#${handoff.to}`;
        return (
          <a
            key={handoff.label}
            class="button first"
            href={`${path}?${queryText(parameters)}${hash}`}
            hreflang={abroad ? "en" : undefined}
            onClick={(event) => {
              const target = document.getElementById(handoff.to);
              if (location.pathname !== path || !target || event.ctrlKey || event.metaKey || event.shiftKey) return;
              event.preventDefault();
              goToParameters(parameters, hash);
              target.scrollIntoView();
            }}
          >
            {language.say(handoff.label)}
            {abroad && ` ${texts.inEnglish}`}
          </a>
        );
      })}
    </>
  );
}
