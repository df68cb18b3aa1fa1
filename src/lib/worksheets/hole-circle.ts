import {
  centreX,
  centreY,
  chord,
  chordFormula,
  circleDiameter,
  holeAngleFormula,
  holeCircle,
  holeCount,
  holeXFormula,
  holeYFormula,
  startAngle,
} from "../marking/hole-circle.ts";
import { mm, say } from "../quantity/phrase.ts";
import { type AnswerTable, type Remark, type Step, worksheet } from "../worksheet.ts";

const length = { quantity: "length", fineness: "setting" } as const;

/** How well dividers are set to a scale [mm]; common practice, half a division of a steel rule. */
const dividerSetting = 0.25;

/** The hole count that the published list of chords prints wrongly, and what it prints. */
const misprint = { count: 15, printed: "0.2070", right: "0.2079" } as const;

export default worksheet({
  id: "hole-circle",
  title: "Hole circle",
  summary: "Where the centres of evenly spaced holes lie, and what to set the dividers to.",
  page: "/marking/hole-circles/",
  inputs: {
    diameter: { ...circleDiameter, kind: "quantity", default: "70mm", help: "Of the circle through the centres of the holes." },
    count: { ...holeCount, kind: "quantity", default: "8" },
    startAngle: {
      ...startAngle,
      kind: "quantity",
      default: "0deg",
      help: "0° points to the right, 90° upwards; the other holes follow anticlockwise.",
    },
    centreX: { ...centreX, kind: "quantity", default: "50mm", help: "From the left datum edge to the centre of the circle." },
    centreY: { ...centreY, kind: "quantity", default: "50mm", help: "From the lower datum edge to the centre of the circle." },
  },
  outputs: {
    holes: {
      kind: "list",
      label: "Centres of the holes",
      help: "From the two datum edges, anticlockwise from the first hole.",
      columns: {
        x: { ...length, kind: "quantity", label: "From the left edge", symbol: "x" },
        y: { ...length, kind: "quantity", label: "From the lower edge", symbol: "y" },
      },
    },
    chord: {
      ...length,
      kind: "quantity",
      label: "Chord",
      symbol: "c",
      help: "Straight from one centre to the next: to set dividers, and to check.",
    },
  },
  main: "chord",
  formulas: [chordFormula, holeAngleFormula, holeXFormula, holeYFormula],
  validity: [
    "Evenly spaced holes on one circle; geometry alone, so exact.",
    "Whether the holes stand too close to each other, to an edge or to a bend is another question: see the place of a hole.",
  ],
  cautions: ["scriber-points", "centre-punch", "eyes"],
  sources: ["hole-circle-note", "chordal-spacing-note", "geometry"],

  compute(values) {
    const { diameter, count, centreX: x0, centreY: y0 } = values;
    const found = holeCircle(values);
    const between = chord({ diameter, count });

    const remarks: Remark[] = [
      {
        level: "caution",
        field: "count",
        phrase: say`Stepping round with dividers adds up: set ${mm(dividerSetting)} too wide, they leave the last space ${mm((count - 1) * dividerSetting)} too narrow. Scribe each centre from the two edges, and use the chord to check.`,
        source: "geometry",
      },
    ];
    if (Math.min(...found.map(({ x, y }) => Math.min(x, y))) < 0)
      remarks.push({
        level: "note",
        field: x0 < y0 ? "centreX" : "centreY",
        phrase: say`Some centres are negative: they lie outside the datum edges, or the centre is your datum. To scribe from an edge, enter how far the centre is from it.`,
      });
    if (count === misprint.count)
      remarks.push({
        level: "note",
        field: "count",
        phrase: say`A published list prints ${misprint.printed} times the diameter for ${misprint.count} holes; the sine of 12° is ${misprint.right}. The chord here is right.`,
        source: "chordal-spacing-note",
      });

    const second = found[1] as (typeof found)[number];
    const angle = values.startAngle + 360 / count;
    const working: Step[] = [
      { formula: chordFormula, values: { diameter, count, chord: between } },
      { formula: holeAngleFormula, values: { start: values.startAngle, hole: 2, count, angle } },
      { formula: holeXFormula, values: { centreX: x0, diameter, angle, x: second.x } },
      { formula: holeYFormula, values: { centreY: y0, diameter, angle, y: second.y } },
    ];

    const angles: AnswerTable = {
      caption: "Angles, and distances from the first hole to check with",
      columns: [
        { label: "Hole", quantity: "count" },
        { label: "Angle", quantity: "angle" },
        { label: "From hole 1", ...length },
      ],
      rows: found.map((hole, index) => ({ cells: [index + 1, hole.angle, chord({ diameter, count }, index)] })),
    };

    return {
      outputs: { holes: found.map(({ x, y }) => ({ x, y })), chord: between },
      remarks,
      working,
      tables: [angles],
      sources: ["hole-circle-note", "chordal-spacing-note"],
    };
  },
});
