import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { loadCatalogue } from "../../src/catalogue/load.ts";
import { bendMethods } from "../../src/lib/bending/methods.ts";
import type { Raw } from "../../src/lib/inputs.ts";
import type { FlatChain } from "../../src/lib/part/flatten.ts";
import { fold, measure } from "../../src/lib/part/fold.ts";
import { type Plan, planFrom } from "../../src/lib/part/plan.ts";
import { phraseWords } from "../../src/lib/quantity/phrase.ts";
import { down, form, up } from "./samples.ts";

const catalogue = loadCatalogue();

function planned(raw: Raw): Plan {
  const { plan, problems } = planFrom(raw, catalogue);
  expect(problems.map(({ field, message }) => `${field}: ${message}`)).toEqual([]);
  return plan as Plan;
}

function chainOf(plan: Plan): FlatChain {
  const [chain] = plan.layout.chains;
  if (!chain) throw new Error("a part without panels");
  return chain;
}

function problem(raw: Raw) {
  const { plan, problems } = planFrom(raw, catalogue);
  expect(plan).toBeUndefined();
  expect(problems).toHaveLength(1);
  return { field: problems[0]?.field, message: problems[0]?.message };
}

// One 90° bend in 1 mm sheet at R = 1 mm and K = 0.5: BA = π/2 · 1.5, SB = 2, BD = 4 − BA.
const allowance = (Math.PI / 2) * 1.5;
const deduction = 4 - allowance;

describe("a flat layout worked out by hand", () => {
  test("flat: the blank is the base", () => {
    const plan = planned(form({ width: "80mm", depth: "50mm" }));
    expect(plan.blank.width).toBe(80);
    expect(plan.blank.depth).toBe(50);
    expect(plan.blank.mass).toBeCloseTo(0.08 * 0.05 * 0.001 * 7850, 12);
    expect(plan.bends).toEqual([]);
  });

  test("angle: outside legs less one deduction", () => {
    const plan = planned(form({ width: "80mm", depth: "50mm", north: [up("30mm")] }));
    expect(plan.blank.depth).toBeCloseTo(80 - deduction, 12);
    const [bend] = plan.bends;
    expect(bend?.tangents[0]).toBeCloseTo(48, 12);
    expect(bend?.tangents[1]).toBeCloseTo(48 + allowance, 12);
    expect(bend?.sightLine).toBeCloseTo(49, 12);
  });

  test("channel: two deductions, and sight lines one radius inside the bend from the base", () => {
    const plan = planned(form({ width: "80mm", depth: "50mm", north: [up("25mm")], south: [up("25mm")] }));
    expect(plan.blank.depth).toBeCloseTo(100 - 2 * deduction, 12);
    const [south, north] = plan.bends;
    expect(south?.tangents[0]).toBeCloseTo(23, 12);
    expect(south?.sightLine).toBeCloseTo(23 + allowance - 1, 12);
    expect(north?.sightLine).toBeCloseTo(23 + allowance + 46 + 1, 12);
  });

  test("measured inside, each 90° leg is one thickness shorter and the web two", () => {
    const outside = planned(form({ width: "80mm", depth: "50mm", north: [up("25mm")], south: [up("25mm")] }));
    const inside = planned(form({ measured: "inside", width: "80mm", depth: "48mm", north: [up("24mm")], south: [up("24mm")] }));
    expect(inside.blank.depth).toBeCloseTo(outside.blank.depth, 12);
  });

  test("a chain that runs west to east is the same part turned", () => {
    const alongY = planned(form({ width: "80mm", depth: "50mm", north: [up("25mm")], south: [down("15mm")] }));
    const alongX = planned(form({ width: "50mm", depth: "80mm", east: [up("25mm")], west: [down("15mm")] }));
    expect(alongX.blank.width).toBe(alongY.blank.depth);
    expect(alongX.bends.map(({ sightLine }) => sightLine)).toEqual(alongY.bends.map(({ sightLine }) => sightLine));
    expect(alongX.scribe[0]?.from).toBe("west");
  });

  test("a closed edge adds its width, by the published rule for light sheet", () => {
    const plain = planned(form({ width: "80mm", depth: "50mm", north: [up("25mm")] }));
    const edged = planned(
      form({ width: "80mm", depth: "50mm", north: [up("25mm")], edges: [{ side: "north", kind: "closed", width: "6mm" }] }),
    );
    expect(edged.blank.depth - plain.blank.depth).toBeCloseTo(6, 12);
    expect(edged.scribe.find(({ kind }) => kind === "fold")?.distance).toBeCloseTo(edged.blank.depth - 6, 12);
  });

  test("a hole moves with its panel", () => {
    const holes = [
      { panel: "base", x: "12mm", y: "10mm", diameter: "5mm" },
      { panel: "north.1", x: "30mm", y: "15mm", diameter: "6mm" },
      { panel: "south.1", x: "20mm", y: "15mm", diameter: "6mm" },
    ];
    const plan = planned(form({ width: "80mm", depth: "50mm", north: [up("25mm")], south: [up("25mm")], holes }));
    const [base, north, south] = plan.holes;
    // Base outside starts 25 − BD up the blank: the south leg's flat 23, its bend BA, less the setback of 2.
    expect(base).toMatchObject({ x: 12 });
    expect(base?.y).toBeCloseTo(23 + allowance - 2 + 10, 12);
    expect(north?.y).toBeCloseTo(23 + 2 * allowance + 46 - 2 + 15, 12);
    expect(south?.y).toBeCloseTo(23 + 2 - 15, 12);
  });
});

