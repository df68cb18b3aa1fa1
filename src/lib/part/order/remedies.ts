import { amount, mm, type Phrase, say } from "../../quantity/phrase.ts";
import type { Block } from "./block.ts";
import { lengthened, openedCorners, type PanelAt, panelsOf, refolded, without } from "./change.ts";
import { Forming } from "./check.ts";
import type { FormingBrake, FormingJob } from "./job.ts";
import { search } from "./search.ts";
import { foldName, sheetName } from "./words.ts";

/** A change of the part that was tried: with it there is an order. */
export interface Remedy {
  readonly kind: "shorter" | "longer" | "other way" | "smaller angle" | "corner gap" | "separate piece";
  /** Panels or folds that change. */
  readonly of: readonly string[];
  /** By how much [mm] a length or a gap changes, or [deg] an angle. */
  readonly by?: number;
  readonly phrase: Phrase;
}

/** Lengths tried, as shares of what it is now, from little change to much; then the least change is closed in on. */
const shorterShares = [0.9, 0.75, 0.6, 0.45, 0.3, 0.15] as const;
const longerShares = [1.15, 1.4, 1.8, 2.5, 4] as const;
/** To what a length is closed in on, and rounded up to [mm]. */
const grain = 0.5;
const angles = [5, 15, 30] as const;
const gaps = [1, 2, 5] as const;
const sidesOf = ["north", "south", "east", "west"] as const;

/** Legs that would be changed together: one alone, the pair on opposite sides, all with the same number that are as long. */
function groupsFor(job: FormingJob, id: string): string[][] {
  const [side = "", number] = id.split(".");
  if (number === undefined) return [[id]];
  const lengthOf = (other: string) => {
    const [at] = panelsOf(job, [other]);
    const panel = at && job.chains[at.chain]?.panels[at.index];
    return panel ? panel.to - panel.from : undefined;
  };
  const own = lengthOf(id);
  if (own === undefined) return [];
  const like = (sides: readonly string[]) =>
    sides.map((each) => `${each}.${number}`).filter((other) => Math.abs((lengthOf(other) ?? -1) - own) < grain);
  const opposite = side === "north" || side === "south" ? ["north", "south"] : ["east", "west"];
  const groups = [[id], like(opposite), like(sidesOf)];
  return groups.filter((group, at) => at === 0 || group.length > (groups[at - 1]?.length ?? 0));
}

/** The fold alone, and with its counterpart on the opposite side. */
function foldGroups(job: FormingJob, id: string): string[][] {
  const [side = "", number = ""] = id.split(".");
  const opposite = { north: "south", south: "north", east: "west", west: "east" }[side];
  const ids = job.chains.flatMap(({ bends, startEdge, endEdge }) =>
    [...bends, startEdge, endEdge].flatMap((fold) => (fold ? [fold.id] : [])),
  );
  const other = `${opposite}.${number}`;
  return ids.includes(other) ? [[id], [id, other]] : [[id]];
}

const namedFolds = (ids: readonly string[]) => ids.map((id) => foldName(id).toLowerCase()).join(" and ");
const named = (ids: readonly string[]) => ids.map(sheetName).join(", ");

/**
 * Changes of the part that free a trapped bend. Each is tried by searching for an order again, so each is known to work.
 *
 * @param trapped - the bend, and what is in its way
 * @returns at most one of each kind for the same sheet, the small changes first; empty when none of those tried helps
 */
export function remediesFor(
  job: FormingJob,
  brake: FormingBrake,
  trapped: { readonly bend: string; readonly block: Block },
  shouldStop?: () => boolean,
): readonly Remedy[] {
  const works = (changed: FormingJob) => search(new Forming(changed, brake), shouldStop).kind === "order";
  const found: Remedy[] = [];
  const { bend, block } = trapped;
  const isEdge = bend.endsWith(".edge");

  const lengthOf = ({ chain, index }: PanelAt) => {
    const panel = job.chains[chain]?.panels[index];
    return panel ? panel.to - panel.from : 0;
  };
  const resized = (places: readonly PanelAt[], by: number) => places.reduce((changed, at) => lengthened(changed, at, by), job);
  const candidates = [...new Set([block.panel, bend, "base"])].filter((id) => panelsOf(job, [id]).length > 0);
  for (const id of candidates) {
    for (const kind of ["shorter", "longer"] as const) {
      for (const group of groupsFor(job, id)) {
        const places = panelsOf(job, group);
        const [first] = places;
        if (!first) continue;
        const length = lengthOf(first);
        const by = leastChange(length, kind === "shorter" ? shorterShares : longerShares, (change) =>
          works(resized(places, change)),
        );
        if (by === undefined) continue;
        const size = mm(Math.abs(by));
        found.push({
          kind,
          of: group,
          by: Math.abs(by),
          phrase: say`Make ${named(group)} ${kind} by ${size}${group.length > 1 ? " each" : ""}.`,
        });
        break;
      }
    }
  }

  const folds = foldGroups(job, bend);
  const all = (ids: readonly string[], change: (changed: FormingJob, id: string) => FormingJob) => ids.reduce(change, job);
  const turned = folds.find((ids) => works(all(ids, (changed, id) => refolded(changed, id, { turn: true }))));
  if (turned) found.push({ kind: "other way", of: turned, phrase: say`Turn ${namedFolds(turned)} the other way.` });
  const whole = job.chains.flatMap(({ bends }) => bends).find(({ id }) => id === bend)?.angle ?? 0;
  const less = angles.find((by) => whole > by + 1 && works(refolded(job, bend, { angle: whole - by })));
  if (less !== undefined)
    found.push({
      kind: "smaller angle",
      of: [bend],
      by: less,
      phrase: say`Turn ${namedFolds([bend])} through ${amount(whole - less, "angle")} only.`,
    });
  if (job.chains.length > 1) {
    const by = gaps.find((gap) => works(openedCorners(job, gap)));
    if (by !== undefined)
      found.push({
        kind: "corner gap",
        of: [],
        by,
        phrase: say`Make the corner gaps larger by ${mm(by)} on each side of a corner.`,
      });
  }
  const off = folds.find((ids) => works(all(ids, without)));
  if (off)
    found.push({
      kind: "separate piece",
      of: off,
      phrase: isEdge
        ? say`Leave ${namedFolds(off)} out, or close it by hand afterwards.`
        : say`Make what lies beyond ${namedFolds(off)} a piece of its own, and join it on.`,
    });
  return found;
}

/** The least change of a length that works, rounded away from nothing; undefined when none of those tried does. */
function leastChange(length: number, shares: readonly number[], works: (by: number) => boolean): number | undefined {
  const rounded = (by: number) => Math.sign(by) * Math.ceil(Math.abs(by) / grain - 1e-9) * grain;
  let nothing = 0;
  for (const share of shares) {
    let enough = rounded(length * (share - 1));
    if (length + enough <= grain) return undefined;
    if (!works(enough)) {
      nothing = enough;
      continue;
    }
    while (Math.abs(enough - nothing) > grain + 1e-9) {
      const middle = rounded((enough + nothing) / 2);
      if (Math.abs(middle - enough) < 1e-9 || Math.abs(middle - nothing) < 1e-9) break;
      if (works(middle)) enough = middle;
      else nothing = middle;
    }
    return enough;
  }
  return undefined;
}
