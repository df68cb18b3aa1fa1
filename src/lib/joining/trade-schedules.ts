import { checkRange } from "../inputs.ts";
import { toBase } from "../quantity/units.ts";
import { enclosing, interpolate } from "./lookup.ts";
import type { SpotConditions } from "./spot-conditions.ts";
import { governing, sheet } from "./symbols.ts";

/**
 * Two American trade schedules, seen only in suppliers' reprints and so provisional: they fill in what ISO 14373 leaves out.
 * Columns are as printed: inches, pounds-force, cycles of 1/60 s, amperes.
 */
interface Row {
  readonly inches: number;
  readonly tipFace: number;
  readonly force: number;
  readonly cycles: number;
  readonly amperes: number;
  readonly nugget: number;
  readonly spacing: number;
  readonly overlap: number;
}

type Printed = readonly [number, number, number, number, number, number, number, number];

function row([inches, tipFace, force, cycles, amperes, nugget, spacing, overlap]: Printed): Row {
  return { inches, tipFace, force, cycles, amperes, nugget, spacing, overlap };
}

/** Source: resistance-welding trade schedule for low-carbon steel, single impulse, suppliers' reprints (read). Last: least shear. */
const lowCarbon = (
  [
    [[0.01, 0.125, 160, 4, 4000, 0.113, 0.25, 0.375], 130],
    [[0.021, 0.187, 244, 6, 6500, 0.139, 0.375, 0.4375], 300],
    [[0.031, 0.187, 326, 8, 8000, 0.161, 0.5, 0.4375], 530],
    [[0.04, 0.25, 412, 10, 8800, 0.181, 0.75, 0.5], 812],
    [[0.05, 0.25, 554, 14, 9600, 0.21, 0.875, 0.5625], 1195],
    [[0.062, 0.25, 670, 18, 10600, 0.231, 1, 0.625], 1717],
    [[0.078, 0.312, 903, 25, 11800, 0.268, 1.125, 0.6875], 2365],
    [[0.094, 0.312, 1160, 34, 13000, 0.304, 1.25, 0.75], 3054],
    [[0.109, 0.375, 1440, 45, 14200, 0.338, 1.3125, 0.8125], 3672],
    [[0.125, 0.375, 1760, 60, 15600, 0.375, 1.5, 0.875], 4300],
  ] as const
).map(([printed, shear]) => ({ ...row(printed), shear }));

/**
 * Source: the same kind of schedule for austenitic stainless steel up to 150 ksi, supplier's reprint (read).
 * Last: least shear of sheet from 70 to 90 ksi and from 90 ksi. The 0.014 and 0.021 rows may hold misprints in it.
 */
const stainless = (
  [
    [[0.014, 0.125, 300, 4, 2500, 0.082, 0.25, 0.25], 240, 250],
    [[0.016, 0.125, 330, 4, 3000, 0.088, 0.3125, 0.25], 280, 300],
    [[0.018, 0.125, 380, 4, 3500, 0.093, 0.3125, 0.25], 320, 360],
    [[0.021, 0.1562, 400, 4, 4000, 0.1, 0.3125, 0.3125], 370, 470],
    [[0.025, 0.1562, 520, 5, 5000, 0.12, 0.4375, 0.375], 500, 600],
    [[0.031, 0.1875, 650, 5, 6000, 0.13, 0.5, 0.375], 680, 800],
    [[0.034, 0.1875, 750, 6, 7000, 0.15, 0.5625, 0.4375], 800, 920],
    [[0.04, 0.1875, 900, 6, 7800, 0.16, 0.625, 0.4375], 1000, 1270],
    [[0.044, 0.1875, 1000, 8, 8700, 0.18, 0.6875, 0.4375], 1200, 1450],
    [[0.05, 0.25, 1200, 8, 9500, 0.19, 0.75, 0.5], 1450, 1700],
    [[0.056, 0.25, 1350, 10, 10300, 0.21, 0.875, 0.5625], 1700, 2000],
    [[0.062, 0.25, 1500, 10, 11000, 0.22, 1, 0.625], 1950, 2400],
    [[0.07, 0.25, 1700, 12, 12300, 0.25, 1.125, 0.625], 2400, 2800],
    [[0.078, 0.3125, 1900, 14, 14000, 0.275, 1.25, 0.6875], 2700, 3400],
    [[0.094, 0.3125, 2400, 16, 15700, 0.29, 1.5, 0.75], 3550, 4200],
    [[0.109, 0.375, 2800, 18, 17700, 0.29, 1.5, 0.8125], 4200, 5000],
    [[0.125, 0.375, 3300, 20, 18000, 0.3, 2, 0.875], 5000, 6000],
  ] as const
).map(([printed, softShear, shear]) => ({ ...row(printed), softShear, shear }));

