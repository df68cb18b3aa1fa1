import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { loadCatalogue } from "../../src/catalogue/load.ts";
import type { Catalogue, PunchSet, Rolls } from "../../src/lib/catalogue.ts";
import type { Raw } from "../../src/lib/inputs.ts";
import { phraseText } from "../../src/lib/quantity/phrase.ts";
import { worksheetById } from "../../src/lib/registry.ts";
import { runWorksheet } from "../../src/lib/worksheet.ts";

const loaded = loadCatalogue();

/** Machines of the tests' own: the shop's file is the instructor's to change. */
const punch: PunchSet = {
  name: "Test punch",
  force: 30_000,
  throat: 200,
  punches: [
    { shape: "round", diameter: 5, die: "A" },
    { shape: "round", diameter: 10, die: "B" },
    { shape: "square", width: 8, die: "C" },
  ],
  dies: [
    { letter: "A", shape: "round", diameter: 5.12 },
    { letter: "B", shape: "round", diameter: 10.14 },
    { letter: "C", shape: "square", width: 8.2 },
    { letter: "D", shape: "round", diameter: 10.4 },
  ],
};
const rolls: Rolls = {
  name: "Test rolls",
  rating: { material: "steel-cr", thickness: 1.2, length: 1000 },
  width: 1000,
  frontRoll: 60,
  rearRoll: 60,
  spacing: 66,
  screwPitch: 1.5,
  smallestDiameter: 90,
  risePerPass: 3,
};
const brake = { ...loaded.shop.brake, fingers: [25, 50, 100] };
const catalogue: Catalogue = { ...loaded, shop: { ...loaded.shop, punch, rolls, brake } };

function attempt(id: string, raw: Raw) {
  const sheet = worksheetById(id);
  if (!sheet) throw new Error(`no calculator ${id}`);
  return runWorksheet(sheet, raw, catalogue);
}

function run(id: string, raw: Raw) {
  const { answer, problems } = attempt(id, raw);
  if (!answer) throw new Error(problems.map(({ message }) => message).join(" "));
  const texts = (level: "note" | "caution") =>
    answer.remarks.filter((remark) => remark.level === level).map(({ phrase }) => phraseText(phrase));
  return {
    outputs: answer.outputs,
    number: (key: string) => answer.outputs[key] as number,
    cautions: texts("caution"),
    notes: texts("note"),
    table: (index: number) => answer.tables?.[index]?.rows ?? [],
    tables: answer.tables ?? [],
  };
}

function problem(id: string, raw: Raw) {
  const [first] = attempt(id, raw).problems;
  if (!first) throw new Error(`${id} has an answer`);
  return first;
}

describe("load on the punch", () => {
  test("says what part of this shop's punch it takes, and which die belongs to the punch", () => {
    const { cautions, notes, number } = run("punch-load", { diameter: "10mm", thickness: "1mm", shearStrength: "300" });
    expect(number("force")).toBeCloseTo(Math.PI * 10 * 300, 6);
    expect(notes).toContain("This takes 31 % of what Test punch is rated for, 30.0 kN.");
    expect(notes).toContain("The set has this punch; its die is B.");
    expect(cautions).toEqual([]);
  });

  test("more than the punch is rated for, and a punch that is not there, are cautions", () => {
    const { cautions } = run("punch-load", { diameter: "20mm", thickness: "2mm", shearStrength: "300" });
    expect(cautions).toEqual([
      expect.stringMatching(/^Test punch gives 30\.0 kN at most; this hole takes 126 % of that\. Do not punch it here/),
      "The set of this shop has no round punch of this size. Its next smaller one is 10.00 mm: ream or file from there.",
    ]);
    expect(run("punch-load", { shape: "square", width: "8mm" }).notes).toContain("The set has this punch; its die is C.");
    expect(run("punch-load", { shape: "square", width: "9mm" }).cautions).toContain(
      "The set of this shop has no square punch of this size.",
    );
  });

  test("a hole so small that its punch is overloaded is a caution", () => {
    const { cautions } = run("punch-load", { diameter: "1mm", thickness: "2mm", material: "stainless-304" });
    expect(cautions.some((text) => text.startsWith("The punch itself is pressed with"))).toBe(true);
  });

  test("titanium: the work is not known, and a caution gives its bound", () => {
    const { outputs, cautions, tables } = run("punch-load", { material: "titanium-2", thickness: "1mm", diameter: "5mm" });
    expect(outputs.work).toBeNull();
    expect(cautions.some((text) => text.includes("the work is not given. It is at most 6.0 J"))).toBe(true);
    expect(tables).toHaveLength(2);
  });

  test("one row of each table is the answer", () => {
    const { number, tables } = run("punch-load", {});
    const [forces, strips] = tables;
    for (const [table, column, key] of [
      [forces, 1, "force"],
      [strips, 2, "strippingForce"],
    ] as const) {
      const chosen = table?.rows.filter((row) => row.chosen) ?? [];
      expect(chosen).toHaveLength(1);
      expect(chosen[0]?.cells[column]).toBeCloseTo(number(key), 9);
    }
  });
});

