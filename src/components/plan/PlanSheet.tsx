import { datumEdges } from "../../lib/part/datum.ts";
import { fullSize } from "../../lib/part/drawing.ts";
import { panelName } from "../../lib/part/flatten.ts";
import type { Plan, PlannedHole } from "../../lib/part/plan.ts";
import { noseSetting } from "../../lib/part/uncertainty.ts";
import { formatQuantity, showQuantity } from "../../lib/quantity/format.ts";
import { useTexts } from "../../texts/context.ts";
import { plan as planTexts } from "../../texts/en/plan.ts";
import { planSheet } from "../../texts/en/plan-sheet.ts";
import { CutList, JointTable, PracticeTables, PunchTable, sizeWords } from "./BenchLists.tsx";
import { BlanksLink } from "./BlanksLink.tsx";
import { FlatDrawing, mostNumbered } from "./FlatDrawing.tsx";
import { FinishedPicture, FoldingPicture } from "./FoldingPicture.tsx";
import { OrderList } from "./OrderList.tsx";
import { PlanCode } from "./PlanCode.tsx";
import { SectionDrawing } from "./SectionDrawing.tsx";
import { BeforeYouStart, Checks, Entry, Remarks, type SheetProps, Steps, settingColumns, Verdict } from "./SheetParts.tsx";
import { box, SheetTable, WriteHere } from "./SheetTable.tsx";
import { TakeAlong } from "./TakeAlong.tsx";

/** Size of a hole in words: a diameter, or width by height with the angle it is turned by. */
function holeSize(
  { holes }: typeof planSheet,
  { shape, diameter, width = 0, height = 0, turn = 0 }: PlannedHole,
  bare: (value: number) => string,
): string {
  const turned = diameter !== undefined || turn % 180 === 0 ? "" : holes.turned(formatQuantity(turn, "angle"));
  return sizeWords({ shape, width: diameter ?? width, height: diameter ?? height }, bare) + turned;
}

