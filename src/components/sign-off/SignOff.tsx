import { useMemo, useState } from "preact/hooks";
import { formQuery } from "../../lib/address.ts";
import type { Catalogue } from "../../lib/catalogue.ts";
import type { Raw } from "../../lib/inputs.ts";
import { partInputs } from "../../lib/part/form.ts";
import type { BendOrder } from "../../lib/part/order/order.ts";
import { planFrom } from "../../lib/part/plan.ts";
import { type Signed, signOff as stationsOf } from "../../lib/part/sign-off.ts";
import { formatQuantity } from "../../lib/quantity/format.ts";
import { phraseText } from "../../lib/quantity/phrase.ts";
import { url } from "../../site/url.ts";
import { useTexts } from "../../texts/context.ts";
import { signOff } from "../../texts/en/sign-off.ts";
import { owner } from "../plan/last-plan.ts";
import { box, WriteHere } from "../plan/SheetTable.tsx";
import { useBendOrder } from "../plan/use-bend-order.ts";
import { useUnits } from "../use-units.ts";

export type AskedCautions = Readonly<Record<string, { readonly title: string; readonly text: string; readonly ask?: string }>>;

type Copy = keyof typeof signOff.copies;

interface Props {
  readonly catalogue: Catalogue;
  readonly cautions: AskedCautions;
  /** The part as its address says it. */
  readonly raw: Raw;
  readonly isExample: boolean;
  /** What is wrong with the address the page was opened with. */
  readonly damage?: string;
  /** Order of the bends of the example, found when the page was built. */
  readonly exampleOrder?: BendOrder | undefined;
}

/** The sheet that a supervisor signs: the machines of one plan, their cautions and what is asked there. */
export function SignOff({ catalogue, cautions, raw, isExample, damage = "", exampleOrder }: Props) {
  const texts = useTexts(signOff);
  const view = useUnits();
  const [copy, setCopy] = useState<Copy>("student");
  const { plan, rolled, problems } = useMemo(() => planFrom(raw, catalogue), [raw, catalogue]);
  const folded = useBendOrder(plan, catalogue, exampleOrder);
  const query = formQuery(owner, partInputs, raw);
  const back = (
    <a class="button" href={`${url("/plan/")}${query === "" ? "" : `?${query}`}`}>
      {texts.planLink}
    </a>
  );
  const signed: Signed | undefined = folded ? { plan: folded } : rolled && { rolled };
  if (!signed)
    return (
      <div>
        <p class="message" role="alert">
          {damage} {texts.noPlan} {problems[0]?.text(view)}
        </p>
        {back}
      </div>
    );

  const { part, shop, checks } = "plan" in signed ? signed.plan : signed.rolled;
  const broken = checks.filter(({ ok }) => !ok).length;
  // A caution is asked at the first machine that has it; the rating is asked about this sheet instead.
  const asked = new Set(["within-rating"]);
  const stations = stationsOf(signed, catalogue).map((station) => {
    const own = station.cautions.filter((id) => cautions[id]?.ask !== undefined && !asked.has(id));
    for (const id of own) asked.add(id);
    return { ...station, own };
  });
  const answerOr = (good: string) =>
    copy === "supervisor" ? (
      <p class="good-answer">
        <strong>{texts.goodAnswer}</strong> {good}
      </p>
    ) : (
      <p class="room" />
    );

  return (
    <div>
      <div class="sign-off-choice not-on-paper needs-script">
        {damage !== "" && (
          <p class="message" role="alert">
            {damage}
          </p>
        )}
        {isExample && <p>{texts.example}</p>}
        <fieldset>
          <legend>{texts.whichCopy}</legend>
          {(Object.keys(texts.copies) as Copy[]).map((id) => (
            <label key={id}>
              <input type="radio" name="copy" checked={copy === id} onChange={() => setCopy(id)} /> {texts.copies[id]}
            </label>
          ))}
        </fieldset>
        <p class="button-row">
          <button type="button" class="button first" onClick={() => print()}>
            {texts.print}
          </button>
          {back}
        </p>
      </div>

      <article class="sign-off-sheet" aria-label={texts.sheetOf(part.name || texts.withoutName)}>
        <header>
          <h2>{texts.sheetOf(part.name || texts.withoutName)}</h2>
          <p class="copy-name">{texts.copy[copy]}</p>
          <dl>
            <div>
              <dt>{texts.block.material}</dt>
              <dd>{part.material.name}</dd>
            </div>
            <div>
              <dt>{texts.block.thickness}</dt>
              <dd>{formatQuantity(part.thickness, "length", view, "setting")}</dd>
            </div>
            <div>
              <dt>{texts.block.shop}</dt>
              <dd>{shop}</dd>
            </div>
            <div>
              <dt>{texts.block.student}</dt>
              <dd>
                <WriteHere />
              </dd>
            </div>
            <div>
              <dt>{texts.block.date}</dt>
              <dd>
                <WriteHere />
              </dd>
            </div>
          </dl>
          {broken > 0 && <p class="message">{texts.broken(broken)}</p>}
        </header>
        {stations.map(({ id, machine, work, questions, own, cautions: all }) => (
          <section key={id} class="station">
            <h3>{machine ? texts.machine(texts.stations[id], machine) : texts.stations[id]}</h3>
            <p>{phraseText(work, view)}</p>
            <p class="station-cautions">
              <strong>{texts.cautions}</strong>{" "}
              {all
                .flatMap((caution) => {
                  const title = cautions[caution]?.title;
                  return title ? [`${title}.`] : [];
                })
                .join(" ")}
            </p>
            <ol>
              {questions.map(({ ask, answer }) => (
                <li key={phraseText(ask)}>
                  {phraseText(ask, view)}
                  {answerOr(phraseText(answer, view))}
                </li>
              ))}
              {own.map((caution) => (
                <li key={caution}>
                  {cautions[caution]?.ask}
                  {answerOr(cautions[caution]?.text ?? "")}
                </li>
              ))}
            </ol>
            <p class="station-signed">
              {box} {texts.mayStart} <WriteHere />
            </p>
          </section>
        ))}
        <footer>
          <p>{texts.defer}</p>
          <p class="station-signed">
            {texts.signature} <WriteHere />
          </p>
        </footer>
      </article>
    </div>
  );
}
