import { loadCatalogue } from "../src/catalogue/load.ts";
import { startingPoints } from "../src/components/plan/starting-points.ts";
import { fold, measure } from "../src/lib/part/fold.ts";
import { planFrom } from "../src/lib/part/plan.ts";
import { withOrder } from "../src/lib/part/plan-order.ts";

const catalogue = loadCatalogue();
const channel = startingPoints.find(({ id }) => id === "channel")?.raw ?? {};
const leg = { leg: "30mm", angle: "90deg", way: "up", radius: "" };
const holes = Array.from({ length: 40 }, (_, index) => ({
  panel: "base",
  x: `${10 + index * 4}mm`,
  y: "150mm",
  diameter: "3mm",
}));
/** Twelve bends and forty holes. */
const large = { width: "200mm", depth: "300mm", north: new Array(6).fill(leg), south: new Array(6).fill(leg), holes };
const [chain] = planFrom(large, catalogue).plan?.layout.chains ?? [];
if (!chain) throw new Error("the large part cannot be planned");

export const planOfChannel = () => planFrom(channel, catalogue);
export const planOf12BendsAnd40Holes = () => planFrom(large, catalogue);
export const foldBackAndMeasure12Bends = () => measure(chain, fold(chain));

/** A box with three legs on each side, forty holes, its order of bends searched. */
const side = ["40mm", "20mm", "12mm"].map((size, index) => ({
  leg: size,
  angle: index === 2 ? "45deg" : "90deg",
  way: index === 1 ? "down" : "up",
}));
const box = { width: "300mm", depth: "240mm", north: side, south: side, east: side, west: side, holes };
const boxPlan = planFrom(box, catalogue).plan;
if (!boxPlan) throw new Error("the box cannot be planned");

export const planOfBoxWith12BendsAnd40Holes = () => planFrom(box, catalogue);
export const orderOfItsBends = () => withOrder(boxPlan, catalogue);
