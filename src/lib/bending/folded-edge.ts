import type { Formula, FormulaInput, FormulaSymbol } from "../formula.ts";
import { InputError } from "../input-error.ts";
import { checkRanges, exactly } from "../inputs.ts";
import { atLeast, say } from "../quantity/phrase.ts";
import { type FoldedEdgeKind, thickness } from "./symbols.ts";

export const edgeWidth = {
  label: "Width of the folded edge",
  symbol: "W",
  tex: "W",
  quantity: "length",
  fineness: "setting",
  min: 0,
  max: 200,
  aboveMin: true,
} as const satisfies FormulaInput;

export const edgeGap = {
  label: "Gap",
  symbol: "g",
  tex: "g",
  quantity: "length",
  fineness: "setting",
  min: 0,
  max: 50,
} as const satisfies FormulaInput;

/** A bend allowance, BA, is the metal in one bend; this is what the whole edge adds to a finished size. */
export const edgeAllowance = {
  label: "What the folded edge adds",
  symbol: "FA",
  tex: String.raw`\mathrm{FA}`,
  quantity: "length",
  fineness: "setting",
} as const satisfies FormulaSymbol;

const turned = { label: "Angle turned through", symbol: "A", tex: "A", quantity: "angle" } as const satisfies FormulaSymbol;
const inputs = { thickness, width: edgeWidth, gap: edgeGap };

/** One fold of the edge, as laid out on the flat and as it is when finished. */
export interface EdgeTurn {
  /** 1 for the fold made first, nearest the raw edge. */
  readonly turn: number;
  /** [deg], turned through from flat when finished */
  readonly angle: number;
  /** [mm], inside, when finished */
  readonly radius: number;
  /** [mm], middle of the fold from the raw edge, on the flat */
  readonly line: number;
}

export interface FoldedEdge {
  /** FA [mm] to add to the finished size, which is measured to the outermost point of the fold */
  readonly allowance: number;
  readonly turns: readonly EdgeTurn[];
}

export interface FoldedEdgeSize {
  readonly kind: FoldedEdgeKind;
  /** T [mm] */
  readonly thickness: number;
  /** W [mm], finished, from the outermost point of the fold to the end of the folded part */
  readonly width: number;
  /** g [mm], open: clear height inside; teardrop: inside width of the loop; closed and double: not used */
  readonly gap: number;
}

export const closedEdgeFormula: Formula = {
  id: "closed-edge",
  name: "Closed folded edge, by the rule",
  result: "allowance",
  expression: String.raw`\v{width}`,
  symbols: { width: edgeWidth, allowance: edgeAllowance },
};

export const doubleEdgeFormula: Formula = {
  id: "double-edge",
  name: "Double folded edge, by the rule",
  result: "allowance",
  expression: String.raw`2\cdot\v{width}`,
  symbols: { width: edgeWidth, allowance: edgeAllowance },
};

export const teardropAngleFormula: Formula = {
  id: "teardrop-angle",
  name: "Angle at which the edge touches the sheet",
  result: "angle",
  expression: String.raw`180^\circ + 2\arctan\frac{\v{gap}/2}{\v{width} - \v{gap}/2 - \v{thickness}}`,
  symbols: { ...inputs, angle: turned },
};

export const roundEdgeFormula: Formula = {
  id: "round-edge",
  name: "Folded edge along the middle of the thickness",
  result: "allowance",
  expression: String.raw`\v{width} - 2\left(\frac{\v{gap}}{2} + \v{thickness}\right) + \frac{\pi}{180^\circ}\,\v{angle}\left(\frac{\v{gap}}{2} + \frac{\v{thickness}}{2}\right)`,
  symbols: { ...inputs, angle: turned, allowance: edgeAllowance },
};

/*
 * Open and teardrop edges, followed along the middle of the thickness (derived; printed in no source we know).
 *
 * Put the inside face of the sheet on the x axis, the part itself at x > 0, and the centre of the loop at (0, r), r = g/2.
 * The fold leaves the sheet at (0, 0), going towards −x. Turned through A it is at (−r sin A, r − r cos A), heading
 * (−cos A, sin A). Its outermost point is at x = −(r + T); finished sizes are measured to there.
 *
 * Open: A = 180°, the folded part then runs level to the end of the width W, so its straight part is s = W − (r + T).
 * Teardrop: A = 180° + φ. The folded part starts at (r sin φ, r + r cos φ), heads down at φ, and after the length s its inside
 * corner is at height r + r cos φ − s sin φ. It touches the sheet where this is nothing: s = r (1 + cos φ)/sin φ = r/tan(φ/2).
 * That is also where the two tangents from one point to a circle say it must be: as far along the sheet as along the folded
 * part, at x = s. So W = r + T + s again, and φ = 2 atan(r/s).
 *
 * What the edge adds to a finished size H is the flat length less H:
 *   [H − (r + T)] + arc + s − H = W − 2 (r + T) + arc,  arc = A (r + T/2).
 * Beyond φ = 90° (s < r) the edge would meet the sheet behind its own loop's widest place; that is refused.
 */

