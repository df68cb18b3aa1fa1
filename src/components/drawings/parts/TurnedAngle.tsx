import { type ParseContext, ParseError, parseQuantity } from "../../../lib/quantity/parse.ts";
import { Arrowhead, arcPath, at, away, Line, spot } from "../../figures/pen.tsx";

function angleOf(stored: string, context: ParseContext): number | undefined {
  try {
    const { value } = parseQuantity(stored, "angle", context);
    return value > 0 && value <= 180 ? value : undefined;
  } catch (error) {
    if (error instanceof ParseError) return undefined;
    throw error;
  }
}

/**
 * Which angle is meant: the one the leaf side turns through, from flat. Mixing it up with the corner left inside is the
 * classic error, so it is drawn beside every field that asks for it.
 */
export function TurnedAngle({ stored, context }: { stored: string; context: ParseContext }) {
  const angle = angleOf(stored, context);
  const corner = spot(40, 36);
  const radius = 24;
  const lean = ((7 / radius) * 90) / Math.PI;
  return (
    <svg class="fig turned-angle" viewBox="0 0 80 44" aria-hidden="true">
      <Line from={corner} to={spot(74, 36)} kind="hidden" />
      <path class="outline" d={`M6 36L${at(corner)}${angle === undefined ? "" : `L${at(away(corner, angle, 33))}`}`} />
      {angle !== undefined && angle > 12 && (
        <>
          <path class="motion-line" d={arcPath(corner, radius, 0, angle)} />
          <Arrowhead tip={away(corner, angle, radius)} direction={angle + 90 - lean} kind="arrow-motion" />
        </>
      )}
    </svg>
  );
}
