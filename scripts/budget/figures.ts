import { readFile, writeFile } from "node:fs/promises";
import budget from "../../budget.json" with { type: "json" };
import type { Form } from "./lighthouse.ts";
import { type Measured, totalKb } from "./measured.ts";

/** The figures of a run as the table in DEVELOPERS.md. */

const { limits, network, cpuSlowdown } = budget;

interface Run {
  readonly pages: readonly Measured[];
  readonly firstSearchMs: number;
  readonly wasBusy: boolean;
  /** Every kind of page was measured. */
  readonly isWhole: boolean;
}

interface Figure {
  readonly name: string;
  readonly limit: number;
  /** Whether less is worse. */
  readonly isShare?: boolean;
  of(page: Measured): number;
  shown(value: number): string;
}

const figures: readonly Figure[] = [
  { name: "scripts, kB", limit: limits.scriptKb, of: ({ load }) => load.kb.script, shown: (kb) => kb.toFixed(1) },
  { name: "everything, kB", limit: limits.totalKb, of: ({ load }) => totalKb(load), shown: (kb) => kb.toFixed(1) },
  { name: "requests", limit: Number.POSITIVE_INFINITY, of: ({ load }) => load.requests, shown: String },
  {
    name: "largest paint, ms",
    limit: limits.largestPaintMs,
    of: ({ load }) => load.largestPaintMs,
    shown: (ms) => ms.toFixed(0),
  },
  { name: "blocking, ms", limit: limits.blockingMs, of: ({ load }) => load.blockingMs, shown: (ms) => ms.toFixed(0) },
  {
    name: "layout shift",
    limit: limits.layoutShift,
    of: ({ load }) => load.layoutShift,
    shown: (shift) => shift.toFixed(3),
  },
  {
    name: "text without scripts",
    limit: limits.keptText,
    isShare: true,
    of: ({ keptText }) => keptText,
    shown: (share) => share.toFixed(2),
  },
];

const strong = (text: string, isOver: boolean) => (isOver ? `**${text}**` : text);
const line = (cells: readonly string[]) => `| ${cells.join(" | ")} |`;

function figureLine({ name, limit, isShare = false, of, shown }: Figure, pages: readonly Measured[], own: readonly Measured[]) {
  const isOver = (page: Measured) => (isShare ? of(page) < limit : of(page) > limit);
  const isWorse = (one: Measured, other: Measured) => (isShare ? of(one) < of(other) : of(one) > of(other));
  const worst = pages.reduce((so, page) => (isWorse(page, so) ? page : so));
  const over = pages.filter(isOver).length;
  return line([
    name,
    Number.isFinite(limit) ? String(limit) : "none",
    `${strong(shown(of(worst)), isOver(worst))} \`${worst.path}\``,
    `${over} of ${pages.length}`,
    ...own.map((page) => strong(shown(of(page)), isOver(page))),
  ]);
}

function markLine(form: Form, own: readonly Measured[]): string[] {
  if (!own.some(({ marks }) => marks.some((each) => each.form === form))) return [];
  const cells = own.map(({ marks }) => {
    const found = marks.find((each) => each.form === form);
    if (!found) return "";
    const values = Object.entries(found.marks).map(([category, mark]) => `${category} ${mark}`);
    return strong(
      values.join(", "),
      Object.values(found.marks).some((mark) => mark < limits.lighthouse),
    );
  });
  return [line([`Lighthouse, ${form}`, String(limits.lighthouse), "", "", ...cells])];
}

function text({ pages, firstSearchMs, wasBusy, isWhole }: Run): string {
  const own = budget.lighthousePages.flatMap((path) => pages.find((page) => page.path === path) ?? []);
  const head = ["", "limit", "worst", "over", ...own.map(({ path }) => `\`${path}\``)];
  const busy = wasBusy
    ? " The machine was busy with other programs meanwhile: paint, blocking time and search are worse than the pages."
    : "";
  return [
    `Measured on ${new Date().toISOString().slice(0, 10)} on ${isWhole ? "the heaviest page of each kind" : "some pages only"}: cold, a phone on ${network.name}, processor slowed ${cpuSlowdown} times. What is over its limit is bold.${busy}`,
    "",
    line(head),
    line(head.map(() => "---")),
    ...figures.map((figure) => figureLine(figure, pages, own)),
    ...markLine("mobile", own),
    ...markLine("desktop", own),
    "",
    `First search result: ${strong(firstSearchMs.toFixed(0), firstSearchMs > limits.firstSearchMs)} ms, limit ${limits.firstSearchMs}.`,
  ].join("\n");
}

const begin = "<!-- figures: written by npm run budget -- --write -->\n";
const end = "\n<!-- end of figures -->";

/** Puts the figures of a run in the place of the last ones. @throws Error where the file has no place for them */
export async function writeFigures(file: string, run: Run): Promise<void> {
  const old = await readFile(file, "utf8");
  const from = old.indexOf(begin);
  const to = old.indexOf(end, from);
  if (from < 0 || to < 0) throw new Error(`${file} has no place for figures: “${begin.trim()}” … “${end.trim()}”`);
  await writeFile(file, old.slice(0, from + begin.length) + text(run) + old.slice(to));
}
