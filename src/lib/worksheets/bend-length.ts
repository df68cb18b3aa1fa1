import { bendAllowanceFormula, kFromAllowance, kFromAllowanceFormula } from "../bending/bend-allowance.ts";
import { dinAllowanceFormula, dinFactorFormula } from "../bending/din-6935.ts";
import { faaAllowanceFormula, groupAllowanceFormula } from "../bending/handbook-allowances.ts";
import { type BendFit, deductionFor, measuredBends, measuredWhen } from "../bending/measured-bends.ts";
import { methodInputs, usesMethod } from "../bending/method-inputs.ts";
import { allowanceBy, methodLimits, publishedAllowances } from "../bending/methods.ts";
import {
  allowanceFromDeductionFormula,
  apexSetbackFormula,
  bendDeduction,
  bendDeductionFormula,
  setback,
  tangentSetbackFormula,
} from "../bending/setback.ts";
import * as symbols from "../bending/symbols.ts";
import type { Formula } from "../formula.ts";
import { InputError } from "../input-error.ts";
import { exactly } from "../inputs.ts";
import { atLeast, listed, mm, type Phrase, say } from "../quantity/phrase.ts";
import { materialInput, materialWith, propertyInputs } from "../stock/material.ts";
import { type AnswerTable, type Remark, type Step, worksheet } from "../worksheet.ts";
import { brakeRemarks } from "./parts/brake-remarks.ts";
import { radiusRemarks } from "./parts/radius-remarks.ts";

const blankFormula: Formula = {
  id: "blank-from-legs",
  name: "Blank length",
  result: "blank",
  expression: String.raw`\v{legs} - \v{bends}\cdot\v{deduction}`,
  symbols: {
    legs: {
      label: "Sum of the outside legs",
      symbol: "Σ legs",
      tex: String.raw`\textstyle\sum \mathrm{legs}`,
      quantity: "length",
      fineness: "setting",
    },
    bends: { label: "Number of bends", symbol: "n", tex: "n", quantity: "count" },
    deduction: symbols.deductionSymbol,
    blank: { label: "Blank length", symbol: "L", tex: "L", quantity: "length", fineness: "setting" },
  },
};

