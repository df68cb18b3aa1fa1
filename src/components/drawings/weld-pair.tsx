import { otherJoints } from "../../lib/joining/weld-pair.ts";
import type { OutputValues } from "../../lib/worksheet.ts";
import type sheet from "../../lib/worksheets/weld-pair.ts";
import { useTexts } from "../../texts/context.ts";
import { weldPair } from "../../texts/en/drawings/weld-pair.ts";
import { box, closed, ellipse, tipPath } from "../figures/joining/shapes.ts";
import { Line, spot } from "../figures/pen.tsx";
import { Drawing, type DrawingProps } from "./parts/Drawing.tsx";

const x = 96;
const joint = 112;
const thickness = 17;
const [top, foot] = [joint - thickness, joint + thickness];
const tip = { half: 20, body: 30, length: 64 };
const sign = spot(216, 62);
/** Where the words below it begin. */
const wordsLeft = 194;

/** The pair between the tips. The verdict is told by a shape and by words: colour only repeats it. */
export default function WeldPairDrawing({ id, outputs }: DrawingProps) {
  const texts = useTexts(weldPair);
  const { verdict, instead } = outputs as OutputValues<typeof sheet.outputs>;
  const { words, told } = texts.signs[verdict];
  const others = instead.map((joint) => otherJoints[joint as keyof typeof otherJoints]);
  const refused = verdict === "no";
  return (
    <Drawing
      id={id}
      height={212}
      title={texts.title(words.join(" "))}
      description={texts.text(told, others.length > 0 ? texts.others(refused ? texts.instead : texts.or, others.join(", ")) : "")}
    >
      <path class="sheet" d={box(14, top, x + 62, joint)} />
      <path class="sheet" d={box(34, joint, x + 82, foot)} />
      {!refused && <path class="melt" d={ellipse(spot(x, joint), 18, verdict === "yes" ? 11 : 8)} />}
      <path class={refused ? "tool-ghost" : "tool"} d={tipPath({ ...tip, face: spot(x, top), side: "above" })} />
      <path class={refused ? "tool-ghost" : "tool"} d={tipPath({ ...tip, face: spot(x, foot), side: "below" })} />
      {refused && (
        <path
          class="sight"
          d={`M${x - 36} ${joint - 44}L${x + 36} ${joint + 44}M${x + 36} ${joint - 44}L${x - 36} ${joint + 44}`}
        />
      )}
      <Line from={spot(14, joint)} to={spot(x + 82, joint)} kind="outline" />
      <text class="aside" x={14} y={top - 8}>
        {texts.one}
      </text>
      <text class="aside" x={x + 82} y={foot + 18} text-anchor="end">
        {texts.other}
      </text>

      <Sign verdict={verdict} />
      <text class="big" x={wordsLeft} y={sign.y + 46}>
        {words.map((line, index) => (
          <tspan key={line} x={wordsLeft} dy={index === 0 ? 0 : 19}>
            {line}
          </tspan>
        ))}
      </text>
      {others.length > 0 && (
        <text class="label" x={wordsLeft} y={sign.y + 50 + 20 * words.length}>
          {[refused ? texts.instead : texts.or, ...others].map((line, index) => (
            <tspan key={line} x={wordsLeft} dy={index === 0 ? 0 : 16}>
              {line.replace(" where the metal folds flat", "")}
            </tspan>
          ))}
        </text>
      )}
    </Drawing>
  );
}

/** A ring with a tick, a triangle with a stroke and a point, or a barred ring. */
function Sign({ verdict }: { verdict: keyof typeof weldPair.signs }) {
  const { x: middle, y } = sign;
  if (verdict === "yes")
    return (
      <g>
        <circle class="outline" cx={middle} cy={y} r={19} />
        <path class="outline" d={`M${middle - 9} ${y}L${middle - 2} ${y + 8}L${middle + 10} ${y - 8}`} />
      </g>
    );
  if (verdict === "with-care")
    return (
      <g>
        <path class="sight" d={closed(spot(middle, y - 21), spot(middle + 22, y + 17), spot(middle - 22, y + 17))} />
        <Line from={spot(middle, y - 8)} to={spot(middle, y + 4)} kind="sight" />
        <circle class="arrow-motion" cx={middle} cy={y + 10} r={2} />
      </g>
    );
  return (
    <g>
      <circle class="stretch" cx={middle} cy={y} r={18} />
      <path class="stretch" d={`M${middle - 12} ${y - 13}L${middle + 12} ${y + 13}`} />
    </g>
  );
}
