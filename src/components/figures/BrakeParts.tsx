import { useTexts } from "../../texts/context.ts";
import { figuresBending } from "../../texts/en/figures-bending.ts";
import { AngleSize, Arrowhead, away, Line, Note, Paper, Path, spot } from "./pen.tsx";

/** Side view of a hand folding brake, with the names used in the text. A sketch: proportions are not to scale. */
export default function BrakeParts() {
  const { brakeParts: texts } = useTexts(figuresBending);
  const hinge = spot(206, 172);
  const weightArm = 118;
  const rest = 190;
  const ball = away(hinge, rest, weightArm);
  const leafBar = "M206 173L278 173L278 184L236 197L212 190Z";
  return (
    <Paper height={330} title={texts.title}>
      <Path d="M112 214L104 312L128 312L136 214M176 208L178 312L202 312L196 203" kind="tool-ghost" />
      <Line from={spot(40, 312)} to={spot(320, 312)} kind="thin" />
      <Path d="M96 173L205 173L198 194L170 214L110 214Z" kind="tool" />
      <Path d="M203 167L146 167L146 118L180 112L203 163Z" kind="tool" />
      <Path d="M132 74L190 74L190 118L132 118Z" kind="tool" />
      <Path d="M151 96L132 96L92 40" kind="outline" />
      <circle class="tool" cx={90} cy={36} r={7} />
      <Path d="M52 167L52 150L60 150L60 167" kind="thin" />
      <Path d={leafBar} kind="tool" />
      <Path d="M262 184L318 214" kind="outline" />
      <circle class="tool" cx={322} cy={216} r={6} />
      <g transform={`rotate(-90 ${hinge.x} ${hinge.y})`}>
        <Path d={leafBar} kind="tool-ghost" />
      </g>
      <Line from={hinge} to={ball} kind="thin" />
      <circle class="tool" cx={ball.x} cy={ball.y} r={12} />
      <Path d="M60 168L276 168L276 172L60 172Z" kind="sheet" />
      <circle class="dot" cx={hinge.x} cy={hinge.y} r={3} />
      <AngleSize centre={hinge} radius={88} from={8} to={82} text="" kind="motion" />
      <AngleSize centre={hinge} radius={weightArm} from={rest + 8} to={rest + 84} text="" kind="motion" />
      <Path d="M108 24A70 70 0 0 1 136 52" kind="motion" />
      <Arrowhead tip={spot(137, 54)} direction={-55} kind="arrow-motion" />

      <Note to={spot(97, 32)} from={spot(160, 20)} lines={texts.lever} />
      <Note to={spot(176, 84)} from={spot(214, 56)} lines={texts.beam} />
      <Note to={spot(160, 146)} from={spot(92, 96)} lines={texts.finger} anchor="end" />
      <Note to={spot(202, 164)} from={spot(252, 84)} lines={texts.nose} end="arrow" />
      <Note to={spot(56, 160)} from={spot(46, 138)} lines={texts.backStop} anchor="middle" />
      <Note to={spot(258, 170)} from={spot(308, 130)} lines={texts.sheet} />
      <Note to={spot(252, 188)} from={spot(262, 232)} lines={texts.leaf} />
      <Note to={hinge} from={spot(226, 268)} lines={texts.hinge} />
      <Note to={spot(322, 216)} from={spot(322, 246)} lines={texts.handle} anchor="middle" />
      <Note to={spot(154, 198)} from={spot(154, 222)} lines={texts.bed} anchor="middle" />
      <Note to={ball} from={spot(48, 224)} lines={texts.counterweight} anchor="middle" />
    </Paper>
  );
}
