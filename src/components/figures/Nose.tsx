import { fold } from "../../lib/part/fold.ts";
import { useTexts } from "../../texts/context.ts";
import { figuresBending } from "../../texts/en/figures-bending.ts";
import { layoutOf } from "./layout-of.ts";
import { AngleSize, at, away, Line, Note, Paper, Path, Size, spot, Text } from "./pen.tsx";
import { sectionPath } from "./section.ts";
import { type BrakeFront, bedPath, fingerPath, leafPath } from "./tool.ts";

const sheet = { thickness: 1.2, radius: 1.6 };
const layout = layoutOf({
  thickness: `${sheet.thickness}mm`,
  radius: `${sheet.radius}mm`,
  depth: "10mm",
  north: [{ leg: "9mm", angle: "90deg", way: "up" }],
});

/** The nose enlarged, with the leaf and the leg up at 90°: why the finger stands back by one thickness. */
export default function Nose() {
  const { nose: texts } = useTexts(figuresBending);
  const scale = 19;
  const hinge = spot(236, 196);
  const front: BrakeFront = {
    hinge,
    scale,
    noseRadius: sheet.radius,
    setback: sheet.thickness,
    thickness: sheet.thickness,
    reach: 11,
    height: 8,
  };
  const [base] = layout.panels;
  const zoneStart = base?.to ?? 0;
  // The front of the nose is one radius beyond the tangent line, and one setback behind the hinge line.
  const origin = spot(hinge.x - scale * (front.setback + sheet.radius + zoneStart), hinge.y);
  const view = { scale, origin };
  const noseFront = spot(hinge.x - scale * front.setback, hinge.y - scale * (sheet.thickness + sheet.radius));
  const centre = away(noseFront, 180, scale * sheet.radius);
  return (
    <Paper height={262} title={texts.title}>
      <Path d={bedPath(front, 3.4)} kind="tool" />
      <Path d={fingerPath(front)} kind="tool" />
      <Path d={leafPath({ ...front, reach: 8.2 }, 2.6, 90)} kind="tool" />
      <Path d={leafPath({ ...front, reach: 5.6 }, 2.6, 0)} kind="tool-ghost" />
      <Path d={sectionPath(fold(layout), sheet.thickness, view)} kind="sheet" />
      <Line from={spot(hinge.x, hinge.y + 4)} to={spot(hinge.x, hinge.y + 66)} kind="centre" />
      <Line from={spot(noseFront.x, noseFront.y + 20)} to={spot(noseFront.x, hinge.y + 46)} kind="thin" />
      <Size
        from={spot(noseFront.x, hinge.y + 30)}
        to={spot(hinge.x, hinge.y + 30)}
        off={-12}
        text={texts.setback}
        outside="from"
        gap={0}
      />
      <Note to={hinge} from={spot(284, 236)} lines={texts.hinge} />
      <circle class="dot" cx={centre.x} cy={centre.y} r={2} />
      <path class="thin" d={`M${at(centre)}L${at(away(centre, 20, scale * sheet.radius))}`} />
      <Note to={away(centre, 20, scale * sheet.radius * 0.6)} from={spot(134, 110)} lines={texts.radius} anchor="end" />
      <Size
        from={spot(hinge.x - scale * 9.2, hinge.y)}
        to={spot(hinge.x - scale * 9.2, hinge.y - scale * sheet.thickness)}
        off={10}
        text="T"
        outside="from"
        gap={0}
      />
      <Text spot={spot(84, 152)} lines={texts.finger} anchor="middle" kind="name" />
      <Text spot={spot(94, 222)} lines={texts.bed} anchor="middle" kind="name" />
      <Text spot={spot(270, 100)} lines={texts.leaf} anchor="start" kind="name" />
      <AngleSize centre={hinge} radius={96} from={6} to={62} text="" kind="motion" />
    </Paper>
  );
}