describe("die for a punch", () => {
  test("names the die that comes nearest within the widest published band", () => {
    expect(run("die-fit", { diameter: "10mm", thickness: "1.2mm" }).notes[0]).toBe(
      "In this shop: take punch 10.00 mm with die B, 10.14 mm. It leaves 5.8 % of the thickness per side.",
    );
    expect(run("die-fit", { diameter: "10mm", thickness: "3mm" }).notes[0]).toMatch(/die D, 10\.40 mm\. It leaves 6\.7 %/);
  });

  test("sheet too thin or too thick for the dies there are: a caution says what happens", () => {
    expect(run("die-fit", { diameter: "10mm", thickness: "0.4mm" }).cautions[0]).toMatch(
      /Die B.* leaves 17\.5 % per side: the sheet is drawn in/,
    );
    expect(run("die-fit", { diameter: "5mm", thickness: "4mm" }).cautions[0]).toMatch(
      /Die A.* leaves 1\.5 % per side: the punch takes more force/,
    );
    expect(run("die-fit", { diameter: "7mm" }).cautions[0]).toBe(
      "The set of this shop has no round punch of 7.00 mm. It has 5, 10 mm.",
    );
  });

  test("a metal that the table does not name is said to be put with another", () => {
    expect(run("die-fit", { material: "copper-soft" }).cautions.some((text) => text.includes("does not name this metal"))).toBe(
      true,
    );
    expect(run("die-fit", { material: "brass-half-hard" }).cautions.some((text) => text.includes("does not name"))).toBe(false);
  });

  test("the clearance shown lies in the band of the other texts, but for the one said to stand alone", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.2, max: 6, noNaN: true }), (thickness) => {
        const { number, table } = run("die-fit", { thickness: `${thickness}mm` });
        const lows = table(0).map(({ cells }) => cells[1] as number);
        const highs = table(0).map(({ cells }) => cells[2] as number);
        expect(number("clearancePerSide")).toBeGreaterThanOrEqual(Math.min(...lows));
        expect(number("clearancePerSide")).toBeLessThanOrEqual(Math.max(...highs));
      }),
    );
  });
});

describe("place of a hole", () => {
  test("judges only what is entered, and says so", () => {
    const { outputs, notes, table } = run("hole-place", {});
    expect(outputs.ok).toBe("yes");
    expect(notes).toContain("No distance is entered, so only the size of the hole is judged.");
    expect(table(0).map(({ cells }) => cells[4])).toEqual(["enough", "not checked", "not checked", "not checked"]);
  });

  test("what is too near is named at its field, with the limit", () => {
    const raw = { thickness: "1mm", radius: "2mm", edgeDistance: "1.9mm", holeSpacing: "2mm", bendDistance: "3.9mm" };
    const { outputs, cautions } = run("hole-place", raw);
    expect(outputs.ok).toBe("no");
    expect(cautions).toEqual([
      "Hole to edge of the part should be at least 2.00 mm; it is 1.90 mm. The strip bulges or tears. Some shops go down to 1.50 mm.",
      expect.stringMatching(/^Hole to next leg should be at least 4\.00 mm; it is 3\.90 mm\./),
    ]);
  });

  test("a hole deeper in the sheet than the punch reaches is a caution", () => {
    expect(run("hole-place", { edgeDistance: "198mm", diameter: "5mm" }).cautions[0]).toMatch(/^Test punch reaches 200\.00 mm/);
    expect(run("hole-place", { edgeDistance: "197mm", diameter: "5mm" }).cautions).toEqual([]);
  });
});

