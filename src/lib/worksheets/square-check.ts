import { toleranceClasses } from "../catalogue.ts";
import {
  angleError,
  angleErrorFormula,
  blankHeight,
  blankWidth,
  diagonalA,
  diagonalB,
  diagonalMisfit,
  offsetFormula,
  readingShare,
  squareOffset,
} from "../marking/squareness.ts";
import { mm, say } from "../quantity/phrase.ts";
import { angularTolerance } from "../stock/general-tolerance.ts";
import { type AnswerTable, type Remark, type Step, worksheet } from "../worksheet.ts";

const length = { quantity: "length", fineness: "setting" } as const;

/** ± to which a steel rule or tape is read [mm]: half a millimetre is its finest division. */
const ruleReading = 0.5;

/** Degrees in words of a few decimals: the errors that matter here are hundredths. */
const degrees = (value: number) => `${Math.abs(value).toFixed(2)}°`;

export default worksheet({
  id: "square-check",
  title: "Is the blank square?",
  summary: "How far a blank is out of square, from its two diagonals.",
  page: "/marking/",
  inputs: {
    width: { ...blankWidth, kind: "quantity", default: "600mm", help: "Of the lower edge; measure the upper one too." },
    height: { ...blankHeight, kind: "quantity", default: "400mm", help: "Of the left edge; measure the right one too." },
    diagonalA: { ...diagonalA, kind: "quantity", default: "721.6mm" },
    diagonalB: { ...diagonalB, kind: "quantity", default: "720.6mm" },
  },
  outputs: {
    offset: {
      ...length,
      kind: "quantity",
      label: "Upper edge is shifted by",
      symbol: "v",
      help: "Positive: to the right, seen from the lower edge.",
    },
    angleError: {
      kind: "quantity",
      label: "Corners are out of square by",
      symbol: "δ",
      quantity: "angle",
      decimals: 3,
      help: "Positive: the lower left corner is less than 90°.",
    },
  },
  main: "offset",
  formulas: [angleErrorFormula, offsetFormula],
  validity: [
    "For a blank whose opposite sides are equally long. Measure all four sides first: equal diagonals alone also belong to a blank that narrows evenly to one end.",
    "A diagonal is measured from corner to corner; a burr or a rounded corner makes it wrong.",
  ],
  cautions: ["sharp-edges"],
  sources: ["geometry", "army-od1621", "iso-2768-1", "jcgm-100"],

  compute(values, catalogue) {
    const { width, height } = values;
    const error = angleError(values);
    const offset = squareOffset(height, error);
    const reading = readingShare(values, ruleReading);
    const misfit = diagonalMisfit(values);
    const step = 10 * Math.floor(Math.min(Math.min(width, height) / 3, Math.max(width, height) / 4) / 10);

    const remarks: Remark[] = [
      { level: "note", phrase: say`In a square blank of this size both diagonals are ${mm(Math.hypot(width, height))}.` },
      {
        level: "note",
        phrase: say`Out of square by ${(60 * Math.abs(error)).toFixed(1)} minutes of arc.`,
      },
      {
        level: Math.abs(error) <= reading ? "caution" : "note",
        phrase: say`Diagonals read to ${mm(ruleReading)} leave ± ${degrees(reading)}, or ± ${mm(squareOffset(height, reading))} of shift${
          Math.abs(error) <= reading ? ": what was found is no more than that" : ""
        }.`,
        source: "army-od1621",
      },
    ];
    if (Math.abs(misfit) > 2 * ruleReading)
      remarks.push({
        level: "caution",
        field: "diagonalA",
        phrase: say`These diagonals are ${mm(Math.abs(misfit))} too ${misfit > 0 ? "long" : "short"} on average for these sides. One size was read wrong, or opposite sides are not equal: measure again.`,
        source: "geometry",
      });
    if (step > 0)
      remarks.push({
        level: "note",
        phrase: say`To set out a square corner without a square: ${mm(3 * step)} along the short edge and ${mm(4 * step)} along the long one must be ${mm(5 * step)} apart.`,
        source: "geometry",
      });

    const working: Step[] = [
      { formula: angleErrorFormula, values: { ...values, angleError: error } },
      { formula: offsetFormula, values: { height, angleError: error, offset } },
    ];

    const shorter = Math.min(width, height);
    const { generalTolerances } = catalogue;
    const allowed: AnswerTable = {
      caption: "What a drawing that names only a tolerance class allows a corner",
      columns: [
        { label: "Class" },
        { label: "Allowed ±, degrees" },
        { label: "That is over the shorter side", ...length },
        { label: "Kept" },
      ],
      rows: toleranceClasses.flatMap((name) => {
        const tolerance = angularTolerance(generalTolerances, name, shorter);
        if (tolerance === undefined) return [];
        return [
          {
            cells: [
              `ISO 2768-${name}`,
              degrees(tolerance),
              squareOffset(shorter, tolerance),
              Math.abs(error) <= tolerance ? "yes" : "no",
            ],
            source: generalTolerances.angular.source,
          },
        ];
      }),
    };

    return {
      outputs: { angleError: error, offset },
      remarks,
      working,
      tables: [allowed],
      sources: ["geometry", "army-od1621", "iso-2768-1"],
    };
  },
});
