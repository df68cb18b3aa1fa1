import { packedKey } from "./packed-key.ts";

/**
 * An address for links and QR codes, of a plan or of an assignment: readable while it is short, packed when it is long.
 * Packed is the same query, deflated and written in the letters of base64url, behind the number of the packing, in one
 * parameter that bears the name of its owner: `plan.packed=1.…`, `assign.packed=1.…`.
 */

/** Counts up when addresses are packed another way; every earlier way stays readable. */
const packing = "1";

/** A link longer than this no longer fits a QR code that a phone reads from paper, and some mail programs break it. */
const longestReadable = 900;

/** Nothing that is shared is larger: a packed address of a few hundred letters may otherwise unfold without end. */
const largestQuery = 200_000;

export class PackedAddressError extends Error {}

async function through(bytes: Uint8Array<ArrayBuffer>, stream: CompressionStream | DecompressionStream, most: number) {
  const writer = stream.writable.getWriter();
  // What is wrong with the bytes is told by the reading side.
  const written = writer.write(bytes).then(() => writer.close());
  written.catch(() => undefined);
  const parts: Uint8Array[] = [];
  let length = 0;
  const reader = stream.readable.getReader();
  for (;;) {
    const { done, value } = await reader.read();
    if (done) break;
    length += value.length;
    if (length > most) {
      await reader.cancel();
      throw new PackedAddressError("The address unfolds to more than any link of this handbook holds.");
    }
    parts.push(value);
  }
  const all = new Uint8Array(length);
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return all;
}

/** Packs a query. */
export async function pack(query: string): Promise<string> {
  const bytes = await through(new TextEncoder().encode(query), new CompressionStream("deflate-raw"), Number.POSITIVE_INFINITY);
  const letters = btoa(String.fromCharCode(...bytes));
  return `${packing}.${letters.replaceAll("+", "-").replaceAll("/", "_").replace(/=+$/, "")}`;
}

/**
 * The query that was packed.
 * @throws PackedAddressError for a text that is no packed query, or packed by newer pages
 */
export async function unpack(text: string): Promise<string> {
  const [, version, letters] = /^(\d{1,4})\.([\w-]*)$/.exec(text) ?? [];
  if (version === undefined || letters === undefined)
    throw new PackedAddressError("The packed part of the address is damaged. Perhaps not all of the link was copied.");
  if (version !== packing) throw new PackedAddressError("The address was made by a newer handbook; load this page again.");
  try {
    const bytes = Uint8Array.from(atob(letters.replaceAll("-", "+").replaceAll("_", "/")), (letter) => letter.charCodeAt(0));
    return new TextDecoder("utf-8", { fatal: true }).decode(
      await through(bytes, new DecompressionStream("deflate-raw"), largestQuery),
    );
  } catch (error) {
    if (error instanceof PackedAddressError) throw error;
    throw new PackedAddressError("The packed part of the address is damaged. Perhaps not all of the link was copied.");
  }
}

/**
 * The query to share: the readable one, or the packed one where that is shorter and the readable one is long.
 * @param query - of the owner alone
 */
export async function sharedQuery(owner: string, query: string): Promise<string> {
  if (query.length <= longestReadable || typeof CompressionStream === "undefined") return query;
  const packed = `${packedKey(owner)}=${await pack(query)}`;
  return packed.length < query.length ? packed : query;
}

/**
 * A query with what is packed in it for an owner unfolded; what else it holds stays.
 * @returns undefined where nothing is packed
 * @throws PackedAddressError as `unpack`
 */
export async function unfolded(owner: string, search: string): Promise<string | undefined> {
  const parameters = new URLSearchParams(search);
  const packed = parameters.get(packedKey(owner));
  if (packed === null) return undefined;
  parameters.delete(packedKey(owner));
  const rest = parameters.toString();
  const query = await unpack(packed);
  return rest === "" ? query : `${rest}&${query}`;
}
