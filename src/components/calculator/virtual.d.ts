declare module "virtual:calculators" {
  export interface CalculatorModule {
    readonly sheet: import("../../lib/worksheet.ts").Worksheet;
    readonly Drawing: import("preact").ComponentType<import("../drawings/parts/Drawing.tsx").DrawingProps> | undefined;
    readonly After: import("preact").ComponentType<import("./after.ts").AfterProps> | undefined;
    readonly titles: import("./source-titles.ts").SourceTitles;
  }
  const calculators: Readonly<Record<string, () => Promise<CalculatorModule>>>;
  export default calculators;
}

declare module "virtual:calculator-data" {
  /** The catalogue without cautions; of the sources, the names alone. */
  const catalogue: Omit<import("../../lib/catalogue.ts").Catalogue, "sources"> & {
    readonly sources: import("./source-titles.ts").SourceTitles;
  };
  export default catalogue;
}
