import { type Catalogue, type ThicknessTolerance, type ToleranceClass, toleranceClasses } from "../../../lib/catalogue.ts";
import { number, type Table } from "../table.ts";

const printed = (value: number) => number(value, String(value));

export const classNames: Readonly<Record<ToleranceClass, string>> = { f: "fine", m: "medium", c: "coarse", v: "very coarse" };

const none = "none given";

const columnsOf = (unit: string) =>
  toleranceClasses.map(
    (each) => ({ group: "± for class", label: `${each}, ${classNames[each]}`, unit, kind: "number" }) as const,
  );

/** What a length has when the drawing names only a class. */
export function linearToleranceTable({ generalTolerances: { linear } }: Catalogue): Table {
  const { source, seen, above, upTo, classes } = linear;
  return {
    id: "general-tolerances-lengths",
    caption: "Lengths: ± by nominal size and class",
    from: { source, seen },
    columns: [
      { label: "Size from or over", unit: "mm", kind: "key-number" },
      { label: "up to", unit: "mm", kind: "key-number" },
      ...columnsOf("mm"),
    ],
    rows: upTo.map((edge, index) => ({
      cells: [
        printed(upTo[index - 1] ?? above),
        printed(edge),
        ...toleranceClasses.map((each) => {
          const value = classes[each][index] ?? null;
          return value === null ? none : printed(value);
        }),
      ],
    })),
    notes: [
      `A row holds its upper edge. Sizes below ${above} mm have no general tolerance: the drawing has to say it.`,
      "They do not cover the radius or the angle of a bend in detail, nor flatness and squareness; those have standards of their own.",
    ],
  };
}

/** Degrees and minutes of arc, as the standard prints them. */
function arcText(degrees: number): string {
  const minutes = Math.round(degrees * 60);
  const whole = Math.floor(minutes / 60);
  const rest = String(minutes % 60).padStart(2, "0");
  return `${whole}°${rest}′`;
}

/** What an angle has when the drawing names only a class. */
export function angularToleranceTable({ generalTolerances: { angular } }: Catalogue): Table {
  const { source, seen, upTo, classes } = angular;
  return {
    id: "general-tolerances-angles",
    caption: "Angles: ± by the shorter side and class",
    from: { source, seen },
    columns: [
      { label: "Shorter side over", unit: "mm", kind: "key-number" },
      { label: "up to", unit: "mm", kind: "key-number" },
      ...columnsOf("degrees"),
    ],
    rows: upTo.map((edge, index) => ({
      cells: [
        printed(upTo[index - 1] ?? 0),
        edge === null ? "no limit" : printed(edge),
        ...toleranceClasses.map((each) => {
          const value = classes[each][index] ?? 0;
          return number(value, arcText(value));
        }),
      ],
    })),
    notes: ["A row holds its upper edge. The shorter of the two sides that form the angle decides."],
  };
}

/** One published table of how far sheet may be from its nominal thickness. */
export function thicknessToleranceTable(table: ThicknessTolerance): Table {
  const { id, name, source, seen, note, edge, widthEdge, widths, bands } = table;
  const upper = edge === "upper";
  const widthWords = (upTo: number | null, before: number | null | undefined) => {
    const start = before ?? 0;
    if (upTo === null) return widthEdge === "upper" ? `over ${start}` : `from ${start}`;
    if (start === 0) return widthEdge === "upper" ? `up to ${upTo}` : `under ${upTo}`;
    return widthEdge === "upper" ? `over ${start} to ${upTo}` : `${start} to under ${upTo}`;
  };
  const decimals = Math.max(
    ...bands.flatMap(({ tolerance }) => tolerance.map((each) => String(each).split(".")[1]?.length ?? 0)),
  );
  return {
    id: `thickness-${id}`,
    caption: name,
    from: { source, seen },
    columns: [
      { label: upper ? "Thickness over" : "Thickness from", unit: "mm", kind: "key-number" },
      { label: upper ? "up to" : "to under", unit: "mm", kind: "key-number" },
      ...widths.map(
        (upTo, index) =>
          ({ group: "± (mm) for a width of", label: widthWords(upTo, widths[index - 1]), unit: "mm", kind: "number" }) as const,
      ),
    ],
    rows: bands.map(({ above, upTo, tolerance }) => ({
      cells: [
        number(above, above.toFixed(2)),
        number(upTo, upTo.toFixed(2)),
        ...tolerance.map((each) => number(each, each.toFixed(decimals))),
      ],
    })),
    notes: note ? [note] : [],
  };
}

export function thicknessToleranceTables({ thicknessTolerances }: Catalogue): Table[] {
  return Object.values(thicknessTolerances).map(thicknessToleranceTable);
}
