import { loadCatalogue } from "../src/catalogue/load.ts";
import { depthTree } from "../src/lib/part/depth-order.ts";
import { foldingSteps, turnedAt } from "../src/lib/part/folding-steps.ts";
import { planFrom } from "../src/lib/part/plan.ts";
import { poseOf, solidOf } from "../src/lib/part/solid.ts";
import { paint, usualView } from "../src/lib/part/view.ts";

/** A box with twelve bends, three on each side, and forty holes. */
const leg = (size: number, way: "up" | "down" = "up") => ({ leg: `${size}mm`, angle: "90deg", way, radius: "" });
const side = [leg(60), leg(20), leg(10, "down")];
const { plan } = planFrom(
  {
    width: "400mm",
    depth: "300mm",
    north: side,
    south: side,
    east: side,
    west: side,
    holes: Array.from({ length: 40 }, (_, index) => ({
      panel: "base",
      x: `${60 + (index % 8) * 38}mm`,
      y: `${60 + Math.floor(index / 8) * 42}mm`,
      diameter: "8mm",
    })),
  },
  loadCatalogue(),
);
if (!plan) throw new Error("the box cannot be planned");

const solid = solidOf(plan.layout);
const steps = foldingSteps(plan.layout);
const turned = turnedAt(steps, 9.4);
const tree = depthTree(poseOf(solid, turned));

export const facetsOf12BendsAnd40Holes = () => solidOf(plan.layout);
/** Folding, ordering and projecting: what the slider does. */
export const frameOf12BendsAnd40Holes = () => paint(solid, depthTree(poseOf(solid, turned)), usualView);
/** Only the view has changed. */
export const turnedViewOf12BendsAnd40Holes = () => paint(solid, tree, usualView);
