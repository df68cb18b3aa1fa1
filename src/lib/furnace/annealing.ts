import type { MaterialId } from "../catalogue.ts";
import type { Formula, FormulaInput } from "../formula.ts";
import { checkRanges } from "../inputs.ts";

/** A range of temperature that one source gives [°C]. */
export interface AnnealingRange {
  readonly name: string;
  readonly low: number;
  readonly high: number;
  readonly source: string;
  readonly seen: "read" | "memory";
  readonly note?: string;
}

/** How a metal is softened in a simple furnace. */
export interface Annealing {
  /** °C, what is set */
  readonly temperature: number;
  /** s, once the whole piece is as hot as that; 0: not held at all */
  readonly hold: number;
  readonly cooling: string;
  readonly note: string;
  readonly ranges: readonly AnnealingRange[];
  /** Cooled no faster than so many °C an hour down to a temperature. */
  readonly slow?: { readonly rate: number; readonly to: number };
  /** Begins to melt there [°C], from memory. */
  readonly melts: number;
}

/** A metal that must not be annealed in a simple furnace, and why. */
export interface NoAnnealing {
  readonly why: string;
  readonly source: string;
}

const hour = 3600;
const minute = 60;

const memory = (low: number, high: number, source: string, name = "Handbook figure"): AnnealingRange => ({
  name,
  low,
  high,
  source,
  seen: "memory",
});

const stillAir = "in still air; how fast does not matter";

const workHardened = (temperature: number, melts: number): Annealing => ({
  temperature,
  hold: 0,
  cooling: stillAir,
  note: "Cold work alone made it hard, and annealing takes it all out. Take it out as soon as the whole piece is hot: longer only makes the grain coarse.",
  ranges: [memory(temperature, temperature, "asm-aluminium-annealing")],
  melts,
});

/** The rate of the heat treaters' sheets, 50 °F an hour: two scans of a guide print 78 °C for these 28. */
const slowRate = 28;
const slowTo = 260;
const slowly = "in the furnace, 28 °C an hour at most, down to 260 °C; then in air";

const heatTreatable = (melts: number, range: AnnealingRange, note: string): Annealing => ({
  temperature: 413,
  hold: 2 * hour,
  cooling: slowly,
  note: `Hold it 2 to 3 hours. ${note}`,
  ranges: [range],
  slow: { rate: slowRate, to: slowTo },
  melts,
});

const sheet6061: AnnealingRange = {
  name: "Heat treater's sheet",
  low: 413,
  high: 413,
  source: "heat-treatment-sheet",
  seen: "read",
  note: "weak: its author is not stated; the remembered handbook value is the same",
};
const sheet2024 = memory(413, 413, "asm-aluminium-annealing");
const strengthGone =
  "The strength of this temper is gone afterwards. Getting it back takes a solution treatment, a quench and ageing within a few degrees, which a teaching furnace does not certify.";

const lowCarbon: Annealing = {
  temperature: 650,
  hold: 30 * minute,
  cooling: "in the closed furnace or in still air",
  note: "Half an hour is common practice for thin sheet; the range is from memory. It scales and loses carbon at the surface: wrap it or file it bright afterwards. A full anneal would take 855 to 900 °C and slow cooling in the furnace.",
  ranges: [memory(550, 700, "asm-steel-annealing", "Below the change of structure")],
  melts: 1450,
};

const copper: Annealing = {
  temperature: 500,
  hold: 0,
  cooling: "anyhow; a quench in clean water sheds the scale",
  note: "Take it out as soon as the whole piece is hot. Copper ages no further and is as soft after a quench as after slow cooling.",
  ranges: [memory(375, 650, "asm-copper-annealing")],
  melts: 1083,
};

const noStainless = (why: string): NoAnnealing => ({ why, source: "asm-steel-annealing" });
const austenitic = noStainless(
  "Austenitic stainless steel would take 1010 to 1120 °C and a fast quench. Between about 450 and 850 °C, which a simple furnace passes slowly, it loses its resistance to rust, and it scales. Bend it at a larger radius instead.",
);

/**
 * How each metal is annealed. Temperatures of 1100, 3003, 5052, 2024, copper, brass and steel are from memory of the handbooks named;
 * that of 6061 was read.
 */
