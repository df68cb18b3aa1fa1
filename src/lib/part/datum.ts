import type { FlatLayout } from "./flatten.ts";

/** The edges that settings along the part are taken from. */
export function datumEdges(layout: FlatLayout): readonly ("south" | "west")[] {
  return layout.chains.map(({ axis }) => (axis === "y" ? "south" : "west"));
}
