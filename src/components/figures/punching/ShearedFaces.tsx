import { useTexts } from "../../../texts/context.ts";
import { figuresPunching } from "../../../texts/en/figures-punching.ts";
import { Paper, Path, spot, Text } from "../pen.tsx";

const faces = [
  {
    name: "flat",
    face: (l: number, r: number, y: number) => `L${r} ${y}L${l} ${y}`,
    left: 0,
    right: 0,
  },
  {
    name: "oneSlope",
    face: (l: number, r: number, y: number) => `L${r} ${y - 20}L${l} ${y}`,
    left: 0,
    right: -20,
  },
  {
    name: "twoSlopes",
    face: (l: number, r: number, y: number) => `L${r} ${y - 16}L${(l + r) / 2} ${y}L${l} ${y - 16}`,
    left: -16,
    right: -16,
  },
] as const;

/** Three faces a punch can have, above the sheet. */
export default function ShearedFaces() {
  const { shearedFaces: texts } = useTexts(figuresPunching);
  return (
    <Paper height={172} title={texts.title}>
      {faces.map(({ name, face, left, right }, index) => {
        const centre = 60 + index * 120;
        const [l, r, y] = [centre - 24, centre + 24, 92];
        return (
          <g key={name}>
            <Path d={`M${l} ${y + left}V24H${r}V${y + right}${face(l, r, y)}Z`} kind="tool" />
            <Path d={`M${centre - 52} 98H${centre + 52}V108H${centre - 52}Z`} kind="sheet" />
            <Text spot={spot(centre, 136)} lines={texts[name]} anchor="middle" kind="name" />
          </g>
        );
      })}
    </Paper>
  );
}
