import type { Shear } from "../catalogue.ts";
import type { Formula } from "../formula.ts";
import { mm, say } from "../quantity/phrase.ts";
import type { Part, ShearCut } from "../sheet/cut-order.ts";
import { cutPlan } from "../sheet/cut-plan.ts";
import { goalField, piecesField, sheetFields } from "../sheet/job-inputs.ts";
import type { SheetJob } from "../sheet/model.ts";
import { shearLimits } from "../sheet/shear-reach.ts";
import { type CutSheets, finish } from "../sheet/sheet-plan.ts";
import { type AnswerTable, type Remark, worksheet } from "../worksheet.ts";

const setting = { quantity: "length", fineness: "setting" } as const;

/** Work of one answer, in sums compared: about a quarter of a second. The page lets a plan take longer. */
const answerWork = 6e7;
/** One table for one sheet may be larger: it is made once. */
const fillWork = 5e7;

const usedShareFormula: Formula = {
  id: "used-share",
  name: "Share of the sheets that becomes pieces",
  result: "used",
  expression: String.raw`\frac{\v{pieces}}{\v{sheets}\, \v{width}\, \v{length}}`,
  symbols: {
    pieces: { label: "Area of all pieces", symbol: "Σ a", tex: String.raw`\textstyle\sum a`, quantity: "area" },
    sheets: { label: "Sheets", symbol: "n", tex: "n", quantity: "count" },
    width: { label: "Width of the sheet", symbol: "W", tex: "W", quantity: "length" },
    length: { label: "Length of the sheet", symbol: "L", tex: "L", quantity: "length" },
    used: { label: "Used", symbol: "η", tex: String.raw`\eta`, quantity: "ratio" },
  },
};

const percent = (share: number) => `${(100 * share).toFixed(1)} %`;
const times = (count: number, one: string, many: string) => `${count} ${count === 1 ? one : many}`;

/** Numbers of the sheets that are cut alike, counted through the whole plan. */
function sheetNumbers(sheets: readonly CutSheets[]): string[] {
  let before = 0;
  return sheets.map(({ times: alike }) => {
    const first = before + 1;
    before += alike;
    return alike === 1 ? String(first) : `${first} to ${before}`;
  });
}

function nameOf({ kind, id, piece }: Part, job: SheetJob): string {
  if (kind === "piece") return job.pieces[piece ?? -1]?.name || `piece ${(piece ?? 0) + 1}`;
  if (kind === "trim") return "trim";
  if (kind === "rest") return `offcut ${id}`;
  return id === "" ? "sheet" : `plate ${id}`;
}

function row(cut: ShearCut, sheet: string, job: SheetJob) {
  const along = (part: Part) => (cut.across === "width" ? part.width : part.length);
  const hints = [
    ...(cut.stop === undefined ? ["cut to a scribed line"] : []),
    ...(cut.faults.includes("longer-than-shear") ? ["longer than the shear"] : []),
    ...(cut.faults.includes("too-small-to-hold") ? ["too short for the hold-downs"] : []),
  ];
  return {
    sheet,
    plate: nameOf(cut.from, job),
    stop: cut.stop ?? null,
    cutLength: cut.cutLength,
    off: nameOf(cut.off, job),
    offSize: along(cut.off),
    held: nameOf(cut.held, job),
    heldSize: along(cut.held),
    hint: hints.join("; "),
  };
}

function shearRemarks(cuts: readonly ShearCut[], shear: Shear): Remark[] {
  const remarks: Remark[] = [];
  const long = cuts.filter(({ faults }) => faults.includes("longer-than-shear"));
  if (long.length > 0)
    remarks.push({
      level: "caution",
      field: "sheetLength",
      phrase: say`${times(long.length, "cut is", "cuts are")} up to ${mm(Math.max(...long.map(({ cutLength }) => cutLength)))} long, and ${shear.name} cuts ${mm(shear.cuttingLength)}. Have the sheet cut down first, or take a saw or a nibbler for these.`,
      source: "this-shop",
    });
  const short = cuts.filter(({ faults }) => faults.includes("too-small-to-hold"));
  if (short.length > 0)
    remarks.push({
      level: "caution",
      field: "pieces",
      phrase: say`${times(short.length, "cut leaves", "cuts leave")} less than the ${mm(shear.shortestPiece)} that the hold-downs of ${shear.name} grip. Never hold such a part by hand: cut it with snips.`,
      source: "this-shop",
    });
  const lines = cuts.filter(({ stop }) => stop === undefined);
  if (lines.length > 0)
    remarks.push({
      level: "note",
      phrase: say`${times(lines.length, "cut goes", "cuts go")} to a scribed line, since the back stop of ${shear.name} only reaches from ${mm(shear.shortestStop)} to ${mm(shear.longestStop)}.`,
      source: "this-shop",
    });
  return remarks;
}

