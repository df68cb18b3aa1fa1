import { describe, expect, test } from "vitest";
import type { FormingBrake, FormingJob } from "../../src/lib/part/order/job.ts";
import { type BendOrder, bendOrder, type OrderStep } from "../../src/lib/part/order/order.ts";
import { box, brake, type Leg, oneChain, radius, thickness } from "./order-jobs.ts";

/*
 * All expectations are worked out by hand from the figures of the brake in order-jobs.ts: finger 130 mm deep and leaning back 47°,
 * leaf 35 mm wide, bed 120 mm deep and 50 mm high, 110 mm under the beam, beam 115 to 195 mm behind the nose.
 */

const up = (flat: number): Leg => ({ flat });
const down = (flat: number): Leg => ({ flat, way: "down" });
const stepsOf = (order: BendOrder): readonly OrderStep[] => {
  if (!("steps" in order)) throw new Error(`trapped: ${JSON.stringify(order)}`);
  return order.steps;
};
const make = (job: FormingJob, on: FormingBrake = brake) => bendOrder(job, on, { remedies: false });
const isMade = (job: FormingJob, on: FormingBrake = brake) => "steps" in make(job, on);
const trappedOf = (order: BendOrder) => {
  if (!("trapped" in order)) throw new Error("it can be made");
  return order.trapped;
};

describe("channel", () => {
  test("no turning over and no change of fingers, whatever its width", () => {
    for (const base of [60, 100, 200])
      expect(make(oneChain(base, [up(25)], [up(25)]))).toMatchObject({ cost: { turnedOver: 0, fingerChanges: 0 } });
  });

  test("narrower than the foot of the finger is deep: the second leg is clamped and the first comes over the front", () => {
    const [first, second] = stepsOf(make(oneChain(60, [up(25)], [up(25)])));
    // The leg that is bent last is under the fingers; the base and the first leg lie on the leaf.
    expect(second?.bend.split(".")[0]).not.toBe(second?.onLeaf);
    expect(first?.bend).not.toBe(second?.bend);
  });

  test("100 mm legs on a 40 mm base are trapped by the fingers, on wide bases they are not", () => {
    const { by, when, angle } = trappedOf(make(oneChain(40, [up(100)], [up(100)])));
    expect({ by, when }).toEqual({ by: "fingers", when: "swing" });
    expect(angle).toBeGreaterThan(45);
    expect(angle).toBeLessThan(90);
    // Standing behind the heel: base longer than foot, corner and clearance.
    expect(isMade(oneChain(140, [up(100)], [up(100)]))).toBe(true);
  });

  test("the leg over the front just clears when it is as long as the front has gone back there", () => {
    /*
     * At 90° the first leg points back, its underside at the height h = base + radius above the top of the clamped sheet's tangent;
     * the front of the finger is there tan 47° · (h − nose) behind the tangent to the nose. With base 60 that is about 64 mm.
     */
    expect(isMade(oneChain(60, [up(50)], [up(50)]))).toBe(true);
    expect(isMade(oneChain(60, [up(75)], [up(75)]))).toBe(false);
  });
});

describe("Z section", () => {
  test("is turned over once", () => {
    expect(make(oneChain(60, [down(25)], [up(25)]))).toMatchObject({ cost: { turnedOver: 1 } });
  });

  test("its middle must be longer than the leaf is wide", () => {
    // The leg that hangs in front begins about base + radius from the hinge line and needs the clearance.
    expect(isMade(oneChain(brake.leafWidth + 5, [down(25)], [up(25)]))).toBe(true);
    expect(isMade(oneChain(brake.leafWidth - 5, [down(25)], [up(25)]))).toBe(false);
    expect(isMade(oneChain(brake.leafWidth - 5, [down(25)], [up(25)]), { ...brake, leafWidth: 20 })).toBe(true);
  });

  test("or long enough that the first leg hangs behind the bed", () => {
    const wideLeaf = { ...brake, leafWidth: 300 };
    expect(isMade(oneChain(130, [down(25)], [up(25)]), wideLeaf)).toBe(true);
    expect(isMade(oneChain(110, [down(25)], [up(25)]), wideLeaf)).toBe(false);
  });
});

describe("hat", () => {
  test("can be made when its sides are longer than the leaf is wide, and is turned over", () => {
    const order = make(oneChain(200, [up(45), down(20)], [up(45), down(20)]));
    expect(order).toMatchObject({ cost: { turnedOver: 1 } });
  });
  test("is trapped when they are shorter", () => {
    expect(isMade(oneChain(200, [up(25), down(20)], [up(25), down(20)]))).toBe(false);
  });
});

describe("J with a closed edge", () => {
  const hook: Leg = { flat: 14, edge: { kind: "closed", width: 8, way: "up" } };
  test("edge first, then the short leg, then the long one", () => {
    expect(stepsOf(make(oneChain(80, [], [up(40), hook]))).map(({ bend }) => bend)).toEqual(["north.edge", "north.2", "north.1"]);
  });
});

