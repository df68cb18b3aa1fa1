import { placeAt, rowsOf, textAt, withTexts } from "../../src/lib/assign/place.ts";
import type { Catalogue } from "../../src/lib/catalogue.ts";
import type { QuantityInput, Raw } from "../../src/lib/inputs.ts";
import { parseQuantity } from "../../src/lib/quantity/parse.ts";
import { runWorksheet } from "../../src/lib/worksheet.ts";
import { type Draw, drawFrom } from "./draw.ts";
import { anyForm, valueInside } from "./forms.ts";
import { startsOf } from "./starts.ts";
import { targets } from "./targets.ts";

/**
 * More of one input, all else alike, never means less of an output (`grows`), or never more of it (`falls`).
 * Each stands on plain mechanics or geometry, or on the source named, not on how it is programmed.
 */
export interface Law {
  readonly sheet: string;
  readonly input: string;
  readonly output: string;
  readonly way: "grows" | "falls";
  readonly because: string;
  /** Inputs that have to be like this for it to hold. */
  readonly given?: Raw;
  /** An output that has to be the same for both: another way of working is another law. */
  readonly alike?: string;
}

type Line = readonly [
  sheet: string,
  inputs: string,
  output: string,
  way: Law["way"],
  because: string,
  given?: Raw,
  alike?: string,
];

const oneLeg = [{ leg: "40mm", angle: "90deg", way: "up" }];
const neutral = { method: "neutral-line" };
/** Trial pieces correct the formula, and by more where they contradict it. */
const untried = { trials: [] };

