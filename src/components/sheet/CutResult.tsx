import type { Catalogue } from "../../lib/catalogue.ts";
import { formatNumber, formatQuantity, type LengthView, showQuantity } from "../../lib/quantity/format.ts";
import type { Placed } from "../../lib/sheet/cut-order.ts";
import type { CutPlan } from "../../lib/sheet/cut-plan.ts";
import { cutSteps } from "../../lib/sheet/cut-steps.ts";
import type { SheetRequest } from "../../lib/sheet/form.ts";
import { massOf, planRemarks, shearChecks } from "../../lib/sheet/shear-checks.ts";
import { useTexts } from "../../texts/context.ts";
import { sheet as sheetTexts } from "../../texts/en/sheet.ts";
import { Fold } from "../calculator/Fold.tsx";
import { BeforeYouStart, Checks, Entry, Remarks, Verdict } from "../plan/SheetParts.tsx";
import { SheetTable, WriteHere } from "../plan/SheetTable.tsx";
import type { PlanWords } from "../plan/words.ts";
import { CutSteps } from "./CutSteps.tsx";
import { EveryStroke } from "./EveryStroke.tsx";
import { LayoutDrawing } from "./LayoutDrawing.tsx";
import { idsText, letterOf } from "./letters.ts";

interface Props {
  readonly plan: CutPlan;
  readonly request: SheetRequest;
  readonly catalogue: Catalogue;
  readonly view: LengthView;
  readonly words: PlanWords;
  readonly cautions: readonly string[];
  /** What is said about how good the plan is. */
  readonly verdict: string;
  readonly isKept: (part: Placed) => boolean;
  readonly onKeep: (part: Placed, count: number, id: string) => void;
}

const percent = (share: number) => `${formatNumber(100 * share, 1)} %`;

/** What a plan is judged by, in words. */
export function measured({ measure }: CutPlan, value: number, texts: typeof sheetTexts): string {
  if (measure === "sheets") return texts.sheetCount(value);
  if (measure === "sheet-area") return `${formatNumber(value, 3)} m²`;
  if (measure === "piece-area") return `${formatNumber(value / 1e6, 3)} m²`;
  return formatNumber(value, 2);
}

/** How good a plan is, in a sentence. */
export function goodness(plan: CutPlan, texts: typeof sheetTexts): string {
  const { proved, measure, found, bound, gap } = plan;
  if (proved) return measure === "sheets" ? texts.proved.sheets(found) : texts.proved[measure](measured(plan, found, texts));
  return texts.within[measure](gapText(gap), measured(plan, bound, texts));
}

/** Never rounded to nothing: that would be proved. */
export const gapText = (gap: number) => (gap < 0.0005 ? "0.1 %" : `${formatNumber(Math.ceil(1000 * gap - 1e-9) / 10, 1)} %`);

