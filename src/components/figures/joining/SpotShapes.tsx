import { useTexts } from "../../../texts/context.ts";
import { figuresJoining } from "../../../texts/en/figures-joining.ts";
import { Paper, Path, spot, Text } from "../pen.tsx";
import { stripPath } from "../section.ts";
import { box, ellipse, tipPath } from "./shapes.ts";

const t = 6;
const tip = { half: 7, body: 12, length: 40 };

/** Shapes of joint that tips can reach, and one they cannot. */
export default function SpotShapes() {
  const { spotShapes: texts } = useTexts(figuresJoining);
  const y = 88;
  const faces = (x: number, ghost = false) => (
    <>
      <Path d={tipPath({ ...tip, face: spot(x, y - t), side: "above" })} kind={ghost ? "tool-ghost" : "tool"} />
      <Path d={tipPath({ ...tip, face: spot(x, y + t), side: "below" })} kind={ghost ? "tool-ghost" : "tool"} />
    </>
  );
  const leg = (x: number, ahead: number, rise: number) =>
    stripPath([{ ahead }, { turn: 90, radius: 4 }, { ahead: rise }], t, { scale: 1, origin: spot(x, y) }).d;
  const down = (x: number, ahead: number, rise: number) =>
    stripPath([{ ahead }, { turn: -90, radius: 4 }, { ahead: rise }], t, { scale: 1, origin: spot(x, y + t) }).d;
  return (
    <Paper height={216} title={texts.title}>
      <Path d={box(12, y - t, 84, y)} kind="sheet" />
      <Path d={box(36, y, 108, y + t)} kind="sheet" />
      <path class="sheet" d={ellipse(spot(60, y), 9, 3.6)} />
      {faces(60)}
      <Text spot={spot(60, 160)} lines={texts.lap} anchor="middle" kind="name" />

      <Path d={leg(134, 52, 44)} kind="sheet" />
      <Path d={down(134, 52, 44)} kind="sheet" />
      <path class="sheet" d={ellipse(spot(154, y), 9, 3.6)} />
      {faces(154)}
      <Text spot={spot(174, 160)} lines={texts.flanges} anchor="middle" kind="name" />

      <Path d={leg(256, 46, 44)} kind="sheet" />
      <Path d={box(256, y, 346, y + t)} kind="sheet" />
      {faces(297, true)}
      <Path d="M290 40L322 72M322 40L290 72" kind="sight" />
      <Text spot={spot(300, 160)} lines={texts.tooNearToLeg} anchor="middle" kind="name" />
    </Paper>
  );
}
