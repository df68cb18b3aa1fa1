import type { Formula } from "../formula.ts";
import { governingThickness, governingThicknessFormula } from "../joining/governing-thickness.ts";
import { jointPitchFormula, jointSpacing, spotEdgeFormula, spotLapFormula } from "../joining/spot-spacing.ts";
import { spotBearingFormula } from "../joining/spot-strength.ts";
import * as symbols from "../joining/symbols.ts";
import { buttonFactors, buttonFormula, weldButton } from "../joining/weld-button.ts";
import { mm, say } from "../quantity/phrase.ts";
import { materialInput, materialWith, propertyInputs } from "../stock/material.ts";
import { type Remark, type Step, worksheet } from "../worksheet.ts";
import { countFor } from "./parts/count-for.ts";
import { requireWeldable } from "./parts/spot-material.ts";
import { leastTensile, spotStrengths, strengthTable } from "./parts/spot-strengths.ts";
import { typedLength } from "./parts/typed-length.ts";

/** Safety factor on the nominal strength that the American specification uses in allowable stress design, rounded up. */
const usualFactor = "2.5";

const spotCountFormula: Formula = {
  id: "spot-count",
  name: "Spots, rounded up to whole ones",
  result: "spots",
  expression: String.raw`\left\lceil\frac{\v{load}\cdot\v{safetyFactor}}{\v{strength}}\right\rceil`,
  symbols: {
    load: symbols.load,
    safetyFactor: symbols.safetyFactor,
    strength: symbols.strength,
    spots: { label: "Spots", symbol: "n", tex: "n", quantity: "count" },
  },
};

