import { spawnSync } from "node:child_process";
import { describe, expect, test } from "vitest";
import { startingPoints } from "../../../src/components/plan/starting-points.ts";
import { addressParts, rawFromAddress } from "../../../src/lib/address.ts";
import { InputError } from "../../../src/lib/input-error.ts";
import { partFileFrom, rawFromPart } from "../../../src/lib/part/file.ts";
import { partInputs } from "../../../src/lib/part/form.ts";
import { planFrom } from "../../../src/lib/part/plan.ts";
import { phraseText } from "../../../src/lib/quantity/phrase.ts";
import { catalogue, cone, hole, rolled, tube } from "./samples.ts";

describe("the setting of the rolls", () => {
  /** Steel and rolls of tests/published/rolling.json, “roll-setting-158”: X = 1/8, ρ = 126, over a pitch of 1.5. */
  const shop = {
    ...catalogue,
    materials: {
      ...catalogue.materials,
      "steel-cr": {
        ...catalogue.materials["steel-cr"],
        yield: { ...catalogue.materials["steel-cr"].yield, value: 250 },
        elasticModulus: { ...catalogue.materials["steel-cr"].elasticModulus, value: 200_000 },
      },
    },
    shop: {
      ...catalogue.shop,
      rolls: { ...catalogue.shop.rolls, frontRoll: 30, rearRoll: 50, spacing: 40, screwPitch: 1.5 },
    },
  };

  test("is the published one", () => {
    const { rolling } = rolled(tube({ diameter: `${2 * 158.02469135802468}mm` }), shop);
    const [setting] = rolling.settings;
    expect(setting?.loadedRadius).toBeCloseTo(100, 6);
    expect(setting?.rise).toBeCloseTo(6.517784, 6);
    expect(setting?.turns).toBeCloseTo(4.345189, 6);
    expect(setting?.flatEnd).toBeCloseTo(32.46653, 5);
    expect(rolling.smallestDiameter).toBeCloseTo(31.787191, 5);
    expect(setting?.passes.at(-1)?.radius).toBeCloseTo(158.02469, 4);
  });

  test("of a cone is that of a tube of the radius square to its lines, at each end, in as many passes", () => {
    // D 200, d 120, H 150: slant √(40² + 150²) = 155.2417; 100 · 155.2417/150 = 103.4945 to the middle of the thickness.
    const { rolling } = rolled(cone());
    const [large, small] = rolling.settings;
    expect(large?.radius).toBeCloseTo(103.4945 - 0.5, 3);
    expect(small?.radius).toBeCloseTo(62.0967 - 0.5, 3);
    const alike = rolled(tube({ diameter: `${2 * (small?.radius ?? 0)}mm` })).rolling.settings[0];
    expect(small?.rise).toBeCloseTo(alike?.rise ?? 0, 9);
    expect(large?.passes).toHaveLength(small?.passes.length ?? 0);
    expect(large?.rise).toBeLessThan(small?.rise ?? 0);
  });

  test("is refused with its reason where the rolls cannot make the curve, and the plan still stands", () => {
    const { rolling, remarks, practice, steps } = rolled(tube({ diameter: "70mm" }));
    expect(rolling.settings).toEqual([]);
    expect(phraseText(rolling.refused[0]?.because ?? [])).toMatch(/^Inside radius must be at least .+ on these rolls/);
    expect(phraseText(remarks[0]?.phrase ?? [])).toMatch(/^No setting of the rolls for an inside radius of 35\.00 mm/);
    expect(practice).toEqual([]);
    expect(steps.length).toBeGreaterThan(3);
  });
});

describe("finished sizes", () => {
  const size = (raw: Parameters<typeof rolled>[0], what: string) => rolled(raw).sizes.find((each) => each.what.startsWith(what));

  test("of a butted tube: the line divided by π, and the thickness", () => {
    const found = size(tube(), "Diameter inside");
    const line = catalogue.markingMethods["caliper-scribe"]?.error ?? 0;
    expect(found?.from.marking).toBeCloseTo(line / Math.PI, 9);
    expect(found?.from.springback).toBe(0);
    expect(found?.plusMinus).toBeCloseTo(Math.hypot(found?.from.marking ?? 0, found?.from.thickness ?? 0), 9);
  });

  test("of a grooved tube hold both ways to reckon the seam", () => {
    // 3 W against 3 W − 2 (4 − π) t: half of 1.7168 mm, evenly spread, over π, k = 2.
    const found = size(tube({ seam: "grooved", seamWidth: "6mm" }), "Diameter");
    expect(found?.from.seam).toBeCloseTo((2 * (4 - Math.PI)) / Math.sqrt(3) / Math.PI, 9);
  });

  test("of an arc are those of its springback, until trial pieces are rolled", () => {
    const found = size(tube({ arc: "120deg" }), "Radius inside");
    expect(found?.size).toBe(75);
    expect(found?.from.springback).toBeGreaterThan(1);
    expect(size(tube({ arc: "120deg", diameter: "1900mm", thickness: "0.5mm" }), "Radius")?.plusMinus).toBeNull();
  });

  test("of a cone are what a caliper reads, and as sure as its arcs and its chord", () => {
    // Half the apex leans by cos⁻¹(150/155.2417): the faces stand 0.96623 mm apart across the diameter from the middle of 1 mm.
    expect(size(cone(), "Large end")?.size).toBeCloseTo(200.96623, 4);
    expect(size(cone(), "Small end")?.size).toBeCloseTo(120.96623, 4);
    expect(size(cone(), "Height")?.size).toBe(150);
    expect(size(cone({ smallDiameter: "0mm" }), "Small end")).toBeUndefined();
    // A slant that is scribed at both ends: √2 lines, leaned; the diameters play in too, so it is a little more.
    const line = catalogue.markingMethods["caliper-scribe"]?.error ?? 0;
    const height = size(cone(), "Height")?.plusMinus ?? 0;
    expect(height).toBeGreaterThan(line);
    expect(height).toBeLessThan(2 * line);
  });
});

