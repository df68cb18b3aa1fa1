import type { Block } from "./block.ts";
import { type CrossBox, crossBoxes, tabBox } from "./boxes.ts";
import { type Crossing, crossing, type Limits, noCrossing } from "./crossing.ts";
import { type Fingers, fingersFor, leastCover } from "./fingers.ts";
import { type FormingBrake, type FormingJob, type FormingTab, type Hinge, type HingeChain, hingeChain } from "./job.ts";
import { legAt, mirrored, placed } from "./pose.ts";
import { type SideShape, sideShape } from "./shape.ts";
import { clampedSide, movingSide, panelOf, partItself, pressed, type Setup } from "./sides.ts";
import { closeTo, radians } from "./sweep.ts";
import { type Tools, toolsOf } from "./tools.ts";
import { boxesPass, type Passage, passages, quarters, sheetPasses } from "./way-out.ts";

/** How a piece goes in before a bend and comes out after it. */
export type Way = "front" | "sideways" | "with fingers";

/** A bend that can be made. */
export interface Fit {
  readonly fingers: Fingers;
  /** Which fingers it needs: the same number for the same set; 0 where any that are long enough may stay. */
  readonly set: number;
  /** Least total of fingers that will do [mm]; for bends where any may stay. */
  readonly need: number;
  readonly goesIn: Way;
  readonly comesOut: Way;
}

/** One bend as it is made: which way the piece points. */
export interface Choice {
  /** Number of the operation: its bit in the mask. */
  readonly op: number;
  /** 1: the end of the chain lies on the leaf; −1: its start. */
  readonly outward: 1 | -1;
}

/** An operation: one bend or one folded edge. */
export interface Operation {
  readonly id: string;
  readonly chain: number;
  readonly hinge: number;
  readonly faceUp: boolean;
}

/** Room for fingers as a number that can be looked up: −1 with nothing beside them, −2 with one side, else in thousandths. */
function fingerRoom({ left, right }: Limits): number {
  if (Number.isFinite(right - left)) return Math.round((right - left) * 1000);
  return Number.isFinite(left) || Number.isFinite(right) ? -2 : -1;
}

interface TabAt {
  readonly tab: FormingTab;
  /** Bends that swing its wall. */
  readonly own: number;
  /** Bend of the side it will lie on. */
  readonly onto: number;
  readonly box: CrossBox;
}

/** Most folds in one job; each has its bit. */
export const mostOperations = 16;
const states = 2 ** mostOperations;
/** How much nearer than touching sheet may come to a tool on its way in or out [mm]: rounding, not room. */
const handling = 0.05;

/**
 * Holds single bends of a job against a brake. What depends on one side of the bend only is worked out once for each state of that
 * side, so that a search over all orders asks the geometry little.
 *
 * Left out: how the sheet gives way; folds of one chain against those of the other at the corners, which the layout's corner gap must
 * keep apart; counterweights, back stop and the ends of the machine.
 */
export class Forming {
  readonly job: FormingJob;
  readonly brake: FormingBrake;
  readonly chains: readonly HingeChain[];
  readonly operations: readonly Operation[];
  /** Mask in which everything is made. */
  readonly full: number;
  private readonly shift: readonly number[];
  private readonly tabs: readonly (readonly TabAt[])[];
  private readonly setups = new Map<number, Setup>();
  private readonly tools = new Map<number, { relieved: Tools; whole: Tools }>();
  private readonly memo = new Map<number, Map<number, unknown>>();
  private readonly sets = new Map<string, number>();

  constructor(job: FormingJob, brake: FormingBrake) {
    this.job = job;
    this.brake = brake;
    this.chains = job.chains.map((chain) => hingeChain(chain, job.thickness));
    const shift: number[] = [];
    const operations: Operation[] = [];
    this.chains.forEach(({ hinges }, chain) => {
      shift.push(operations.length);
      hinges.forEach(({ id, up }, hinge) => {
        operations.push({ id, chain, hinge, faceUp: up });
      });
    });
    if (operations.length > mostOperations)
      throw new RangeError(`a job may have ${mostOperations} folds; this has ${operations.length}`);
    this.shift = shift;
    this.operations = operations;
    this.full = 2 ** operations.length - 1;
    this.tabs = job.chains.map(({ tabs = [] }, chain) => tabs.map((tab) => this.tabAt(tab, chain)));
  }

