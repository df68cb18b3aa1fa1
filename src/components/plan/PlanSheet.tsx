import { datumEdges } from "../../lib/part/datum.ts";
import { fullSize } from "../../lib/part/drawing.ts";
import { panelName } from "../../lib/part/flatten.ts";
import type { Plan, PlannedHole } from "../../lib/part/plan.ts";
import { noseSetting } from "../../lib/part/uncertainty.ts";
import { formatQuantity, showQuantity } from "../../lib/quantity/format.ts";
import { CutList, JointTable, PracticeTables, PunchTable, sizeWords } from "./BenchLists.tsx";
import { FlatDrawing, mostNumbered } from "./FlatDrawing.tsx";
import { FinishedPicture, FoldingPicture } from "./FoldingPicture.tsx";
import { OrderList } from "./OrderList.tsx";
import { PlanCode } from "./PlanCode.tsx";
import { SectionDrawing } from "./SectionDrawing.tsx";
import { BeforeYouStart, Checks, Entry, Remarks, type SheetProps, Steps, settingColumns, Verdict } from "./SheetParts.tsx";
import { box, SheetTable, WriteHere } from "./SheetTable.tsx";
import { TakeAlong } from "./TakeAlong.tsx";

/** Size of a hole in words: a diameter, or width by height with the angle it is turned by. */
function holeSize({ shape, diameter, width = 0, height = 0, turn = 0 }: PlannedHole, bare: (value: number) => string): string {
  const turned = diameter !== undefined || turn % 180 === 0 ? "" : `, turned ${formatQuantity(turn, "angle")}`;
  return sizeWords({ shape, width: diameter ?? width, height: diameter ?? height }, bare) + turned;
}

