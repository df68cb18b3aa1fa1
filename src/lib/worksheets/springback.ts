import {
  elasticLimitRadius,
  elasticShareFormula,
  largestRadiusForSwing,
  overbend,
  overbendFormula,
  radiusAfterSpringbackFormula,
  springbackFactorFormula,
  swingAngleFormula,
} from "../bending/springback.ts";
import * as symbols from "../bending/symbols.ts";
import { InputError } from "../input-error.ts";
import { exactly } from "../inputs.ts";
import { amount, atMost, mm, say } from "../quantity/phrase.ts";
import { materialInput, materialWith, propertyInputs } from "../stock/material.ts";
import { type AnswerTable, type Remark, type Step, worksheet } from "../worksheet.ts";
import { bandCases, propertyRemark } from "./parts/property-band.ts";
import { radiusRemarks } from "./parts/radius-remarks.ts";

/** A sheet can be wrapped once round its tool, not more. */
const fullTurn = 360;
/** A leaf folded back on the sheet stands at this angle. */
const halfTurn = 180;

export default worksheet({
  id: "springback",
  title: "Springback",
  summary: "How sharp the tool must be and how far to swing so that the bend ends at the radius and angle wanted.",
  page: "/bending/angle-and-springback/",
  inputs: {
    material: materialInput,
    thickness: { ...symbols.thickness, kind: "quantity", default: "1.2mm", help: "Measured, not the nominal gauge." },
    radius: {
      ...symbols.insideRadius,
      kind: "quantity",
      label: "Inside radius wanted",
      default: "10mm",
      help: "Of the finished bend, after it has sprung back.",
    },
    angle: {
      ...symbols.bendAngle,
      kind: "quantity",
      label: "Angle wanted",
      min: 1,
      aboveMin: false,
      default: "90deg",
      help: "Turned through from flat, after springback.",
    },
    ...propertyInputs,
  },
  outputs: {
    toolRadius: { kind: "quantity", label: "Tool radius", symbol: "Ri", quantity: "length", fineness: "setting" },
    swingAngle: { kind: "quantity", label: "Swing the leaf to", symbol: "Ai", quantity: "angle" },
    overbend: { kind: "quantity", label: "Overbend", symbol: "ΔA", quantity: "angle" },
    ratio: {
      kind: "quantity",
      label: "Tool radius over finished radius",
      symbol: "Ri/Rf",
      quantity: "ratio",
      help: "1: no springback. Towards 0: nearly all of it.",
    },
  },
  main: "swingAngle",
  formulas: [elasticShareFormula, radiusAfterSpringbackFormula, springbackFactorFormula, swingAngleFormula, overbendFormula],
  validity: [
    "Pure bending of a strip that yields at one constant stress. Work hardening, the tool's gap and stretch along the sheet are left out.",
    "Meant for radii of several thicknesses. For a sharp bend it says nearly nothing: there a degree or two is usual, and a practice piece decides.",
    "Two sheets of one grade can differ in yield strength by half, so treat the answer as a starting value.",
  ],
  cautions: ["pinch-points", "flying-sheet", "counterweight-and-handle", "defer-to-manual"],
  sources: ["gardiner-1957", "kalpakjian-schmid", "springback-factor-article"],

  compute(values, catalogue) {
    const { thickness, radius, angle } = values;
    const material = materialWith(catalogue, values.material, values);
    const elasticModulus = material.elasticModulus.value;
    const strip = { thickness, yield: material.yield.value, elasticModulus };
    const bend = overbend({ ...strip, radius, angle });
    const { toolRadius, swingAngle, ratio } = bend;
    const limit = elasticLimitRadius(strip);

    if (swingAngle > fullTurn)
      throw new InputError(
        "radius",
        radius,
        say`Inside radius must be at most ${atMost(largestRadiusForSwing({ ...strip, angle, largestSwing: fullTurn }))} for this sheet and angle; it is ${exactly(radius, "length")}. Nearly all of a wider bend is elastic: it would have to be wound more than once round its tool, and a tool of ${mm(limit)} leaves no set at all.`,
      );

    const { brake } = catalogue.shop;
    const remarks: Remark[] = [];
    if (swingAngle > brake.largestSwing) {
      const reach =
        angle < brake.largestSwing
          ? say` For this angle it reaches an inside radius of up to ${mm(largestRadiusForSwing({ ...strip, angle, largestSwing: brake.largestSwing }))}.`
          : say` It cannot make this angle in one swing at any radius.`;
      remarks.push({
        level: "caution",
        field: angle < brake.largestSwing ? "radius" : "angle",
        phrase: say`${brake.name} swings to ${amount(brake.largestSwing, "angle")}; this bend needs ${amount(swingAngle, "angle")}${swingAngle > halfTurn ? ", which no leaf can swing" : ""}.${reach} Roll a wide bend, or press the rest.`,
      });
    }
    remarks.push(...radiusRemarks(catalogue, material, { radius: toolRadius, thickness }));
    if (radius < 2 * thickness)
      remarks.push({
        level: "note",
        phrase: say`For a radius below two thicknesses the relation leaves out most of what happens; expect a degree or two more than it says.`,
        source: "common-practice",
      });
    remarks.push({
      level: "note",
      phrase: say`Round a tool of ${mm(limit)} or more this sheet takes no set: it springs back flat.`,
      source: "gardiner-1957",
    });
    remarks.push(propertyRemark("Yield strength", "stress", material.yield));

    const band: AnswerTable = {
      caption: "What the spread of the yield strength does to it",
      columns: [
        { label: "Sheet" },
        { label: "Yield strength", quantity: "stress" },
        { label: "Tool radius", quantity: "length", fineness: "setting" },
        { label: "Swing the leaf to", quantity: "angle" },
        { label: "Overbend", quantity: "angle" },
      ],
      rows: bandCases(material.yield, { low: "Softest of this grade", high: "Strongest of this grade" }).map((sheet) => {
        const other = overbend({ ...strip, yield: sheet.value, radius, angle });
        return {
          cells: [sheet.name, sheet.value, other.toolRadius, other.swingAngle, other.overbend],
          chosen: sheet.chosen,
          source: material.yield.source,
        };
      }),
    };

    const working: Step[] = [
      { formula: elasticShareFormula, values: { ...strip, toolRadius, elasticShare: bend.elasticShare } },
      { formula: radiusAfterSpringbackFormula, values: { toolRadius, elasticShare: bend.elasticShare, radius } },
      { formula: springbackFactorFormula, values: { toolRadius, radius, thickness, factor: bend.factor } },
      { formula: swingAngleFormula, values: { angle, factor: bend.factor, swingAngle } },
      { formula: overbendFormula, values: { angle, swingAngle, overbend: bend.overbend } },
    ];

    return {
      outputs: { toolRadius, swingAngle, overbend: bend.overbend, ratio },
      remarks,
      working,
      tables: [band],
      sources: ["gardiner-1957", "kalpakjian-schmid"],
    };
  },
});
