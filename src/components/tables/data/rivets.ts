import { diameterFactors, rivetLayout, rivetSizes } from "../../../lib/joining/rivets.ts";
import { formatNumber } from "../../../lib/quantity/format.ts";
import { fromBase } from "../../../lib/quantity/units.ts";
import { number, type Table } from "../table.ts";

const mm = (value: number) => number(value, formatNumber(value, 2));
const inch = (value: number) => number(fromBase(value, "length", "in"), formatNumber(fromBase(value, "length", "in"), 4));

/** Solid rivets: sizes, drills, and the least distances that go with each. */
export function rivetTable(): Table {
  const handbook = { source: "faa-h-8083-31-drills" };
  const older = { source: "p-40-repair-manual" };
  const layout = { source: "tm-10-5410", note: "the same in Cox 1999" };
  const head = { source: "p-40-repair-manual" };
  return {
    id: "rivets",
    caption: "Rivet sizes with their drills and least distances",
    columns: [
      { label: "Size", kind: "key" },
      { label: "Metric list", kind: "key" },
      { label: "Diameter", unit: "mm", kind: "number", from: { source: "inch-definition" } },
      {
        label: "For sheet up to",
        unit: "mm",
        kind: "number",
        from: { source: "ac-43-13-1b-rivet-size", note: "a third of the diameter, for the thicker sheet" },
      },
      { group: "Drill, by the handbook", label: "diameter", unit: "mm", kind: "number", from: handbook },
      { group: "Drill, by the handbook", label: "diameter", unit: "in", kind: "number", from: handbook },
      { group: "Drill, by an older manual", label: "diameter", unit: "mm", kind: "number", from: older },
      { group: "Drill, by an older manual", label: "diameter", unit: "in", kind: "number", from: older },
      { group: "Least distance", label: "pitch", unit: "mm", kind: "number", from: layout },
      { group: "Least distance", label: "to the edge", unit: "mm", kind: "number", from: layout },
      {
        group: "Least distance",
        label: "lap, one row",
        unit: "mm",
        kind: "number",
        from: { source: "geometry", note: "two edge distances" },
      },
      { group: "Driven head", label: "width", unit: "mm", kind: "number", from: head },
      { group: "Driven head", label: "height", unit: "mm", kind: "number", from: head },
    ],
    rows: rivetSizes.map(({ inches, metric, diameter, hole, olderHole }) => {
      const { pitch, edge, lap, headWidth, headHeight } = rivetLayout(diameter);
      const sheet = diameter / diameterFactors.target;
      return {
        cells: [
          { text: inches, order: diameter },
          { text: metric, order: diameter },
          number(diameter, formatNumber(diameter, 3)),
          mm(sheet),
          mm(hole),
          inch(hole),
          mm(olderHole),
          inch(olderHole),
          mm(pitch),
          mm(edge),
          mm(lap),
          mm(headWidth),
          mm(headHeight),
        ],
      };
    }),
    notes: [
      "Distances are least values, from centre to centre or from centre to edge.",
      "The maker’s sheet of a blind rivet wins over this table: its drill, its grip and its strength are its own.",
    ],
  };
}