describe("the FAA handbook's channel, 1.00 / 2.00 / 1.00 in, 0.040 in 2024-T3, R 0.16 in", () => {
  const channel = form({
    material: "al-2024-t3",
    thickness: "0.040in",
    radius: "0.16in",
    bendData: "faa-handbook",
    width: "3in",
    depth: "2in",
    north: [up("1in")],
    south: [up("1in")],
  });

  test("flats of 0.8, 1.6 and 0.8 in (FAA-H-8083-31 ch. 4, read)", () => {
    const flats = chainOf(planned(channel)).panels.map(({ from, to }) => (to - from) / 25.4);
    for (const [index, flat] of [0.8, 1.6, 0.8].entries()) expect(flats[index]).toBeCloseTo(flat, 9);
  });

  test("developed width 3.74 in printed with BA cut to 0.27; unrounded 3.7581", () => {
    const developed = planned(channel).blank.depth / 25.4;
    expect(developed).toBeCloseTo(3.7581, 4);
    expect(Math.abs(developed - 3.74)).toBeLessThan(2 * 0.01);
  });
});

describe("folding the layout back", () => {
  const leg = fc.record({
    leg: fc.double({ min: 25, max: 300, noNaN: true }).map((size) => `${size.toFixed(3)}mm`),
    angle: fc.integer({ min: 5, max: 150 }).map((angle) => `${angle}deg`),
    way: fc.constantFrom("up", "down"),
  });
  const part = fc.record({
    thickness: fc.double({ min: 0.4, max: 3, noNaN: true }).map((size) => `${size.toFixed(3)}mm`),
    radius: fc.double({ min: 0.4, max: 5, noNaN: true }).map((size) => `${size.toFixed(3)}mm`),
    measured: fc.constantFrom("outside", "inside"),
    width: fc.constant("80mm"),
    depth: fc.double({ min: 80, max: 400, noNaN: true }).map((size) => `${size.toFixed(3)}mm`),
    north: fc.array(leg, { maxLength: 5 }),
    south: fc.array(leg, { maxLength: 5 }),
    bendData: fc.constantFrom(
      ...(Object.keys(bendMethods) as (keyof typeof bendMethods)[]).filter((method) => method !== "measured"),
    ),
  });

  test("returns every finished dimension, for random parts", () => {
    let folded = 0;
    fc.assert(
      fc.property(part, (fields) => {
        const raw: Raw = { ...fields, material: "steel-cr" };
        const { plan, problems } = planFrom(raw, catalogue);
        if (!plan) {
          // Only a leg too short for its bends may be refused here, or a radius that DIN 6935 has no neutral line for.
          expect(problems.every(({ message }) => /must be (longer than|above)/.test(message))).toBe(true);
          return;
        }
        folded += 1;
        const chain = chainOf(plan);
        const sizes = measure(chain, fold(chain));
        for (const panel of chain.panels) expect(Math.abs((sizes[panel.id] as number) - panel.length)).toBeLessThan(1e-6);
        const developed =
          chain.panels.reduce((sum, { from, to }) => sum + to - from, 0) +
          plan.bends.reduce((sum, bend) => sum + bend.allowance, 0);
        expect(developed).toBeCloseTo(plan.blank.depth, 6);
      }),
      { numRuns: 3000 },
    );
    expect(folded).toBeGreaterThan(1000);
  }, 120_000);

  test("an unturned section is the blank, flat", () => {
    const plan = planned(form({ width: "80mm", depth: "50mm", north: [up("25mm")], south: [up("25mm")] }));
    const flat = fold(chainOf(plan), 0);
    const ends = flat.panels.flatMap(({ start, end }) => [start, end]);
    for (const { z } of ends) expect(z).toBeCloseTo(0, 9);
    expect(Math.max(...ends.map(({ x }) => x)) - Math.min(...ends.map(({ x }) => x))).toBeCloseTo(plan.blank.depth, 9);
  });
});

