import { spawnSync } from "node:child_process";
import { describe, expect, test } from "vitest";
import { calc } from "../scripts/calc/command.ts";
import { loadCatalogue } from "../src/catalogue/load.ts";
import { worksheets } from "../src/lib/registry.ts";

const catalogue = loadCatalogue();
const run = (...args: string[]) => calc(args, catalogue);
const answer = (...args: string[]) => run(...args).out as Record<string, Record<string, unknown>>;

describe("calc list", () => {
  const listed = run("list").out as { id: string; inputs: Record<string, Record<string, unknown>>; outputs: object }[];

  test("names every calculator with its keys", () => {
    expect(listed.map(({ id }) => id)).toEqual(worksheets.map(({ id }) => id));
    for (const [index, sheet] of worksheets.entries()) {
      expect(Object.keys(listed[index]?.inputs ?? {})).toEqual(Object.keys(sheet.inputs));
      expect(Object.keys(listed[index]?.outputs ?? {})).toEqual(Object.keys(sheet.outputs));
    }
  });

  test("says kind, unit, range, default and choices of an input", () => {
    const inputs = listed.find(({ id }) => id === "bend-length")?.inputs;
    expect(inputs?.thickness).toMatchObject({ kind: "quantity", unit: "mm", min: 0.1, max: 13, default: "1.2mm" });
    expect(inputs?.method).toMatchObject({ kind: "choice", default: "neutral-line" });
    expect(Object.keys(inputs?.method?.choices as object)).toContain("din-6935");
    expect(inputs?.material?.choices).toContain("al-2024-t3");
    expect(inputs?.legs).toMatchObject({ kind: "list", json: true, plain: true, default: ["60mm", "25mm"] });
  });

  test("is JSON without loss", () => {
    expect(JSON.parse(JSON.stringify(listed))).toHaveLength(worksheets.length);
  });
});

describe("calc ID key=value", () => {
  test("gives the five parts of the contract, in base units at full precision", () => {
    const printed = answer("bend-length", "thickness=0.04in", "radius=0.16 in", "method=faa-handbook", 'legs=["1in",50,"25.4"]');
    expect(Object.keys(printed)).toEqual(["id", "inputs", "outputs", "cautions", "sources"]);
    expect(printed.inputs).toMatchObject({ thickness: 1.016, radius: 4.064, angle: 90, kFactor: 0.45, legs: [25.4, 50, 25.4] });
    expect(printed.outputs?.setback).toBeCloseTo(0.2 * 25.4, 12);
  });

  test("takes the defaults for what is left out", () => {
    expect(answer("springback")).toEqual(answer("springback", "radius=10mm", "angle=90deg"));
  });

  test("prints null for what is not known and for what may be left out", () => {
    const printed = answer("practice-pieces", 'pieces=[{"flat":100,"legA":61,"legB":41.2}]');
    expect(printed.outputs).toMatchObject({ spread: null, uncertainty: null, count: 1 });
    expect(printed.inputs?.legTo).toBeNull();
    expect(printed.cautions).toContainEqual(expect.stringContaining("One piece shows nothing of the scatter"));
  });

  test("cautions are those of this answer", () => {
    expect(answer("brake-load").cautions).toEqual([]);
    expect(answer("brake-load", "thickness=3mm", "length=1250mm").cautions?.[0]).toContain("Do not bend it here");
  });

  test.each([
    [["nonsense"], "id", "nonsense", "There is no calculator “nonsense”"],
    [[], "id", "", "Give a calculator"],
    [["list", "all"], "list", "all", "takes no inputs"],
    [["bend-length", "thickness"], "thickness", "thickness", "key=value"],
    [["bend-length", "=1"], "=1", "=1", "key=value"],
    [["bend-length", "radius=1", "radius=2"], "radius", "2", "given twice"],
    [["bend-length", "wall=2"], "wall", "2", "There is no input “wall” here"],
    [["bend-length", "__proto__=2"], "__proto__", "2", "There is no input"],
    [["bend-length", "thickness=20mm"], "thickness", "20mm", "from 0.10 mm to 13.00 mm; it is 20.00 mm"],
    [["bend-length", "thickness=-1"], "thickness", "-1", "from 0.10 mm to 13.00 mm"],
    [["bend-length", "thickness="], "thickness", "", "Nothing is entered"],
    [["bend-length", "material=wood"], "material", "wood", "must be one of steel-cr"],
    [["bend-length", "method=guess"], "method", "guess", "must be one of neutral-line"],
    [["bend-length", "legs=60,25"], "legs", "60,25", "must be a JSON array such as [60, 25]"],
    [["bend-length", "legs=[60,2]"], "legs.1.leg", "2", "Leg 2 must be at least"],
    [["practice-pieces", 'pieces=[{"flat":100}]'], "pieces.0.legA", "", "is not entered"],
    [["practice-pieces", "pieces=[1]"], "pieces", "[1]", "one entry is “1”"],
  ])("%j ends with 2 and names field and value", (args, field, value, message) => {
    const printed = run(...args);
    expect(printed.code).toBe(2);
    expect(printed.out).toBeUndefined();
    expect(printed.error).toMatchObject({ field, value });
    expect(printed.error?.message).toContain(message);
  });
});

describe("the command itself", () => {
  const spawn = (...args: string[]) => spawnSync("npm", ["run", "-s", "calc", "--", ...args], { encoding: "utf8" });

  test("prints one JSON object and ends with 0, or an error on the other channel and 2", { timeout: 60_000 }, () => {
    const good = spawn("smallest-radius", "material=al-6061-t6", "thickness=1.6");
    expect(good.status).toBe(0);
    expect(JSON.parse(good.stdout)).toMatchObject({ id: "smallest-radius", inputs: { material: "al-6061-t6", thickness: 1.6 } });
    const bad = spawn("smallest-radius", "thickness=thin");
    expect(bad.status).toBe(2);
    expect(bad.stdout).toBe("");
    // An npm that is older than its Node warns of itself there, on lines before.
    expect(JSON.parse(bad.stderr.trimEnd().split("\n").at(-1) ?? "")).toMatchObject({
      error: { field: "thickness", value: "thin" },
    });
  });
});