describe("the scribe list", () => {
  test("of a tube is from the west, then from the south, rising", () => {
    const { scribe } = rolled(tube({ seam: "grooved", seamWidth: "6mm", holes: [hole(100, 50)] }));
    expect(scribe.map(({ from, distance }) => [from, Number(distance.toFixed(2))])).toEqual([
      ["west", 6],
      ["west", 109],
      ["west", 246.19],
      ["west", 486.38],
      ["south", 50],
    ]);
  });

  test("of a cone draws middle line, centre, arcs and chord before what hangs on them", () => {
    const { scribe, sheet } = rolled(cone({ seam: "lap", seamWidth: "12mm" }));
    const { sector } = sheet;
    expect(scribe.map(({ from }) => from)).toEqual([
      "west",
      "south",
      "centre O",
      "centre O",
      "arc middle",
      "arc end",
      "seam A",
      "edge A",
      "edge B",
      "centre O",
      "joint",
    ]);
    expect(scribe[2]?.distance).toBe(sector?.outerRadius);
    expect(scribe[3]?.distance).toBe(sector?.innerRadius);
    expect(scribe[5]?.distance).toBe(sector?.chord);
  });
});

describe("the part file of a rolled part", () => {
  const duct = {
    version: 1,
    kind: "tube",
    name: "Duct",
    material: "steel-galv",
    thickness: "0.8mm",
    measured: "inside",
    tube: { diameter: "150mm", length: "300mm", arc: "360deg", seam: { kind: "lap", width: "20mm", joint: "rivets" } },
    holes: [{ panel: "base", x: "100mm", y: "50mm", diameter: "10mm" }],
    marking: "caliper-scribe",
    quantity: "2",
  };
  const funnel = {
    version: 1,
    kind: "cone",
    name: "Funnel",
    material: "copper-soft",
    thickness: "0.7mm",
    cone: { largeDiameter: "200mm", smallDiameter: "80mm", height: "150mm", seam: { kind: "grooved", width: "6mm" } },
    marking: "caliper-scribe",
    quantity: "1",
  };

  test.each([duct, funnel])("$name comes back from the form, and from its address, with everything it held", (file) => {
    const raw = rawFromPart(file);
    expect(partFileFrom(raw)).toEqual(file);
    const parameters = addressParts(partInputs, raw).map(([key, text]): [string, string] => [`plan.${key}`, text]);
    expect(partFileFrom(rawFromAddress("plan", partInputs, parameters))).toEqual(file);
    expect(rolled(raw).part).toMatchObject({ kind: file.kind, name: file.name });
  });

  test("leaves out what butted edges do not have", () => {
    expect(partFileFrom(rawFromPart({ kind: "tube", tube: {} }))).toMatchObject({ tube: { seam: { kind: "butt" } } });
    expect(rolled(rawFromPart({ kind: "tube", tube: { seam: { kind: "butt" } } })).sheet.seam.allowance).toBe(0);
  });

  test.each([
    ["sides", { ...duct, sides: {} }, "There is no “sides” in the part file of a tube part."],
    ["cone", { ...duct, cone: funnel.cone }, "There is no “cone” in the part file of a tube part."],
    ["measured", { ...funnel, measured: "inside" }, "There is no “measured” in the part file of a cone part."],
    ["tube", { tube: duct.tube }, "There is no “tube” in the part file of a folded part, which it is without a “kind”."],
    ["tube.height", { ...duct, tube: { height: "5mm" } }, "There is no “height” in tube."],
    ["tube.seam.type", { ...duct, tube: { seam: { type: "lap" } } }, "There is no “type” in tube.seam."],
    ["kind", { ...duct, kind: "ball" }, "kind must be one of folded, tube, cone"],
  ])("with a key that does not fit is refused: %s", (field, file, message) => {
    try {
      rawFromPart(file);
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      expect(error.field).toBe(field);
      expect(error.message).toContain(message);
      return;
    }
    throw new Error("the file was taken");
  });

  test("is planned by the command line", () => {
    const { status, stdout, stderr } = spawnSync(process.execPath, ["scripts/plan.ts", "-"], {
      input: JSON.stringify(duct),
      encoding: "utf8",
    });
    expect(stderr).toBe("");
    expect(status).toBe(0);
    const printed = JSON.parse(stdout);
    expect(printed.blank.width).toBeCloseTo(Math.PI * 150.8 + 20, 9);
    expect(printed.blank.depth).toBe(300);
    expect(printed.rolls.settings).toHaveLength(1);
    expect(Object.keys(printed)).toEqual(
      expect.arrayContaining(["outline", "scribe", "holes", "checks", "practice", "uncertainty", "steps", "cautions"]),
    );
  });
});

describe("an address without a kind", () => {
  test("is that of a folded part", () => {
    const { plan, rolled: other } = planFrom({ width: "60mm", depth: "40mm" }, catalogue);
    expect(plan).toBeDefined();
    expect(other).toBeUndefined();
  });

  test("keeps what was typed for another kind, which changes nothing", () => {
    const { rolled: plan, problems } = planFrom(tube({ north: [{ leg: "25mm" }], radius: "2mm" }), catalogue);
    expect(problems).toEqual([]);
    expect(plan?.blank.width).toBeCloseTo(474.3805, 4);
  });
});

test.each(startingPoints.filter(({ raw }) => raw.kind !== undefined))(
  "every check holds of the starting point “$id”",
  ({ raw }) => {
    expect(rolled(raw).checks.filter(({ ok }) => !ok)).toEqual([]);
  },
);
