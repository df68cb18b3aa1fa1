import { kFromAllowance, kFromAllowanceFormula } from "../bending/bend-allowance.ts";
import { publishedAllowances } from "../bending/methods.ts";
import {
  allowanceFromDeductionFormula,
  apexSetbackFormula,
  bendDeduction,
  setback,
  tangentSetbackFormula,
} from "../bending/setback.ts";
import * as symbols from "../bending/symbols.ts";
import type { Formula } from "../formula.ts";
import { InputError } from "../input-error.ts";
import { exactly, type QuantityInput } from "../inputs.ts";
import { atLeast, mm, say } from "../quantity/phrase.ts";
import {
  countToHalve,
  coverageFactor,
  meanUncertainty,
  meanUncertaintyFormula,
  spreadSymbol,
} from "../stats/mean-uncertainty.ts";
import { outlier } from "../stats/outlier.ts";
import { mean, sampleDeviation } from "../stats/sample.ts";
import { type AnswerTable, type Remark, type Step, worksheet } from "../worksheet.ts";

const size = { kind: "quantity", quantity: "length", fineness: "setting", min: 0, max: 2000, aboveMin: true } as const;
const cell = (label: string, help: string) => ({ ...size, label, help }) satisfies QuantityInput;

const count = { label: "Number of pieces", symbol: "n", tex: "n", quantity: "count" } as const;
const sum = { quantity: "length", fineness: "setting" } as const;

const meanDeductionFormula: Formula = {
  id: "mean-deduction",
  name: "Bend deduction, mean of the pieces",
  result: "deduction",
  expression: String.raw`\frac{\v{legs} - \v{flats}}{\v{count}}`,
  symbols: {
    legs: { ...sum, label: "Sum of all legs", symbol: "Σ legs", tex: String.raw`\textstyle\sum \mathrm{legs}` },
    flats: { ...sum, label: "Sum of all flat lengths", symbol: "Σ flats", tex: String.raw`\textstyle\sum \mathrm{flats}` },
    count,
    deduction: { ...symbols.deductionSymbol, decimals: 3 },
  },
};

const spreadFormula: Formula = {
  id: "deduction-spread",
  name: "Spread of the pieces",
  result: "spread",
  expression: String.raw`\sqrt{\frac{\v{squares}}{\v{count} - 1}}`,
  symbols: {
    squares: {
      label: "Sum of the squared differences from the mean",
      symbol: "Σ d²",
      tex: String.raw`\textstyle\sum d^2`,
      quantity: "ratio",
      decimals: 5,
    },
    count,
    spread: spreadSymbol,
  },
};

/** Pieces below which the ± is mostly Student's t, not the bending. */
const enoughPieces = 5;

/** A length as a text to type, without the tails of binary arithmetic; 0.0001 mm is far finer than any caliper. */
const typed = (value: number, unit: string) => `${Number(value.toFixed(4))}${unit}`;

