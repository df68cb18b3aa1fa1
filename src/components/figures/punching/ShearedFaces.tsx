import { Paper, Path, spot, Text } from "../pen.tsx";

const faces = [
  {
    name: ["flat: all at", "once, most force"],
    face: (l: number, r: number, y: number) => `L${r} ${y}L${l} ${y}`,
    left: 0,
    right: 0,
  },
  {
    name: ["one slope: less,", "but pushed aside"],
    face: (l: number, r: number, y: number) => `L${r} ${y - 20}L${l} ${y}`,
    left: 0,
    right: -20,
  },
  {
    name: ["two slopes: less,", "and balanced"],
    face: (l: number, r: number, y: number) => `L${r} ${y - 16}L${(l + r) / 2} ${y}L${l} ${y - 16}`,
    left: -16,
    right: -16,
  },
];

/** Three faces a punch can have, above the sheet. */
export default function ShearedFaces() {
  return (
    <Paper
      height={172}
      title="Three punches above the sheet: a flat face, a face with one slope, and a face with two slopes like a roof"
    >
      {faces.map(({ name, face, left, right }, index) => {
        const centre = 60 + index * 120;
        const [l, r, y] = [centre - 24, centre + 24, 92];
        return (
          <g key={name[0]}>
            <Path d={`M${l} ${y + left}V24H${r}V${y + right}${face(l, r, y)}Z`} kind="tool" />
            <Path d={`M${centre - 52} 98H${centre + 52}V108H${centre - 52}Z`} kind="sheet" />
            <Text spot={spot(centre, 136)} lines={name} anchor="middle" kind="name" />
          </g>
        );
      })}
    </Paper>
  );
}
