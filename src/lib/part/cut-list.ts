import { fitShare } from "../bending/measured-bends.ts";
import type { Catalogue, Shear, StockSheet } from "../catalogue.ts";
import type { Blank, CutSheet } from "./blank.ts";
import type { Axis } from "./model.ts";

/** One setting of the back stop and the strokes made at it. Lengths in mm. */
export interface ShearSetting {
  readonly number: number;
  /** Between the blade and the stop; none: cut to a scribed line, at `size` from the edge. */
  readonly stop?: number;
  /** What the piece behind the blade measures across the cut. */
  readonly size: number;
  /** Along the blade. */
  readonly cutLength: number;
  readonly times: number;
  /** What falls behind the blade: a strip to cut up, a piece that is done, or what is left of a strip, the piece staying in front. */
  readonly off: "strip" | "piece" | "rest";
  /** The shear is long enough for it. */
  readonly reaches: boolean;
}

/** Pieces of one size and how they are sheared from a stock sheet. */
export interface CutPieces {
  readonly of: "blank" | "practice";
  /** West to east and south to north for a blank; across and along the bend for a practice strip [mm]. */
  readonly width: number;
  readonly depth: number;
  readonly count: number;
  /** What both diagonals must measure [mm]. */
  readonly diagonal: number;
  /** Side of the piece along the rolling direction of the sheet; none where there is no sheet. */
  readonly grain?: Axis;
  /** Stock sheets they take. */
  readonly sheets: number;
  readonly settings: readonly ShearSetting[];
}

export interface CutList {
  /** Sheet of this shop's stock that the pieces are taken from; none fits, or there is none of this metal and thickness. */
  readonly sheet?: StockSheet;
  readonly pieces: readonly CutPieces[];
}

interface Wanted {
  readonly width: number;
  readonly depth: number;
  readonly count: number;
  /** Side that should run along the rolling direction: then bends run across it. */
  readonly along?: Axis;
}

const closeTo = 1e-6;

/** Sheets of the part's metal and thickness, the smallest that holds the piece first. */
function sheetsFor(layout: CutSheet, stock: readonly StockSheet[]): readonly StockSheet[] {
  const { material, thickness } = layout.part;
  const off = (sheet: StockSheet) => Math.abs(sheet.thickness - thickness);
  return stock
    .filter((sheet) => sheet.material === material.id && off(sheet) <= fitShare * thickness)
    .toSorted((a, b) => off(a) - off(b) || a.width * a.length - b.width * b.length);
}

/** How a piece may lie: which of its sides runs along the sheet. */
function liesOn({ width, length }: StockSheet, piece: Wanted): readonly Axis[] {
  const fits = { x: piece.width <= length && piece.depth <= width, y: piece.depth <= length && piece.width <= width };
  return (["x", "y"] as const).filter((axis) => fits[axis]);
}

/** Strokes that cut plates of one length into pieces side by side: pieces that fall behind the blade, and rests that do. */
interface Strokes {
  readonly pieces: number;
  /** Length of the rest and how often it is cut off. */
  readonly rests: ReadonlyMap<number, number>;
  readonly plates: number;
}

/** What is left of a plate stays under the hold-downs; where it is too short for them, it is cut off behind the blade instead. */
function strokesFor(plate: number, size: number, count: number, shortestPiece: number): Strokes {
  const perPlate = Math.max(1, Math.floor(plate / size + closeTo));
  const plates = Math.ceil(count / perPlate);
  const rests = new Map<number, number>();
  let pieces = 0;
  for (let index = 0; index < plates; index += 1) {
    const here = Math.min(perPlate, count - index * perPlate);
    const left = plate - here * size;
    if (left >= shortestPiece - closeTo) pieces += here;
    else {
      pieces += here - 1;
      if (left > closeTo) rests.set(left, (rests.get(left) ?? 0) + 1);
    }
  }
  return { pieces, rests, plates };
}

