import type { CutFault, Part, SheetCuts } from "./cut-order.ts";
import type { Across } from "./cut-tree.ts";

/** Parts that look alike, and how many. */
export interface Alike {
  readonly part: Part;
  readonly count: number;
  readonly ids: readonly string[];
}

/** Strokes that follow each other and are alike: one setting, one size of part falling behind the blade. Lengths in mm. */
export interface CutStep {
  readonly number: number;
  /** Numbers of its strokes, counted from 1. */
  readonly first: number;
  readonly last: number;
  /** Left out: cut to a scribed line. */
  readonly stop?: number;
  /** The stop has to be set for this step; otherwise it stands there already. */
  readonly setsStop: boolean;
  readonly across: Across;
  readonly cutLength: number;
  /** The plates put in, in turn, as they are before their first stroke of this step. */
  readonly plates: readonly Part[];
  readonly off: Alike;
  /** What stays in the hands when a plate has had all its strokes of this step. */
  readonly held: readonly Alike[];
  readonly faults: readonly CutFault[];
}

const look = ({ kind, piece, width, length }: Part) => `${kind} ${piece ?? ""} ${width} ${length}`;

function alike(parts: readonly Part[]): Alike[] {
  const groups = new Map<string, Part[]>();
  for (const part of parts) {
    const group = groups.get(look(part));
    if (group) group.push(part);
    else groups.set(look(part), [part]);
  }
  return [...groups.values()].map((group) => ({
    part: group[0] as Part,
    count: group.length,
    ids: group.map(({ id }) => id),
  }));
}

/** The strokes of one sheet drawn together into steps that one reads at the shear; every stroke is in one step, in order. */
export function cutSteps({ cuts }: Pick<SheetCuts, "cuts">): CutStep[] {
  const steps: CutStep[] = [];
  let begin = 0;
  let standing: number | undefined;
  cuts.forEach((cut, index) => {
    const next = cuts[index + 1];
    const goesOn =
      next !== undefined &&
      next.stop === cut.stop &&
      next.across === cut.across &&
      next.cutLength === cut.cutLength &&
      look(next.off) === look(cut.off);
    if (goesOn) return;
    const strokes = cuts.slice(begin, index + 1);
    const plates = new Map<string, { readonly before: Part; readonly after: Part }>();
    for (const { from, held } of strokes) plates.set(from.id, { before: plates.get(from.id)?.before ?? from, after: held });
    const turns = [...plates.values()];
    steps.push({
      number: steps.length + 1,
      first: begin + 1,
      last: index + 1,
      ...(cut.stop === undefined ? {} : { stop: cut.stop }),
      setsStop: cut.stop !== undefined && cut.stop !== standing,
      across: cut.across,
      cutLength: cut.cutLength,
      plates: turns.map(({ before }) => before),
      off: alike(strokes.map(({ off }) => off))[0] as Alike,
      held: alike(turns.map(({ after }) => after)),
      faults: [...new Set(strokes.flatMap(({ faults }) => faults))],
    });
    if (cut.stop !== undefined) standing = cut.stop;
    begin = index + 1;
  });
  return steps;
}