describe("folded edges", () => {
  test("are made before the bend beside them", () => {
    for (const way of ["up", "down"] as const)
      for (const kind of ["closed", "double"] as const) {
        const steps = stepsOf(make(oneChain(200, [], [{ flat: 40, edge: { kind, width: 8, way } }])));
        expect(steps[0]?.bend).toBe("north.edge");
        expect(steps[0]?.onLeaf).toBe("north");
        expect(steps[0]?.faceUp).toBe(way === "up" ? "front" : "back");
      }
  });

  test("a closed edge that is 6 mm wide is not refused for the shortest leg", () => {
    expect(isMade(oneChain(200, [], [{ flat: 40, edge: { kind: "closed", width: 6, way: "up" } }]))).toBe(true);
  });
});

describe("box with four sides", () => {
  const walls = (height: number) => ({ north: [up(height)], south: [up(height)], east: [up(height)], west: [up(height)] });

  test("two opposite sides first, then fingers between them", () => {
    const steps = stepsOf(make(box(200, 150, walls(40))));
    const axis = (step: OrderStep | undefined) =>
      step && ["north", "south"].includes(step.bend.split(".")[0] ?? "") ? "y" : "x";
    expect(axis(steps[0])).toBe(axis(steps[1]));
    expect(axis(steps[2])).toBe(axis(steps[3]));
    expect(axis(steps[0])).not.toBe(axis(steps[2]));
    expect(steps.map(({ fingers }) => fingers.place)).toEqual(["set", "set", "between", "between"]);
  });

  test("the fingers fill the inside width as well as they can", () => {
    const [, , third] = stepsOf(make(box(200, 150, walls(40))));
    // Inside, between walls that begin one radius beyond the straight of the base; 2 mm are to stay free.
    const inside = axisWidth(third) + 2 * radius;
    expect(third?.fingers.room).toBeCloseTo(inside, 6);
    expect(third?.fingers.total).toBeLessThanOrEqual(inside - 2 * brake.clearance);
    expect(third?.fingers.total).toBeGreaterThan(inside - 2 * brake.clearance - 10);
  });

  const axisWidth = (step: OrderStep | undefined) => (["north", "south"].includes(step?.bend.split(".")[0] ?? "") ? 200 : 150);

  test("sides higher than the fingers are trapped by the beam", () => {
    // Outside height: flat, radius and thickness; it may be what is under the beam, less the clearance.
    const highest = brake.fingerHeight - brake.clearance - radius;
    expect(isMade(box(200, 150, walls(highest - 1)))).toBe(true);
    const trapped = trappedOf(make(box(200, 150, walls(highest + 1))));
    expect(trapped.by).toBe("beam");
  });

  test("flanges inward are bent before their walls", () => {
    const lid = [up(40), up(12)];
    const steps = stepsOf(make(box(200, 150, { north: lid, south: lid, east: lid, west: lid })));
    const place = (id: string) => steps.findIndex(({ bend }) => bend === id);
    for (const side of ["north", "south", "east", "west"]) expect(place(`${side}.2`)).toBeLessThan(place(`${side}.1`));
  });

  test("flanges inward so wide that no fingers fit between them are trapped by the fingers", () => {
    const lid = [up(40), up(40)];
    // Opposite flanges of 40 mm on a 150 mm box leave 150 − 80 mm, so more than twice the bare end stays without fingers.
    expect(trappedOf(make(box(200, 150, { north: lid, south: lid, east: lid, west: lid }))).by).toBe("fingers");
  });

  test("one pair of sides up and the other down is trapped", () => {
    expect(isMade(box(200, 150, { north: [up(40)], south: [up(40)], east: [down(40)], west: [down(40)] }))).toBe(false);
  });

  test("a tray with hemmed rims, inward or outward, can be made", () => {
    for (const way of ["up", "down"] as const) {
      const wall: Leg[] = [{ flat: 40, edge: { kind: "closed", width: 6, way } }];
      expect(isMade(box(200, 150, { north: wall, south: wall, east: wall, west: wall }))).toBe(true);
    }
  });
});

