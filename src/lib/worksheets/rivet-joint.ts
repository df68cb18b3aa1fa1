import type { Formula } from "../formula.ts";
import {
  bearingFactor,
  diameterFactors,
  euroBearingFactor,
  euroBearingFormula,
  euroRivetBearing,
  fullStrengthRivets,
  leastSheetOverDiameter,
  type RivetSize,
  rivetBearing,
  rivetBearingFormula,
  rivetDiameter,
  rivetEdgeFormula,
  rivetFactors,
  rivetGripFormula,
  rivetLayout,
  rivetLength,
  rivetLengthFormula,
  rivetPitchFormula,
  rivetRows,
  rivetShear,
  rivetShearFormula,
  rivetSheet,
  rivetSizeFor,
  rivetSizes,
  rivetStress,
  rivetTargetFormula,
} from "../joining/rivets.ts";
import * as symbols from "../joining/symbols.ts";
import { mm, say } from "../quantity/phrase.ts";
import { materialInput, materialWith, propertyInputs } from "../stock/material.ts";
import { type AnswerTable, type Remark, type Step, worksheet } from "../worksheet.ts";
import { countFor } from "./parts/count-for.ts";
import { leastTensile } from "./parts/spot-strengths.ts";
import { typedLength } from "./parts/typed-length.ts";

const rivetCountFormula: Formula = {
  id: "rivet-count",
  name: "Rivets, rounded up to whole ones",
  result: "count",
  expression: String.raw`\left\lceil\frac{\v{load}\cdot\v{safetyFactor}}{\v{strength}}\right\rceil`,
  symbols: {
    load: symbols.load,
    safetyFactor: symbols.safetyFactor,
    strength: symbols.strength,
    count: { label: "Rivets", symbol: "n", tex: "n", quantity: "count" },
  },
};

/** Wider than the rivet that a drill is taken when no list has the size [mm]. Common practice: 0.05 to 0.1 mm. */
const usualClearance = 0.1;
/** Length of joint for which the rivets of full strength are told [mm]. */
const perLength = 100;
/** Where the European bearing rule holds [mm]. */
const euroDiameters = { least: 2.6, largest: 6.4 } as const;

const listed = (diameter: number): RivetSize | undefined => rivetSizes.find((each) => Math.abs(each.diameter - diameter) < 0.05);

const holeFor = (diameter: number) => listed(diameter)?.hole ?? diameter + usualClearance;

