import { Arrowhead, arcPath, away, Line, Paper, Size, spot, Text } from "../pen.tsx";

const chord = 120;
const radius = 75;

/** Radius from a chord and the height of the arc over it: the example of the page, to scale. */
export default function ChordHeight() {
  const scale = 2;
  const height = radius - Math.sqrt(radius ** 2 - (chord / 2) ** 2);
  const centre = spot(180, 60 + scale * radius);
  const half = (Math.asin(chord / 2 / radius) * 180) / Math.PI;
  const left = away(centre, 90 + half, scale * radius);
  const right = away(centre, 90 - half, scale * radius);
  return (
    <Paper
      height={200}
      title={`An arc with a straightedge of ${chord} mm across it; in the middle the arc stands ${height} mm off the straightedge, which makes a radius of ${radius} mm`}
    >
      <path class="outline" d={arcPath(centre, scale * radius, 90 + half + 12, 90 - half - 12)} />
      <Line from={left} to={right} kind="sight" />
      <Size from={left} to={right} off={-20} text={`c = ${chord} mm`} />
      <Line from={spot(180, left.y)} to={spot(180, 60)} />
      <Arrowhead tip={spot(180, 60)} direction={90} />
      <Arrowhead tip={spot(180, left.y)} direction={-90} />
      <Text spot={spot(188, (left.y + 60) / 2 + 4)} lines={`s = ${height} mm`} kind="size" />
      <Text spot={spot(180, 26)} lines={`R = c²/(8 s) + s/2 = ${radius} mm`} anchor="middle" kind="name" />
    </Paper>
  );
}
