import type { Worksheet } from "./worksheet.ts";
import bendLength from "./worksheets/bend-length.ts";

/** Every calculator, in the order of the handbook. */
export const worksheets: readonly Worksheet[] = [bendLength] as unknown as readonly Worksheet[];

/** The worksheet with this id, if there is one. */
export function worksheetById(id: string): Worksheet | undefined {
  return worksheets.find((sheet) => sheet.id === id);
}
