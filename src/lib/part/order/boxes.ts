import type { FormingTab, HingeChain } from "./job.ts";
import { sideShape } from "./shape.ts";
import { radians } from "./sweep.ts";

/**
 * Formed panels whose planes stand across the section: seen in section they are one full region. Along the section in coordinates of
 * the blank; `low` and `high` from the middle of the sheet they stand on, up from the face that is up on the bench.
 */
export interface CrossBox {
  /** Index of the panel they stand on. */
  readonly on: number;
  /** The one that reaches farthest from that panel, to name when it is in the way. */
  readonly panel: string;
  readonly from: number;
  readonly to: number;
  /** The same at the foot, where it differs. */
  readonly root?: readonly [number, number];
  readonly low: number;
  readonly high: number;
  /** A folded edge that lies on its sheet: it is thin enough to lie on bed and leaf. */
  readonly flat: boolean;
  /** Across the section, in coordinates of the blank, each panel. */
  readonly across: readonly { readonly near: number; readonly far: number }[];
}

/** Panels of one extent along the section look like one. */
function merged(boxes: readonly CrossBox[]): CrossBox[] {
  const byExtent = new Map<string, CrossBox>();
  const height = ({ low, high }: CrossBox) => Math.max(-low, high);
  for (const box of boxes) {
    // A region that is narrower at its foot stays by itself: laid over others it would become larger than they are.
    const key = `${box.on} ${box.from} ${box.to} ${box.flat} ${box.root ? box.panel : ""}`;
    const known = byExtent.get(key);
    byExtent.set(
      key,
      known
        ? {
            ...known,
            panel: height(box) > height(known) ? box.panel : known.panel,
            low: Math.min(known.low, box.low),
            high: Math.max(known.high, box.high),
            across: [...known.across, ...box.across],
          }
        : box,
    );
  }
  return [...byExtent.values()];
}

/** What the other chain's formed panels are to a section through this one. */
export function crossBoxes(other: HingeChain, formed: number, on: number, thickness: number): CrossBox[] {
  const base = other.panels[other.baseIndex] as HingeChain["panels"][number];
  const boxes: CrossBox[] = [];
  const half = thickness / 2;
  for (const direction of [1, -1] as const) {
    const first = other.baseIndex + direction;
    const hingeIndex = direction === 1 ? other.baseIndex : other.baseIndex - 1;
    if (first < 0 || first >= other.panels.length || hingeIndex < 0) continue;
    const shape = sideShape(other, other.baseIndex, formed, thickness, { direction, faceUp: true });
    const start = direction === 1 ? base.from : base.to;
    const byPanel = new Map<number, { u0: number; u1: number; z0: number; z1: number }>();
    shape.panels.forEach((index, at) => {
      if (index === other.baseIndex) return;
      const [au, az, bu, bz] = [0, 1, 2, 3].map((k) => shape.segments[4 * at + k] as number) as [number, number, number, number];
      const box = byPanel.get(index) ?? {
        u0: Number.POSITIVE_INFINITY,
        u1: Number.NEGATIVE_INFINITY,
        z0: Number.POSITIVE_INFINITY,
        z1: Number.NEGATIVE_INFINITY,
      };
      // The round at the foot of a panel does not narrow the room: it takes less of it than the clearance.
      const isRound = shape.panels[at + 1] === index;
      byPanel.set(index, {
        u0: isRound ? box.u0 : Math.min(box.u0, au, bu),
        u1: isRound ? box.u1 : Math.max(box.u1, au, bu),
        z0: Math.min(box.z0, az, bz),
        z1: Math.max(box.z1, az, bz),
      });
    });
    for (const [index, { u0, u1, z0, z1 }] of byPanel) {
      const panel = other.panels[index] as HingeChain["panels"][number];
      const [low, high] = [z0 - half, z1 - half];
      if (low > -1e-6 && high < 1e-6) continue;
      const ends = [start + direction * (u0 - half), start + direction * (u1 + half)];
      const { edge } = other.hinges[direction === 1 ? index - 1 : index] ?? {};
      const flat = edge !== undefined && high - low <= 3 * thickness + edge.gap + 1e-6;
      boxes.push({
        on,
        flat,
        panel: panel.id,
        from: panel.span[0],
        to: panel.span[1],
        ...(panel.root && { root: panel.root }),
        across: [{ near: Math.min(...ends), far: Math.max(...ends) }],
        low: low - half,
        high: high + half,
      });
    }
  }
  return merged(boxes);
}

/** A tab that stands at the end of a wall. */
export function tabBox(tab: FormingTab, chain: HingeChain, thickness: number): CrossBox {
  const half = thickness / 2;
  const on = chain.panels.findIndex(({ id }) => id === tab.panel);
  const [start, end] = chain.panels[on]?.span ?? [0, 0];
  const turn = radians(tab.angle);
  const middle = tab.radius + half;
  const across = middle * Math.sin(turn) + Math.max(0, tab.length * Math.cos(turn)) + half;
  const height = middle * (1 - Math.cos(turn)) + tab.length * Math.sin(turn) + half;
  const [near, far] = tab.end === "low" ? [start - across, start] : [end, end + across];
  const [low, high] = tab.way === "up" ? [-half, height] : [-height, half];
  return { on, panel: tab.id, from: tab.from, to: tab.to, low, high, flat: false, across: [{ near, far }] };
}
