import type { ComponentType } from "preact";
import { useEffect, useRef, useState } from "preact/hooks";
import type { Catalogue, Caution } from "../../lib/catalogue.ts";
import type { Raw } from "../../lib/inputs.ts";
import { type LengthView, lengthViews } from "../../lib/quantity/format.ts";
import { type MachineId, machineCautions, machineIds } from "../../lib/shop/machine-cautions.ts";
import { LanguageContext, useTexts } from "../../texts/context.ts";
import { display } from "../../texts/en/display.ts";
import { lengths } from "../../texts/en/lengths.ts";
import { english } from "../../texts/english.ts";
import type { Language } from "../../texts/language.ts";
import type { CalculateProps } from "./Calculate.tsx";
import { Cautions } from "./Cautions.tsx";
import type { Idle } from "./idle.ts";
import { watchIdle } from "./idle.ts";
import { machinesOf } from "./machines.ts";
import { Picture } from "./Picture.tsx";
import { SettingsForm } from "./SettingsForm.tsx";
import { idleTimes, type Settings } from "./settings.ts";
import { Choice } from "./switches.tsx";

export type Cautioned = Readonly<Record<string, Pick<Caution, "title" | "text">>>;

/** What needs the catalogue, and comes when it has been fetched. */
export interface Facts {
  readonly catalogue: Catalogue;
  /** Day of this device's changes to the shop, or that they cannot be used. */
  readonly changed?: string | undefined;
  readonly unusable?: boolean | undefined;
  readonly live: typeof import("./live.tsx");
}

/** What the page brings along. */
export interface Given {
  /** Machines offered. */
  readonly offered: readonly MachineId[];
  readonly cautions: Cautioned;
  /** Pages of the calculators there are in the language of this page; left out where there are all. */
  readonly pages?: Readonly<Partial<Record<MachineId, string>>>;
  /** This page in other languages. */
  readonly others: readonly { readonly code: string; readonly address: string; readonly name: string }[];
}

export interface DisplayProps {
  readonly language: Language;
  readonly given: Given;
  readonly settings: Settings;
  readonly facts?: Facts | undefined;
  /** Something is wrong with what was set by the address. */
  readonly refused?: readonly string[];
  /** Fetches the calculator. */
  readonly loadCalculate?: () => Promise<ComponentType<CalculateProps>>;
  readonly keep?: (settings: Settings) => void;
  /** Called whenever nothing is typed that a new version of the page could lose. */
  readonly atRest?: () => void;
}

type Tab = keyof typeof display.tabs;
type View = { readonly at: "start" } | { readonly at: "settings" } | { readonly at: MachineId; readonly tab: Tab };

const start: View = { at: "start" };
const isMachine = (view: View): view is Extract<View, { tab: Tab }> => "tab" in view;

/** How long the mark is held for the settings [ms]. */
const holdFor = 3000;

function Mark({ open }: { readonly open: () => void }) {
  const texts = useTexts(display);
  const timer = useRef<ReturnType<typeof setTimeout>>();
  const hold = () => {
    clearTimeout(timer.current);
    timer.current = setTimeout(open, holdFor);
  };
  const release = () => clearTimeout(timer.current);
  useEffect(() => release, []);
  return (
    <button
      type="button"
      class="mark"
      aria-label={texts.settingsHold}
      onPointerDown={hold}
      onPointerUp={release}
      onPointerLeave={release}
      onPointerCancel={release}
      onKeyDown={({ key, repeat }) => (key === "Enter" || key === " ") && !repeat && hold()}
      onKeyUp={release}
      onBlur={release}
    >
      <Picture id="mark" />
    </button>
  );
}

/** The whole screen in one language: where one stands, then its limits, cautions and number; nothing leads out of it. */
export function Display({ language, ...props }: DisplayProps) {
  return (
    <LanguageContext.Provider value={language}>
      <Screen {...props} />
    </LanguageContext.Provider>
  );
}

