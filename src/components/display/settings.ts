import { type LengthView, lengthViews } from "../../lib/quantity/format.ts";
import type { IdleTimes } from "./idle.ts";

/** What is set for this screen and kept on it. */
export interface Settings {
  /** Seconds without a touch until what was typed is forgotten. */
  readonly idle: number;
  /** How lengths are shown until somebody changes it; everybody starts with this. */
  readonly units: LengthView;
  /** Address of the handbook that phones can reach; empty: the one this page came from. */
  readonly site: string;
}

export const settingsShelf = "flat-to-formed.display";
export const idleRange = { min: 15, max: 1800 } as const;
export const usual: Settings = { idle: 90, units: "mm", site: "" };
/** Times to choose from on the screen itself [s]. */
export const idleChoices = [30, 60, 90, 120, 180, 300, 600] as const;

/** The times of the rest follow no setting: 20 s leave time to read a card from across the room. */
export function idleTimes({ idle }: Settings): IdleTimes {
  return { forgetAfter: idle * 1000, warnBefore: Math.min(15, idle / 3) * 1000, restAfter: 30_000, cardEvery: 20_000 };
}

/** One setting read from text; undefined when it cannot be used. */
const readers: { readonly [K in keyof Settings]: (text: string) => Settings[K] | undefined } = {
  idle(text) {
    const seconds = /^\d{1,4}$/.test(text) ? Number(text) : Number.NaN;
    return seconds >= idleRange.min && seconds <= idleRange.max ? seconds : undefined;
  },
  units: (text) => lengthViews.find((view) => view === text),
  site(text) {
    if (text === "") return "";
    if (!/^https?:\/\//.test(text) || !URL.canParse(text)) return undefined;
    const { origin, pathname } = new URL(text);
    return origin + pathname.replace(/\/?$/, "/");
  },
};
const keys = Object.keys(readers) as (keyof Settings)[];

export interface ReadSettings {
  readonly settings: Settings;
  /** Settings of the address that could not be used, `idle=5`. */
  readonly refused: readonly string[];
  /** Whether the address held any that could. */
  readonly changed: boolean;
}

/** What is kept, with what the address asks for in its place; anything unusable is passed over. */
export function readSettings(kept: string | null, search: string): ReadSettings {
  let settings = usual;
  let old: unknown;
  try {
    old = JSON.parse(kept ?? "{}");
  } catch {
    old = {};
  }
  const take = (key: keyof Settings, text: string): boolean => {
    const value = readers[key](text);
    if (value === undefined) return false;
    settings = { ...settings, [key]: value };
    return true;
  };
  if (typeof old === "object" && old !== null)
    for (const key of keys) if (Object.hasOwn(old, key)) take(key, String(Reflect.get(old, key)));
  const refused: string[] = [];
  let changed = false;
  const asked = new URLSearchParams(search);
  for (const key of keys) {
    const text = asked.get(key);
    if (text === null) continue;
    if (take(key, text)) changed = true;
    else refused.push(`${key}=${text.slice(0, 40)}`);
  }
  return { settings, refused, changed };
}
