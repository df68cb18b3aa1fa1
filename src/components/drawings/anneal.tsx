import { annealing, canAnneal } from "../../lib/furnace/annealing.ts";
import type { Values } from "../../lib/inputs.ts";
import { formatQuantity } from "../../lib/quantity/format.ts";
import type { OutputValues } from "../../lib/worksheet.ts";
import type sheet from "../../lib/worksheets/anneal.ts";
import { useTexts } from "../../texts/context.ts";
import { anneal } from "../../texts/en/drawings/anneal.ts";
import { at, Line, Size, spot } from "../figures/pen.tsx";
import { Aside, Drawing, type DrawingProps } from "./parts/Drawing.tsx";

const left = 50;
const right = 344;
const top = 60;
const base = 214;
const room = 20;
/** Widths on the paper: heating up, which nobody times; holding; cooling in the furnace; cooling outside it. */
const widths = { heat: 78, hold: 62, out: 12, slow: 104, quick: 64 };

/** Words in lines of no more than so many letters. */
function lines(text: string, letters: number): string[] {
  const all: string[] = [];
  for (const word of text.split(" ")) {
    const last = all.at(-1);
    if (last !== undefined && last.length + word.length < letters) all[all.length - 1] = `${last} ${word}`;
    else all.push(word);
  }
  return all;
}

/** The furnace's temperature over time: heat, hold, cool. Temperatures are to scale, times are not. */
export default function AnnealDrawing({ id, values, outputs }: DrawingProps) {
  const texts = useTexts(anneal);
  const { material } = values as Values<typeof sheet.inputs>;
  const { temperature, time, cooling } = outputs as OutputValues<typeof sheet.outputs>;
  const how = annealing[material];
  if (temperature === null || time === null || !canAnneal(how)) return null;
  const step = temperature > 500 ? 200 : 100;
  const highest = Math.ceil((temperature + step / 4) / step) * step;
  const y = (celsius: number) => base - ((base - top) * celsius) / highest;
  const hot = left + widths.heat;
  const held = hot + (time > 0 ? widths.hold : widths.out);
  const slowEnd = how.slow ? held + widths.slow : held;
  const turn = how.slow?.to ?? temperature;
  const cold = Math.min(slowEnd + widths.quick, right);
  const degrees = formatQuantity(temperature, "temperature");
  const words = lines(texts.coolIt(cooling), 52);
  return (
    <Drawing
      id={id}
      height={base + 40 + 16 * words.length}
      title={texts.title}
      description={texts.text(degrees, time > 0 ? texts.heldFor(formatQuantity(time, "time")) : texts.outAtOnce, cooling)}
    >
      <Aside place={spot(8, 14)}>{texts.toScale}</Aside>
      {Array.from({ length: highest / step + 1 }, (_, index) => index * step).map((celsius) => (
        <g key={celsius}>
          <Line from={spot(left, y(celsius))} to={spot(right, y(celsius))} />
          <text class="size" x={left - 6} y={y(celsius) + 4} text-anchor="end">
            {celsius}
          </text>
        </g>
      ))}
      <path class="hidden" d={`M${at(spot(left, y(room)))}L${at(spot(hot, y(temperature)))}`} />
      <path
        class="outline"
        d={`M${[spot(hot, y(temperature)), spot(held, y(temperature)), spot(slowEnd, y(turn))].map(at).join("L")}`}
      />
      <path class="hidden" d={`M${at(spot(slowEnd, y(turn)))}L${at(spot(cold, y(room)))}`} />
      {time > 0 ? (
        <>
          <Size from={spot(hot, y(temperature))} to={spot(held, y(temperature))} off={16} text={formatQuantity(time, "time")} />
          <text class="size" x={held + 12} y={y(temperature) - 6}>
            {degrees}
          </text>
        </>
      ) : (
        <text class="size" x={(hot + held) / 2} y={y(temperature) - 10} text-anchor="middle">
          {texts.thenOut(degrees)}
        </text>
      )}
      {(
        [
          [texts.heat, (left + hot) / 2],
          [time > 0 ? texts.hold : "", (hot + held) / 2],
          [texts.cool, (held + cold) / 2],
        ] as const
      ).map(([name, middle]) => (
        <text key={name} class="label" x={middle} y={base + 18} text-anchor="middle">
          {name}
        </text>
      ))}
      <text class="label" x={8} y={base + 42}>
        {words.map((line, index) => (
          <tspan key={line} x={8} dy={index === 0 ? 0 : 16}>
            {line}
          </tspan>
        ))}
      </text>
    </Drawing>
  );
}
