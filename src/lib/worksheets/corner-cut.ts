import { bendAllowanceFormula } from "../bending/bend-allowance.ts";
import { dinAllowanceFormula, dinFactorFormula } from "../bending/din-6935.ts";
import { faaAllowanceFormula, groupAllowanceFormula } from "../bending/handbook-allowances.ts";
import { methodInputs, usesMethod } from "../bending/method-inputs.ts";
import { allowanceBy, methodLimits, publishedAllowances } from "../bending/methods.ts";
import {
  allowanceFromDeductionFormula,
  apexSetbackFormula,
  bendDeduction,
  bendDeductionFormula,
  setback,
} from "../bending/setback.ts";
import * as symbols from "../bending/symbols.ts";
import {
  clearGap,
  cornerGap,
  notchSide,
  notchSideFormula,
  reliefCentre,
  reliefCentreFormula,
  reliefFormula,
  reliefHole,
  reliefToNotch,
  sideHeight,
  thickestListed,
} from "../cutting/corner-notch.ts";
import { surestCapacity } from "../cutting/shear-capacity.ts";
import { InputError } from "../input-error.ts";
import { exactly } from "../inputs.ts";
import { atLeast, listed, mm, say } from "../quantity/phrase.ts";
import { type AnswerTable, type Remark, type Step, worksheet } from "../worksheet.ts";

const length = { quantity: "length", fineness: "setting" } as const;

/** Sides of a box stand square to its base. */
const upright = 90;