describe("the scribe list", () => {
  const plan = planned(
    form({
      width: "80mm",
      depth: "50mm",
      north: [up("25mm"), down("20mm")],
      holes: [
        { panel: "base", x: "20mm", y: "25mm", diameter: "5mm" },
        { panel: "base", x: "60mm", y: "25mm", diameter: "5mm" },
      ],
    }),
  );

  test("takes every setting along the part from one datum edge, rising", () => {
    const along = plan.scribe.filter(({ from }) => from === "south").map(({ distance }) => distance);
    expect(along).toEqual([...along].sort((a, b) => a - b));
    expect(plan.scribe.map(({ number }) => number)).toEqual(plan.scribe.map((_, index) => index + 1));
  });

  test("scribes a shared centre line once", () => {
    const shared = plan.scribe.filter(({ kind, from }) => kind === "hole" && from === "south");
    expect(shared.map(({ what }) => what)).toEqual(["centre line of holes 1, 2"]);
  });

  test("puts the sight line of a bend down on the back, where the nose of the fingers will be", () => {
    expect(plan.scribe.filter(({ kind }) => kind === "sight").map(({ face }) => face)).toEqual(["front", "back"]);
  });

  test("gives the nearest 64th with its error", () => {
    for (const line of plan.scribe) {
      expect(Math.abs(line.fractionError)).toBeLessThanOrEqual(25.4 / 128 + 1e-9);
      expect(line.inch * 25.4).toBeCloseTo(line.distance, 9);
    }
  });
});

describe("measured bends", () => {
  const measured = form({
    width: "80mm",
    depth: "50mm",
    north: [up("25mm")],
    bendData: "measured",
    measuredDeduction: "1.7mm",
    measuredUncertainty: "0.06mm",
  });

  test("come out of the blank exactly", () => {
    expect(planned(measured).blank.depth).toBeCloseTo(75 - 1.7, 9);
  });

  test("move every blank size and scribe line when they change", () => {
    const before = planned(measured);
    const after = planned({ ...measured, measuredDeduction: "1.9mm" });
    expect(after.blank.depth).toBeCloseTo(before.blank.depth - 0.2, 9);
    const holes = [{ panel: "north.1", x: "20mm", y: "12mm", diameter: "4mm" }];
    expect(planned({ ...measured, measuredDeduction: "1.9mm", holes }).holes[0]?.y).not.toBe(
      planned({ ...measured, holes }).holes[0]?.y,
    );
  });

  test("make the ± smaller than a handbook's spread does", () => {
    const [, byHandbook] = planned({ ...measured, bendData: "neutral-line" }).sizes;
    const [, byMeasuring] = planned(measured).sizes;
    expect(byMeasuring?.plusMinus).toBeLessThan(byHandbook?.plusMinus as number);
    expect(byMeasuring?.from.bendData).toBeCloseTo(0.03, 9);
  });

  test("are said not to fit when the part bends to another angle", () => {
    const plan = planned({ ...measured, north: [up("25mm", "45deg")] });
    expect(plan.remarks.some(({ phrase }) => phraseWords(phrase).includes("another angle"))).toBe(true);
  });

  test("come from the shop's file when none is entered, and are asked for when it has none", () => {
    const shop = planned({
      material: "steel-cr",
      thickness: "1.2mm",
      radius: "1.6mm",
      width: "80mm",
      depth: "50mm",
      north: [up("25mm")],
      bendData: "measured",
    });
    const row = catalogue.shop.bends.find(({ material }) => material === "steel-cr");
    expect(shop.blank.depth).toBeCloseTo(75 - (row?.deduction as number), 9);
    expect(problem(form({ north: [up("25mm")], bendData: "measured", thickness: "2mm" })).field).toBe("measuredDeduction");
  });
});

describe("bad input is refused at its field", () => {
  test.each([
    [
      "a leg shorter than its bend",
      form({ north: [up("1.5mm")] }),
      "north.0.leg",
      "Leg north 1 must be longer than 2.00 mm, the part of it that its bend takes; it is 1.50 mm.",
    ],
    [
      // R + T = 2 mm by hand; tan 45° in binary leaves a hair.
      "a leg just as long as its bend",
      form({ north: [up("2mm")] }),
      "north.0.leg",
      "Leg north 1 must be longer than 2.00 mm, the part of it that its bend takes; it is 2.00 mm.",
    ],
    [
      "a base shorter than its two bends",
      form({ depth: "3mm", north: [up("25mm")], south: [up("25mm")] }),
      "depth",
      "Base must be longer than 4.00 mm, the part of it that its two bends take; it is 3.00 mm.",
    ],
    [
      "a hole off its panel",
      form({ width: "60mm", depth: "40mm", holes: [{ panel: "base", x: "70mm", y: "10mm", diameter: "5mm" }] }),
      "holes.0.x",
      "Hole 1 must lie on Base: its centre from 2.50 mm to 57.50 mm from the edge; it is 70.00 mm.",
    ],
    [
      "a hole on no panel",
      form({ holes: [{ panel: "north.1", x: "10mm", y: "10mm", diameter: "5mm" }] }),
      "holes.0.panel",
      "Hole 1 must be on a panel of this part: base; it is on “north.1”.",
    ],
    [
      "angle 0",
      form({ north: [up("25mm", "0deg")] }),
      "north.0.angle",
      "Angle turned through must be from 1.0° to 175.0°; it is 0°.",
    ],
    ["no thickness", form({ thickness: "0mm" }), "thickness", "Thickness must be from 0.10 mm to 13.00 mm; it is 0.00 mm."],
  ])("%s", (_, raw, field, message) => {
    expect(problem(raw)).toEqual({ field, message });
  });
});
