import type { Raw, RawRow } from "../../lib/inputs.ts";
import { type Found, find, isGroup, keep, type Store, shelfVersion } from "../shop/shelf.ts";

/** Offcuts kept as stock on this device. */

export const offcutShelf = "flat-to-formed.offcuts";

export interface KeptOffcut {
  readonly name: string;
  /** Lengths in mm; the length runs along the rolling direction. */
  readonly width: number;
  readonly length: number;
  readonly count: number;
  /** Id of the metal; with it the thickness, where that was given. */
  readonly material: string;
  readonly thickness?: number;
  /** On the clock of the device, `2026-11-25T14:05`. */
  readonly kept: string;
}

interface KeptOffcuts {
  readonly version: typeof shelfVersion;
  readonly offcuts: readonly KeptOffcut[];
}

const isSize = (value: unknown) => typeof value === "number" && Number.isFinite(value) && value > 0;
const isOffcut = (value: unknown): value is KeptOffcut =>
  isGroup(value) &&
  typeof value.name === "string" &&
  typeof value.kept === "string" &&
  typeof value.material === "string" &&
  isSize(value.width) &&
  isSize(value.length) &&
  isSize(value.count) &&
  (value.thickness === undefined || isSize(value.thickness));

/** The offcuts kept, the newest first, or why there are none to be had. */
export function findOffcuts(store: Store | undefined): Found<KeptOffcuts> {
  return find(store, offcutShelf, ({ offcuts }) => Array.isArray(offcuts) && offcuts.every(isOffcut));
}

/** Keeps a list of offcuts; false where storage is off or full. */
export function keepOffcuts(store: Store | undefined, offcuts: readonly KeptOffcut[]): boolean {
  return keep(store, offcutShelf, offcuts.length === 0 ? undefined : { version: shelfVersion, offcuts });
}

/** The list with an offcut put first, under a name that no other has. */
export function withOffcut(offcuts: readonly KeptOffcut[], offcut: KeptOffcut): readonly KeptOffcut[] {
  const taken = new Set(offcuts.map(({ name }) => name));
  let { name } = offcut;
  for (let count = 2; taken.has(name); count += 1) name = `${offcut.name} (${count})`;
  return [{ ...offcut, name }, ...offcuts];
}

/** The offcut as a row of the form's list of sheets. */
export function rowOf({ name, width, length, count }: KeptOffcut): RawRow {
  return { name: name.slice(0, 60), width: `${width}mm`, length: `${length}mm`, count: String(count) };
}

const isRowOf = (row: RawRow, offcut: KeptOffcut) =>
  Object.entries(rowOf(offcut)).every(([key, text]) => key === "count" || row[key] === text);

/** Whether the offcut is among the sheets of the form. */
export function isInForm(raw: Raw, offcut: KeptOffcut): boolean {
  return Array.isArray(raw.others) && raw.others.some((row) => isRowOf(row, offcut));
}

/** The list after a plan was cut: each offcut is there as many times fewer as sheets of its name and size were cut. */
export function withoutUsed(
  offcuts: readonly KeptOffcut[],
  used: readonly { readonly name: string; readonly width: number; readonly length: number; readonly times: number }[],
): readonly KeptOffcut[] {
  return offcuts.flatMap((offcut) => {
    const gone = used
      .filter(
        ({ name, width, length }) => name === offcut.name.slice(0, 60) && width === offcut.width && length === offcut.length,
      )
      .reduce((sum, { times }) => sum + times, 0);
    return gone >= offcut.count ? [] : [{ ...offcut, count: offcut.count - gone }];
  });
}
