import { describe, expect, test } from "vitest";
import { loadCatalogue } from "../../src/catalogue/load.ts";
import type { Catalogue } from "../../src/lib/catalogue.ts";
import type { Raw } from "../../src/lib/inputs.ts";
import { type Plan, planFrom } from "../../src/lib/part/plan.ts";
import { planReport } from "../../src/lib/part/report.ts";
import { form, up } from "./samples.ts";

const catalogue = loadCatalogue();

/** A punch of 40 kN with a throat of 100 mm and three tools; a corner cutter for 1.6 mm steel, 150 mm deep. */
const shop: Catalogue["shop"] = {
  ...catalogue.shop,
  punch: {
    ...catalogue.shop.punch,
    force: 40_000,
    throat: 100,
    punches: [
      { shape: "round", diameter: 5, die: "C" },
      { shape: "round", diameter: 12, die: "G" },
      { shape: "square", width: 8, die: "M" },
    ],
  },
  cornerCutter: { ...catalogue.shop.cornerCutter, rating: { material: "steel-cr", thickness: 1.6 }, largestSide: 150 },
};
const data: Catalogue = { ...catalogue, shop };

function planned(raw: Raw): Plan {
  const { plan, problems } = planFrom(raw, data);
  if (!plan) throw new Error(problems[0]?.message);
  return plan;
}

const hole = (x: number, y: number, diameter: number) => ({
  panel: "base",
  x: `${x}mm`,
  y: `${y}mm`,
  diameter: `${diameter}mm`,
});
const tray = { width: "200mm", depth: "150mm", north: [up("40mm")], south: [up("40mm")], east: [up("40mm")], west: [up("40mm")] };

describe("the punch list", () => {
  test("reliefs, then holes by tool and size, then notches", () => {
    const plan = planned(
      form({
        ...tray,
        holes: [hole(30, 30, 12), hole(60, 30, 5), hole(90, 30, 7), hole(120, 30, 5)],
        cutouts: [
          { panel: "base", shape: "square", x: "60mm", y: "90mm", width: "8mm", height: "", turn: "0" },
          { panel: "base", shape: "slot", x: "100mm", y: "90mm", width: "20mm", height: "6mm", turn: "0" },
        ],
      }),
    );
    expect(plan.punching.map(({ number, kind, for: served, tool }) => [number, kind, served.length, tool.by])).toEqual([
      [1, "relief", 4, "drill"],
      [2, "hole", 2, "punch"],
      [3, "hole", 1, "punch"],
      [4, "hole", 1, "punch"],
      [5, "hole", 1, "drill"],
      [6, "hole", 1, "saw"],
      [7, "notch", 4, "corner-cutter"],
    ]);
    expect(plan.punching[1]?.for).toEqual(["2", "4"]);
    expect(plan.punching[1]?.tool).toMatchObject({ punch: { diameter: 5, die: "C" } });
    expect(plan.holes.map(({ by }) => by)).toEqual(["punch", "punch", "drill", "punch", "punch", "saw"]);
  });

  test("the guides of the corner cutter are those of the corners", () => {
    const plan = planned(form(tray));
    const notch = plan.punching.find(({ kind }) => kind === "notch");
    expect(notch).toMatchObject({ guide: plan.corners[0]?.guide });
  });

  test("a notch that is no plain corner, or too large, is cut to its lines", () => {
    const tabs = planned(form({ ...tray, tabs: "north-south" })).punching.find(({ kind }) => kind === "notch");
    expect(tabs?.tool).toEqual({ by: "lines", why: "shape" });
    const deep = [up("200mm")];
    const large = planned(form({ ...tray, north: deep, south: deep, east: deep, west: deep }));
    expect(large.punching.find(({ kind }) => kind === "notch")?.tool).toEqual({ by: "lines", why: "size" });
  });

  test("a hole beyond the force or the throat of the punch is drilled", () => {
    // π · 12 mm · 3 mm of this steel takes more than 40 kN from a shear strength of 354 N/mm² on.
    const strong = planned(form({ material: "stainless-304", thickness: "3mm", radius: "6mm", holes: [hole(30, 20, 12)] }));
    expect(strong.punching[0]?.tool).toEqual({ by: "drill", why: "force" });
    const wide = planned(form({ width: "400mm", depth: "400mm", holes: [hole(200, 200, 5)] }));
    expect(wide.punching[0]?.tool).toEqual({ by: "drill", why: "throat" });
  });

  test("a square relief is cut with its notch", () => {
    const plan = planned(form({ ...tray, relief: "notch" }));
    expect(plan.punching.map(({ kind }) => kind)).toEqual(["notch"]);
    expect(plan.punching[0]).toMatchObject({ square: plan.corners[0]?.relief?.size });
  });

  test("the report names the punch of every hole, or none", () => {
    const report = planReport(planned(form({ width: "80mm", depth: "50mm", holes: [hole(20, 20, 5), hole(50, 20, 7)] })), data);
    expect(report.holes.map(({ punch }) => punch)).toEqual([{ shape: "round", diameter: 5, die: "C" }, null]);
    expect(report.cuts.pieces[0]?.of).toBe("blank");
    expect(report.punching).toHaveLength(2);
  });
});

describe("settings to join tabs", () => {
  test("spots start from the table of ISO 14373 for the sheet: 1 mm, 1.4 to 1.5 kN, 6 to 8 kA, 9 to 12 cycles of 1/50 s", () => {
    const { joints, tabs } = planned(form({ ...tray, tabs: "north-south" }));
    expect(joints).toMatchObject({
      kind: "spots",
      start: { tipFace: 5, forceMin: 1400, forceMax: 1500, currentMin: 6, currentMax: 8, timeMin: 0.18, timeMax: 0.24 },
    });
    expect(joints?.count).toBe(tabs.reduce((sum, { joints: places }) => sum + places.length, 0));
  });

  test("rivets of 1/8 in for two sheets of 1 mm (AC 43.13-1B: three times the thicker sheet, next size up), 1.5 D + grip long", () => {
    const { joints } = planned(form({ ...tray, tabs: "north-south", tabJoint: "rivets" }));
    expect(joints).toMatchObject({ kind: "rivets", inches: "1/8 in", grip: 2 });
    expect(joints?.kind === "rivets" && joints.length).toBeCloseTo(2 + 1.5 * 3.175, 9);
  });

  test("aluminium is not spot welded, and a part without tabs has no joints", () => {
    const { joints } = planned(form({ ...tray, material: "al-5052-h32", tabs: "north-south" }));
    expect(joints).toMatchObject({ kind: "spots", verdict: "no" });
    expect(joints?.kind === "spots" && joints.start).toBeFalsy();
    expect(planned(form(tray)).joints).toBeUndefined();
  });
});
