import { describe, expect, test } from "vitest";
import type { Catalogue } from "../../../src/lib/catalogue.ts";
import type { Raw } from "../../../src/lib/inputs.ts";
import { catalogue, cone, hole, rolled, tube } from "./samples.ts";

function shop(change: Partial<Catalogue["shop"]>): Catalogue {
  return { ...catalogue, shop: { ...catalogue.shop, ...change } };
}
const { welder, shear } = catalogue.shop;

const found = (raw: Raw, rule: string, data?: Catalogue) => {
  const [check] = rolled(raw, data).checks.filter((each) => each.rule === rule);
  if (!check) throw new Error(`no check “${rule}”`);
  return check;
};

const lap = { seam: "lap", seamWidth: "25mm" };
const riveted = { ...lap, seamJoint: "rivets" };

/** Each rule with a part that keeps it and one that breaks it, in the demo shop or one machine of it changed. */
const cases: readonly (readonly [rule: string, keeps: Raw, breaks: Raw, data?: Catalogue])[] = [
  ["rolls-width", tube({ length: "1000mm" }), tube({ length: "1001mm" })],
  ["rolls-thickness", tube({ thickness: "1.2mm" }), tube({ thickness: "1.5mm" })],
  ["rolls-rating", tube({ length: "500mm" }), tube({ length: "500mm", thickness: "2mm" })],
  ["rolls-diameter", tube({ diameter: "90mm" }), tube({ diameter: "89mm" })],
  ["rolls-diameter", cone(), cone({ smallDiameter: "60mm" })],
  ["rolls-tightest", tube(), tube({ diameter: "70mm" })],
  ["rolls-widest", tube(), tube({ diameter: "5000mm", thickness: "0.1mm" })],
  ["neutral-line", tube(), tube({ diameter: "9mm" })],
  ["flat-ends", tube(), tube({ arc: "40deg" })],
  ["swing-radius", cone(), cone({ smallDiameter: "195mm" })],
  ["seam-thickness", tube({ seam: "grooved", thickness: "1mm" }), tube({ seam: "grooved", thickness: "1.2mm" })],
  ["seam-hook", tube({ seam: "grooved", seamWidth: "4mm" }), tube({ seam: "grooved", seamWidth: "3.9mm" })],
  ["spot-lap", tube(lap), tube({ ...lap, seamWidth: "15mm" })],
  ["spot-count", tube(lap), tube({ ...lap, length: "30mm" })],
  ["rivet-count", tube(riveted), tube({ ...riveted, length: "12mm" })],
  ["rivet-edge", tube(riveted), tube({ ...riveted, seamWidth: "5mm" })],
  ["weldability", tube(lap), tube({ ...lap, material: "al-3003-h14" })],
  ["welder-thickest", tube(lap), tube(lap), shop({ welder: { ...welder, thickest: 0.9 } })],
  ["welder-thinnest", tube(lap), tube({ ...lap, thickness: "0.4mm" })],
  ["welder-throat", tube({ ...lap, length: "560mm" }), tube({ ...lap, length: "570mm" })],
  ["hole-seam", tube({ ...lap, holes: [hole(100, 100)] }), tube({ ...lap, holes: [hole(4, 100)] })],
  ["hole-diameter", tube({ holes: [hole(100, 100)] }), tube({ holes: [hole(100, 100, 0.5)] })],
  ["hole-edge", tube({ holes: [hole(100, 100)] }), tube({ holes: [hole(100, 3)] })],
  [
    "punch-force",
    tube({ holes: [hole(100, 100, 10)] }),
    tube({ holes: [hole(100, 100, 10)] }),
    shop({ punch: { ...catalogue.shop.punch, force: 5000 } }),
  ],
  [
    "punch-throat",
    tube({ holes: [hole(100, 100, 10)] }),
    tube({ length: "700mm", diameter: "300mm", holes: [hole(400, 350, 10)] }),
  ],
  ["shear-length", tube(), tube(), shop({ shear: { ...shear, cuttingLength: 400 } })],
  ["shear-rating", tube(), tube({ thickness: "2mm" })],
  ["lift", tube(), tube({ diameter: "900mm", length: "1900mm", thickness: "1.2mm" })],
  ["stock-size", tube(), tube({ diameter: "700mm" })],
];

describe("every check can hold, and can fail", () => {
  for (const [rule, keeps, breaks, data] of cases)
    test(rule, () => {
      expect(found(keeps, rule).ok).toBe(true);
      expect(found(breaks, rule, data).ok).toBe(false);
    });

  test("none is left out here", () => {
    const all = new Set(
      [tube({ ...lap, holes: [hole(100, 100, 10)] }), tube(riveted), tube({ seam: "grooved" }), cone()].flatMap((raw) =>
        rolled(raw).checks.map(({ rule }) => rule),
      ),
    );
    const tried = new Set(cases.map(([rule]) => rule));
    expect([...all].filter((rule) => !tried.has(rule)).toSorted()).toEqual([]);
  });
});
