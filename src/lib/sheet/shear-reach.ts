import type { Shear } from "../catalogue.ts";
import { insideTrim, liesOf, type ShearLimits, type SheetJob, ticks } from "./model.ts";

/** What a shop's shear sets to a plan. */
export const shearLimits = ({ cuttingLength, shortestPiece, shortestStop, longestStop }: Shear): ShearLimits => ({
  longestCut: cuttingLength,
  shortestHold: shortestPiece,
  shortestStop,
  longestStop,
});

/**
 * The longest cut a plan may ask for [ticks]: that of the shear, where every piece can be got with such cuts; otherwise any
 * length, and the cuts that are too long are said one by one.
 */
export function longestUsableCut({ sheets, trim, pieces, shear }: SheetJob): number {
  if (!shear) return Infinity;
  const longest = ticks(shear.longestCut);
  const gets = (width: number, length: number, plate: { readonly width: number; readonly length: number }) => {
    if (width > plate.width || length > plate.length) return false;
    const widthFits = width === plate.width;
    const lengthFits = length === plate.length;
    const widthFirst = (widthFits || plate.length <= longest) && (lengthFits || width <= longest);
    const lengthFirst = (lengthFits || plate.width <= longest) && (widthFits || length <= longest);
    return widthFirst || lengthFirst;
  };
  const plates = sheets.filter(({ count }) => count !== 0).map((sheet) => insideTrim(sheet, trim));
  const reachable = pieces.every((piece, index) =>
    liesOf(piece, index).some(({ width, length }) => plates.some((plate) => gets(width, length, plate))),
  );
  return reachable ? longest : Infinity;
}
