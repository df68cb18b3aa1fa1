import type { Formula } from "../formula.ts";
import { nearestFraction } from "../quantity/fraction.ts";
import { say } from "../quantity/phrase.ts";
import { fromBase } from "../quantity/units.ts";
import { nearestGauge } from "../stock/gauge.ts";
import { materialInput } from "../stock/material.ts";
import { type Remark, type Step, worksheet } from "../worksheet.ts";

const length = { label: "Length", symbol: "L", tex: "L", quantity: "ratio" } as const;
const inches = { label: "Inches", symbol: "i", tex: "i", quantity: "ratio", decimals: 4 } as const;
const fraction = { label: "Fraction", symbol: "f", tex: "f", quantity: "ratio", decimals: 6 } as const;

const inchFormula: Formula = {
  id: "millimetres-to-inches",
  name: "Inches",
  result: "inch",
  expression: String.raw`\frac{\v{mm}}{25.4}`,
  symbols: { mm: length, inch: inches },
};

const fractionFormula: Formula = {
  id: "nearest-inch-fraction",
  name: "Nearest inch fraction",
  result: "fraction",
  expression: String.raw`\frac{\mathrm{round}\!\left(\v{denominator}\cdot\v{inch}\right)}{\v{denominator}}`,
  symbols: {
    inch: inches,
    denominator: { label: "Finest division", symbol: "d", tex: "d", quantity: "count" },
    fraction,
  },
};

const fractionErrorFormula: Formula = {
  id: "inch-fraction-error",
  name: "Error of the fraction",
  result: "error",
  expression: String.raw`25.4\cdot\v{fraction} - \v{mm}`,
  symbols: {
    mm: length,
    fraction,
    error: { label: "Error of the fraction", symbol: "Δ", tex: String.raw`\Delta`, quantity: "ratio" },
  },
};

export default worksheet({
  id: "length-reader",
  title: "Read a length",
  summary: "One length in millimetres, in decimal inches, as the nearest inch fraction and as gauge numbers.",
  page: "/marking/",
  inputs: {
    value: {
      kind: "quantity",
      label: "Length",
      symbol: "L",
      quantity: "length",
      fineness: "setting",
      min: 0,
      max: 100_000,
      default: "1.2mm",
      help: "As you read it: 1.2 mm, 0.048 in, 3/64 in, 18 ga.",
    },
    denominator: {
      kind: "choice",
      label: "Finest division of the rule",
      choices: {
        "2": "1/2 in",
        "4": "1/4 in",
        "8": "1/8 in",
        "16": "1/16 in",
        "32": "1/32 in",
        "64": "1/64 in",
        "128": "1/128 in",
      },
      default: "64",
    },
    material: { ...materialInput, help: "A gauge number is another thickness in another metal." },
  },
  outputs: {
    mm: { kind: "quantity", label: "Millimetres", quantity: "ratio" },
    inch: { kind: "quantity", label: "Inches", quantity: "ratio" },
    fraction: { kind: "text", label: "Nearest fraction of an inch" },
    fractionError: {
      kind: "quantity",
      label: "Fraction is off by",
      quantity: "length",
      fineness: "setting",
      help: "Positive: the fraction is longer.",
    },
    gauges: {
      kind: "list",
      label: "Nearest gauge numbers",
      columns: {
        system: { kind: "text", label: "Gauge list" },
        gauge: { kind: "text", label: "Gauge" },
        thickness: { kind: "quantity", label: "Its thickness", quantity: "length", fineness: "setting" },
        difference: { kind: "quantity", label: "Off by", quantity: "length", fineness: "setting" },
      },
    },
  },
  main: "mm",
  formulas: [inchFormula, fractionFormula, fractionErrorFormula],
  validity: [
    "An inch is 25.4 mm by definition, so the first two lines are exact.",
    "Gauge numbers are nominal: sheet is rolled to a tolerance, so measure it.",
  ],
  cautions: [],
  sources: ["inch-definition"],

  compute({ value, denominator, material }, catalogue) {
    const inch = fromBase(value, "length", "in");
    const division = Number(denominator);
    const nearest = nearestFraction(value, division);
    const fraction = nearest.whole + nearest.numerator / nearest.denominator;

    const { name, gaugeSystem } = catalogue.materials[material];
    const systems = Object.entries(catalogue.gaugeSystems);
    const gauges = systems.flatMap(([, system]) => {
      const near = nearestGauge(system, value);
      return near ? [{ system: system.name, ...near }] : [];
    });
    const own = gaugeSystem === undefined ? undefined : catalogue.gaugeSystems[gaugeSystem];
    const remarks: Remark[] = [
      own
        ? { level: "note", phrase: say`${name} is sold by ${own.name}.`, source: own.source }
        : { level: "note", phrase: say`No gauge list is kept for ${name}; it is sold by thickness.` },
    ];

    const working: Step[] = [
      { formula: inchFormula, values: { mm: value, inch } },
      { formula: fractionFormula, values: { inch, denominator: division, fraction } },
      { formula: fractionErrorFormula, values: { mm: value, fraction, error: nearest.error } },
    ];

    return {
      outputs: { mm: value, inch, fraction: nearest.text, fractionError: nearest.error, gauges },
      remarks,
      working,
      sources: ["inch-definition", ...new Set(systems.map(([, system]) => system.source))],
    };
  },
});
