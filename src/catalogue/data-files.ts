/** Every data file, from the project's folder. */
export const dataFiles = {
  sources: "src/content/sources.yaml",
  cautions: "src/content/cautions.yaml",
  materials: "src/content/materials.yaml",
  gauges: "src/content/gauges.yaml",
  thicknessTolerances: "src/content/thickness-tolerances.yaml",
  smallestRadii: "src/content/smallest-radii.yaml",
  generalTolerances: "src/content/general-tolerances.yaml",
  marking: "src/content/marking.yaml",
  shop: "src/content/shop/shop.yaml",
} as const;

export type DataFileName = keyof typeof dataFiles;