const lines: readonly Line[] = [
  ["length-reader", "value", "mm inch", "grows", "a longer length is longer in every unit"],
  ["line-position", "count", "lastWorst lastLikely", "grows", "errors handed on from line to line add up"],
  ["hole-circle", "diameter", "chord", "grows", "chord = d sin(180°/n)"],
  ["hole-circle", "count", "chord", "falls", "chord = d sin(180°/n)"],
  ["square-check", "diagonalA", "offset angleError", "grows", "law of cosines at the lower left corner"],
  ["sheet-mass", "thickness width length density", "mass", "grows", "m = W L T ρ, the definition of density"],
  ["sheet-mass", "width length", "area", "grows", "A = W L"],
  ["shear-load", "thickness length shearStrength", "force forceLow forceHigh", "grows", "more metal, or stronger, resists more"],
  ["shear-load", "thickness", "clearance", "grows", "the gap is a share of the thickness, in every handbook"],
  [
    "saw-blade",
    "thickness",
    "teethPerInchMin teethPerInchMax",
    "falls",
    "the same number of teeth in a thicker section",
    {},
    "inclined",
  ],
  ["corner-cut", "sideA", "guideA", "grows", "a longer side needs a longer notch", neutral],
  ["corner-cut", "sideB", "guideB", "grows", "a longer side needs a longer notch", neutral],
  ["punch-load", "thickness shearStrength", "force work", "grows", "F = L T τ, Oberg/Jones and every handbook"],
  ["punch-load", "diameter", "force perimeter", "grows", "L = π d", { shape: "round" }],
  ["punch-load", "width", "force perimeter", "grows", "a longer edge is cut", { shape: "rectangle" }],
  ["die-fit", "thickness", "clearancePerSide dieDiameter", "grows", "clearance is a share of the thickness, in every handbook"],
  ["die-fit", "diameter", "dieDiameter", "grows", "die = punch + 2 clearances"],
  ["hole-place", "thickness", "minEdge minSpacing minBend minDiameter", "grows", "every rule is a multiple of the thickness"],
  ["hole-place", "radius", "minBend", "grows", "the bend reaches further"],
  ["bend-length", "legs.0.leg legs.1.leg", "blank", "grows", "blank = sum of the legs − deductions"],
  ["bend-length", "kFactor", "allowance blank", "grows", "the neutral line lies further out", neutral],
  ["bend-length", "kFactor", "deduction", "falls", "BD = 2 SB − BA", neutral],
  ["bend-length", "radius angle thickness", "allowance", "grows", "BA = A π/180 (R + K T), FAA-H-8083-31", neutral],
  ["bend-length", "radius thickness", "setback", "grows", "SB = K (R + T), FAA-H-8083-31"],
  ["practice-pieces", "pieces.0.legA pieces.0.legB", "deduction", "grows", "BD = leg A + leg B − flat length"],
  ["practice-pieces", "pieces.0.flat", "deduction", "falls", "BD = leg A + leg B − flat length"],
  ["smallest-radius", "thickness", "radius", "grows", "strain at the outer face is T / (2R + T)"],
  ["springback", "yield", "overbend swingAngle", "grows", "Gardiner 1957: springback goes with R Y / (E T)"],
  ["springback", "yield", "toolRadius ratio", "falls", "Gardiner 1957: springback goes with R Y / (E T)"],
  ["springback", "elasticModulus thickness", "overbend swingAngle", "falls", "Gardiner 1957: springback goes with R Y / (E T)"],
  ["springback", "elasticModulus thickness", "ratio toolRadius", "grows", "Gardiner 1957: springback goes with R Y / (E T)"],
  ["springback", "radius", "overbend", "grows", "a gentler bend is the more elastic one: R Y / (E T)"],
  ["springback", "angle", "overbend swingAngle", "grows", "the arc springs back by one share of its angle"],
  ["brake-load", "thickness length yield", "moment capacityUsed", "grows", "fully plastic moment = Y b T²/4, plain mechanics"],
  ["folded-edge", "width", "allowance", "grows", "a wider fold takes more sheet"],
  ["rolled-blank", "diameter arc seam", "blank", "grows", "length of an arc at mid-thickness, and the seam"],
  ["rolled-blank", "thickness", "blank", "grows", "the middle lies further out than the inside", { measured: "inside" }],
  ["rolled-blank", "thickness", "blank", "falls", "the middle lies further in than the outside", { measured: "outside" }],
  ["roll-setting", "radius", "rearRollRise", "falls", "a gentler curve needs less of the rear roll", untried],
  ["roll-setting", "radius", "loadedRadius", "grows", "springback formula, Gardiner 1957", untried],
  ["roll-setting", "yield", "loadedRadius", "falls", "stronger sheet springs back more, so it is rolled tighter", untried],
  ["roll-setting", "yield", "rearRollRise", "grows", "stronger sheet springs back more, so it is rolled tighter", untried],
  ["roll-setting", "screwPitch", "turns", "falls", "turns = rise / pitch"],
  ["cone-blank", "height", "outerRadius innerRadius", "grows", "slant = √(h² + ((D − d)/2)²), R = slant · D/(D − d)"],
  ["cone-blank", "height", "sectorAngle", "falls", "angle = 360° (D − d)/(2 slant)"],
  [
    "spot-setting",
    "thickness otherThickness",
    "tipFace nugget minPitch minLap",
    "grows",
    "larger spots for thicker sheet, in every schedule",
  ],
  ["spot-joint", "load safetyFactor", "spots", "grows", "n = load · factor / strength of one"],
  ["rivet-joint", "load safetyFactor", "count", "grows", "n = load · factor / strength of one"],
  ["rivet-joint", "rivetShearStress", "count", "falls", "n = load · factor / strength of one"],
  ["rivet-joint", "thicknessA thicknessB", "grip length", "grows", "grip = both sheets, length = grip + head"],
  ["seam-allowance", "width", "allowance", "grows", "a wider seam takes more sheet"],
  ["plan", "width", "blankWidth", "grows", "the blank holds the base", { kind: "folded" }],
  ["plan", "depth", "blankDepth", "grows", "the blank holds the base", { kind: "folded" }],
  ["plan", "north.0.leg", "blankDepth", "grows", "the blank holds the leg", { kind: "folded", north: oneLeg }],
  ["plan", "west.0.leg", "blankWidth", "grows", "the blank holds the leg", { kind: "folded", west: oneLeg }],
  ["plan", "diameter arc", "blankWidth", "grows", "length of an arc at mid-thickness", { kind: "tube" }],
  ["plan", "height", "outerRadius innerRadius", "grows", "slant = √(h² + ((D − d)/2)²)", { kind: "cone" }],
];

