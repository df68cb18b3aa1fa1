import type { CutPieces, ShearSetting } from "../../lib/part/cut-list.ts";
import type { JointSettings } from "../../lib/part/joint-settings.ts";
import type { Plan } from "../../lib/part/plan.ts";
import type { HoleStep, NotchStep, PunchStep } from "../../lib/part/punch-list.ts";
import { formatQuantity, type LengthView, showQuantity } from "../../lib/quantity/format.ts";
import { useTexts } from "../../texts/context.ts";
import { planSheet } from "../../texts/en/plan-sheet.ts";
import { box, SheetTable, WriteHere } from "./SheetTable.tsx";

interface Props<Key extends keyof Plan> {
  readonly plan: Pick<Plan, Key>;
  readonly view: LengthView;
}

const bareIn = (view: LengthView) => (value: number) => showQuantity(value, "length", view, "setting").number;
const sizeIn = (view: LengthView) => (value: number) => formatQuantity(value, "length", view, "setting");

type Texts = typeof planSheet;

/** What falls behind the blade, in words. */
function fallen({ cuts }: Texts, { off, times }: ShearSetting, of: CutPieces["of"]): string {
  return off === "strip" || off === "rest" ? cuts[off](times) : of === "blank" ? cuts.blank(times) : cuts.practice(times);
}

/** Sizes to shear and the settings of the stop, in order. */
export function CutList({ plan, view, after }: Props<"cuts"> & { readonly after?: string }) {
  const texts = useTexts(planSheet);
  const { cuts } = texts;
  const { sheet, pieces } = plan.cuts;
  const bare = bareIn(view);
  const rough = (value: number) => showQuantity(value, "length", view).number;
  const [blank] = pieces;
  const strokes = pieces.flatMap((piece) => piece.settings.map((setting) => ({ of: piece.of, setting })));
  if (!blank) return null;
  return (
    <section class="plan-cuts">
      <h3>{cuts.title}</h3>
      <p>
        {cuts.blanks(blank.count, bare(blank.width), bare(blank.depth), texts.unit[view])}
        {sheet ? cuts.fromStock(blank.sheets, rough(sheet.width), rough(sheet.length)) : cuts.noStock}
        {blank.grain && cuts.grain[blank.grain]}
        {cuts.diagonals(bare(blank.diagonal))}
        {after !== undefined && <span class="not-on-paper"> {after}</span>} <span class="only-on-paper">{cuts.burr}</span>
      </p>
      <SheetTable
        caption={cuts.caption(texts.unit[view])}
        head={cuts.heads}
        rows={strokes.map(({ of, setting }, index) => [
          <>
            {box} {index + 1}
          </>,
          setting.stop === undefined ? cuts.scribe(bare(setting.size)) : <strong key="stop">{bare(setting.stop)}</strong>,
          fallen(texts, setting, of),
          setting.reaches ? bare(setting.cutLength) : cuts.tooLong(bare(setting.cutLength)),
        ])}
      />
    </section>
  );
}

/** Size of a hole in words. */
export function sizeWords(
  { shape, width, height }: Pick<HoleStep, "shape" | "width" | "height">,
  bare: (value: number) => string,
): string {
  if (shape === "round") return `⌀ ${bare(width)}`;
  return `${shape} ${shape === "square" ? bare(width) : `${bare(width)} × ${bare(height)}`}`;
}

function holeToolWords({ punching }: Texts, { tool, kind }: HoleStep): string {
  if (tool.by === "punch") return punching.punch(String(tool.punch.die), Math.round(100 * tool.share));
  // A relief is drilled anywhere as a matter of course.
  if (kind === "relief") return punching.drill;
  const how = tool.by === "drill" ? punching.drill : punching.drillAndSaw;
  return `${how}: ${punching.notPunched[tool.why]}`;
}

function notchToolWords({ punching }: Texts, { tool, square }: NotchStep, bare: (value: number) => string): string {
  const first = tool.by === "corner-cutter" ? punching.cornerCutter : punching.toTheLines;
  const why = tool.why ? `: ${punching.notCut[tool.why]}` : "";
  return `${first}${why}${square === undefined ? "" : punching.thenRelief(bare(square))}`;
}

function whatIsMade({ punching }: Texts, step: PunchStep, corners: number): string {
  const count = step.for.length;
  if (step.kind === "hole") return punching.holes(step.for);
  const what = step.kind === "relief" ? punching.reliefs(count) : punching.notches(count);
  return count === corners && count > 1 ? punching.everyCorner(what) : `${what}: ${step.for.join(", ")}`;
}

