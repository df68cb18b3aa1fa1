import { describe, expect, test } from "vitest";
import { Forming } from "../../src/lib/part/order/check.ts";
import {
  gapTo,
  isInside,
  obstacle,
  pointToSegment,
  segmentToPolygon,
  segmentToSegment,
} from "../../src/lib/part/order/distance.ts";
import type { FormingBrake } from "../../src/lib/part/order/job.ts";
import { bendOrder } from "../../src/lib/part/order/order.ts";
import { staysClear } from "../../src/lib/part/order/region.ts";
import { type SectionOutline, stepProfile } from "../../src/lib/part/order/step-profile.ts";
import { legPose, toolsOf } from "../../src/lib/part/order/tools.ts";
import { brake, oneChain, radius, thickness, zoneOf } from "./order-jobs.ts";
import { randomFrom, randomJob } from "./order-random.ts";

describe("distances", () => {
  test("of points and segments, by hand", () => {
    expect(pointToSegment(3, 4, 0, 0, 10, 0)).toBe(4);
    expect(pointToSegment(-3, 4, 0, 0, 10, 0)).toBe(5);
    expect(pointToSegment(3, 4, 0, 0, 0, 0)).toBe(5);
    expect(segmentToSegment(0, 0, 10, 0, 5, -1, 5, 1)).toBe(0);
    expect(segmentToSegment(0, 0, 10, 0, 12, 1, 12, 5)).toBeCloseTo(Math.hypot(2, 1), 12);
    expect(segmentToSegment(0, 0, 10, 0, 2, 3, 8, 3)).toBe(3);
  });

  test("of a segment from a square", () => {
    const square = Float64Array.from([0, 0, 10, 0, 10, 10, 0, 10]);
    expect(isInside(square, 5, 5)).toBe(true);
    expect(isInside(square, 10, 5)).toBe(true);
    expect(isInside(square, 10.001, 5)).toBe(false);
    expect(segmentToPolygon(square, 13, -5, 13, 20)).toBe(3);
    expect(segmentToPolygon(square, 13, 14, 13, 20)).toBe(5);
    expect(segmentToPolygon(square, 4, 4, 6, 6)).toBe(0);
    expect(segmentToPolygon(square, -5, 5, 15, 5)).toBe(0);
  });

  test("the box round an obstacle never hides a smaller distance", () => {
    const random = randomFrom(1);
    const at = () => 60 * random() - 30;
    const tool = obstacle([
      [0, 0],
      [10, 0],
      [14, 8],
      [0, 12],
    ]);
    for (let round = 0; round < 2000; round += 1) {
      const [ax, az, bx, bz] = [at(), at(), at(), at()];
      const exact = segmentToPolygon(tool.polygon, ax, az, bx, bz);
      expect(gapTo(tool, ax, az, bx, bz, 1000)).toBe(exact);
      expect(gapTo(tool, ax, az, bx, bz, 5)).toBe(Math.min(5, exact));
    }
  });

  test("a segment carried along a way is clear when it is at every point of the way", () => {
    const random = randomFrom(2);
    const at = () => 60 * random() - 30;
    const tool = obstacle([
      [0, 0],
      [10, 0],
      [10, 10],
      [0, 10],
    ]);
    let clear = 0;
    for (let round = 0; round < 500; round += 1) {
      const segment = [at(), at(), at(), at()] as const;
      const [mx, mz] = [at(), at()];
      const nearest = Math.min(
        ...Array.from({ length: 401 }, (_, step) => {
          const [x, z] = [(mx * step) / 400, (mz * step) / 400];
          return segmentToPolygon(tool.polygon, segment[0] + x, segment[1] + z, segment[2] + x, segment[3] + z);
        }),
      );
      // The points looked at lie up to a tenth apart.
      if (Math.abs(nearest - 2) < 0.11) continue;
      const stays = staysClear(tool, segment, mx, mz, 2);
      expect(stays).toBe(nearest > 2);
      if (stays) clear += 1;
    }
    expect(clear).toBeGreaterThan(50);
  });
});

describe("tools", () => {
  test("after 90° the outside of the leg is on the hinge line, at 0° its underside on the bed", () => {
    const tools = toolsOf(brake, thickness, radius, 0);
    expect(legPose(tools, Math.PI / 2, 0).x).toBeCloseTo(-thickness / 2, 12);
    expect(legPose(tools, 0, 0).z).toBeCloseTo(thickness / 2, 12);
  });

  test("the leg at any swing the lean allows clears the front of the fingers", () => {
    const tools = toolsOf(brake, thickness, radius, 0);
    for (const angle of [30, 90, 120, 90 + brake.fingerLean]) {
      const { x, z, cos, sin } = legPose(tools, (angle * Math.PI) / 180, 0);
      // Along the middle of the sheet; the nose is drawn with corners on its circle, so it can only be nearer than the circle.
      const gap = segmentToPolygon(tools.fingers.polygon, x, z, x + 200 * cos, z + 200 * sin);
      expect(gap).toBeGreaterThan(thickness / 2 - 1e-9);
    }
  });
});