export default worksheet({
  id: "practice-pieces",
  title: "Practice pieces",
  summary: "What a bend really takes up on this brake with this sheet, from strips bent and measured, with an honest ±.",
  page: "/bending/practice-pieces/",
  inputs: {
    thickness: {
      ...symbols.thickness,
      kind: "quantity",
      default: "1.2mm",
      help: "Measured with a micrometer or caliper on these strips.",
    },
    radius: { ...symbols.insideRadius, kind: "quantity", default: "1.2mm", help: "Inside radius of the finished bend." },
    angle: {
      ...symbols.bendAngle,
      kind: "quantity",
      min: 1,
      aboveMin: false,
      default: "90deg",
      help: "How far each strip was turned from flat, measured after it was let go.",
    },
    legTo: {
      kind: "choice",
      label: "Legs measured to",
      choices: symbols.legEnds,
      whenEmpty: "the apex up to 90°, the outermost point above",
    },
    pieces: {
      kind: "list",
      label: "Pieces",
      rowName: "pieces",
      columns: {
        flat: cell("Flat length", "Before bending."),
        legA: cell("Leg A", "Outside, after bending."),
        legB: cell("Leg B", "Outside, after bending."),
      },
      minRows: 1,
      maxRows: 50,
      default: [
        { flat: "100mm", legA: "61.10mm", legB: "41.08mm" },
        { flat: "100mm", legA: "61.05mm", legB: "41.10mm" },
        { flat: "100mm", legA: "61.12mm", legB: "41.08mm" },
      ],
      help: "Several strips of one sheet, bent alike: same fingers, same swing, same way of the grain.",
    },
  },
  outputs: {
    deduction: {
      kind: "quantity",
      label: "Bend deduction",
      symbol: "BD",
      quantity: "length",
      fineness: "setting",
      plusMinus: "uncertainty",
    },
    uncertainty: {
      kind: "quantity",
      label: "± (k = 2)",
      symbol: "U",
      quantity: "length",
      fineness: "setting",
      help: "The true mean lies within this in 95 of 100 cases, as far as scatter goes.",
    },
    spread: {
      kind: "quantity",
      label: "Spread",
      symbol: "s",
      quantity: "length",
      fineness: "setting",
      help: "Standard deviation of one piece.",
    },
    allowance: {
      kind: "quantity",
      label: "Bend allowance",
      symbol: "BA",
      quantity: "length",
      fineness: "setting",
      plusMinus: "uncertainty",
    },
    kFactor: { kind: "quantity", label: "K-factor it stands for", symbol: "K", quantity: "ratio" },
    count: { kind: "quantity", label: "Pieces", symbol: "n", quantity: "count" },
  },
  main: "deduction",
  formulas: [
    meanDeductionFormula,
    spreadFormula,
    meanUncertaintyFormula,
    apexSetbackFormula,
    tangentSetbackFormula,
    allowanceFromDeductionFormula,
    kFromAllowanceFormula,
  ],
  validity: [
    "Holds for this sheet, radius, angle, tooling and brake only.",
    "The ± holds the scatter of the pieces. An error they all share, such as a caliper that reads wrong, is not in it.",
  ],
  cautions: ["sharp-edges", "pinch-points", "defer-to-manual"],
  sources: ["practice-pieces", "jcgm-100", "iso-5725-2", "faa-ac-43-13-1b", "din-6935"],

  compute(values) {
    const { thickness, radius, angle, pieces } = values;
    const bend = { angle, radius, thickness };
    const legTo = values.legTo ?? symbols.usualLegEnd(angle);
    const sb = setback({ ...bend, legTo });

    pieces.forEach((piece, index) => {
      for (const key of ["legA", "legB"] as const)
        if (piece[key] < sb)
          throw new InputError(
            `pieces.${index}.${key}`,
            piece[key],
            say`${key === "legA" ? "Leg A" : "Leg B"} of piece ${index + 1} must be at least ${atLeast(sb)}, the part of it that lies in the bend; it is ${exactly(piece[key], "length")}.`,
          );
      const least = piece.legA + piece.legB - 2 * sb;
      if (!(piece.flat > least))
        throw new InputError(
          `pieces.${index}.flat`,
          piece.flat,
          say`Flat length of piece ${index + 1} must be above ${atLeast(least)}, the straight parts of its legs, or nothing is left for the bend; it is ${exactly(piece.flat, "length")}.`,
        );
    });

    const deductions = pieces.map(({ flat, legA, legB }) => legA + legB - flat);
    const deduction = mean(deductions);
    const known = pieces.length > 1;
    const spread = known ? sampleDeviation(deductions) : null;
    const uncertainty = spread === null ? null : meanUncertainty({ spread, count: pieces.length });
    const allowance = 2 * sb - deduction;
    const kFactor = kFromAllowance({ allowance, ...bend });

    const remarks: Remark[] = [];
    if (uncertainty === null || spread === null)
      remarks.push({
        level: "caution",
        field: "pieces",
        phrase: say`One piece shows nothing of the scatter, so no ± can be given. Bend at least three, better ${enoughPieces}.`,
        source: "jcgm-100",
      });
    else {
      const t = coverageFactor(pieces.length);
      if (pieces.length < enoughPieces)
        remarks.push({
          level: "caution",
          field: "pieces",
          phrase: say`With ${pieces.length} pieces the ± is ${t.toFixed(1)} standard deviations of the mean, where many pieces need 2. Bend ${enoughPieces} or more.`,
          source: "jcgm-100",
        });
      if (uncertainty > 0) {
        const more = countToHalve(pieces.length) - pieces.length;
        remarks.push({
          level: "note",
          phrase: say`${more} more ${more === 1 ? "piece" : "pieces"} would halve the ±, if they scatter alike. One single next bend falls within ± ${mm(t * spread * Math.sqrt(1 + 1 / pieces.length))} of the mean.`,
          source: "jcgm-100",
        });
        const perDegree = uncertainty / ((Math.PI / 180) * angle * thickness);
        remarks.push({
          level: "note",
          phrase: say`The K-factor is known to ± ${perDegree.toFixed(2)}: a small ± of the deduction is a large one of K, so carry the deduction, not K.`,
        });
      } else
        remarks.push({
          level: "caution",
          field: "pieces",
          phrase: say`All pieces agree to the last digit. That says more about the reading of the caliper than about the bends: the ± is not really nothing.`,
        });
    }
    const apart = outlier(deductions);
    if (apart)
      remarks.push({
        level: "caution",
        field: "pieces",
        phrase: say`Piece ${apart.index + 1} stands apart from the others (${apart.distance.toFixed(2)} standard deviations from the mean, doubtful beyond ${apart.limit.toFixed(2)}). Measure it again; leave it out only if you find what went wrong with it.`,
        source: "iso-5725-2",
      });
    if (kFactor < 0 || kFactor > 1)
      remarks.push({
        level: "caution",
        phrase: say`This stands for a neutral line outside the sheet (K = ${kFactor.toFixed(2)}). Check the radius, the thickness and what the legs were measured to.`,
      });

    const squares = deductions.reduce((total, each) => total + (each - deduction) ** 2, 0);
    const legs = pieces.reduce((total, { legA, legB }) => total + legA + legB, 0);
    const flats = pieces.reduce((total, { flat }) => total + flat, 0);
    const working: Step[] = [
      { formula: meanDeductionFormula, values: { legs, flats, count: pieces.length, deduction } },
      ...(spread === null || uncertainty === null
        ? []
        : [
            { formula: spreadFormula, values: { squares, count: pieces.length, spread } },
            {
              formula: meanUncertaintyFormula,
              values: { student: coverageFactor(pieces.length), spread, count: pieces.length, uncertainty },
            },
          ]),
      { formula: legTo === "apex" ? apexSetbackFormula : tangentSetbackFormula, values: { ...bend, setback: sb } },
      { formula: allowanceFromDeductionFormula, values: { setback: sb, deduction, allowance } },
      { formula: kFromAllowanceFormula, values: { ...bend, allowance, kFactor } },
    ];

    const each: AnswerTable = {
      caption: "The pieces",
      columns: [
        { label: "Piece" },
        { label: "Bend deduction", quantity: "length", fineness: "setting" },
        { label: "From the mean", quantity: "length", fineness: "setting" },
      ],
      rows: deductions.map((value, index) => ({
        cells: [String(index + 1), value, value - deduction],
        ...(apart?.index === index ? { note: "stands apart" } : {}),
      })),
    };
    const comparison: AnswerTable = {
      caption: "Measured here, beside what each published method says",
      columns: [
        { label: "Method" },
        { label: "Bend deduction", quantity: "length", fineness: "setting" },
        { label: "From the measured one", quantity: "length", fineness: "setting" },
      ],
      rows: [
        { cells: ["Measured with these pieces", deduction, 0], chosen: true, source: "practice-pieces" },
        ...publishedAllowances(bend).map((published) => {
          if (typeof published.allowance !== "number")
            return { cells: [published.name, null, null], note: published.allowance, source: published.source };
          const off = bendDeduction({ setback: sb, allowance: published.allowance });
          const inside = uncertainty !== null && Math.abs(off - deduction) <= uncertainty;
          return {
            cells: [published.name, off, off - deduction],
            source: published.source,
            ...(inside ? { note: "within the ±" } : {}),
          };
        }),
      ],
    };

    return {
      outputs: { deduction, spread, uncertainty, allowance, kFactor, count: pieces.length },
      remarks,
      working,
      tables: [each, comparison],
      sources: ["practice-pieces", "jcgm-100", legTo === "apex" ? "faa-ac-43-13-1b" : "din-6935"],
    };
  },

  handoffs(values, { outputs: { deduction, uncertainty, count: pieces } }) {
    if (deduction === null) return [];
    const bend = {
      thickness: typed(values.thickness, "mm"),
      radius: typed(values.radius, "mm"),
      angle: typed(values.angle, "deg"),
      legTo: values.legTo ?? symbols.usualLegEnd(values.angle),
      deduction: typed(deduction, "mm"),
    };
    return [
      { to: "bend-length", label: "Use this deduction for a blank", raw: { ...bend, method: "measured" } },
      {
        to: "plan",
        label: "Use it in the plan of a part",
        raw: {
          bendData: "measured",
          measuredDeduction: bend.deduction,
          ...(uncertainty === null ? {} : { measuredUncertainty: typed(uncertainty, "mm") }),
          measuredPieces: String(pieces),
          measuredThickness: bend.thickness,
          measuredRadius: bend.radius,
          measuredAngle: bend.angle,
          measuredLegTo: bend.legTo,
        },
      },
    ];
  },
});
