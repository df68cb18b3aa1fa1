import type { CutPieces, ShearSetting } from "../../lib/part/cut-list.ts";
import type { JointSettings } from "../../lib/part/joint-settings.ts";
import type { Plan } from "../../lib/part/plan.ts";
import type { HoleStep, NotchStep, PunchStep } from "../../lib/part/punch-list.ts";
import { formatQuantity, type LengthView, showQuantity } from "../../lib/quantity/format.ts";
import { box, SheetTable, WriteHere } from "./SheetTable.tsx";

interface Props<Key extends keyof Plan> {
  readonly plan: Pick<Plan, Key>;
  readonly view: LengthView;
}

const bareIn = (view: LengthView) => (value: number) => showQuantity(value, "length", view, "setting").number;
const sizeIn = (view: LengthView) => (value: number) => formatQuantity(value, "length", view, "setting");
const unitOf = (view: LengthView) => (view === "mm" ? "mm" : "in");
const times = (count: number, one: string, more: string) => `${count} ${count === 1 ? one : more}`;

/** What falls behind the blade, in words. */
function fallen({ off, times: count }: ShearSetting, of: CutPieces["of"]): string {
  if (off === "strip") return count === 1 ? "a strip off the sheet" : `${count} strips off the sheet`;
  if (off === "rest") return count === 1 ? "the rest off; keep the piece" : "the rest off each; keep the pieces";
  if (of === "blank") return count === 1 ? "the blank off the strip" : `${count} blanks off the strips`;
  return times(count, "practice strip", "practice strips");
}

const grainWords = { x: "west to east", y: "south to north" } as const;

