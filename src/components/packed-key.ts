/** Parameter of an address that holds what belongs to an owner, packed; apart from the packing, which few visits need. */
export const packedKey = (owner: string): string => `${owner}.packed`;
