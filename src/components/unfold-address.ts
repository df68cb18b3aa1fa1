import { packedKey } from "./packed-key.ts";

/**
 * Unfolds what is packed for an owner in the address of the page into its readable form, before any form reads it.
 * @returns what is wrong with it; empty where nothing is
 */
export async function unfoldAddress(owner: string): Promise<string> {
  // Most addresses are readable: what unfolds comes only when it is needed.
  if (!new URLSearchParams(location.search).has(packedKey(owner))) return "";
  const { PackedAddressError, unfolded } = await import("./packed.ts");
  try {
    const query = await unfolded(owner, location.search);
    if (query !== undefined) history.replaceState(history.state, "", `${location.pathname}?${query}${location.hash}`);
    return "";
  } catch (error) {
    if (error instanceof PackedAddressError) return error.message;
    throw error;
  }
}
