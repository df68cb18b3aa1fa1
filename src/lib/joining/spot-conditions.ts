import type { Formula, FormulaSymbol } from "../formula.ts";
import { checkRange } from "../inputs.ts";
import { toBase } from "../quantity/units.ts";
import { governing, sheet } from "./symbols.ts";

/** The two ways to make the same weld; ids are part of addresses. */
export const spotRegimes = {
  "medium-force": "medium force, longer time",
  "high-force": "high force, shorter time",
} as const;
export type SpotRegime = keyof typeof spotRegimes;

/** Starting values of one spot weld; low and high ends of what a schedule gives. */
export interface SpotConditions {
  /** [mm], diameter */
  readonly tipFace: number;
  /** [N] */
  readonly forceMin: number;
  readonly forceMax: number;
  /** [s] */
  readonly timeMin: number;
  readonly timeMax: number;
  /** [kA] */
  readonly currentMin: number;
  readonly currentMax: number;
}

/** Low and high end. */
type Band = readonly [number, number];

interface Regime {
  /** kN */
  readonly force: Band;
  /** cycles of 1/50 s */
  readonly cycles: Band;
  /** kA */
  readonly current: Band;
}

const regime = (force: Band, cycles: Band, current: Band): Regime => ({ force, cycles, current });

/**
 * Conditions for uncoated low-carbon steel by thickness of one sheet [mm]: over `above`, up to and including `upTo`.
 * Source: BS EN ISO 14373:2015, guidance table, as reproduced by a third party (read); 1 cycle is 0.02 s there.
 */
export const spotConditionRows = [
  {
    above: 0.4,
    upTo: 0.6,
    tipFace: 4,
    "medium-force": regime([0.9, 1.1], [5, 7], [4, 6]),
    "high-force": regime([1.3, 1.8], [4, 5], [5, 8]),
  },
  {
    above: 0.6,
    upTo: 0.8,
    tipFace: 4,
    "medium-force": regime([1.2, 1.3], [7, 10], [5, 7]),
    "high-force": regime([1.7, 2], [6, 8], [6, 9]),
  },
  {
    above: 0.8,
    upTo: 1,
    tipFace: 5,
    "medium-force": regime([1.4, 1.5], [9, 12], [6, 8]),
    "high-force": regime([1.9, 2.6], [7, 10], [7, 10]),
  },
  {
    above: 1,
    upTo: 1.2,
    tipFace: 5,
    "medium-force": regime([1.6, 1.8], [11, 15], [7, 9]),
    "high-force": regime([2.5, 3.2], [8, 12], [8, 12]),
  },
  {
    above: 1.2,
    upTo: 1.6,
    tipFace: 6,
    "medium-force": regime([1.9, 2.1], [14, 18], [8, 11]),
    "high-force": regime([3, 4], [9, 13], [10, 13]),
  },
  {
    above: 1.6,
    upTo: 2,
    tipFace: 7,
    "medium-force": regime([2.6, 2.9], [18, 22], [9, 13]),
    "high-force": regime([3.9, 5.2], [10, 14], [12, 15]),
  },
  {
    above: 2,
    upTo: 2.5,
    tipFace: 8,
    "medium-force": regime([3.4, 3.7], [22, 28], [10, 15]),
    "high-force": regime([5, 6.2], [12, 16], [14, 18]),
  },
  {
    above: 2.5,
    upTo: 3,
    tipFace: 9,
    "medium-force": regime([4.4, 4.7], [28, 35], [12, 17]),
    "high-force": regime([6, 7.5], [15, 20], [17, 20]),
  },
] as const;

/**
 * Conditions for spot welding two sheets of uncoated low-carbon steel.
 *
 * @param weld.governing - t [mm], the thinner sheet; 0.4 to 3
 * @param weld.regime - one of the table's two ways
 * @returns tip face [mm], force [N], time [s] and current [kA], each from and to
 * @throws InputError for a thickness outside its range
 * @remarks Starting values, to be proved by test welds. A band holds its upper edge; 0.4 itself, which the scope includes, is taken
 *   into the first band. Source: as `spotConditionRows`.
 * @example spotConditions({ governing: 1, regime: "medium-force" }).timeMin; // 0.18
 */
