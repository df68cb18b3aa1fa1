import type { ComponentChildren } from "preact";
import type { Catalogue } from "../../lib/catalogue.ts";
import type { Check } from "../../lib/part/check.ts";
import type { Readings } from "../../lib/part/scribe.ts";
import { formatNumber, formatQuantity, type LengthView, lengthViews } from "../../lib/quantity/format.ts";
import { type Phrase, phraseText } from "../../lib/quantity/phrase.ts";
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

const seenWords = { read: "", memory: " (from memory)", practice: "" } as const;

type Shown = Pick<SheetProps, "view" | "words">;

function CheckList({ checks, view, words }: { checks: readonly Check[] } & Shown) {
  return (
    <ul class="checks">
      {checks.map((check) => (
        <li key={check.label + check.rule} class={check.ok ? "holds" : "broken"}>
          <strong>{check.label}</strong>{" "}
          <span class="check-numbers">
            {formatQuantity(check.value, check.quantity, view, "setting")}, {check.side === "least" ? "at least" : "at most"}{" "}
            {formatQuantity(check.limit, check.quantity, view, "setting")}: {check.ok ? "holds" : "does not hold"}.
          </span>{" "}
          <span class="check-why">
            {phraseText(check.why, view)} <cite>{words.titles[check.source] ?? check.source}</cite>
            {seenWords[check.seen]}
          </span>
        </li>
      ))}
    </ul>
  );
}

/** Whether all checks hold, in one line. */
export function Verdict({ checks }: { checks: readonly Check[] }) {
  const broken = checks.filter(({ ok }) => !ok);
  return (
    <p class={broken.length === 0 ? "plan-verdict" : "plan-verdict is-broken"}>
      {broken.length === 0
        ? `All ${checks.length} checks hold.`
        : `${broken.length} of ${checks.length} checks do not hold: ${broken.map(({ label }) => label.toLowerCase()).join("; ")}.`}
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
  const broken = checks.filter(({ ok }) => !ok);
  const held = checks.length - broken.length;
  return (
    <section class="plan-checks">
      <h3>Checks</h3>
      <p class="quiet">Nothing is adjusted for you: a check that does not hold is yours to decide.</p>
      {broken.length > 0 && <CheckList checks={broken} view={view} words={words} />}
      <details>
        <summary>
          {held} {held === 1 ? "check holds" : "checks hold"}
        </summary>
        <CheckList checks={checks.filter(({ ok }) => ok)} view={view} words={words} />
      </details>
    </section>
  );
}

export function Steps({ steps, view }: { steps: readonly Phrase[]; view: LengthView }) {
  return (
    <section class="plan-steps">
      <h3>In this order</h3>
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
  return (
    <section class="plan-cautions">
      <h3>
        Before you start<span class="only-on-paper">: read each on the safety page, then tick it</span>
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

const readingHeads = ["mm", "inch", "nearest 1/64 in (off by mm)"] as const;

/** Columns of a scribe list for one setting in all views; on paper the one that is chosen is enough. */
export const settingColumns = (view: LengthView) => ({
  heads: readingHeads,
  offPaper: readingHeads.filter((_, index) => index !== lengthViews.indexOf(view)),
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
