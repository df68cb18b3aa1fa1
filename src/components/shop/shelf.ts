import type { Catalogue, MeasuredBend, Shop } from "../../lib/catalogue.ts";
import { fileOf, filledFrom, type ShopFile } from "../../lib/shop/form.ts";
import { readBend, readShop, type ShopFault } from "../../lib/shop/read-shop.ts";
import { gaugeReader } from "../../lib/stock/gauge.ts";
import { bendShelf, shopShelf } from "./device.ts";

/** What this device keeps of the shop, and how it is read: nothing in it is ever thrown away because it cannot be read. */

/** Counts up when what is kept takes another shape. */
export const shelfVersion = 1;

/** The shop's file as it was changed on this device. */
export interface KeptShop {
  readonly version: typeof shelfVersion;
  /** When it was last changed, on the clock of the device, `2026-11-25T14:05`. */
  readonly changed: string;
  /** Mark of the shop's own file that the changes began from. */
  readonly own: string;
  /** The last state that could be used. */
  readonly file: ShopFile;
  /** Later changes, while something in them cannot be used. */
  readonly draft?: ShopFile;
}

/** Bends measured on this device, each as a line of the shop's file. */
export interface KeptBends {
  readonly version: typeof shelfVersion;
  readonly bends: readonly ShopFile[];
}

export type Trouble =
  /** Storage is switched off. */
  | { readonly why: "off" }
  /** Kept by newer pages than these; left alone. */
  | { readonly why: "newer" }
  /** Not readable; moved to another key. */
  | { readonly why: "unreadable"; readonly movedTo: string };

export interface Found<Kept> {
  readonly kept?: Kept;
  readonly trouble?: Trouble;
}

export type Store = Pick<Storage, "getItem" | "setItem" | "removeItem">;

export const isGroup = (value: unknown): value is ShopFile =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** Puts what cannot be read out of the way, under the first name that is free. @returns that name */
function quarantine(store: Store, key: string, text: string): string {
  let name = `${key}.unreadable`;
  for (let count = 2; ; count++) {
    const there = store.getItem(name);
    if (there === null || there === text) break;
    name = `${key}.unreadable-${count}`;
  }
  try {
    store.setItem(name, text);
  } catch {
    // No room for a copy: then it stays where it is.
    return key;
  }
  store.removeItem(key);
  return name;
}

/** Names under which something waits that could not be read. */
export function unreadable(store: Pick<Storage, "length" | "key"> | undefined): string[] {
  try {
    const names = Array.from({ length: store?.length ?? 0 }, (_, index) => store?.key(index) ?? "");
    return names.filter((name) => [shopShelf, bendShelf].some((shelf) => name.startsWith(`${shelf}.unreadable`))).sort();
  } catch {
    return [];
  }
}

/** Something kept as JSON with a version; what cannot be read is moved aside, what newer pages kept is left alone. */
export function find<Kept>(store: Store | undefined, key: string, isKept: (value: ShopFile) => boolean): Found<Kept> {
  let text: string | null;
  try {
    if (!store) return { trouble: { why: "off" } };
    text = store.getItem(key);
  } catch {
    return { trouble: { why: "off" } };
  }
  if (text === null) return {};
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    value = undefined;
  }
  if (isGroup(value)) {
    const { version } = value;
    if (typeof version === "number" && version > shelfVersion) return { trouble: { why: "newer" } };
    if (version === shelfVersion && isKept(value)) return { kept: value as unknown as Kept };
  }
  try {
    return { trouble: { why: "unreadable", movedTo: quarantine(store, key, text) } };
  } catch {
    return { trouble: { why: "unreadable", movedTo: key } };
  }
}

const isKeptShop = ({ changed, own, file, draft }: ShopFile) =>
  typeof changed === "string" &&
  /^\d{4}-\d\d-\d\dT/.test(changed) &&
  typeof own === "string" &&
  isGroup(file) &&
  (draft === undefined || isGroup(draft));

/** The changes kept, or why there are none to be had. */
export function findShop(store: Store | undefined): Found<KeptShop> {
  return find(store, shopShelf, isKeptShop);
}

export function findBends(store: Store | undefined): Found<KeptBends> {
  return find(store, bendShelf, ({ bends }) => Array.isArray(bends) && bends.every(isGroup));
}

/** Keeps something; false where storage is off or full. */
export function keep<Kept extends { readonly version: typeof shelfVersion }>(
  store: Store | undefined,
  key: string,
  value: Kept | undefined,
): boolean {
  try {
    if (!store) return false;
    if (value === undefined) store.removeItem(key);
    else store.setItem(key, JSON.stringify(value));
    return true;
  } catch {
    return false;
  }
}