export function spotConditions(weld: { readonly governing: number; readonly regime: SpotRegime }): SpotConditions {
  checkRange("governing", { ...governing, min: sheet.min, max: sheet.max }, weld.governing);
  const row = spotConditionRows.find(({ upTo }) => weld.governing <= upTo + 1e-9);
  if (!row) throw new RangeError(`no row for ${weld.governing}`);
  const { force, cycles, current } = row[weld.regime];
  return {
    tipFace: row.tipFace,
    forceMin: toBase(force[0], "force", "kN"),
    forceMax: toBase(force[1], "force", "kN"),
    timeMin: toBase(cycles[0], "time", "cycles50"),
    timeMax: toBase(cycles[1], "time", "cycles50"),
    currentMin: current[0],
    currentMax: current[1],
  };
}

/** What zinc asks for on top of the bare steel's conditions. */
export const zinc = {
  /** times force; TWI (read) */
  forceLow: 1.1,
  forceHigh: 1.2,
  /** times current, about; Llewellyn and Hudd p. 104 (read) */
  current: 1.2,
  /** cycles of 1/50 s more; TWI (read) */
  cyclesLow: 2,
  cyclesHigh: 3,
  /** times the time, at most; Llewellyn and Hudd p. 104 (read) */
  time: 1.5,
} as const;

const bare = (label: string, symbol: string, quantity: "force" | "current" | "time"): FormulaSymbol => ({
  label,
  symbol,
  tex: symbol,
  quantity,
});

export const zincForceFormula: Formula = {
  id: "zinc-force",
  name: "Largest force on zinc-coated sheet",
  result: "forceMax",
  expression: String.raw`${zinc.forceHigh}\cdot\v{bareForce}`,
  symbols: {
    bareForce: bare("Largest force on bare steel", "F", "force"),
    forceMax: { label: "Largest force", symbol: "F′", tex: "F'", quantity: "force" },
  },
};

export const zincCurrentFormula: Formula = {
  id: "zinc-current",
  name: "Largest current on zinc-coated sheet",
  result: "currentMax",
  expression: String.raw`${zinc.current}\cdot\v{bareCurrent}`,
  symbols: {
    bareCurrent: bare("Largest current on bare steel", "I", "current"),
    currentMax: { label: "Largest current", symbol: "I′", tex: "I'", quantity: "current" },
  },
};

export const zincTimeFormula: Formula = {
  id: "zinc-time",
  name: "Longest time on zinc-coated sheet",
  result: "timeMax",
  expression: String.raw`\max\left(\v{bareTime} + \frac{${zinc.cyclesHigh}}{50},\ ${zinc.time}\cdot\v{bareTime}\right)`,
  symbols: {
    bareTime: bare("Longest time on bare steel", "T", "time"),
    timeMax: { label: "Longest time", symbol: "T′", tex: "T'", quantity: "time" },
  },
};

/**
 * The conditions of bare steel, carried over to hot-dip zinc-coated steel.
 *
 * @param steel - conditions of the bare steel
 * @returns force × 1.1 to 1.2, current × 1.2, time from 2 cycles (1/50 s) more to the larger of 3 cycles more and half as much again
 * @remarks The two sources differ on the time, so the band holds both. Sources: TWI; Llewellyn and Hudd (both read).
 * @example zincConditions(spotConditions({ governing: 1, regime: "medium-force" })).forceMin; // 1540
 */
export function zincConditions(steel: SpotConditions): SpotConditions {
  return {
    tipFace: steel.tipFace,
    forceMin: zinc.forceLow * steel.forceMin,
    forceMax: zinc.forceHigh * steel.forceMax,
    timeMin: steel.timeMin + toBase(zinc.cyclesLow, "time", "cycles50"),
    timeMax: Math.max(steel.timeMax + toBase(zinc.cyclesHigh, "time", "cycles50"), zinc.time * steel.timeMax),
    currentMin: zinc.current * steel.currentMin,
    currentMax: zinc.current * steel.currentMax,
  };
}
