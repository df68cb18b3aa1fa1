export type Blocker = "fingers" | "beam" | "bed" | "leaf" | "part";

/** Why a bend cannot be made at a moment. */
export interface Block {
  readonly by: Blocker;
  /**
   * `held`: too little flat for fingers or leaf, or no fingers fit. `clamped`: something is in the way before the leaf moves.
   * `swing`: something is met on the way. `press`: a folded edge cannot be pressed. `in`, `out`: the piece does not go in or come out.
   */
  readonly when: "held" | "clamped" | "swing" | "press" | "in" | "out";
  /** Leaf angle [deg] at which it happens. */
  readonly angle: number;
  /** Panel that meets it, or that is too small. */
  readonly panel: string;
}