  private tabAt(tab: FormingTab, chain: number): TabAt {
    const { panels, baseIndex } = this.chains[chain] as HingeChain;
    const panel = panels.findIndex(({ id }) => id === tab.panel);
    const onto = this.operations.findIndex(({ id }) => id === tab.onto);
    if (panel < 0 || onto < 0 || this.operations[onto]?.chain === chain)
      throw new RangeError(
        `tab ${tab.id} must name a panel of its chain and a bend of the other; it names ${tab.panel} and ${tab.onto}`,
      );
    const own = this.operations.reduce((bits, operation, op) => {
      const { hinge } = operation;
      const isBetween = hinge >= Math.min(panel, baseIndex) && hinge < Math.max(panel, baseIndex);
      return operation.chain === chain && isBetween ? bits | (1 << op) : bits;
    }, 0);
    return { tab, own, onto, box: tabBox(tab, this.chains[chain] as HingeChain, this.job.thickness) };
  }

  private once<T>(slot: number, key: number, make: () => T): T {
    let values = this.memo.get(slot);
    if (!values) {
      values = new Map();
      this.memo.set(slot, values);
    }
    const known = values.get(key);
    if (known !== undefined) return known as T;
    const made = make();
    values.set(key, made);
    return made;
  }

  private slot(kind: number, { op, outward }: Choice): number {
    return (kind * mostOperations + op) * 2 + (outward === 1 ? 1 : 0);
  }

  private hingeOf(op: number): { chain: HingeChain; hinge: Hinge; operation: Operation } {
    const operation = this.operations[op] as Operation;
    const chain = this.chains[operation.chain] as HingeChain;
    return { chain, hinge: chain.hinges[operation.hinge] as Hinge, operation };
  }

  /** Angle of the bend when the leaf has let go: a folded edge is begun as far as the leaf goes. */
  angleOf({ edge, angle }: Hinge): number {
    return edge ? Math.min(angle, this.brake.largestSwing) : angle;
  }

  setup(op: number): Setup {
    const known = this.setups.get(op);
    if (known) return known;
    const { brake, job } = this;
    const { chain, hinge } = this.hingeOf(op);
    const radius = hinge.edge ? Math.max(hinge.radius, brake.noseRadius) : hinge.radius;
    let tools = this.tools.get(radius);
    if (!tools) {
      tools = {
        relieved: toolsOf(brake, job.thickness, radius, brake.clearance),
        whole: toolsOf(brake, job.thickness, radius, 0),
      };
      this.tools.set(radius, tools);
    }
    const swing = hinge.edge ? this.angleOf(hinge) : hinge.swing;
    const setup = { brake, thickness: job.thickness, chain, hinge, tools: tools.relieved, whole: tools.whole, swing };
    this.setups.set(op, setup);
    return setup;
  }

  /** Bits of one chain. */
  private own(chain: number, mask: number): number {
    const { hinges } = this.chains[chain] as HingeChain;
    return (mask >> (this.shift[chain] as number)) & (2 ** hinges.length - 1);
  }

  private shape(chain: number, from: number, direction: 1 | -1, faceUp: boolean, formed: number): SideShape {
    const slot = -1 - (((chain * 32 + from) * 2 + (direction === 1 ? 1 : 0)) * 2 + (faceUp ? 1 : 0));
    return this.once(slot, formed, () =>
      sideShape(this.chains[chain] as HingeChain, from, formed, this.job.thickness, { direction, faceUp }),
    );
  }

  /** Both sides of a bend, and the bits that shape each. */
  sides({ op, outward }: Choice, mask: number) {
    const { chain, hinge, faceUp } = this.operations[op] as Operation;
    const own = this.own(chain, mask);
    const below = own & (2 ** hinge - 1);
    const above = own & ~(2 ** (hinge + 1) - 1);
    const [movingBits, clampedBits] = outward === 1 ? [above, below] : [below, above];
    return {
      movingBits,
      clampedBits,
      outward,
      faceUp,
      moving: this.shape(chain, outward === 1 ? hinge + 1 : hinge, outward, faceUp, movingBits),
      clamped: this.shape(chain, outward === 1 ? hinge : hinge + 1, outward === 1 ? -1 : 1, faceUp, clampedBits),
    };
  }