test("what is remembered of one state is never used for another", () => {
  for (let seed = 0; seed < 12; seed += 1) {
    const job = randomJob(seed, 5, seed % 2 ? 2 : 4);
    const remembering = new Forming(job, brake);
    const random = randomFrom(seed);
    for (let round = 0; round < 40; round += 1) {
      const op = Math.floor(random() * remembering.operations.length);
      const mask = Math.floor(random() * (remembering.full + 1)) & ~(1 << op);
      const choice = { op, outward: random() < 0.5 ? 1 : -1 } as const;
      const [{ fit, block }, fresh] = [remembering.check(choice, mask), new Forming(job, brake).check(choice, mask)];
      expect(block).toEqual(fresh.block);
      // Sets are numbered as they come.
      expect({ ...fit, set: 0 }).toEqual({ ...fresh.fit, set: 0 });
    }
  }
});

describe("a brake with less in the way", () => {
  const easier: Partial<FormingBrake>[] = [
    { leafWidth: 20 },
    { leafThickness: 10 },
    { bedDepth: 60 },
    { bedHeight: 20 },
    { beamDepth: 40 },
    { beamHeight: 45 },
    { shortestLeg: 4 },
    { shortestHold: 5 },
    { bareEnd: 40 },
    { longestLeg: 1200 },
    // The front leans back farther, so all of the finger lies inside the old one. Its foot would have to be deeper, which is not less.
    { fingerLean: 49 },
  ];
  test("makes every part that the other makes", () => {
    let made = 0;
    for (let seed = 0; seed < 120; seed += 1) {
      const job = randomJob(seed, 3 + (seed % 2), seed % 3 ? 2 : 4);
      if (!("steps" in bendOrder(job, brake, { remedies: false }))) continue;
      made += 1;
      for (const change of easier)
        expect("steps" in bendOrder(job, { ...brake, ...change }, { remedies: false }), `${seed} ${JSON.stringify(change)}`).toBe(
          true,
        );
    }
    expect(made).toBeGreaterThan(15);
  });

  test("a shorter last leg never hurts, down to the shortest the leaf holds", () => {
    let made = 0;
    for (let seed = 0; seed < 60; seed += 1) {
      const random = randomFrom(seed);
      const [base, first, last] = [30 + 150 * random(), 10 + 80 * random(), 30 + 80 * random()];
      const job = (end: number) => oneChain(base, [{ flat: first }], [{ flat: end }]);
      if (!("steps" in bendOrder(job(last), brake, { remedies: false }))) continue;
      made += 1;
      for (let shorter = last; shorter > 10; shorter -= 7)
        expect("steps" in bendOrder(job(shorter), brake, { remedies: false }), `${seed} ${shorter}`).toBe(true);
    }
    expect(made).toBeGreaterThan(10);
  });
});

describe("drawing of a step", () => {
  const area = (outline: SectionOutline) =>
    outline.reduce((sum, [x, z], at) => {
      const [nx, nz] = outline[(at + 1) % outline.length] as readonly [number, number];
      return sum + (x * nz - nx * z) / 2;
    }, 0);

  test("the section keeps its area, length times thickness, in every pose", () => {
    const job = oneChain(80, [{ flat: 30 }], [{ flat: 25 }]);
    const order = bendOrder(job, brake);
    if (!("steps" in order)) throw new Error("a channel can be made");
    const length = 30 + 80 + 25 + 2 * zoneOf(90);
    for (const step of order.steps) {
      const { start, end } = stepProfile(job, brake, step);
      // The neutral line of these bends is the middle line, so bent sheet is as large as flat; arcs are drawn in short straight pieces.
      expect(Math.abs(area(start.sheet))).toBeCloseTo(length * thickness, 0);
      expect(end.angle).toBeCloseTo(93, 9);
      // Beyond 90° the arc grows by the springback, 3°.
      expect(Math.abs(area(end.sheet))).toBeCloseTo((length + zoneOf(3)) * thickness, 0);
    }
  });

  test("no number in it is missing, for boxes with folded edges too", () => {
    for (let seed = 0; seed < 40; seed += 1) {
      const job = randomJob(seed, 4, 4);
      const order = bendOrder(job, brake, { remedies: false });
      if (!("steps" in order)) continue;
      for (const step of order.steps) {
        const { bed, fingers, beam, start, end } = stepProfile(job, brake, step);
        const outlines = [bed, fingers, beam, ...[start, end].flatMap(({ sheet, leaf, behind }) => [sheet, leaf, ...behind])];
        for (const outline of outlines) {
          expect(outline.length).toBeGreaterThan(3);
          expect(outline.flat().every(Number.isFinite)).toBe(true);
        }
      }
    }
  });
});
