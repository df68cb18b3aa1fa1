import fc from "fast-check";
import { sampleStandardDeviation, mean as simpleMean } from "simple-statistics";
import { describe, expect, test } from "vitest";
import { loadCatalogue } from "../../src/catalogue/load.ts";
import type { Catalogue } from "../../src/lib/catalogue.ts";
import type { Raw } from "../../src/lib/inputs.ts";
import { type Phrase, phraseText } from "../../src/lib/quantity/phrase.ts";
import { worksheetById } from "../../src/lib/registry.ts";
import { runWorksheet } from "../../src/lib/worksheet.ts";

const catalogue = loadCatalogue();

function run(id: string, raw: Raw, data: Catalogue = catalogue) {
  const sheet = worksheetById(id);
  if (!sheet) throw new Error(`no calculator ${id}`);
  const { answer, values, problems } = runWorksheet(sheet, raw, data);
  if (!answer || !values) throw new Error(problems.map(({ message }) => message).join(" "));
  const remarks = answer.remarks.map(({ level, phrase, field }) => ({ level, field, text: phraseText(phrase) }));
  const number = (key: string) => answer.outputs[key] as number;
  return {
    answer,
    number,
    cautions: remarks.filter(({ level }) => level === "caution"),
    notes: remarks.filter(({ level }) => level === "note").map(({ text }) => text),
    handoffs: sheet.handoffs?.(values, answer) ?? [],
    table: (index: number) => answer.tables?.[index]?.rows ?? [],
  };
}

const withBrake = (change: Partial<Catalogue["shop"]["brake"]>): Catalogue => ({
  ...catalogue,
  shop: { ...catalogue.shop, brake: { ...catalogue.shop.brake, ...change } },
});

describe("practice pieces", () => {
  const piece = (flat: number, legA: number, legB: number) => ({ flat: `${flat}mm`, legA: `${legA}mm`, legB: `${legB}mm` });
  const three = [piece(100, 61.1, 41.08), piece(100, 61.05, 41.1), piece(100, 61.12, 41.08)];

  test("mean, spread and ± agree with a statistics library, whatever the pieces", () => {
    const deduction = fc.double({ min: 1.5, max: 2.5, noNaN: true });
    fc.assert(
      fc.property(fc.array(deduction, { minLength: 2, maxLength: 20 }), (deductions) => {
        const pieces = deductions.map((each) => piece(100, 50 + each, 50));
        const { number } = run("practice-pieces", { pieces });
        expect(number("deduction")).toBeCloseTo(simpleMean(deductions), 9);
        expect(number("spread")).toBeCloseTo(sampleStandardDeviation(deductions), 9);
        expect(number("count")).toBe(deductions.length);
        expect(number("allowance")).toBeCloseTo(4.8 - number("deduction"), 9);
      }),
    );
  });

  test("one piece: the ± is not known, and a caution says so", () => {
    const { answer, cautions, handoffs } = run("practice-pieces", { pieces: three.slice(0, 1) });
    expect(answer.outputs).toMatchObject({ spread: null, uncertainty: null, count: 1 });
    expect(cautions.map(({ text }) => text)).toEqual([
      "One piece shows nothing of the scatter, so no ± can be given. Bend at least three, better 5.",
    ]);
    expect(handoffs.find(({ to }) => to === "plan")?.raw).not.toHaveProperty("measuredUncertainty");
  });

  test("few pieces: a caution says what few of them cost", () => {
    expect(run("practice-pieces", { pieces: three }).cautions[0]?.text).toContain(
      "With 3 pieces the ± is 4.5 standard deviations",
    );
    const six = [...three, ...three];
    expect(run("practice-pieces", { pieces: six }).cautions).toEqual([]);
  });

  test("a slip of the caliper is named, but not left out", () => {
    const pieces = [...three, ...three, piece(100, 62.1, 41.08)];
    const { cautions, number } = run("practice-pieces", { pieces });
    expect(cautions.map(({ text }) => text).join(" ")).toContain("Piece 7 stands apart from the others");
    expect(number("count")).toBe(7);
  });

  test("pieces that agree to the last digit are not believed", () => {
    const pieces = [three[0], three[0], three[0]] as typeof three;
    expect(
      run("practice-pieces", { pieces })
        .cautions.map(({ text }) => text)
        .join(" "),
    ).toContain("is not really nothing");
  });

  test("hands on what a blank and a plan need, and a blank takes it", () => {
    const { handoffs, number } = run("practice-pieces", { pieces: three, thickness: "0.048in", angle: "92" });
    const toBlank = handoffs.find(({ to }) => to === "bend-length")?.raw ?? {};
    expect(toBlank).toEqual({
      method: "measured",
      thickness: "1.2192mm",
      radius: "1.2mm",
      angle: "92deg",
      legTo: "tangent",
      deduction: "2.1767mm",
    });
    expect(run("bend-length", toBlank).number("deduction")).toBeCloseTo(number("deduction"), 3);
    const toPlan = handoffs.find(({ to }) => to === "plan")?.raw ?? {};
    expect(toPlan).toMatchObject({
      bendData: "measured",
      measuredPieces: "3",
      measuredThickness: "1.2192mm",
      measuredAngle: "92deg",
    });
    expect(Number.parseFloat(String(toPlan.measuredUncertainty))).toBeCloseTo(number("uncertainty"), 3);
  });

  test("stands beside every published method, and says which lie within its ±", () => {
    const rows = run("practice-pieces", { pieces: three }).table(1);
    expect(rows[0]).toMatchObject({ cells: ["Measured with these pieces", expect.closeTo(2.1767, 3), 0], chosen: true });
    expect(rows.filter(({ note }) => note === "within the ±").map(({ cells }) => cells[0])).toEqual(["Medium group, c = 0.64"]);
    expect(rows.length).toBeGreaterThan(8);
  });

  test.each([
    [{ pieces: [piece(100, 2, 98)] }, "pieces.0.legA", "Leg A of piece 1 must be at least 2.40 mm"],
    [{ pieces: [piece(97, 61, 41)] }, "pieces.0.flat", "Flat length of piece 1 must be above 97.20 mm"],
    [{ pieces: [] }, "pieces", "Pieces must hold 1 to 50 pieces; it holds 0."],
    [{ legTo: "tangent", angle: "60" }, "legTo", "Choose the apex."],
  ])("refuses %j", (raw, field, message) => {
    const sheet = worksheetById("practice-pieces");
    if (!sheet) throw new Error("no calculator");
    const [problem] = runWorksheet(sheet, raw, catalogue).problems;
    expect(problem?.field).toBe(field);
    expect(problem?.message).toContain(message);
  });
});