export default worksheet({
  id: "corner-cut",
  title: "Corner of a box",
  summary: "How deep to cut the square corner of a blank whose sides are turned up, and what relief hole to drill.",
  page: "/cutting/corners/",
  inputs: {
    sideA: { ...sideHeight, kind: "quantity", label: "Height of side A, outside", default: "25mm" },
    sideB: { ...sideHeight, kind: "quantity", label: "Height of side B, outside", default: "25mm" },
    thickness: { ...symbols.thickness, kind: "quantity", default: "1.2mm", help: "Measured, not the nominal gauge." },
    radius: { ...symbols.insideRadius, kind: "quantity", default: "1.6mm", help: "Inside radius of the finished bends." },
    method: { ...methodInputs.method, label: "Bend deduction by" },
    kFactor: methodInputs.kFactor,
    gap: {
      ...cornerGap,
      kind: "quantity",
      default: "1.5mm",
      help: "How far each side stops short of the outside face of the other. At one thickness their inside edges just meet.",
    },
    hardness: methodInputs.hardness,
    deduction: {
      ...symbols.deductionSymbol,
      kind: "quantity",
      min: -100,
      max: 1000,
      whenEmpty: "needed only for a measured bend",
      help: "From practice pieces at 90° with this sheet and radius on this brake.",
    },
  },
  outputs: {
    guideA: {
      ...length,
      kind: "quantity",
      label: "Guide A: in from the edge of side A",
      help: "The edge of the blank that becomes the rim of side A.",
    },
    guideB: {
      ...length,
      kind: "quantity",
      label: "Guide B: in from the edge of side B",
      help: "The edge of the blank that becomes the rim of side B.",
    },
    reliefDiameter: {
      ...length,
      kind: "quantity",
      label: "Relief hole",
      symbol: "d",
      help: "Centred where the inner tangent lines of the two bends cross.",
    },
  },
  main: "guideA",
  shownWhen: {
    kFactor: (raw) => usesMethod(raw.method, "neutral-line"),
    hardness: (raw) => usesMethod(raw.method, "soft-medium-hard"),
    deduction: (raw) => usesMethod(raw.method, "measured"),
  },
  formulas: [
    apexSetbackFormula,
    bendAllowanceFormula,
    faaAllowanceFormula,
    groupAllowanceFormula,
    dinFactorFormula,
    dinAllowanceFormula,
    allowanceFromDeductionFormula,
    bendDeductionFormula,
    notchSideFormula,
    reliefCentreFormula,
    reliefFormula,
  ],
  validity: [
    "Two neighbouring sides turned up by 90° with one radius and one bend deduction; open at the top, no tabs, no folded rims.",
    "The blank is the base outside plus both sides less their bend deductions. Measure the guides from its finished edges.",
    "The relief hole is an aircraft rule, its smallest sizes are for aluminium, and its source says twice the radius in one place and once in another.",
  ],
  cautions: ["corner-cutter", "sharp-edges", "cracked-bend", "defer-to-manual"],
  sources: [
    "navedtra-14251-pan",
    "faa-h-8083-31-box",
    "geometry",
    "this-shop",
    "shear-equilibrium",
    "navedtra-14119",
    "faa-h-8083-31",
    "din-6935",
    "machinerys-handbook-31",
    "practice-pieces",
    "groover",
    "trade-tables-book",
  ],

  compute(values, catalogue) {
    const { thickness, radius, method, gap } = values;
    const { brake, cornerCutter } = catalogue.shop;
    const bend = { angle: upright, radius, thickness };
    const sb = setback({ ...bend, legTo: "apex" });
    const { allowance, steps, source } = allowanceBy(values, bend, "apex");
    const deduction = bendDeduction({ setback: sb, allowance });
    for (const [field, name] of [
      ["sideA", "Side A"],
      ["sideB", "Side B"],
    ] as const)
      if (values[field] < sb)
        throw new InputError(
          field,
          values[field],
          say`${name} must be at least ${atLeast(sb)} high, the part of it that lies in the bend; it is ${exactly(values[field], "length")}.`,
        );
    const guideOf = (field: "sideA" | "sideB", off: number) => {
      try {
        return notchSide({ side: values[field], deduction: off, gap });
      } catch (error) {
        if (error instanceof InputError && error.field === "side") throw new InputError(field, error.value, error.phrase);
        throw error;
      }
    };
    const guideA = guideOf("sideA", deduction);
    const guideB = guideOf("sideB", deduction);
    const relief = reliefHole({ radius, thickness });
    const other = reliefHole({ radius, thickness }, 1);
    const centre = {
      A: reliefCentre({ side: values.sideA, deduction }, sb),
      B: reliefCentre({ side: values.sideB, deduction }, sb),
    };
    const clear = clearGap(gap, thickness);
    const opens = reliefToNotch(sb, gap);

    const remarks: Remark[] = methodLimits(method, bend).map((limit) => ({ ...limit, source }));
    remarks.push(
      clear < 0
        ? {
            level: "caution",
            field: "gap",
            phrase: say`With less than one thickness both sides reach for the same corner and meet before they are up. Set them back by ${mm(thickness)} or a little more, or let one side lap over the other.`,
            source: "geometry",
          }
        : {
            level: "note",
            field: "gap",
            phrase: say`The finished corner stands open by ${mm(clear)} between the inside edges of the two sides.`,
            source: "geometry",
          },
    );
    if (relief.diameter < opens)
      remarks.push({
        level: "note",
        phrase: say`A hole of ${mm(relief.diameter)} there does not reach the corner of the notch, ${mm(opens / 2)} from its centre. Cut the notch to the hole, or take a hole of ${mm(opens)}.`,
        source: "geometry",
      });
    if (other.diameter < relief.diameter)
      remarks.push({
        level: "note",
        phrase: say`The source says about twice the radius in one place and equal to the radius in another; the second would be ${mm(other.diameter)}.`,
        source: "faa-h-8083-31-box",
      });
    if (!relief.listed)
      remarks.push({
        level: "caution",
        field: "thickness",
        phrase: say`The smallest relief holes are printed up to ${mm(thickestListed)} thick; the last row is kept here.`,
        source: "faa-h-8083-31-box",
      });
    const largest = Math.max(guideA, guideB);
    if (largest > cornerCutter.largestSide)
      remarks.push({
        level: "caution",
        field: guideA >= guideB ? "sideA" : "sideB",
        phrase: say`${cornerCutter.name} takes corners up to ${mm(cornerCutter.largestSide)}; this one is ${mm(largest)}. Use snips, or cut it in bites.`,
        source: "this-shop",
      });
    if (thickness > cornerCutter.rating.thickness)
      remarks.push({
        level: "caution",
        field: "thickness",
        phrase: say`${cornerCutter.name} is rated for ${mm(cornerCutter.rating.thickness)} ${catalogue.materials[cornerCutter.rating.material].name}; the sheet is ${mm(thickness)}.`,
        source: "this-shop",
      });
    else {
      const { rating } = cornerCutter;
      const tooThick = Object.values(catalogue.materials).flatMap(({ id, name, shearStrength }) => {
        const takes = surestCapacity({
          ratedThickness: rating.thickness,
          ratedStrength: catalogue.materials[rating.material].shearStrength.value,
          shearStrength: shearStrength.value,
        });
        return id === rating.material || takes >= thickness ? [] : [say`${name} (${mm(takes)})`];
      });
      if (tooThick.length > 0)
        remarks.push({
          level: "caution",
          field: "thickness",
          phrase: say`The plate of ${cornerCutter.name} is for ${catalogue.materials[rating.material].name}. By force alone it is too weak for this thickness of ${listed(tooThick)}.`,
          source: "shear-equilibrium",
        });
    }
    for (const field of ["sideA", "sideB"] as const)
      if (values[field] < brake.shortestLeg)
        remarks.push({
          level: "caution",
          field,
          phrase: say`${brake.name} turns up sides from ${mm(brake.shortestLeg)}; this one is ${mm(values[field])}.`,
          source: "this-shop",
        });

    const marks: AnswerTable = {
      caption: "Where to scribe",
      columns: [{ label: "Mark" }, { label: "From edge A", ...length }, { label: "From edge B", ...length }],
      rows: [
        { cells: ["Corner of the notch", guideA, guideB], chosen: true, source: "navedtra-14251-pan" },
        { cells: ["Centre of the relief hole", centre.A, centre.B], source: "faa-h-8083-31-box" },
        { cells: ["First tangent line of each bend", values.sideA - sb, values.sideB - sb], source: "geometry" },
      ],
    };
    const comparison: AnswerTable = {
      caption: "What each published method does to the guides",
      columns: [
        { label: "Method" },
        { label: "Bend deduction", ...length },
        { label: "Guide A", ...length },
        { label: "Guide B", ...length },
      ],
      rows: publishedAllowances(bend).map((published) => {
        const chosen =
          published.method === method && (published.hardness === undefined || published.hardness === values.hardness);
        if (typeof published.allowance !== "number")
          return { cells: [published.name, null, null, null], note: published.allowance, source: published.source };
        const off = bendDeduction({ setback: sb, allowance: published.allowance });
        const guide = (side: number) => side - off + gap;
        return {
          cells: [published.name, off, guide(values.sideA), guide(values.sideB)],
          chosen,
          source: published.source,
        };
      }),
    };

    const working: Step[] = [
      { formula: apexSetbackFormula, values: { ...bend, setback: sb } },
      ...steps,
      method === "measured"
        ? { formula: allowanceFromDeductionFormula, values: { setback: sb, deduction, allowance } }
        : { formula: bendDeductionFormula, values: { setback: sb, allowance, deduction } },
      { formula: notchSideFormula, values: { side: values.sideA, deduction, gap, guide: guideA } },
      ...(values.sideB === values.sideA
        ? []
        : [{ formula: notchSideFormula, values: { side: values.sideB, deduction, gap, guide: guideB } }]),
      { formula: reliefCentreFormula, values: { side: values.sideA, deduction, setback: sb, centre: centre.A } },
      { formula: reliefFormula, values: { times: 2, radius, least: relief.least, diameter: relief.diameter } },
    ];

    return {
      outputs: { guideA, guideB, reliefDiameter: relief.diameter },
      remarks,
      working,
      tables: [marks, comparison],
      sources: [...new Set(["navedtra-14251-pan", "faa-h-8083-31-box", source])],
    };
  },
});
