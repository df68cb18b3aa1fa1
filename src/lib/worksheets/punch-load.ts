import type { Outline } from "../catalogue.ts";
import type { Formula } from "../formula.ts";
import { perimeter, perimeterFormulas } from "../punching/perimeter.ts";
import {
  punchForce,
  punchForceFormula,
  punchForceFromTensile,
  punchStress,
  punchStressFormula,
  punchStressLimit,
  tensileShares,
} from "../punching/punch-force.ts";
import { penetrations, punchWork, punchWorkFormula } from "../punching/punch-work.ts";
import { shearedForceByRatio, shearedForceByWork } from "../punching/sheared-punch.ts";
import { punchFor, roundPunches } from "../punching/shop-punches.ts";
import { strippingForce, strippingForceFormula, strippingShares } from "../punching/stripping-force.ts";
import * as symbols from "../punching/symbols.ts";
import { amount, mm, say } from "../quantity/phrase.ts";
import { materialInput, materialWith, propertyInputs } from "../stock/material.ts";
import { type AnswerTable, type Remark, type Step, worksheet } from "../worksheet.ts";
import { bandCases, propertyRemark } from "./parts/property-band.ts";

const punchShareFormula: Formula = {
  id: "punch-capacity-used",
  name: "Part of this shop's punch",
  result: "share",
  expression: String.raw`\frac{\v{force}}{\v{rated}}`,
  symbols: {
    force: symbols.punchForceSymbol,
    rated: { ...symbols.punchForceSymbol, label: "Force on the plate of the punch", symbol: "Fr", tex: "F_r" },
    share: { label: "Part of the rating", symbol: "F/Fr", tex: "F/F_r", quantity: "ratio" },
  },
};

/** Heights of shear ground on a punch, in thicknesses, that the comparison shows. */
const shearHeights = [0.5, 1, 2];

const percent = (share: number) => `${Math.round(100 * share)} %`;

