/**
 * How near riveted holes may come to an edge and to each other: least distances of centres, in rivet diameters.
 * Source: AC 43.13-1B, summary (read).
 */
export const rivetDistances = { edge: 2, spacing: 3, source: "rivet-spacing-summary" } as const;
