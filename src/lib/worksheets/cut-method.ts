import { type CutMethod, chooseCut, cutMethods, cutReasons } from "../cutting/cut-choice.ts";
import { cutLength, sheet } from "../cutting/symbols.ts";
import { mm, say } from "../quantity/phrase.ts";
import { materialInput, materialWith, propertyInputs } from "../stock/material.ts";
import { type Handoff, type Remark, worksheet } from "../worksheet.ts";
import { propertyRemark } from "./parts/property-band.ts";
import { typedLength } from "./parts/typed-length.ts";

const methods = { ...cutMethods, none: "none of the tools here" } as const;
const length = { quantity: "length", fineness: "setting" } as const;

/** What to mind with the one chosen. */
const advice: Readonly<Record<keyof typeof methods, string>> = {
  shear: "Cut to a scribed line, to the back stop or to the scale; the hold-downs must grip the piece.",
  notcher: "Set both guides to the corner and cut it in one stroke. A cut that is not a corner needs snips or the saw.",
  snips: "Cut a little beside the line and file to it; straight, left and right pairs each have their curve.",
  "band-saw": "Saw beside the line and file to it. A cut inside a sheet needs a hole first.",
  none: "Cut it where the tools are heavier, or change the part: thinner sheet, a wider curve, a cut that begins at an edge.",
};

export default worksheet({
  id: "cut-method",
  title: "What to cut it with",
  summary: "Shear, corner cutter, snips or band saw: which of this shop’s tools suits a cut, and why the others do not.",
  page: "/cutting/",
  inputs: {
    material: materialInput,
    thickness: { ...sheet, kind: "quantity", default: "1.2mm", help: "Measured, not the nominal gauge." },
    cutLength: { ...cutLength, kind: "quantity", default: "300mm" },
    curveRadius: {
      ...length,
      kind: "quantity",
      label: "Radius of the curve",
      symbol: "r",
      min: 0,
      max: 5000,
      default: "0mm",
      help: "0 for a straight cut; the tightest radius of a curved one.",
    },
    throughCut: {
      kind: "choice",
      label: "From edge to edge",
      choices: { yes: "yes, right across", no: "no, it ends inside the sheet" },
      default: "yes",
      help: "A corner or a notch ends inside the sheet.",
    },
    ...propertyInputs,
  },
  outputs: {
    method: { kind: "choice", label: "Cut it with", choices: methods },
    reasons: {
      kind: "list",
      label: "Why, for each tool",
      help: "In the order they would be taken.",
      columns: {
        method: { kind: "choice", label: "Tool", choices: cutMethods },
        verdict: {
          kind: "choice",
          label: "Suits",
          choices: { best: "take this", yes: "would do", "with-care": "with care", no: "no" },
        },
        reason: { kind: "text", label: "Why" },
        here: { ...length, kind: "quantity", label: "Here" },
        limit: { ...length, kind: "quantity", label: "Limit" },
      },
    },
  },
  main: "method",
  formulas: [],
  validity: [
    "Looks at this shop’s machines as its file lists them. Their plates rate one metal; they are carried over to yours by force alone.",
    "Snips up to 1/16 in is a published limit for sheet and for aluminium; for stronger metals it is lowered here by the same rule, which no source gives.",
    "Which of several tools to take is common practice: the cleanest edge in the least time.",
  ],
  cautions: ["shear-blades", "corner-cutter", "snips-habits", "band-saw", "sharp-edges", "defer-to-manual"],
  sources: [
    "this-shop",
    "army-od0017",
    "faa-hand-cutting-tools",
    "faa-shop-tools",
    "navedtra-14119-sawing",
    "navedtra-14043",
    "shear-equilibrium",
    "common-practice",
  ],

  compute(values, catalogue) {
    const { thickness, cutLength: cut, curveRadius } = values;
    const { shear, cornerCutter, bandSaw } = catalogue.shop;
    const material = materialWith(catalogue, values.material, values);
    const strengthOf = (id: keyof typeof catalogue.materials) => catalogue.materials[id].shearStrength.value;
    const { method, findings } = chooseCut(
      {
        thickness,
        shearStrength: material.shearStrength.value,
        length: cut,
        curveRadius,
        through: values.throughCut === "yes",
      },
      {
        shear: {
          thickness: shear.rating.thickness,
          strength: strengthOf(shear.rating.material),
          length: Math.min(shear.cuttingLength, shear.rating.length),
        },
        notcher: {
          thickness: cornerCutter.rating.thickness,
          strength: strengthOf(cornerCutter.rating.material),
          side: cornerCutter.largestSide,
        },
        snips: { strength: strengthOf("steel-cr") },
        bandSaw: {
          throat: bandSaw.throat,
          finestTeeth: Math.max(...bandSaw.bands.map(({ teeth }) => teeth)),
          narrowestBand: Math.min(...bandSaw.bands.map(({ width }) => width)),
        },
      },
    );
    const chosen = method ?? "none";
    const refused = (each: CutMethod) => findings.some((finding) => finding.method === each && finding.fits === "no");

    const remarks: Remark[] = [{ level: method ? "note" : "caution", phrase: say`${advice[chosen]}` }];
    if (method === "shear")
      remarks.push({
        level: "note",
        phrase: say`The hold-downs of ${shear.name} grip pieces from ${mm(shear.shortestPiece)}. A narrower strip is cut off a larger piece, so that the large one is held.`,
        source: "this-shop",
      });
    if (curveRadius > 0 && !refused("band-saw"))
      remarks.push({
        level: "note",
        field: "curveRadius",
        phrase: say`The curve a band follows, eight times its width, is a rule for wood saws; in metal try it on scrap.`,
        source: "navedtra-14043",
      });
    remarks.push(propertyRemark("Shear strength", "stress", material.shearStrength));

    return {
      outputs: {
        method: chosen,
        reasons: findings.map((finding) => ({
          method: finding.method,
          verdict: finding.method === method && finding.fits === "yes" ? "best" : finding.fits,
          reason: cutReasons[finding.reason],
          here: finding.value ?? null,
          limit: finding.limit ?? null,
        })),
      },
      remarks,
      working: [],
      sources: ["this-shop", "army-od0017", "faa-hand-cutting-tools", "navedtra-14119-sawing", "shear-equilibrium"],
    };
  },

  handoffs(values, { outputs: { method } }): readonly Handoff[] {
    const piece = { material: values.material, thickness: typedLength(values.thickness) };
    if (method === "shear")
      return [
        { to: "shear-load", label: "Force and blade gap for this cut", raw: { ...piece, length: typedLength(values.cutLength) } },
      ];
    if (method === "band-saw") return [{ to: "saw-blade", label: "Band and speed for this sheet", raw: piece }];
    if (method === "notcher")
      return [{ to: "corner-cut", label: "Set the guides for a corner", raw: { thickness: piece.thickness } }];
    return [];
  },
});
