import type { Raw } from "../inputs.ts";
import type { CutList } from "./cut-list.ts";

const text = (value: number) => `${Number(value.toFixed(3))}mm`;

/**
 * A cutting job for the blanks and practice strips of a planned part, as it would be typed: sizes, numbers, and the side that
 * runs along the rolling direction.
 */
export function jobOfPart(
  part: { readonly name: string; readonly material: { readonly id: string }; readonly thickness: number },
  { sheet, pieces }: CutList,
): Raw {
  return {
    name: part.name,
    material: part.material.id,
    thickness: text(part.thickness),
    ...(sheet ? { sheetWidth: text(sheet.width), sheetLength: text(sheet.length) } : {}),
    pieces: pieces.map(({ of, width, depth, count, grain }) => ({
      name: of === "blank" ? part.name : `${part.name} practice`,
      width: text(width),
      length: text(depth),
      count: String(count),
      grain: grain === undefined ? "free" : grain === "y" ? "along" : "across",
    })),
  };
}