export default worksheet({
  id: "spot-joint",
  title: "Spots for a load",
  summary: "How many spot welds carry a load along two lapped steel sheets, and where they go.",
  page: "/joining/spot-spacing/",
  inputs: {
    material: materialInput,
    thickness: { ...symbols.sheet, kind: "quantity", default: "1mm", help: "Measured, not the nominal gauge." },
    otherThickness: { ...symbols.otherSheet, kind: "quantity", default: "1mm", help: "Same metal, at most 3 : 1." },
    load: {
      ...symbols.load,
      kind: "quantity",
      default: "5kN",
      help: "Pulling the two sheets past each other. Spots are weak against peeling: keep that away from them.",
    },
    safetyFactor: {
      ...symbols.safetyFactor,
      kind: "quantity",
      default: usualFactor,
      help: "How many times the load the joint should bear. More for shock, vibration and people.",
    },
    ...propertyInputs,
  },
  outputs: {
    spots: {
      kind: "quantity",
      label: "Spots",
      symbol: "n",
      quantity: "count",
      help: "By the strength marked in the table; the most cautious source asks for more.",
    },
    pitch: {
      kind: "quantity",
      label: "Pitch, at least",
      symbol: "p",
      quantity: "length",
      fineness: "setting",
      help: "Of a joint that carries load: three weld diameters, and never less than a single spot needs.",
    },
    edge: {
      kind: "quantity",
      label: "Spot to edge, at least",
      symbol: "e",
      quantity: "length",
      fineness: "setting",
      help: "From the middle of the spot, in the direction of the load.",
    },
    lap: { kind: "quantity", label: "Lap for one row", symbol: "w", quantity: "length", fineness: "setting" },
  },
  main: "spots",
  formulas: [
    governingThicknessFormula,
    buttonFormula,
    spotBearingFormula,
    spotCountFormula,
    jointPitchFormula,
    spotEdgeFormula,
    spotLapFormula,
  ],
  validity: [
    "Two lapped sheets of one steel, each from 0.4 to 3.0 mm, pulled along the sheets, with the load shared alike by all spots.",
    "Sound welds of full size only, proved by peeled coupons. A load that peels or bends the joint needs another joint.",
    "Not for anything whose failure can hurt someone: that is work for a qualified designer and a proved process.",
  ],
  cautions: [
    "weld-sparks",
    "electrode-pinch",
    "zinc-fume",
    "magnetic-field",
    "arc-light",
    "hot-work",
    "sharp-edges",
    "defer-to-manual",
  ],
  sources: [
    "aws-d8-1m",
    "iso-14373-scope",
    "merritt-ricketts",
    "aisi-s100",
    "en-1993-1-3",
    "spot-schedule-reprint",
    "stainless-schedule-reprint",
    "spot-spacing-copy",
    "nugget-rule-page",
    "mathers-2002",
    "twi-aluminium",
    "common-practice",
  ],

  compute(values, catalogue) {
    const { thickness, otherThickness, load, safetyFactor } = values;
    const material = materialWith(catalogue, values.material, values);
    const pair = { thickness, otherThickness };
    requireWeldable({ material, ...pair }, { load: `${load}N`, safetyFactor: String(safetyFactor) });
    const governing = governingThickness(pair);
    const strengths = spotStrengths(material, pair);
    const { shown, all, scheduleSource } = strengths;
    const count = (strength: number) => countFor({ load, safetyFactor, strength });
    const spots = count(shown.strength);
    const diameter = weldButton({ governing, factor: buttonFactors.target });
    const { pitch, widestPitch, edge, widestEdge } = jointSpacing(governing);
    const lap = 2 * edge;
    const { welder } = catalogue.shop;

    const weakest = all.reduce((low, each) => (!each.factored && each.strength < low.strength ? each : low));
    const most = count(weakest.strength);
    const remarks: Remark[] = [];
    if (most > spots)
      remarks.push({
        level: "caution",
        phrase: say`The most cautious source would have ${most} ${most === 1 ? "spot" : "spots"} (${weakest.name.toLowerCase()}). Make those where there is room: a spot costs a second.`,
        source: weakest.source,
      });
    if (spots === 1)
      remarks.push({
        level: "caution",
        phrase: say`One spot turns like a hinge. Make at least two.`,
        source: "common-practice",
      });
    const row = (spots - 1) * pitch + 2 * edge;
    remarks.push(
      {
        level: "note",
        phrase: say`In one row the spots take ${mm(row)} of joint. Space them up to ${mm(widestPitch)} apart and ${mm(widestEdge)} from the edge, no more, or the sheets gape and buckle between them.`,
        source: "en-1993-1-3",
      },
      {
        level: "note",
        phrase: say`A spot next to one already made loses current to it. Wider is better, and test coupons with two spots at this pitch show whether the second one still holds.`,
        source: "spot-spacing-copy",
      },
    );
    for (const [field, each] of [
      ["thickness", thickness],
      ["otherThickness", otherThickness],
    ] as const)
      if (each < welder.thinnest || each > welder.thickest)
        remarks.push({
          level: "caution",
          field,
          phrase: say`${welder.name} is for sheets from ${mm(welder.thinnest)} to ${mm(welder.thickest)} each; this one is ${mm(each)}.`,
        });
    if (material.family === "stainless")
      remarks.push({
        level: "caution",
        field: "material",
        phrase: say`The strength is from a schedule read only in a supplier's reprint, made for austenitic stainless steel: provisional.`,
        source: scheduleSource,
      });
    if (material.coated)
      remarks.push({
        level: "caution",
        field: "material",
        phrase: say`Zinc-coated sheet is welded with care and with fume extraction; see its settings.`,
        source: "twi-coated-steels",
      });

    const designRule = all.find(({ source }) => source === "en-1993-1-3");
    const working: Step[] = [
      { formula: governingThicknessFormula, values: { ...pair, governing } },
      { formula: buttonFormula, values: { factor: buttonFactors.target, governing, diameter } },
      ...(designRule && otherThickness <= 2.5 * thickness && thickness <= 2.5 * otherThickness
        ? [
            {
              formula: spotBearingFormula,
              values: { governing, tensile: leastTensile(material), strength: designRule.strength },
            },
          ]
        : []),
      { formula: spotCountFormula, values: { load, safetyFactor, strength: shown.strength, spots } },
      { formula: jointPitchFormula, values: { governing, diameter, pitch } },
      { formula: spotEdgeFormula, values: { diameter, edge } },
      { formula: spotLapFormula, values: { edge, lap } },
    ];

    return {
      outputs: { spots, pitch, edge, lap },
      remarks,
      working,
      tables: [strengthTable(strengths, count)],
      sources: [...new Set([shown.source, scheduleSource, "en-1993-1-3", "spot-spacing-copy", "aws-d8-1m"])],
    };
  },

  handoffs({ material, thickness, otherThickness }, { outputs: { lap } }) {
    return [
      {
        to: "spot-setting",
        label: "Settings for these spots",
        raw: { material, thickness: typedLength(thickness), otherThickness: typedLength(otherThickness) },
      },
      {
        to: "seam-allowance",
        label: "Add this lap to the flat",
        raw: {
          kind: "lap",
          width: typedLength(lap ?? 0),
          thickness: typedLength(Math.max(thickness, otherThickness)),
        },
      },
    ];
  },
});
