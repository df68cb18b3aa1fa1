import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { loadCatalogue } from "../../src/catalogue/load.ts";
import type { Catalogue, Shear } from "../../src/lib/catalogue.ts";
import type { Raw } from "../../src/lib/inputs.ts";
import { phraseText } from "../../src/lib/quantity/phrase.ts";
import { runWorksheet } from "../../src/lib/worksheet.ts";
import sheetCuts from "../../src/lib/worksheets/sheet-cuts.ts";
import { anyRaw } from "../worksheets/arbitrary.ts";
import gcut from "./gcut/gcut.json" with { type: "json" };

const read = loadCatalogue();
const withShear = (shear: Partial<Shear>): Catalogue => ({
  ...read,
  shop: { ...read.shop, shear: { ...read.shop.shear, ...shear } },
});
const catalogue = withShear({
  name: "Shear T",
  cuttingLength: 1270,
  shortestStop: 10,
  longestStop: 600,
  shortestPiece: 50,
});

function answerTo(raw: Raw, data = catalogue) {
  const { answer, problems } = runWorksheet(sheetCuts, raw, data);
  if (!answer) throw new Error(problems.map(({ message }) => message).join(" "));
  return answer;
}
const problemsOf = (raw: Raw) =>
  runWorksheet(sheetCuts, raw, catalogue).problems.map(({ field, message }) => ({ field, message }));
const said = (raw: Raw, level: "note" | "caution", data = catalogue) =>
  answerTo(raw, data)
    .remarks.filter((remark) => remark.level === level)
    .map(({ phrase }) => phraseText(phrase))
    .join("\n");
const one = (piece: Record<string, string>): Raw => ({
  pieces: [{ name: "P", width: "300mm", length: "200mm", count: "1", ...piece }],
});