  /** Whether the flats are long enough for fingers and leaf. */
  private held(op: number, { moving, clamped, outward }: ReturnType<Forming["sides"]>): Block | null {
    const { brake, job } = this;
    const { chain, hinge, operation } = this.hingeOf(op);
    const [onLeaf, underFingers] = [panelOf(chain, moving, 0), panelOf(chain, clamped, 0)];
    if (hinge.edge) {
      // A folded edge is narrower than any leg: the leaf begins it, and pressing ends it. It must be the edge that is on the leaf.
      if ((outward === 1) !== operation.hinge > 0) return { by: "leaf", when: "held", angle: 0, panel: onLeaf };
    } else {
      if (hinge.swing > brake.largestSwing + closeTo)
        return { by: "leaf", when: "swing", angle: brake.largestSwing, panel: onLeaf };
      const setback = Math.tan(radians(Math.min(hinge.angle, 90)) / 2) * (hinge.radius + job.thickness);
      const outside = moving.run + moving.runSetback + setback;
      if (outside < brake.shortestLeg - closeTo || outside > brake.longestLeg + closeTo)
        return { by: "leaf", when: "held", angle: 0, panel: onLeaf };
    }
    return clamped.run < brake.shortestHold - closeTo ? { by: "fingers", when: "held", angle: 0, panel: underFingers } : null;
  }

  /** Formed panels that stand across the section of a chain. */
  boxes(chain: number, mask: number): readonly CrossBox[] {
    return this.once(-10_000 - chain, this.chains.length > 1 ? this.own(1 - chain, mask) : 0, () => {
      const other = this.chains[1 - chain];
      const { baseIndex } = this.chains[chain] as HingeChain;
      const formed = other ? crossBoxes(other, this.own(1 - chain, mask), baseIndex, this.job.thickness) : [];
      return [...formed, ...(this.tabs[chain] ?? []).map(({ box }) => box)];
    });
  }

  /** Extent of a bend along its line. */
  bendSpan(op: number): readonly [number, number] {
    const { chain, operation } = this.hingeOf(op);
    const [a, b] = [chain.panels[operation.hinge]?.span ?? [0, 0], chain.panels[operation.hinge + 1]?.span ?? [0, 0]];
    return [Math.max(a[0], b[0]), Math.min(a[1], b[1])];
  }

  /** Tabs that stand on flat walls beside a bend leave no room for fingers there. */
  private besideTabs(op: number, { left, right }: Limits): Limits {
    const [low, high] = this.bendSpan(op);
    const beside = this.tabs.flat().filter(({ onto }) => onto === op);
    return {
      left: Math.max(left, ...beside.filter(({ tab }) => tab.to <= low).map(({ tab }) => tab.to)),
      right: Math.min(right, ...beside.filter(({ tab }) => tab.from >= high).map(({ tab }) => tab.from)),
    };
  }

  private crossing(choice: Choice, mask: number, sides: ReturnType<Forming["sides"]>): Crossing {
    const { operation, hinge } = this.hingeOf(choice.op);
    const boxes = this.boxes(operation.chain, mask);
    if (boxes.length === 0) return noCrossing;
    const other = this.chains.length > 1 ? this.own(1 - operation.chain, mask) : 0;
    const [low, high] = this.bendSpan(choice.op);
    return this.once(this.slot(5, choice), (sides.movingBits | sides.clampedBits) * states + other, () =>
      crossing(this.setup(choice.op), sides, boxes, { angle: this.angleOf(hinge), middle: (low + high) / 2 }),
    );
  }

  private sidePasses(choice: Choice, sides: ReturnType<Forming["sides"]>, side: 0 | 1 | 2, passage: Passage, quarter: number) {
    const kind = 8 + (side * passages.length + passages.indexOf(passage)) * (quarters + 1) + quarter;
    return this.once(this.slot(kind, choice), side === 0 ? sides.clampedBits : sides.movingBits, () => {
      const { brake, thickness, hinge, tools } = this.setup(choice.op);
      const half = thickness / 2;
      const turned = side === 2 ? radians(this.angleOf(hinge)) : 0;
      const sheet =
        side === 0
          ? mirrored(sides.clamped.segments, tools.centre[0])
          : placed(sides.moving.segments, legAt(tools, hinge, turned), half);
      // A folded edge under the leg has its room: the leaf is set lower by its thickness.
      const skip = side === 0 || passage !== "bed" ? undefined : sides.moving.flaps;
      return sheetPasses(brake, tools, sheet, passage, quarter, half - handling, skip);
    });
  }

  /** Of the blank, along the bend lines of a chain. */
  private breadth(chain: number): number {
    return this.once(-20_000, chain, () => {
      const spans = (this.chains[chain] as HingeChain).panels.flatMap(({ span }) => [...span]);
      const across = (this.chains[1 - chain]?.panels ?? []).flatMap(({ from, to }) => [from, to]);
      return Math.max(...spans, ...across) - Math.min(...spans, ...across);
    });
  }

