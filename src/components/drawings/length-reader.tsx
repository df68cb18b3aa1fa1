import type { Values } from "../../lib/inputs.ts";
import { nearestFraction } from "../../lib/quantity/fraction.ts";
import type { OutputValues } from "../../lib/worksheet.ts";
import type sheet from "../../lib/worksheets/length-reader.ts";
import { useTexts } from "../../texts/context.ts";
import { lengthReader } from "../../texts/en/drawings/length-reader.ts";
import { Line, spot } from "../figures/pen.tsx";
import { Aside, Drawing, type DrawingProps, drawingWidth } from "./parts/Drawing.tsx";

const inch = 25.4;
const left = 12;
const width = drawingWidth - 2 * left;
/** Edges of the rule: millimetres on the upper, inches on the lower. */
const upper = 74;
const lower = 168;

/** Marks of a scale within the part of the rule that is shown. */
function marks(first: number, last: number, step: number): number[] {
  const from = Math.ceil(first / step - 1e-9);
  const to = Math.floor(last / step + 1e-9);
  return Array.from({ length: Math.max(to - from + 1, 0) }, (_, index) => from + index);
}

/** How coarse a division the mark belongs to: 0 for whole inches, 1 for halves, … */
function level(mark: number, denominator: number): number {
  let depth = Math.round(Math.log2(denominator));
  let rest = Math.abs(mark);
  while (depth > 0 && rest % 2 === 0) {
    rest /= 2;
    depth--;
  }
  return depth;
}

/** The part of a steel rule around a length, with the length marked on both edges. */
export default function LengthReaderDrawing({ id, values, outputs }: DrawingProps) {
  const texts = useTexts(lengthReader);
  const { denominator } = values as Values<typeof sheet.inputs>;
  const { mm: value, fraction } = outputs as OutputValues<typeof sheet.outputs>;
  if (value === null) return null;
  const division = Number(denominator);
  const shown = Math.max(12, (2.4 * inch) / division);
  const start = Math.max(value - shown / 2, 0);
  const x = (length: number) => left + (width * (length - start)) / shown;
  const tenths = shown <= 14;
  const nearest = nearestFraction(value, division);
  const fractionAt = value + nearest.error;
  const near = Math.abs(nearest.error) < 0.005;
  const anchor = (place: number) => (place < 70 ? "start" : place > drawingWidth - 70 ? "end" : "middle");
  return (
    <Drawing
      id={id}
      height={236}
      title={texts.title}
      description={texts.text(division === 1 ? texts.inches : texts.inch(division), value.toFixed(3), fraction)}
    >
      <Aside place={spot(8, 14)}>{texts.scales}</Aside>
      <rect class="sheet" x={-4} y={upper} width={drawingWidth + 8} height={lower - upper} />
      {tenths &&
        marks(start, start + shown, 0.5).map((mark) =>
          mark % 2 === 0 ? null : <Line key={mark} from={spot(x(mark / 2), upper)} to={spot(x(mark / 2), upper + 9)} />,
        )}
      {marks(start, start + shown, 1).map((mark) => (
        <g key={mark}>
          <Line from={spot(x(mark), upper)} to={spot(x(mark), upper + (mark % 5 === 0 ? 22 : 15))} kind="outline" />
          {(tenths || mark % 5 === 0) && x(mark) > 8 && x(mark) < drawingWidth - 8 && (
            <text class="label" x={x(mark)} y={upper + 37} text-anchor="middle">
              {mark}
            </text>
          )}
        </g>
      ))}
      {marks(start, start + shown, inch / division).map((mark) => {
        const depth = level(mark, division);
        const place = x((mark * inch) / division);
        const tall = 30 - 4 * Math.min(depth, 6);
        return (
          <g key={mark}>
            <Line from={spot(place, lower)} to={spot(place, lower - tall)} kind={depth <= 4 ? "outline" : "thin"} />
            {depth <= 3 && place > 10 && place < drawingWidth - 10 && (
              <text class="label" x={place} y={lower - tall - 5} text-anchor="middle">
                {nearestFraction((mark * inch) / division, 8).text}
              </text>
            )}
          </g>
        );
      })}
      <path class="mark-line" d={`M${x(value)} ${upper - 22}V${lower + 8}`} />
      <text class="mark-text big" x={x(value)} y={upper - 28} text-anchor={anchor(x(value))}>
        {Number(value.toFixed(3))} mm
      </text>
      {!near && <Line from={spot(x(fractionAt), lower)} to={spot(x(fractionAt), lower + 24)} />}
      <text class="size big" x={x(fractionAt)} y={lower + 38} text-anchor={anchor(x(fractionAt))}>
        {fraction} in
      </text>
      <Aside
        place={spot(anchor(x(fractionAt)) === "end" ? drawingWidth - 8 : 8, lower + 58)}
        end={anchor(x(fractionAt)) === "end"}
      >
        {near
          ? texts.onTheMark
          : texts.nearest(division, Math.abs(nearest.error).toFixed(2), nearest.error > 0 ? texts.long : texts.short)}
      </Aside>
    </Drawing>
  );
}
