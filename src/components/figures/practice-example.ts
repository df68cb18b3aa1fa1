/** Five strips of the worked example on practice pieces, as the calculator holds them; invented readings. */
export const practiceExample = {
  thickness: "1.2mm",
  radius: "1.6mm",
  angle: "90deg",
  pieces: [
    { flat: "100.02mm", legA: "51.18mm", legB: "51.10mm" },
    { flat: "99.96mm", legA: "50.84mm", legB: "51.34mm" },
    { flat: "100.00mm", legA: "51.40mm", legB: "50.90mm" },
    { flat: "99.98mm", legA: "51.06mm", legB: "51.16mm" },
    { flat: "100.04mm", legA: "51.22mm", legB: "51.08mm" },
  ],
} as const;

/** The same, when only the first three had been bent. */
export const firstThree = { ...practiceExample, pieces: practiceExample.pieces.slice(0, 3) } as const;
