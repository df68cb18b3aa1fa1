import type { Catalogue } from "../../lib/catalogue.ts";
import type { LengthView } from "../../lib/quantity/format.ts";
import type { MachineId } from "../../lib/shop/machine-cautions.ts";
import { useLanguage, useTexts } from "../../texts/context.ts";
import { display } from "../../texts/en/display.ts";
import { cardsOf } from "./cards.ts";
import type { Cautioned, Facts } from "./Display.tsx";
import { type Limit, limitsOf, notesOf } from "./limits.ts";

/** What is shown from the catalogue: limits of a machine, and the cards of the screen at rest. */

function Lines({ lines }: { readonly lines: readonly Limit[] }) {
  const { digits } = useLanguage();
  return (
    <dl class="lines">
      {lines.map(({ label, value }) => (
        <div key={label}>
          <dt>{digits(label)}</dt>
          <dd>{digits(value)}</dd>
        </div>
      ))}
    </dl>
  );
}

interface LimitsProps {
  readonly id: MachineId;
  readonly facts: Facts;
  readonly view: LengthView;
  readonly warning: string;
  toCautions(): void;
}

export function Limits({ id, facts, view, warning, toCautions }: LimitsProps) {
  const language = useLanguage();
  const texts = useTexts(display);
  const { catalogue, changed, unusable } = facts;
  const notes = [
    ...notesOf(id, catalogue, language),
    ...(changed && id !== "marking" ? [texts.deviceShop(changed)] : []),
    ...(unusable && id !== "marking" ? [texts.deviceShopUnusable] : []),
  ];
  return (
    <div class="limits">
      <Lines lines={limitsOf(id, catalogue, view, language)} />
      <p class="note">{notes.join(" ")}</p>
      <button type="button" class="warning" onClick={toCautions}>
        {warning}
      </button>
    </div>
  );
}

/** Places a card wanders through, so that no line of the screen stays lit for hours. */
const places = 6;

interface RestProps {
  readonly card: number;
  readonly catalogue: Catalogue;
  readonly cautions: Cautioned;
  readonly view: LengthView;
}

export function Rest({ card, catalogue, cautions, view }: RestProps) {
  const language = useLanguage();
  const texts = useTexts(display);
  const cards = cardsOf(catalogue, cautions, view, language);
  const one = cards[card % cards.length];
  if (!one) return null;
  // Places and cards have no common round: the same card comes back somewhere else.
  const place = (card + Math.floor(card / cards.length)) % places;
  return (
    <div class={`rest rest-${place}`}>
      <article class={`card card-${one.kind}`} key={card}>
        <p class="card-from">{texts.fromHandbook}</p>
        <h1>{one.title}</h1>
        {one.lines.length > 0 && <Lines lines={one.lines} />}
        {one.text !== "" && <p class="card-text">{one.text}</p>}
        <button type="button" class="card-touch">
          {texts.touch}
        </button>
      </article>
    </div>
  );
}
