/** A sentence with links or code in it, piece by piece; `Sentence.astro` shows one. */
export type Sentence = readonly (
  | string
  /** A way to a page by its English path, or to a place on the same page. */
  | { readonly link: string; readonly to: string }
  /** Something to be typed or written as it is, in no language. */
  | { readonly code: string }
)[];
