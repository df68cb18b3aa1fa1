/** A part of the library that is mutated by itself, with the tests that should notice. */
export interface Piece {
  readonly mutate: readonly string[];
  readonly tests: readonly string[];
}

export const pieces = {
  bending: {
    mutate: ["src/lib/bending/*.ts"],
    tests: ["tests/bending/*.test.ts", "tests/published.test.ts", "tests/worksheets/bending.test.ts"],
  },
  rolling: {
    mutate: ["src/lib/rolling/*.ts"],
    tests: ["tests/rolling/*.test.ts", "tests/published.test.ts"],
  },
  part: {
    mutate: ["flatten", "fold", "outline", "datum", "geometry", "blank"].map((name) => `src/lib/part/${name}.ts`),
    tests: ["box", "plan", "fold-in-space", "flat-geometry"].map((name) => `tests/part/${name}.test.ts`),
  },
} as const satisfies Readonly<Record<string, Piece>>;

/** What a mutants run tells Vitest's configuration: the piece it works on. */
export const pieceVariable = "MUTANTS_PIECE";
