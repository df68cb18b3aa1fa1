import { boxWidth, fingerGap, fingerSet, fingerWidth, mostFingers } from "../bending/finger-set.ts";
import type { Formula } from "../formula.ts";
import { mm, say } from "../quantity/phrase.ts";
import { type AnswerTable, type Remark, worksheet } from "../worksheet.ts";

const length = { quantity: "length", fineness: "setting" } as const;

const clearanceFormula: Formula = {
  id: "finger-clearance",
  name: "Clearance left",
  result: "clearance",
  expression: String.raw`\v{boxWidth} - \v{total}`,
  symbols: {
    boxWidth,
    total: { ...length, label: "Fingers together", symbol: "Σ w", tex: String.raw`\textstyle\sum w` },
    clearance: { ...length, label: "Clearance left", symbol: "g", tex: "g" },
  },
};

/** Clearance beyond the one wanted from which the corners of the bend are worth a word [mm]; common practice. */
const wideGap = 5;

export default worksheet({
  id: "finger-set",
  title: "Fingers for a box",
  summary: "Which fingers of the brake fill the inside of a box best, so that the sides already bent up fit beside them.",
  page: "/bending/order/",
  inputs: {
    boxWidth: {
      ...boxWidth,
      kind: "quantity",
      default: "204mm",
      help: "Between the inside faces of the two sides that are already bent up.",
    },
    gap: {
      ...fingerGap,
      kind: "quantity",
      default: "2mm",
      help: "Left free in all, both ends together, so that the box can be taken off.",
    },
    fingers: {
      kind: "list",
      label: "Fingers there are",
      help: "One entry a finger. Left empty, the fingers of this shop’s brake.",
      plain: true,
      rowName: "fingers",
      columns: { finger: { ...fingerWidth, kind: "quantity" } },
      minRows: 0,
      maxRows: mostFingers,
      default: [],
    },
  },
  outputs: {
    total: { ...length, kind: "quantity", label: "Fingers together" },
    chosen: {
      kind: "list",
      label: "Take",
      help: "In any order along the nose; the widest in the middle is handy.",
      plain: true,
      columns: { finger: { ...length, kind: "quantity", label: "Finger" } },
    },
    clearance: {
      ...length,
      kind: "quantity",
      label: "Clearance left",
      help: "Both ends together. Push the fingers close and centre them.",
    },
  },
  main: "total",
  formulas: [clearanceFormula],
  validity: [
    "Every set of the fingers listed is tried: none fills the width better and leaves the clearance wanted.",
    "Counts widths only. Whether the sides clear the fingers and the clamp in height is a question of the box’s depth.",
  ],
  cautions: ["loose-fingers", "pinch-points", "stored-energy", "defer-to-manual"],
  sources: ["faa-h-8083-31-box", "common-practice"],

  compute(values, catalogue) {
    const { boxWidth: width, gap } = values;
    const { brake } = catalogue.shop;
    const ownList = values.fingers.length > 0;
    const fingers = ownList ? values.fingers : brake.fingers;
    const { chosen, total, clearance } = fingerSet({ boxWidth: width, fingers, gap });

    const remarks: Remark[] = [];
    if (chosen.length === fingers.length && clearance - gap > wideGap)
      remarks.push({
        level: "caution",
        field: "boxWidth",
        phrase: say`All the fingers together are only ${mm(total)}. ${mm(clearance)} of the bend would have no finger above it: make the box narrower, or bend this side before the others.`,
      });
    else if (clearance - gap > wideGap)
      remarks.push({
        level: "caution",
        field: "boxWidth",
        phrase: say`${mm(clearance)} stay open, which is ${mm(clearance - gap)} more than wanted. The corners of the bend may bow there; change the width a little, or put the open part in the middle, between two fingers.`,
        source: "common-practice",
      });
    if (gap === 0)
      remarks.push({
        level: "caution",
        field: "gap",
        phrase: say`With no clearance at all the box sticks on the fingers. A millimetre or two in all is usual.`,
        source: "common-practice",
      });
    remarks.push({
      level: "note",
      phrase: say`Bend two opposite sides first, then set these fingers so that those sides rise beside them.`,
      source: "faa-h-8083-31-box",
    });
    if (!ownList)
      remarks.push({
        level: "note",
        phrase: say`From the ${fingers.length} fingers of ${brake.name}. Its fingers are ${mm(brake.fingerHeight)} high: sides up to about that height clear the clamp.`,
      });

    const rest = [...chosen];
    const rack = [...fingers]
      .sort((a, b) => b - a)
      .map((finger) => {
        const at = rest.indexOf(finger);
        if (at >= 0) rest.splice(at, 1);
        return { finger, used: at >= 0 };
      });
    const list: AnswerTable = {
      caption: "On the brake and on the rack",
      columns: [{ label: "Finger", ...length }, { label: "Where" }],
      rows: rack.map(({ finger, used }) => ({ cells: [finger, used ? "on the brake" : "on the rack"], chosen: used })),
    };

    return {
      outputs: { total, chosen, clearance },
      remarks,
      working: [{ formula: clearanceFormula, values: { boxWidth: width, total, clearance } }],
      tables: [list],
      sources: ["faa-h-8083-31-box"],
    };
  },
});
