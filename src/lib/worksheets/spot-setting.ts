import type { Catalogue, Material } from "../catalogue.ts";
import {
  governingThickness,
  governingThicknessFormula,
  thicknessRatio,
  thicknessRatioFormula,
} from "../joining/governing-thickness.ts";
import {
  type SpotConditions,
  type SpotRegime,
  spotConditions,
  spotRegimes,
  zincConditions,
  zincCurrentFormula,
  zincForceFormula,
  zincTimeFormula,
} from "../joining/spot-conditions.ts";
import { jointSpacing, pitchFactors, spotPitch, spotPitchFormula } from "../joining/spot-spacing.ts";
import * as symbols from "../joining/symbols.ts";
import type { ScheduledSpot } from "../joining/trade-schedules.ts";
import { buttonFactors, buttonFormula, weldButton } from "../joining/weld-button.ts";
import { textbookResistance, weldHeat, weldHeatFormula } from "../joining/weld-heat.ts";
import { amount, mm, say } from "../quantity/phrase.ts";
import { fromBase } from "../quantity/units.ts";
import { materialInput, materialWith, propertyInputs } from "../stock/material.ts";
import { type AnswerTable, type Remark, type Step, worksheet } from "../worksheet.ts";
import { requireWeldable } from "./parts/spot-material.ts";
import { spotStrengths, strengthTable } from "./parts/spot-strengths.ts";
import { typedLength } from "./parts/typed-length.ts";
import { welderRemarks } from "./parts/welder-remarks.ts";

/** Where AWS C1.4M prints a band for 1 mm sheet [mm]: what counts as 1 mm. */
const aboutOne = { from: 0.95, to: 1.05 } as const;

interface Setting {
  readonly chosen: SpotConditions;
  readonly source: string;
  readonly rows: AnswerTable["rows"];
}

const between = (low: number, high: number, decimals: number, unit = "") => {
  const shown = [low.toFixed(decimals), high.toFixed(decimals)];
  return `${shown[0] === shown[1] ? shown[0] : shown.join(" to ")}${unit === "" ? "" : ` ${unit}`}`;
};

/** One line of the table of settings: seconds and cycles of both mains side by side. */
function settingCells(name: string, settings: SpotConditions): string[] {
  const { forceMin, forceMax, currentMin, currentMax, timeMin, timeMax } = settings;
  const cycles = (hertz: 50 | 60) =>
    between(fromBase(timeMin, "time", `cycles${hertz}`), fromBase(timeMax, "time", `cycles${hertz}`), 0);
  return [
    name,
    between(forceMin / 1000, forceMax / 1000, 2, "kN"),
    between(currentMin, currentMax, 1, "kA"),
    between(timeMin, timeMax, 2, "s"),
    cycles(50),
    cycles(60),
  ];
}

function settingsFor(material: Material, governing: number, regime: SpotRegime, schedule: ScheduledSpot): Setting {
  const steel = (each: SpotRegime) => spotConditions({ governing, regime: each });
  if (material.family === "stainless")
    return {
      chosen: schedule,
      source: "stainless-schedule-reprint",
      rows: [
        {
          cells: settingCells("Stainless steel, trade schedule", schedule),
          chosen: true,
          source: "stainless-schedule-reprint",
          note: "provisional",
        },
        {
          cells: settingCells("Bare low-carbon steel, to compare", steel("medium-force")),
          source: "iso-14373-table",
        },
      ],
    };
  const conditions = (each: SpotRegime) => (material.coated ? zincConditions(steel(each)) : steel(each));
  return {
    chosen: conditions(regime),
    source: "iso-14373-table",
    rows: [
      ...(Object.keys(spotRegimes) as SpotRegime[]).map((each) => ({
        cells: settingCells(spotRegimes[each], conditions(each)),
        chosen: each === regime,
        source: material.coated ? "twi-coated-steels" : "iso-14373-table",
      })),
      {
        cells: settingCells("bare steel, American trade schedule", schedule),
        source: "spot-schedule-reprint",
        note: "provisional",
      },
    ],
  };
}

