import { InputError } from "../input-error.ts";
import { amount, mm, say } from "../quantity/phrase.ts";
import {
  type ConeBlank,
  chordFormula,
  coneBlank,
  coneHeight,
  faceOffset,
  innerRadiusFormula,
  largeDiameter,
  longestSwing,
  outerRadiusFormula,
  sectorAngleFormula,
  slantFormula,
  smallDiameter,
} from "../rolling/cone-blank.ts";
import { sheet } from "../rolling/symbols.ts";
import { type AnswerTable, type Remark, type Step, worksheet } from "../worksheet.ts";
import { thickerThanPlate } from "./parts/plate-remarks.ts";
import { typedLength } from "./parts/typed-length.ts";

const length = { quantity: "length", fineness: "setting" } as const;

export default worksheet({
  id: "cone-blank",
  title: "Blank of a cone",
  summary: "The sector of a ring that rolls up into a cone or a funnel.",
  page: "/rolling/cones/",
  inputs: {
    largeDiameter: { ...largeDiameter, kind: "quantity", default: "200mm", help: "At mid-thickness." },
    smallDiameter: {
      ...smallDiameter,
      kind: "quantity",
      default: "80mm",
      help: "At mid-thickness; 0 for a cone that ends in a point.",
    },
    height: { ...coneHeight, kind: "quantity", default: "150mm", help: "Along the axis, at mid-thickness." },
    thickness: { ...sheet, kind: "quantity", default: "1mm", help: "For the diameters that a caliper will read." },
  },
  outputs: {
    outerRadius: { ...length, kind: "quantity", label: "Outer radius", symbol: "R1" },
    innerRadius: { ...length, kind: "quantity", label: "Inner radius", symbol: "R2" },
    sectorAngle: { kind: "quantity", label: "Angle of the sector", symbol: "A", quantity: "angle" },
    chord: {
      ...length,
      kind: "quantity",
      label: "Chord",
      symbol: "c",
      help: "Straight from one end of the outer arc to the other; over 180° across the gap.",
    },
  },
  main: "outerRadius",
  formulas: [slantFormula, outerRadiusFormula, innerRadiusFormula, sectorAngleFormula, chordFormula],
  validity: [
    "A right round cone or frustum. An oblique one, or one from round to square, is laid out by triangles.",
    "Without a seam: add its allowance along one straight edge, or half of it along each.",
  ],
  cautions: ["rolls-draw-in", "gloves-at-rolls", "sharp-edges", "defer-to-manual"],
  sources: ["geometry", "longfield-cone", "blacksmith-cone-page", "builder-mechanic", "common-practice"],

  compute(values, catalogue) {
    const { thickness } = values;
    const cone = { largeDiameter: values.largeDiameter, smallDiameter: values.smallDiameter, height: values.height };
    const blank = blankOrCylinder(cone, thickness);
    const { slant, outerRadius, innerRadius, sectorAngle, chord } = blank;
    const offset = faceOffset(cone, thickness);
    const { rolls } = catalogue.shop;

    const remarks: Remark[] = [
      {
        level: "note",
        phrase: say`Cut it from a piece of ${mm(blank.width)} × ${mm(blank.depth)} or more. The blank itself is ${amount(blank.area, "area")}.`,
      },
    ];
    if (sectorAngle < 360)
      remarks.push({
        level: "note",
        phrase: say`Check the swung sector by its chord: it finds the angle better than a protractor.`,
      });
    if (outerRadius > longestSwing)
      remarks.push({
        level: "caution",
        field: "smallDiameter",
        phrase: say`A radius of ${mm(outerRadius)} is too long to swing on a bench. Draw the outer arc through its chord and its middle, which stands ${mm(outerRadius * (1 - Math.cos((Math.PI * Math.min(sectorAngle, 360)) / 360)))} off the chord.`,
        source: "common-practice",
      });
    if (values.smallDiameter - offset < rolls.smallestDiameter)
      remarks.push({
        level: "caution",
        field: "smallDiameter",
        phrase: say`${rolls.name} roll to ${mm(rolls.smallestDiameter)} inside at the smallest. Form the narrow end by hand over a stake or a mandrel.`,
      });
    if (thickness > rolls.rating.thickness)
      remarks.push(thickerThanPlate(rolls, catalogue.materials[rolls.rating.material].name, thickness));
    if (slant > rolls.width)
      remarks.push({
        level: "caution",
        field: "height",
        phrase: say`${rolls.name} are ${mm(rolls.width)} wide; the slant of this cone is ${mm(slant)}.`,
      });
    remarks.push({
      level: "note",
      phrase: say`In rolling, the narrow end has to lag: raise the rear roll more at that end, and let the sheet turn about it. The screws are not set alike for a cone.`,
      source: "common-practice",
    });

    const faces: AnswerTable = {
      caption: "What a caliper should read on the finished cone",
      columns: [
        { label: "End" },
        { label: "Inside", ...length },
        { label: "At mid-thickness", ...length },
        { label: "Outside", ...length },
      ],
      rows: (["largeDiameter", "smallDiameter"] as const)
        .filter((key) => cone[key] > 0)
        .map((key) => ({
          cells: [
            key === "largeDiameter" ? "Large" : "Small",
            cone[key] > offset ? cone[key] - offset : null,
            cone[key],
            cone[key] + offset,
          ],
        })),
    };

    const working: Step[] = [
      { formula: slantFormula, values: { ...cone, slant } },
      { formula: outerRadiusFormula, values: { ...cone, slant, outerRadius } },
      { formula: innerRadiusFormula, values: { outerRadius, slant, innerRadius } },
      { formula: sectorAngleFormula, values: { largeDiameter: cone.largeDiameter, outerRadius, sectorAngle } },
      { formula: chordFormula, values: { outerRadius, sectorAngle, chord } },
    ];

    return {
      outputs: { outerRadius, innerRadius, sectorAngle, chord },
      remarks,
      working,
      tables: [faces],
      sources: ["geometry", "longfield-cone"],
    };
  },
});

/** @throws InputError as `coneBlank`; for a cylinder with the calculator that does it, filled in */
function blankOrCylinder(cone: Parameters<typeof coneBlank>[0], thickness: number): ConeBlank {
  try {
    return coneBlank(cone);
  } catch (error) {
    if (!(error instanceof InputError) || cone.largeDiameter !== cone.smallDiameter) throw error;
    // The cylinder's diameter is asked for at a face.
    const raw = { diameter: typedLength(cone.largeDiameter - thickness), measured: "inside", thickness: typedLength(thickness) };
    throw new InputError(error.field, error.value, error.phrase, [
      { to: "rolled-blank", label: "Blank of a rolled cylinder", raw },
    ]);
  }
}