/** From this tensile strength [N/mm²] the stainless schedule has its second strength column: 90 ksi. */
export const strongStainless = toBase(90, "stress", "ksi");

export const tradeSchedules = { "low-carbon": lowCarbon, stainless } as const;
export type TradeSchedule = keyof typeof tradeSchedules;

const thicknessOf = ({ inches }: Row) => toBase(inches, "length", "in");

/** What a trade schedule says of one spot beyond its conditions. */
export interface ScheduledSpot extends SpotConditions {
  /** [mm], of the fused zone */
  readonly nugget: number;
  /** [mm], least distance of two spots at which the second needs no more current */
  readonly spacing: number;
  /** [mm], least lap of the sheets */
  readonly overlap: number;
  /** [N], least shear strength of one spot */
  readonly shear: number;
}

/**
 * A spot by one of the trade schedules.
 *
 * @param weld.governing - t [mm], the thinner sheet; 0.4 to 3
 * @param weld.tensile - Rm [N/mm²] of the sheet; read only by the stainless schedule
 * @returns conditions from the rows on both sides of t (from and to); strength and nugget on the line between them; spacing and
 *   overlap of the thicker row, since they are least values
 * @throws InputError for a thickness outside its range
 * @remarks Provisional. Source: as the tables above.
 */
export function scheduledSpot(
  schedule: TradeSchedule,
  weld: { readonly governing: number; readonly tensile: number },
): ScheduledSpot {
  checkRange("governing", { ...governing, min: sheet.min, max: sheet.max }, weld.governing);
  const rows = tradeSchedules[schedule];
  const [below, above] = enclosing<Row>(rows, thicknessOf, weld.governing);
  const at = (column: (each: Row) => number) => interpolate<Row>(rows, thicknessOf, column, weld.governing);
  const shearOf = (each: Row) => {
    const { shear, softShear } = each as (typeof stainless)[number];
    return schedule === "stainless" && weld.tensile < strongStainless ? softShear : shear;
  };
  return {
    tipFace: toBase(above.tipFace, "length", "in"),
    forceMin: toBase(below.force, "force", "lbf"),
    forceMax: toBase(above.force, "force", "lbf"),
    timeMin: toBase(below.cycles, "time", "cycles60"),
    timeMax: toBase(above.cycles, "time", "cycles60"),
    currentMin: toBase(below.amperes, "current", "A"),
    currentMax: toBase(above.amperes, "current", "A"),
    nugget: toBase(
      at(({ nugget }) => nugget),
      "length",
      "in",
    ),
    spacing: toBase(above.spacing, "length", "in"),
    overlap: toBase(above.overlap, "length", "in"),
    shear: toBase(at(shearOf), "force", "lbf"),
  };
}

/**
 * Aluminium, to show what it would ask for. Thickness [mm], force [kN], current [kA], cycles of 1/50 s.
 * Source: Mathers 2002, Table 9.2, p. 172 (read).
 */
const aluminiumRows = [
  { thickness: 0.8, force: 3.5, current: 28, cycles: 4 },
  { thickness: 1, force: 4, current: 32, cycles: 4 },
  { thickness: 1.6, force: 5.2, current: 43, cycles: 7 },
  { thickness: 2, force: 6.5, current: 52, cycles: 8 },
  { thickness: 2.5, force: 8, current: 60, cycles: 12 },
  { thickness: 3.2, force: 11, current: 70, cycles: 12 },
] as const;

/** What an aluminium sheet would ask for. */
export interface AluminiumSpot {
  /** [mm], of the row */
  readonly thickness: number;
  /** [N] */
  readonly force: number;
  /** [kA] */
  readonly current: number;
  /** [s] */
  readonly time: number;
}

/**
 * The first row of the aluminium table that is not thinner than a sheet.
 *
 * @param thickness - [mm]; 0.4 to 3
 * @throws InputError for a thickness outside its range
 * @remarks Source: Mathers 2002, Table 9.2, p. 172 (read).
 */
export function aluminiumSpot(thickness: number): AluminiumSpot {
  checkRange("thickness", sheet, thickness);
  const found = aluminiumRows.find((each) => thickness <= each.thickness + 1e-9);
  if (!found) throw new RangeError(`no row for ${thickness}`);
  return {
    thickness: found.thickness,
    force: toBase(found.force, "force", "kN"),
    current: found.current,
    time: toBase(found.cycles, "time", "cycles50"),
  };
}