export const annealing: Readonly<Record<MaterialId, Annealing | NoAnnealing>> = {
  "steel-cr": lowCarbon,
  "steel-dc04": lowCarbon,
  "steel-s235": lowCarbon,
  "steel-galv": {
    why: "The zinc would burn off as fume that makes people ill, and nothing would protect the steel afterwards. Bend it at a larger radius, or make the part of bare steel.",
    source: "aws-fact-sheet-25",
  },
  "stainless-304": austenitic,
  "stainless-316": austenitic,
  "stainless-430": noStainless(
    "Ferritic stainless steel scales, its grain grows, and it can come out brittle. Its anneal, about 760 to 830 °C with fast cooling, wants a controlled furnace. Bend it at a larger radius instead.",
  ),
  "al-1100-o": workHardened(345, 643),
  "al-1100-h14": workHardened(345, 643),
  "al-3003-h14": workHardened(415, 643),
  "al-5052-h32": workHardened(345, 607),
  "al-6061-o": heatTreatable(582, sheet6061, "It is soft already: anneal it only after cold work has hardened it."),
  "al-6061-t4": heatTreatable(582, sheet6061, strengthGone),
  "al-6061-t6": heatTreatable(582, sheet6061, strengthGone),
  "al-2024-o": {
    temperature: 343,
    hold: 2 * hour,
    cooling: "in still air",
    note: "Between two steps of cold work. Sheet clad with pure aluminium stands only few heatings.",
    ranges: [memory(343, 343, "asm-aluminium-annealing", "Between cold-work steps"), sheet2024],
    melts: 502,
  },
  "al-2024-t3": heatTreatable(502, sheet2024, `${strengthGone} Sheet clad with pure aluminium stands only few heatings.`),
  "copper-soft": copper,
  "copper-half-hard": copper,
  "brass-half-hard": {
    temperature: 550,
    hold: 0,
    cooling: stillAir,
    note: "Take it out as soon as the whole piece is hot. Overheated, its grain grows until it bends like orange peel, and zinc leaves it as fume.",
    ranges: [
      memory(425, 750, "asm-copper-annealing"),
      { name: "Quoted in a forum", low: 450, high: 680, source: "cda-brass-forum", seen: "read", note: "second-hand" },
    ],
    melts: 915,
  },
  "titanium-2": {
    why: "Hot titanium soaks up oxygen from the air and its skin turns brittle. Its anneal, about 700 °C, wants a vacuum or argon. Bend it at a larger radius, or warm, by people who do that.",
    source: "asm-titanium-annealing",
  },
};

/** Whether a metal may be annealed in a simple furnace. */
export function canAnneal(how: Annealing | NoAnnealing): how is Annealing {
  return "temperature" in how;
}

const temperature = (label: string, letter: string) =>
  ({ label, symbol: letter, tex: letter, quantity: "temperature", min: 0, max: 2000 }) as const satisfies FormulaInput;

const coolingInputs = {
  from: temperature("Temperature it was held at", "T1"),
  to: temperature("Temperature from which air does", "T2"),
  rate: {
    label: "Fastest cooling, in °C an hour",
    symbol: "v",
    tex: "v",
    quantity: "ratio",
    min: 0,
    max: 10_000,
    aboveMin: true,
  },
} as const satisfies Record<string, FormulaInput>;

export const slowCoolingFormula: Formula = {
  id: "slow-cooling",
  name: "Hours of slow cooling",
  result: "hours",
  expression: String.raw`\frac{\v{from} - \v{to}}{\v{rate}}`,
  symbols: { ...coolingInputs, hours: { label: "Hours", symbol: "h", tex: "h", quantity: "ratio", decimals: 1 } },
};

/**
 * Least time of a cooling at a limited rate.
 *
 * @param cooling.from - T₁ [°C]; 0 to 2000
 * @param cooling.to - T₂ [°C], not above T₁; 0 to 2000
 * @param cooling.rate - v [°C/h]; above 0 to 10 000
 * @returns [s] = (T₁ − T₂)/v
 * @throws InputError for a value outside its range
 * @remarks Definition of a rate. 413 to 260 °C at 27.8 °C (50 °F) an hour takes 5.5 hours.
 */
export function slowCooling(cooling: { readonly from: number; readonly to: number; readonly rate: number }): number {
  checkRanges({ ...coolingInputs, to: { ...coolingInputs.to, max: cooling.from } }, cooling);
  return ((cooling.from - cooling.to) / cooling.rate) * hour;
}
