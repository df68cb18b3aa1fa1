import {
  bendWidth,
  firstYieldMoment,
  fullPlasticMoment,
  fullPlasticMomentFormula,
  momentCapacity,
  momentCapacityFormula,
  planeStrainMoment,
  planeStrainMomentFormula,
} from "../bending/plastic-moment.ts";
import * as symbols from "../bending/symbols.ts";
import type { Formula } from "../formula.ts";
import { mm, say } from "../quantity/phrase.ts";
import { materialInput, materialWith, propertyInputs } from "../stock/material.ts";
import { type AnswerTable, type Remark, type Step, worksheet } from "../worksheet.ts";
import { bandCases, propertyRemark } from "./parts/property-band.ts";

const moment = { quantity: "moment", decimals: 1 } as const;

const capacityFormula: Formula = {
  id: "brake-capacity-used",
  name: "Part of the brake's rating",
  result: "capacityUsed",
  expression: String.raw`\frac{\v{moment}}{\v{rated}}`,
  symbols: {
    moment: { ...moment, label: "Moment", symbol: "M", tex: "M" },
    rated: { ...moment, label: "Moment of the job on the plate", symbol: "Mr", tex: "M_r" },
    capacityUsed: { label: "Part of the rating used", symbol: "M/Mr", tex: "M/M_r", quantity: "ratio" },
  },
};

export default worksheet({
  id: "brake-load",
  title: "Load on the brake",
  summary: "What moment bends the sheet, and how much of this shop's brake that takes.",
  page: "/bending/",
  inputs: {
    material: materialInput,
    thickness: { ...symbols.thickness, kind: "quantity", default: "1.2mm", help: "Measured, not the nominal gauge." },
    length: { ...bendWidth, kind: "quantity", default: "600mm", help: "Along the bend." },
    ...propertyInputs,
  },
  outputs: {
    capacityUsed: {
      kind: "quantity",
      label: "Part of this shop's brake",
      quantity: "ratio",
      asPercent: true,
      help: "Compared with the job on its rating plate, by the same formula.",
    },
    moment: { kind: "quantity", label: "Bending moment", symbol: "M", quantity: "moment" },
  },
  main: "capacityUsed",
  formulas: [fullPlasticMomentFormula, planeStrainMomentFormula, capacityFormula, momentCapacityFormula],
  validity: [
    "The least moment that bends the sheet: its whole thickness yields and does not harden, and nothing rubs.",
    "Work hardening, a sharp radius, dull edges and friction add to it, easily a quarter or more. Stay well inside the rating.",
    "Compared with one rated job only. A frame, a clamp or a leaf may be the limit for short thick pieces: the plate and the manual decide.",
  ],
  cautions: ["within-rating", "pinch-points", "counterweight-and-handle", "defer-to-manual"],
  sources: ["equilibrium", "common-practice"],

  compute(values, catalogue) {
    const { thickness, length } = values;
    const material = materialWith(catalogue, values.material, values);
    const job = { yield: material.yield.value, width: length, thickness };
    const { brake } = catalogue.shop;
    const { rating } = brake;
    const ratedMaterial = catalogue.materials[rating.material];
    const rated = planeStrainMoment({
      yield: ratedMaterial.yield.value,
      width: rating.length,
      thickness: rating.thickness,
    });

    const fullPlastic = fullPlasticMoment(job);
    const moment = planeStrainMoment(job);
    const capacityUsed = moment / rated;
    const thickest = thickness / Math.sqrt(capacityUsed);

    const plate = { ratedThickness: rating.thickness, ratedYield: ratedMaterial.yield.value, yield: material.yield.value };
    const capacity = momentCapacity(plate);

    const remarks: Remark[] = [];
    if (capacityUsed > 1)
      remarks.push({
        level: "caution",
        field: "thickness",
        phrase: say`This is more than ${brake.name} is rated for: ${Math.round(100 * capacityUsed)} % of ${mm(rating.thickness)} ${ratedMaterial.name}, ${mm(rating.length)} long. Do not bend it here.`,
      });
    if (length > rating.length)
      remarks.push({
        level: "caution",
        field: "length",
        phrase: say`${brake.name} is ${mm(rating.length)} long; this bend is ${mm(length)}.`,
      });
    if (thickness > rating.thickness && capacityUsed <= 1)
      remarks.push({
        level: "caution",
        field: "thickness",
        phrase: say`The sheet is thicker than the ${mm(rating.thickness)} on the plate. The moment alone would allow it, but the clamp, the fingers and the leaf may not: only the manual can say.`,
      });
    remarks.push({
      level: "note",
      phrase: say`By the moment alone, ${mm(thickest)} would use the whole rating in this metal at this length, and ${mm(capacity)} over the whole ${mm(rating.length)} of ${brake.name}.`,
    });
    remarks.push(propertyRemark("Yield strength", "stress", material.yield));

    const band: AnswerTable = {
      caption: "What the spread of the yield strength does to it",
      columns: [
        { label: "Sheet" },
        { label: "Yield strength", quantity: "stress" },
        { label: "First yield of the outer face", quantity: "moment" },
        { label: "Bending moment", quantity: "moment" },
        { label: "Part of the rating, %", quantity: "percent" },
      ],
      rows: bandCases(material.yield, { low: "Softest of this grade", high: "Strongest of this grade" }).map((sheet) => {
        const other = { ...job, yield: sheet.value };
        return {
          cells: [
            sheet.name,
            sheet.value,
            firstYieldMoment(other),
            planeStrainMoment(other),
            (100 * planeStrainMoment(other)) / rated,
          ],
          chosen: sheet.chosen,
          source: material.yield.source,
        };
      }),
    };

    const working: Step[] = [
      { formula: fullPlasticMomentFormula, values: { ...job, fullPlastic } },
      { formula: planeStrainMomentFormula, values: { fullPlastic, moment } },
      { formula: capacityFormula, values: { moment, rated, capacityUsed } },
      { formula: momentCapacityFormula, values: { ...plate, capacity } },
    ];

    return { outputs: { capacityUsed, moment }, remarks, working, tables: [band], sources: ["equilibrium"] };
  },
});
