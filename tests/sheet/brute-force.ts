/** Exact answers for tiny jobs by trying every whole-millimetre cut; shares nothing with the library. */

export interface Tiny {
  readonly width: number;
  readonly length: number;
  readonly grain: "free" | "along" | "across";
}

const fitsAlone = ({ width, length, grain }: Tiny, w: number, l: number) =>
  (grain !== "across" && width <= w && length <= l) || (grain !== "along" && length <= w && width <= l);

/** Most value out of one plate, any number of each piece, every cut tried. */
export function bestValue(pieces: readonly Tiny[], values: readonly number[], width: number, length: number): number {
  const known = new Map<number, number>();
  const best = (w: number, l: number): number => {
    const key = 1000 * w + l;
    const before = known.get(key);
    if (before !== undefined) return before;
    let most = 0;
    pieces.forEach((piece, index) => {
      if (fitsAlone(piece, w, l)) most = Math.max(most, values[index] ?? 0);
    });
    for (let cut = 1; 2 * cut <= w; cut += 1) most = Math.max(most, best(cut, l) + best(w - cut, l));
    for (let cut = 1; 2 * cut <= l; cut += 1) most = Math.max(most, best(w, cut) + best(w, l - cut));
    known.set(key, most);
    return most;
  };
  return best(width, length);
}

/** Whether a set of pieces, one bit each, can be cut out of a plate; every cut and every share of the pieces tried. */
function tester(pieces: readonly Tiny[], longestCut: number) {
  const known = new Map<string, boolean>();
  const fits = (set: number, w: number, l: number): boolean => {
    if (set === 0) return true;
    if (w <= 0 || l <= 0) return false;
    const key = `${set},${w},${l}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    const area = pieces.reduce((sum, piece, index) => sum + (set & (1 << index) ? piece.width * piece.length : 0), 0);
    let found = false;
    if (area <= w * l) {
      // A plate that is the piece needs no cut; any other is cut until it is.
      if ((set & (set - 1)) === 0) {
        const piece = pieces[31 - Math.clz32(set)] as Tiny;
        found =
          (piece.grain !== "across" && piece.width === w && piece.length === l) ||
          (piece.grain !== "along" && piece.length === w && piece.width === l);
      }
      for (let part = set; !found && part >= 0; part = part === 0 ? -1 : (part - 1) & set) {
        if (l <= longestCut)
          for (let cut = 1; !found && cut < w; cut += 1) found = fits(part, cut, l) && fits(set & ~part, w - cut, l);
        if (w <= longestCut)
          for (let cut = 1; !found && cut < l; cut += 1) found = fits(part, w, cut) && fits(set & ~part, w, l - cut);
      }
    }
    known.set(key, found);
    return found;
  };
  return fits;
}

/** Fewest plates that hold all the pieces. */
export function fewestPlates(pieces: readonly Tiny[], width: number, length: number, longestCut = Infinity): number {
  const fits = tester(pieces, longestCut);
  const all = (1 << pieces.length) - 1;
  const need = new Array<number>(all + 1).fill(Infinity);
  need[0] = 0;
  for (let set = 1; set <= all; set += 1)
    for (let part = set; part > 0; part = (part - 1) & set)
      if ((need[set & ~part] as number) + 1 < (need[set] as number) && fits(part, width, length))
        need[set] = (need[set & ~part] as number) + 1;
  return need[all] as number;
}

/** Most value out of one plate when each piece is there once. */
export function bestOfEach(pieces: readonly Tiny[], values: readonly number[], width: number, length: number): number {
  const fits = tester(pieces, Infinity);
  let most = 0;
  for (let set = 1; set < 1 << pieces.length; set += 1) {
    const value = values.reduce((sum, each, index) => sum + (set & (1 << index) ? each : 0), 0);
    if (value > most && fits(set, width, length)) most = value;
  }
  return most;
}
