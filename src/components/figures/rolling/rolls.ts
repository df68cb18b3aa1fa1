import { loadCatalogue } from "../../../catalogue/load.ts";
import { elasticLimitRadius, type Strip } from "../../../lib/bending/springback.ts";
import { radiusLeft } from "../../../lib/rolling/loaded-radius.ts";
import { radiusAtRise } from "../../../lib/rolling/three-roll.ts";
import { at, type Spot, spot } from "../pen.tsx";

/** This shop's rolls from the side, about the place where the sheet lies on the lower front roll; lengths in mm. */
export function shopRolls() {
  const { rolls } = loadCatalogue().shop;
  return { front: rolls.frontRoll / 2, rear: rolls.rearRoll / 2, spacing: rolls.spacing };
}

/** How millimetres get onto the paper: the pinch, and the scale. */
export interface RollView {
  readonly pinch: Spot;
  readonly scale: number;
}

/**
 * The sheet between the rolls, on its middle line: level before the pinch, one radius up to the rear roll, and behind it the
 * radius it springs back to.
 */
export function sheetPath(
  view: RollView,
  curve: { readonly rise: number; readonly strip: Strip; readonly before: number; readonly after: number },
): string {
  const { rear, spacing } = shopRolls();
  const { strip, rise, before, after } = curve;
  const half = strip.thickness / 2;
  const put = (x: number, y: number) => at(spot(view.pinch.x + view.scale * x, view.pinch.y - view.scale * y));
  const start = `M${put(-before, half)}L${put(0, half)}`;
  if (rise <= 0) return `${start}L${put(spacing + after, half)}`;
  const loaded = radiusAtRise({ thickness: strip.thickness, rearRoll: 2 * rear, rollSpacing: spacing, rise });
  const turn = Math.asin(spacing / (loaded + strip.thickness + rear));
  const middle = loaded + half;
  const end = { x: middle * Math.sin(turn), y: half + middle * (1 - Math.cos(turn)) };
  const left = loaded < elasticLimitRadius(strip) ? radiusLeft(strip, loaded) : undefined;
  const arc = `${start}A${(view.scale * middle).toFixed(1)} ${(view.scale * middle).toFixed(1)} 0 0 0 ${put(end.x, end.y)}`;
  if (left === undefined) return `${arc}L${put(end.x + after * Math.cos(turn), end.y + after * Math.sin(turn))}`;
  const free = left + half;
  const more = Math.min(after / free, (200 * Math.PI) / 180 - turn);
  const far = {
    x: end.x + free * (Math.sin(turn + more) - Math.sin(turn)),
    y: end.y + free * (Math.cos(turn) - Math.cos(turn + more)),
  };
  return `${arc}A${(view.scale * free).toFixed(1)} ${(view.scale * free).toFixed(1)} 0 ${more > Math.PI ? 1 : 0} 0 ${put(far.x, far.y)}`;
}