describe("fingers for a box", () => {
  test("takes the fingers of this shop's brake when none are listed", () => {
    expect(run("finger-set", { boxWidth: "130mm", gap: "2mm" }).outputs).toEqual({ chosen: [100, 25], total: 125, clearance: 5 });
    expect(
      run("finger-set", { boxWidth: "130mm", gap: "2mm", fingers: [{ finger: "64mm" }, { finger: "64mm" }] }).outputs,
    ).toEqual({
      chosen: [64, 64],
      total: 128,
      clearance: 2,
    });
  });

  test("a wide gap, all fingers used up and no clearance are cautions", () => {
    expect(run("finger-set", { boxWidth: "98mm" }).cautions[0]).toMatch(/^23\.00 mm stay open/);
    expect(run("finger-set", { boxWidth: "300mm" }).cautions[0]).toMatch(/^All the fingers together are only 175\.00 mm/);
    expect(run("finger-set", { boxWidth: "175mm", gap: "0mm" }).cautions[0]).toMatch(/sticks/);
  });

  test("each finger stands once on the brake or on the rack", () => {
    const { table } = run("finger-set", {
      boxWidth: "80mm",
      fingers: [{ finger: "25mm" }, { finger: "50mm" }, { finger: "50mm" }],
    });
    expect(table(0).map(({ cells }) => cells)).toEqual([
      [50, "on the brake"],
      [50, "on the rack"],
      [25, "on the brake"],
    ]);
  });

  test("a finger that is none is refused at its row", () => {
    expect(problem("finger-set", { fingers: [{ finger: "50mm" }, { finger: "-1" }] })).toMatchObject({
      field: "fingers.1.finger",
      value: "-1",
    });
    expect(problem("finger-set", { boxWidth: "20mm" })).toMatchObject({ field: "boxWidth", value: "20mm" });
  });
});

describe("setting of the rolls", () => {
  const steel = { thickness: "1mm", yield: "250", elasticModulus: "200000" };

  test("left empty, the rolls are this shop's; typed in, the same rolls give the same setting", () => {
    const shops = run("roll-setting", steel);
    const typed = run("roll-setting", {
      ...steel,
      frontRoll: "60mm",
      rearRoll: "60mm",
      rollSpacing: "66mm",
      screwPitch: "1.5mm",
    });
    expect(typed.outputs).toEqual(shops.outputs);
    expect(shops.notes.some((text) => text.includes("Test rolls are rated for"))).toBe(true);
    expect(typed.cautions).toContain(
      "These are not the rolls of this shop. Whether they may roll this sheet is on their plate and in their manual.",
    );
  });

  test("the last pass is the setting, and the turns are its rise over the pitch", () => {
    const { outputs, number } = run("roll-setting", steel);
    const passes = outputs.passes as readonly Record<string, number>[];
    expect(passes.at(-1)).toMatchObject({ rise: number("rearRollRise"), turns: number("turns"), radius: 75 });
    expect(number("turns")).toBeCloseTo(number("rearRollRise") / 1.5, 12);
    expect(passes.map(({ pass }) => pass)).toEqual(passes.map((_, index) => index + 1));
  });

  test("whole turns and degrees make up the turns", () => {
    fc.assert(
      fc.property(fc.double({ min: 50, max: 400, noNaN: true }), (radius) => {
        const { notes, number } = run("roll-setting", { ...steel, radius: `${radius}mm` });
        const [, turns = "", degrees = ""] = /^That is (\d+) whole turns? and (\d+)° more/.exec(notes[0] ?? "") ?? [];
        expect(Number(degrees)).toBeLessThan(360);
        expect(Math.abs(Number(turns) + Number(degrees) / 360 - number("turns"))).toBeLessThanOrEqual(0.5 / 360 + 1e-9);
      }),
    );
  });

  test("an entered yield strength moves the setting; a stronger sheet needs more turns", () => {
    const turns = (strength: string) => run("roll-setting", { ...steel, yield: strength }).number("turns");
    expect(turns("300")).toBeGreaterThan(turns("250"));
  });

  test("a sheet that comes back flat is refused at the thickness", () => {
    expect(problem("roll-setting", { thickness: "0.15mm", yield: "900", elasticModulus: "200000" })).toMatchObject({
      field: "thickness",
      value: "0.15mm",
      message: expect.stringContaining("comes back flat"),
    });
  });

  test("too tight and too wide are refused at the radius as it was typed", () => {
    expect(problem("roll-setting", { ...steel, radius: "1 in" })).toMatchObject({ field: "radius", value: "1 in" });
    expect(problem("roll-setting", { thickness: "0.4mm", yield: "700", elasticModulus: "200000", radius: "900" })).toMatchObject({
      field: "radius",
      value: "900",
      message: expect.stringMatching(/must be at most .*comes back flat/),
    });
  });

  test("rolls that would meet are a caution", () => {
    const { cautions } = run("roll-setting", { frontRoll: "100mm", rearRoll: "64mm" });
    expect(cautions.some((text) => text.includes("that needs 80.00 mm from the pinch line at least"))).toBe(true);
    expect(run("roll-setting", { frontRoll: "60mm", rearRoll: "60mm" }).cautions.some((text) => text.includes("meet"))).toBe(
      false,
    );
  });

  test("more than the rolls are rated for, and a tube smaller than their plate allows, are cautions", () => {
    const { cautions } = run("roll-setting", { thickness: "1.5mm", radius: "42mm" });
    expect(cautions[0]).toMatch(/^Test rolls roll to 90\.00 mm inside at the smallest; this is 84\.00 mm\./);
    expect(cautions[1]).toMatch(/Over that width this sheet takes 156 % of that bending moment: too much\./);
    expect(run("roll-setting", { thickness: "1.5mm", yield: "100", radius: "100mm" }).cautions[0]).toMatch(
      /takes 75 % of that bending moment, but it is thicker than the plate allows/,
    );
  });

  test("trial pieces that came out as calculated leave the setting, tighter ones ease it", () => {
    const plain = run("roll-setting", steel);
    const rise = plain.number("rearRollRise");
    const trial = (radius: number) => ({ rise: `${rise}mm`, radius: `${radius}mm` });
    expect(run("roll-setting", { ...steel, trials: [trial(75)] }).number("turns")).toBeCloseTo(plain.number("turns"), 6);
    const eased = run("roll-setting", { ...steel, trials: [trial(65), trial(66), trial(64)] });
    expect(eased.number("turns")).toBeLessThan(plain.number("turns"));
    expect(eased.notes.some((text) => text.startsWith("By the scatter of the pieces the radius is good to about ±"))).toBe(true);
    expect(eased.tables.map(({ caption }) => caption)).toEqual(["The trial pieces"]);
    const opened = run("roll-setting", { ...steel, trials: [trial(90)] });
    expect(opened.number("turns")).toBeGreaterThan(plain.number("turns"));
    expect(opened.cautions).toContain("One piece shows nothing of the scatter, so no ± can be given. Roll at least three.");
  });

  test("trial pieces far from the setting, or that cannot be, are named", () => {
    const far = run("roll-setting", { ...steel, radius: "300mm", trials: [{ rise: "30mm", radius: "70mm" }] });
    expect(far.cautions.some((text) => text.startsWith("All trial pieces were rolled far from this setting."))).toBe(true);
    expect(problem("roll-setting", { ...steel, trials: [{ rise: "70mm", radius: "30mm" }] })).toMatchObject({
      field: "trials.0.rise",
      value: "70mm",
    });
    expect(problem("roll-setting", { ...steel, trials: [{ rise: "3mm", radius: "20mm" }] })).toMatchObject({
      field: "trials",
      message: expect.stringContaining("Check where flat contact was taken"),
    });
    expect(problem("roll-setting", { ...steel, radius: "45mm", trials: [{ rise: "20mm", radius: "200mm" }] })).toMatchObject({
      field: "trials",
      message: expect.stringMatching(/^After the trial pieces the rolls must be set as if for/),
    });
  });
});

