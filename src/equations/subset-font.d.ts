declare module "subset-font" {
  /** @param text - the characters to keep */
  interface Options {
    readonly targetFormat: "woff2";
    readonly noHinting: boolean;
    readonly keepFeatures: readonly string[];
  }
  export default function subsetFont(font: Buffer, text: string, options: Options): Promise<Buffer>;
}
