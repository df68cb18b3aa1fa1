import { describe, expect, test } from "vitest";
import { loadCatalogue } from "../../src/catalogue/load.ts";
import type { Raw } from "../../src/lib/inputs.ts";
import { cutLines } from "../../src/lib/sheet/cut-lines.ts";
import { cutPlan } from "../../src/lib/sheet/cut-plan.ts";
import { sheetRequest } from "../../src/lib/sheet/form.ts";
import { finish } from "../../src/lib/sheet/sheet-plan.ts";
import { replayAll } from "./replay.ts";

const catalogue = loadCatalogue();
const work = 2e7;

function planned(raw: Raw) {
  const { request, problems } = sheetRequest(raw, catalogue);
  if (!request) throw new Error(problems.map(({ message }) => message).join(" "));
  const { job, values } = request;
  return { job, plan: finish(cutPlan(job, values.goal, { work })) };
}
const faults = (raw: Raw) => sheetRequest(raw, catalogue).problems.map(({ field, message }) => ({ field, message }));
const small = { name: "P", width: "100mm", length: "100mm", count: "1", grain: "free" };

describe("the plan of the page", () => {
  test.each<[string, Raw]>([
    ["as the page opens", {}],
    ["one sheet filled", { goal: "fill-one-sheet", pieces: [{ ...small, count: "" }] }],
    [
      "an offcut beside the sheet",
      { others: [{ name: "offcut", width: "300mm", length: "400mm", count: "1" }], pieces: [{ ...small, count: "12" }] },
    ],
  ])("%s: the checker finds no fault, and every stroke lies where the pieces part", (_, raw) => {
    const { job, plan } = planned(raw);
    expect(replayAll(job, plan.sheets, plan.goal === "fewest-sheets")).toEqual([]);
    expect(plan.used).toBeGreaterThan(0);
    for (const { sheet, cuts } of plan.sheets) {
      const stock = job.sheets[sheet] as (typeof job.sheets)[number];
      const lines = cutLines(cuts, stock);
      expect(lines).toHaveLength(cuts.cuts.length);
      lines.forEach(({ x1, y1, x2, y2 }, index) => {
        expect(x2 - x1 + (y2 - y1)).toBeCloseTo(cuts.cuts[index]?.cutLength ?? Number.NaN, 5);
        // No stroke goes through a piece.
        for (const { x, y, width, length } of cuts.pieces) {
          const through = x1 < x + width - 1e-4 && x2 > x + 1e-4 && y1 < y + length - 1e-4 && y2 > y + 1e-4;
          expect(through).toBe(false);
        }
      });
    }
  });

  test("thirty trays out of sheets: proved in less than a second of processor time", () => {
    const start = process.cpuUsage();
    const { job, plan } = planned({ pieces: [{ name: "tray", width: "226mm", length: "276mm", count: "30", grain: "free" }] });
    const { user, system } = process.cpuUsage(start);
    expect(replayAll(job, plan.sheets, true)).toEqual([]);
    expect(plan).toMatchObject({ count: 1, bound: 1, proved: true, gap: 0, measure: "sheets" });
    expect((user + system) / 1e6).toBeLessThan(1);
  });

  test("an offcut that holds everything saves the sheet", () => {
    const { plan } = planned({
      others: [{ name: "offcut", width: "200mm", length: "200mm", count: "1" }],
      pieces: [{ ...small, count: "4" }],
    });
    expect(plan.sheets.map(({ sheet, times }) => [sheet, times])).toEqual([[1, 1]]);
    expect(plan).toMatchObject({ proved: true, gap: 0, used: 1 });
  });

  test.each<[string, Raw, string, RegExp]>([
    ["no sheet at all", { sheetCount: "-1" }, "sheetCount", /from 0 to 9999/],
    ["too large a piece", { pieces: [{ ...small, width: "3000mm" }] }, "pieces.0.width", /larger than every sheet/],
    [
      "worth of some pieces only",
      { goal: "fill-one-sheet", pieces: [{ ...small, value: "3" }, small] },
      "pieces.1.value",
      /every piece, or for none/,
    ],
  ])("one message for %s", (_, raw, field, message) => {
    expect(faults(raw)).toEqual([{ field, message: expect.stringMatching(message) }]);
  });
});
