import type { Phrase } from "../quantity/phrase.ts";

/** One bend of the order it is to be made in, as it is set at the brake. */
export interface OrderStep {
  /** Id of the bend, folded edge or tab. */
  readonly bend: string;
  /** Face of the blank that lies up while it is clamped. */
  readonly faceUp: "front" | "back";
  /** Widths of the fingers, from left to right [mm]. */
  readonly fingers: readonly number[];
  /** How far the leaf swings [deg]; none where it goes as far as it can. */
  readonly swing?: number;
  /** What to do before it, and why it comes here. */
  readonly why: Phrase;
}
