import { useTexts } from "../../../texts/context.ts";
import { figuresRolling } from "../../../texts/en/figures-rolling.ts";
import { AngleSize, Arrowhead, Line, Note, Paper, spot } from "../pen.tsx";
import { sheetPath, shopRolls } from "./rolls.ts";

const strip = { thickness: 2, yield: 250, elasticModulus: 200_000 };

/** Side view of a slip roll with the names used in the text; this shop's diameters and spacing, the sheet thicker. */
export default function RollParts() {
  const { rollParts: texts } = useTexts(figuresRolling);
  const { front, rear, spacing } = shopRolls();
  const view = { pinch: spot(148, 212), scale: 1.25 };
  const rise = 20;
  const r = view.scale * front;
  const upper = spot(view.pinch.x, view.pinch.y - view.scale * strip.thickness - r);
  const lower = spot(view.pinch.x, view.pinch.y + r);
  const back = spot(view.pinch.x + view.scale * spacing, view.pinch.y + view.scale * (rear - rise));
  return (
    <Paper height={330} title={texts.title}>
      {[upper, lower, back].map((centre) => (
        <g key={`${centre.x} ${centre.y}`}>
          <circle class="tool" cx={centre.x} cy={centre.y} r={r} />
          <circle class="dot" cx={centre.x} cy={centre.y} r={2.4} />
        </g>
      ))}
      <path class="outline" d={sheetPath(view, { rise, strip, before: 108, after: 120 })} stroke-width={3} />
      <AngleSize centre={upper} radius={24} from={30} to={150} text="" kind="motion" />
      <AngleSize centre={lower} radius={24} from={-30} to={-150} text="" kind="motion" />
      <Line from={spot(back.x + r + 14, back.y + 30)} to={spot(back.x + r + 14, back.y - 14)} kind="motion" />
      <Arrowhead tip={spot(back.x + r + 14, back.y - 20)} direction={90} kind="arrow-motion" />
      <Line from={spot(20, 194)} to={spot(52, 194)} kind="motion" />
      <Arrowhead tip={spot(60, 194)} direction={0} kind="arrow-motion" />
      <Note to={spot(upper.x - 14, upper.y - 20)} from={spot(88, 92)} lines={texts.upperFrontRoll} anchor="end" />
      <Note to={spot(lower.x - 16, lower.y + 16)} from={spot(82, 282)} lines={texts.lowerFrontRoll} anchor="end" />
      <Note to={spot(back.x + 12, back.y + 18)} from={spot(292, 296)} lines={texts.rearRoll} />
      <Note to={spot(34, view.pinch.y - 2)} from={spot(40, 240)} lines={texts.sheet} anchor="middle" />
      <Note to={view.pinch} from={spot(78, 166)} lines={texts.pinch} anchor="end" />
    </Paper>
  );
}
