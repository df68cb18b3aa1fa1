import { mm, say } from "../quantity/phrase.ts";
import {
  arcAngle,
  leastRatio,
  measuredFaces,
  middleDiameter,
  middleFormulas,
  rolledBlank,
  rolledBlankFormula,
  seamAllowance,
  shopAllowances,
  tubeDiameter,
} from "../rolling/rolled-blank.ts";
import { sheet } from "../rolling/symbols.ts";
import { type AnswerTable, type Remark, type Step, worksheet } from "../worksheet.ts";
import { thickerThanPlate } from "./parts/plate-remarks.ts";

const length = { quantity: "length", fineness: "setting" } as const;

export default worksheet({
  id: "rolled-blank",
  title: "Blank of a rolled cylinder",
  summary: "How long the flat sheet must be for a tube, a ring or an arc.",
  page: "/rolling/",
  inputs: {
    diameter: { ...tubeDiameter, kind: "quantity", default: "150mm" },
    measured: { kind: "choice", label: "Diameter measured", choices: measuredFaces, default: "inside" },
    thickness: { ...sheet, kind: "quantity", default: "1mm", help: "Measured, not the nominal gauge." },
    arc: { ...arcAngle, kind: "quantity", default: "360deg", help: "360° for a full tube." },
    seam: {
      ...seamAllowance,
      kind: "quantity",
      default: "0mm",
      help: "All that the seam takes, both edges together: the lap, or the allowance of a folded seam. 0 for butted edges.",
    },
  },
  outputs: { blank: { ...length, kind: "quantity", label: "Blank length", symbol: "L" } },
  main: "blank",
  formulas: [...Object.values(middleFormulas), rolledBlankFormula],
  validity: [
    "The middle of the thickness keeps its length. Right in rolling, where the inside radius is five thicknesses or more.",
    "Bends of a folded seam are not in it: they belong to its allowance.",
  ],
  cautions: ["rolls-draw-in", "gloves-at-rolls", "sharp-edges", "defer-to-manual"],
  sources: ["cyclopedia-of-drawing", "geometry", "common-practice"],

  compute(values, catalogue) {
    const { diameter, thickness, measured, arc, seam } = values;
    const middle = middleDiameter(values);
    const blank = rolledBlank({ middle, arc, seam });
    const inside = middle - thickness;
    const { rolls } = catalogue.shop;

    const remarks: Remark[] = [];
    if (inside / 2 < leastRatio * thickness)
      remarks.push({
        level: "caution",
        field: "diameter",
        phrase: say`The inside radius is under ${leastRatio} thicknesses. The neutral line moves inwards there and the blank comes out a little long: bend it on the brake in steps, and measure a practice piece.`,
        source: "common-practice",
      });
    if (inside < rolls.smallestDiameter)
      remarks.push({
        level: "caution",
        field: "diameter",
        phrase: say`${rolls.name} roll to ${mm(rolls.smallestDiameter)} inside at the smallest; this is ${mm(inside)}.`,
      });
    if (thickness > rolls.rating.thickness)
      remarks.push(thickerThanPlate(rolls, catalogue.materials[rolls.rating.material].name, thickness));
    remarks.push({
      level: "note",
      phrase: say`Rolls leave both ends nearly flat for about ${mm(rolls.spacing)} on the rolls of this shop. Bend the ends first, or leave them longer and trim.`,
      source: "common-practice",
    });

    const turn = arc / 360;
    const others: AnswerTable = {
      caption: "What the thickness adds, in theory and in old shops",
      columns: [
        { label: "Added to the inside circumference" },
        { label: "Blank length", ...length },
        { label: "Diameter at mid-thickness", ...length },
      ],
      rows: [
        {
          cells: ["3.1416 thicknesses: the middle keeps its length", blank, middle],
          chosen: true,
          source: "cyclopedia-of-drawing",
        },
        ...shopAllowances.map((added) => {
          // What such a blank closes to.
          const around = Math.PI * inside + added * thickness;
          return {
            cells: [added === 0 ? "nothing" : `${added} thicknesses`, turn * around + seam, around / Math.PI],
            source: "cyclopedia-of-drawing",
            ...(added > Math.PI ? { note: "a shop’s habit, not geometry" } : {}),
          };
        }),
      ],
    };

    const working: Step[] = [
      { formula: middleFormulas[measured], values: { diameter, thickness, middle } },
      { formula: rolledBlankFormula, values: { arc, middle, seam, blank } },
    ];

    return { outputs: { blank }, remarks, working, tables: [others], sources: ["cyclopedia-of-drawing", "geometry"] };
  },
});