function Screen(props: Omit<DisplayProps, "language">) {
  const texts = useTexts(display);
  const { views } = useTexts(lengths);
  const { given, settings, facts, refused = [], loadCalculate, keep, atRest } = props;
  const { cautions, pages, others } = given;
  const offered = facts ? machinesOf(facts.catalogue.shop) : given.offered;
  const [view, setView] = useState<View>(start);
  const [units, setUnits] = useState<LengthView>(settings.units);
  const [typed, setTyped] = useState<Readonly<Partial<Record<MachineId, Raw>>>>({});
  const [soon, setSoon] = useState(false);
  const [card, setCard] = useState<number>();
  const [Calculate, setCalculate] = useState<{ readonly one: ComponentType<CalculateProps> }>();
  const [failed, setFailed] = useState(false);
  const heading = useRef<HTMLHeadingElement>(null);
  const idle = useRef<Idle>();
  const now = useRef({ settings, atRest, facts });
  now.current = { settings, atRest, facts };

  useEffect(() => {
    const forget = () => {
      setSoon(false);
      setTyped({});
      setUnits(now.current.settings.units);
      setFailed(false);
      setView(start);
      scrollTo(0, 0);
      now.current.atRest?.();
    };
    const watch = watchIdle(idleTimes(now.current.settings), { warn: setSoon, forget, rest: setCard });
    idle.current = watch;
    const touched = (event: Event) => {
      if (!watch.isResting() || !now.current.facts) {
        watch.touch();
        return;
      }
      // The first touch only wakes the screen: what lies below is not pressed by somebody who cannot see it yet.
      if (event.type === "pointerdown" || event.type === "pointermove") return;
      event.preventDefault();
      event.stopPropagation();
      watch.touch();
    };
    const noMenu = (event: Event) => {
      event.preventDefault();
      touched(event);
    };
    const kinds = ["pointerdown", "click", "keydown", "wheel"] as const;
    for (const kind of kinds) document.addEventListener(kind, touched, { capture: true, passive: false });
    document.addEventListener("contextmenu", noMenu, true);
    return () => {
      watch.stop();
      for (const kind of kinds) document.removeEventListener(kind, touched, true);
      document.removeEventListener("contextmenu", noMenu, true);
    };
  }, []);

  useEffect(() => setUnits(settings.units), [settings.units]);
  const place = isMachine(view) ? `${view.at} ${view.tab}` : view.at;
  const first = useRef(true);
  useEffect(() => {
    if (!first.current) heading.current?.focus({ preventScroll: true });
    first.current = false;
  }, [place]);

  const wantsNumber = isMachine(view) && view.tab === "number";
  useEffect(() => {
    if (!wantsNumber || Calculate || !loadCalculate) return;
    setFailed(false);
    loadCalculate().then(
      (one) => setCalculate({ one }),
      () => setFailed(true),
    );
  }, [wantsNumber, Calculate, loadCalculate]);

  const toStart = () => {
    setTyped({});
    setUnits(settings.units);
    setView(start);
  };

  if (card !== undefined && facts) {
    const { Rest } = facts.live;
    return <Rest card={card} catalogue={facts.catalogue} cautions={cautions} view={settings.units} />;
  }
  if (view.at === "settings")
    return (
      <div class="screen">
        <header class="top">
          <h1 ref={heading} tabIndex={-1}>
            {texts.settings}
          </h1>
        </header>
        <SettingsForm
          settings={settings}
          change={(next) => {
            keep?.(next);
            idle.current?.change(idleTimes(next));
          }}
          done={toStart}
        />
      </div>
    );
  if (!isMachine(view))
    return (
      <div class="screen">
        <header class="top">
          <Mark open={() => setView({ at: "settings" })} />
          <h1 ref={heading} tabIndex={-1}>
            {texts.ask}
          </h1>
          {others.map(({ code, address, name }) => (
            <button key={code} type="button" class="option language" lang={code} onClick={() => location.assign(address)}>
              {name}
            </button>
          ))}
        </header>
        {refused.length > 0 && <p class="note wrong">{texts.refused(refused.join(", "))}</p>}
        <ul class="places">
          {machineIds
            .filter((id) => offered.includes(id))
            .map((id) => (
              <li key={id}>
                <button type="button" class="place" onClick={() => setView({ at: id, tab: "limits" })}>
                  <Picture id={id} />
                  <span>{texts.machines[id]}</span>
                </button>
              </li>
            ))}
        </ul>
      </div>
    );

  const { at, tab } = view;
  const nextUnits = lengthViews[(lengthViews.indexOf(units) + 1) % lengthViews.length] ?? "mm";
  const own = machineCautions[at].flatMap((id) => cautions[id] ?? []);
  const [worst] = own;
  const inEnglish = pages !== undefined && pages[at] === undefined;
  const calculator = Calculate && facts && (
    <Calculate.one
      key={at}
      id={at}
      catalogue={facts.catalogue}
      view={units}
      site={settings.site}
      page={pages?.[at]}
      raw={typed[at]}
      change={(next) => setTyped((before) => ({ ...before, [at]: next }))}
    />
  );
  return (
    <div class="screen">
      <header class="top">
        <button type="button" class="out" aria-label={texts.startLong} onClick={toStart}>
          {texts.start}
        </button>
        <h1 ref={heading} tabIndex={-1}>
          {texts.machines[at]}
        </h1>
        <Choice name={texts.tabsName} options={texts.tabs} chosen={tab} choose={(next) => setView({ at, tab: next })} />
        <button
          type="button"
          class="option units"
          aria-label={texts.unitsNow(views[units].short, views[units].long, views[nextUnits].long)}
          onClick={() => setUnits(nextUnits)}
        >
          {views[units].short}
        </button>
      </header>
      {tab === "limits" &&
        (facts ? (
          <facts.live.Limits
            id={at}
            facts={facts}
            view={units}
            warning={worst?.title ?? ""}
            toCautions={() => setView({ at, tab: "cautions" })}
          />
        ) : (
          <p class="note">{texts.loading}</p>
        ))}
      {tab === "cautions" && <Cautions key={at} cautions={own} />}
      {tab === "number" &&
        (calculator && inEnglish ? (
          <LanguageContext.Provider value={english}>
            <p class="note">{texts.inEnglish}</p>
            <div class="in-english" lang="en">
              {calculator}
            </div>
          </LanguageContext.Provider>
        ) : calculator ? (
          calculator
        ) : (
          <p class="note">{failed ? texts.failed : texts.loading}</p>
        ))}
      {soon && (
        <p class="soon" role="status">
          {texts.soon}
        </p>
      )}
    </div>
  );
}
