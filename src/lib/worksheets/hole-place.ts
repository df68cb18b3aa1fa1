import { insideRadius } from "../bending/symbols.ts";
import {
  bendDistanceFormula,
  edgeDistanceFormula,
  type HoleLimits,
  holeLimits,
  holeRules,
  holeSpacingFormula,
  smallestHole,
  smallestHoleFormula,
} from "../punching/hole-rules.ts";
import { punchStressLimit, smallestPunch } from "../punching/punch-force.ts";
import * as symbols from "../punching/symbols.ts";
import { amount, mm, say } from "../quantity/phrase.ts";
import { materialInput, materialWith, propertyInputs } from "../stock/material.ts";
import { rivetDistances } from "../stock/rivet-spacing.ts";
import { type AnswerTable, type Remark, type Step, worksheet } from "../worksheet.ts";

const length = { quantity: "length", fineness: "setting" } as const;
const distance = { ...length, kind: "quantity", min: 0, max: 5000 } as const;
const limit = { ...length, kind: "quantity" } as const;

/** Two lengths nearer than this are alike [mm]; binary arithmetic, not metal. */
const same = 1e-9;

export default worksheet({
  id: "hole-place",
  title: "Place of a hole",
  summary: "How small a hole may be punched, and how near it may come to an edge, another hole and a bend.",
  page: "/punching/",
  inputs: {
    material: materialInput,
    thickness: { ...symbols.sheet, kind: "quantity", default: "1.2mm", help: "Measured, not the nominal gauge." },
    diameter: { ...symbols.holeDiameter, kind: "quantity", default: "5mm" },
    edgeDistance: {
      ...distance,
      label: "Hole to edge of the part",
      whenEmpty: "not checked",
      help: "From the edge of the hole, not from its centre.",
    },
    holeSpacing: {
      ...distance,
      label: "Hole to next hole",
      whenEmpty: "not checked",
      help: "The metal left between the two, not from centre to centre.",
    },
    bendDistance: {
      ...distance,
      label: "Hole to next leg",
      whenEmpty: "not checked",
      help: "From the edge of the hole to the inside face of the leg that is bent up.",
    },
    radius: { ...insideRadius, kind: "quantity", default: "1.6mm", help: "Inside radius of that bend." },
    ...propertyInputs,
  },
  outputs: {
    ok: {
      kind: "choice",
      label: "By these rules",
      choices: { yes: "well placed", no: "not well placed" },
      help: "For the sizes that are entered.",
    },
    minDiameter: { ...limit, label: "Smallest hole" },
    minEdge: { ...limit, label: "Hole to edge, at least" },
    minSpacing: { ...limit, label: "Hole to hole, at least" },
    minBend: { ...limit, label: "Hole to next leg, at least", help: "To the inside face of the leg." },
  },
  main: "ok",
  formulas: [smallestHoleFormula, edgeDistanceFormula, holeSpacingFormula, bendDistanceFormula],
  validity: [
    "Rules of the trade from memory: no standard or handbook with them was found. They keep punches whole and holes round; they say nothing of strength.",
    "Every distance is from the edge of the hole.",
    "The distance to a bend is for a leg bent up through 90°, with the hole punched before bending. A hole punched afterwards may come as near as punch and die allow.",
  ],
  cautions: ["punch-fingers", "eyes", "defer-to-manual"],
  sources: ["common-practice", "rivet-spacing-summary", "geometry"],

  compute(values, catalogue) {
    const { thickness, diameter, radius } = values;
    const material = materialWith(catalogue, values.material, values);
    const { family } = material;
    const limits = holeLimits({ family, thickness, radius });
    const lowest = holeLimits({ family, thickness, radius }, "low");
    const strong = smallestPunch({ thickness, shearStrength: material.shearStrength.value });

    const rules: readonly {
      readonly name: string;
      readonly key: keyof HoleLimits;
      readonly field: "diameter" | "edgeDistance" | "holeSpacing" | "bendDistance";
      readonly risk: string;
    }[] = [
      { name: "Diameter of the hole", key: "minDiameter", field: "diameter", risk: "The punch may break: drill this hole" },
      { name: "Hole to edge of the part", key: "minEdge", field: "edgeDistance", risk: "The strip bulges or tears" },
      { name: "Hole to next hole", key: "minSpacing", field: "holeSpacing", risk: "The bridge bends or tears" },
      {
        name: "Hole to next leg",
        key: "minBend",
        field: "bendDistance",
        risk: "Bending pulls the hole out of round: punch or drill it after bending, or move it",
      },
    ];

    const remarks: Remark[] = [];
    let good = true;
    for (const { name, key, field, risk } of rules) {
      const value = values[field];
      if (value === undefined || value >= limits[key] - same) continue;
      good = false;
      const border = value >= lowest[key] - same ? say` Some shops go down to ${mm(lowest[key])}.` : say``;
      remarks.push({
        level: "caution",
        field,
        phrase: say`${name} should be at least ${mm(limits[key])}; it is ${mm(value)}. ${risk}.${border}`,
        source: "common-practice",
      });
    }
    if (values.edgeDistance === undefined && values.holeSpacing === undefined && values.bendDistance === undefined)
      remarks.push({ level: "note", phrase: say`No distance is entered, so only the size of the hole is judged.` });
    if (family === "titanium")
      remarks.push({
        level: "caution",
        phrase: say`No rule for the smallest hole in titanium was met; it is taken like stainless steel, whose shear strength is alike.`,
        source: "common-practice",
      });
    remarks.push({
      level: "note",
      phrase: say`By the strength of the punch alone a hole could be as small as ${mm(strong)}: there a hardened punch carries ${amount(punchStressLimit, "stress")} (from memory).`,
      source: "geometry",
    });
    if (values.edgeDistance !== undefined && values.edgeDistance + diameter / 2 > catalogue.shop.punch.throat)
      remarks.push({
        level: "caution",
        field: "edgeDistance",
        phrase: say`${catalogue.shop.punch.name} reaches ${mm(catalogue.shop.punch.throat)} from an edge to the middle of the hole. Come from another edge, or drill.`,
      });

    const checks: AnswerTable = {
      caption: "Each rule",
      columns: [
        { label: "Rule" },
        { label: "Where rules begin", ...length },
        { label: "Safe end, used here", ...length },
        { label: "Yours", ...length },
        { label: "Verdict" },
      ],
      rows: rules.map(({ name, key, field }) => {
        const value = values[field];
        const verdict = value === undefined ? "not checked" : value >= limits[key] - same ? "enough" : "too little";
        return {
          cells: [name, lowest[key], limits[key], value ?? null, verdict],
          source: "common-practice",
          note: "practice, from memory",
        };
      }),
    };
    // From centres to edges: half a hole less to an edge, a whole one less to the next hole.
    const rivets: AnswerTable = {
      caption: "If a rivet of this diameter goes into it",
      columns: [{ label: "Rule" }, { label: "From the centre", ...length }, { label: "From the edge of the hole", ...length }],
      rows: [
        {
          cells: ["Rivet to edge of the part, at least", rivetDistances.edge * diameter, (rivetDistances.edge - 0.5) * diameter],
          source: rivetDistances.source,
        },
        {
          cells: ["Rivet to rivet, at least", rivetDistances.spacing * diameter, (rivetDistances.spacing - 1) * diameter],
          source: rivetDistances.source,
        },
      ],
    };

    const working: Step[] = [
      {
        formula: smallestHoleFormula,
        values: { multiple: smallestHole[family].use, thickness, minDiameter: limits.minDiameter },
      },
      { formula: edgeDistanceFormula, values: { multiple: holeRules.edge.use, thickness, minEdge: limits.minEdge } },
      { formula: holeSpacingFormula, values: { multiple: holeRules.spacing.use, thickness, minSpacing: limits.minSpacing } },
      { formula: bendDistanceFormula, values: { multiple: holeRules.bend.use, thickness, radius, minBend: limits.minBend } },
    ];

    return {
      outputs: { ok: good ? "yes" : "no", ...limits },
      remarks,
      working,
      tables: [checks, rivets],
      sources: ["common-practice"],
    };
  },
});