describe("limits of the brake", () => {
  const all = brake.fingers.reduce((sum, finger) => sum + finger, 0);
  test("a bend longer than all fingers together is not made", () => {
    const long = { ...brake, rating: { length: 3000 } };
    expect(isMade(oneChain(200, [], [up(40)], all + 2 * brake.bareEnd), long)).toBe(true);
    expect(trappedOf(make(oneChain(200, [], [up(40)], all + 2 * brake.bareEnd + 1), long))).toMatchObject({
      by: "fingers",
      when: "held",
    });
  });

  test("the shortest leg is measured outside", () => {
    const flat = brake.shortestLeg - radius - thickness;
    expect(isMade(oneChain(200, [], [up(flat + 0.01)]))).toBe(true);
    expect(trappedOf(make(oneChain(200, [], [up(flat - 0.01)])))).toMatchObject({ by: "leaf", when: "held", panel: "north.1" });
  });

  test("a swing beyond the leaf's largest is trapped by the leaf at that angle", () => {
    expect(trappedOf(make(oneChain(200, [], [{ flat: 40, angle: 134 }])))).toMatchObject({
      by: "leaf",
      when: "swing",
      angle: brake.largestSwing,
    });
  });

  test("fingers that cover a bend are the narrowest set that does", () => {
    const [step] = stepsOf(make(oneChain(200, [], [up(40)], 300)));
    expect(step?.fingers).toMatchObject({ place: "row", total: 300 });
  });
});

describe("tabs", () => {
  const wall = [up(40)];
  const plain = box(200, 150, { north: wall, south: wall, east: wall, west: wall });
  const [chainY, chainX] = plain.chains as [FormingJob["chains"][number], FormingJob["chains"][number]];
  const north = chainY.panels.find(({ id }) => id === "north.1");
  const tab = {
    id: "north-west.tab",
    panel: "north.1",
    onto: "west.1",
    end: "low" as const,
    from: (north?.from ?? 0) + 1,
    to: (north?.to ?? 0) - 1,
    length: 12,
    angle: 90,
    way: "up" as const,
    radius,
  };
  const withTab = (change: Partial<typeof tab>): FormingJob => ({
    ...plain,
    chains: [{ ...chainY, tabs: [{ ...tab, ...change }] }, chainX],
  });

  test("a tab is bent by hand first; the side it will lie on is turned before its own wall", () => {
    const order = make(withTab({}));
    expect(order).toMatchObject({ tabsByHand: ["north-west.tab"] });
    const bends = stepsOf(order).map(({ bend }) => bend);
    expect(bends.indexOf("west.1")).toBeLessThan(bends.indexOf("north.1"));
  });

  test("where it stands there are no fingers", () => {
    const west = stepsOf(make(withTab({}))).find(({ bend }) => bend === "west.1");
    expect(["beside", "set"]).toContain(west?.fingers.place);
    const plainWest = stepsOf(make(oneChain(200, [], [up(40)]))).find(({ bend }) => bend === "north.1");
    expect(plainWest?.fingers.place).toBe("row");
  });

  test("one that turns the other way hangs down on bed or leaf, so its wall is trapped", () => {
    expect(isMade(withTab({ way: "down" as "up" }))).toBe(false);
  });

  test("one on a wall or onto a bend that is not there is refused", () => {
    expect(() => make(withTab({ panel: "north.9" }))).toThrow(/north\.9/);
    expect(() => make(withTab({ onto: "south.1" }))).toThrow(/south\.1/);
  });
});

describe("remedies", () => {
  test("each is a change with which the part can be made", () => {
    const { remedies } = trappedOf(bendOrder(oneChain(40, [up(100)], [up(100)]), brake));
    const kinds = remedies.map(({ kind }) => kind);
    expect(kinds).toContain("shorter");
    expect(kinds).toContain("longer");
    expect(kinds).toContain("separate piece");
    const shorter = remedies.find(({ kind, of }) => kind === "shorter" && of[0] === "north.1");
    const by = shorter?.by ?? 0;
    expect(isMade(oneChain(40, [up(100)], [up(100 - by)]))).toBe(true);
    expect(isMade(oneChain(40, [up(100)], [up(100 - by + 1)]))).toBe(false);
    const longer = remedies.find(({ kind }) => kind === "longer");
    expect(isMade(oneChain(40 + (longer?.by ?? 0), [up(100)], [up(100)]))).toBe(true);
  });

  test("sides that are too high are lowered together", () => {
    const walls = [up(120)];
    const { remedies } = trappedOf(bendOrder(box(200, 150, { north: walls, south: walls, east: walls, west: walls }), brake));
    const pair = remedies.find(({ kind, of }) => kind === "shorter" && of.length === 2);
    // 120 mm and the radius, against 110 mm under the beam and the clearance: 12 mm, in steps of half a millimetre.
    expect(pair?.by).toBeGreaterThanOrEqual(12);
    expect(pair?.by).toBeLessThanOrEqual(12.5);
  });

  test("a Z that is too narrow is told how much wider", () => {
    const { remedies } = trappedOf(bendOrder(oneChain(20, [down(25)], [up(25)]), brake));
    const longer = remedies.find(({ kind, of }) => kind === "longer" && of[0] === "base");
    expect(isMade(oneChain(20 + (longer?.by ?? 0), [down(25)], [up(25)]))).toBe(true);
  });
});
