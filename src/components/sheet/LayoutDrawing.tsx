import type { LengthView } from "../../lib/quantity/format.ts";
import { cutLines } from "../../lib/sheet/cut-lines.ts";
import type { Placed, SheetCuts } from "../../lib/sheet/cut-order.ts";
import type { CutStep } from "../../lib/sheet/cut-steps.ts";
import type { Sheet } from "../../lib/sheet/model.ts";
import { useTexts } from "../../texts/context.ts";
import { sheet } from "../../texts/en/sheet.ts";
import { sizeText } from "../drawings/parts/sizes.ts";
import { Arrowhead, Line, Paper, paperWidth, Size, spot } from "../figures/pen.tsx";
import { letterOf } from "./letters.ts";

/** Room for the sizes at the left and below, and at the other sides [units of the paper]. */
const room = { left: 30, right: 8, top: 8, below: 44 };
const tallest = 300;
/** Shorter lines have no room for the number of their step, shorter parts none for their letter. */
const shortestNumbered = 10;
const smallestLettered = 5;
/** Numbers on lines that begin side by side stand at different places along them. */
const places = 4;
const apart = 12;
/** Width of a letter as a share of its height. */
const slim = 0.62;

interface Props {
  readonly cuts: SheetCuts;
  readonly stock: Sheet;
  readonly trim: number;
  readonly steps: readonly CutStep[];
  readonly names: readonly string[];
  readonly title: string;
  readonly view: LengthView;
}

const short = (value: number) => Number(value.toFixed(2));

/** One sheet with its pieces and strokes: its length, and with it the rolling direction, runs from left to right. */
export function LayoutDrawing({ cuts, stock, trim, steps, names, title, view }: Props) {
  const texts = useTexts(sheet);
  const scale = Math.min((paperWidth - room.left - room.right) / stock.length, tallest / stock.width);
  const [wide, high] = [stock.length * scale, stock.width * scale];
  const left = room.left + (paperWidth - room.left - room.right - wide) / 2;
  const bottom = room.top + high;
  const box = ({ x, y, width, length }: Pick<Placed, "x" | "y" | "width" | "length">) => ({
    x: short(left + y * scale),
    y: short(bottom - (x + width) * scale),
    width: short(length * scale),
    height: short(width * scale),
  });
  const lines = cutLines(cuts, stock);
  const stepOf = (stroke: number) => steps.find(({ first, last }) => stroke + 1 >= first && stroke + 1 <= last)?.number ?? 0;
  const size = (part: Placed) => `${sizeText(part.width, view)} × ${sizeText(part.length, view)}`;
  const hatch = `rest-${title.replace(/\W+/g, "-")}`;

  const letters = cuts.pieces.map((part) => {
    const { x, y, width, height } = box(part);
    const letter = letterOf(part.piece ?? 0);
    const tall = Math.min(13, 0.75 * height, (0.85 * width) / (slim * letter.length));
    if (tall < smallestLettered) return null;
    const name = names[part.piece ?? 0] ?? "";
    const middle = { x: short(x + width / 2), y: y + height / 2 };
    const named = name !== "" && height > 26 && width > 5.2 * name.length + 4;
    const sized = height > (named ? 38 : 26) && width > 5 * size(part).length + 4;
    const rows = 1 + (named ? 1 : 0) + (sized ? 1 : 0);
    const first = middle.y + 0.36 * tall - (rows - 1) * 5;
    return (
      <g key={part.id}>
        <text class="cut-letter" x={middle.x} y={short(first)}>
          <tspan font-size={short(tall)}>{letter}</tspan>
        </text>
        {named && (
          <text class="cut-small" x={middle.x} y={short(first + 10)}>
            {name}
          </text>
        )}
        {sized && (
          <text class="cut-small" x={middle.x} y={short(first + (named ? 20 : 10))}>
            {size(part)}
          </text>
        )}
      </g>
    );
  });

  return (
    <Paper height={short(bottom + room.below)} title={title}>
      <defs>
        <pattern id={hatch} width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <path class="thin" d="M0 0V5" />
        </pattern>
      </defs>
      <rect class="outline" {...box({ x: 0, y: 0, width: stock.width, length: stock.length })} />
      {cuts.offcuts.map((part) => {
        const { x, y, width, height } = box(part);
        const text = `${texts.offcut(part.id || "1")} · ${size(part)}`;
        const upright = height > width;
        const along = upright ? height : width;
        const fits = Math.min(width, height) > 11 && along > 5 * text.length;
        const middle = { x: short(x + width / 2), y: short(y + height / 2) };
        return (
          <g key={part.id}>
            <polygon
              class="cut-rest"
              points={`${x},${y} ${short(x + width)},${y} ${short(x + width)},${short(y + height)} ${x},${short(y + height)}`}
              fill={`url(#${hatch})`}
            />
            {fits && (
              <text
                class="cut-small cut-over"
                x={middle.x}
                y={middle.y + 3}
                transform={upright ? `rotate(-90 ${middle.x} ${middle.y})` : undefined}
              >
                {text}
              </text>
            )}
          </g>
        );
      })}
      {cuts.pieces.map((part) => (
        <rect key={part.id} class="cut-piece" {...box(part)} />
      ))}
      {trim > 0 && (
        <rect class="hidden" {...box({ x: trim, y: trim, width: stock.width - 2 * trim, length: stock.length - 2 * trim })} />
      )}
      {letters}
      {lines.map(({ x1, y1, x2, y2 }, stroke) => (
        <path
          key={String(stroke)}
          class="cut-stroke"
          d={`M${short(left + y1 * scale)} ${short(bottom - x1 * scale)}L${short(left + y2 * scale)} ${short(bottom - x2 * scale)}`}
        />
      ))}
      {lines.map(({ x1, y1, x2, y2 }, stroke) => {
        const along = (x2 - x1 + (y2 - y1)) * scale;
        if (along < shortestNumbered) return null;
        const off = Math.min(along - 5, 6 + (stroke % places) * apart);
        const at =
          x1 === x2 ? spot(left + y1 * scale + off, bottom - x1 * scale) : spot(left + y1 * scale, bottom - x1 * scale - off);
        return (
          <g key={String(stroke)}>
            <circle class="badge" cx={short(at.x)} cy={short(at.y)} r={4.6} />
            <text class="cut-number" x={short(at.x)} y={short(at.y + 2.4)}>
              {stepOf(stroke)}
            </text>
          </g>
        );
      })}
      <Size from={spot(left, bottom)} to={spot(left + wide, bottom)} off={-16} text={sizeText(stock.length, view)} />
      <Size from={spot(left, bottom)} to={spot(left, room.top)} off={14} text={sizeText(stock.width, view)} />
      <Line from={spot(left + 2, bottom + 34)} to={spot(left + 54, bottom + 34)} />
      <Arrowhead tip={spot(left + 60, bottom + 34)} direction={0} />
      <Arrowhead tip={spot(left, bottom + 34)} direction={180} />
      <text class="cut-small cut-side" x={short(left + 66)} y={short(bottom + 37)}>
        {texts.rolling}
      </text>
    </Paper>
  );
}
