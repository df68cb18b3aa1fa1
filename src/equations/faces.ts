/**
 * The letters each KaTeX face is cut down to. The faces as shipped are the heaviest thing on a page with a formula.
 * A formula that needs more shows up in tests/site/equations.test.ts: add the letter here, never in a font file.
 */
const latin = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz";
const digits = "0123456789";
const fences = "()[]|/⌈⌉";
/** Parts that KaTeX stacks when no face has a fence tall enough. */
const fenceParts = "⎛⎜⎝⎞⎟⎠⎡⎢⎣⎤⎥⎦∣";
const greekSmall = "αβγδεηθμπρστφϕω";
const signs = ".,:%+−±×⋅·=≠≈<>≤≥→′°∘…-'";

export const faces: Readonly<Record<string, string>> = {
  "Main-Regular": `${latin + digits + fences + signs}ΔΣΩ`,
  "Math-Italic": latin + greekSmall,
  "Size1-Regular": `${fences + fenceParts}∑`,
  "Size2-Regular": `${fences}∑`,
  "Size3-Regular": fences,
  "Size4-Regular": fences + fenceParts,
};

/** Families of `faces` as katex.css names them. */
export const families: readonly string[] = [...new Set(Object.keys(faces).map((face) => `KaTeX_${face.split("-")[0]}`))];

/** KaTeX's numbers for normal, superscript and second superscript: the only sizes a formula here takes. */
export const sizes: readonly number[] = [1, 3, 6];