function buttonTable(governing: number, schedule: ScheduledSpot, scheduleSource: string): AnswerTable {
  const button = (factor: number) => weldButton({ governing, factor });
  return {
    caption: "How large the button must be",
    columns: [{ label: "Rule" }, { label: "Diameter", quantity: "length", fineness: "setting" }],
    rows: [
      { cells: ["5√t, to aim at", button(buttonFactors.target)], chosen: true, source: "nugget-rule-page" },
      { cells: ["4√t, smallest accepted", button(buttonFactors.least)], source: "aws-d8-1m-button", note: "from memory" },
      { cells: ["3.5√t, tips worn out", button(buttonFactors.wornTips)], source: "iso-8166", note: "from memory" },
      ...(governing >= aboutOne.from && governing <= aboutOne.to
        ? [
            { cells: ["1 mm sheet, smallest", 3.1], source: "aws-c1-4m", note: "quoted second-hand" },
            { cells: ["1 mm sheet, largest", 4.4], source: "aws-c1-4m", note: "quoted second-hand" },
          ]
        : []),
      { cells: ["Trade schedule, fused zone", schedule.nugget], source: scheduleSource, note: "provisional" },
    ],
  };
}

function spacingTable(governing: number, schedule: ScheduledSpot, scheduleSource: string): AnswerTable {
  const joint = jointSpacing(governing);
  const pitch = (factor: number) => spotPitch({ governing, factor });
  return {
    caption: "Distances between spots and to the edge",
    columns: [{ label: "Rule" }, { label: "Distance", quantity: "length", fineness: "setting" }],
    rows: [
      { cells: ["Pitch, at least: 10 t or 1/2 in", pitch(pitchFactors.least)], chosen: true, source: "spot-spacing-copy" },
      { cells: ["Pitch, better: 20 t", pitch(pitchFactors.better)], source: "spot-spacing-copy" },
      {
        cells: ["Pitch, at least, trade schedule", schedule.spacing],
        source: scheduleSource,
        note: "provisional; no more current is needed for the second spot",
      },
      { cells: ["Lap, at least, trade schedule", schedule.overlap], chosen: true, source: scheduleSource, note: "provisional" },
      {
        cells: ["Lap of a joint under load: 4 weld diameters", 2 * joint.edge],
        source: "en-1993-1-3",
        note: "from memory; 2 diameters to each edge",
      },
    ],
  };
}

function settingRemarks(material: Material, governing: number, { shop }: Catalogue, source: string): Remark[] {
  const least = weldButton({ governing, factor: buttonFactors.least });
  const remarks: Remark[] = [
    {
      level: "note",
      phrase: say`These are values to start from. Clean both faces, close the gap by hand before the tips do, and weld test coupons of the same two sheets: only they prove a setting.`,
      source: "iso-14373-scope",
    },
    {
      level: "note",
      phrase: say`Peel test: clamp a coupon in the vice and roll the other sheet off with pliers. The weld passes if it pulls a whole button that leaves a hole in one sheet, and the mean of the button's two diameters, measured at 90°, is ${mm(least)} or more (4√t, from memory; other rules ask for less, see the table). A clean break between the sheets is no weld.`,
      source: "spot-test-page",
    },
  ];
  if (material.coated)
    remarks.push(
      {
        level: "caution",
        field: "material",
        phrase: say`Zinc-coated: with care. It takes 10 to 20 % more force, about 20 % more current, and from two cycles more to half as long again; the numbers above hold that. Have fume extraction at the tips. Dress the tips often, cool them well, and use an electrode body 2.5 to 3 times as wide as its tip.`,
        source: "twi-coated-steels",
      },
      { level: "note", phrase: say`The two sources differ on the time, so the range holds both.`, source: "llewellyn-hudd" },
    );
  if (material.family === "stainless")
    remarks.push({
      level: "caution",
      field: "material",
      phrase:
        material.id === "stainless-430"
          ? say`The schedule is for austenitic stainless steel and provisional; none for this ferritic one was read. Its welds can be brittle: peel more coupons than usual.`
          : say`The schedule was read only in a supplier's reprint and is provisional. It knows one regime: more force, less current and a shorter time than mild steel.`,
      source,
    });
  if (shop.welder.time === "timer")
    remarks.push({
      level: "note",
      phrase: say`Look which mains the timer counts: 12 cycles are ${amount(12 / 60, "time")} at 60 Hz and ${amount(12 / 50, "time")} at 50 Hz.`,
    });
  return remarks;
}