export default worksheet({
  id: "bend-length",
  title: "Length of a bent strip",
  summary: "How long the blank must be so that the legs come out to size, and how much each bend takes up.",
  page: "/bending/",
  inputs: {
    material: materialInput,
    thickness: {
      ...symbols.thickness,
      kind: "quantity",
      default: "1.2mm",
      help: "Measured with a micrometer or caliper, not the nominal gauge.",
    },
    radius: { ...symbols.insideRadius, kind: "quantity", default: "1.6mm", help: "Inside radius of the finished bend." },
    angle: {
      ...symbols.bendAngle,
      kind: "quantity",
      min: 1,
      aboveMin: false,
      default: "90deg",
      help: "How far the leaf side is turned from flat; the corner left inside is 180° less this.",
    },
    method: methodInputs.method,
    kFactor: {
      ...methodInputs.kFactor,
      help: "Where the neutral line lies, as a fraction of the thickness from the inside face.",
    },
    hardness: methodInputs.hardness,
    deduction: {
      ...symbols.deductionSymbol,
      kind: "quantity",
      min: -100,
      max: 1000,
      whenEmpty: "the best fitting bend measured in this shop",
      help: "From practice pieces with this sheet, radius and angle on this brake.",
    },
    legTo: {
      kind: "choice",
      label: "Legs measured to",
      choices: symbols.legEnds,
      whenEmpty: "the apex up to 90°, the outermost point above",
    },
    legs: {
      kind: "list",
      label: "Outside legs",
      plain: true,
      rowName: "legs",
      columns: {
        leg: { kind: "quantity", label: "Leg", quantity: "length", fineness: "setting", min: 0, aboveMin: true, max: 10_000 },
      },
      minRows: 2,
      maxRows: 20,
      default: [{ leg: "60mm" }, { leg: "25mm" }],
      help: "In order along the strip; one bend between each two, all alike.",
    },
    ...propertyInputs,
  },
  outputs: {
    blank: { kind: "quantity", label: "Blank length", symbol: "L", quantity: "length", fineness: "setting" },
    deduction: { kind: "quantity", label: "Bend deduction", symbol: "BD", quantity: "length", fineness: "setting" },
    allowance: { kind: "quantity", label: "Bend allowance", symbol: "BA", quantity: "length", fineness: "setting" },
    setback: { kind: "quantity", label: "Setback", symbol: "SB", quantity: "length", fineness: "setting" },
    kFactor: { kind: "quantity", label: "K-factor it stands for", symbol: "K", quantity: "ratio" },
  },
  main: "blank",
  shownWhen: {
    kFactor: (raw) => usesMethod(raw.method, "neutral-line"),
    hardness: (raw) => usesMethod(raw.method, "soft-medium-hard"),
    deduction: (raw) => usesMethod(raw.method, "measured"),
  },
  formulas: [
    apexSetbackFormula,
    tangentSetbackFormula,
    bendAllowanceFormula,
    faaAllowanceFormula,
    groupAllowanceFormula,
    dinFactorFormula,
    dinAllowanceFormula,
    allowanceFromDeductionFormula,
    bendDeductionFormula,
    kFromAllowanceFormula,
    blankFormula,
  ],
  validity: [
    "Bends about a straight line in sheet of one thickness, each leg long enough to be straight beyond the bend.",
    "Published methods differ among themselves by about a quarter of a thickness a bend; measured practice pieces decide.",
  ],
  cautions: ["sharp-edges", "defer-to-manual"],
  sources: [
    "faa-h-8083-31",
    "faa-ac-43-13-1b",
    "navedtra-14119",
    "navedtra-14315",
    "machinerys-handbook-31",
    "din-6935",
    "groover",
    "trade-tables-book",
    "practice-pieces",
    "this-shop",
  ],

  compute(values, catalogue) {
    const { thickness, radius, angle, method } = values;
    const bend = { angle, radius, thickness };
    const legTo = values.legTo ?? symbols.usualLegEnd(angle);
    const sb = setback({ ...bend, legTo });

    const lookedUp = method === "measured" && values.deduction === undefined;
    const measuredHere = measuredBends(catalogue.shop.bends, { material: values.material, ...bend });
    const known = lookedUp ? measuredHere : [];
    const [best] = known;
    const used = best?.misfits.length === 0 ? best.bend : undefined;
    if (lookedUp && !used) throw noneFits(best, catalogue.materials[values.material].name);
    const measured = used ? deductionFor(used.deduction, bend, symbols.usualLegEnd(angle), legTo) : values.deduction;
    const choice = { method, kFactor: values.kFactor, hardness: values.hardness, deduction: measured };

    const { allowance, steps, source } = allowanceBy(choice, bend, legTo);
    const deduction = bendDeduction({ setback: sb, allowance });
    const kFactor = kFromAllowance({ allowance, ...bend });
    const bends = values.legs.length - 1;
    const legs = values.legs.reduce((sum, leg) => sum + leg, 0);
    const blank = legs - bends * deduction;

    values.legs.forEach((leg, index) => {
      const ends = index === 0 || index === bends ? 1 : 2;
      if (leg < ends * sb)
        throw new InputError(
          `legs.${index}.leg`,
          leg,
          say`Leg ${index + 1} must be at least ${atLeast(ends * sb)}, the part of it that lies in ${ends === 1 ? "its bend" : "its two bends"}; it is ${exactly(leg, "length")}.`,
        );
    });

    const remarks: Remark[] = methodLimits(method, bend).map((limit) => ({ ...limit, source }));
    const material = materialWith(catalogue, values.material, values);
    remarks.push(...radiusRemarks(catalogue, material, bend));
    if (kFactor < 0 || kFactor > 1)
      remarks.push({
        level: "caution",
        phrase: say`This stands for a neutral line outside the sheet (K = ${kFactor.toFixed(2)}). Check the deduction, the radius and what the legs were measured to.`,
      });

    remarks.push(...brakeRemarks(catalogue.shop.brake, { angle, legs: values.legs }));
    if (used)
      remarks.push({
        level: "note",
        phrase: say`Uses a bend deduction of ${mm(used.deduction)} ± ${mm(used.uncertainty)}, ${measuredWhen(used)}${used.brake ? say`, on ${used.brake}` : ""}. By that the blank is good to ± ${mm(bends * used.uncertainty)}.`,
        source: "this-shop",
      });

    const working: Step[] = [
      { formula: legTo === "apex" ? apexSetbackFormula : tangentSetbackFormula, values: { ...bend, setback: sb } },
      ...steps,
      method === "measured"
        ? { formula: allowanceFromDeductionFormula, values: { setback: sb, deduction, allowance } }
        : { formula: bendDeductionFormula, values: { setback: sb, allowance, deduction } },
      { formula: kFromAllowanceFormula, values: { ...bend, allowance, kFactor } },
      { formula: blankFormula, values: { legs, bends, deduction, blank } },
    ];

    const comparison: AnswerTable = {
      caption: "What each published method says for this bend",
      columns: [
        { label: "Method" },
        { label: "Bend allowance", quantity: "length", fineness: "setting" },
        { label: "Bend deduction", quantity: "length", fineness: "setting" },
        { label: "Blank length", quantity: "length", fineness: "setting" },
      ],
      rows: publishedAllowances(bend).map((published) => {
        const chosen =
          published.method === method && (published.hardness === undefined || published.hardness === values.hardness);
        if (typeof published.allowance !== "number")
          return { cells: [published.name, null, null, null], note: published.allowance, source: published.source };
        const off = bendDeduction({ setback: sb, allowance: published.allowance });
        return { cells: [published.name, published.allowance, off, legs - bends * off], chosen, source: published.source };
      }),
    };

    const sets: AnswerTable = {
      caption: "Bends measured in this metal",
      columns: [
        { label: "Measured" },
        { label: "Thickness", quantity: "length", fineness: "setting" },
        { label: "Inside radius", quantity: "length", fineness: "setting" },
        { label: "Angle", quantity: "angle" },
        { label: "Bend deduction", quantity: "length", fineness: "setting" },
        { label: "±", quantity: "length", fineness: "setting" },
      ],
      rows: known.map(({ bend: each, misfits }) => ({
        cells: [measuredWhen(each), each.thickness, each.radius, each.angle, each.deduction, each.uncertainty],
        chosen: each === used,
        ...(misfits.length > 0 ? { note: misfits.flatMap((misfit, index) => (index === 0 ? misfit : ["; ", ...misfit])) } : {}),
        source: "this-shop",
      })),
    };

    return {
      outputs: { blank, deduction, allowance, setback: sb, kFactor },
      remarks,
      working,
      tables: [...(known.length > 0 ? [sets] : []), comparison],
      sources: [...new Set([source, ...(legTo === "apex" ? ["faa-ac-43-13-1b"] : ["din-6935"])])],
    };
  },
});

/** Why no measured bend can be used. */
function noneFits(best: BendFit | undefined, metal: string): InputError {
  const why: Phrase = best
    ? say`none of the bends measured in ${metal} fits: the nearest has ${listed(best.misfits)}`
    : say`no bend measured in ${metal} is known`;
  return new InputError(
    "deduction",
    "",
    say`Bend deduction is not entered, and ${why}. Bend practice pieces, or choose another method.`,
    [{ to: "practice-pieces", label: "Practice pieces", raw: {} }],
  );
}