export const keepShop = (store: Store | undefined, kept: Omit<KeptShop, "version"> | undefined): boolean =>
  keep(store, shopShelf, kept && { version: shelfVersion, ...kept });

/** Where changes wait that were taken off or replaced. */
const asideShelf = `${shopShelf}.put-aside`;

/** Changes that were taken off or replaced on this device, to be brought back. */
export function asideShop(store: Store | undefined): KeptShop | undefined {
  try {
    const text = store?.getItem(asideShelf);
    const value: unknown = text ? JSON.parse(text) : undefined;
    return isGroup(value) && isKeptShop(value) && value.version === shelfVersion ? (value as unknown as KeptShop) : undefined;
  } catch {
    return undefined;
  }
}

/** Copies the changes kept to where they can be brought back from. */
export function putAside(store: Store | undefined): void {
  try {
    const text = store?.getItem(shopShelf);
    if (store && text) store.setItem(asideShelf, text);
  } catch {
    // No room for a copy, or storage is off: what is kept stays until it is replaced.
  }
}

/** Now on the clock of this device, `2026-11-25T14:05`. */
export function today(): string {
  const now = new Date();
  const two = (value: number) => String(value).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}T${two(now.getHours())}:${two(now.getMinutes())}`;
}

/** Keeps the bends; none at all is the same as never having measured one. */
export const keepBends = (store: Store | undefined, bends: readonly ShopFile[]): boolean =>
  keep(store, bendShelf, bends.length === 0 ? undefined : { version: shelfVersion, bends });

/** The browser's storage, where it is switched on. */
export function deviceStore(): Storage | undefined {
  try {
    return localStorage;
  } catch {
    return undefined;
  }
}

/** Short mark of a shop's file, to notice that it is another one. */
export function markOf(shop: Shop): string {
  let mark = 0;
  for (const letter of JSON.stringify(shop)) mark = (Math.imul(mark, 31) + letter.charCodeAt(0)) | 0;
  return (mark >>> 0).toString(36);
}

type Data = Pick<Catalogue, "materials" | "gaugeSystems" | "shop">;

const gaugesOf = (data: Data) => (material: Parameters<typeof gaugeReader>[1]) => gaugeReader(data, material);

/** The shop of a file kept on this device; what is new in the handbook since then is the shop's own. */
export function shopFrom(file: ShopFile, data: Data): { readonly shop?: Shop; readonly faults: readonly ShopFault[] } {
  return readShop(filledFrom(file, fileOf(data.shop)), gaugesOf(data));
}

/** The bends that can be used, the newest first. */
export function bendsFrom(lines: readonly ShopFile[], data: Data): MeasuredBend[] {
  const read = lines.flatMap((line) => {
    const { bend } = readBend(line, gaugesOf(data));
    return bend ? [{ ...bend, onDevice: true }] : [];
  });
  return read.sort((one, other) => (one.date < other.date ? 1 : one.date > other.date ? -1 : 0));
}

/** Faults of each line, at the place of the line. */
export function bendFaults(lines: readonly ShopFile[], data: Data): readonly (readonly ShopFault[])[] {
  return lines.map((line) => readBend(line, gaugesOf(data)).faults);
}

/** Numbers that went through inches and back differ in their last digits. */
const alike = (one: unknown, other: unknown) =>
  typeof one === "number" && typeof other === "number" ? Math.abs(one - other) < 1e-6 : one === other;

const sameBend = (one: MeasuredBend, other: MeasuredBend) =>
  (["material", "thickness", "radius", "angle", "deduction", "uncertainty", "pieces", "date", "lot", "brake"] as const).every(
    (key) => alike(one[key], other[key]),
  );

export interface DeviceShop {
  /** The shop to work with: the shop's own where this device has changed nothing, or nothing that can be used. */
  readonly shop: Shop;
  /** Day of the changes in use, `2026-11-25`. */
  readonly changed?: string;
  /** There are changes, but they cannot be used. */
  readonly unusable?: boolean;
}

/** The shop as this device has it: its changes, and the bends measured on it before those of the file. */
export function deviceShop(store: Store | undefined, data: Data): DeviceShop {
  const { kept, trouble } = findShop(store);
  const changed = kept && shopFrom(kept.file, data).shop;
  const shop = changed ?? data.shop;
  const own = bendsFrom(findBends(store).kept?.bends ?? [], data);
  const bends = [...own, ...shop.bends.filter((bend) => !own.some((each) => sameBend(each, bend)))];
  return {
    shop: own.length === 0 ? shop : { ...shop, bends },
    ...(kept && changed ? { changed: kept.changed.slice(0, 10) } : {}),
    ...((kept && !changed) || (trouble && trouble.why !== "off") ? { unusable: true } : {}),
  };
}
