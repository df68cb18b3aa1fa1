import { spotConditionRows, spotConditions, spotRegimes } from "../../../lib/joining/spot-conditions.ts";
import { tradeSchedules } from "../../../lib/joining/trade-schedules.ts";
import { formatNumber } from "../../../lib/quantity/format.ts";
import { fromBase, toBase } from "../../../lib/quantity/units.ts";
import { type Cell, type Column, number, type Table } from "../table.ts";

const shown = (value: number, decimals: number) => number(value, formatNumber(value, decimals));

/** From and to of a band, in a unit of its quantity. */
function band(low: number, high: number, decimals: number): Cell[] {
  return [shown(low, decimals), shown(high, decimals)];
}

const bandColumns = (group: string, unit: string): Column[] => [
  { group, label: "from", unit, kind: "number" },
  { group, label: "to", unit, kind: "number" },
];

/** Plain steel by ISO 14373, both regimes. */
export function isoSpotTable(): Table {
  const kN = (force: number) => fromBase(force, "force", "kN");
  return {
    id: "spot-settings",
    caption: "Uncoated low-carbon steel, starting values by the thickness of the thinner sheet",
    from: { source: "iso-14373-table" },
    columns: [
      { label: "Thickness over", unit: "mm", kind: "key-number" },
      { label: "up to", unit: "mm", kind: "key-number" },
      { label: "Regime", kind: "key" },
      { label: "Tip face", unit: "mm", kind: "number" },
      ...bandColumns("Force", "kN"),
      ...bandColumns("Weld time at 50 Hz", "cycles"),
      ...bandColumns("Weld time at 60 Hz", "cycles"),
      ...bandColumns("Weld time", "s"),
      ...bandColumns("Current", "kA"),
    ],
    rows: spotConditionRows.flatMap(({ above, upTo, tipFace }) =>
      (Object.keys(spotRegimes) as (keyof typeof spotRegimes)[]).map((regime) => {
        const { forceMin, forceMax, timeMin, timeMax, currentMin, currentMax } = spotConditions({ governing: upTo, regime });
        const cycles = (unit: "cycles50" | "cycles60") =>
          [timeMin, timeMax].map((time) => fromBase(time, "time", unit)) as [number, number];
        return {
          cells: [
            shown(above, 1),
            shown(upTo, 1),
            spotRegimes[regime],
            shown(tipFace, 0),
            ...band(kN(forceMin), kN(forceMax), 1),
            ...band(...cycles("cycles50"), 0),
            ...band(...cycles("cycles60"), 1),
            ...band(timeMin, timeMax, 2),
            ...band(currentMin, currentMax, 0),
          ],
        };
      }),
    ),
    notes: [
      "Starting values: prove them with test welds of the same sheet, peeled apart. The machine’s manual wins.",
      "The source gives cycles of 0.02 s; seconds and cycles at 60 Hz are worked out from them. A row holds its upper edge.",
      "Not for coated steel as it stands, and not for aluminium or copper: the calculator says what to do instead.",
    ],
  };
}

interface Printed {
  readonly inches: number;
  readonly tipFace: number;
  readonly force: number;
  readonly cycles: number;
  readonly amperes: number;
  readonly nugget: number;
  readonly spacing: number;
  readonly overlap: number;
  readonly shear: number;
  readonly softShear?: number;
}

/** Of sheet with the tensile strength named below it. */
const leastShear = "Least shear of one spot, sheet of";

const inchCell = (inches: number, decimals = 1) => shown(toBase(inches, "length", "in"), decimals);
const poundsCell = (pounds: number) => shown(fromBase(toBase(pounds, "force", "lbf"), "force", "kN"), 2);

function scheduleTable(
  id: string,
  caption: string,
  source: string,
  rows: readonly Printed[],
  strengths: readonly { readonly head: Pick<Column, "label" | "group">; readonly of: (row: Printed) => number }[],
  note: string,
): Table {
  return {
    id,
    caption,
    from: { source, note: "provisional" },
    columns: [
      { label: "Thickness", unit: "in", kind: "key-number" },
      { label: "Thickness", unit: "mm", kind: "key-number" },
      { label: "Tip face", unit: "mm", kind: "number" },
      { label: "Force", unit: "kN", kind: "number" },
      { label: "Weld time", unit: "cycles at 60 Hz", kind: "number" },
      { label: "Weld time", unit: "s", kind: "number" },
      { label: "Current", unit: "kA", kind: "number" },
      { label: "Nugget", unit: "mm", kind: "number" },
      { label: "Least pitch", unit: "mm", kind: "number" },
      { label: "Least lap", unit: "mm", kind: "number" },
      ...strengths.map(({ head }): Column => ({ ...head, unit: "kN", kind: "number" })),
    ],
    rows: rows.map((row) => ({
      cells: [
        number(row.inches, row.inches.toFixed(3)),
        inchCell(row.inches, 2),
        inchCell(row.tipFace),
        poundsCell(row.force),
        shown(row.cycles, 0),
        shown(toBase(row.cycles, "time", "cycles60"), 2),
        shown(toBase(row.amperes, "current", "A"), 1),
        inchCell(row.nugget),
        inchCell(row.spacing),
        inchCell(row.overlap),
        ...strengths.map(({ of }) => poundsCell(of(row))),
      ],
    })),
    notes: [note],
  };
}

/** American trade schedules, which give what the standard's table leaves out: nugget, pitch, lap and strength. */
export function scheduleTables(): Table[] {
  return [
    scheduleTable(
      "spot-schedule-steel",
      "Low-carbon steel, by a trade schedule",
      "spot-schedule-reprint",
      tradeSchedules["low-carbon"],
      [{ head: { label: "Least shear of one spot" }, of: ({ shear }) => shear }],
      "Seen only in suppliers’ reprints, in inches, pounds and amperes; the rest is worked out. It fills in nugget, pitch, lap and strength, which the table above does not have.",
    ),
    scheduleTable(
      "spot-schedule-stainless",
      "Austenitic stainless steel, by a trade schedule",
      "stainless-schedule-reprint",
      tradeSchedules.stainless,
      [
        { head: { group: leastShear, label: "70 to 90 ksi" }, of: ({ softShear, shear }) => softShear ?? shear },
        { head: { group: leastShear, label: "from 90 ksi" }, of: ({ shear }) => shear },
      ],
      "Seen only in a supplier’s reprint. The strengths at 0.014 and 0.021 in may be misprints.",
    ),
  ];
}
