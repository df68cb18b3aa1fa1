import { useTexts } from "../../../texts/context.ts";
import { figuresRolling } from "../../../texts/en/figures-rolling.ts";
import { AngleSize, Arrowhead, Line, Note, Paper, Path, spot, Text } from "../pen.tsx";
import { shopRolls } from "./rolls.ts";

/** Where rolls draw in: each gap that closes in the way of turning; and where the hand belongs. */
export default function DrawnIn() {
  const { drawnIn: texts } = useTexts(figuresRolling);
  const { front, rear, spacing } = shopRolls();
  const scale = 1.05;
  const pinch = spot(196, 128);
  const r = scale * front;
  const back = spot(pinch.x + scale * spacing, pinch.y + scale * (rear - 14));
  return (
    <Paper height={250} title={texts.title}>
      {[spot(pinch.x, pinch.y - r - 1), spot(pinch.x, pinch.y + r), back].map((centre) => (
        <circle key={`${centre.x} ${centre.y}`} class="tool" cx={centre.x} cy={centre.y} r={r} />
      ))}
      <Path d={`M16 ${pinch.y}H${pinch.x}Q${pinch.x + 44} ${pinch.y} ${pinch.x + 74} ${pinch.y - 34}`} kind="outline" />
      <path
        class="stretch"
        d={`M${pinch.x - 34} ${pinch.y - 9}L${pinch.x - 10} ${pinch.y - 2}M${pinch.x - 34} ${pinch.y + 9}L${pinch.x - 10} ${pinch.y + 2}`}
      />
      <path class="stretch" d={`M${back.x - 24} ${back.y - r + 2}L${back.x - 8} ${back.y - r - 3}`} />
      <AngleSize centre={spot(pinch.x, pinch.y - r - 1)} radius={20} from={30} to={150} text="" kind="motion" />
      <AngleSize centre={spot(pinch.x, pinch.y + r)} radius={20} from={-30} to={-150} text="" kind="motion" />
      <Note to={spot(pinch.x - 26, pinch.y - 8)} from={spot(92, 54)} lines={texts.drawsIn} anchor="end" end="arrow" />
      <Note to={spot(back.x - 14, back.y - r - 2)} from={spot(292, 34)} lines={texts.andHere} anchor="middle" end="arrow" />
      <Text spot={spot(54, pinch.y + 34)} lines={texts.hand} anchor="middle" kind="name" />
      <Line from={spot(54, pinch.y + 20)} to={spot(54, pinch.y + 10)} />
      <Arrowhead tip={spot(54, pinch.y + 3)} direction={90} />
      <Text spot={spot(180, 238)} lines={texts.letGoBefore} anchor="middle" kind="label" />
    </Paper>
  );
}
