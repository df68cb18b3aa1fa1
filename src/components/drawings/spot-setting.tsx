import type { Values } from "../../lib/inputs.ts";
import { showQuantity } from "../../lib/quantity/format.ts";
import type { Quantity } from "../../lib/quantity/units.ts";
import type { OutputValues } from "../../lib/worksheet.ts";
import type sheet from "../../lib/worksheets/spot-setting.ts";
import { useTexts } from "../../texts/context.ts";
import { spotSetting } from "../../texts/en/drawings/spot-setting.ts";
import { lookText, rangeLook } from "../calculator/texts.ts";
import { box, ellipse, tipPath } from "../figures/joining/shapes.ts";
import { Line, Size, spot } from "../figures/pen.tsx";
import { Aside, Drawing, type DrawingProps } from "./parts/Drawing.tsx";
import { useSizes } from "./parts/sizes.ts";

/** Where the row of spots begins and how long the part of it is that is drawn: half a lap, a pitch, half a lap. */
const left = 50;
const shown = 250;
const tip = { top: 58, length: 46, below: 34 };

/** The tips on the pair in section along the row, and below it the lap from above; both to one scale. */
export default function SpotSettingDrawing({ id, values, outputs, view }: DrawingProps) {
  const texts = useTexts(spotSetting);
  const { size, units } = useSizes(view);
  const { thickness, otherThickness } = values as Values<typeof sheet.inputs>;
  const { tipFace, nugget, minPitch, minLap, ...ranges } = outputs as OutputValues<typeof sheet.outputs>;
  const { forceMin, forceMax, currentMin, currentMax, timeMin, timeMax } = ranges;
  if (tipFace === null || nugget === null || minPitch === null || minLap === null) return null;

  const scale = shown / (minPitch + minLap);
  const right = left + shown;
  const half = (scale * minLap) / 2;
  const [first, second] = [left + half, right - half];
  const top = tip.top + tip.length;
  const joint = top + scale * thickness;
  const foot = joint + scale * otherThickness;
  const lens = (x: number) => ellipse(spot(x, (top + foot) / 2), (scale * nugget) / 2, 0.36 * (foot - top));
  const body = { half: (scale * tipFace) / 2, body: (scale * tipFace) / 2 + 12 };

  // The view from above stands right below, so that both are read along the same lines.
  const lapTop = foot + tip.below + 58;
  const lapFoot = lapTop + scale * minLap;
  const row = (lapTop + lapFoot) / 2;
  const [face = "", d = "", p = "", w = ""] = [tipFace, nugget, minPitch, minLap].map((length) => size(length));
  const settings = [
    rangeWords(forceMin, forceMax, "force"),
    rangeWords(currentMin, currentMax, "current"),
    rangeWords(timeMin, timeMax, "time"),
  ];
  return (
    <Drawing
      id={id}
      height={lapFoot + 56}
      title={texts.title}
      description={texts.text(size(thickness), size(otherThickness), face, d, p, w, settings.join(", "), units)}
    >
      <Aside place={spot(8, 14)}>{texts.toScale(units)}</Aside>
      <path class="sheet" d={box(left - 14, top, right + 14, joint)} />
      <path class="sheet" d={box(left - 14, joint, right + 14, foot)} />
      <path class="melt" d={lens(first)} />
      <path class="hidden" d={lens(second)} />
      <path class="tool" d={tipPath({ ...body, face: spot(first, top), length: tip.length, side: "above" })} />
      <path class="tool" d={tipPath({ ...body, face: spot(first, foot), length: tip.below, side: "below" })} />
      <Size
        from={spot(first - body.half, top)}
        to={spot(first + body.half, top)}
        off={tip.length + 12}
        gap={tip.length + 2}
        text={texts.face(face)}
        outside={scale * tipFace < 64 ? "to" : undefined}
      />
      {settings.map((words, index) => (
        <text key={words} class="size" x={first + body.body + 12} y={top - 39 + 15 * index}>
          {words}
        </text>
      ))}

      <Line from={spot(second, foot)} to={spot(second, lapTop)} kind="centre" />
      <Line from={spot(first, foot + tip.below)} to={spot(first, lapTop)} kind="centre" />
      <Size from={spot(first, lapTop)} to={spot(second, lapTop)} off={36} gap={0} text={`p ${p}`} />

      <path class="sheet" d={box(left, lapTop - 16, right, lapFoot)} />
      <path class="sheet" d={box(left, lapTop, right, lapFoot + 16)} />
      <Line from={spot(left - 8, row)} to={spot(right + 8, row)} kind="centre" />
      {[first, second].map((x, index) => (
        <circle key={x} class={index === 0 ? "outline" : "hidden"} cx={x} cy={row} r={(scale * nugget) / 2} />
      ))}
      <Size from={spot(right, lapTop)} to={spot(right, lapFoot)} off={22} text={texts.lap(w)} />
      <text class="size" x={first} y={lapFoot + 40} text-anchor="middle">
        {`d ${d}`}
      </text>
      <Line from={spot(first, lapFoot + 27)} to={spot(first, row + (scale * nugget) / 2)} />
      <Aside place={spot(352, lapFoot + 44)} end>
        {texts.dashed}
      </Aside>
    </Drawing>
  );
}

/** A setting with its name: `force 1.4–1.5 kN`. */
function rangeWords(low: number | null, high: number | null, quantity: Quantity): string {
  if (low === null || high === null) return "";
  return `${quantity} ${lookText(rangeLook(showQuantity(low, quantity), showQuantity(high, quantity)))}`;
}
