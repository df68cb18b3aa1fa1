import {
  groovedMiddleLine,
  leastHook,
  pittsburghLock,
  type Seam,
  type SeamKind,
  seamAllowance,
  seamFormula,
  seamKinds,
  seamSideFormulas,
  seamThickness,
  seamWidth,
  thickestFold,
} from "../joining/seams.ts";
import { mm, say } from "../quantity/phrase.ts";
import { type AnswerTable, type Remark, type Step, worksheet } from "../worksheet.ts";

const sourceOf: Readonly<Record<SeamKind, string>> = {
  lap: "geometry",
  grooved: "lock-seam-page",
  standing: "copper-roofings",
};

/** A roofing specification turns one edge up by this for a seam of about 25 mm [mm]. Source: UFGS 07600 (read). */
const specified = { turnUp: 45, height: 25 } as const;

function kindsTable(chosen: SeamKind, width: number): AnswerTable {
  const row = (kind: SeamKind, seam: Seam) => ({
    cells: [seamKinds[kind], seam.allowance, seam.sideA, seam.sideB],
    chosen: kind === chosen,
    source: sourceOf[kind],
  });
  const lock = pittsburghLock(width);
  return {
    caption: "Seams of this width",
    columns: [
      { label: "Seam" },
      { label: "Add in all", quantity: "length", fineness: "setting" },
      { label: "Side A", quantity: "length", fineness: "setting" },
      { label: "Side B", quantity: "length", fineness: "setting" },
    ],
    rows: [
      ...(Object.keys(seamKinds) as SeamKind[]).map((kind) => row(kind, seamAllowance({ kind, width }))),
      {
        cells: ["Pittsburgh lock: pocket and flange at a corner", lock.pocket + lock.flange, lock.pocket, lock.flange],
        source: "navedtra-14250",
        note: "from memory",
      },
    ],
  };
}

function seamRemarks(kind: SeamKind, width: number, thickness: number): Remark[] {
  const folded = kind !== "lap";
  const remarks: Remark[] = [];
  if (folded && thickness > thickestFold)
    remarks.push({
      level: "caution",
      field: "thickness",
      phrase: say`Seams are folded by hand in sheet up to about ${mm(thickestFold)}; this is ${mm(thickness)}. Lap it and rivet it.`,
      source: "common-practice",
    });
  if (folded && width < leastHook * thickness)
    remarks.push({
      level: "caution",
      field: "width",
      phrase: say`Hooks narrower than ${mm(leastHook * thickness)} (four thicknesses) can hardly be folded in this sheet.`,
      source: "common-practice",
    });
  if (kind === "lap")
    remarks.push({
      level: "note",
      phrase: say`All of it is on one edge, which goes under or over the other. Split it in halves when the joint must come to the middle of the lap. One row of rivets takes four rivet diameters.`,
    });
  if (kind === "grooved") {
    const tight = groovedMiddleLine({ width, thickness });
    remarks.push(
      {
        level: "note",
        phrase: say`The rule leaves the thickness out. Hooks that fill each other would take ${mm(tight)} by the middle of the sheet; setting the seam down takes a little back. Make a trial seam of scraps and measure.`,
        source: "geometry",
      },
      {
        level: "note",
        phrase: say`Four layers lie in the seam, ${mm(4 * thickness)} in all. Fold the two hooks to opposite sides: one up, one down. Notch the corners of the flat so that only two layers meet an edge that is folded later.`,
        source: "common-practice",
      },
    );
  }
  if (kind === "standing")
    remarks.push(
      {
        level: "caution",
        field: "width",
        phrase: say`Read out of two seams in a manual of copper roofing, one of 3/4 in and one that fits 1 in. Fold a trial seam before you trust it, most of all at another height.`,
        source: "copper-roofings",
      },
      {
        level: "note",
        phrase: say`Another specification turns one edge up ${mm(specified.turnUp)} for about ${mm(specified.height)} finished; this rule would turn side A up ${mm(seamAllowance({ kind, width: specified.height }).sideA)}.`,
        source: "ufgs-07600",
      },
    );
  return remarks;
}

export default worksheet({
  id: "seam-allowance",
  title: "Seam allowance",
  summary: "What a lap, grooved or standing seam adds to the flat, and how much of it goes on each edge.",
  page: "/joining/seams/",
  inputs: {
    kind: { kind: "choice", label: "Seam", choices: seamKinds, default: "grooved" },
    width: {
      ...seamWidth,
      kind: "quantity",
      default: "6mm",
      help: "Finished. Of a standing seam: its height. Of a lap: how far one sheet lies over the other.",
    },
    thickness: { ...seamThickness, kind: "quantity", default: "0.6mm", help: "Measured, not the nominal gauge." },
  },
  outputs: {
    allowance: {
      kind: "quantity",
      label: "Add in all",
      symbol: "S",
      quantity: "length",
      fineness: "setting",
      help: "To the flat size without a seam.",
    },
    sideA: { kind: "quantity", label: "Side A", symbol: "A", quantity: "length", fineness: "setting" },
    sideB: { kind: "quantity", label: "Side B", symbol: "B", quantity: "length", fineness: "setting" },
  },
  main: "allowance",
  formulas: [...Object.values(seamSideFormulas).flat(), seamFormula],
  validity: [
    "Rules of the trade for light sheet; they leave the thickness out.",
    "Only for metal that folds flat on itself without cracking: soft steel, soft aluminium, copper. See the smallest bend radius.",
  ],
  cautions: ["sharp-edges", "pinch-points", "eyes", "cracked-bend", "defer-to-manual"],
  sources: ["lock-seam-page", "copper-roofings", "ufgs-07600", "navedtra-14250", "geometry", "common-practice"],

  compute({ kind, width, thickness }) {
    const seam = seamAllowance({ kind, width });
    const working: Step[] = [
      ...seamSideFormulas[kind].map((formula) => ({ formula, values: { width, ...seam } })),
      { formula: seamFormula, values: { ...seam } },
    ];
    return {
      outputs: { ...seam },
      remarks: seamRemarks(kind, width, thickness),
      working,
      tables: [kindsTable(kind, width)],
      sources: [sourceOf[kind]],
    };
  },
});
