import type { ComponentChildren } from "preact";
import type { Catalogue } from "../../lib/catalogue.ts";
import type { Check } from "../../lib/part/check.ts";
import type { Readings } from "../../lib/part/scribe.ts";
import { formatNumber, formatQuantity, type LengthView, lengthViews } from "../../lib/quantity/format.ts";
import { type Phrase, phraseText } from "../../lib/quantity/phrase.ts";
import { useTexts } from "../../texts/context.ts";
import { planSheet } from "../../texts/en/plan-sheet.ts";
import { box } from "./SheetTable.tsx";
import type { PlanWords } from "./words.ts";

/** What the plans of all kinds of parts have in common on their sheet. */
export interface SheetProps {
  readonly view: LengthView;
  readonly markingMethods: Catalogue["markingMethods"];
  readonly words: PlanWords;
  /** The query of the plan's address. */
  readonly query: string;
}

type Shown = Pick<SheetProps, "view" | "words">;

function CheckList({ checks, view, words }: { checks: readonly Check[] } & Shown) {
  const texts = useTexts(planSheet);
  return (
    <ul class="checks">
      {checks.map((check) => (
        <li key={check.label + check.rule} class={check.ok ? "holds" : "broken"}>
          <strong>{check.label}</strong>{" "}
          <span class="check-numbers">
            {texts.check(
              formatQuantity(check.value, check.quantity, view, "setting"),
              check.side === "least",
              formatQuantity(check.limit, check.quantity, view, "setting"),
              check.ok,
            )}
          </span>{" "}
          <span class="check-why">
            {phraseText(check.why, view)} <cite>{words.titles[check.source] ?? check.source}</cite>
            {texts.seen[check.seen]}
          </span>
        </li>
      ))}
    </ul>
  );
}

/** Whether all checks hold, in one line. */
export function Verdict({ checks }: { checks: readonly Check[] }) {
  const texts = useTexts(planSheet);
  const broken = checks.filter(({ ok }) => !ok);
  return (
    <p class={broken.length === 0 ? "plan-verdict" : "plan-verdict is-broken"}>
      {broken.length === 0
        ? texts.allHold(checks.length)
        : texts.someBroken(
            broken.length,
            checks.length,
            broken.map(({ label }) => label),
          )}
    </p>
  );
}

export function Remarks({
  remarks,
  view,
}: {
  remarks: readonly { readonly level: "note" | "caution"; readonly phrase: Phrase }[];
  view: LengthView;
}) {
  if (remarks.length === 0) return null;
  return (
    <ul class="remarks">
      {remarks.map(({ level, phrase }) => (
        <li key={phraseText(phrase)} class={level}>
          {phraseText(phrase, view)}{" "}
        </li>
      ))}
    </ul>
  );
}

export function Checks({ checks, view, words }: { checks: readonly Check[] } & Shown) {
  const texts = useTexts(planSheet);
  const broken = checks.filter(({ ok }) => !ok);
  const held = checks.length - broken.length;
  return (
    <section class="plan-checks">
      <h3>{texts.checks}</h3>
      <p class="quiet">{texts.nothingAdjusted}</p>
      {broken.length > 0 && <CheckList checks={broken} view={view} words={words} />}
      <details>
        <summary>{texts.held(held)}</summary>
        <CheckList checks={checks.filter(({ ok }) => ok)} view={view} words={words} />
      </details>
    </section>
  );
}

export function Steps({ steps, view }: { steps: readonly Phrase[]; view: LengthView }) {
  const texts = useTexts(planSheet);
  return (
    <section class="plan-steps">
      <h3>{texts.steps}</h3>
      <ol>
        {steps.map((step) => (
          <li key={phraseText(step)}>
            {box} {phraseText(step, view)}
          </li>
        ))}
      </ol>
    </section>
  );
}

export function BeforeYouStart({ cautions, words }: { cautions: readonly string[]; words: PlanWords }) {
  const texts = useTexts(planSheet);
  return (
    <section class="plan-cautions">
      <h3>
        {texts.beforeYouStart}
        <span class="only-on-paper">{texts.tickEach}</span>
      </h3>
      <ul>
        {cautions.map((id) => (
          <li key={id}>
            {box} <strong>{words.cautions[id]?.title}.</strong> <span class="caution-text">{words.cautions[id]?.text}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** Columns of a scribe list for one setting in all views; on paper the one that is chosen is enough. */
export const settingColumns = ({ scribe }: typeof planSheet, view: LengthView) => ({
  heads: scribe.readings,
  offPaper: scribe.readings.filter((_, index) => index !== lengthViews.indexOf(view)),
  cells: ({ distance, inch, fraction, fractionError }: Readings): readonly ComponentChildren[] => [
    <strong key="mm">{formatNumber(distance, 2)}</strong>,
    formatNumber(inch, 3),
    `${fraction} (${fractionError < 0 ? "−" : "+"}${formatNumber(Math.abs(fractionError), 2)})`,
  ],
});

/** One entry of the title block. */
export function Entry({ name, children, paper }: { name: string; children: ComponentChildren; paper?: boolean }) {
  return (
    <div class={paper ? "only-on-paper" : undefined}>
      <dt>{name}</dt>
      <dd>{children}</dd>
    </div>
  );
}
