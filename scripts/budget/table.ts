import { fileKinds } from "./measure.ts";
import { type Measured, totalKb } from "./measured.ts";

interface Limits {
  readonly scriptKb: number;
  readonly totalKb: number;
  readonly largestPaintMs: number;
  readonly blockingMs: number;
  readonly layoutShift: number;
  readonly keptText: number;
}

/** A row for each page, to be read in a terminal. */
export function table(pages: readonly Measured[], limits: Limits): string {
  const head = ["page", ...fileKinds, "all kB", "requests", "paint ms", "block ms", "shift", "text", ""];
  const lines = pages.map(({ path, load, keptText, faults }) => [
    path,
    ...fileKinds.map((kind) => load.kb[kind].toFixed(1)),
    totalKb(load).toFixed(1),
    String(load.requests),
    load.largestPaintMs.toFixed(0),
    load.blockingMs.toFixed(0),
    load.layoutShift.toFixed(3),
    keptText.toFixed(2),
    faults.length > 0 ? "OVER" : "ok",
  ]);
  const limitOf: Readonly<Record<string, number>> = {
    script: limits.scriptKb,
    "all kB": limits.totalKb,
    "paint ms": limits.largestPaintMs,
    "block ms": limits.blockingMs,
    shift: limits.layoutShift,
    text: limits.keptText,
  };
  const limit = head.map((name, column) => (column === 0 ? "limit" : String(limitOf[name] ?? "")));
  const all = [head, ...lines, limit];
  const widths = head.map((_, column) => Math.max(...all.map((line) => line[column]?.length ?? 0)));
  return all
    .map((line) =>
      line
        .map((cell, i) => (i === 0 ? cell.padEnd(widths[i] ?? 0) : cell.padStart(widths[i] ?? 0)))
        .join("  ")
        .trimEnd(),
    )
    .join("\n");
}