export default worksheet({
  id: "spot-setting",
  title: "Settings of a spot weld",
  summary:
    "Tip, force, current and time to start from for two steel sheets, how large the button must be and how near spots may be.",
  page: "/joining/spot-welding/",
  inputs: {
    material: materialInput,
    thickness: { ...symbols.sheet, kind: "quantity", default: "1mm", help: "Measured, not the nominal gauge." },
    otherThickness: {
      ...symbols.otherSheet,
      kind: "quantity",
      default: "1mm",
      help: "Same metal; at most three times thicker or thinner.",
    },
    regime: {
      kind: "choice",
      label: "Regime",
      choices: spotRegimes,
      default: "medium-force",
      help: "Medium force suits a small machine; high force heats less around the spot.",
    },
    ...propertyInputs,
  },
  outputs: {
    tipFace: { kind: "quantity", label: "Tip face", quantity: "length", fineness: "setting", help: "Diameter." },
    forceMin: { kind: "quantity", label: "Force", quantity: "force", upTo: "forceMax" },
    forceMax: { kind: "quantity", label: "Force, at most", quantity: "force" },
    currentMin: { kind: "quantity", label: "Current", quantity: "current", upTo: "currentMax" },
    currentMax: { kind: "quantity", label: "Current, at most", quantity: "current" },
    timeMin: { kind: "quantity", label: "Weld time", quantity: "time", upTo: "timeMax" },
    timeMax: { kind: "quantity", label: "Weld time, at most", quantity: "time" },
    nugget: {
      kind: "quantity",
      label: "Weld diameter to aim at",
      symbol: "d",
      quantity: "length",
      fineness: "setting",
      help: "Of the button a peel test pulls out.",
    },
    minPitch: { kind: "quantity", label: "Pitch of the spots, at least", symbol: "p", quantity: "length", fineness: "setting" },
    minLap: {
      kind: "quantity",
      label: "Lap of the sheets, at least",
      quantity: "length",
      fineness: "setting",
      help: "Provisional: from a trade schedule seen in a reprint.",
    },
    shearStrength: {
      kind: "quantity",
      label: "Strength of one spot in shear",
      quantity: "force",
      help: "Nominal, before any safety factor. The sources disagree: see the table.",
    },
  },
  main: "timeMin",
  shownWhen: { regime: (raw) => !String(raw.material ?? "").startsWith("stainless") },
  formulas: [
    governingThicknessFormula,
    thicknessRatioFormula,
    zincForceFormula,
    zincCurrentFormula,
    zincTimeFormula,
    weldHeatFormula,
    buttonFormula,
    spotPitchFormula,
  ],
  validity: [
    "Two sheets of one steel, each from 0.4 to 3.0 mm, at most 3 : 1 in thickness, welded with one impulse.",
    "Starting values. The machine, the tips and the sheet decide: prove them on test coupons.",
    "Not for aluminium, copper, brass or titanium: rivet them or fold a seam.",
  ],
  cautions: [
    "weld-sparks",
    "electrode-pinch",
    "zinc-fume",
    "magnetic-field",
    "welder-electricity",
    "arc-light",
    "hot-work",
    "sharp-edges",
    "defer-to-manual",
  ],
  sources: [
    "iso-14373-table",
    "iso-14373-scope",
    "aws-d8-1m",
    "aws-d8-1m-button",
    "iso-8166",
    "aws-c1-4m",
    "nugget-rule-page",
    "spot-test-page",
    "spot-spacing-copy",
    "spot-schedule-reprint",
    "stainless-schedule-reprint",
    "mathers-2002",
    "twi-coated-steels",
    "twi-aluminium",
    "llewellyn-hudd",
    "metalforming-2014",
    "merritt-ricketts",
    "aisi-s100",
    "en-1993-1-3",
    "groover-spot-weld",
    "common-practice",
  ],

  compute(values, catalogue) {
    const { thickness, otherThickness, regime } = values;
    const material = materialWith(catalogue, values.material, values);
    requireWeldable({ material, thickness, otherThickness });
    const pair = { thickness, otherThickness };
    const governing = governingThickness(pair);
    const stainless = material.family === "stainless";
    const strengths = spotStrengths(material, pair);
    const { schedule, scheduleSource } = strengths;
    const { chosen, source, rows } = settingsFor(material, governing, regime, schedule);
    const nugget = weldButton({ governing, factor: buttonFactors.target });
    const minPitch = spotPitch({ governing, factor: pitchFactors.least });

    const settings: AnswerTable = {
      caption: "Settings, seconds and cycles",
      columns: [
        { label: "Regime" },
        { label: "Force" },
        { label: "Current" },
        { label: "Time" },
        { label: "Cycles at 50 Hz" },
        { label: "Cycles at 60 Hz" },
      ],
      rows,
    };

    const middle = {
      current: (chosen.currentMin + chosen.currentMax) / 2,
      resistance: textbookResistance,
      time: (chosen.timeMin + chosen.timeMax) / 2,
    };
    const bare = spotConditions({ governing, regime });
    const zincSteps: Step[] = [
      { formula: zincForceFormula, values: { bareForce: bare.forceMax, forceMax: chosen.forceMax } },
      { formula: zincCurrentFormula, values: { bareCurrent: bare.currentMax, currentMax: chosen.currentMax } },
      { formula: zincTimeFormula, values: { bareTime: bare.timeMax, timeMax: chosen.timeMax } },
    ];
    const working: Step[] = [
      { formula: governingThicknessFormula, values: { ...pair, governing } },
      { formula: thicknessRatioFormula, values: { ...pair, ratio: thicknessRatio(pair) } },
      ...(material.coated ? zincSteps : []),
      { formula: weldHeatFormula, values: { ...middle, heat: weldHeat(middle) } },
      { formula: buttonFormula, values: { factor: buttonFactors.target, governing, diameter: nugget } },
      { formula: spotPitchFormula, values: { governing, pitch: minPitch } },
    ];

    return {
      outputs: {
        tipFace: chosen.tipFace,
        forceMin: chosen.forceMin,
        forceMax: chosen.forceMax,
        currentMin: chosen.currentMin,
        currentMax: chosen.currentMax,
        timeMin: chosen.timeMin,
        timeMax: chosen.timeMax,
        nugget,
        minPitch,
        minLap: schedule.overlap,
        shearStrength: strengths.shown.strength,
      },
      remarks: [
        ...welderRemarks(catalogue.shop.welder, {
          conditions: chosen,
          longerRegime: !stainless && regime === "high-force",
          ...pair,
        }),
        ...settingRemarks(material, governing, catalogue, source),
      ],
      working,
      tables: [
        settings,
        buttonTable(governing, schedule, scheduleSource),
        spacingTable(governing, schedule, scheduleSource),
        strengthTable(strengths),
      ],
      sources: [
        ...new Set([
          source,
          "iso-14373-scope",
          "aws-d8-1m",
          "nugget-rule-page",
          "spot-spacing-copy",
          scheduleSource,
          strengths.shown.source,
          ...(material.coated ? ["twi-coated-steels", "llewellyn-hudd"] : []),
        ]),
      ],
    };
  },

  handoffs({ material, thickness, otherThickness }) {
    return [
      {
        to: "spot-joint",
        label: "How many spots for a load",
        raw: { material, thickness: typedLength(thickness), otherThickness: typedLength(otherThickness) },
      },
    ];
  },
});