export default worksheet({
  id: "punch-load",
  title: "Load on the punch",
  summary: "What force a hole takes, what pulls the punch back out, and whether this shop's punch is strong enough.",
  page: "/punching/",
  inputs: {
    material: materialInput,
    thickness: { ...symbols.sheet, kind: "quantity", default: "1.2mm", help: "Measured, not the nominal gauge." },
    shape: { kind: "choice", label: "Shape of the hole", choices: symbols.holeShapes, default: "round" },
    diameter: { ...symbols.holeDiameter, kind: "quantity", default: "10mm", help: "Of a round hole." },
    width: { ...symbols.holeWidth, kind: "quantity", default: "8mm", help: "Side of a square, or one side of a rectangle." },
    height: { ...symbols.holeHeight, kind: "quantity", default: "5mm", help: "The other side of a rectangle." },
    ...propertyInputs,
  },
  outputs: {
    force: {
      kind: "quantity",
      label: "Punching force",
      symbol: "F",
      quantity: "force",
      help: "Of a flat punch, whose whole edge cuts at once.",
    },
    perimeter: { kind: "quantity", label: "Length of the cut", symbol: "L", quantity: "length", fineness: "setting" },
    strippingForce: {
      kind: "quantity",
      label: "Stripping force, about",
      symbol: "Fs",
      quantity: "force",
      help: "Pulls the sheet up with the punch on its way back.",
    },
    work: {
      kind: "quantity",
      label: "Work of one hole, at most",
      symbol: "W",
      quantity: "energy",
      help: "What the arm at the lever has to do, and what friction adds.",
    },
  },
  main: "force",
  shownWhen: {
    diameter: (raw) => (raw.shape ?? "round") === "round",
    width: (raw) => raw.shape === "square" || raw.shape === "rectangle",
    height: (raw) => raw.shape === "rectangle",
  },
  formulas: [
    ...Object.values(perimeterFormulas),
    punchForceFormula,
    strippingForceFormula,
    punchWorkFormula,
    punchStressFormula,
    punchShareFormula,
  ],
  validity: [
    "A flat, sharp punch in a die that fits. A blunt edge or a tight die takes more, easily a third.",
    "The shear strength is that of cutting, not the yield or the tensile strength.",
    "The stripping force is an estimate: 3 to 20 % of the punching force are met. The work is an upper bound.",
  ],
  cautions: ["punch-fingers", "punch-and-die-match", "within-rating", "eyes", "defer-to-manual"],
  sources: [
    "gate-pi-2003",
    "rhode-island-notes",
    "press-tool-module",
    "die-design-handbook",
    "gate-pi-2004",
    "sheared-punch-question",
    "punch-work-question",
    "geometry",
    "common-practice",
  ],

  compute(values, catalogue) {
    const { thickness, shape, diameter, width, height } = values;
    const material = materialWith(catalogue, values.material, values);
    const shear = material.shearStrength.value;
    const length = perimeter({ shape, diameter, width, height });
    const cut = { perimeter: length, thickness };
    const force = punchForce({ ...cut, shearStrength: shear });
    const stripping = strippingForce(force);
    const penetration = penetrations[values.material];
    const work = penetration ? punchWork({ force, penetration: penetration.value, thickness }) : null;

    const { punch } = catalogue.shop;
    const share = force / punch.force;
    const hole: Outline =
      shape === "round" ? { shape, diameter } : shape === "square" ? { shape, width } : { shape, width, height };
    const own = punchFor(punch, hole);

    const remarks: Remark[] = [];
    if (share > 1)
      remarks.push({
        level: "caution",
        field: "thickness",
        phrase: say`${punch.name} gives ${amount(punch.force, "force")} at most; this hole takes ${percent(share)} of that. Do not punch it here: drill or saw it, or take a smaller punch and file.`,
      });
    else
      remarks.push({
        level: "note",
        phrase: say`This takes ${percent(share)} of what ${punch.name} is rated for, ${amount(punch.force, "force")}.`,
      });
    if (own) remarks.push({ level: "note", phrase: say`The set has this punch; its die is ${own.die}.` });
    else {
      const smaller = roundPunches(punch)
        .filter((size) => size < diameter)
        .at(-1);
      const help =
        shape === "round" && smaller !== undefined
          ? say` Its next smaller one is ${mm(smaller)}: ream or file from there.`
          : say``;
      remarks.push({
        level: "caution",
        field: shape === "round" ? "diameter" : "width",
        phrase: say`The set of this shop has no ${shape} punch of this size.${help}`,
      });
    }
    remarks.push({
      level: "note",
      phrase: say`The frame lets a hole be up to ${mm(punch.throat)} from an edge.`,
    });
    const step: Step[] = [];
    if (shape === "round") {
      const stress = punchStress({ diameter, thickness, shearStrength: shear });
      step.push({ formula: punchStressFormula, values: { diameter, thickness, shearStrength: shear, stress } });
      if (stress > punchStressLimit)
        remarks.push({
          level: "caution",
          field: "diameter",
          phrase: say`The punch itself is pressed with ${amount(stress, "stress")}; a hardened one takes about ${amount(punchStressLimit, "stress")} (from memory). It may break: drill this hole.`,
        });
    }
    if (!penetration)
      remarks.push({
        level: "caution",
        phrase: say`How deep a punch cuts this metal before the slug breaks off is in no table we know, so the work is not given. It is at most ${amount((force * thickness) / 1000, "energy")}, the force times the whole thickness.`,
      });
    else
      remarks.push({
        level: "note",
        phrase: say`Penetration taken as ${percent(penetration.value)} of the thickness: ${penetration.basis}, from memory. A force that falls off evenly would do half the work.`,
        source: "die-design-handbook",
      });
    remarks.push(propertyRemark("Shear strength", "stress", material.shearStrength));

    const names = { low: "Softest of this grade", high: "Strongest of this grade" };
    const tensile = (rule: keyof typeof tensileShares) =>
      punchForceFromTensile({ ...cut, tensileStrength: material.tensileStrength.value }, rule);
    const forces: AnswerTable = {
      caption: "What other strengths and rules say",
      columns: [
        { label: "Rule" },
        { label: "Punching force", quantity: "force" },
        { label: "Part of this shop's punch, %", quantity: "percent" },
      ],
      rows: [
        ...bandCases(material.shearStrength, names).map((sheet) => {
          const other = punchForce({ ...cut, shearStrength: sheet.value });
          const name = sheet.chosen ? "Length × thickness × shear strength" : `… ${sheet.name.toLowerCase()}`;
          return {
            cells: [name, other, (100 * other) / punch.force],
            chosen: sheet.chosen,
            source: material.shearStrength.source,
          };
        }),
        ...(["kalpakjian", "pressTool"] as const).map((rule) => {
          const { share: factor, source } = tensileShares[rule];
          const other = tensile(rule);
          const note = rule === "pressTool" ? "meant for steel" : undefined;
          return {
            cells: [`${factor} × length × thickness × tensile strength`, other, (100 * other) / punch.force],
            source,
            ...(note === undefined ? {} : { note }),
          };
        }),
      ],
    };
    const strips: AnswerTable = {
      caption: "Stripping force by the share taken",
      columns: [
        { label: "Share" },
        { label: "Of the punching force, %", quantity: "percent" },
        { label: "Force", quantity: "force" },
      ],
      rows: strippingShares.map(({ name, share: part, source, seen }) => ({
        cells: [name, 100 * part, strippingForce(force, part)],
        chosen: strippingForce(force, part) === stripping,
        source,
        ...(seen === "memory" ? { note: "from memory" } : {}),
      })),
    };
    const sheared: AnswerTable | undefined = penetration && {
      caption: "If the face of the punch is ground with shear: two published forms that disagree",
      columns: [
        { label: "Shear ground on", quantity: "length", fineness: "setting" },
        { label: "By the balance of work", quantity: "force" },
        { label: "By the ratio of depths", quantity: "force" },
      ],
      rows: shearHeights.map((part) => {
        const ground = { force, penetration: penetration.value, thickness, shearHeight: part * thickness };
        return {
          cells: [ground.shearHeight, shearedForceByWork(ground), shearedForceByRatio(ground)],
          source: "sheared-punch-question",
        };
      }),
    };

    const working: Step[] = [
      { formula: perimeterFormulas[shape], values: { diameter, width, height, perimeter: length } },
      { formula: punchForceFormula, values: { ...cut, shearStrength: shear, force } },
      { formula: strippingForceFormula, values: { force, strippingForce: stripping } },
      ...(penetration && work !== null
        ? [{ formula: punchWorkFormula, values: { force, penetration: penetration.value, thickness, work } }]
        : []),
      ...step,
      { formula: punchShareFormula, values: { force, rated: punch.force, share } },
    ];

    return {
      outputs: { force, perimeter: length, strippingForce: stripping, work },
      remarks,
      working,
      tables: [forces, strips, ...(sheared ? [sheared] : [])],
      sources: ["gate-pi-2003", "press-tool-module", ...(penetration ? ["die-design-handbook"] : [])],
    };
  },
});
