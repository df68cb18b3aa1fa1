import { loadCatalogue } from "../../catalogue/load.ts";
import { useTexts } from "../../texts/context.ts";
import { figuresEdges } from "../../texts/en/figures-edges.ts";
import { Arrowhead, Line, Paper, Path, spot, Text } from "./pen.tsx";
import { stripPath } from "./section.ts";
import { type BrakeFront, bedPath, fingerPath, leafPath } from "./tool.ts";

const sheet = { thickness: 1.2, radius: 1.6 };
const flap = 6;

/** Making a closed edge: swing as far as the leaf goes, then press flat under the clamp. */
export default function EdgeSteps() {
  const { edgeSteps: texts } = useTexts(figuresEdges);
  const { largestSwing } = loadCatalogue().shop.brake;
  const scale = 7;
  const front = (left: number, lift: number): BrakeFront => ({
    hinge: spot(left, 118),
    scale,
    noseRadius: sheet.radius,
    setback: sheet.thickness,
    thickness: sheet.thickness,
    reach: 13,
    height: 7,
    lift,
  });
  const swing = front(100, sheet.thickness);
  const clamped = 8;
  const swung = stripPath([{ ahead: clamped }, { turn: largestSwing, radius: sheet.radius }, { ahead: flap }], sheet.thickness, {
    scale,
    origin: spot(swing.hinge.x - scale * (sheet.thickness + sheet.radius + clamped), swing.hinge.y),
  });
  const press = front(286, 2 * sheet.thickness + 0.1);
  const pressed = stripPath([{ ahead: 11 }, { turn: 180, radius: 0.05 }, { ahead: flap }], sheet.thickness, {
    scale,
    origin: spot(press.hinge.x - scale * (sheet.thickness + 12.4), press.hinge.y),
  });
  const before = stripPath([{ ahead: 9.2 }, { turn: largestSwing, radius: sheet.radius }, { ahead: flap }], sheet.thickness, {
    scale,
    origin: spot(press.hinge.x - scale * (sheet.thickness + 12.4), press.hinge.y),
  });
  return (
    <Paper height={190} title={texts.title(largestSwing)}>
      <Path d={bedPath(swing, 3)} kind="tool" />
      <Path d={leafPath({ ...swing, reach: 8 }, 2, largestSwing)} kind="tool" />
      <Path d={fingerPath(swing)} kind="tool" />
      <Path d={swung.d} kind="sheet" />
      <Text spot={spot(90, 164)} lines={texts.swing(largestSwing)} anchor="middle" kind="name" />

      <Path d={bedPath(press, 3)} kind="tool" />
      <Path d={fingerPath(press)} kind="tool" />
      <Path d={before.d} kind="sheet-ghost" />
      <Path d={pressed.d} kind="sheet" />
      <Line from={spot(press.hinge.x - 64, 24)} to={spot(press.hinge.x - 64, 48)} kind="motion" />
      <Arrowhead tip={spot(press.hinge.x - 64, 54)} direction={-90} kind="arrow-motion" />
      <Text spot={spot(270, 164)} lines={texts.press} anchor="middle" kind="name" />
      <path class="thin" d={`M180 16L180 176`} />
    </Paper>
  );
}
