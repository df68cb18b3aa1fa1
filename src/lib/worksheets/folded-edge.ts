import {
  closedEdgeFormula,
  doubleEdgeFormula,
  edgeAllowance,
  edgeGap,
  edgeSteps,
  edgeWidth,
  foldedEdge,
  foldedEdgeMiddleLine,
  roundEdgeFormula,
  teardropAngleFormula,
} from "../bending/folded-edge.ts";
import * as symbols from "../bending/symbols.ts";
import { amount, mm, say } from "../quantity/phrase.ts";
import { type AnswerTable, type Remark, type Step, worksheet } from "../worksheet.ts";

export default worksheet({
  id: "folded-edge",
  title: "Folded edge",
  summary: "What a folded edge adds to the flat, where its folds are scribed, and how they are made.",
  page: "/bending/folded-edges/",
  inputs: {
    kind: { kind: "choice", label: "Kind of edge", choices: symbols.foldedEdgeKinds, default: "closed" },
    thickness: { ...symbols.thickness, kind: "quantity", default: "0.8mm", help: "Measured, not the nominal gauge." },
    width: {
      ...edgeWidth,
      kind: "quantity",
      default: "10mm",
      help: "Finished, from the outermost point of the fold to the end of the folded part; teardrop: to where it touches.",
    },
    gap: {
      ...edgeGap,
      kind: "quantity",
      default: "2mm",
      help: "Open: clear height between the faces. Teardrop: inside width of the loop.",
    },
  },
  outputs: {
    allowance: {
      ...edgeAllowance,
      kind: "quantity",
      label: "Add to the finished size",
      help: "The finished size runs to the outermost point of the fold.",
    },
    turns: {
      kind: "list",
      label: "Steps",
      columns: {
        turn: { kind: "quantity", label: "Fold", quantity: "count" },
        how: { kind: "choice", label: "How", choices: { swing: "swing", "press flat": "press flat" } },
        angle: { kind: "quantity", label: "To", quantity: "angle", help: "Turned through from flat after this step." },
        radius: { kind: "quantity", label: "Inside radius", quantity: "length", fineness: "setting", help: "When finished." },
        line: {
          kind: "quantity",
          label: "Middle of the fold from the raw edge",
          quantity: "length",
          fineness: "setting",
          help: "On the flat.",
        },
      },
    },
  },
  main: "allowance",
  shownWhen: { gap: (raw) => raw.kind === "open" || raw.kind === "teardrop" },
  formulas: [closedEdgeFormula, doubleEdgeFormula, teardropAngleFormula, roundEdgeFormula],
  validity: [
    "Closed and double: a published rule for light sheet that leaves the thickness out.",
    "Open and teardrop: worked out along the middle of the thickness, not printed in any source we know.",
    "Only for metal that takes so sharp a fold; see the smallest bend radius.",
  ],
  cautions: ["pinch-points", "sharp-edges", "cracked-bend", "defer-to-manual"],
  sources: ["navedtra-14251", "geometry", "common-practice"],

  compute(values, catalogue) {
    const { kind, thickness, width, gap } = values;
    const edge = foldedEdge(values);
    const { allowance } = edge;
    const { brake } = catalogue.shop;
    const turns = edgeSteps(edge.turns, brake.largestSwing);
    const byRule = kind === "closed" || kind === "double";

    const remarks: Remark[] = [];
    if (byRule) {
      const middle = foldedEdgeMiddleLine({ kind, thickness, width });
      remarks.push({
        level: "caution",
        phrase: say`The rule and the geometry of the fold differ by ${mm(allowance - middle)}. Fold a practice piece of this sheet and measure before you cut the part.`,
      });
    } else
      remarks.push({
        level: "note",
        phrase: say`Worked out with the neutral line at mid-thickness. Fold a practice piece before you cut the part.`,
      });
    if (kind === "double")
      remarks.push({
        level: "caution",
        phrase: say`Folded on these lines, the first flap is a little too long to lie inside the second fold. Scribe its line about ${mm(1.5 * thickness)} nearer the raw edge and cut that much off.`,
        source: "geometry",
      });
    if (kind === "open")
      remarks.push({ level: "note", phrase: say`Press it onto a strip ${mm(gap)} thick laid inside, and draw the strip out.` });
    if (kind === "teardrop")
      remarks.push({ level: "note", phrase: say`Close it round a rod or wire of ${mm(gap)} diameter to keep the loop round.` });
    if (width < brake.shortestLeg)
      remarks.push({
        level: "caution",
        field: "width",
        phrase: say`${brake.name} turns up legs from ${mm(brake.shortestLeg)}; this edge is ${mm(width)} wide.`,
      });
    if (turns.some((turn) => turn.how === "press flat"))
      remarks.push({
        level: "note",
        phrase: say`${brake.name} swings to ${amount(brake.largestSwing, "angle")}; the rest is pressed under the clamp or closed by hand.`,
      });

    const angle = edge.turns[0]?.angle ?? 180;
    const round = { width, gap, thickness, angle, allowance };
    const working: Step[] =
      kind === "closed"
        ? [{ formula: closedEdgeFormula, values: { width, allowance } }]
        : kind === "double"
          ? [{ formula: doubleEdgeFormula, values: { width, allowance } }]
          : kind === "teardrop"
            ? [
                { formula: teardropAngleFormula, values: { gap, width, thickness, angle } },
                { formula: roundEdgeFormula, values: round },
              ]
            : [{ formula: roundEdgeFormula, values: round }];

    const comparison: AnswerTable = {
      caption: "Rule and geometry",
      columns: [
        { label: "Edge" },
        { label: "Add by the rule", quantity: "length", fineness: "setting" },
        { label: "Along the middle of the thickness", quantity: "length", fineness: "setting" },
        { label: "Rule adds more by", quantity: "length", fineness: "setting" },
      ],
      rows: (["closed", "double"] as const).map((each) => {
        const rule = foldedEdge({ kind: each, thickness, width, gap }).allowance;
        const middle = foldedEdgeMiddleLine({ kind: each, thickness, width });
        return {
          cells: [symbols.foldedEdgeKinds[each], rule, middle, rule - middle],
          chosen: each === kind,
          source: "navedtra-14251",
        };
      }),
    };

    return {
      outputs: { allowance, turns },
      remarks,
      working,
      tables: byRule ? [comparison] : [],
      sources: [byRule ? "navedtra-14251" : "geometry"],
    };
  },
});
