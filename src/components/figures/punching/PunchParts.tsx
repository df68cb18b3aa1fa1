import { useTexts } from "../../../texts/context.ts";
import { figuresPunching } from "../../../texts/en/figures-punching.ts";
import { AngleSize, Line, Note, Paper, Path, Size, spot } from "../pen.tsx";
import { rectangle } from "./cut.ts";

const centre = 104;
const throat = 272;
const pivot = spot(152, 62);

/** Side view of a hand punch with a deep frame, with the names used in the text. A sketch: proportions are not to scale. */
export default function PunchParts() {
  const { punchParts: texts } = useTexts(figuresPunching);
  return (
    <Paper height={336} title={texts.title}>
      <Line from={spot(10, 318)} to={spot(350, 318)} />
      <Path d={`M72 96H340V318H300V268H72V222H${throat}V142H72Z`} kind="tool" />
      <Path d={rectangle(spot(centre - 14, 72), spot(centre + 14, 158))} kind="tool" />
      <Path d={rectangle(spot(centre - 6, 158), spot(centre + 6, 190))} kind="tool" />
      <Path
        d={`M${centre + 34} 142V186H${centre + 9}M${centre - 9} 186H${centre - 28}V180H${centre - 9}M${centre + 9} 180H${centre + 28}V142`}
        kind="thin"
      />
      <Path d="M28 204H262V207H28Z" kind="sheet" />
      <Path d={rectangle(spot(centre - 22, 207), spot(centre - 8, 228))} kind="tool" />
      <Path d={rectangle(spot(centre + 8, 207), spot(centre + 22, 228))} kind="tool" />
      <Path d={`M${centre - 9} 228L${centre - 12} 268M${centre + 9} 228L${centre + 12} 268`} kind="hidden" />
      <Path d={`M${pivot.x} ${pivot.y}L${centre} 74L26 34`} kind="outline" />
      <circle class="tool" cx={22} cy={32} r={7} />
      <Path d={`M${pivot.x - 8} 96L${pivot.x} ${pivot.y}L${pivot.x + 8} 96`} kind="tool" />
      <circle class="dot" cx={pivot.x} cy={pivot.y} r={3} />
      <circle class="dot" cx={centre} cy={75} r={3} />
      <Line from={spot(centre, 84)} to={spot(centre, 300)} kind="centre" />
      <AngleSize centre={pivot} radius={142} from={166} to={184} text="" kind="motion" />

      <Note to={spot(64, 53)} from={spot(84, 22)} lines={texts.lever} />
      <Note to={spot(centre + 10, 88)} from={spot(200, 60)} lines={texts.ram} />
      <Note to={spot(centre + 2, 170)} from={spot(180, 160)} lines={texts.punch} />
      <Note to={spot(centre + 30, 183)} from={spot(180, 184)} lines={texts.stripper} />
      <Note to={spot(46, 206)} from={spot(38, 176)} lines={texts.sheet} anchor="middle" />
      <Note to={spot(centre - 18, 220)} from={spot(42, 262)} lines={texts.die} anchor="middle" />
      <Note to={spot(centre + 4, 258)} from={spot(150, 290)} lines={texts.slugFallsHere} />
      <Note to={spot(320, 120)} from={spot(302, 76)} lines={texts.frame} anchor="middle" />
      <Size from={spot(centre, 222)} to={spot(throat, 222)} off={-22} text={texts.throat} gap={24} />
    </Paper>
  );
}
