import { loadCatalogue } from "../../../catalogue/load.ts";
import { setback } from "../../../lib/bending/setback.ts";
import { reliefCentre } from "../../../lib/cutting/corner-notch.ts";
import { runWorksheet } from "../../../lib/worksheet.ts";
import cornerCut from "../../../lib/worksheets/corner-cut.ts";

/** The box of the page on corners, outside [mm]; its corner is the calculator's own example. */
export const box = { width: 100, depth: 70 };

/** Where the marks of that corner lie, from the edge of the blank [mm]. */
export function cornerPlaces() {
  const { values, answer, problems } = runWorksheet(cornerCut, {}, loadCatalogue());
  if (!answer || !values) throw new Error(`The corner of the figures: ${problems.map(({ message }) => message).join(" ")}`);
  const { guideA: guide, reliefDiameter: relief } = answer.outputs;
  if (guide === null || relief === null) throw new Error("The corner of the figures has no guide or no relief hole");
  const { sideA: side, thickness, radius, gap } = values;
  const deduction = side + gap - guide;
  const sb = setback({ angle: 90, radius, thickness, legTo: "apex" });
  return {
    side,
    thickness,
    radius,
    gap,
    guide,
    relief,
    deduction,
    tangent: side - sb,
    centre: reliefCentre({ side, deduction }, sb),
  };
}