  /** Fingers depend on the room and the length only, which few bends of a part have to themselves. */
  private fingers(length: number, limits: Limits): Fingers | null {
    const room = fingerRoom(limits);
    const key = Math.round(length * 1000) * 4 + (room < 0 ? -room : 0);
    const slot = room < 0 ? -30_000 : -40_000 - room;
    return this.once(slot, key, () => fingersFor(this.brake, length, limits) ?? null);
  }

  /** How the piece gets in before, or out after, a bend. */
  private wayFor(choice: Choice, sides: ReturnType<Forming["sides"]>, cross: Crossing, after: boolean): Way | undefined {
    const { tools } = this.setup(choice.op);
    const boxes = after ? cross.after : cross.before;
    const passes = (passage: Passage, quarter: number) =>
      this.sidePasses(choice, sides, 0, passage, quarter) &&
      this.sidePasses(choice, sides, after ? 2 : 1, passage, quarter) &&
      boxesPass(this.brake, tools, boxes, passage, quarter);
    const least = (passage: Passage) => {
      for (let quarter = 0; quarter <= quarters; quarter += 1) if (passes(passage, quarter)) return quarter;
      return Number.POSITIVE_INFINITY;
    };
    const lift = least("bed");
    if (lift + least("fingers") <= quarters || (lift === 0 && least("shifted") <= quarters)) return "front";
    const { left, right } = cross.limits;
    const oneSideFree = !(Number.isFinite(left) && Number.isFinite(right));
    if (oneSideFree && 2 * this.breadth((this.operations[choice.op] as Operation).chain) <= this.brake.rating.length)
      return "sideways";
    return lift + least("beam") <= quarters ? "with fingers" : undefined;
  }

  private setOf({ place, chosen }: Fingers): number {
    if (place === "row") return 0;
    const name = chosen.join(" ");
    const set = this.sets.get(name) ?? this.sets.size + 1;
    this.sets.set(name, set);
    return set;
  }

  /** Holds one bend against the brake, when the bends in `mask` are made. */
  check(choice: Choice, mask: number): { readonly fit?: Fit; readonly block?: Block } {
    const { op } = choice;
    const { hinge, operation, chain } = this.hingeOf(op);
    const sides = this.sides(choice, mask);
    const { moving, clamped, movingBits, clampedBits } = sides;
    const both = movingBits | clampedBits;
    const setup = this.setup(op);
    const early = this.tabs.flat().find(({ own, onto }) => (own & (1 << op)) !== 0 && (mask & (1 << onto)) === 0);
    if (early) return { block: { by: "part", when: "held", angle: 0, panel: early.tab.panel } };
    const block =
      this.held(op, sides) ??
      this.once(this.slot(0, choice), clampedBits, () => clampedSide(setup, clamped)) ??
      this.once(this.slot(1, choice), movingBits, () => movingSide(setup, moving)) ??
      (moving.panels.length + clamped.panels.length > 2
        ? this.once(this.slot(2, choice), both, () => partItself(setup, moving, clamped))
        : null) ??
      (hinge.edge ? this.once(this.slot(3, choice), clampedBits, () => pressed(setup, clamped)) : null);
    if (block) return { block };
    const cross = this.crossing(choice, mask, sides);
    if (cross.block) return { block: cross.block };
    const limits = this.besideTabs(op, cross.limits);
    const panel = chain.panels[operation.hinge + (choice.outward === 1 ? 0 : 1)]?.id ?? "";
    const [low, high] = this.bendSpan(op);
    const fingers = this.fingers(high - low, limits);
    if (!fingers) return { block: { by: "fingers", when: "held", angle: 0, panel } };
    const goesIn = this.wayFor(choice, sides, cross, false);
    if (!goesIn) return { block: { by: "fingers", when: "in", angle: 0, panel } };
    const comesOut = this.wayFor(choice, sides, cross, true);
    if (!comesOut) return { block: { by: "fingers", when: "out", angle: this.angleOf(hinge), panel } };
    return { fit: { fingers, set: this.setOf(fingers), need: leastCover(this.brake, high - low), goesIn, comesOut } };
  }

  /** Whether more of the sheet lies on the leaf than is clamped. */
  swingsLarger({ op, outward }: Choice): boolean {
    const { chain, operation } = this.hingeOf(op);
    const { panels } = chain;
    const size = (from: number, to: number) =>
      panels.slice(from, to).reduce((total, { flat, span }) => total + flat * (span[1] - span[0]), 0);
    const [before, after] = [size(0, operation.hinge + 1), size(operation.hinge + 1, panels.length)];
    return outward === 1 ? after > before + closeTo : before > after + closeTo;
  }
}
