import { Arrowhead, arcPath, away, Line, Path, Size, spot } from "../../figures/pen.tsx";
import { type BrakeFront, bedPath, fingerPath, leafPath } from "../../figures/tool.ts";
import { box, onGround } from "../sketch.tsx";

/** Front of a hand brake in section; proportions as on the bending page, drawn smaller. */
const thickness = 1.1;
const front: BrakeFront = {
  hinge: spot(138, 88),
  scale: 6.4,
  noseRadius: 1.8,
  setback: thickness,
  thickness,
  reach: 16,
  height: 6.4,
};
const { hinge, scale } = front;
const leaf = { ...front, reach: 10 };
const nose = spot(hinge.x - scale * (front.setback + front.noseRadius), hinge.y - scale * (thickness + front.noseRadius));
const beam = box(40, 12, 56, 24);
const stop = "M26 81V64h8V81";
const sheet = box(34, hinge.y - scale * thickness, 172, scale * thickness);

const Ground = () => (
  <>
    <Path d={bedPath(front, 5)} kind="tool" />
    <Path d={leafPath(leaf, 3, 0)} kind="tool" />
    <Path d={beam} kind="tool" />
    <Path d={fingerPath(front)} kind="tool" />
    <Path d={stop} kind="tool" />
    <Path d={sheet} kind="sheet" />
  </>
);

const side = onGround("brakeFront", Ground, {
  leaf: () => <path class="tool" d={leafPath(leaf, 3, 0)} />,
  bed: () => <path class="tool" d={bedPath(front, 5)} />,
  nose: () => <path d={arcPath(nose, scale * front.noseRadius, -90, 47)} />,
  beam: () => <path class="tool" d={beam} />,
  hinge: () => (
    <>
      <circle class="face" cx={hinge.x} cy={hinge.y} r={4.5} />
      <path class="centre" d={`M${hinge.x} ${hinge.y + 8}V126`} />
    </>
  ),
  setback: () => (
    <>
      <Line from={spot(hinge.x - scale * thickness, nose.y + 4)} to={spot(hinge.x - scale * thickness, 116)} />
      <Line from={hinge} to={spot(hinge.x, 116)} />
      <Size from={spot(hinge.x - scale * thickness, 116)} to={spot(hinge.x, 116)} off={0} text="T" outside="to" gap={0} />
    </>
  ),
  swing: () => (
    <>
      <path d={arcPath(hinge, 52, 6, 78)} />
      <Arrowhead tip={away(hinge, 82, 52)} direction={168} />
      <path class="hidden" d={leafPath({ ...leaf, reach: 8 }, 3, 90)} />
    </>
  ),
});

/** Fingers from the front, with the gaps that let formed sides stand up between them. */
const widths = [26, 42, 18, 30, 50];
const fingers = widths.map((width, index) => ({
  width,
  left: 14 + widths.slice(0, index).reduce((sum, each) => sum + each + 5, 0),
}));
const row = onGround(
  "fingers",
  () => (
    <>
      <Path d={box(8, 16, 204, 30)} kind="tool" />
      <Line from={spot(8, 106)} to={spot(212, 106)} kind="outline" />
    </>
  ),
  { set: () => <path class="tool" d={fingers.map(({ left, width }) => box(left, 46, width, 56)).join("")} /> },
);

export const brake = { ...side, ...row };
