import { fewestSheets } from "../src/lib/sheet/fewest-sheets.ts";
import { fillOneSheet } from "../src/lib/sheet/fill-one-sheet.ts";
import type { Piece, SheetJob } from "../src/lib/sheet/model.ts";
import { seededRandom } from "../src/lib/sheet/random.ts";
import { cutSheets, finish } from "../src/lib/sheet/sheet-plan.ts";
import gcut from "../tests/sheet/gcut/gcut.json" with { type: "json" };

const shear = { longestCut: 1270, shortestHold: 50, shortestStop: 10, longestStop: 600 };
/** Thirty trays and thirty lids, the work of one class. */
const classSet: SheetJob = {
  sheets: [{ name: "full sheet", width: 1250, length: 2500 }],
  trim: 5,
  pieces: [
    { name: "tray", width: 276, length: 226, count: 30, grain: "free" },
    { name: "lid", width: 232.4, length: 182.4, count: 30, grain: "free" },
  ],
  shear,
};

export const classSetOfTraysAndLids = () => {
  const plan = finish(fewestSheets(classSet));
  return cutSheets(classSet, plan.layouts);
};

// ---- one sheet, any number of each piece: instances with known optima ----

type Gcut = (typeof gcut.instances)[number];
const gcutJob = ({ sheet: [length = 0, width = 0], pieces }: Gcut, grain: Piece["grain"]): SheetJob => ({
  sheets: [{ name: "stock", width, length }],
  trim: 0,
  pieces: pieces.map(([l = 0, w = 0, value = 0], index) => ({ name: `P${index + 1}`, width: w, length: l, value, grain })),
});

// ---- many sheets: generated classes ----

type Random = () => number;
const between = (random: Random, low: number, high: number) => low + Math.floor(random() * (high - low + 1));

/** Classes I to VI: Berkey and Wang 1987, Two-dimensional finite bin-packing algorithms; from memory. */
const uniform: Readonly<Record<string, readonly [bin: number, largest: number]>> = {
  I: [10, 10],
  II: [30, 10],
  III: [40, 35],
  IV: [100, 35],
  V: [100, 100],
  VI: [300, 100],
};
/** Classes VII to X: Martello and Vigo 1998, Exact solution of the two-dimensional finite bin packing problem; from memory. */
const mixed = ["VII", "VIII", "IX", "X"];

function sizeOf(random: Random, name: string): readonly [number, number] {
  const simple = uniform[name];
  if (simple) return [between(random, 1, simple[1]), between(random, 1, simple[1])];
  const bin = 100;
  const kinds = [
    () => [between(random, Math.ceil((2 * bin) / 3), bin), between(random, 1, bin / 2)],
    () => [between(random, 1, bin / 2), between(random, Math.ceil((2 * bin) / 3), bin)],
    () => [between(random, bin / 2, bin), between(random, bin / 2, bin)],
    () => [between(random, 1, bin / 2), between(random, 1, bin / 2)],
  ] as const;
  // Seven in ten of the class's own kind, one in ten of each of the others.
  const own = mixed.indexOf(name);
  const others = [0, 1, 2, 3].filter((kind) => kind !== own);
  const draw = random();
  const kind = draw < 0.7 ? own : others[Math.min(2, Math.floor((draw - 0.7) / 0.1))];
  const [width = 0, length = 0] = kinds[kind as 0 | 1 | 2 | 3]();
  return [width, length];
}

function binJob(name: string, count: number, seed: number): SheetJob {
  const random = seededRandom(seed);
  const bin = uniform[name]?.[0] ?? 100;
  const alike = new Map<string, Piece>();
  for (let index = 0; index < count; index += 1) {
    const [width, length] = sizeOf(random, name);
    const key = `${width} × ${length}`;
    alike.set(key, { name: key, width, length, count: (alike.get(key)?.count ?? 0) + 1, grain: "along" });
  }
  return { sheets: [{ name: "bin", width: bin, length: bin }], trim: 0, pieces: [...alike.values()] };
}

/** Time of the processor, which other work on the machine does not lengthen. */
const timed = <T>(run: () => T): { readonly result: T; readonly ms: number } => {
  const start = process.cpuUsage();
  const result = run();
  const { user, system } = process.cpuUsage(start);
  return { result, ms: (user + system) / 1000 };
};

/** Forty kinds of blanks that hardly fit together, out of sheets, smaller sheets and one offcut. */
const manyKinds: SheetJob = {
  sheets: [
    { name: "full sheet", width: 1250, length: 2500 },
    { name: "small sheet", width: 1000, length: 2000 },
    { name: "offcut", width: 310, length: 1250, count: 1 },
  ],
  trim: 0,
  pieces: Array.from({ length: 40 }, (_, index) => ({
    name: `P${index + 1}`,
    width: 151 + ((index * 97) % 389),
    length: 163 + ((index * 181) % 547),
    count: 1 + (index % 4),
    grain: index % 5 === 0 ? "along" : "free",
  })),
  shear,
};

/** How near the plans come to the optimum or the bound, and how long that takes. Printed once, not timed again and again. */
export function figures() {
  const known = gcut.instances.flatMap((instance) =>
    (
      [
        ["along", instance.optimum, ""],
        ["free", instance.optimumTurned, ", turned"],
      ] as const
    ).map(([grain, optimum, how]) => {
      const { result, ms } = timed(() => finish(fillOneSheet(gcutJob(instance, grain))));
      return {
        what: instance.name + how,
        found: result.value,
        "optimum or bound": optimum,
        "gap %": (100 * (1 - result.value / optimum)).toFixed(2),
        proved: result.proved ? "yes" : "no",
        "processor ms": ms.toFixed(0),
      };
    }),
  );
  const generated = [...Object.keys(uniform), ...mixed].flatMap((name) =>
    [20, 60, 100].map((count) => {
      const runs = [1, 2, 3].map((seed) => timed(() => finish(fewestSheets(binJob(name, count, 100 * count + seed)))));
      const sheets = runs.reduce((sum, { result }) => sum + result.sheets, 0);
      const bound = runs.reduce((sum, { result }) => sum + result.bound, 0);
      return {
        what: `class ${name}, ${count} pieces, 3 jobs`,
        found: sheets,
        "optimum or bound": bound,
        "gap %": (100 * (sheets / bound - 1)).toFixed(2),
        proved: `${runs.filter(({ result }) => result.proved).length} of 3`,
        "processor ms": (runs.reduce((sum, { ms }) => sum + ms, 0) / 3).toFixed(0),
      };
    }),
  );
  const own = [
    ["30 trays and 30 lids, sheets", classSet],
    ["40 kinds, 3 sizes of sheet, m²", manyKinds],
  ] as const;
  const sets = own.map(([what, job]) => {
    const { result, ms } = timed(() => finish(fewestSheets(job)));
    return {
      what,
      found: Number(result.cost.toFixed(3)),
      "optimum or bound": Number(result.bound.toFixed(3)),
      "gap %": (100 * (result.cost / result.bound - 1)).toFixed(2),
      proved: result.proved ? "yes" : "no",
      "processor ms": ms.toFixed(0),
    };
  });
  return [...sets, ...known, ...generated];
}
