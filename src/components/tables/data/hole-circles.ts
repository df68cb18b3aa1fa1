import { chord, holeCircle } from "../../../lib/marking/hole-circle.ts";
import { formatNumber } from "../../../lib/quantity/format.ts";
import { number, type Table } from "../table.ts";

const counts = Array.from({ length: 22 }, (_, index) => index + 3);
/** Beyond this many holes the list is better made by the calculator. */
const mostListed = 12;

const exact = { source: "geometry" } as const;
const round = { centreX: 0, centreY: 0, startAngle: 0, diameter: 2 } as const;

/** The chord between neighbours on a circle of diameter 1, by the number of holes. */
export function chordTable(): Table {
  return {
    id: "hole-circle-chords",
    caption: "Chord between neighbouring holes, for a circle of diameter 1",
    columns: [
      { label: "Holes", kind: "key-number" },
      { label: "Angle from hole to hole", unit: "°", kind: "number", from: exact },
      { label: "Chord ÷ diameter", kind: "number", from: exact },
      { label: "Chord on a circle of 100 mm", unit: "mm", kind: "number", from: exact },
    ],
    rows: counts.map((count) => {
      const factor = chord({ diameter: 1, count });
      const angle = 360 / count;
      return {
        cells: [
          number(count, String(count)),
          number(angle, formatNumber(angle, 3)),
          number(factor, factor.toFixed(6)),
          number(100 * factor, formatNumber(100 * factor, 3)),
        ],
      };
    }),
    notes: [
      "Multiply by the diameter of your circle. A printed list of these chords has a misprint at 15 holes, 0.2070 for 0.2079; here each is worked out.",
    ],
  };
}

/** Centres on a circle of radius 1 about its own middle, the first hole to the right. */
export function placeTable(): Table {
  return {
    id: "hole-circle-centres",
    caption: "Centres of the holes, for a circle of radius 1 about its middle",
    columns: [
      { label: "Holes", kind: "key-number" },
      { label: "Hole", kind: "key-number" },
      { label: "Angle", unit: "°", kind: "number", from: exact },
      { label: "To the right ÷ radius", kind: "number", from: exact },
      { label: "Upwards ÷ radius", kind: "number", from: exact },
    ],
    rows: counts
      .filter((count) => count <= mostListed)
      .flatMap((count) =>
        holeCircle({ ...round, count }).map(({ angle, x, y }, index) => ({
          cells: [
            number(count, String(count)),
            number(index + 1, String(index + 1)),
            number(angle, formatNumber(angle, 3)),
            number(x, formatNumber(x, 6)),
            number(y, formatNumber(y, 6)),
          ],
        })),
      ),
    notes: ["Multiply by the radius of your circle, and add the distances of its centre from your two datum edges."],
  };
}