describe("springback", () => {
  test("more than the leaf can swing is a caution that names the brake and what it can do", () => {
    const { cautions } = run("springback", { angle: "134", radius: "20mm" });
    expect(cautions[0]).toMatchObject({ field: "radius" });
    expect(cautions[0]?.text).toContain(`${catalogue.shop.brake.name} swings to 135.0°; this bend needs 14`);
    expect(cautions[0]?.text).toContain("For this angle it reaches an inside radius of up to");
    expect(run("springback", { angle: "170" }).cautions[0]).toMatchObject({ field: "angle" });
    expect(run("springback", { angle: "90" }).cautions).toEqual([]);
  });

  test("a bend that is nearly all elastic is refused with the largest radius there is", () => {
    const sheet = worksheetById("springback");
    if (!sheet) throw new Error("no calculator");
    const raw = { material: "al-2024-t3", thickness: "0.5mm", radius: "900mm" };
    const [problem] = runWorksheet(sheet, raw, catalogue).problems;
    expect(problem?.field).toBe("radius");
    const limit = Number(/at most ([\d.]+) mm/.exec(problem?.message ?? "")?.[1]);
    expect(run("springback", { ...raw, radius: `${limit - 0.01}mm` }).number("swingAngle")).toBeCloseTo(360, 0);
  });

  test("the spread of the yield strength stands in a table around the answer", () => {
    const rows = run("springback", {}).table(0);
    const overbends = rows.map(({ cells }) => cells[4] as number);
    expect(overbends).toEqual([...overbends].sort((one, other) => one - other));
    expect(rows.filter(({ chosen }) => chosen)).toHaveLength(1);
    expect(run("springback", { yield: "208" }).table(0)).toHaveLength(1);
  });
});

describe("smallest radius", () => {
  test("main answer is the rule of the metal, marked in the table of rules", () => {
    for (const material of ["steel-cr", "stainless-304", "al-5052-h32", "copper-soft", "titanium-2"]) {
      const { number, table } = run("smallest-radius", { material });
      const chosen = table(0).filter((row) => row.chosen);
      expect(chosen, material).toHaveLength(1);
      expect(chosen[0]?.cells[1]).toBeCloseTo(number("radius"), 9);
    }
  });

  test("an entered reduction of area takes over", () => {
    const { number, table } = run("smallest-radius", { areaReduction: "20" });
    expect(number("ratio")).toBeCloseTo(1.5, 9);
    expect(phraseText(table(0).find((row) => row.chosen)?.cells[0] as Phrase)).toContain("Ductility");
  });

  test("a nose sharper than the answer is a caution", () => {
    const blunt = run("smallest-radius", {}, withBrake({ noseRadius: 3 }));
    expect(blunt.cautions).toEqual([]);
    const sharp = run("smallest-radius", {}, withBrake({ noseRadius: 0.5 }));
    expect(sharp.cautions[0]?.text).toContain("have a nose of 0.50 mm, sharper than this");
  });

  test("a rule that was not read is a caution", () => {
    expect(run("smallest-radius", { material: "copper-soft" }).cautions[0]?.text).toContain("common practice, not read");
    expect(run("smallest-radius", { material: "titanium-2" }).cautions[0]?.text).toContain("from memory, not read");
  });
});