export const laws: readonly Law[] = lines.flatMap(([sheet, inputs, outputs, way, because, given, alike]) =>
  inputs
    .split(" ")
    .flatMap((input) =>
      outputs
        .split(" ")
        .map((output): Law => ({ sheet, input, output, way, because, ...(given && { given }), ...(alike && { alike }) })),
    ),
);

/** What binary arithmetic adds, of a value and of a difference of lengths [mm]. */
const closeTo = { share: 1e-9, least: 1e-9 };

/** Two values of a field: anywhere in its range, or near what stands there, where other fields fit it. */
function twoValues(input: QuantityInput, text: string | undefined, draw: Draw): [number, number] {
  if (text === undefined || draw.chance(0.4)) return [valueInside(input, draw), valueInside(input, draw)];
  const { value } = parseQuantity(text, input.quantity);
  const step = input.quantity === "count" ? 1 + draw.below(4) : Math.abs(value) * 10 ** (-3 * draw.share());
  return [value, Math.min(input.max, value + step)];
}

/** One field raised. */
function raised(law: Law, draw: Draw, raw: Raw): readonly [Raw, Raw] | undefined {
  const sheet = targets.find(({ id }) => id === law.sheet);
  const place = sheet && placeAt(sheet.inputs, law.input);
  if (!sheet || place?.input.kind !== "quantity") throw new Error(`${law.sheet} has no number ${law.input}`);
  if (place.row !== undefined && place.row >= rowsOf(sheet.inputs, raw, place.key).length) return undefined;
  const values = twoValues(place.input, textAt(sheet.inputs, raw, place), draw).toSorted((a, b) => a - b);
  const [less, more] = values.map((value) => withTexts(sheet.inputs, raw, { [law.input]: String(value) }));
  return less && more && [less, more];
}

/**
 * Tries a law on pairs of forms that differ in one field.
 * @param pairs - forms to draw; those that a calculator refuses, or has no number for, count for nothing
 */
export function tryLaw(law: Law, pairs: number, seed: number, catalogue: Catalogue): { pairs: number; breach?: string } {
  const sheet = targets.find(({ id }) => id === law.sheet);
  if (!sheet || !Object.hasOwn(sheet.outputs, law.output)) throw new Error(`${law.sheet} has no output ${law.output}`);
  const draw = drawFrom(seed);
  let tried = 0;
  for (let draws = 0; draws < 3 * pairs && tried < pairs; draws++) {
    // What is entered for the metal is left as drawn; a law must hold in every metal.
    const both = raised(law, draw, {
      ...anyForm(sheet.inputs, draw.chance(0.7) ? "near" : "inside", draw, startsOf(sheet)),
      ...law.given,
    });
    if (!both) continue;
    const answers = both.map((raw) => runWorksheet(sheet, raw, catalogue).answer?.outputs);
    const [less, more] = answers.map((outputs) => outputs?.[law.output]);
    if (law.alike && answers[0]?.[law.alike] !== answers[1]?.[law.alike]) continue;
    if (typeof less !== "number" || typeof more !== "number") continue;
    tried++;
    const fall = law.way === "grows" ? less - more : more - less;
    if (fall > closeTo.share * Math.max(Math.abs(less), Math.abs(more)) + closeTo.least)
      return { pairs: tried, breach: `${less} → ${more}, with ${both.map((raw) => JSON.stringify(raw)).join(" → ")}` };
  }
  return { pairs: tried };
}