/** The plan to take to the bench: what to cut, where to scribe, what comes out and how well. */
export function PlanSheet({ plan, view, markingMethods, words, query }: SheetProps & { readonly plan: Plan }) {
  const { part, blank, scribe } = plan;
  const setting = (value: number) => formatQuantity(value, "length", view, "setting");
  const unit = view === "mm" ? "mm" : "in";
  const bare = (value: number) => showQuantity(value, "length", view, "setting").number;
  const angle = (value: number) => formatQuantity(value, "angle");
  const datums = datumEdges(plan.layout);
  const datumWords = `${datums.join(" and the ")} ${datums.length === 1 ? "edge, the datum" : "edges, the datums"}`;
  const sections = plan.layout.chains.filter(({ bends }) => bends.length > 0);
  const settings = settingColumns(view);
  const marking = markingMethods[part.marking];

  return (
    <article class="plan-sheet of-lists" aria-label={`Plan of ${part.name}`}>
      <header class="plan-title">
        <div class="plan-head">
          <h2>{part.name || "Part without a name"}</h2>
          <dl class="title-block">
            <Entry name="Material">{part.material.name}</Entry>
            <Entry name="Thickness">{setting(part.thickness)}</Entry>
            <Entry name="Quantity">{part.quantity}</Entry>
            <Entry name="Sizes measured">{part.measured}</Entry>
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
              <dt>Blank, west to east × south to north</dt>
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
            <FlatDrawing plan={plan} view={view} />
            <figcaption>
              The blank, front face up; {view === "mm" ? "mm" : "inches"} from the {datumWords}. The line inside each bend is its
              sight line.
            </figcaption>
          </figure>
          {sections.map((chain) => (
            // On paper the picture shows a box better, and the finished sizes are in their list.
            <figure class={sections.length > 1 ? "drawing not-on-paper" : "drawing"} key={chain.axis}>
              <SectionDrawing chain={chain} view={view} />
              <figcaption>
                The finished part, seen along its bends
                {sections.length > 1 && ` from ${chain.axis === "y" ? "the west" : "the south"}`}.
              </figcaption>
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

        <TakeAlong sheet={async () => fullSize(plan)} view={view} />
        <PracticeTables plan={plan} view={view} />
        <CutList plan={plan} view={view} />

        {scribe.length > 0 && (
          <section class="plan-scribe">
            <h3>Scribe list</h3>
            <SheetTable
              caption={`Set once, run along the edge named, go on to the next; ${view === "mm" ? "mm" : "inches"}`}
              head={["Line", "Face", "From", ...settings.heads, "What"]}
              offPaper={[...(scribe.every(({ face }) => face === "front") ? ["Face"] : []), ...settings.offPaper]}
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
            {scribe.some(({ face }) => face === "back") && (
              <p>
                Lines on the back are scribed with the sheet turned over about the datum edge they are measured from, from that
                same edge.
              </p>
            )}
          </section>
        )}

        {plan.holes.length > 0 && (
          // On paper the scribe list has all centre lines, and the drawing the numbers of the holes while there is room for them.
          <section class={plan.holes.length <= mostNumbered ? "plan-holes not-on-paper" : "plan-holes"}>
            <h3>Holes on the flat</h3>
            <SheetTable
              caption={`Centres, ${unit} from the west and the south edge of the blank`}
              head={["Hole", "From west", "From south", "Size", "Panel", "By"]}
              offPaper={["Panel", "By"]}
              rows={plan.holes.map((hole, index) => [
                <>
                  {box} {index + 1}
                </>,
                bare(hole.x),
                bare(hole.y),
                holeSize(hole, bare),
                panelName(hole.panel),
                hole.punch ? `punch, die ${hole.punch.die}` : hole.by,
              ])}
            />
          </section>
        )}

        <PunchTable plan={plan} view={view} />

        {plan.corners.length > 0 && (
          <section class="plan-corners not-on-paper">
            <h3>Corners</h3>
            <SheetTable
              caption={`Guides from the edges of the blank, centres from its west and south edge, ${unit}`}
              head={["Corner", "Guide from west or east", "Guide from south or north", "Bends cross at", "Relief"]}
              rows={plan.corners.map(({ id, guide, x, y, relief }) => [
                id,
                bare(guide.x),
                bare(guide.y),
                `${bare(x)}, ${bare(y)}`,
                relief ? `${relief.kind} ${relief.kind === "hole" ? "⌀ " : ""}${bare(relief.size)}` : "none",
              ])}
            />
          </section>
        )}

        {plan.bends.length > 0 && (
          // On paper the steps of the order say it all but for tabs.
          <section
            class={plan.order && "steps" in plan.order && plan.tabs.length === 0 ? "plan-bends not-on-paper" : "plan-bends"}
          >
            <h3>Bends</h3>
            <SheetTable
              caption={`On the blank, ${unit} from the edge named`}
              head={["Bend", "From", "Tangent lines", "Sight line", "Angle", "Way", "Swing to", "Inside radius", "Deduction"]}
              offPaper={["From", "Tangent lines", "Deduction"]}
              rows={plan.bends.map((bend) => [
                bend.id,
                bend.from,
                `${bare(bend.tangents[0])}, ${bare(bend.tangents[1])}`,
                bare(bend.sightLine),
                angle(bend.angle),
                bend.way,
                bend.swing === null ? "springs back flat" : angle(bend.swing),
                bare(bend.radius),
                bare(bend.deduction),
              ])}
            />
          </section>
        )}

        <OrderList plan={plan} view={view} />
        <JointTable plan={plan} view={view} />

        <section class="plan-sizes">
          <h3>Finished sizes</h3>
          <SheetTable
            caption={`In ${unit}; ± for k = 2 of marking, setting, bend data and thickness`}
            head={["Panel", "Size", "±", "Measured"]}
            rows={[...plan.sizes.map((size) => [size.what, bare(size.size), bare(size.plusMinus), <WriteHere key="blank" />])]}
          />
          <p class="not-on-paper">
            Marking with {marking?.name.toLowerCase() ?? part.marking}: ±{setting(marking?.error ?? 0)} a line. Setting the nose
            to a line by eye: ±{setting(noseSetting)}, common practice.
          </p>
        </section>

        <Checks checks={plan.checks} view={view} words={words} />
        <Steps steps={plan.steps} view={view} />
        <BeforeYouStart cautions={plan.cautions} words={words} />
      </div>
    </article>
  );
}
