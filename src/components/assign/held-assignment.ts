import { assignmentFromAddress } from "../../lib/assign/address.ts";
import { assignOwner } from "../../lib/assign/assign-owner.ts";
import type { Assignment } from "../../lib/assign/definition.ts";
import { InputError } from "../../lib/input-error.ts";
import { packedKey } from "../packed-key.ts";

/** The assignment in an address, or why it cannot be read; neither where the address holds none. */
export interface HeldAssignment {
  readonly assignment?: Assignment;
  readonly damage?: string;
}

/** Reads the assignment in the query of an address, packed or not; the address itself is left alone. */
export async function heldAssignment(search: string): Promise<HeldAssignment> {
  let query = search;
  if (new URLSearchParams(search).has(packedKey(assignOwner))) {
    const { PackedAddressError, unfolded } = await import("../packed.ts");
    try {
      query = (await unfolded(assignOwner, search)) ?? search;
    } catch (error) {
      if (error instanceof PackedAddressError) return { damage: error.message };
      throw error;
    }
  }
  try {
    const assignment = assignmentFromAddress(new URLSearchParams(query));
    return assignment ? { assignment } : {};
  } catch (error) {
    if (error instanceof InputError) return { damage: error.message };
    throw error;
  }
}
