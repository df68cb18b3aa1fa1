import { describe, expect, test } from "vitest";
import { loadCatalogue } from "../../src/catalogue/load.ts";
import type { Catalogue } from "../../src/lib/catalogue.ts";
import { carriedRatings, thickestPunched } from "../../src/lib/shop/carry-over.ts";

const own = loadCatalogue();
const strength = (value: number) => ({ ...own.materials["steel-cr"].yield, value });

/** Metals with round numbers: the one on the plates has a yield strength of 200 and a shear strength of 300 N/mm². */
const materials = {
  ...own.materials,
  "steel-cr": { ...own.materials["steel-cr"], yield: strength(200), shearStrength: strength(300) },
  "stainless-304": { ...own.materials["stainless-304"], yield: strength(800), shearStrength: strength(1200) },
  "al-1100-o": { ...own.materials["al-1100-o"], yield: strength(50), shearStrength: strength(75) },
} as Catalogue["materials"];
const plate = { material: "steel-cr", thickness: 1.6, length: 1250 } as const;
const shop: Catalogue["shop"] = {
  ...own.shop,
  brake: { ...own.shop.brake, rating: plate },
  rolls: { ...own.shop.rolls, rating: plate },
  shear: { ...own.shop.shear, rating: plate, rake: 1.5 },
  cornerCutter: { ...own.shop.cornerCutter, rating: plate },
  punch: { ...own.shop.punch, force: 40_000 },
};
const row = (material: string, of: Catalogue["shop"] = shop) =>
  carriedRatings({ materials, shop: of }).find((each) => each.material === material);

describe("ratings in other metals", () => {
  test("the metal on the plate keeps what the plate says", () => {
    expect(row("steel-cr")).toEqual({ material: "steel-cr", brake: 1.6, rolls: 1.6, shear: 1.6, cornerCutter: 1.6 });
  });

  test("four times as strong: half the thickness by moment and under a raked blade, a quarter in parallel blades", () => {
    expect(row("stainless-304")).toMatchObject({ brake: 0.8, rolls: 0.8, shear: 0.8, cornerCutter: 0.4 });
    expect(row("stainless-304", { ...shop, shear: { ...shop.shear, rake: 0 } })?.shear).toBeCloseTo(0.4, 12);
  });

  test("a quarter as strong: twice the thickness, and the cutter by the rule that gives less", () => {
    expect(row("al-1100-o")).toMatchObject({ brake: 3.2, shear: 3.2, cornerCutter: 3.2 });
    expect(row("al-1100-o", { ...shop, shear: { ...shop.shear, rake: 0 } })?.shear).toBeCloseTo(6.4, 12);
  });
});

describe("the thickest sheet for a punch", () => {
  test("force over edge and shear strength for a large one", () => {
    // 40 000 N over π · 10 mm · 300 N/mm².
    const { thickness, by } = thickestPunched({ materials, shop }, "steel-cr", { shape: "round", diameter: 10 });
    expect(thickness).toBeCloseTo(4.244, 3);
    expect(by).toBe("force");
    expect(thickestPunched({ materials, shop }, "steel-cr", { shape: "square", width: 8 }).thickness).toBeCloseTo(
      40_000 / (32 * 300),
      12,
    );
    expect(thickestPunched({ materials, shop }, "steel-cr", { shape: "rectangle", width: 12, height: 5 }).thickness).toBeCloseTo(
      40_000 / (34 * 300),
      12,
    );
  });

  test("the stress in the punch itself for a small one", () => {
    // 1500 N/mm² · 3 mm over 4 · 300 N/mm².
    expect(thickestPunched({ materials, shop }, "steel-cr", { shape: "round", diameter: 3 })).toEqual({
      thickness: 3.75,
      by: "stress",
    });
  });
});