/** The plan to take to the bench: what to cut, where to scribe, what comes out and how well. */
export function PlanSheet({ plan, view, markingMethods, words, query }: SheetProps & { readonly plan: Plan }) {
  const texts = useTexts(planSheet);
  const { withoutName } = useTexts(planTexts);
  const { part, blank, scribe } = plan;
  const setting = (value: number) => formatQuantity(value, "length", view, "setting");
  const unit = texts.unit[view];
  const bare = (value: number) => showQuantity(value, "length", view, "setting").number;
  const angle = (value: number) => formatQuantity(value, "angle");
  const sections = plan.layout.chains.filter(({ bends }) => bends.length > 0);
  const settings = settingColumns(texts, view);
  const marking = markingMethods[part.marking];
  const scribeHeads = texts.scribe.heads;
  const holeHeads = texts.holes.heads;
  const bendHeads = texts.bends.heads;

  return (
    <article class="plan-sheet of-lists" aria-label={texts.planOf(part.name)}>
      <header class="plan-title">
        <div class="plan-head">
          <h2>{part.name || withoutName}</h2>
          <dl class="title-block">
            <Entry name={texts.block.material}>{part.material.name}</Entry>
            <Entry name={texts.block.thickness}>{setting(part.thickness)}</Entry>
            <Entry name={texts.block.quantity}>{part.quantity}</Entry>
            <Entry name={texts.block.measured}>{part.measured}</Entry>
            <Entry name={texts.block.shop} paper>
              {plan.shop}
            </Entry>
            <Entry name={texts.block.name} paper>
              <WriteHere />
            </Entry>
            <Entry name={texts.block.date} paper>
              <WriteHere />
            </Entry>
          </dl>
          <dl class="plan-answer">
            <div>
              <dt>{texts.blanks.folded}</dt>
              <dd>
                <output>
                  {setting(blank.width)} × {setting(blank.depth)}
                </output>
              </dd>
            </div>
            <div>
              <dt>{texts.massOfOne}</dt>
              <dd>{formatQuantity(blank.mass, "mass")}</dd>
            </div>
          </dl>
        </div>
        <PlanCode query={query} />
        <Verdict checks={plan.checks} />
      </header>

      <div class="plan-columns">
        <Remarks remarks={plan.remarks} view={view} />

        <div class="plan-figures">
          <figure class="drawing">
            <FlatDrawing plan={plan} view={view} />
            <figcaption>{texts.drawing.caption(texts.unitInWords[view], datumEdges(plan.layout))}</figcaption>
          </figure>
          {sections.map((chain) => (
            // On paper the picture shows a box better, and the finished sizes are in their list.
            <figure class={sections.length > 1 ? "drawing not-on-paper" : "drawing"} key={chain.axis}>
              <SectionDrawing chain={chain} view={view} />
              <figcaption>{sections.length > 1 ? texts.drawing.sectionFrom[chain.axis] : texts.drawing.section}</figcaption>
            </figure>
          ))}
          <FinishedPicture name={part.name} layout={plan.layout} />
        </div>
        <FoldingPicture
          name={part.name}
          layout={plan.layout}
          view={view}
          order={plan.order && "steps" in plan.order ? plan.order.steps : undefined}
        />

        <TakeAlong sheet={async () => fullSize(plan)} view={view} query={query} />
        <PracticeTables plan={plan} view={view} />
        <CutList plan={plan} view={view} />
        <BlanksLink part={part} cuts={plan.cuts} />

        {scribe.length > 0 && (
          <section class="plan-scribe">
            <h3>{texts.scribe.title}</h3>
            <SheetTable
              caption={texts.scribe.caption(texts.unitInWords[view])}
              head={[scribeHeads.line, scribeHeads.face, scribeHeads.from, ...settings.heads, scribeHeads.what]}
              offPaper={[...(scribe.every(({ face }) => face === "front") ? [scribeHeads.face] : []), ...settings.offPaper]}
              rows={scribe.map((line) => [
                <>
                  {box} {line.number}
                </>,
                line.face,
                line.from,
                ...settings.cells(line),
                line.what,
              ])}
            />
            {scribe.some(({ face }) => face === "back") && <p>{texts.scribe.back}</p>}
          </section>
        )}

        {plan.holes.length > 0 && (
          // On paper the scribe list has all centre lines, and the drawing the numbers of the holes while there is room for them.
          <section class={plan.holes.length <= mostNumbered ? "plan-holes not-on-paper" : "plan-holes"}>
            <h3>{texts.holes.title}</h3>
            <SheetTable
              caption={texts.holes.caption(unit)}
              head={Object.values(holeHeads)}
              offPaper={[holeHeads.panel, holeHeads.by]}
              rows={plan.holes.map((hole, index) => [
                <>
                  {box} {index + 1}
                </>,
                bare(hole.x),
                bare(hole.y),
                holeSize(texts, hole, bare),
                panelName(hole.panel),
                hole.punch ? texts.holes.die(String(hole.punch.die)) : hole.by,
              ])}
            />
          </section>
        )}

        <PunchTable plan={plan} view={view} />

        {plan.corners.length > 0 && (
          <section class="plan-corners not-on-paper">
            <h3>{texts.corners.title}</h3>
            <SheetTable
              caption={texts.corners.caption(unit)}
              head={texts.corners.heads}
              rows={plan.corners.map(({ id, guide, x, y, relief }) => [
                id,
                bare(guide.x),
                bare(guide.y),
                `${bare(x)}, ${bare(y)}`,
                relief ? `${relief.kind} ${relief.kind === "hole" ? "⌀ " : ""}${bare(relief.size)}` : texts.none,
              ])}
            />
          </section>
        )}

        {plan.bends.length > 0 && (
          // On paper the steps of the order say it all but for tabs.
          <section
            class={plan.order && "steps" in plan.order && plan.tabs.length === 0 ? "plan-bends not-on-paper" : "plan-bends"}
          >
            <h3>{texts.bends.title}</h3>
            <SheetTable
              caption={texts.bends.caption(unit)}
              head={Object.values(bendHeads)}
              offPaper={[bendHeads.from, bendHeads.tangents, bendHeads.deduction]}
              rows={plan.bends.map((bend) => [
                bend.id,
                bend.from,
                `${bare(bend.tangents[0])}, ${bare(bend.tangents[1])}`,
                bare(bend.sightLine),
                angle(bend.angle),
                bend.way,
                bend.swing === null ? texts.bends.springsBackFlat : angle(bend.swing),
                bare(bend.radius),
                bare(bend.deduction),
              ])}
            />
          </section>
        )}

        <OrderList plan={plan} view={view} />
        <JointTable plan={plan} view={view} />

        <section class="plan-sizes">
          <h3>{texts.sizes.title}</h3>
          <SheetTable
            caption={texts.sizes.caption(unit)}
            head={texts.sizes.heads}
            rows={[...plan.sizes.map((size) => [size.what, bare(size.size), bare(size.plusMinus), <WriteHere key="blank" />])]}
          />
          <p class="not-on-paper">
            {texts.sizes.marking(marking?.name ?? part.marking, setting(marking?.error ?? 0))}{" "}
            {texts.sizes.nose(setting(noseSetting))}
          </p>
        </section>

        <Checks checks={plan.checks} view={view} words={words} />
        <Steps steps={plan.steps} view={view} />
        <BeforeYouStart cautions={plan.cautions} words={words} />
      </div>
    </article>
  );
}
