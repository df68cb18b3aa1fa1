import { type Found, find, isGroup, keep, type Store, shelfVersion } from "../shop/shelf.ts";

/** Things kept on this device under a name, each as the query of its address: what opens from a link opens from here. */
export interface Kept {
  readonly name: string;
  /** On the clock of the device, `2026-11-25T14:05`. */
  readonly kept: string;
  readonly query: string;
}

/** Where one kind of them lies: the key of the browser's storage, and what the list is called in it. */
export interface KeptShelf {
  readonly key: string;
  readonly list: string;
}

export const planShelf: KeptShelf = { key: "flat-to-formed.plans", list: "plans" };
export const assignmentShelf: KeptShelf = { key: "flat-to-formed.assignments", list: "assignments" };

const isKept = (value: unknown): value is Kept =>
  isGroup(value) && typeof value.name === "string" && typeof value.kept === "string" && typeof value.query === "string";

/** What is kept, the newest first, or why there is nothing to be had. */
export function findKept(store: Store | undefined, { key, list }: KeptShelf): Found<readonly Kept[]> {
  const { kept, trouble } = find<Readonly<Record<string, unknown>>>(store, key, (value) => {
    const all = value[list];
    return Array.isArray(all) && all.every(isKept);
  });
  return { ...(kept ? { kept: kept[list] as readonly Kept[] } : {}), ...(trouble ? { trouble } : {}) };
}

/** Keeps a list; false where storage is off or full. */
export function keepAll(store: Store | undefined, { key, list }: KeptShelf, all: readonly Kept[]): boolean {
  return keep(store, key, all.length === 0 ? undefined : { version: shelfVersion, [list]: all });
}

/** The list with one put first; one of the same name is replaced, as saving a file does. */
export function withKept(all: readonly Kept[], one: Kept): readonly Kept[] {
  return [one, ...all.filter(({ name }) => name !== one.name)];
}