/** The strokes for pieces of one size: strips across the sheet first, while it is whole, then each strip into pieces. */
function settingsFor(piece: Wanted, grain: Axis | undefined, sheet: StockSheet | undefined, shear: Shear) {
  // Without a sheet the first stroke gives the shorter side, so that the longer cut is made while there is more to hold.
  const along = grain ?? (piece.width <= piece.depth ? "x" : "y");
  const strip = along === "x" ? piece.width : piece.depth;
  const across = along === "x" ? piece.depth : piece.width;
  // Without a sheet the plate at hand is any that is large enough: one stroke each way.
  const wide = sheet?.width ?? across;
  const ofStrip = sheet
    ? strokesFor(wide, across, piece.count, shear.shortestPiece)
    : { pieces: piece.count, rests: new Map<number, number>(), plates: piece.count };
  const ofSheet = sheet
    ? strokesFor(sheet.length, strip, ofStrip.plates, shear.shortestPiece)
    : { pieces: ofStrip.plates, rests: new Map<number, number>(), plates: 1 };
  const settings: Omit<ShearSetting, "number">[] = [];
  const add = (size: number, cutLength: number, times: number, off: ShearSetting["off"]) => {
    if (times === 0) return;
    settings.push({
      ...(size >= shear.shortestStop - closeTo && size <= shear.longestStop + closeTo && { stop: size }),
      size,
      cutLength,
      times,
      off,
      reaches: cutLength <= shear.cuttingLength + closeTo,
    });
  };
  add(strip, wide, ofSheet.pieces, "strip");
  for (const [rest, times] of ofSheet.rests) add(rest, wide, times, "rest");
  add(across, strip, ofStrip.pieces, "piece");
  for (const [rest, times] of ofStrip.rests) add(rest, strip, times, "rest");
  return {
    sheets: ofSheet.plates,
    settings: settings.map((setting, index): ShearSetting => ({ number: index + 1, ...setting })),
  };
}

/**
 * What is cut, from which sheet, and the settings of the shear's back stop in order.
 *
 * @param layout - the flat layout
 * @param blank - its size [mm]; `along`: the side that should run along the rolling direction whatever its bends
 * @param practice - practice strips and how many of each [mm]
 * @returns blanks first, then practice strips. Bends of a part that is bent one way lie across the rolling direction where a sheet
 *   allows; otherwise the lie that takes the narrower strip is chosen
 * @remarks Strips across the sheet first, the piece behind the blade, the rest under the hold-downs: common practice at a foot shear.
 *   Bends across the rolling direction: FAA-H-8083-31 chapter 4, grain of the metal (memory).
 */
export function cutList(
  layout: CutSheet & { readonly part: { readonly quantity: number } },
  blank: Pick<Blank, "width" | "depth"> & { readonly along?: Axis },
  practice: readonly { readonly pieces: number; readonly size: { readonly length: number; readonly width: number } }[],
  catalogue: Pick<Catalogue, "shop">,
): CutList {
  const { shear, stock } = catalogue.shop;
  const [only, second] = layout.chains;
  const bentAlong = only && !second && (only.bends.length > 0 || only.edgeLines.length > 0) ? only.axis : undefined;
  const along = blank.along ?? bentAlong;
  const wanted: Wanted = {
    width: blank.width,
    depth: blank.depth,
    count: layout.part.quantity,
    ...(along && { along }),
  };
  const sheet = sheetsFor(layout, stock).find((each) => liesOn(each, wanted).length > 0);
  const piecesOf = (of: CutPieces["of"], piece: Wanted): CutPieces => {
    const lies = sheet ? liesOn(sheet, piece) : [];
    const narrower: Axis = piece.width <= piece.depth ? "x" : "y";
    const grain = piece.along && lies.includes(piece.along) ? piece.along : lies.includes(narrower) ? narrower : lies[0];
    const { width, depth, count } = piece;
    return {
      of,
      width,
      depth,
      count,
      diagonal: Math.hypot(width, depth),
      ...(grain && { grain }),
      ...settingsFor(piece, grain, sheet, shear),
    };
  };
  const strips = new Map<string, Wanted>();
  for (const { pieces, size } of practice) {
    const key = `${size.length} ${size.width}`;
    // The bend runs along the width of the strip, so its length lies along the grain as it does on a part bent one way.
    strips.set(key, { width: size.length, depth: size.width, count: (strips.get(key)?.count ?? 0) + pieces, along: "x" });
  }
  return {
    ...(sheet && { sheet }),
    pieces: [piecesOf("blank", wanted), ...[...strips.values()].map((strip) => piecesOf("practice", strip))],
  };
}
