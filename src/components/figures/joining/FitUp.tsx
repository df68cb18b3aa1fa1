import { useTexts } from "../../../texts/context.ts";
import { figuresJoining } from "../../../texts/en/figures-joining.ts";
import { Paper, Path, spot, Text } from "../pen.tsx";
import { box, ellipse, tipPath } from "./shapes.ts";

const t = 9;
const tip = { half: 9, body: 14, length: 34 };

/** Sheets that lie together, sheets with a gap, and sheets held apart by a burr. */
export default function FitUp() {
  const { fitUp: texts } = useTexts(figuresJoining);
  const y = 82;
  const faces = (x: number, above: number, below: number) => (
    <>
      <Path d={tipPath({ ...tip, face: spot(x, above), side: "above" })} kind="tool" />
      <Path d={tipPath({ ...tip, face: spot(x, below), side: "below" })} kind="tool" />
    </>
  );
  return (
    <Paper height={176} title={texts.title}>
      <Path d={box(12, y - t, 108, y)} kind="sheet" />
      <Path d={box(12, y, 108, y + t)} kind="sheet" />
      <path class="melt" d={ellipse(spot(60, y), 13, 6)} />
      {faces(60, y - t, y + t)}
      <Text spot={spot(60, 144)} lines={texts.close} anchor="middle" kind="name" />

      <Path
        d={`M132 ${y - 18}Q158 ${y - 9} 171 ${y - t}L189 ${y - t}Q202 ${y - 9} 228 ${y - 18}L228 ${y - 9}Q202 ${y} 189 ${y}L171 ${y}Q158 ${y} 132 ${y - 9}Z`}
        kind="sheet"
      />
      <Path d={box(132, y, 228, y + t)} kind="sheet" />
      <path class="melt" d={ellipse(spot(180, y), 7, 3)} />
      {faces(180, y - t, y + t)}
      <Text spot={spot(180, 144)} lines={texts.gap} anchor="middle" kind="name" />

      <Path d={box(252, y - t - 5, 348, y - 5)} kind="sheet" />
      <Path d={box(252, y, 348, y + t)} kind="sheet" />
      <Path d={`M296 ${y}L300 ${y - 5}L304 ${y}Z`} kind="outline" />
      {faces(300, y - t - 5, y + t)}
      {[-1, 1].flatMap((side) =>
        [-3, 3].map((slope) => (
          <path
            key={`${side} ${slope}`}
            class="motion-line"
            d={`M${300 + side * 16} ${y - 2.5}L${300 + side * 42} ${y - 2.5 + slope}`}
          />
        )),
      )}
      <Text spot={spot(300, 144)} lines={texts.burr} anchor="middle" kind="name" />
    </Paper>
  );
}