describe("sheet-cuts", () => {
  test("has the keys of the contract", () => {
    expect(Object.keys(sheetCuts.inputs).sort()).toEqual(["goal", "pieces", "sheetLength", "sheetWidth", "trim"]);
    expect(Object.keys(sheetCuts.outputs).sort()).toEqual(["bound", "cuts", "sheets", "used"]);
    expect(Object.keys(sheetCuts.inputs.pieces.columns).sort()).toEqual(["count", "grain", "length", "name", "width"]);
  });

  test("names only sources and cautions that are kept", () => {
    for (const id of sheetCuts.sources) expect.soft(read.sources, id).toHaveProperty([id]);
    for (const id of sheetCuts.cautions) expect.soft(read.cautions, id).toHaveProperty([id]);
  });

  test("four quarters of a sheet: one sheet, all of it used, three cuts", () => {
    const { outputs } = answerTo({
      sheetWidth: "1000mm",
      sheetLength: "1000mm",
      pieces: [{ name: "quarter", width: "500mm", length: "500mm", count: "4", grain: "free" }],
    });
    expect(outputs.sheets).toBe(1);
    expect(outputs.used).toBe(1);
    expect(outputs.bound).toBe(1);
    expect(outputs.cuts.map(({ stop, cutLength, off, held }) => [stop, cutLength, off, held])).toEqual([
      [500, 1000, "plate 1", "plate 2"],
      [500, 500, "quarter", "quarter"],
      [500, 500, "quarter", "quarter"],
    ]);
  });

  test("sheets that are cut alike are listed once", () => {
    const { outputs } = answerTo({
      sheetWidth: "1000mm",
      sheetLength: "1000mm",
      pieces: [{ name: "half", width: "1000mm", length: "500mm", count: "6", grain: "along" }],
    });
    expect(outputs.sheets).toBe(3);
    expect(outputs.cuts.map(({ sheet }) => sheet)).toEqual(["1 to 3"]);
  });

  test.each(gcut.instances)("fills one sheet as well as is published: $name", ({ sheet, pieces, optimum, optimumTurned }) => {
    const [length = 0, width = 0] = sheet;
    const raw = (grain: string): Raw => ({
      sheetWidth: `${width}mm`,
      sheetLength: `${length}mm`,
      goal: "fill-one-sheet",
      pieces: pieces.map(([l, w], index) => ({ name: `P${index}`, width: `${w}mm`, length: `${l}mm`, grain })),
    });
    const { outputs } = answerTo(raw("along"));
    expect(outputs.used).toBeCloseTo(optimum / (width * length), 9);
    expect(outputs.bound).toBeCloseTo(optimum / (width * length), 9);
    expect(outputs.sheets).toBe(1);
    expect(said(raw("along"), "note")).toMatch(/Proved best/);
    expect(answerTo(raw("free")).outputs.used).toBeCloseTo(optimumTurned / (width * length), 9);
  });

  test("a class set says that it is proved best", () => {
    const raw: Raw = { pieces: [{ name: "tray", width: "276mm", length: "226mm", count: "30" }] };
    expect(answerTo(raw).outputs.bound).toBe(1);
    expect(said(raw, "note")).toMatch(/Proved best: .* fewer sheets/);
  });

  test("the shear of the shop is heeded", () => {
    const wide: Raw = { sheetWidth: "1500mm", sheetLength: "3000mm", ...one({ width: "1300mm", length: "1400mm" }) };
    expect(said(wide, "caution")).toMatch(/cuts? (is|are) up to .* long, and Shear T cuts 1270/);
    expect(said(wide, "caution", withShear({ cuttingLength: 3100 }))).toBe("");
    const thin: Raw = { sheetWidth: "500mm", sheetLength: "80mm", ...one({ width: "500mm", length: "40mm", count: "2" }) };
    expect(said(thin, "caution")).toMatch(/less than the 50.* hold-downs of Shear T/);
    const far: Raw = { sheetWidth: "500mm", sheetLength: "1400mm", ...one({ width: "500mm", length: "700mm", count: "2" }) };
    expect(said(far, "note")).toMatch(/1 cut goes to a scribed line/);
    expect(answerTo(far).outputs.cuts.map(({ stop }) => stop)).toEqual([null]);
  });

  test.each<[string, Raw, string, RegExp]>([
    ["larger than the sheet", one({ width: "1300mm", length: "2600mm" }), "pieces.0.length", /larger than every sheet/],
    ["against the grain only", one({ length: "1500mm", grain: "across" }), "pieces.0.grain", /against its grain/],
    ["no pieces", { pieces: [] }, "pieces", /1 to 60 pieces; it holds 0/],
    ["zero of a piece", one({ count: "0" }), "pieces.0.count", /from 1 to 9999; it is 0/],
    ["ten thousand", one({ count: "10000" }), "pieces.0.count", /from 1 to 9999; it is 10000/],
    ["no number", one({ count: "" }), "pieces.0.count", /not entered/],
    [
      "more trim than sheet",
      { ...one({ width: "5mm", length: "5mm" }), trim: "200mm", sheetWidth: "300mm" },
      "trim",
      /below 150/,
    ],
    [
      "specks without a number",
      { ...one({ width: "5mm", length: "5mm", count: "" }), goal: "fill-one-sheet" },
      "pieces.0.count",
      /Enter how many/,
    ],
  ])("refuses: %s", (_, raw, field, message) => {
    const problems = problemsOf(raw);
    expect(problems).toHaveLength(1);
    expect(problems[0]?.field).toBe(field);
    expect(problems[0]?.message).toMatch(message);
  });

  test("whatever is typed, there is an answer or a problem", () => {
    fc.assert(
      fc.property(anyRaw(sheetCuts.inputs), (raw) => {
        const { answer, problems } = runWorksheet(sheetCuts, raw, catalogue);
        expect(answer === undefined).toBe(problems.length > 0);
      }),
      { numRuns: 100, seed: 31 },
    );
  });

  test("from specks to whole sheets, what is used never exceeds the bound", () => {
    const length = (most: number) => fc.double({ min: 0, max: 1, noNaN: true }).map((share) => 5 + (most - 5) * share ** 2);
    const piece = fc.record({
      width: length(3000).map((value) => `${value.toFixed(3)}mm`),
      length: length(3000).map((value) => `${value.toFixed(3)}mm`),
      count: fc.integer({ min: 1, max: 300 }).map(String),
      grain: fc.constantFrom("free", "along", "across"),
    });
    const raws = fc.record({
      sheetWidth: length(2000).map((value) => `${(value + 200).toFixed(2)}mm`),
      sheetLength: length(4000).map((value) => `${(value + 200).toFixed(2)}mm`),
      trim: fc.integer({ min: 0, max: 20 }).map((value) => `${value}mm`),
      goal: fc.constantFrom("fewest-sheets", "fill-one-sheet"),
      pieces: fc.array(piece, { minLength: 1, maxLength: 9 }),
    });
    let answered = 0;
    fc.assert(
      fc.property(raws, (raw) => {
        const { answer, problems } = runWorksheet(sheetCuts, raw, catalogue);
        if (!answer) {
          expect(problems.map(({ message }) => message).join()).toMatch(/larger than every sheet|against its grain/);
          return;
        }
        answered += 1;
        const { sheets, used, bound } = answer.outputs;
        expect(used).toBeGreaterThan(0);
        expect(used).toBeLessThanOrEqual(1 + 1e-9);
        if (raw.goal === "fill-one-sheet") expect(used).toBeLessThanOrEqual((bound ?? 0) + 1e-9);
        else expect(sheets).toBeGreaterThanOrEqual(bound ?? 0);
      }),
      { numRuns: 15, seed: 32 },
    );
    expect(answered).toBeGreaterThan(3);
  });
});