/** A cutting plan to take to the shear: drawings, settings in order, what is left over. */
export function CutResult({ plan, request, catalogue, view, words, cautions, verdict, isKept, onKeep }: Props) {
  const texts = useTexts(sheetTexts);
  const { job, values } = request;
  const { shear } = catalogue.shop;
  const setting = (value: number) => formatQuantity(value, "length", view, "setting");
  const bare = (value: number) => showQuantity(value, "length", view, "setting").number;
  const unit = view === "mm" ? "mm" : "in";
  const names = job.pieces.map(({ name }) => name);
  const size = ({ width, length }: { readonly width: number; readonly length: number }) => `${bare(width)} × ${bare(length)}`;
  const mass = (of: { readonly width: number; readonly length: number }) => massOf(of, values, catalogue);
  const massText = (value: number | undefined) => (value === undefined ? "" : formatQuantity(value, "mass"));
  const checks = shearChecks(plan, request, catalogue);
  const stockOf = (sheet: number) => {
    const stock = job.sheets[sheet];
    if (!stock) throw new Error(`the plan uses sheet ${sheet}, and the job has ${job.sheets.length}`);
    return stock;
  };
  let before = 0;
  const layouts = plan.sheets.map(({ sheet, times, cuts }) => {
    const first = before + 1;
    before += times;
    const stock = stockOf(sheet);
    const title = texts.sheetNumber(first, before);
    return { sheet, times, cuts, stock, title, steps: cutSteps(cuts), first };
  });
  const strokes = plan.sheets.reduce((sum, { times, cuts }) => sum + times * cuts.cuts.length, 0);
  const sheetMasses = plan.sheets.map(({ sheet, times }) => {
    const each = mass(stockOf(sheet));
    return each === undefined ? undefined : times * each;
  });
  const total = sheetMasses.every((each) => each !== undefined)
    ? sheetMasses.reduce((sum: number, each) => sum + (each ?? 0), 0)
    : undefined;
  const large = ({ width, length }: Placed) => Math.min(width, length) >= shear.shortestPiece;
  /** Offcuts of one size together: where they come from, and how many. */
  const rests = new Map<string, { readonly part: Placed; count: number; readonly ids: string[] }>();
  for (const { cuts, times, first } of layouts)
    for (const part of cuts.offcuts) {
      const known = rests.get(size(part)) ?? { part, count: 0, ids: [] };
      known.count += times;
      known.ids.push(layouts.length > 1 ? `${first}/${part.id || "1"}` : part.id || "1");
      rests.set(size(part), known);
    }
  const worth = [...rests.values()].filter(({ part }) => large(part));
  const scrap = [...rests.values()].filter(({ part }) => !large(part)).reduce((sum, { count }) => sum + count, 0);
  const material = catalogue.materials[values.material];

  return (
    <article class="plan-sheet cut-sheet" aria-label={texts.planOf(values.name)}>
      <header class="plan-title">
        <div class="plan-head">
          <h2>{values.name || texts.noName}</h2>
          <dl class="title-block">
            <Entry name={texts.material}>{material.name}</Entry>
            {values.thickness !== undefined && <Entry name={texts.thickness}>{setting(values.thickness)}</Entry>}
            <Entry name={texts.shop} paper>
              {catalogue.shop.name}
            </Entry>
            <Entry name={texts.cutBy} paper>
              <WriteHere />
            </Entry>
            <Entry name={texts.date} paper>
              <WriteHere />
            </Entry>
          </dl>
          <dl class="plan-answer">
            <div>
              <dt>{texts.sheetsAnswer}</dt>
              <dd>
                <output>{plan.count}</output>
              </dd>
            </div>
            <div>
              <dt>{texts.usedAnswer}</dt>
              <dd>
                <output>{percent(plan.used)}</output>
              </dd>
            </div>
            <div>
              <dt>{texts.settingsAnswer}</dt>
              <dd>
                {texts.settingsTimes(plan.stopSettings)}, {texts.strokes(strokes)}
              </dd>
            </div>
            {total !== undefined && (
              <div>
                <dt>{texts.massAnswer}</dt>
                <dd>{massText(total)}</dd>
              </div>
            )}
          </dl>
        </div>
        <p class="plan-verdict cut-goodness">{verdict}</p>
        <Verdict checks={checks} />
      </header>

      <Remarks remarks={planRemarks(plan, request, catalogue)} view={view} />

      <section class="cut-pieces">
        <h3>{texts.piecesTitle}</h3>
        <SheetTable
          caption={texts.piecesCaption(unit)}
          head={Object.values(texts.piecesHead)}
          offPaper={values.thickness === undefined ? [texts.piecesHead.mass] : []}
          rows={job.pieces.map((piece, index) => [
            letterOf(index),
            piece.name,
            size(piece),
            piece.count ?? texts.anyNumber,
            plan.pieces[index] ?? 0,
            texts.grain[piece.grain],
            massText(mass(piece)),
          ])}
        />
      </section>

      {layouts.map(({ cuts, stock, title, steps, sheet }, index) => (
        <section class="cut-layout" key={String(index)}>
          <figure class="drawing">
            <LayoutDrawing
              cuts={cuts}
              stock={stock}
              trim={job.trim}
              steps={steps}
              names={names}
              title={texts.drawingTitle(title, size(stock), cuts.pieces.length, cuts.cuts.length)}
              view={view}
            />
            <figcaption>
              <strong>
                {title}: {texts.outOf(sheet === 0 ? "" : stock.name, `${size(stock)} ${unit}`)}.
              </strong>{" "}
              {index === 0 && texts.drawingCaption(unit)}
            </figcaption>
          </figure>
          <CutSteps title={texts.stepsTitle(title)} steps={steps} names={names} bare={bare} unit={unit} />
          <Fold class="cut-every not-on-paper" summary={texts.everyStroke(cuts.cuts.length)}>
            {() => <EveryStroke cuts={cuts} names={names} bare={bare} unit={unit} />}
          </Fold>
        </section>
      ))}

      <section class="cut-rests">
        <h3>{texts.restTitle}</h3>
        {worth.length === 0 ? (
          <p>{texts.restNone}</p>
        ) : (
          <SheetTable
            caption={texts.restCaption(unit)}
            head={Object.values(texts.restHead)}
            offPaper={[texts.restHead.keep]}
            rows={worth.map(({ part, count, ids }) => [
              idsText(ids, texts.to),
              count,
              size(part),
              massText(mass(part)),
              isKept(part) ? (
                texts.kept
              ) : (
                <button type="button" class="needs-script" onClick={() => onKeep(part, count, ids[0] ?? "")}>
                  {texts.keep}
                </button>
              ),
            ])}
          />
        )}
        {scrap > 0 && <p>{texts.scrap(scrap, setting(shear.shortestPiece))}</p>}
      </section>

      <Checks checks={checks} view={view} words={words} />
      <BeforeYouStart cautions={cautions} words={words} />
    </article>
  );
}
