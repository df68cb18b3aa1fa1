import { owner } from "./last-plan.ts";

/**
 * A plan's address for links and QR codes: readable while it is short, packed when it is long.
 * Packed is the same query, deflated and written in the letters of base64url, behind the number of the packing.
 */

/** Parameter of a packed plan. */
export const packedKey = `${owner}.packed`;

/** Counts up when plans are packed another way; every earlier way stays readable. */
const packing = "1";

/** A link longer than this no longer fits a QR code that a phone reads from paper, and some mail programs break it. */
const longestReadable = 900;

/** A plan larger than this is no plan: a packed address of a few hundred letters may otherwise unfold without end. */
const largestPlan = 200_000;

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
      throw new PackedAddressError("The address unfolds to more than a plan can hold.");
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

/** Packs the query of a plan's address. */
export async function pack(query: string): Promise<string> {
  const bytes = await through(new TextEncoder().encode(query), new CompressionStream("deflate-raw"), Number.POSITIVE_INFINITY);
  const letters = btoa(String.fromCharCode(...bytes));
  return `${packing}.${letters.replaceAll("+", "-").replaceAll("/", "_").replace(/=+$/, "")}`;
}

/**
 * The query that was packed.
 * @throws PackedAddressError for a text that is not a packed plan, or packed by newer pages
 */
export async function unpack(text: string): Promise<string> {
  const [, version, letters] = /^(\d{1,4})\.([\w-]*)$/.exec(text) ?? [];
  if (version === undefined || letters === undefined) throw new PackedAddressError("The packed plan in the address is damaged.");
  if (version !== packing) throw new PackedAddressError("The address was made by a newer handbook; load this page again.");
  try {
    const bytes = Uint8Array.from(atob(letters.replaceAll("-", "+").replaceAll("_", "/")), (letter) => letter.charCodeAt(0));
    return new TextDecoder("utf-8", { fatal: true }).decode(
      await through(bytes, new DecompressionStream("deflate-raw"), largestPlan),
    );
  } catch (error) {
    if (error instanceof PackedAddressError) throw error;
    throw new PackedAddressError("The packed plan in the address is damaged.");
  }
}

/**
 * The query to share: the readable one, or the packed one where that is shorter and the readable one is long.
 * @param query - of the plan alone
 */
export async function sharedQuery(query: string): Promise<string> {
  if (query.length <= longestReadable || typeof CompressionStream === "undefined") return query;
  const packed = `${packedKey}=${await pack(query)}`;
  return packed.length < query.length ? packed : query;
}

/** A query with the packed plan in it unfolded; what else it holds stays. @throws PackedAddressError as `unpack` */
export async function unfolded(search: string): Promise<string | undefined> {
  const parameters = new URLSearchParams(search);
  const packed = parameters.get(packedKey);
  if (packed === null) return undefined;
  parameters.delete(packedKey);
  const rest = parameters.toString();
  const query = await unpack(packed);
  return rest === "" ? query : `${rest}&${query}`;
}
