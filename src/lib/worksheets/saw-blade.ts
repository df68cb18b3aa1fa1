import { changedSpeed, sawSpeed, speedChanges } from "../cutting/saw-speed.ts";
import {
  bandsMade,
  coarsestBand,
  coarsestBandFormula,
  flattestFeed,
  sawTeeth,
  sawTeethFormula,
  steepestFeed,
  teethInCut,
} from "../cutting/saw-teeth.ts";
import { sheet } from "../cutting/symbols.ts";
import { amount, mm, say } from "../quantity/phrase.ts";
import { toBase } from "../quantity/units.ts";
import { materialInput, propertyInputs } from "../stock/material.ts";
import { type AnswerTable, type Remark, type Step, worksheet } from "../worksheet.ts";

/** 18 gauge steel, where an Army text changes its band [mm]. */
const armyGauge = toBase(0.0478, "length", "in");

const squareOnTeeth = (thickness: number, teethPerInch: number) => sawTeeth({ thickness, teethPerInch, angle: 90 });

/** Below this angle a sheet is hard to hold slanting [deg]; common practice. */
const hardToHold = 15;

const degrees = (value: number) => `${Math.round(value)}°`;

export default worksheet({
  id: "saw-blade",
  title: "Band for the saw",
  summary: "How fine a saw band the sheet needs, whether it must lie slanting, and how fast the band should run.",
  page: "/cutting/",
  inputs: {
    material: materialInput,
    thickness: { ...sheet, kind: "quantity", default: "3mm", help: "Of the sheet, or of a stack clamped together." },
    ...propertyInputs,
  },
  outputs: {
    teethPerInchMin: {
      kind: "quantity",
      label: "Teeth an inch",
      quantity: "ratio",
      decimals: 1,
      upTo: "teethPerInchMax",
      help: "From the coarsest band that keeps two teeth in the cut to the finest that is made. Three in the cut are better.",
    },
    teethPerInchMax: { kind: "quantity", label: "Teeth an inch, at most", quantity: "ratio", decimals: 0 },
    bandSpeed: {
      kind: "quantity",
      label: "Speed of the band",
      quantity: "speed",
      help: "Bimetal band, coolant, work 4 in deep; see the table for other cases.",
    },
    inclined: {
      kind: "choice",
      label: "Lay the sheet slanting to the blade",
      choices: { no: "no, square on will do", yes: "yes, or clamp it on a scrap board" },
    },
  },
  main: "teethPerInchMin",
  formulas: [sawTeethFormula, coarsestBandFormula],
  validity: [
    "Teeth of one pitch. With a variable pitch, the coarsest part of the band counts.",
    "The speed is a start: listen, look at the chip, and go down when the band gets hot or squeals.",
  ],
  cautions: ["band-saw", "eyes", "sharp-edges", "lock-out", "defer-to-manual"],
  sources: [
    "navedtra-14119-sawing",
    "army-od0017",
    "machinery-repairman",
    "machinerys-handbook-31-sawing",
    "saw-speed-ranges",
    "common-practice",
    "geometry",
    "this-shop",
  ],

  compute({ material: id, thickness }, catalogue) {
    const material = catalogue.materials[id];
    const { bandSaw } = catalogue.shop;
    const { least, better } = teethInCut;
    const squareOn = coarsestBand({ thickness, teeth: least, angle: 90 });
    const inclined = squareOn > bandsMade.finest;
    const angle = inclined ? flattestFeed : 90;
    const coarsest = coarsestBand({ thickness, teeth: least, angle });
    // Where even a slanting cut wants a band finer than any that is made, the finest is the one to take.
    const teethPerInchMin = Math.min(coarsest, bandsMade.finest);
    const speed = sawSpeed(material);

    const remarks: Remark[] = [];
    if (inclined)
      remarks.push({
        level: "caution",
        field: "thickness",
        phrase: say`Square on, even the finest band of ${bandsMade.finest} teeth an inch has only ${squareOnTeeth(thickness, bandsMade.finest).toFixed(2)} teeth in this sheet, and it would hook on them. Lay the sheet so that the blade runs at ${degrees(flattestFeed)} to its face or flatter, or clamp it on a scrap board and saw both. Snips or the shear are usually better.`,
        source: "navedtra-14119-sawing",
      });
    const flattest = steepestFeed({ thickness, teethPerInch: bandsMade.finest, teeth: least });
    if (coarsest > bandsMade.finest)
      remarks.push({
        level: "caution",
        field: "thickness",
        phrase: say`At ${degrees(flattestFeed)} the finest band still has less than ${least} teeth in it. It takes ${degrees(flattest)}${flattest < hardToHold ? ", too flat to hold by hand" : ""}: back it with a board.`,
        source: "geometry",
      });
    remarks.push({
      level: speed.seen === "read" ? "note" : "caution",
      phrase: say`Speed: ${speed.basis}${speed.seen === "memory" ? ", from memory" : ""}. The band of values is ${amount(speed.low, "speed")} to ${amount(speed.high, "speed")}.`,
      source: speed.source,
    });
    if (bandSaw.coolant === "no")
      remarks.push({
        level: "caution",
        phrase: say`${bandSaw.name} cuts dry: take 30 to 50 % off, so ${amount(changedSpeed(speed.use, "drySlow"), "speed")} to ${amount(changedSpeed(speed.use, "dryFast"), "speed")}.`,
        source: "machinerys-handbook-31-sawing",
      });
    if (speed.use < bandSaw.slowest || speed.use > bandSaw.fastest)
      remarks.push({
        level: speed.use < bandSaw.slowest ? "caution" : "note",
        phrase: say`${bandSaw.name} runs from ${amount(bandSaw.slowest, "speed")} to ${amount(bandSaw.fastest, "speed")}. ${
          speed.use < bandSaw.slowest ? "That is too fast for this metal." : "Its fastest will do."
        }`,
        source: "this-shop",
      });
    if (inclined)
      remarks.push({
        level: "note",
        phrase: say`An Army text gives 24 teeth an inch for sheet above 18 gauge and 32 below it, and asks for two teeth in the cut. At 18 gauge, ${mm(armyGauge)}, that is ${squareOnTeeth(armyGauge, 24).toFixed(2)} and ${squareOnTeeth(armyGauge, 32).toFixed(2)} teeth square on: its own rule holds only for a slanting cut.`,
        source: "army-od0017",
      });

    const bands = bandSaw.bands
      .map((band) => ({
        ...band,
        inCut: squareOnTeeth(thickness, band.teeth),
        forLeast: steepestFeed({ thickness, teethPerInch: band.teeth, teeth: least }),
        forBetter: steepestFeed({ thickness, teethPerInch: band.teeth, teeth: better }),
      }))
      .sort((one, other) => one.teeth - other.teeth);
    const take = bands.find(({ inCut }) => inCut >= better) ?? bands.find(({ inCut }) => inCut >= least) ?? bands.at(-1);
    if (take)
      remarks.push({
        level: take.inCut >= least ? "note" : "caution",
        phrase: say`Of the bands of ${bandSaw.name}, take the one of ${take.teeth} teeth an inch${
          take.inCut >= better
            ? ""
            : take.inCut >= least
              ? ", and feed gently"
              : ": it has too few teeth in this sheet square on, so slant or back the sheet"
        }.`,
        source: "this-shop",
      });
    const own: AnswerTable = {
      caption: `The bands of ${bandSaw.name}`,
      columns: [
        { label: "Teeth an inch", quantity: "count" },
        { label: "Width", quantity: "length", fineness: "setting" },
        { label: "Teeth in the cut, square on", quantity: "ratio" },
        { label: `Angle for ${least} teeth`, quantity: "angle" },
        { label: `Angle for ${better} teeth`, quantity: "angle" },
      ],
      rows: bands.map((band) => ({
        cells: [band.teeth, band.width, band.inCut, band.forLeast, band.forBetter],
        source: "this-shop",
        ...(band === take
          ? {
              note:
                band.inCut >= better
                  ? "take this one"
                  : band.inCut >= least
                    ? "take this one, and feed gently"
                    : "this one, slanting or backed",
            }
          : {}),
      })),
    };
    const speeds: AnswerTable = {
      caption: "The speed in other cases",
      columns: [{ label: "Case" }, { label: "Speed", quantity: "speed" }],
      rows: [
        { cells: ["Bimetal band, coolant, work 4 in deep", speed.use], chosen: true, source: speed.source },
        ...(Object.keys(speedChanges) as (keyof typeof speedChanges)[]).map((change) => ({
          cells: [speedChanges[change].name, changedSpeed(speed.use, change)],
          source: "machinerys-handbook-31-sawing",
        })),
      ],
    };

    const working: Step[] = [
      { formula: coarsestBandFormula, values: { thickness, teeth: least, angle, coarsest } },
      ...(take
        ? [
            {
              formula: sawTeethFormula,
              values: {
                thickness,
                teethPerInch: take.teeth,
                angle,
                teeth: sawTeeth({ thickness, teethPerInch: take.teeth, angle }),
              },
            },
          ]
        : []),
    ];

    return {
      outputs: {
        teethPerInchMin,
        teethPerInchMax: bandsMade.finest,
        bandSpeed: speed.use,
        inclined: inclined ? "yes" : "no",
      },
      remarks,
      working,
      tables: [own, speeds],
      sources: [...new Set(["navedtra-14119-sawing", "machinery-repairman", speed.source, "this-shop"])],
    };
  },
});
