import {
  ductilityRadius,
  ductilityRadiusFormula,
  outerStrain,
  outerStrainFormula,
  radiusByAlloy,
  radiusByStrength,
  radiusRatioFormula,
  smallestRadius,
} from "../bending/smallest-radius.ts";
import * as symbols from "../bending/symbols.ts";
import type { Catalogue, Material, Seen } from "../catalogue.ts";
import { InputError } from "../input-error.ts";
import { amount, mm, type Phrase, say } from "../quantity/phrase.ts";
import { materialInput, materialWith, propertyInputs } from "../stock/material.ts";
import { type AnswerTable, type Remark, type Step, worksheet } from "../worksheet.ts";
import { bandCases, propertyRemark } from "./parts/property-band.ts";

interface Rule {
  readonly name: Phrase;
  readonly source: string;
  readonly seen: Seen;
  readonly radius: () => number;
  readonly chosen?: boolean;
}

/** Every rule in the data that says something about this metal; the first is the one the answer comes from. */
function rules(catalogue: Catalogue, material: Material, sheet: number): Rule[] {
  const list: Rule[] = [];
  const rule = material.smallestRadius;
  const entered = material.areaReduction?.source === "entered";
  if (rule.by === "tensile-class" || material.family === "stainless") {
    const table = catalogue.radiusByStrength;
    const by = (tensileStrength: number, severe: boolean) => () =>
      radiusByStrength(table, { thickness: sheet, tensileStrength, severe });
    const strength = material.tensileStrength.value;
    const common = { source: table.source, seen: table.seen };
    const main = rule.by === "tensile-class" && !entered;
    list.push({ ...common, name: say`Table by tensile strength`, radius: by(strength, false), chosen: main });
    list.push({
      ...common,
      name: say`… along the rolling direction, or turned through more than 120°`,
      radius: by(strength, true),
    });
    for (const end of bandCases(material.tensileStrength, { low: "softest", high: "strongest" }))
      if (!end.chosen)
        list.push({ ...common, name: say`… ${end.name} of this grade, ${end.value} N/mm²`, radius: by(end.value, false) });
  }
  if (rule.by === "alloy-table") {
    const table = catalogue.radiusByAlloy;
    const alloy = rule.row.slice(0, rule.row.indexOf("-") + 1);
    for (const row of Object.keys(table.rows).filter((name) => name.startsWith(alloy)))
      list.push({
        name: say`Alloy table, ${row} at 90°`,
        source: table.source,
        seen: table.seen,
        radius: () => radiusByAlloy(table, row, sheet),
        chosen: row === rule.row && !entered,
      });
  }
  if (rule.by === "ratio-band") {
    const words = (ratio: number) =>
      ratio === rule.use ? "as used for this temper" : ratio === rule.low ? "soft end of the published band" : "hard end of it";
    for (const ratio of new Set([rule.low, rule.use, rule.high]))
      list.push({
        name: say`${ratio} × thickness, ${words(ratio)}`,
        source: rule.source,
        seen: rule.seen,
        radius: () => ratio * sheet,
        chosen: ratio === rule.use && !entered,
      });
  }
  const ductility = material.areaReduction;
  if (ductility)
    list.push({
      name: say`Ductility, T (50/r − 1) with r = ${ductility.value} %`,
      source: "kalpakjian-schmid",
      seen: "memory",
      radius: () => ductilityRadius({ thickness: sheet, areaReduction: ductility.value }),
      chosen: entered,
    });
  if (material.family === "carbon-steel")
    list.push({
      name: say`Design guideline for low-carbon steel: ½ T, and 0.8 mm at least`,
      source: "bending-guidelines",
      seen: "read",
      radius: () => Math.max(sheet / 2, 0.8),
    });
  return list;
}

