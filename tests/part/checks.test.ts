import { describe, expect, test } from "vitest";
import { loadCatalogue } from "../../src/catalogue/load.ts";
import type { Catalogue } from "../../src/lib/catalogue.ts";
import type { Raw } from "../../src/lib/inputs.ts";
import type { Check } from "../../src/lib/part/check.ts";
import { planFrom } from "../../src/lib/part/plan.ts";
import { phraseText } from "../../src/lib/quantity/phrase.ts";
import { form, up } from "./samples.ts";

const catalogue = loadCatalogue();

function checksOf(raw: Raw, shop: Catalogue = catalogue): readonly Check[] {
  const { plan, problems } = planFrom(raw, shop);
  expect(problems.map(({ message }) => message)).toEqual([]);
  return plan?.checks ?? [];
}

const ruled = (raw: Raw, rule: string, shop?: Catalogue) => checksOf(raw, shop).filter((check) => check.rule === rule);

/** One check of a rule. */
function only(raw: Raw, rule: string, shop?: Catalogue): Check {
  const found = ruled(raw, rule, shop);
  expect(found.map(({ label }) => label)).toHaveLength(1);
  return found[0] as Check;
}

const plate = (holes: Raw["holes"], fields: Raw = {}) => form({ width: "120mm", depth: "80mm", holes, ...fields });
const hole = (x: number, y: number, diameter: number) => ({
  panel: "base",
  x: `${x}mm`,
  y: `${y}mm`,
  diameter: `${diameter}mm`,
});

describe("punching", () => {
  test("names the punch with its die and the share of the machine's force", () => {
    const check = only(plate([hole(30, 30, 10)]), "punch-force");
    // F = π d T τ, with the shear strength of the catalogue; the shop's punch gives 40 kN.
    const force = Math.PI * 10 * 1 * catalogue.materials["steel-cr"].shearStrength.value;
    expect(check.value).toBeCloseTo(force, 9);
    expect(check).toMatchObject({ ok: true, limit: 40_000 });
    expect(phraseText(check.why)).toBe(
      `Needs the 10.00 mm punch with its die F: ${Math.round(force / 400)} % of the force of Deep-throat hand punch.`,
    );
  });

  test("breaks where there is no such punch, and names the nearest size", () => {
    expect(only(plate([hole(30, 30, 9)]), "punch-size")).toMatchObject({ ok: false, value: 9 });
  });

  test("breaks where the machine is too weak for the metal", () => {
    const weak = {
      ...catalogue,
      shop: { ...catalogue.shop, punch: { ...catalogue.shop.punch, force: 5000 } },
    };
    expect(only(plate([hole(30, 30, 10)]), "punch-force", weak).ok).toBe(false);
  });

  test("breaks beyond the throat", () => {
    const large = form({ width: "900mm", depth: "900mm", holes: [hole(450, 450, 10)] });
    expect(only(large, "punch-throat")).toMatchObject({ ok: false, value: 450, limit: 300 });
  });

  test("holds the metal between the two nearest holes against the rule", () => {
    expect(only(plate([hole(30, 30, 10), hole(60, 30, 10), hole(42, 30, 10)]), "hole-spacing")).toMatchObject({
      ok: true,
      value: expect.closeTo(2, 9),
      limit: 2,
    });
    expect(only(plate([hole(30, 30, 10), hole(41, 30, 10)]), "hole-spacing").ok).toBe(false);
  });

  test("measures the metal to the outline of the blank, into its notches", () => {
    const tray = form({
      width: "80mm",
      depth: "50mm",
      north: [up("25mm")],
      east: [up("25mm")],
      holes: [{ panel: "north.1", x: "76mm", y: "12mm", diameter: "5mm" }],
      cornerGap: "0.3mm",
    });
    // The north side ends 1.3 mm inside the outside of the east one: 78.7 − 76 − 2.5.
    expect(only(tray, "hole-edge").value).toBeCloseTo(0.2, 9);
    expect(only(tray, "hole-edge").ok).toBe(false);
  });
});

