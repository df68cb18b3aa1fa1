import { seededRandom } from "../../src/lib/sheet/random.ts";
import type { Reader } from "./readers.ts";

/** No text may keep a reader longer than this [ms of processor time]: the page does not answer meanwhile. */
const longest = 1000;

/** What a message must not hold unless the text did: signs of a value that was never looked at. */
const careless = /NaN|Infinity|undefined|\[object /i;

export interface Fault {
  readonly reader: string;
  /** Gives the same text again. */
  readonly seed: number;
  readonly text: string;
  readonly what: string;
}

export interface Tally {
  readonly faults: readonly Fault[];
  readonly cases: number;
  /** Texts of which nothing was said: they could be used. */
  readonly accepted: number;
  readonly slowestMs: number;
}

/** Processor time of this process so far [ms]: what else the machine does is none of the reader's. */
function processorMs(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

/** Whether a text itself holds such a sign, plainly or as in an address. */
function isCareless(text: string): boolean {
  const plain = text
    .replaceAll("+", " ")
    .replace(/%([0-7][0-9a-f])/gi, (_, code: string) => String.fromCharCode(Number.parseInt(code, 16)));
  return careless.test(text) || careless.test(plain);
}

async function faultOf(reader: Reader, text: string): Promise<{ what?: string; accepted: boolean; ms: number }> {
  const start = processorMs();
  const done = (what: string | undefined, accepted: boolean) => {
    const ms = processorMs() - start;
    return { what: what ?? (ms > longest ? `took ${Math.round(ms)} ms` : undefined), accepted, ms };
  };
  try {
    const words = await reader.read(text);
    const bad = words.find((each) => each.trim() === "" || (careless.test(each) && !isCareless(text)));
    return done(bad === undefined ? undefined : `says “${bad}”`, words.length === 0);
  } catch (error) {
    return done(error instanceof Error ? (error.stack ?? error.message) : `threw ${String(error)}`, false);
  }
}

/** Tries a reader on as many texts, the same ones for the same seed; stops looking after a few faults. */
export async function tryReader(reader: Reader, cases: number, seed: number, mostFaults = 5): Promise<Tally> {
  const faults: Fault[] = [];
  let accepted = 0;
  let slowestMs = 0;
  for (let index = 0; index < cases && faults.length < mostFaults; index++) {
    const own = (seed * 1_000_003 + index) | 0;
    const text = await reader.make(seededRandom(own));
    const found = await faultOf(reader, text);
    if (found.accepted) accepted++;
    slowestMs = Math.max(slowestMs, found.ms);
    if (found.what) faults.push({ reader: reader.name, seed: own, text, what: found.what });
  }
  return { faults, cases, accepted, slowestMs };
}
