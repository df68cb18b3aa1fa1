import { type SeamKind, seamKinds } from "../../joining/seams.ts";

/** How the edges of a rolled part meet: the seams of the handbook, and edges that only meet; ids are part of addresses and part files. */
export const rolledSeams = { butt: "butted: edge to edge", ...seamKinds } as const;
export type RolledSeam = "butt" | SeamKind;
