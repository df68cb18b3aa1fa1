import type { Values } from "../../lib/inputs.ts";
import type { LengthView } from "../../lib/quantity/format.ts";
import type { OutputValues } from "../../lib/worksheet.ts";
import type sheet from "../../lib/worksheets/folded-edge.ts";
import { useTexts } from "../../texts/context.ts";
import { drawings } from "../../texts/en/drawings.ts";
import { Line, Size, spot } from "../figures/pen.tsx";
import type { StripStep } from "../figures/section.ts";
import { Aside, Drawing, type DrawingProps, drawingWidth } from "./parts/Drawing.tsx";
import { useSizes } from "./parts/sizes.ts";
import { fitInto, hull, outline, walk } from "./parts/strip.ts";

interface Fold {
  readonly turn: number | null;
  readonly angle: number | null;
  readonly radius: number | null;
  readonly line: number | null;
}

/** Each fold once, as it is when finished: a fold that is swung and then pressed has two steps. */
function finished(turns: readonly Fold[]): { angle: number; radius: number; line: number }[] {
  const folds = new Map(turns.map((step) => [step.turn, step]));
  return [...folds.values()].map(({ angle, radius, line }) => ({ angle: angle ?? 180, radius: radius ?? 0, line: line ?? 0 }));
}

/** From the sheet to the raw edge. The fold nearest the sheet was made last. */
function stepsOf(kind: string, width: number, thickness: number, shown: number, folds: ReturnType<typeof finished>): StripStep[] {
  // A sharp fold is drawn with a hair of radius, so that its two faces can be told apart.
  const hair = 0.05 * thickness;
  if (kind === "double") {
    const outer = thickness / 2 + hair;
    const flap = Math.max(width - outer - 2 * thickness - hair, 0.1 * width);
    return [{ ahead: shown }, { turn: 180, radius: outer }, { ahead: flap }, { turn: 180, radius: hair }, { ahead: flap }];
  }
  const [fold] = folds;
  const radius = Math.max(fold?.radius ?? 0, hair);
  return [{ ahead: shown }, { turn: fold?.angle ?? 180, radius }, { ahead: Math.max(width - radius - thickness, 0.05 * width) }];
}

const top = { left: 30, top: 40, width: drawingWidth - 80, height: 96 };
const blank = { left: 20, top: 198, height: 40 };

export default function FoldedEdgeDrawing({ id, values, outputs, view }: DrawingProps) {
  const { kind, thickness, width } = values as Values<typeof sheet.inputs>;
  const { turns, allowance } = outputs as OutputValues<typeof sheet.outputs>;
  const { foldedEdge: texts } = useTexts(drawings);
  const { size, units } = useSizes(view);
  if (allowance === null) return null;
  const folds = finished(turns);
  const shown = 1.7 * width;
  const pieces = walk(stepsOf(kind, width, thickness, shown, folds), thickness);
  const points = hull(pieces, thickness);
  const sight = fitInto(points, top);
  const outermost = Math.max(...points.map(({ x }) => x));
  const highest = Math.max(...points.map(({ z }) => z));
  const corner = (x: number) => sight.spot({ x, z: highest });
  return (
    <Drawing
      id={id}
      height={270}
      title={texts.title}
      description={texts.text(size(width), folds.map(({ line }) => size(line)).join(texts.and), units)}
    >
      <Aside place={spot(8, 14)}>{units}</Aside>
      <path class="sheet" d={outline(pieces, thickness, sight)} />
      <Size from={corner(outermost - width)} to={corner(outermost)} off={12} text={`W ${size(width)}`} />
      <Flat folds={folds} width={width} view={view} />
    </Drawing>
  );
}

/** The raw edge on the right, the middle of each fold scribed from it. */
function Flat({ folds, width, view }: { folds: ReturnType<typeof finished>; width: number; view: LengthView }) {
  const { foldedEdge: texts } = useTexts(drawings);
  const { size } = useSizes(view);
  // A width of next to nothing is allowed, and would blow the scale up.
  const longest = Math.max(...folds.map(({ line }) => line), width, 1e-6);
  const scale = (drawingWidth - 2 * blank.left) / (1.6 * longest);
  const right = drawingWidth - blank.left;
  const bottom = blank.top + blank.height;
  return (
    <g>
      <Aside place={spot(blank.left, blank.top - 42)}>{texts.flat}</Aside>
      <path class="sheet" d={`M${blank.left} ${blank.top}H${right}V${bottom}H${blank.left}`} />
      {folds.map(({ line }, index) => (
        <g key={line}>
          <Line from={spot(right - scale * line, blank.top)} to={spot(right - scale * line, bottom)} />
          <Size
            from={spot(right - scale * line, index === 0 ? blank.top : bottom)}
            to={spot(right, index === 0 ? blank.top : bottom)}
            off={index === 0 ? 12 : -20}
            text={size(line)}
          />
        </g>
      ))}
    </g>
  );
}
