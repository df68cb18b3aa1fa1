import { useTexts } from "../../../texts/context.ts";
import { figuresJoining } from "../../../texts/en/figures-joining.ts";
import { Line, Paper, Path, spot, Text } from "../pen.tsx";
import { box } from "./shapes.ts";

/** Which rivet of a row comes when: ends, middle, then between. */
const order = [1, 4, 6, 3, 7, 5, 2];

/** A row of rivets with the order in which holes are drilled through both sheets and rivets set. */
export default function RivetOrder() {
  const { rivetOrder: texts } = useTexts(figuresJoining);
  const x = (index: number) => 42 + 46 * index;
  const y = 92;
  return (
    <Paper height={170} title={texts.title(order.join(", "))}>
      <Path d={box(12, 40, 348, 112)} kind="sheet" />
      <Path d={box(12, 72, 348, 144)} kind="sheet" />
      <Line from={spot(6, y)} to={spot(354, y)} kind="centre" />
      {order.map((turn, index) => (
        <g key={turn}>
          <circle class={turn <= 3 ? "badge" : "outline"} cx={x(index)} cy={y} r={11} />
          <Text spot={spot(x(index), y + 4.5)} lines={String(turn)} anchor="middle" kind="label" />
        </g>
      ))}
      <Text spot={spot(12, 24)} lines={texts.holdSheetsPlace} kind="name" />
    </Paper>
  );
}