export default worksheet({
  id: "smallest-radius",
  title: "Smallest bend radius",
  summary: "How sharp a bend may be before the outside cracks.",
  page: "/bending/",
  inputs: {
    material: materialInput,
    thickness: { ...symbols.thickness, kind: "quantity", default: "1.2mm", help: "Measured, not the nominal gauge." },
    ...propertyInputs,
  },
  outputs: {
    radius: {
      kind: "quantity",
      label: "Smallest inside radius",
      symbol: "R",
      quantity: "length",
      fineness: "setting",
      help: "Across the rolling direction.",
    },
    ratio: { kind: "quantity", label: "In thicknesses", symbol: "R/T", quantity: "ratio" },
  },
  main: "radius",
  formulas: [ductilityRadiusFormula, radiusRatioFormula, outerStrainFormula],
  validity: [
    "Cold bending about a straight line, across the rolling direction; sheet free of scratches and with its burr on the inside.",
    "Carbon steel: sheet up to 20 mm and 640 N/mm², turned through up to 120°. Aluminium: up to ½ in, 90° bends.",
    "A published radius is a guide: temper, grain direction and edge quality matter as much. Bend a practice piece and look at its outside.",
  ],
  cautions: ["cracked-bend", "eyes", "defer-to-manual"],
  sources: ["din-6935-radius-table", "aluminium-radius-table", "kalpakjian-schmid", "bending-guidelines"],

  compute(values, catalogue) {
    const { thickness } = values;
    const material = materialWith(catalogue, values.material, values);
    const { radius, how, source, seen } = smallestRadius(catalogue, material, thickness);
    const ratio = radius / thickness;
    const byDuctility = material.areaReduction?.source === "entered";

    const remarks: Remark[] = [{ level: "note", phrase: how, source }];
    if (seen !== "read")
      remarks.push({
        level: "caution",
        phrase: say`The rule for this metal is ${seen === "memory" ? "from memory" : "common practice"}, not read in its source. Take it as a first guess and bend a practice piece.`,
        source,
      });
    if (material.smallestRadius.by === "tensile-class" && !byDuctility)
      remarks.push(propertyRemark("Tensile strength", "stress", material.tensileStrength));
    const { brake } = catalogue.shop;
    if (brake.noseRadius < radius)
      remarks.push({
        level: "caution",
        phrase: say`The fingers of this shop’s brake (${brake.name}) have a nose of ${mm(brake.noseRadius)}, sharper than this. Put a strip of sheet round the nose, or use fingers with a larger one.`,
      });
    if (radius === 0)
      remarks.push({
        level: "note",
        phrase: say`The rule allows a bend as sharp as the tool makes it; no bend is perfectly sharp.`,
      });

    const comparison: AnswerTable = {
      caption: "What each published rule says for this sheet",
      columns: [
        { label: "Rule" },
        { label: "Smallest inside radius", quantity: "length", fineness: "setting" },
        { label: "Stretch of the outer face", quantity: "percent" },
      ],
      rows: rules(catalogue, material, thickness).map((rule) => {
        const note = rule.seen === "read" ? undefined : rule.seen === "memory" ? "from memory" : "common practice";
        try {
          const found = rule.radius();
          const stretch = 100 * outerStrain({ radius: found, thickness });
          return { cells: [rule.name, found, stretch], chosen: rule.chosen ?? false, source: rule.source, note };
        } catch (error) {
          if (!(error instanceof InputError)) throw error;
          return { cells: [rule.name, null, null], source: rule.source, note: error.phrase };
        }
      }),
    };

    const strain = outerStrain({ radius, thickness });
    const working: Step[] = [
      byDuctility
        ? {
            formula: ductilityRadiusFormula,
            values: { thickness, areaReduction: material.areaReduction?.value ?? 0, radius },
          }
        : { formula: radiusRatioFormula, values: { radius, thickness, ratio } },
      { formula: outerStrainFormula, values: { radius, thickness, strain } },
    ];
    remarks.push({
      level: "note",
      phrase: say`At this radius the outer face is stretched by about ${amount(100 * strain, "percent")}.`,
    });

    return { outputs: { radius, ratio }, remarks, working, tables: [comparison], sources: [source] };
  },
});