describe("load on the brake", () => {
  const { rating } = catalogue.shop.brake;
  const rated = { material: rating.material, thickness: `${rating.thickness}mm`, length: `${rating.length}mm` };

  test("the job on the plate uses all of it, and half its length half of it", () => {
    expect(run("brake-load", rated).number("capacityUsed")).toBeCloseTo(1, 12);
    expect(run("brake-load", { ...rated, length: `${rating.length / 2}mm` }).number("capacityUsed")).toBeCloseTo(0.5, 12);
  });

  test("more than the plate, longer than the brake, thicker than the plate: each its own caution", () => {
    const texts = (raw: Raw) => run("brake-load", { ...rated, ...raw }).cautions.map(({ text, field }) => `${field}: ${text}`);
    expect(texts({ thickness: `${rating.thickness * 1.1}mm` })[0]).toMatch(
      /^thickness: This is more than .* Do not bend it here\.$/,
    );
    expect(texts({ length: `${rating.length + 1}mm`, thickness: "0.8mm" })[0]).toMatch(/^length: .* long; this bend is/);
    expect(texts({ length: "100mm", thickness: `${rating.thickness + 0.5}mm` })[0]).toMatch(/^thickness: The sheet is thicker/);
    expect(texts({ length: "600mm" })).toEqual([]);
  });

  test("a stronger sheet takes more of it", () => {
    const share = (strength: string) => run("brake-load", { ...rated, yield: strength }).number("capacityUsed");
    expect(share("400") / share("200")).toBeCloseTo(2, 12);
  });
});

describe("folded edge", () => {
  test("the brake's swing decides where pressing begins", () => {
    const steps = (swing: number, raw: Raw) =>
      (run("folded-edge", raw, withBrake({ largestSwing: swing })).answer.outputs.turns as { angle: number; how: string }[]).map(
        ({ angle, how }) => `${how} ${angle}`,
      );
    expect(steps(135, {})).toEqual(["swing 135", "press flat 180"]);
    expect(steps(120, { kind: "double" })).toEqual(["swing 120", "press flat 180", "swing 120", "press flat 180"]);
    expect(steps(180, { kind: "open" })).toEqual(["swing 180"]);
  });

  test("rule and geometry stand side by side, with a caution that says by how much they differ", () => {
    const { cautions, table } = run("folded-edge", { thickness: "1mm" });
    expect(cautions[0]?.text).toContain("The rule and the geometry of the fold differ by 0.43 mm. Fold a practice piece");
    expect(table(0)[0]?.cells.slice(1)).toEqual([10, expect.closeTo(9.571, 3), expect.closeTo(0.429, 3)]);
  });

  test("an edge narrower than the brake can turn up is a caution", () => {
    expect(run("folded-edge", { width: "5mm" }).cautions.at(-1)).toMatchObject({ field: "width" });
  });
});

describe("reading a length", () => {
  test("the metal decides what a gauge number is", () => {
    expect(run("length-reader", { value: "18 ga", material: "steel-cr" }).number("inch")).toBeCloseTo(0.0478, 12);
    expect(run("length-reader", { value: "18 ga", material: "al-3003-h14" }).number("inch")).toBeCloseTo(0.0403, 12);
  });

  test("gives the nearest gauge of every list, with how far it is off", () => {
    const gauges = run("length-reader", { value: "0.0598in" }).answer.outputs.gauges as { gauge: string; difference: number }[];
    expect(gauges).toHaveLength(Object.keys(catalogue.gaugeSystems).length);
    expect(gauges).toContainEqual(expect.objectContaining({ system: "Manufacturers' Standard gauge", gauge: "16" }));
  });

  test("the coarser the rule, the coarser the fraction", () => {
    const fraction = (denominator: string) => run("length-reader", { value: "1.2mm", denominator }).answer.outputs.fraction;
    expect(["16", "32", "64", "128"].map(fraction)).toEqual(["1/16", "1/16", "3/64", "3/64"]);
  });
});
