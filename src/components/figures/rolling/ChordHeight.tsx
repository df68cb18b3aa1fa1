import { useTexts } from "../../../texts/context.ts";
import { figuresRolling } from "../../../texts/en/figures-rolling.ts";
import { Arrowhead, arcPath, away, Line, Paper, Size, spot, Text } from "../pen.tsx";

const chord = 120;
const radius = 75;

/** Radius from a chord and the height of the arc over it: the example of the page, to scale. */
export default function ChordHeight() {
  const { chordHeight: texts } = useTexts(figuresRolling);
  const scale = 2;
  const height = radius - Math.sqrt(radius ** 2 - (chord / 2) ** 2);
  const centre = spot(180, 60 + scale * radius);
  const half = (Math.asin(chord / 2 / radius) * 180) / Math.PI;
  const left = away(centre, 90 + half, scale * radius);
  const right = away(centre, 90 - half, scale * radius);
  return (
    <Paper height={200} title={texts.title(chord, height, radius)}>
      <path class="outline" d={arcPath(centre, scale * radius, 90 + half + 12, 90 - half - 12)} />
      <Line from={left} to={right} kind="sight" />
      <Size from={left} to={right} off={-20} text={texts.chord(chord)} />
      <Line from={spot(180, left.y)} to={spot(180, 60)} />
      <Arrowhead tip={spot(180, 60)} direction={90} />
      <Arrowhead tip={spot(180, left.y)} direction={-90} />
      <Text spot={spot(188, (left.y + 60) / 2 + 4)} lines={texts.height(height)} kind="size" />
      <Text spot={spot(180, 26)} lines={texts.radius(radius)} anchor="middle" kind="name" />
    </Paper>
  );
}