function roundEdge({ kind, thickness: sheet, width, gap }: FoldedEdgeSize): FoldedEdge {
  const radius = gap / 2;
  if (!(gap > 0))
    throw new InputError(
      "gap",
      gap,
      say`Gap must be above 0 for this kind of edge; it is ${exactly(gap, "length")}. Choose closed for none.`,
    );
  const straight = width - radius - sheet;
  const least = kind === "teardrop" ? gap + sheet : radius + sheet;
  if (width < least)
    throw new InputError(
      "width",
      width,
      say`Width of the folded edge must be at least ${atLeast(least)} for this gap and thickness, ${
        kind === "teardrop" ? "or the edge does not reach the sheet beyond its loop" : "which the round part alone takes"
      }; it is ${exactly(width, "length")}.`,
    );
  const past = kind === "teardrop" ? 2 * Math.atan(radius / straight) : 0;
  const arc = (Math.PI + past) * (radius + sheet / 2);
  return {
    allowance: straight - (radius + sheet) + arc,
    turns: [{ turn: 1, angle: 180 + (past * 180) / Math.PI, radius, line: straight + arc / 2 }],
  };
}

/**
 * What a folded edge adds to the flat, and where its folds lie.
 *
 * @param edge.kind - closed, open, teardrop or double
 * @param edge.thickness - T [mm]; 0.1 to 13
 * @param edge.width - W [mm], finished, from the outermost point of the fold; above 0 to 200
 * @param edge.gap - g [mm]; 0 to 50; above 0 for open and teardrop, not used by closed and double
 * @returns allowance FA [mm] to add to a finished size measured to the outermost point, and the folds in the order they are made
 * @throws InputError for a value outside its range, or a width too small for its gap
 * @remarks Closed W and double 2 W: NAVEDTRA 14251 ch. 2 (read); the rule leaves the thickness out and is for light sheet, see
 *   `foldedEdgeMiddleLine`. Open and teardrop: derived along the middle of the thickness, as shown above in this file.
 * @example foldedEdge({ kind: "double", thickness: 0.8, width: 6, gap: 0 }).allowance; // 12
 */
export function foldedEdge(edge: FoldedEdgeSize): FoldedEdge {
  checkRanges(inputs, edge);
  const { kind, thickness: sheet, width } = edge;
  switch (kind) {
    case "closed":
      return { allowance: width, turns: [{ turn: 1, angle: 180, radius: 0, line: width }] };
    case "double":
      return {
        allowance: 2 * width,
        turns: [
          { turn: 1, angle: 180, radius: 0, line: width },
          // The second fold closes round the first flap, so one thickness stays between its faces.
          { turn: 2, angle: 180, radius: sheet / 2, line: 2 * width },
        ],
      };
    case "open":
    case "teardrop":
      return roundEdge(edge);
  }
}

/**
 * Allowance of a closed or double edge along the middle of the thickness, which the published rule leaves out.
 *
 * @param edge - as for `foldedEdge`, kind `closed` or `double`
 * @returns [mm]: closed W + π T/2 − 2 T = W − 0.43 T; double 2 W − 1.79 T
 * @throws InputError for a value outside its range
 * @remarks Derived. Closed: 180° at inside radius 0, so W − 2 T + π (T/2). Double: the second fold closes round the first flap
 *   (inside radius T/2, arc π T), and that flap is 1½ T shorter than W, because it fills the gap and so ends where the second
 *   fold begins: −1½ T + π T + [W − 1½ T − T] + π T/2 + [(W − 1½ T) − T].
 */
export function foldedEdgeMiddleLine(edge: {
  readonly kind: "closed" | "double";
  readonly thickness: number;
  readonly width: number;
}): number {
  checkRanges({ thickness, width: edgeWidth }, edge);
  const { thickness: sheet, width } = edge;
  return edge.kind === "closed" ? width + (Math.PI / 2 - 2) * sheet : 2 * width + (1.5 * Math.PI - 6.5) * sheet;
}

/** One step at the brake. */
export interface EdgeStep extends EdgeTurn {
  readonly how: "swing" | "press flat";
}

/**
 * The steps that make the folds on a brake: swing as far as its leaf goes, press the rest.
 *
 * @param turns - the folds of `foldedEdge`
 * @param largestSwing - [deg], how far the leaf swings from flat
 * @returns one or two steps a fold, in order; `angle` is where the fold stands after the step
 * @remarks Common practice. A fold with radius 0 is always pressed at the end, because a leaf cannot close it.
 */
export function edgeSteps(turns: readonly EdgeTurn[], largestSwing: number): readonly EdgeStep[] {
  return turns.flatMap((turn) =>
    turn.angle <= largestSwing && turn.radius > 0
      ? [{ ...turn, how: "swing" as const }]
      : [
          { ...turn, angle: Math.min(turn.angle, largestSwing), how: "swing" as const },
          { ...turn, how: "press flat" as const },
        ],
  );
}