describe("cutting, lifting and joining", () => {
  const tray = (fields: Raw = {}) =>
    form({
      width: "80mm",
      depth: "50mm",
      north: [up("25mm")],
      south: [up("25mm")],
      east: [up("25mm")],
      west: [up("25mm")],
      ...fields,
    });

  test("a blank longer than the shear breaks its check", () => {
    expect(only(form({ width: "1400mm", depth: "50mm" }), "shear-length")).toMatchObject({ ok: false, value: 1400, limit: 1270 });
  });

  test("a rating given for one metal is carried over to another", () => {
    const steel = only(tray(), "shear-rating");
    const aluminium = only(tray({ material: "al-3003-h14" }), "shear-rating");
    expect(steel.limit).toBeCloseTo(catalogue.shop.shear.rating.thickness, 9);
    expect(aluminium.limit).toBeGreaterThan(steel.limit);
    expect(only(tray({ material: "stainless-304", thickness: "1.4mm", radius: "3mm" }), "shear-rating").ok).toBe(false);
  });

  test("a notch larger than the corner cutter takes breaks its check", () => {
    const deep = { north: [up("170mm")], south: [up("170mm")], east: [up("170mm")], west: [up("170mm")] };
    expect(only(tray({ width: "500mm", depth: "500mm", ...deep }), "corner-cutter-size").ok).toBe(false);
    expect(only(tray(), "corner-cutter-size").ok).toBe(true);
  });

  test("sides deeper than the fingers are high break theirs", () => {
    const deep = { north: [up("120mm")], south: [up("120mm")], east: [up("120mm")], west: [up("120mm")] };
    expect(only(tray({ width: "400mm", depth: "400mm", ...deep }), "finger-height")).toMatchObject({ ok: false, limit: 110 });
  });

  test("a heavy sheet asks for two people", () => {
    // 1000 × 1000 × 3 mm of steel: 23.55 kg.
    expect(only(form({ width: "1000mm", depth: "1000mm", thickness: "3mm" }), "lift")).toMatchObject({ ok: false });
  });

  test("aluminium tabs are not spot welded", () => {
    const tabs = { tabs: "north-south", tabWidth: "14mm" };
    expect(only(tray({ ...tabs }), "weldability").ok).toBe(true);
    expect(only(tray({ ...tabs, material: "al-3003-h14" }), "weldability").ok).toBe(false);
    expect(ruled(tray({ ...tabs, material: "al-3003-h14", tabJoint: "rivets" }), "weldability")).toEqual([]);
  });

  test("a tab too narrow for its spots breaks theirs", () => {
    expect(only(tray({ tabs: "north-south", tabWidth: "8mm" }), "spot-lap").ok).toBe(false);
    expect(only(tray({ tabs: "north-south", tabWidth: "24mm" }), "spot-lap").ok).toBe(true);
  });

  test("a closed fold in a metal that cracks breaks the smallest radius", () => {
    const edge = [{ side: "north", kind: "closed", width: "6mm" }];
    const hard = { material: "al-6061-t6", thickness: "1.6mm", radius: "6mm", edges: edge };
    expect(only(form({ width: "80mm", depth: "50mm", ...hard }), "edge-radius").ok).toBe(false);
  });
});

describe("pieces spot-welded to the part", () => {
  const spots = (rows: readonly Record<string, string>[], fields: Raw = {}) =>
    form({ width: "120mm", depth: "100mm", attachments: rows, ...fields });
  const spot = (x: number, y: number, fields: Record<string, string> = {}) => ({
    panel: "base",
    x: `${x}mm`,
    y: `${y}mm`,
    ...fields,
  });

  test("steel to steel is welded, steel to aluminium is refused with what to do instead", () => {
    expect(only(spots([spot(60, 50)]), "weldability").ok).toBe(true);
    const refused = only(spots([spot(60, 50, { metal: "steel" })], { material: "al-3003-h14" }), "weldability");
    expect(refused.ok).toBe(false);
    expect(phraseText(refused.why)).toMatch(/Aluminium 3003.* to Cold-rolled low-carbon steel.*Use rivets/);
  });

  test("a sheet more than three times as thick breaks the ratio (ISO 14373, scope)", () => {
    expect(only(spots([spot(60, 50, { thickness: "3mm" })]), "weld-thickness-ratio")).toMatchObject({ ok: true, value: 3 });
    expect(only(spots([spot(60, 50, { thickness: "3.2mm" })]), "weld-thickness-ratio").ok).toBe(false);
    expect(only(spots([spot(60, 50, { thickness: "0.3mm" })]), "weld-thickness-ratio").ok).toBe(false);
  });

  test("spots too near each other or the edge break pitch and edge distance; d = 5√t", () => {
    // 1 mm sheet: d = 5 mm, edge 2 d = 10, pitch the larger of 10 t, 12.7 and 3 d = 15.
    expect(only(spots([spot(9, 50), spot(60, 50)]), "spot-lap")).toMatchObject({ ok: false, value: 9, limit: 10 });
    expect(only(spots([spot(40, 50), spot(54, 50)]), "spot-pitch")).toMatchObject({ ok: false, value: 14, limit: 15 });
    expect(only(spots([spot(40, 50), spot(56, 50)]), "spot-pitch").ok).toBe(true);
  });

  test("are marked on the blank and scribed with the rest", () => {
    const { plan } = planFrom(spots([spot(40, 50)]), catalogue);
    expect(plan?.scribe.filter(({ kind }) => kind === "spot").map(({ distance }) => distance)).toEqual([50, 40]);
    expect(plan?.layout.attachments[0]).toMatchObject({ flatX: 40, flatY: 50 });
  });

  test("off the part are refused at their field", () => {
    const { problems } = planFrom(spots([spot(130, 50)]), catalogue);
    expect(problems[0]?.field).toBe("attachments.0.x");
    expect(problems[0]?.message).toMatch(/^Spot 1 must lie on Base/);
  });
});

test("every check says what it is, in words with a source", () => {
  const all = checksOf(
    form({
      width: "80mm",
      depth: "50mm",
      north: [up("25mm")],
      east: [up("25mm")],
      tabs: "north-south",
      holes: [hole(20, 20, 5), hole(40, 20, 5)],
    }),
  );
  expect(all.length).toBeGreaterThan(15);
  for (const { label, why, source, value, limit } of all) {
    expect(label).not.toBe("");
    expect(phraseText(why)).toMatch(/[.:]/);
    expect(source).not.toBe("");
    expect(Number.isFinite(value)).toBe(true);
    expect(Number.isFinite(limit)).toBe(true);
  }
});
