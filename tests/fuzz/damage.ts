/** Damages texts at random, but the same way for the same seed: what people, programs and attackers make of good ones. */

/** Numbers from 0 up to, not including, 1. */
export type Random = () => number;

export const below = (random: Random, count: number): number => Math.floor(random() * count);

export function pick<T>(random: Random, from: readonly T[]): T {
  if (from.length === 0) throw new Error("There is nothing to pick from");
  return from[below(random, from.length)] as T;
}

/** Pieces of text that have broken readers before, or may have. */
export const nasty: readonly string[] = [
  ...[
    "",
    " ",
    "\u0000",
    "\n",
    "\r\n",
    "\t",
    "\u00a0",
    "\ufeff",
    "\u200b",
    "\u202e",
    "\ud800",
    "\udc00",
    "é",
    "½",
    "⅛",
    "″",
    "−",
    "٣",
    "１２",
  ],
  ...["%", "%%", "%00", "%zz", "%25", "%3A", "+", "&", "&&=", "=", ";", ":", ",", ".", "..", "/", "//", "\\", "#", "?"],
  ...[
    "0",
    "-0",
    "-1",
    "1e999",
    "-1e999",
    "1e-999",
    "1e21",
    "0x10",
    "1_000",
    "1/0",
    "0/0",
    "1 1/0",
    "1/3",
    "NaN",
    "Infinity",
    "∞",
  ],
  ...[
    "99999999999999999999",
    "0.1.2",
    "1,2",
    "1,234.5",
    "1.234,5",
    "--1",
    "+1",
    "1 2 3",
    "18 ga",
    "-18 ga",
    "999 ga",
    "1/64in",
    "12''",
    "5°",
  ],
  ...["mm", "in", "kN", "ksi", "deg", "%", "mm mm", "1mmm", "1 furlong"],
  ...[
    "null",
    "true",
    "undefined",
    "[object Object]",
    "__proto__",
    "constructor",
    "prototype",
    "toString",
    "hasOwnProperty",
    "length",
  ],
  ...[
    "{",
    "}",
    "[",
    "]",
    '"',
    "'",
    "`",
    "\\u0000",
    "\\",
    "!!js/function",
    "&a",
    "*a",
    "<<: *a",
    "|",
    ">",
    "---",
    "? ",
    "- ",
    ": ",
  ],
  ...[
    "<script>window.ran=1</script>",
    "<img src=x onerror=window.ran=1>",
    "javascript:window.ran=1",
    "<svg onload=window.ran=1>",
  ],
  ...["</script><script>window.ran=1</script>", '" autofocus onfocus=window.ran=1 x="', "{{7*7}}", "=1+1", "@SUM(1)", "-cmd|x"],
  ...["steel-cr", "al-2024-t3", "folded", "tube", "cone", "north.99", "base", "up", "closed", "measured"],
];

function cut(random: Random, text: string): [from: number, to: number] {
  const from = below(random, text.length + 1);
  return [from, Math.min(text.length, from + 1 + below(random, random() < 0.8 ? 4 : text.length + 1))];
}

/** One damage to a text. @param others - texts to take pieces from */
function damageOnce(random: Random, text: string, others: readonly string[]): string {
  const [from, to] = cut(random, text);
  const piece = text.slice(from, to);
  switch (below(random, 9)) {
    case 0:
      return text.slice(0, from) + text.slice(to);
    case 1:
      return text.slice(0, from) + pick(random, nasty) + text.slice(from);
    case 2:
      return text.slice(0, from) + pick(random, nasty) + text.slice(to);
    case 3:
      return text.slice(0, to) + piece.repeat(1 + below(random, 20)) + text.slice(to);
    case 4: {
      const other = pick(random, others);
      const [begin, end] = cut(random, other);
      return text.slice(0, from) + other.slice(begin, end) + text.slice(to);
    }
    case 5:
      return text.slice(0, from) + String.fromCharCode(below(random, random() < 0.7 ? 128 : 65536)) + text.slice(to);
    case 6:
      return text.slice(0, to);
    case 7:
      return text.replace(/\d+(?:\.\d+)?/g, (number) => (random() < 0.2 ? pick(random, nasty) : number));
    default:
      return text.replace(/\d/g, (digit) => (random() < 0.15 ? String(below(random, 10)) : digit));
  }
}

/** A good text, damaged once or a few times; now and then good, empty, or nothing but trouble. */
export function damaged(random: Random, good: readonly string[]): string {
  const kind = random();
  if (kind < 0.02) return pick(random, nasty).repeat(1 + below(random, 2000));
  let text = pick(random, good);
  if (kind < 0.05) return text;
  for (let times = 1 + below(random, random() < 0.7 ? 2 : 12); times > 0; times--) text = damageOnce(random, text, good);
  // Nobody pastes more than this by hand, and a file may be larger: readers say how much they take.
  return text.slice(0, 600_000);
}

const strange: readonly unknown[] = [null, true, 0, -0, 1e308, Number.MAX_SAFE_INTEGER, "", [], {}, [[]], [null], { a: 1 }];

/** A value of a JSON text, put in the place of another one, or left out. */
function changedValue(random: Random, value: unknown): unknown {
  if (random() < 0.3) return random() < 0.5 ? pick(random, nasty) : pick(random, strange);
  if (Array.isArray(value) && value.length > 0) {
    const at = below(random, value.length);
    if (random() < 0.15) return [...value, ...Array.from({ length: below(random, 300) }, () => value[at])];
    if (random() < 0.15) return value.filter((_, index) => index !== at);
    return value.map((each, index) => (index === at ? changedValue(random, each) : each));
  }
  if (typeof value === "object" && value !== null) {
    const keys = Object.keys(value);
    const key = random() < 0.1 || keys.length === 0 ? pick(random, nasty) : pick(random, keys);
    const entries = Object.entries(value).filter(([each]) => each !== key);
    if (random() < 0.15) return Object.fromEntries(entries);
    return Object.fromEntries([...entries, [key, changedValue(random, (value as Record<string, unknown>)[key])]]);
  }
  return pick(random, random() < 0.7 ? nasty : strange);
}

/** A good JSON text with values of other kinds in it; now and then damaged as a text. */
export function damagedJson(random: Random, good: readonly string[]): string {
  if (random() < 0.25) return damaged(random, good);
  let value: unknown = JSON.parse(pick(random, good));
  for (let times = 1 + below(random, 4); times > 0; times--) value = changedValue(random, value);
  return JSON.stringify(value) ?? "";
}

/** A good query with parameters damaged, doubled, left out or swapped. */
export function damagedQuery(random: Random, good: readonly string[]): string {
  if (random() < 0.2) return damaged(random, good);
  const parameters = [...new URLSearchParams(pick(random, good))];
  const others = ["1mm", ...good.flatMap((query) => [...new URLSearchParams(query).values()])];
  for (let times = 1 + below(random, 4); times > 0; times--) {
    if (parameters.length === 0) parameters.push(["x", "1"]);
    const at = below(random, parameters.length);
    const [name = "", text = ""] = parameters[at] ?? [];
    const kind = below(random, 8);
    if (kind === 0) parameters.splice(at, 1);
    else if (kind === 1) parameters.splice(at, 0, [name, pick(random, nasty)]);
    else if (kind === 2) parameters[at] = [`${name}${pick(random, nasty)}`, text];
    else if (kind === 3) parameters[at] = [name, pick(random, others)];
    else parameters[at] = [name, damaged(random, [text, ...others])];
  }
  return new URLSearchParams(parameters.map(([name, text]) => [name, text])).toString();
}