export default worksheet({
  id: "sheet-cuts",
  title: "Blanks out of sheets",
  summary: "How to cut many blanks out of as few sheets as possible with a shear, with every stop setting in order.",
  page: "/sheet/",
  inputs: { ...sheetFields, goal: goalField, pieces: piecesField },
  outputs: {
    sheets: { kind: "quantity", label: "Sheets", quantity: "count" },
    used: {
      kind: "quantity",
      label: "Used",
      symbol: "η",
      quantity: "ratio",
      decimals: 1,
      asPercent: true,
      help: "Area of the pieces over the area of the sheets.",
    },
    bound: {
      kind: "quantity",
      label: "No plan can beat",
      quantity: "ratio",
      help: "Fewest sheets: the number of sheets that any plan needs at least. One sheet: the largest share of it that any plan can use.",
    },
    cuts: {
      kind: "list",
      label: "Cuts, in order",
      columns: {
        sheet: { kind: "text", label: "Sheet" },
        plate: { kind: "text", label: "Put in" },
        stop: { ...setting, kind: "quantity", label: "Stop" },
        cutLength: { ...setting, kind: "quantity", label: "Length of cut" },
        off: { kind: "text", label: "Falls behind" },
        offSize: { ...setting, kind: "quantity", label: "Its size" },
        held: { kind: "text", label: "Stays in your hands" },
        heldSize: { ...setting, kind: "quantity", label: "Its size" },
        hint: { kind: "text", label: "Note" },
      },
    },
  },
  main: "sheets",
  formulas: [usedShareFormula],
  validity: [
    "Cuts go from edge to edge, as a shear makes them, and take nothing away. Leave no room for a saw cut: there is none here.",
    "All sheets have one size. Whether the shear takes their thickness is a question of its own: see the load on the shear.",
  ],
  cautions: ["shear-blades", "shear-treadle", "shear-offcuts", "within-rating", "sharp-edges", "lifting", "defer-to-manual"],
  sources: [
    "gilmore-gomory-1966",
    "beasley-1985",
    "sao-paulo-gcut",
    "farley-1990",
    "fekete-schepers",
    "navedtra-14018-shear",
    "common-practice",
    "this-shop",
  ],

  compute(values, catalogue) {
    const { shear } = catalogue.shop;
    const { sheetWidth, sheetLength, trim, goal } = values;
    const job: SheetJob = {
      sheets: [{ name: "sheet", width: sheetWidth, length: sheetLength }],
      trim,
      pieces: values.pieces.map(({ name, width, length, count, grain }) => ({
        name,
        width,
        length,
        ...(count === undefined ? {} : { count }),
        grain,
      })),
      shear: shearLimits(shear),
    };

    const filled = goal === "fill-one-sheet";
    const plan = finish(cutPlan(job, goal, { work: filled ? fillWork : answerWork }));
    const { sheets, count, used, proved } = plan;
    // Of one sheet the share says more than the area.
    const bound = filled ? plan.bound / (sheetWidth * sheetLength) : plan.bound;
    const best = proved
      ? filled
        ? say`Proved best: no cuts from edge to edge get more area out of one sheet.`
        : say`Proved best: no cuts from edge to edge do with fewer sheets.`
      : filled
        ? say`The best of many tries. No plan can use more than ${percent(bound)} of the sheet, so this one is within ${percent(plan.gap)} of the best.`
        : say`The best of many tries. Every plan needs at least ${times(bound, "sheet", "sheets")}, so this one is within ${percent(plan.gap)} of the bound.`;
    const remarks: Remark[] = [{ level: "note", phrase: best, source: filled ? "gilmore-gomory-1966" : "farley-1990" }];

    const numbers = sheetNumbers(sheets);
    const cuts = sheets.flatMap((each, index) => each.cuts.cuts.map((cut) => row(cut, numbers[index] as string, job)));
    const strokes = sheets.flatMap(({ cuts: each }) => each.cuts);
    remarks.push(...shearRemarks(strokes, shear));
    if (plan.stopSettings > 0)
      remarks.push({
        level: "note",
        phrase: say`The stop is set ${times(plan.stopSettings, "time", "times")}. Large plates are cut first; all cuts at one setting are made before the next.`,
        source: "common-practice",
      });
    if (job.pieces.every(({ grain }) => grain === "free"))
      remarks.push({
        level: "note",
        field: "pieces",
        phrase: say`Pieces may lie either way. If one has a sharp bend, let the rolling direction run across the bend line.`,
      });

    const area = used * count * sheetWidth * sheetLength;
    const tables: AnswerTable[] = [
      {
        caption: "Stop settings, in order",
        columns: [{ label: "Sheet" }, { label: "Stop", ...setting }, { label: "Cuts" }],
        rows: sheets.flatMap(({ cuts: each }, index) =>
          each.settings.map(({ stop, cuts: strokesAt }) => ({
            cells: [numbers[index] as string, stop ?? null, String(strokesAt)],
            ...(stop === undefined ? { note: "to a scribed line" } : {}),
          })),
        ),
      },
      {
        caption: "What is left over",
        columns: [{ label: "Sheet" }, { label: "Width", ...setting }, { label: "Length", ...setting }],
        rows: sheets.flatMap(({ cuts: each }, index) =>
          each.offcuts.map(({ width, length }) => ({ cells: [numbers[index] as string, width, length] })),
        ),
      },
    ];

    return {
      outputs: { sheets: count, used, bound, cuts },
      remarks,
      working: [
        {
          formula: usedShareFormula,
          values: { pieces: area, sheets: count, width: sheetWidth, length: sheetLength, used },
        },
      ],
      tables,
      sources: [
        ...(filled ? ["gilmore-gomory-1966", "beasley-1985"] : ["farley-1990", "fekete-schepers"]),
        "navedtra-14018-shear",
        "this-shop",
      ],
    };
  },
});
