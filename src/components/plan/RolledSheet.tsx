import type { RolledPlan } from "../../lib/part/rolled/plan.ts";
import { formatNumber, formatQuantity, showQuantity } from "../../lib/quantity/format.ts";
import { useTexts } from "../../texts/context.ts";
import { plan as planTexts } from "../../texts/en/plan.ts";
import { planSheet } from "../../texts/en/plan-sheet.ts";
import { CutList, JointTable, PunchTable, sizeWords } from "./BenchLists.tsx";
import { BlanksLink } from "./BlanksLink.tsx";
import { mostNumbered } from "./FlatDrawing.tsx";
import { PlanCode } from "./PlanCode.tsx";
import { FinishedRolled, RolledBlankDrawing } from "./RolledDrawing.tsx";
import { BeforeYouStart, Checks, Entry, Remarks, type SheetProps, Steps, settingColumns, Verdict } from "./SheetParts.tsx";
import { box, SheetTable, WriteHere } from "./SheetTable.tsx";
import { TakeAlong } from "./TakeAlong.tsx";

/** The plan of a rolled part to take to the bench: the blank, what to mark on it, how to set the rolls, what comes out. */
export function RolledSheet({ plan, view, markingMethods, words, query }: SheetProps & { readonly plan: RolledPlan }) {
  const texts = useTexts(planSheet);
  const { withoutName } = useTexts(planTexts);
  const { part, blank, sheet, rolling, scribe } = plan;
  const { seam } = sheet;
  const setting = (value: number) => formatQuantity(value, "length", view, "setting");
  const bare = (value: number) => showQuantity(value, "length", view, "setting").number;
  const unit = texts.unit[view];
  const settings = settingColumns(texts, view);
  const marking = markingMethods[part.marking];
  const ends = rolling.settings.map(({ end }) => end);
  const partial = part.kind === "tube" && part.arc < 360;

  const passHeadsOf = (end: string) =>
    Object.values(texts.rolls.heads).map((head) => (ends.length > 1 ? texts.rolls.headAt(head, end) : head));
  const scribeHeads = texts.scribe.heads;
  const holeHeads = texts.holes.heads;
  const [strip] = plan.practice;
  const folds = seam.lines.filter(({ kind }) => kind === "fold");

  return (
    <article class="plan-sheet of-rolled" aria-label={texts.planOf(part.name)}>
      <header class="plan-title">
        <div class="plan-head">
          <h2>{part.name || withoutName}</h2>
          <dl class="title-block">
            <Entry name={texts.block.kind}>{partial ? texts.kinds.partOfTube : texts.kinds[part.kind]}</Entry>
            <Entry name={texts.block.material}>{part.material.name}</Entry>
            <Entry name={texts.block.thickness}>{setting(part.thickness)}</Entry>
            <Entry name={texts.block.quantity}>{part.quantity}</Entry>
            <Entry name={texts.block.seam}>
              {partial ? texts.none : texts.seams[seam.kind]}
              {seam.width > 0 && `, ${setting(seam.width)}`}
            </Entry>
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
              <dt>{texts.blanks[part.kind]}</dt>
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
            <RolledBlankDrawing plan={plan} view={view} />
            <figcaption>
              {texts.drawing.rolledCaption(texts.unitInWords[view])}
              {seam.kind !== "butt" && <span class="not-on-paper"> {texts.drawing.brightLines}</span>}
            </figcaption>
          </figure>
          <figure class="drawing">
            <FinishedRolled plan={plan} view={view} />
            <figcaption>
              {part.kind === "cone" ? texts.drawing.finishedCone : texts.drawing.finishedTube(part.measured)}
            </figcaption>
          </figure>
        </div>

        <TakeAlong
          sheet={async () => (await import("../../lib/part/rolled/full-size.ts")).rolledFullSize(plan)}
          view={view}
          query={query}
        />
        <CutList plan={plan} view={view} {...(sheet.sector && { after: texts.cuts.sector })} />
        <BlanksLink part={part} cuts={plan.cuts} />

        {strip && (
          <section class="plan-practice">
            <h3>{texts.practice.trialTitle}</h3>
            <SheetTable
              caption={texts.practice.trialCaption(bare(strip.length), bare(strip.width), unit)}
              head={texts.practice.trialHeads}
              rows={plan.practice.map(({ rise, radius, end }, index) => [
                <>
                  {box} {index + 1}
                  {ends.length > 1 && `, ${end}`}
                </>,
                bare(rise),
                radius === undefined ? texts.practice.any : bare(radius),
                <WriteHere key="measured" />,
              ])}
            />
          </section>
        )}

        <section class="plan-scribe">
          <h3>{texts.scribe.title}</h3>
          <SheetTable
            caption={texts.scribe.rolledCaption(texts.unitInWords[view])}
            head={[scribeHeads.line, scribeHeads.from, ...settings.heads, scribeHeads.what]}
            offPaper={settings.offPaper}
            rows={scribe.map((line) => [
              <>
                {box} {line.number}
              </>,
              line.from,
              ...settings.cells(line),
              line.what,
            ])}
          />
          {sheet.sector && <p class="not-on-paper">{texts.scribe.sector(formatQuantity(sheet.sector.angle, "angle"))}</p>}
        </section>

        {sheet.holes.length > 0 && (
          <section class={sheet.holes.length <= mostNumbered ? "plan-holes not-on-paper" : "plan-holes"}>
            <h3>{texts.holes.title}</h3>
            <SheetTable
              caption={part.kind === "cone" ? texts.holes.coneCaption(unit) : texts.holes.caption(unit)}
              head={[holeHeads.hole, holeHeads.fromWest, holeHeads.fromSouth, holeHeads.size]}
              rows={sheet.holes.map((hole) => [
                <>
                  {box} {hole.number}
                </>,
                bare(hole.flatX),
                bare(hole.flatY),
                sizeWords(hole, bare) +
                  (hole.shape === "round" || hole.flatTurn % 180 === 0
                    ? ""
                    : texts.holes.turned(formatQuantity(hole.flatTurn, "angle"))),
              ])}
            />
          </section>
        )}

        <PunchTable plan={{ ...plan, corners: [] }} view={view} note={texts.punching.beforeRolling} />

        {rolling.settings.length > 0 && (
          <section class="plan-rolls">
            <h3>{texts.rolls.title}</h3>
            <ul class="not-on-paper">
              {rolling.settings.map(({ end, radius, loadedRadius, flatEnd }) => (
                <li key={end}>
                  {texts.rolls.setting(
                    end === "whole length" ? texts.rolls.wholeLength : texts.rolls.atEnd(end),
                    bare(loadedRadius),
                    bare(radius),
                    bare(flatEnd),
                  )}
                </li>
              ))}
            </ul>
            <SheetTable
              caption={texts.rolls.caption(unit)}
              head={[texts.rolls.pass, ...ends.flatMap(passHeadsOf)]}
              offPaper={ends.length > 1 ? ends.map((end) => passHeadsOf(end)[2] ?? "") : []}
              rows={(rolling.settings[0]?.passes ?? []).map((_, index) => [
                <>
                  {box} {index + 1}
                </>,
                ...rolling.settings.flatMap(({ passes }) => {
                  const pass = passes[index];
                  return pass ? [formatNumber(pass.turns, 2), bare(pass.rise), bare(pass.radius)] : [];
                }),
              ])}
            />
          </section>
        )}

        <JointTable plan={plan} view={view} title={texts.joints.seam} />
        {folds.length > 0 && (
          // On paper the scribe list has the lines, and the steps say how they are folded.
          <section class="plan-joints not-on-paper">
            <h3>{texts.joints.folding}</h3>
            <SheetTable
              caption={texts.joints.foldCaption(texts.seams[seam.kind], bare(seam.width), seam.kind === "standing", unit)}
              head={texts.joints.foldHeads}
              rows={folds.map(({ what, side, distance, way }) => [what, side, bare(distance), way])}
            />
          </section>
        )}

        <section class="plan-sizes">
          <h3>{texts.sizes.title}</h3>
          <SheetTable
            caption={texts.sizes.rolledCaption(unit)}
            head={texts.sizes.rolledHeads}
            rows={plan.sizes.map((size) => [
              size.what,
              bare(size.size),
              size.plusMinus === null ? texts.sizes.mayComeBackFlat : bare(size.plusMinus),
              <WriteHere key="measured" />,
            ])}
          />
          <p class="not-on-paper">
            {texts.sizes.rolledFrom} {texts.sizes.marking(marking?.name ?? part.marking, setting(marking?.error ?? 0))}
            {!partial && ` ${texts.sizes.template}`}
          </p>
        </section>

        <Checks checks={plan.checks} view={view} words={words} />
        <Steps steps={plan.steps} view={view} />
        <BeforeYouStart cautions={plan.cautions} words={words} />
      </div>
    </article>
  );
}
