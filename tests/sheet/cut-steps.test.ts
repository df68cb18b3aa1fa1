import { describe, expect, test } from "vitest";
import { loadCatalogue } from "../../src/catalogue/load.ts";
import { cutPlan } from "../../src/lib/sheet/cut-plan.ts";
import { cutSteps } from "../../src/lib/sheet/cut-steps.ts";
import { sheetRequest } from "../../src/lib/sheet/form.ts";
import { shearChecks } from "../../src/lib/sheet/shear-checks.ts";
import { finish } from "../../src/lib/sheet/sheet-plan.ts";

const catalogue = loadCatalogue();

function planned(raw: Parameters<typeof sheetRequest>[0]) {
  const { request } = sheetRequest(raw, catalogue);
  if (!request) throw new Error("cannot be planned");
  return { request, plan: finish(cutPlan(request.job, request.values.goal, { work: 2e7 })) };
}

describe("the strokes drawn together", () => {
  test.each([{}, { trim: "5mm" }, { pieces: [{ name: "a", width: "77mm", length: "133mm", count: "90" }] }])(
    "every stroke is in one step, in order, and no step mixes settings or sizes: %j",
    (raw) => {
      for (const { cuts } of planned(raw).plan.sheets) {
        const steps = cutSteps(cuts);
        expect(steps.flatMap(({ first, last }) => Array.from({ length: last - first + 1 }, (_, at) => first + at))).toEqual(
          cuts.cuts.map((_, index) => index + 1),
        );
        for (const { first, last, stop, off, plates, held } of steps) {
          const strokes = cuts.cuts.slice(first - 1, last);
          expect(new Set(strokes.map((cut) => cut.stop))).toEqual(new Set([stop]));
          expect(new Set(strokes.map((cut) => `${cut.off.kind} ${cut.off.width} ${cut.off.length}`)).size).toBe(1);
          expect(off.count).toBe(strokes.length);
          expect(plates.map(({ id }) => id)).toEqual([...new Set(strokes.map(({ from }) => from.id))]);
          expect(held.reduce((sum, { count }) => sum + count, 0)).toBe(plates.length);
        }
        expect(steps.filter(({ setsStop }) => setsStop)).toHaveLength(cuts.stopSettings);
      }
    },
  );

  test("four quarters: one step halves the sheet, one quarters the halves", () => {
    const { plan } = planned({
      sheetWidth: "1000mm",
      sheetLength: "1000mm",
      pieces: [{ name: "quarter", width: "500mm", length: "500mm", count: "4" }],
    });
    const steps = cutSteps((plan.sheets[0] as (typeof plan.sheets)[number]).cuts);
    expect(steps.map(({ stop, first, last, setsStop, off }) => [stop, last - first + 1, setsStop, off.part.kind])).toEqual([
      [500, 1, true, "plate"],
      [500, 2, false, "piece"],
    ]);
  });
});

describe("the checks against the shop", () => {
  const verdicts = (raw: Parameters<typeof sheetRequest>[0]) => {
    const { plan, request } = planned(raw);
    return Object.fromEntries(shearChecks(plan, request, catalogue).map(({ rule, ok }) => [rule, ok]));
  };
  const one = (width: string, length: string, count = "1") => [{ name: "P", width, length, count, grain: "along" }];

  test("a class set in thin steel holds", () => {
    expect(verdicts({ thickness: "0.5mm", sheetLength: "1250mm" })).toEqual({
      "shear-length": true,
      "shear-hold": true,
      "shear-rating": true,
      "sheet-mass": true,
    });
  });

  test.each([
    ["longer than the shear", { sheetWidth: "1500mm", sheetLength: "3000mm", pieces: one("1300mm", "1400mm") }, "shear-length"],
    ["too small to hold", { sheetWidth: "500mm", sheetLength: "80mm", pieces: one("500mm", "40mm", "2") }, "shear-hold"],
    ["too thick", { thickness: "3mm" }, "shear-rating"],
    ["stainless of the rated thickness of steel", { thickness: "1.5mm", material: "stainless-304" }, "shear-rating"],
    ["more than one person lifts", { thickness: "1mm" }, "sheet-mass"],
  ])("%s is broken", (_, raw, rule) => {
    expect(verdicts(raw)[rule]).toBe(false);
  });

  test("without a thickness neither rating nor mass is judged", () => {
    expect(Object.keys(verdicts({}))).toEqual(["shear-length", "shear-hold"]);
  });
});
