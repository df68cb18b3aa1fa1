import { fitShare } from "../bending/measured-bends.ts";
import type { Catalogue } from "../catalogue.ts";
import { mm, say } from "../quantity/phrase.ts";
import { carriedRatings } from "../shop/carry-over.ts";
import { oneLifter } from "../stock/sheet-mass.ts";
import { blankSize, type CutSheet } from "./blank.ts";
import { type Check, check, percent, shopRule } from "./check.ts";

/** Whether a sheet in stock is thick, long and wide enough. */
export function stockChecks(layout: CutSheet, catalogue: Catalogue): Check[] {
  const { material, thickness } = layout.part;
  const ofMaterial = catalogue.shop.stock.filter((sheet) => sheet.material === material.id);
  const nearest = ofMaterial.toSorted((a, b) => Math.abs(a.thickness - thickness) - Math.abs(b.thickness - thickness))[0];
  const sheets = ofMaterial.filter((sheet) => Math.abs(sheet.thickness - thickness) <= fitShare * thickness);
  if (sheets.length === 0)
    return [
      {
        rule: "stock-thickness",
        label: "Thickness in stock",
        ok: false,
        value: thickness,
        limit: nearest?.thickness ?? 0,
        side: thickness > (nearest?.thickness ?? 0) ? "most" : "least",
        quantity: "length",
        why: nearest
          ? say`This shop has ${material.name}, but not in this thickness; the nearest is ${mm(nearest.thickness)}.`
          : say`This shop has no ${material.name} in stock.`,
        ...shopRule,
      },
    ];
  const { width, depth } = blankSize(layout);
  const long = Math.max(width, depth);
  const short = Math.min(width, depth);
  const sides = (sheet: (typeof sheets)[number]) =>
    [Math.max(sheet.width, sheet.length), Math.min(sheet.width, sheet.length)] as const;
  const largest = sheets.toSorted((a, b) => b.width * b.length - a.width * a.length)[0] as (typeof sheets)[number];
  const sheet = sheets.find((each) => long <= sides(each)[0] && short <= sides(each)[1]) ?? largest;
  const why = say`The blank must come out of a stock sheet of ${mm(sheet.width)} × ${mm(sheet.length)}.`;
  const [longest, shortest] = sides(sheet);
  return [
    check({
      rule: "stock-size",
      label: "Long side of the blank",
      value: long,
      limit: longest,
      side: "most",
      quantity: "length",
      why,
      ...shopRule,
    }),
    check({
      rule: "stock-size",
      label: "Short side of the blank",
      value: short,
      limit: shortest,
      side: "most",
      quantity: "length",
      why,
      ...shopRule,
    }),
  ];
}

/** The shear, the corner cutter and the person who carries the sheet. */
export function cutChecks(layout: CutSheet, catalogue: Catalogue): Check[] {
  const { part, corners } = layout;
  const { shear, cornerCutter } = catalogue.shop;
  const carried = carriedRatings(catalogue).find(({ material }) => material === part.material.id);
  const blank = blankSize(layout);
  const longest = Math.max(blank.width, blank.depth);
  const checks: Check[] = [
    check({
      rule: "shear-length",
      label: "Longest cut of the blank",
      value: longest,
      limit: shear.cuttingLength,
      side: "most",
      quantity: "length",
      why: say`Longer than ${shear.name}.`,
      ...shopRule,
    }),
  ];
  if (carried)
    checks.push(
      check({
        rule: "shear-rating",
        label: "Thickness on the shear",
        value: part.thickness,
        limit: carried.shear,
        side: "most",
        quantity: "length",
        why: say`${percent(part.thickness / carried.shear)} of the thickness that ${shear.name} takes in ${part.material.name}, carried over from ${mm(shear.rating.thickness)} of ${catalogue.materials[shear.rating.material].name} by shear strength.`,
        ...shopRule,
      }),
    );
  const deepest = Math.max(0, ...corners.flatMap(({ guide }) => [guide.x, guide.y]));
  if (corners.length > 0) {
    checks.push(
      check({
        rule: "corner-cutter-size",
        label: "Largest side of a corner notch",
        value: deepest,
        limit: cornerCutter.largestSide,
        side: "most",
        quantity: "length",
        why: say`${cornerCutter.name} takes no larger corner in one stroke. Use snips or the band saw, or cut in bites.`,
        ...shopRule,
      }),
    );
    if (carried)
      checks.push(
        check({
          rule: "corner-cutter-rating",
          label: "Thickness in the corner cutter",
          value: part.thickness,
          limit: carried.cornerCutter,
          side: "most",
          quantity: "length",
          why: say`${percent(part.thickness / carried.cornerCutter)} of the thickness that ${cornerCutter.name} takes in ${part.material.name}.`,
          ...shopRule,
        }),
      );
  }
  checks.push(
    check({
      rule: "lift",
      label: "Mass of one blank",
      value: blank.mass,
      limit: oneLifter,
      side: "most",
      quantity: "mass",
      why: say`Two people carry a heavier sheet, with gloves. Whole stock sheets are heavier than their blanks.`,
      source: "niosh-lifting",
      seen: "read",
    }),
  );
  return checks;
}