export default worksheet({
  id: "rivet-joint",
  title: "Riveted joint",
  summary: "Which rivet for two sheets, how long, how many for a load, and where the holes go.",
  page: "/joining/rivets/",
  inputs: {
    material: { ...materialInput, help: "Of the sheets; of two metals, the weaker." },
    thicknessA: { ...rivetSheet, kind: "quantity", label: "Thickness of one sheet", symbol: "tA", default: "1mm" },
    thicknessB: { ...rivetSheet, kind: "quantity", label: "Thickness of the other sheet", symbol: "tB", default: "1mm" },
    load: {
      ...symbols.load,
      kind: "quantity",
      default: "2kN",
      help: "Pulling the two sheets past each other, not apart.",
    },
    safetyFactor: {
      ...symbols.safetyFactor,
      kind: "quantity",
      default: "3",
      help: "How many times the load the joint should bear. More for shock, vibration and people.",
    },
    rivetDiameter: {
      ...rivetDiameter,
      kind: "quantity",
      whenEmpty: "three times the thicker sheet, then the next size up",
      help: "Of the shank: 1/8in, 4mm.",
    },
    rivetShearStress: {
      ...rivetStress,
      kind: "quantity",
      default: "186N/mm2",
      help: "Of the rivet's metal, on the area of its shank. 186 N/mm² (27 ksi) is aluminium 2117, from memory. Pull rivets: take the strength on the box.",
    },
    ...propertyInputs,
  },
  outputs: {
    diameter: { kind: "quantity", label: "Rivet diameter", symbol: "D", quantity: "length", fineness: "setting" },
    grip: { kind: "quantity", label: "Grip", symbol: "G", quantity: "length", fineness: "setting", help: "Both sheets." },
    length: {
      kind: "quantity",
      label: "Length of a solid rivet",
      symbol: "L",
      quantity: "length",
      fineness: "setting",
      help: "Under its head, before it is driven. A pull rivet goes by the grip range on its box.",
    },
    pitch: { kind: "quantity", label: "Pitch, at least", symbol: "p", quantity: "length", fineness: "setting" },
    edge: {
      kind: "quantity",
      label: "Hole to edge, at least",
      symbol: "e",
      quantity: "length",
      fineness: "setting",
      help: "From the middle of the hole.",
    },
    count: { kind: "quantity", label: "Rivets", symbol: "n", quantity: "count" },
  },
  main: "diameter",
  formulas: [
    rivetTargetFormula,
    rivetGripFormula,
    rivetLengthFormula,
    rivetShearFormula,
    rivetBearingFormula,
    euroBearingFormula,
    rivetCountFormula,
    rivetPitchFormula,
    rivetEdgeFormula,
  ],
  validity: [
    "Two lapped sheets, rivets in single shear, the load shared alike by all of them.",
    "The sheet between the holes, and heads pulled through, are not checked: keep the distances.",
    "Not for aircraft, vehicles or anything whose failure can hurt someone: that is work for approved data and qualified people.",
  ],
  cautions: ["rivet-work", "eyes", "sharp-edges", "defer-to-manual"],
  sources: [
    "ac-43-13-1b-rivet-size",
    "ac-43-13-1b-rivet-tables",
    "navedtra-14018",
    "faa-h-8083-31-rivets",
    "faa-h-8083-31-drills",
    "p-40-repair-manual",
    "mil-hdbk-5h",
    "tm-10-5410",
    "cox-1999",
    "faa-ac-65-15a",
    "en-1993-1-3",
    "common-practice",
  ],

  compute(values, catalogue) {
    const { thicknessA, thicknessB, load, safetyFactor, rivetShearStress: stress } = values;
    const material = materialWith(catalogue, values.material, values);
    const [thinner, thicker] = [Math.min(thicknessA, thicknessB), Math.max(thicknessA, thicknessB)];
    const target = diameterFactors.target * thicker;
    const diameter = values.rivetDiameter ?? rivetSizeFor(thicker).diameter;
    const grip = thicknessA + thicknessB;
    const length = rivetLength({ grip, diameter });
    const layout = rivetLayout(diameter);
    const hole = holeFor(diameter);
    const tensile = leastTensile(material);
    const sheet = { tensile, diameter, thinner };

    const shear = rivetShear({ stress, diameter });
    const bearing = rivetBearing(sheet);
    const euro = euroRivetBearing({ ...sheet, thicker });
    const strength = Math.min(shear, bearing, euro);
    const counted = (each: number) => countFor({ load, safetyFactor, strength: each });
    const count = counted(strength);

    const size = listed(diameter);
    const remarks: Remark[] = [];
    if (size)
      remarks.push({
        level: "note",
        phrase: say`Sold as ${size.inches}, in metric lists ${size.metric}. Drill ${mm(size.hole)}, from memory; an older manual, which was read, drills ${mm(size.olderHole)}.`,
        source: "p-40-repair-manual",
      });
    else
      remarks.push({
        level: "note",
        phrase: say`This diameter is not in the list of usual sizes. Drill about ${mm(hole)}, or what the box says.`,
        source: "common-practice",
      });
    if (diameter > target + 1e-9 && values.rivetDiameter !== undefined)
      remarks.push({
        level: "note",
        field: "rivetDiameter",
        phrase: say`Wider than three times the thicker sheet (${mm(target)}): the sheet gives way before the rivet, and driving it buckles thin sheet.`,
        source: "navedtra-14018",
      });
    if (diameter < diameterFactors.least * thicker)
      remarks.push({
        level: "caution",
        field: "rivetDiameter",
        phrase: say`A rivet should be at least as wide as the thicker sheet is thick, ${mm(thicker)}, and about three times that where it can; this one is ${mm(diameter)}.`,
        source: "navedtra-14018",
      });
    else if (diameter < target - 1e-9)
      remarks.push({
        level: "note",
        field: "rivetDiameter",
        phrase: say`Three times the thicker sheet would be ${mm(target)}. This is thinner but still at least as wide as the sheet is thick.`,
        source: "navedtra-14018",
      });
    if (diameter < (rivetSizes[0]?.diameter ?? 0) - 0.05)
      remarks.push({
        level: "caution",
        field: "rivetDiameter",
        phrase: say`Rivets below 3/32 in do not count as load-bearing.`,
        source: "navedtra-14018",
      });
    if (thinner / diameter < leastSheetOverDiameter)
      remarks.push({
        level: "caution",
        phrase: say`The thinner sheet is less than ${leastSheetOverDiameter} of the rivet's diameter. There the hole's strength is not known without a test: pull a test joint.`,
        source: "mil-hdbk-5h",
      });
    if (count === 1)
      remarks.push({
        level: "caution",
        phrase: say`One rivet lets the sheets turn. Use at least two.`,
        source: "common-practice",
      });
    const usualPitch = rivetFactors.usualPitch * diameter;
    remarks.push(
      {
        level: "note",
        phrase: say`Usual is a pitch of ${mm(usualPitch)} to ${mm(rivetFactors.usualWidestPitch * diameter)} (4 to 8 diameters; one text allows 10) and ${mm(rivetFactors.usualEdge * diameter)} to the edge. Two rows stand zigzag, ${mm(rivetRows({ pitch: usualPitch, diameter }))} apart.`,
        source: "cox-1999",
      },
      {
        level: "note",
        phrase: say`One row takes a lap of ${mm(layout.lap)} (four diameters) and, at the least pitch, ${mm((count - 1) * layout.pitch + 2 * layout.edge)} of joint.`,
        source: "tm-10-5410",
      },
      {
        level: "note",
        phrase: say`A driven head is ${mm(layout.headWidth)} wide and ${mm(layout.headHeight)} high; below ${mm(rivetFactors.leastHeadWidth * diameter)} and ${mm(rivetFactors.leastHeadHeight * diameter)} drill it out.`,
        source: "p-40-repair-manual",
      },
      {
        level: "note",
        phrase: say`A joint as strong as the sheet itself would take ${(perLength * fullStrengthRivets({ ...sheet, stress })).toFixed(1)} such rivets on each ${mm(perLength)}.`,
        source: "ac-43-13-1b-rivet-tables",
      },
      {
        level: "note",
        phrase: say`Take rivets of the sheet's own kind of metal, or put paint or sealant between: two unlike metals that get wet eat each other.`,
        source: "common-practice",
      },
    );

    const rows: AnswerTable["rows"] = [
      { cells: ["Rivet cut through, on its shank", shear, counted(shear)], chosen: strength === shear, source: "faa-ac-65-15a" },
      {
        cells: [
          "Rivet cut through, on its hole",
          rivetShear({ stress, diameter: hole }),
          counted(rivetShear({ stress, diameter: hole })),
        ],
        source: "mil-hdbk-5h",
        note: "only for a driven rivet that fills its hole",
      },
      {
        cells: [`Hole stretched, ${bearingFactor} times tensile strength`, bearing, counted(bearing)],
        chosen: strength === bearing,
        source: "ac-43-13-1b-rivet-tables",
        note: "for aluminium; the least tensile strength is taken",
      },
      {
        cells: ["Hole stretched, European rule for blind rivets", euro, counted(euro)],
        chosen: strength === euro,
        source: "en-1993-1-3",
        note:
          diameter >= euroDiameters.least && diameter <= euroDiameters.largest
            ? "from memory; for steel, before the partial factor"
            : "from memory; for steel, and not for this diameter",
      },
    ];
    const band: AnswerTable = {
      caption: "What one rivet holds: the lowest counts",
      columns: [
        { label: "What gives way" },
        { label: "One rivet", quantity: "force" },
        { label: "Rivets for this load", quantity: "count" },
      ],
      rows,
    };

    const working: Step[] = [
      ...(values.rivetDiameter === undefined ? [{ formula: rivetTargetFormula, values: { thicker, target } }] : []),
      { formula: rivetGripFormula, values: { thicknessA, thicknessB, grip } },
      { formula: rivetLengthFormula, values: { grip, diameter, length } },
      { formula: rivetShearFormula, values: { stress, diameter, strength: shear } },
      { formula: rivetBearingFormula, values: { ...sheet, strength: bearing } },
      {
        formula: euroBearingFormula,
        values: { ...sheet, alpha: euroBearingFactor({ thinner, thicker, diameter }), strength: euro },
      },
      { formula: rivetCountFormula, values: { load, safetyFactor, strength, count } },
      { formula: rivetPitchFormula, values: { diameter, pitch: layout.pitch } },
      { formula: rivetEdgeFormula, values: { diameter, edge: layout.edge } },
    ];

    return {
      outputs: { diameter, grip, length, pitch: layout.pitch, edge: layout.edge, count },
      remarks,
      working,
      tables: [band],
      sources: [
        ...(values.rivetDiameter === undefined ? ["ac-43-13-1b-rivet-size"] : []),
        "faa-h-8083-31-rivets",
        "faa-ac-65-15a",
        "ac-43-13-1b-rivet-tables",
        "en-1993-1-3",
        "tm-10-5410",
      ],
    };
  },

  handoffs({ material, thicknessA, thicknessB }, { outputs: { diameter, pitch, edge } }) {
    if (diameter === null || pitch === null || edge === null) return [];
    const hole = holeFor(diameter);
    return [
      {
        to: "seam-allowance",
        label: "Add the lap to the flat",
        raw: {
          kind: "lap",
          width: typedLength(rivetLayout(diameter).lap),
          thickness: typedLength(Math.max(thicknessA, thicknessB)),
        },
      },
      {
        to: "hole-place",
        label: "Check the holes",
        raw: {
          material,
          thickness: typedLength(Math.min(thicknessA, thicknessB)),
          diameter: typedLength(hole),
          // There, distances are of the metal left; here they run from the middle of the hole.
          edgeDistance: typedLength(edge - hole / 2),
          holeSpacing: typedLength(pitch - hole),
        },
      },
    ];
  },
});
