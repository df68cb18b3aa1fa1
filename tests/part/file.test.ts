import { describe, expect, test } from "vitest";
import { loadCatalogue } from "../../src/catalogue/load.ts";
import { InputError } from "../../src/lib/input-error.ts";
import { partFileFrom, rawFromPart, rawFromPartFile } from "../../src/lib/part/file.ts";
import { planFrom } from "../../src/lib/part/plan.ts";

const catalogue = loadCatalogue();

const bracket = {
  version: 1,
  name: "Sensor bracket",
  material: "steel-cr",
  thickness: "1.2mm",
  radius: "1.6mm",
  measured: "outside",
  base: { width: "60mm", depth: "40mm" },
  sides: {
    north: [{ leg: "25mm", angle: "90", way: "up" }],
    south: [
      { leg: "25mm", angle: "90", way: "up" },
      { leg: "12mm", angle: "90", way: "down", edge: { kind: "closed", width: "6mm" } },
    ],
  },
  holes: [{ panel: "base", x: "12mm", y: "10mm", diameter: "5mm" }],
  bendData: "measured",
  measuredBend: { deduction: "2.3mm", uncertainty: "0.05mm", pieces: "5" },
  marking: "caliper-scribe",
  quantity: "1",
};

function refused(json: string) {
  try {
    rawFromPartFile(json);
  } catch (error) {
    if (error instanceof InputError) return { field: error.field, message: error.message };
    throw error;
  }
  throw new Error("the file was taken");
}

describe("the part file", () => {
  test("comes back from the form with everything it held", () => {
    expect(partFileFrom(rawFromPart(bracket))).toEqual(bracket);
  });

  test("keeps corners, holes of every shape and hole circles", () => {
    const tray = {
      ...bracket,
      sides: { north: [{ leg: "30mm" }], east: [{ leg: "30mm", edge: { kind: "open", width: "6mm", gap: "1mm", way: "down" } }] },
      corners: { gap: "0.5mm", relief: "notch", tabs: "north-south", tabWidth: "10mm", tabJoint: "rivets" },
      spots: [
        { panel: "base", x: "20mm", y: "20mm" },
        { panel: "base", x: "40mm", y: "20mm", metal: "stainless", thickness: "1mm" },
      ],
      holes: [
        { panel: "base", x: "12mm", y: "10mm", diameter: "5mm" },
        { panel: "base", shape: "slot", x: "30mm", y: "20mm", width: "12mm", height: "4mm", turn: "30deg" },
        { panel: "north.1", circle: "12mm", count: "4", start: "45deg", diameter: "2mm", x: "30mm", y: "15mm" },
      ],
    };
    expect(partFileFrom(rawFromPart(tray))).toEqual(tray);
    const { plan, problems } = planFrom(rawFromPart({ ...tray, bendData: "neutral-line" }), catalogue);
    expect(problems).toEqual([]);
    expect(plan?.holes).toHaveLength(6);
    expect(plan?.tabs).toHaveLength(1);
  });

  test("is planned as it stands", () => {
    const { plan, problems } = planFrom(rawFromPart(bracket), catalogue);
    expect(problems).toEqual([]);
    expect(plan?.blank.depth).toBeCloseTo(40 + 25 + 25 + 12 + 6 - 3 * 2.3, 9);
  });

  test("takes bare numbers as mm and degrees", () => {
    const { plan } = planFrom(
      rawFromPart({ base: { width: 60, depth: 40 }, sides: { north: [{ leg: 25, angle: 90, way: "up" }] } }),
      catalogue,
    );
    expect(plan?.layout.chains[0]?.panels.map(({ length }) => length)).toEqual([40, 25]);
  });

  test("keeps a folded edge on a base without legs", () => {
    const flat = { base: { width: "60mm", depth: "40mm" }, edges: { north: { kind: "closed", width: "6mm" } } };
    expect(partFileFrom(rawFromPart(flat))).toMatchObject({ edges: flat.edges });
  });
});

describe("a file that is not a part is refused with what was expected", () => {
  test("broken JSON", () => {
    expect(refused('{ "name": ').message).toMatch(/^The part file is not JSON: .+ Check quotes, commas and brackets\.$/);
  });
  test("a list", () => {
    expect(refused("[]").message).toContain("The part file must be an object with version, kind, name");
  });
  test("a misspelt key", () => {
    expect(refused('{"thicknes":"1mm"}')).toEqual({
      field: "thicknes",
      message: expect.stringContaining(
        "There is no “thicknes” in a part file. The keys are version, kind, name, material, thickness",
      ),
    });
  });
  test("an edge on an inner leg", () => {
    expect(refused('{"sides":{"north":[{"leg":"20mm","edge":{"kind":"closed"}},{"leg":"20mm"}]}}')).toMatchObject({
      field: "sides.north.0.edge",
    });
  });
  test("another version", () => {
    expect(refused('{"version":2}').message).toBe("version must be 1; it is 2.");
  });
});
