/** The ways lengths are shown, as the switches call them. */
export const lengths = {
  showIn: "Show lengths in",
  views: {
    mm: { short: "mm", long: "millimetres" },
    inch: { short: "0.001 in", long: "decimal inches" },
    fraction: { short: "1/64 in", long: "inches and sixty-fourths" },
  },
};
