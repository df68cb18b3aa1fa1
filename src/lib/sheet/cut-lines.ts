import type { SheetCuts } from "./cut-order.ts";

/** Where one stroke runs on the raw sheet: x across its width, y along its length [mm]; x1 ≤ x2, y1 ≤ y2. */
export interface CutLine {
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
}

interface Lying {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly length: number;
}

/**
 * The lines of the strokes of one sheet, in the order of the strokes: each plate is followed from stroke to stroke.
 *
 * @throws Error when a stroke cuts a plate that is not there, which is a fault of the order
 */
export function cutLines(
  { cuts }: Pick<SheetCuts, "cuts">,
  sheet: { readonly width: number; readonly length: number },
): CutLine[] {
  const plates = new Map<string, Lying>([["", { x: 0, y: 0, width: sheet.width, length: sheet.length }]]);
  return cuts.map(({ from, across, off, offAt, held }, index) => {
    const plate = plates.get(from.id);
    if (!plate) throw new Error(`stroke ${index + 1} cuts plate ${from.id}, which is not there`);
    const { x, y, width, length } = plate;
    const wide = across === "width";
    const first = offAt === "start" ? off : held;
    const size = wide ? first.width : first.length;
    const near: Lying = wide ? { x, y, width: size, length } : { x, y, width, length: size };
    const far: Lying = wide ? { x: x + size, y, width: width - size, length } : { x, y: y + size, width, length: length - size };
    const [offPart, heldPart] = offAt === "start" ? [near, far] : [far, near];
    if (off.kind !== "trim") plates.set(off.id, offPart);
    plates.set(held.id, heldPart);
    return wide ? { x1: x + size, y1: y, x2: x + size, y2: y + length } : { x1: x, y1: y + size, x2: x + width, y2: y + size };
  });
}
