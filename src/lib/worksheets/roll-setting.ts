import { fullPlasticMoment } from "../bending/plastic-moment.ts";
import {
  elasticLimitRadius,
  elasticShare,
  elasticShareFormula,
  radiusAfterSpringbackFormula,
  type Strip,
} from "../bending/springback.ts";
import { insideRadius } from "../bending/symbols.ts";
import type { Catalogue, Rolls } from "../catalogue.ts";
import { InputError } from "../input-error.ts";
import { amount, mm, type Phrase, say } from "../quantity/phrase.ts";
import { loadedRadiusFor, radiusLeft, wideSheet } from "../rolling/loaded-radius.ts";
import { passPlan } from "../rolling/passes.ts";
import * as symbols from "../rolling/symbols.ts";
import {
  flatEnd,
  flatEndFormula,
  leastSpacing,
  reach,
  reachFormula,
  rearRollRise,
  riseFormula,
  tightestLoadedRadius,
  turnsFormula,
} from "../rolling/three-roll.ts";
import { aimedRadius, aimedRadiusFormula, curvatureOffset, type TrialFinding, trialFinding } from "../rolling/trial-pieces.ts";
import { materialInput, materialWith, propertyInputs } from "../stock/material.ts";
import { type AnswerTable, type Remark, type Step, worksheet } from "../worksheet.ts";
import { bandCases, propertyRemark } from "./parts/property-band.ts";

const length = { quantity: "length", fineness: "setting" } as const;
const ours = "this shop’s rolls";

/** Front roll diameters that shops allow for the smallest tube; from memory, low confidence. */
const shopMargin = { low: 1.2, high: 1.5 } as const;

/** What a calculation gives, or nothing where it is refused. */
function orNull<T>(compute: () => T): T | null {
  try {
    return compute();
  } catch (error) {
    if (error instanceof InputError) return null;
    throw error;
  }
}