/** Sizes to shear and the settings of the stop, in order. */
export function CutList({ plan, view, after }: Props<"cuts"> & { readonly after?: string }) {
  const { sheet, pieces } = plan.cuts;
  const bare = bareIn(view);
  const rough = (value: number) => showQuantity(value, "length", view).number;
  const [blank] = pieces;
  const strokes = pieces.flatMap((piece) => piece.settings.map((setting) => ({ of: piece.of, setting })));
  if (!blank) return null;
  return (
    <section class="plan-cuts">
      <h3>At the shear</h3>
      <p>
        {times(blank.count, "blank", "blanks")} {bare(blank.width)} × {bare(blank.depth)} {unitOf(view)}
        {sheet
          ? ` from ${blank.sheets === 1 ? "a stock sheet" : `${blank.sheets} stock sheets`} ${rough(sheet.width)} × ${rough(sheet.length)}`
          : "; no sheet of this shop’s stock is right, so the stop is set as for one that is just large enough"}
        {blank.grain && `, rolling direction ${grainWords[blank.grain]}`}. For square corners both diagonals{" "}
        {bare(blank.diagonal)}.{after !== undefined && <span class="not-on-paper"> {after}</span>}{" "}
        <span class="only-on-paper">Take the burr off every edge; mark the datum edges.</span>
      </p>
      <SheetTable
        caption={`Back stop, ${unitOf(view)} from the blade, in cutting order`}
        head={["Setting", "Stop", "Cut", "Along the blade"]}
        rows={strokes.map(({ of, setting }, index) => [
          <>
            {box} {index + 1}
          </>,
          setting.stop === undefined ? (
            `scribe a line at ${bare(setting.size)}`
          ) : (
            <strong key="stop">{bare(setting.stop)}</strong>
          ),
          fallen(setting, of),
          setting.reaches ? bare(setting.cutLength) : `${bare(setting.cutLength)}, longer than the shear: cut it another way`,
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

const whyNotPunched = {
  "no-punch": "no such punch here",
  force: "too much force for the punch",
  throat: "beyond the throat of the punch",
} as const;

function holeToolWords({ tool, kind }: HoleStep): string {
  if (tool.by === "punch") return `punch, die ${tool.punch.die}; ${Math.round(100 * tool.share)} % of its force`;
  // A relief is drilled anywhere as a matter of course.
  if (kind === "relief") return "drill";
  const how = tool.by === "drill" ? "drill" : "drill its ends or corners, saw or file between";
  return `${how}: ${whyNotPunched[tool.why]}`;
}

const whyByLines = {
  size: "too large for the corner cutter",
  thickness: "too thick for the corner cutter",
  shape: "more than a square corner",
} as const;

function notchToolWords({ tool, square }: NotchStep, bare: (value: number) => string): string {
  const first = tool.by === "corner-cutter" ? "corner cutter" : "snips or band saw to the lines";
  const why = tool.why ? `: ${whyByLines[tool.why]}` : "";
  return `${first}${why}${square === undefined ? "" : `; then the square relief, ${bare(square)}`}`;
}

function whatIsMade(step: PunchStep, corners: number): string {
  const count = step.for.length;
  if (step.kind === "hole") return `${count === 1 ? "hole" : "holes"} ${step.for.join(", ")}`;
  const what = step.kind === "relief" ? times(count, "relief hole", "relief holes") : times(count, "notch", "notches");
  return count === corners && count > 1 ? `${what}, one at every corner` : `${what}: ${step.for.join(", ")}`;
}

/** Settings of the guides, measured from the edges of the blank. */
function guideWords({ guide: { x, y } }: NotchStep, bare: (value: number) => string): string {
  const [across, along] = [bare(x), bare(y)];
  return across === along ? `both guides ${across}` : `guides ${across} from west or east, ${along} from south or north`;
}

/** Reliefs, holes and notches, in order, each with its tool. */
export function PunchTable({ plan, view, note }: Props<"punching" | "corners"> & { readonly note?: string }) {
  if (plan.punching.length === 0) return null;
  const bare = bareIn(view);
  return (
    <section class="plan-punching">
      <h3>Holes and notches, while it is flat</h3>
      {note !== undefined && <p class="not-on-paper">{note}</p>}
      <p class="only-on-paper">Centre-punch where lines cross; take the burr off afterwards.</p>
      <SheetTable
        caption={`In this order, sizes in ${unitOf(view)}`}
        head={["Step", "Make", "Size", "With"]}
        rows={plan.punching.map((step) => [
          <>
            {box} {step.number}
          </>,
          whatIsMade(step, plan.corners.length),
          step.kind === "notch" ? guideWords(step, bare) : sizeWords(step, bare),
          step.kind === "notch" ? notchToolWords(step, bare) : holeToolWords(step),
        ])}
      />
    </section>
  );
}

const seconds = (value: number) => formatQuantity(value, "time");
const between = (low: string, high: string) => (low === high ? low : `${low} to ${high}`);

function SpotWords({ joints, view }: { joints: Extract<JointSettings, { kind: "spots" }>; view: LengthView }) {
  const { start, verdict, reason } = joints;
  const size = sizeIn(view);
  if (!start)
    return (
      <p>
        {verdict === "no"
          ? `This metal is not spot welded here: ${reason?.text ?? ""} Rivet it.`
          : "No schedule for this thickness was read: ask your instructor."}
      </p>
    );
  return (
    <SheetTable
      caption="Where to start at the spot welder; test coupons of the same two sheets decide"
      head={["Joints", "Tip face", "Force", "Current", "Time", "Button, at least", "Coupon passed"]}
      rows={[
        [
          times(joints.count, "spot", "spots"),
          size(start.tipFace),
          `${between(formatQuantity(start.forceMin, "force"), formatQuantity(start.forceMax, "force"))}${start.beyond.includes("force") ? " (beyond this welder)" : ""}`,
          `${between(formatQuantity(start.currentMin, "current"), formatQuantity(start.currentMax, "current"))}${start.beyond.includes("current") ? " (beyond this welder)" : ""}`,
          between(seconds(start.timeMin), seconds(start.timeMax)),
          size(start.button),
          box,
        ],
      ]}
    />
  );
}

/** How the tabs are joined to the sides they lie on. */
export function JointTable({ plan, view, title = "Joining the tabs" }: Props<"joints"> & { readonly title?: string }) {
  const { joints } = plan;
  if (!joints) return null;
  const size = sizeIn(view);
  return (
    <section class="plan-joints">
      <h3>{title}</h3>
      {joints.kind === "spots" ? (
        <SpotWords joints={joints} view={view} />
      ) : (
        <SheetTable
          caption="Drill through both layers together, take the burr off between them, then rivet"
          head={["Joints", "Rivet", "Drill", "Grip", "Solid rivet, length"]}
          rows={[
            [
              times(joints.count, "rivet", "rivets"),
              `${joints.inches} (${size(joints.diameter)})`,
              size(joints.hole),
              size(joints.grip),
              size(joints.length),
            ],
          ]}
        />
      )}
      {joints.tabs.length > 1 && <p>{joints.tabs.map(({ id, onto, count }) => `${id} onto ${onto}: ${count}`).join("; ")}.</p>}
    </section>
  );
}

/** Strips to bend before the part, with room for what they measure. */
export function PracticeTables({ plan, view }: Props<"practice">) {
  if (plan.practice.length === 0) return null;
  const size = sizeIn(view);
  return (
    <section class="plan-practice">
      <h3>Practice pieces first</h3>
      {plan.practice.map((practice) => (
        <div class="practice-group" key={practice.for.join()}>
          <p>
            {practice.pieces} strips, {size(practice.size.length)} × {size(practice.size.width)}, bent across the middle to{" "}
            {formatQuantity(practice.angle, "angle")} at a radius of {size(practice.radius)}, for {practice.for.join(", ")}.{" "}
            <span class="not-on-paper">
              Write down what you measure and enter it: the plan then fits this brake and this sheet.
            </span>
          </p>
          <SheetTable
            caption="What they measure"
            head={["Piece", `Flat before, ${unitOf(view)}`, "Leg A", "Leg B"]}
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
