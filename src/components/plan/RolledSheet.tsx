import type { RolledPlan } from "../../lib/part/rolled/plan.ts";
import { formatNumber, formatQuantity, showQuantity } from "../../lib/quantity/format.ts";
import { CutList, JointTable, PunchTable, sizeWords } from "./BenchLists.tsx";
import { mostNumbered } from "./FlatDrawing.tsx";
import { PlanCode } from "./PlanCode.tsx";
import { FinishedRolled, RolledBlankDrawing } from "./RolledDrawing.tsx";
import { BeforeYouStart, Checks, Entry, Remarks, type SheetProps, Steps, settingColumns, Verdict } from "./SheetParts.tsx";
import { box, SheetTable, WriteHere } from "./SheetTable.tsx";
import { TakeAlong } from "./TakeAlong.tsx";

const kindWords = { tube: "rolled tube", cone: "rolled cone" } as const;
const seamWords = { butt: "butted", lap: "lap", grooved: "grooved", standing: "standing" } as const;

const passHeads = ["Turns", "Rise", "Radius"] as const;

/** The plan of a rolled part to take to the bench: the blank, what to mark on it, how to set the rolls, what comes out. */
export function RolledSheet({ plan, view, markingMethods, words, query }: SheetProps & { readonly plan: RolledPlan }) {
  const { part, blank, sheet, rolling, scribe } = plan;
  const { seam } = sheet;
  const setting = (value: number) => formatQuantity(value, "length", view, "setting");
  const bare = (value: number) => showQuantity(value, "length", view, "setting").number;
  const unit = view === "mm" ? "mm" : "in";
  const settings = settingColumns(view);
  const marking = markingMethods[part.marking];
  const ends = rolling.settings.map(({ end }) => end);
  const partial = part.kind === "tube" && part.arc < 360;

  const passHeadsOf = (end: string) => passHeads.map((head) => (ends.length > 1 ? `${head}, ${end}` : head));
  const [strip] = plan.practice;
  const folds = seam.lines.filter(({ kind }) => kind === "fold");

  return (
    <article class="plan-sheet of-rolled" aria-label={`Plan of ${part.name}`}>
      <header class="plan-title">
        <div class="plan-head">
          <h2>{part.name || "Part without a name"}</h2>
          <dl class="title-block">
            <Entry name="Kind">{partial ? "part of a rolled tube" : kindWords[part.kind]}</Entry>
            <Entry name="Material">{part.material.name}</Entry>
            <Entry name="Thickness">{setting(part.thickness)}</Entry>
            <Entry name="Quantity">{part.quantity}</Entry>
            <Entry name="Seam">
              {partial ? "none" : seamWords[seam.kind]}
              {seam.width > 0 && `, ${setting(seam.width)}`}
            </Entry>
            <Entry name="Shop" paper>
              {plan.shop}
            </Entry>
            <Entry name="Name" paper>
              <WriteHere />
            </Entry>
            <Entry name="Date" paper>
              <WriteHere />
            </Entry>
          </dl>
          <dl class="plan-answer">
            <div>
              <dt>
                {part.kind === "tube"
                  ? "Blank, round the tube × along its axis"
                  : "Piece to cut the blank from, west to east × south to north"}
              </dt>
              <dd>
                <output>
                  {setting(blank.width)} × {setting(blank.depth)}
                </output>
              </dd>
            </div>
            <div>
              <dt>Mass of one</dt>
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
              The blank, the later inside up, sizes in {view === "mm" ? "mm" : "inches"}. Edge A is west, B east.
              {seam.kind !== "butt" && <span class="not-on-paper"> Bright lines belong to the seam.</span>}
            </figcaption>
          </figure>
          <figure class="drawing">
            <FinishedRolled plan={plan} view={view} />
            <figcaption>
              The finished part, seen {part.kind === "cone" ? "from its small end" : "along its axis"} and from the side,{" "}
              {part.kind === "cone" ? "diameters outside" : `measured ${part.measured}`}.
            </figcaption>
          </figure>
        </div>

        <TakeAlong sheet={async () => (await import("../../lib/part/rolled/full-size.ts")).rolledFullSize(plan)} view={view} />
        <CutList
          plan={plan}
          view={view}
          {...(sheet.sector && {
            after: "Then cut the sector out of it: its straight edges on the shear, the arcs with snips or the band saw.",
          })}
        />

        {strip && (
          <section class="plan-practice">
            <h3>Trial strips first</h3>
            <SheetTable
              caption={`Strips ${bare(strip.length)} × ${bare(strip.width)} of the same sheet: rise, inside radius wanted, and measured lying free; ${unit}`}
              head={["Strip", "Rise", "Radius", "Measured"]}
              rows={plan.practice.map(({ rise, radius, end }, index) => [
                <>
                  {box} {index + 1}
                  {ends.length > 1 && `, ${end}`}
                </>,
                bare(rise),
                radius === undefined ? "any" : bare(radius),
                <WriteHere key="measured" />,
              ])}
            />
          </section>
        )}

        <section class="plan-scribe">
          <h3>Scribe list</h3>
          <SheetTable
            caption={`In marking order, on the face that becomes the inside; ${view === "mm" ? "mm" : "inches"}`}
            head={["Line", "From", ...settings.heads, "What"]}
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
          {sheet.sector && (
            <p class="not-on-paper">
              Sector: {formatQuantity(sheet.sector.angle, "angle")} between the seam lines. Its chord finds the angle better than
              a protractor.
            </p>
          )}
        </section>

        {sheet.holes.length > 0 && (
          <section class={sheet.holes.length <= mostNumbered ? "plan-holes not-on-paper" : "plan-holes"}>
            <h3>Holes on the flat</h3>
            <SheetTable
              caption={`Centres, ${unit} from the west and the south edge of the ${part.kind === "cone" ? "rectangle" : "blank"}`}
              head={["Hole", "From west", "From south", "Size"]}
              rows={sheet.holes.map((hole) => [
                <>
                  {box} {hole.number}
                </>,
                bare(hole.flatX),
                bare(hole.flatY),
                sizeWords(hole, bare) +
                  (hole.shape === "round" || hole.flatTurn % 180 === 0
                    ? ""
                    : `, turned ${formatQuantity(hole.flatTurn, "angle")}`),
              ])}
            />
          </section>
        )}

        <PunchTable
          plan={{ ...plan, corners: [] }}
          view={view}
          note="Before rolling: the punch and the drill press do not reach into the finished part, and the places are marked on the flat."
        />

        {rolling.settings.length > 0 && (
          <section class="plan-rolls">
            <h3>At the rolls</h3>
            <ul class="not-on-paper">
              {rolling.settings.map(({ end, radius, loadedRadius, flatEnd }) => (
                <li key={end}>
                  {end === "whole length" ? "Both screws alike" : `At the ${end}`}: held at {bare(loadedRadius)} for{" "}
                  {bare(radius)} inside; flat ends about {bare(flatEnd)}.
                </li>
              ))}
            </ul>
            <SheetTable
              caption={`From flat contact; inside radius after the pass; ${unit}`}
              head={["Pass", ...ends.flatMap(passHeadsOf)]}
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

        <JointTable plan={plan} view={view} title="Joining the seam" />
        {folds.length > 0 && (
          // On paper the scribe list has the lines, and the steps say how they are folded.
          <section class="plan-joints not-on-paper">
            <h3>Folding the seam</h3>
            <SheetTable
              caption={`A ${seamWords[seam.kind]} seam, finished ${bare(seam.width)} ${seam.kind === "standing" ? "high" : "wide"}; ${unit}, seen from the later inside`}
              head={["Fold", "From edge", "Distance", "Way"]}
              rows={folds.map(({ what, side, distance, way }) => [what, side, bare(distance), way])}
            />
          </section>
        )}

        <section class="plan-sizes">
          <h3>Finished sizes</h3>
          <SheetTable
            caption={`± with k = 2; ${unit}`}
            head={["Size", "Wanted", "±", "Measured"]}
            rows={plan.sizes.map((size) => [
              size.what,
              bare(size.size),
              size.plusMinus === null ? "may come back flat" : bare(size.plusMinus),
              <WriteHere key="measured" />,
            ])}
          />
          <p class="not-on-paper">
            The ± is from marking, seam, springback and thickness together. Marking with{" "}
            {marking?.name.toLowerCase() ?? part.marking}: ±{setting(marking?.error ?? 0)} a line.
            {!partial && " How round the part is, the template tells."}
          </p>
        </section>

        <Checks checks={plan.checks} view={view} words={words} />
        <Steps steps={plan.steps} view={view} />
        <BeforeYouStart cautions={plan.cautions} words={words} />
      </div>
    </article>
  );
}