export default worksheet({
  id: "roll-setting",
  title: "Setting of the rolls",
  summary: "How far to raise the rear roll so that the sheet springs back to the radius wanted, and in how many passes.",
  page: "/rolling/",
  inputs: {
    material: materialInput,
    thickness: { ...symbols.sheet, kind: "quantity", default: "1mm", help: "Measured, not the nominal gauge." },
    radius: {
      ...insideRadius,
      kind: "quantity",
      label: "Inside radius wanted",
      min: 1,
      default: "75mm",
      help: "Of the finished curve, after it has sprung back.",
    },
    frontRoll: { ...symbols.frontRoll, kind: "quantity", whenEmpty: ours, help: "The one the sheet is wrapped round." },
    rearRoll: { ...symbols.rearRoll, kind: "quantity", whenEmpty: ours },
    rollSpacing: {
      ...symbols.rollSpacing,
      kind: "quantity",
      whenEmpty: ours,
      help: "Level, from the line where the front rolls pinch the sheet to the middle of the rear roll.",
    },
    screwPitch: { ...symbols.screwPitch, kind: "quantity", whenEmpty: ours, help: "What one turn raises the rear roll." },
    trials: {
      kind: "list",
      label: "Trial pieces",
      help: "Pieces of this sheet already rolled: how far the rear roll stood above flat contact, and the inside radius that came out. They correct the setting.",
      rowName: "pieces",
      columns: {
        rise: { ...symbols.riseSymbol, kind: "quantity", label: "Rise from flat contact" },
        radius: { ...insideRadius, kind: "quantity", label: "Inside radius measured", min: 1, max: 10_000 },
      },
      minRows: 0,
      maxRows: 20,
      default: [],
    },
    ...propertyInputs,
  },
  outputs: {
    turns: {
      kind: "quantity",
      label: "Turns of each screw",
      symbol: "n",
      quantity: "ratio",
      help: "Both alike, from where the rear roll just touches the flat sheet.",
    },
    rearRollRise: { ...length, kind: "quantity", label: "Rise of the rear roll", symbol: "h", help: "From flat contact." },
    loadedRadius: {
      ...length,
      kind: "quantity",
      label: "Inside radius between the rolls",
      symbol: "Ri",
      help: "Before springback.",
    },
    flatEnd: {
      kind: "quantity",
      label: "Flat at each end, about",
      symbol: "f",
      quantity: "length",
      help: "The stretch between pinch and rear roll, by geometry. Bend it before rolling, roll the sheet end for end, or trim.",
    },
    smallestDiameter: {
      kind: "quantity",
      label: "Smallest inside diameter of this sheet",
      quantity: "length",
      help: "By the geometry of these rolls and springback; the manual may set a larger one.",
    },
    passes: {
      kind: "list",
      label: "Passes",
      columns: {
        pass: { kind: "quantity", label: "Pass", quantity: "count" },
        turns: { kind: "quantity", label: "Turns from flat contact", quantity: "ratio" },
        rise: { ...length, kind: "quantity", label: "Rise" },
        radius: { ...length, kind: "quantity", label: "Inside radius after it" },
      },
    },
  },
  main: "turns",
  formulas: [
    aimedRadiusFormula,
    elasticShareFormula,
    radiusAfterSpringbackFormula,
    reachFormula,
    riseFormula,
    turnsFormula,
    flatEndFormula,
  ],
  validity: [
    "A first setting. One radius from the pinch to the rear roll is assumed; in truth the sheet bends mostly at the front roll.",
    "Springback of a strip that yields at one constant stress. Two sheets of one grade can differ in yield strength by half, and the radius with it.",
    "The rear roll rises straight up. For a slide that leans, measure spacing and rise level and upright at the raised roll.",
    "Roll trial pieces of the same sheet, measure, and enter them: the setting then follows your rolls.",
  ],
  cautions: ["rolls-draw-in", "gloves-at-rolls", "roll-release", "flying-sheet", "within-rating", "defer-to-manual"],
  sources: [
    "geometry",
    "gardiner-1957",
    "kalpakjian-schmid",
    "gavrilescu-2021",
    "hua-1999",
    "equilibrium",
    "jcgm-100",
    "practice-pieces",
    "common-practice",
  ],

  compute(values, catalogue) {
    const { thickness, radius } = values;
    const material = materialWith(catalogue, values.material, values);
    const { rolls } = catalogue.shop;
    const machine = {
      frontRoll: values.frontRoll ?? rolls.frontRoll,
      rearRoll: values.rearRoll ?? rolls.rearRoll,
      rollSpacing: values.rollSpacing ?? rolls.spacing,
      screwPitch: values.screwPitch ?? rolls.screwPitch,
    };
    const { rollSpacing, screwPitch } = machine;
    const strip: Strip = { thickness, yield: material.yield.value, elasticModulus: material.elasticModulus.value };
    const job = { ...strip, ...machine };
    const tightest = tightestLoadedRadius(job);
    const limit = elasticLimitRadius(strip);

    const findings = values.trials.map((piece, index): TrialFinding => {
      try {
        return trialFinding(job, piece);
      } catch (error) {
        if (error instanceof InputError) throw new InputError(`trials.${index}.rise`, piece.rise, error.phrase);
        throw error;
      }
    });
    const correction = findings.length === 0 ? undefined : curvatureOffset(findings);
    const aimed = correction ? aim(radius, correction.offset) : radius;
    const corrected = (left: number | undefined) =>
      left === undefined ? undefined : correction ? aimedRadius(left, -correction.offset) : left;

    const loadedRadius = hold({ ...strip, radius: aimed, tightest }, correction !== undefined);
    const rise = rearRollRise({ ...job, loadedRadius });
    const turns = rise / screwPitch;
    const flat = flatEnd({ ...job, loadedRadius });
    const least = corrected(radiusLeft(strip, tightest));
    const smallestDiameter = least === undefined ? null : 2 * least;
    const passes = passPlan({ ...job, rise, largestStep: rolls.risePerPass });

    const remarks: Remark[] = [];
    const degrees = Math.round(360 * turns);
    const whole = Math.floor(degrees / 360);
    remarks.push({
      level: "note",
      phrase: say`That is ${whole} whole ${whole === 1 ? "turn" : "turns"} and ${degrees % 360}° more, on both screws alike. Set flat contact first: let the rear roll just touch the sheet along its whole length.`,
    });
    const closest = leastSpacing(machine);
    if (rollSpacing < closest)
      remarks.push({
        level: "caution",
        field: "rollSpacing",
        phrase: say`With a lower front roll as thick as the upper one the rear roll would meet it: that needs ${mm(closest)} from the pinch line at least. Measure again, level and to the middle of the rear roll.`,
        source: "geometry",
      });
    if (smallestDiameter === null)
      remarks.push({
        level: "caution",
        field: "trials",
        phrase: say`The trial pieces curve so little that the smallest diameter on these rolls cannot be told from them.`,
      });
    const shopRolls = values.frontRoll === undefined && values.rearRoll === undefined && values.rollSpacing === undefined;
    if (shopRolls && 2 * radius < rolls.smallestDiameter)
      remarks.push({
        level: "caution",
        field: "radius",
        phrase: say`${rolls.name} roll to ${mm(rolls.smallestDiameter)} inside at the smallest; this is ${mm(2 * radius)}. The manual decides, not the geometry.`,
      });
    else if (2 * radius < shopMargin.high * machine.frontRoll)
      remarks.push({
        level: "caution",
        field: "radius",
        phrase: say`This is close to the front roll, ${mm(machine.frontRoll)}. Shops stay above ${shopMargin.low} to ${shopMargin.high} times its diameter (from memory, uncertain).`,
        source: "common-practice",
      });
    if (shopRolls) remarks.push(ratingRemark(strip, rolls, catalogue));
    else
      remarks.push({
        level: "caution",
        phrase: say`These are not the rolls of this shop. Whether they may roll this sheet is on their plate and in their manual.`,
      });
    remarks.push({
      level: "note",
      phrase: say`Held at ${mm(limit)} or more this sheet comes back flat.`,
      source: "gardiner-1957",
    });
    const strongest = material.yield.high;
    if (!correction && strongest !== undefined && loadedRadius >= elasticLimitRadius({ ...strip, yield: strongest }))
      remarks.push({
        level: "caution",
        field: "radius",
        phrase: say`The strongest sheet of this grade, ${amount(strongest, "stress")}, would come back flat from this setting. Roll trial pieces first.`,
        source: material.yield.source,
      });
    if (!correction) {
      remarks.push({
        level: "note",
        phrase: say`Not yet corrected by trial pieces. Stop one pass before the last, hold a template to the curve, and go on from there.`,
        source: "common-practice",
      });
      remarks.push(propertyRemark("Yield strength", "stress", material.yield));
    } else {
      const scatter = correction.uncertainty;
      remarks.push(
        scatter === undefined
          ? {
              level: "caution",
              field: "trials",
              phrase: say`One piece shows nothing of the scatter, so no ± can be given. Roll at least three.`,
              source: "jcgm-100",
            }
          : {
              level: "note",
              phrase: say`By the scatter of the pieces the radius is good to about ± ${mm(radius ** 2 * scatter)}.`,
              source: "jcgm-100",
            },
      );
      const settings = values.trials.map((piece) => piece.rise);
      if (Math.min(...settings) > 1.5 * rise || Math.max(...settings) < rise / 1.5)
        remarks.push({
          level: "caution",
          field: "trials",
          phrase: say`All trial pieces were rolled far from this setting. Roll one near ${mm(rise)} and enter it too.`,
        });
    }

    const screw = (at: number) => at / screwPitch;
    const passRows = passes.map((pass, index) => ({
      pass: index + 1,
      turns: screw(pass.rise),
      rise: pass.rise,
      radius: index + 1 === passes.length ? radius : (corrected(pass.radius) ?? null),
    }));
    if (passRows.some((pass) => pass.radius === null))
      remarks.push({
        level: "caution",
        field: "trials",
        phrase: say`By the trial pieces the first passes leave no curve at all.`,
      });
    remarks.push({
      level: "note",
      phrase: say`The passes go up in equal steps of at most ${mm(rolls.risePerPass)}, this shop’s habit; no published rule was found. The first step holds also the rise that only bends the sheet elastically.`,
      source: "common-practice",
    });

    const setting = (sheet: Strip) =>
      orNull(() => {
        const held = loadedRadiusFor({ ...sheet, radius, tightest });
        const up = rearRollRise({ ...job, loadedRadius: held });
        return [held, up, screw(up)] as const;
      }) ?? [null, null, null];
    const band: AnswerTable = {
      caption: "What the spread of the yield strength does to it",
      columns: [
        { label: "Sheet" },
        { label: "Yield strength", quantity: "stress" },
        { label: "Radius between the rolls", ...length },
        { label: "Rise", ...length },
        { label: "Turns", quantity: "ratio" },
      ],
      rows: [
        ...bandCases(material.yield, { low: "Softest of this grade", high: "Strongest of this grade" }).map((sheet) => ({
          cells: [sheet.name, sheet.value, ...setting({ ...strip, yield: sheet.value })],
          chosen: sheet.chosen,
          source: material.yield.source,
        })),
        {
          cells: ["As used above, but too wide to narrow in rolling", strip.yield, ...setting(wideSheet(strip))],
          source: "equilibrium",
        },
      ],
    };
    const pieces: AnswerTable = {
      caption: "The trial pieces",
      columns: [
        { label: "Piece" },
        { label: "Rise", ...length },
        { label: "Radius between the rolls", ...length },
        { label: "Radius calculated", ...length },
        { label: "Radius measured", ...length },
      ],
      rows: findings.map((finding, index) => {
        const piece = values.trials[index];
        const calculated = finding.calculated ?? null;
        return {
          cells: [String(index + 1), piece?.rise ?? null, finding.loadedRadius, calculated, piece?.radius ?? null],
          ...(calculated === null ? { note: "calculated flat" } : {}),
        };
      }),
    };

    const far = reach({ ...machine, thickness, loadedRadius });
    const share0 = elasticShare({ ...strip, toolRadius: loadedRadius });
    const working: Step[] = [
      ...(correction ? [{ formula: aimedRadiusFormula, values: { radius, offset: correction.offset, aimed } }] : []),
      { formula: elasticShareFormula, values: { ...strip, toolRadius: loadedRadius, elasticShare: share0 } },
      { formula: radiusAfterSpringbackFormula, values: { toolRadius: loadedRadius, elasticShare: share0, radius: aimed } },
      { formula: reachFormula, values: { loadedRadius, thickness, rearRoll: machine.rearRoll, reach: far } },
      { formula: riseFormula, values: { reach: far, rollSpacing, rise } },
      { formula: turnsFormula, values: { rise, screwPitch, turns } },
      { formula: flatEndFormula, values: { loadedRadius, thickness, rollSpacing, reach: far, flatEnd: flat } },
    ];

    return {
      outputs: { turns, rearRollRise: rise, loadedRadius, flatEnd: flat, smallestDiameter, passes: passRows },
      remarks,
      working,
      tables: [correction ? pieces : band],
      sources: ["geometry", "gardiner-1957", "kalpakjian-schmid", ...(correction ? ["practice-pieces"] : [])],
    };
  },
});

