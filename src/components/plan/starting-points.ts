import type { Raw } from "../../lib/inputs.ts";
import type { plan } from "../../texts/en/plan.ts";

interface StartingPoint {
  /** Its name and what it is in words are in the texts of the plan. */
  readonly id: keyof typeof plan.startingPoints;
  readonly raw: Raw;
}

/** Shapes to start from: each is a whole form, to be changed field by field. */
export const startingPoints: readonly StartingPoint[] = [
  {
    id: "flat",
    raw: {
      name: "Plate",
      width: "80mm",
      depth: "50mm",
      holes: [hole("base", 15, 15), hole("base", 65, 15), hole("base", 65, 35), hole("base", 15, 35)],
    },
  },
  {
    id: "angle",
    raw: {
      name: "Angle",
      width: "60mm",
      depth: "40mm",
      north: [leg(25, "up")],
      holes: [hole("base", 15, 15), hole("base", 45, 15), hole("north.1", 30, 15)],
    },
  },
  {
    id: "channel",
    raw: {
      name: "Channel",
      width: "120mm",
      depth: "50mm",
      south: [leg(25, "up")],
      north: [leg(25, "up")],
      holes: [hole("base", 20, 25), hole("base", 100, 25)],
    },
  },
  {
    id: "z",
    raw: {
      name: "Z bracket",
      width: "60mm",
      depth: "40mm",
      south: [leg(25, "down")],
      north: [leg(25, "up")],
      holes: [hole("south.1", 30, 15), hole("north.1", 30, 15)],
    },
  },
  {
    id: "hat",
    raw: {
      name: "Hat",
      width: "100mm",
      depth: "40mm",
      south: [leg(25, "up"), leg(18, "down")],
      north: [leg(25, "up"), leg(18, "down")],
      holes: [hole("south.2", 50, 10), hole("north.2", 50, 10)],
    },
  },
  {
    id: "j",
    raw: {
      name: "J hook",
      width: "50mm",
      depth: "45mm",
      north: [leg(30, "up"), leg(15, "up")],
      edges: [{ side: "south", kind: "closed", width: "6mm", gap: "" }],
      holes: [hole("base", 25, 20)],
    },
  },
  {
    id: "tray",
    raw: {
      name: "Tray",
      width: "200mm",
      depth: "150mm",
      south: [leg(40, "up")],
      north: [leg(40, "up")],
      west: [leg(40, "up")],
      east: [leg(40, "up")],
      holes: [hole("base", 15, 15), hole("base", 185, 15), hole("base", 185, 135), hole("base", 15, 135)],
    },
  },
  {
    id: "box",
    raw: {
      name: "Box",
      width: "160mm",
      depth: "120mm",
      south: [leg(50, "up"), leg(12, "up")],
      north: [leg(50, "up"), leg(12, "up")],
      west: [leg(50, "up"), leg(12, "up")],
      east: [leg(50, "up"), leg(12, "up")],
      holes: [hole("north.1", 80, 25)],
    },
  },
  {
    id: "tube",
    raw: {
      kind: "tube",
      name: "Tube",
      thickness: "0.8mm",
      diameter: "150mm",
      length: "300mm",
      seam: "grooved",
      seamWidth: "6mm",
      holes: [hole("base", 100, 40)],
    },
  },
  {
    id: "cone",
    raw: {
      kind: "cone",
      name: "Funnel",
      thickness: "0.8mm",
      largeDiameter: "200mm",
      smallDiameter: "120mm",
      height: "150mm",
      seam: "lap",
      seamWidth: "20mm",
    },
  },
];

/** What a page opens with when its address holds no part: a shape that has some of everything. */
export const example: Raw = startingPoints.find(({ id }) => id === "channel")?.raw ?? {};

function leg(length: number, way: "up" | "down") {
  return { leg: `${length}mm`, angle: "90deg", way, radius: "" };
}

function hole(panel: string, x: number, y: number) {
  return { panel, x: `${x}mm`, y: `${y}mm`, diameter: "5mm" };
}
