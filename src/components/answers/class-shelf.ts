import { type Found, find, keep, type Store, shelfVersion } from "../shop/shelf.ts";

/** A class list kept on this device, only where its instructor has asked for it. */

export const classShelf = "flat-to-formed.class";

interface KeptClass {
  readonly version: typeof shelfVersion;
  /** As it was pasted. */
  readonly text: string;
  /** Which column holds the ids, from 0. */
  readonly column: number;
}

export function findClass(store: Store | undefined): Found<KeptClass> {
  return find(store, classShelf, ({ text, column }) => typeof text === "string" && Number.isInteger(column));
}

/** Keeps a list, or forgets the one that was kept. @returns false where storage is off or full */
export function keepClass(
  store: Store | undefined,
  list: { readonly text: string; readonly column: number } | undefined,
): boolean {
  return keep(store, classShelf, list && ({ version: shelfVersion, ...list } satisfies KeptClass));
}