/** What the plate of this shop's rolls says to a sheet, by the bending moment over their whole width. */
function ratingRemark(sheet: Strip, rolls: Rolls, catalogue: Catalogue): Remark {
  const { rating } = rolls;
  const rated = catalogue.materials[rating.material];
  const whole = { width: rating.length };
  const share =
    fullPlasticMoment({ ...whole, yield: sheet.yield, thickness: sheet.thickness }) /
    fullPlasticMoment({ ...whole, yield: rated.yield.value, thickness: rating.thickness });
  const percent = Math.round(100 * share);
  if (share <= 1 && sheet.thickness <= rating.thickness)
    return {
      level: "note",
      phrase: say`Over the whole width this takes ${percent} % of the bending moment that ${rolls.name} are rated for.`,
      source: "equilibrium",
    };
  return {
    level: "caution",
    field: "thickness",
    phrase: say`${rolls.name} are rated for ${mm(rating.thickness)} ${rated.name} over ${mm(rating.length)}. Over that width this sheet takes ${percent} % of that bending moment${share > 1 ? ": too much" : ", but it is thicker than the plate allows"}. Only the manual can say whether a narrower piece may be rolled.`,
    source: "equilibrium",
  };
}

/** Radius to calculate with so that the trial pieces are taken into account. @throws InputError when they leave none */
function aim(radius: number, offset: number): number {
  const aimed = aimedRadius(radius, offset);
  if (aimed !== undefined && aimed <= insideRadius.max) return aimed;
  throw new InputError(
    "trials",
    "",
    say`The trial pieces must leave room for the curve wanted; they came out with so much more curve than calculated that even a nearly flat setting would give less than ${mm(radius)}. Check where flat contact was taken, and which face was measured.`,
  );
}

/** `loadedRadiusFor`, with messages that speak of the trial pieces when these have moved the radius. */
function hold(wanted: Parameters<typeof loadedRadiusFor>[0], moved: boolean): number {
  try {
    return loadedRadiusFor(wanted);
  } catch (error) {
    if (!(error instanceof InputError) || !moved || error.field !== "radius") throw error;
    const because: Phrase = say`After the trial pieces the rolls must be set as if for ${mm(wanted.radius)}, and that cannot be had. ${error.phrase}`;
    throw new InputError("trials", "", because);
  }
}