describe("blanks for rolling", () => {
  test("a tube tighter than the rolls, or than the middle stays neutral, is a caution", () => {
    expect(run("rolled-blank", { diameter: "80mm" }).cautions[0]).toMatch(/^Test rolls roll to 90\.00 mm inside at the smallest/);
    expect(run("rolled-blank", { diameter: "9mm", thickness: "1mm" }).cautions[0]).toMatch(
      /^The inside radius is under 5 thicknesses/,
    );
  });

  test("the rows of old shops' habits differ by the thicknesses they add", () => {
    const { table } = run("rolled-blank", { diameter: "100mm", thickness: "2mm", arc: "180", seam: "10mm" });
    const [theory, nothing, three, seven] = table(0).map(({ cells }) => cells[1] as number);
    expect(nothing).toBeCloseTo(Math.PI * 50 + 10, 9);
    expect((three ?? 0) - (nothing ?? 0)).toBeCloseTo(3, 9);
    expect((seven ?? 0) - (nothing ?? 0)).toBeCloseTo(7, 9);
    expect((theory ?? 0) - (nothing ?? 0)).toBeCloseTo(Math.PI, 9);
  });

  test("a cone that is a cylinder leads on to the calculator that does it, filled in", () => {
    const cylinder = problem("cone-blank", { largeDiameter: "100mm", smallDiameter: "100mm", thickness: "2mm" });
    expect(cylinder).toMatchObject({ field: "smallDiameter", value: "100mm" });
    const [instead] = cylinder.instead;
    expect(instead?.to).toBe("rolled-blank");
    expect(run("rolled-blank", instead?.raw ?? {}).number("blank")).toBeCloseTo(100 * Math.PI, 9);
  });

  test("a long slender cone, and one wider than the rolls, are cautions", () => {
    const { cautions } = run("cone-blank", { largeDiameter: "200mm", smallDiameter: "190mm", height: "1200mm" });
    expect(cautions.some((text) => text.includes("is too long to swing on a bench"))).toBe(true);
    expect(cautions.some((text) => text.startsWith("Test rolls are 1000.00 mm wide"))).toBe(true);
  });
});