/** Settings of the guides, measured from the edges of the blank. */
function guideWords({ punching }: Texts, { guide: { x, y } }: NotchStep, bare: (value: number) => string): string {
  const [across, along] = [bare(x), bare(y)];
  return across === along ? punching.bothGuides(across) : punching.guides(across, along);
}

/** Reliefs, holes and notches, in order, each with its tool. */
export function PunchTable({ plan, view, note }: Props<"punching" | "corners"> & { readonly note?: string }) {
  const texts = useTexts(planSheet);
  const { punching } = texts;
  if (plan.punching.length === 0) return null;
  const bare = bareIn(view);
  return (
    <section class="plan-punching">
      <h3>{punching.title}</h3>
      {note !== undefined && <p class="not-on-paper">{note}</p>}
      <p class="only-on-paper">{punching.centrePunch}</p>
      <SheetTable
        caption={punching.caption(texts.unit[view])}
        head={punching.heads}
        rows={plan.punching.map((step) => [
          <>
            {box} {step.number}
          </>,
          whatIsMade(texts, step, plan.corners.length),
          step.kind === "notch" ? guideWords(texts, step, bare) : sizeWords(step, bare),
          step.kind === "notch" ? notchToolWords(texts, step, bare) : holeToolWords(texts, step),
        ])}
      />
    </section>
  );
}

const seconds = (value: number) => formatQuantity(value, "time");

function SpotWords({ joints, view }: { joints: Extract<JointSettings, { kind: "spots" }>; view: LengthView }) {
  const texts = useTexts(planSheet).joints;
  const { start, verdict, reason } = joints;
  const size = sizeIn(view);
  if (!start) return <p>{verdict === "no" ? texts.notWelded(reason?.text ?? "") : texts.noSchedule}</p>;
  return (
    <SheetTable
      caption={texts.spotCaption}
      head={texts.spotHeads}
      rows={[
        [
          texts.spots(joints.count),
          size(start.tipFace),
          `${texts.between(formatQuantity(start.forceMin, "force"), formatQuantity(start.forceMax, "force"))}${start.beyond.includes("force") ? texts.beyond : ""}`,
          `${texts.between(formatQuantity(start.currentMin, "current"), formatQuantity(start.currentMax, "current"))}${start.beyond.includes("current") ? texts.beyond : ""}`,
          texts.between(seconds(start.timeMin), seconds(start.timeMax)),
          size(start.button),
          box,
        ],
      ]}
    />
  );
}

/** How the tabs are joined to the sides they lie on. */
export function JointTable({ plan, view, title }: Props<"joints"> & { readonly title?: string }) {
  const texts = useTexts(planSheet).joints;
  const { joints } = plan;
  if (!joints) return null;
  const size = sizeIn(view);
  return (
    <section class="plan-joints">
      <h3>{title ?? texts.tabs}</h3>
      {joints.kind === "spots" ? (
        <SpotWords joints={joints} view={view} />
      ) : (
        <SheetTable
          caption={texts.rivetCaption}
          head={texts.rivetHeads}
          rows={[
            [
              texts.rivets(joints.count),
              `${joints.inches} (${size(joints.diameter)})`,
              size(joints.hole),
              size(joints.grip),
              size(joints.length),
            ],
          ]}
        />
      )}
      {joints.tabs.length > 1 && <p>{joints.tabs.map(({ id, onto, count }) => texts.onto(id, onto, count)).join("; ")}.</p>}
    </section>
  );
}

/** Strips to bend before the part, with room for what they measure. */
export function PracticeTables({ plan, view }: Props<"practice">) {
  const texts = useTexts(planSheet);
  if (plan.practice.length === 0) return null;
  const size = sizeIn(view);
  return (
    <section class="plan-practice">
      <h3>{texts.practice.title}</h3>
      {plan.practice.map((practice) => (
        <div class="practice-group" key={practice.for.join()}>
          <p>
            {texts.practice.strips(
              practice.pieces,
              size(practice.size.length),
              size(practice.size.width),
              formatQuantity(practice.angle, "angle"),
              size(practice.radius),
              practice.for,
            )}{" "}
            <span class="not-on-paper">{texts.practice.enter}</span>
          </p>
          <SheetTable
            caption={texts.practice.caption}
            head={texts.practice.heads(texts.unit[view])}
            rows={Array.from({ length: practice.pieces }, (_, index) => [
              String(index + 1),
              <WriteHere key="flat" />,
              <WriteHere key="a" />,
              <WriteHere key="b" />,
            ])}
          />
        </div>
      ))}
    </section>
  );
}
