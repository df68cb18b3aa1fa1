import type { Values } from "../../lib/inputs.ts";
import type { OutputValues } from "../../lib/worksheet.ts";
import type sheet from "../../lib/worksheets/line-position.ts";
import { useTexts } from "../../texts/context.ts";
import { linePosition } from "../../texts/en/drawings/line-position.ts";
import { Line, Note, Size, spot } from "../figures/pen.tsx";
import { Aside, Drawing, type DrawingProps, drawingWidth } from "./parts/Drawing.tsx";
import { useSizes } from "./parts/sizes.ts";

const left = 20;
const strip = { top: 54, height: 64 };
/** More lines than this are not drawn one by one. */
const mostLines = 12;
/** Most sizes that have room below the strip. */
const mostSizes = 4;

/** The lines on the sheet, how they are measured, and how far each may stray, enlarged. */
export default function LinePositionDrawing({ id, values, outputs, view }: DrawingProps) {
  const texts = useTexts(linePosition);
  const { size, units } = useSizes(view);
  const { distance, count, layout } = values as Values<typeof sheet.inputs>;
  const { perLine, lastWorst, lastLikely } = outputs as OutputValues<typeof sheet.outputs>;
  if (perLine === null || lastWorst === null || lastLikely === null) return null;
  const drawn = Math.min(count, mostLines);
  const step = (drawingWidth - 2 * left - 34) / drawn;
  const chain = layout === "end-to-end";
  const worst = (line: number) => (chain ? (lastWorst * line) / count : lastWorst);
  const likely = (line: number) => (chain ? lastLikely * Math.sqrt(line / count) : lastLikely);
  const x = (line: number) => left + step * line;
  // The widest band is drawn as wide as its line has room for; all of them on one scale.
  const scale = Math.min(0.46 * step, 24) / (count === drawn ? lastWorst : worst(drawn));
  const bottom = strip.top + strip.height;
  const band = (error: number) => Math.max(scale * error, 0.4);
  // Where a step has no room for its size, sizes in a row would run into each other.
  const room = 8 + 8 * size(distance).length;
  const sizes = Array.from({ length: chain && step < room ? 1 : Math.min(drawn, mostSizes) }, (_, index) => index + 1);
  return (
    <Drawing
      id={id}
      height={232}
      title={texts.title}
      description={texts.text(
        count,
        size(distance),
        chain ? texts.endToEnd : texts.fromOneEdge,
        size(lastLikely),
        size(lastWorst),
        units,
      )}
    >
      <Aside place={spot(8, 14)}>{texts.bandsDrawn(units, chain ? texts.largerThanTheyAre : texts.allAlike)}</Aside>
      <path class="sheet" d={`M${drawingWidth - 8} ${strip.top}H${left}V${bottom}H${drawingWidth - 8}`} />
      {Array.from({ length: drawn }, (_, index) => index + 1).map((line) => (
        <g key={line}>
          <rect class="zone" x={x(line) - band(worst(line))} y={strip.top} width={2 * band(worst(line))} height={strip.height} />
          <rect
            class="zone"
            x={x(line) - band(likely(line))}
            y={strip.top + 14}
            width={2 * band(likely(line))}
            height={strip.height - 28}
          />
          <Line from={spot(x(line), strip.top)} to={spot(x(line), bottom)} kind="sight" />
        </g>
      ))}
      {sizes.map((line) => (
        <Size
          key={line}
          from={spot(chain ? x(line - 1) : left, bottom)}
          to={spot(x(line), bottom)}
          off={chain ? -20 : -18 - 18 * (line - 1)}
          text={size(chain ? distance : line * distance)}
          outside={step * (chain ? 1 : line) < room ? "to" : undefined}
        />
      ))}
      <Note
        to={spot(x(drawn) - 0.8 * band(worst(drawn)), strip.top + 5)}
        from={spot(x(drawn) - 20, strip.top - 22)}
        lines={texts.atWorst}
        anchor="end"
      />
      <Note
        to={spot(x(drawn) + 0.6 * band(likely(drawn)), strip.top + strip.height - 18)}
        from={spot(x(drawn) + 8, bottom + 30)}
        lines={texts.likely}
        anchor="middle"
      />
      <text class="label" x={left} y={strip.top - 10}>
        {texts.datum}
      </text>
      {count > drawn && (
        <Aside place={spot(drawingWidth - 8, bottom + 62)} end>
          {texts.firstOfLines(drawn, count)}
        </Aside>
      )}
    </Drawing>
  );
}
