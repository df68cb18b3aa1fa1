declare module "virtual:catalogue" {
  /** The catalogue without notes, printed values, rules and addresses: for browser code. Elsewhere use `loadCatalogue()`. */
  const catalogue: import("../lib/catalogue.ts").Catalogue;
  export default catalogue;
}
