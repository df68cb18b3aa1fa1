import { fixedKey, ownedParts, queryText } from "../../lib/address.ts";

type Parts = readonly (readonly [key: string, text: string])[];

/**
 * The query of an address with the values of some calculators put in place of their old ones.
 * Everything else in it stays: values of other calculators, and what this site does not know.
 */
export function mergedQuery(search: string, writes: ReadonlyMap<string, Parts>): string {
  const owners = [...writes.keys()].map((owner) => `${owner}.`);
  const kept = [...new URLSearchParams(search)].filter(([name]) => !owners.some((owner) => name.startsWith(owner)));
  const own = [...writes].flatMap(([owner, parts]) => ownedParts(owner, parts));
  return queryText([...kept, ...own]);
}

const pause = 200;
const pending = new Map<string, Parts>();
let timer: ReturnType<typeof setTimeout> | undefined;

/** Writes what is waiting into the address of the page, without a new entry in its history. Browser only. */
export function flushAddress(): void {
  clearTimeout(timer);
  if (pending.size === 0) return;
  const query = mergedQuery(location.search, pending);
  try {
    history.replaceState(history.state, "", `${location.pathname}${query === "" ? "" : `?${query}`}${location.hash}`);
    pending.clear();
  } catch {
    // Some browsers refuse when the address changes too often: it is written with the next change, or when the page is left.
  }
}

/** Has the values of a calculator written into the address when typing pauses. */
export function writeSoon(owner: string, parts: Parts): void {
  pending.set(owner, parts);
  clearTimeout(timer);
  timer = setTimeout(flushAddress, pause);
}

/** What the address holds, with everything that was waiting to be written into it. */
export function addressParameters(): [string, string][] {
  flushAddress();
  return [...new URLSearchParams(location.search)];
}

/** Called with the names of parameters that were to be changed and are fixed, `bend-length.thickness`. */
type Reader = (kept: readonly string[]) => void;
const readers = new Set<Reader>();

/** Calls a function whenever the address was changed by other means than `writeSoon`. @returns a function that stops it */
export function watchAddress(read: Reader): () => void {
  if (readers.size === 0) {
    addEventListener("popstate", () => readAll());
    addEventListener("pagehide", flushAddress);
    document.addEventListener("visibilitychange", flushAddress);
  }
  readers.add(read);
  return () => readers.delete(read);
}

function readAll(kept: readonly string[] = []): void {
  for (const read of readers) read(kept);
}

function pushQuery(parameters: Iterable<readonly [string, string]>, hash: string, kept?: readonly string[]): void {
  const query = queryText(parameters);
  history.pushState(null, "", `${location.pathname}${query === "" ? "" : `?${query}`}${hash}`);
  readAll(kept);
}

/** Names of the parameters whose values an address fixes, of all its forms. */
function fixedNames(parameters: Iterable<readonly [string, string]>): Set<string> {
  const names = new Set<string>();
  for (const [name, text] of parameters) {
    const owner = name.slice(0, -fixedKey.length);
    if (owner.endsWith(".") && name === owner + fixedKey) for (const key of text.split(",")) names.add(owner + key.trim());
  }
  return names;
}

/**
 * Puts values handed to a calculator of this page into the address, as a new entry that the back button leaves.
 * What else that calculator holds stays, and what the address fixes.
 */
export function goToParameters(parameters: Iterable<readonly [string, string]>, hash: string): void {
  const given = new Map(parameters);
  const held = addressParameters();
  const before = new Map(held);
  const kept = [...fixedNames(held)].filter((name) => {
    const isOther = given.has(name) && given.get(name) !== before.get(name);
    given.delete(name);
    return isOther;
  });
  pushQuery([...held.filter(([name]) => !given.has(name)), ...given], hash, kept);
}

/** Puts values into the address in place of everything one form holds there; the back button brings that back. */
export function replaceParameters(owner: string, parameters: Iterable<readonly [string, string]>): void {
  const others = addressParameters().filter(([name]) => !name.startsWith(`${owner}.`));
  pushQuery([...others, ...parameters], location.hash);
}
