import {
  clearanceBands,
  clearanceByRoot,
  clearanceFormula,
  clearanceGroups,
  dieClearance,
  dieDiameter,
  dieDiameterFormula,
  usableClearance,
} from "../punching/die-clearance.ts";
import { type DieFit, diesFor, punchFor, roundPunches } from "../punching/shop-punches.ts";
import * as symbols from "../punching/symbols.ts";
import { mm, say } from "../quantity/phrase.ts";
import { materialInput, materialWith, propertyInputs } from "../stock/material.ts";
import { type AnswerTable, type Remark, type Step, worksheet } from "../worksheet.ts";
import { propertyRemark } from "./parts/property-band.ts";

const length = { quantity: "length", fineness: "setting" } as const;

/** Dies looser than this share of the thickness are not listed [per side]. */
const loosestListed = 0.5;

const perCent = (clearance: number, thickness: number) => `${((100 * clearance) / thickness).toFixed(1)} %`;

export default worksheet({
  id: "die-fit",
  title: "Die for a punch",
  summary: "How much larger than the punch the die should be, and which die of this shop comes nearest.",
  page: "/punching/",
  inputs: {
    material: materialInput,
    thickness: { ...symbols.sheet, kind: "quantity", default: "1.2mm", help: "Measured, not the nominal gauge." },
    diameter: {
      ...symbols.holeDiameter,
      kind: "quantity",
      default: "10mm",
      help: "Of the hole, which comes out as large as the punch.",
    },
    ...propertyInputs,
  },
  outputs: {
    dieDiameter: { ...length, kind: "quantity", label: "Die opening", symbol: "D" },
    clearancePerSide: {
      ...length,
      kind: "quantity",
      label: "Clearance per side",
      symbol: "c",
      help: "Between punch and die on one side; half of the difference of their diameters.",
    },
  },
  main: "dieDiameter",
  formulas: [clearanceFormula, dieDiameterFormula],
  validity: [
    "For a hole that is to have its size: the punch has the size of the hole. For a blank that is to have a size the die has it, and the punch is smaller.",
    "Published clearances differ by a factor of four. The one shown is Groover’s, by group of metals; the table holds the others.",
    "Clearance is given per side. Some texts print both sides together.",
  ],
  cautions: ["punch-and-die-match", "punch-fingers", "eyes", "defer-to-manual"],
  sources: [
    "groover-clearance-problem",
    "illinois-mechref",
    "rhode-island-notes",
    "kalpakjian-schmid",
    "cutting-clearance-note",
    "common-practice",
  ],

  compute(values, catalogue) {
    const { thickness, diameter } = values;
    const material = materialWith(catalogue, values.material, values);
    const shear = material.shearStrength.value;
    const group = clearanceGroups[values.material];
    const clearance = dieClearance({ factor: group.factor, thickness });
    const opening = dieDiameter({ diameter, clearance });

    const { punch: set } = catalogue.shop;
    const punch = punchFor(set, { shape: "round", diameter });
    const size = punch?.shape === "round" ? punch.diameter : undefined;
    const dies = size === undefined ? [] : diesFor(set, size, loosestListed * thickness);
    const usable = dies.filter(
      (die) => die.clearance >= usableClearance.low * thickness && die.clearance <= usableClearance.high * thickness,
    );
    const nearest = usable.reduce<DieFit | undefined>(
      (best, die) => (best && Math.abs(best.clearance - clearance) <= Math.abs(die.clearance - clearance) ? best : die),
      undefined,
    );

    const remarks: Remark[] = [];
    if (size === undefined || !punch) {
      const sizes = roundPunches(set).map((each) => `${Number(each.toFixed(2))}`);
      remarks.push({
        level: "caution",
        field: "diameter",
        phrase: say`The set of this shop has no round punch of ${mm(diameter)}. It has ${sizes.join(", ")} mm.`,
      });
    } else if (nearest)
      remarks.push({
        level: "note",
        phrase: say`In this shop: take punch ${mm(size)} with die ${nearest.letter}, ${mm(nearest.opening)}. It leaves ${perCent(nearest.clearance, thickness)} of the thickness per side.`,
      });
    else {
      const own = set.dies.find(({ letter }) => letter === punch.die);
      const left = own?.shape === "round" ? (own.diameter - size) / 2 : 0;
      remarks.push({
        level: "caution",
        field: "thickness",
        phrase:
          left > usableClearance.high * thickness
            ? say`No die of this shop suits this thickness. Die ${punch.die}, made for this punch, leaves ${perCent(left, thickness)} per side: the sheet is drawn in and the burr is large. Clamp it on a piece of scrap, or drill.`
            : say`No die of this shop suits this thickness. Die ${punch.die}, made for this punch, leaves ${perCent(left, thickness)} per side: the punch takes more force, wears and may stick. Do not use it for this sheet; drill, or get a larger die.`,
      });
    }
    if (!group.named)
      remarks.push({
        level: "caution",
        phrase: say`The table does not name this metal. It is put with ${group.metals}.`,
        source: "groover-clearance-problem",
      });
    remarks.push({
      level: "note",
      phrase: say`One press-tool note lists far less: 2.5 to 5 % for mild steel, 1 to 1.5 % for aluminium, 1.5 to 3 % for brass. It stands alone and is left out of the table.`,
      source: "cutting-clearance-note",
    });
    remarks.push(propertyRemark("Shear strength", "stress", material.shearStrength));

    const row = (name: string, low: number, high: number, source: string, note?: string, chosen = false) => ({
      cells: [name, low, high, dieDiameter({ diameter, clearance: low }), dieDiameter({ diameter, clearance: high })],
      source,
      chosen,
      ...(note === undefined ? {} : { note }),
    });
    const root = (work: "ordinary" | "accurate") => clearanceByRoot({ thickness, shearStrength: shear }, work);
    const published: AnswerTable = {
      caption: "What each text says",
      columns: [
        { label: "Text" },
        { label: "Least clearance per side", ...length },
        { label: "Most", ...length },
        { label: "Smallest die", ...length },
        { label: "Largest die", ...length },
      ],
      rows: [
        row(
          `Groover, ${group.factor} × thickness: ${group.metals}`,
          clearance,
          clearance,
          "groover-clearance-problem",
          undefined,
          true,
        ),
        ...clearanceBands.map(({ name, low, high, source, seen }) =>
          row(
            `${name}, ${100 * low} to ${100 * high} %`,
            low * thickness,
            high * thickness,
            source,
            seen === "memory" ? "from memory" : undefined,
          ),
        ),
        row(
          "Root of the shear strength, accurate to ordinary work",
          root("accurate"),
          root("ordinary"),
          "cutting-clearance-note",
        ),
      ],
    };
    const here: AnswerTable = {
      caption: "Dies of this shop that this punch can enter",
      columns: [
        { label: "Die" },
        { label: "Opening", ...length },
        { label: "Clearance per side", ...length },
        { label: "Of the thickness" },
        { label: "For this sheet" },
      ],
      rows: dies.map((die) => ({
        cells: [
          die.letter,
          die.opening,
          die.clearance,
          perCent(die.clearance, thickness),
          die.clearance < usableClearance.low * thickness
            ? "tight: more force, the punch may stick"
            : die.clearance > usableClearance.high * thickness
              ? "loose: large burr"
              : "fits",
        ],
        chosen: die === nearest,
        ...(die.letter === punch?.die ? { note: "made for this punch" } : {}),
      })),
    };

    const working: Step[] = [
      { formula: clearanceFormula, values: { factor: group.factor, thickness, clearance } },
      { formula: dieDiameterFormula, values: { diameter, clearance, dieDiameter: opening } },
    ];

    return {
      outputs: { dieDiameter: opening, clearancePerSide: clearance },
      remarks,
      working,
      tables: dies.length === 0 ? [published] : [published, here],
      sources: ["groover-clearance-problem"],
    };
  },
});
