import { setback } from "../../lib/bending/setback.ts";
import { fold } from "../../lib/part/fold.ts";
import { useTexts } from "../../texts/context.ts";
import { figuresBending } from "../../texts/en/figures-bending.ts";
import { layoutOf } from "./layout-of.ts";
import { Line, Note, Paper, Path, Size, spot } from "./pen.tsx";
import { sectionPath } from "./section.ts";

// Thicker than the worked example, so that the corner can be seen.
const sheet = { thickness: 3, radius: 3, angle: 90 };
const legs = { level: 30, upright: 24 };

/** An angle section with its outside legs, the apex, the tangent lines and the two setbacks. */
export default function Setback() {
  const { setback: texts } = useTexts(figuresBending);
  const scale = 7.4;
  const layout = layoutOf({
    thickness: `${sheet.thickness}mm`,
    radius: `${sheet.radius}mm`,
    depth: `${legs.level}mm`,
    north: [{ leg: `${legs.upright}mm`, angle: "90deg", way: "up" }],
  });
  const sb = setback({ ...sheet, legTo: "apex" });
  const origin = spot(46, 210);
  const apex = spot(origin.x + scale * legs.level, origin.y);
  const levelTangent = spot(apex.x - scale * sb, apex.y);
  const uprightTangent = spot(apex.x, apex.y - scale * sb);
  const inside = scale * sheet.thickness;
  return (
    <Paper height={276} title={texts.title}>
      <Path d={sectionPath(fold(layout), sheet.thickness, { scale, origin })} kind="sheet" />
      <Line from={levelTangent} to={apex} kind="hidden" />
      <Line from={uprightTangent} to={apex} kind="hidden" />
      <Line from={spot(levelTangent.x, levelTangent.y + 6)} to={spot(levelTangent.x, levelTangent.y - inside - 8)} kind="sight" />
      <Line
        from={spot(uprightTangent.x + 6, uprightTangent.y)}
        to={spot(uprightTangent.x - inside - 8, uprightTangent.y)}
        kind="sight"
      />
      <Size from={levelTangent} to={apex} off={-18} text={texts.symbol} />
      <Size from={origin} to={apex} off={-46} text={texts.leg} />
      <Size from={apex} to={uprightTangent} off={-18} text={texts.symbol} />
      <Size from={apex} to={spot(apex.x, apex.y - scale * legs.upright)} off={-46} text={texts.leg} />
      <Note to={apex} from={spot(322, 236)} lines={texts.apex} anchor="middle" end="arrow" />
      <Note to={spot(levelTangent.x, levelTangent.y - inside - 8)} from={spot(176, 140)} lines={texts.tangent} anchor="end" />
      <Note to={spot(uprightTangent.x - inside - 8, uprightTangent.y)} from={spot(204, 104)} lines={texts.tangent} anchor="end" />
    </Paper>
  );
}
