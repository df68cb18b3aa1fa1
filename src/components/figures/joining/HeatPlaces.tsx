import { useTexts } from "../../../texts/context.ts";
import { figuresJoining } from "../../../texts/en/figures-joining.ts";
import { at, Line, Note, Paper, Path, spot, Text } from "../pen.tsx";
import { box, ellipse, tipPath } from "./shapes.ts";

/** Where the current meets resistance on its way through the pile, and how hot it gets there. In outline, not measured. */
export default function HeatPlaces() {
  const { heatPlaces: texts } = useTexts(figuresJoining);
  const middle = spot(92, 140);
  const sheet = 38;
  const shape = { half: 24, body: 34, length: 88 };
  // Heights of the seven places, and how far to the right the temperature reaches at each.
  const hot = { body: 18, tip: 46, sheet: 98, joint: 132 };
  const zero = 200;
  const curve = [
    spot(zero + hot.body, middle.y - sheet - 86),
    spot(zero + hot.body, middle.y - sheet - 30),
    spot(zero + hot.tip, middle.y - sheet),
    spot(zero + hot.sheet, middle.y - sheet / 2),
    spot(zero + hot.joint, middle.y),
    spot(zero + hot.sheet, middle.y + sheet / 2),
    spot(zero + hot.tip, middle.y + sheet),
    spot(zero + hot.body, middle.y + sheet + 30),
    spot(zero + hot.body, middle.y + sheet + 86),
  ];
  return (
    <Paper height={292} title={texts.title}>
      <path class="warm" d={ellipse(middle, 46, 26)} />
      <Path d={box(18, middle.y - sheet, 166, middle.y)} kind="sheet" />
      <Path d={box(18, middle.y, 166, middle.y + sheet)} kind="sheet" />
      <path class="melt" d={ellipse(middle, 28, 15)} />
      <Path d={tipPath({ ...shape, face: spot(middle.x, middle.y - sheet), side: "above" })} kind="tool" />
      <Path d={tipPath({ ...shape, face: spot(middle.x, middle.y + sheet), side: "below" })} kind="tool" />
      {[-1, 1].map((side) => (
        <Path
          key={side}
          d={`M${middle.x - 8} ${middle.y + side * (sheet + 88)}L${middle.x - 8} ${middle.y + side * (sheet + 26)}L${middle.x + 8} ${middle.y + side * (sheet + 26)}L${middle.x + 8} ${middle.y + side * (sheet + 88)}`}
          kind="thin"
        />
      ))}
      <Path d={`M${curve.map(at).join("L")}`} kind="sight" />
      <Line from={spot(zero, 20)} to={spot(zero, 268)} />
      {[-1, 0, 1].map((place) => (
        <Line key={place} from={spot(170, middle.y + place * sheet)} to={spot(346, middle.y + place * sheet)} kind="hidden" />
      ))}
      <Text spot={spot(226, 34)} lines={texts.waterCoolsTheTip} kind="name" />
      <Text spot={spot(262, 92)} lines={texts.tipOnSheet} kind="name" />
      <Text spot={spot(206, 136)} lines={texts.sheetOnSheet} kind="name" />
      <Text spot={spot(262, 196)} lines={texts.tipOnSheet} kind="name" />
      <Text spot={spot(206, 284)} lines={texts.temperature} kind="label" />
      <Note to={spot(middle.x, 40)} from={spot(40, 26)} lines={texts.water} anchor="end" />
    </Paper>
  );
}
