import { setback } from "../bending/setback.ts";
import { type Brake, type Die, type MaterialId, type MeasuredBend, materialIds, type Punch, type Shop } from "../catalogue.ts";
import type { Input, ListInput, QuantityInput } from "../inputs.ts";
import { outlinePlay } from "../punching/shop-punches.ts";
import { type GaugeReader, ParseError, parseQuantity } from "../quantity/parse.ts";
import { kindOf } from "../quantity/units.ts";
import { bendColumns, orders, outlineSizes, type PatternText, shopLists, shopName, shopSections, shopVersion } from "./fields.ts";

/** Where something stands in the shop's file: `["brake", "rating", "thickness"]`, `["stock", 2, "width"]`. */
export type ShopPath = readonly (string | number)[];

/** Something in the shop's file that cannot be used: where, what is written there and what is allowed. */
export interface ShopFault {
  readonly path: ShopPath;
  readonly message: string;
}

/** Gauge numbers of a metal. */
export type GaugesOf = (material: MaterialId) => GaugeReader;

type Fault = (path: ShopPath, message: string) => void;
type Group = Readonly<Record<string, unknown>>;

const isGroup = (value: unknown): value is Group => typeof value === "object" && value !== null && !Array.isArray(value);

/** What was written, short enough for a message. */
function shown(value: unknown): string {
  const text = typeof value === "string" ? value : (JSON.stringify(value) ?? String(value));
  return text.length > 60 ? `${text.slice(0, 60)}…` : text;
}

/** The numbers of a file that stand without a unit. */
export const isBare = ({ quantity }: QuantityInput) => quantity === "count" || quantity === "ratio";

function readNumber(input: QuantityInput, given: unknown): number | string {
  const value = typeof given === "string" && /^\s*[\d.]+\s*$/.test(given) ? Number(given) : given;
  if (given === "") return "is empty";
  if (typeof value !== "number") return `${shown(given)}; it must be a number`;
  const { min, max } = input;
  const inside = value >= min && value <= max;
  if (input.quantity !== "count") return inside ? value : `${value}; allowed is ${min} to ${max}`;
  return inside && Number.isInteger(value) ? value : `${value}; allowed is a whole number from ${min} to ${max}`;
}

function readQuantity(input: QuantityInput, given: unknown, gauge?: GaugeReader): number | string {
  if (isBare(input)) return readNumber(input, given);
  const { base, units, example } = kindOf(input.quantity);
  // Numbers are let in as text so that `1.2` gets the message that its unit is missing.
  if (typeof given !== "string" && typeof given !== "number") return "must be a quantity like 1.2 mm";
  const text = String(given).trim();
  if (text === "") return "is empty";
  if (/^[\d\s.,/+-]*$/.test(text)) return `${text} has no unit; write it like ${example}`;
  try {
    const { value } = parseQuantity(text, input.quantity, gauge ? { gauge } : {});
    const limit = (each: number) => `${each}${base === "deg" ? "" : " "}${units[base]?.text}`;
    return value >= input.min && value <= input.max ? value : `${text}; allowed is ${limit(input.min)} to ${limit(input.max)}`;
  } catch (error) {
    if (error instanceof ParseError) return error.message;
    throw error;
  }
}

/** Worth of one entry; undefined when there is a fault. */
function readEntry(input: Input, given: unknown, path: ShopPath, fault: Fault, gauge?: GaugeReader): unknown {
  const refuse = (message: string) => void fault(path, message);
  if (input.kind === "quantity") {
    const value = readQuantity(input, given, gauge);
    return typeof value === "number" ? value : refuse(value);
  }
  if (input.kind === "text") {
    if (typeof given !== "string") return refuse(`${shown(given)}; it must be text`);
    const text = given.trim();
    const { pattern, must } = input as Partial<PatternText>;
    if (pattern && !pattern.test(text)) return refuse(`must be ${must}`);
    if (text === "") return refuse("is empty");
    return text.length <= input.maxLength ? text : refuse(`has ${text.length} characters; allowed is up to ${input.maxLength}`);
  }
  const allowed: readonly string[] =
    input.kind === "material" ? materialIds : Object.keys((input as { choices: object }).choices);
  return allowed.includes(given as string) ? given : refuse(`${shown(given)}; allowed is ${allowed.join(", ")}`);
}

/** What may be left out of the file. */
export const isOptional = (input: Input) =>
  (input.kind === "quantity" && input.whenEmpty !== undefined) || (input.kind === "text" && input.default === "");

/** What stands at a name of a group; says so when nothing does. */
function present(group: Group, key: string, path: ShopPath, fault: Fault): boolean {
  if (!Object.hasOwn(group, key) || group[key] === undefined) fault([...path, key], "is missing");
  else if (group[key] === null) fault([...path, key], "is empty");
  else return true;
  return false;
}

function unknownNames(group: Group, known: readonly string[], path: ShopPath, fault: Fault): void {
  for (const key of Object.keys(group))
    if (!known.includes(key)) fault([...path, key], `is not a name that is known here; known are ${known.join(", ")}`);
}

const mustBeGroup = (value: unknown) => `${shown(value)}; it must be a group of \`name: value\` lines`;

/** Gauge numbers of the metal that stands beside a thickness. */
function gaugeFor(material: unknown, gaugesOf: GaugesOf): GaugeReader | undefined {
  return (materialIds as readonly unknown[]).includes(material) ? gaugesOf(material as MaterialId) : undefined;
}

/** A line of a list, or a group of a machine: the names are those of its inputs. */
function readGroup(
  inputs: Readonly<Record<string, Input>>,
  given: unknown,
  path: ShopPath,
  fault: Fault,
  gaugesOf: GaugesOf,
): Group | undefined {
  if (!isGroup(given)) return void fault(path, mustBeGroup(given));
  let wanted = inputs;
  if ("shape" in inputs && "diameter" in inputs) {
    const sizes = outlineSizes[String(given.shape)];
    if (given.shape !== undefined && !sizes) return void fault([...path, "shape"], "must be round, square or rectangle");
    const isSize = (key: string) => ["diameter", "width", "height"].includes(key);
    const fitting = Object.entries(inputs).filter(([key]) => !isSize(key) || sizes?.includes(key));
    wanted = Object.fromEntries(
      fitting.map(([key, input]) => [key, isSize(key) ? ({ ...input, whenEmpty: undefined } as Input) : input]),
    );
  }

  const heads = [...new Set(Object.keys(wanted).map((key) => key.split(".")[0] as string))];
  const read: Record<string, unknown> = {};
  let good = true;
  const note: Fault = (at, message) => {
    good = false;
    fault(at, message);
  };
  for (const head of heads) {
    const inner = Object.entries(wanted).filter(([key]) => key.startsWith(`${head}.`));
    const input = wanted[head];
    if (inner.length > 0) {
      if (!present(given, head, path, note)) continue;
      const group = Object.fromEntries(inner.map(([key, each]) => [key.slice(head.length + 1), each]));
      const value = readGroup(group, given[head], [...path, head], note, gaugesOf);
      if (value) read[head] = value;
      continue;
    }
    if (!input) continue;
    if (isOptional(input) && (given[head] === undefined || given[head] === "")) continue;
    if (!present(given, head, path, note)) continue;
    const value =
      input.kind === "list"
        ? readList(input, given[head], [...path, head], note, gaugesOf)
        : readEntry(
            input,
            given[head],
            [...path, head],
            note,
            head === "thickness" ? gaugeFor(given.material, gaugesOf) : undefined,
          );
    if (value !== undefined) read[head] = value;
  }
  unknownNames(given, heads, path, note);
  return good ? read : undefined;
}

function readList(list: ListInput, given: unknown, path: ShopPath, fault: Fault, gaugesOf: GaugesOf): unknown[] | undefined {
  if (!Array.isArray(given)) return void fault(path, `${shown(given)}; it must be a list`);
  const { minRows, maxRows } = list;
  if (given.length < minRows || given.length > maxRows)
    return void fault(
      path,
      `has ${given.length} entries; allowed is ${given.length < minRows ? `${minRows} or more` : `up to ${maxRows}`}`,
    );
  const [plain] = Object.values(list.columns);
  const read = given.map((row, index) => {
    const at = [...path, index];
    if (list.plain && plain) return row === null ? void fault(at, "is empty") : readEntry(plain, row, at, fault);
    return readGroup(list.columns, row, at, fault, gaugesOf);
  });
  return read.includes(undefined) ? undefined : read;
}

/** The legs of a bend beyond this angle may have been measured in two ways, so its deduction cannot be judged. */
const largestJudged = 90;

/** Catches a slip of the decimal point: the bend uses up an arc between the inside and the outside face of the sheet. */
function checkDeduction({ thickness, radius, angle, deduction }: MeasuredBend, path: ShopPath, fault: Fault): boolean {
  if (angle > largestJudged) return true;
  const legs = 2 * setback({ radius, thickness, angle, legTo: "apex" });
  const turned = (angle * Math.PI) / 180;
  const [least, most] = [legs - turned * (radius + thickness), legs - turned * radius];
  if (deduction >= least && deduction <= most) return true;
  const limits = `${deduction} mm; allowed is ${least.toFixed(2)} mm to ${most.toFixed(2)} mm`;
  fault([...path, "deduction"], `${limits} for a bend of this thickness, radius and angle`);
  return false;
}

/** The fingers must let the leaf swing as far as it is said to, and have a top that can be fixed to the beam. */
function checkFingers({ fingerLean, fingerTop, fingerHeight, largestSwing }: Brake, fault: Fault): void {
  if (90 + fingerLean < largestSwing)
    fault(
      ["brake", "fingerLean"],
      `${fingerLean}° stops the leaf at ${90 + fingerLean}°; it must be at least largestSwing less 90°, ${largestSwing - 90}°`,
    );
  const front = fingerHeight * Math.tan((fingerLean * Math.PI) / 180);
  if (fingerTop <= front)
    fault(["brake", "fingerTop"], `must be more than ${front.toFixed(1)} mm, by which the front of such a finger goes back`);
}

/** Most that a die may be larger than its punch [mm]: beyond it the sheet is drawn in, not cut. */
const largestPlay = 2;

function checkDies(punches: readonly Punch[], dies: readonly Die[], fault: Fault): void {
  dies.forEach(({ letter }, index) => {
    if (dies.findIndex((die) => die.letter === letter) < index)
      fault(["punch", "dies", index, "letter"], `${letter} is there twice`);
  });
  for (const [index, punch] of punches.entries()) {
    const die = dies.find(({ letter }) => letter === punch.die);
    const plays = die && outlinePlay(punch, die);
    const path = ["punch", "punches", index, "die"];
    if (!die) fault(path, `${punch.die} is not among the dies; known are ${dies.map(({ letter }) => letter).join(", ")}`);
    else if (!plays) fault(path, `${punch.die} is ${die.shape}, the punch is ${punch.shape}`);
    else if (!plays.every((play) => play > 0 && play <= largestPlay))
      fault(path, `${punch.die} must be larger than its punch, by ${largestPlay} mm at most`);
  }
}

export interface ShopReading {
  /** Only when there is no fault. */
  readonly shop?: Shop;
  readonly faults: readonly ShopFault[];
}

/**
 * Reads what the shop's file holds: checks every value against its range and against its neighbours, and converts to base units.
 * Collects every fault instead of stopping at the first.
 *
 * @param given - the file as plain values: texts with their units, numbers, lists, groups
 * @param gaugesOf - reads gauge numbers, each in the list of the metal beside it
 */
export function readShop(given: unknown, gaugesOf: GaugesOf): ShopReading {
  const faults: ShopFault[] = [];
  const fault: Fault = (path, message) => void faults.push({ path, message });
  if (!isGroup(given)) {
    fault([], given == null ? "is empty" : mustBeGroup(given));
    return { faults };
  }
  if (given.version !== undefined && given.version !== shopVersion)
    fault(["version"], `${shown(given.version)}; this handbook reads version ${shopVersion}`);

  const read: Record<string, unknown> = {};
  if (present(given, "name", [], fault)) read.name = readEntry(shopName, given.name, ["name"], fault);
  for (const [key, { inputs }] of Object.entries(shopSections))
    if (present(given, key, [], fault)) read[key] = readGroup(inputs, given[key], [key], fault, gaugesOf);
  for (const [key, { list }] of Object.entries(shopLists))
    if (present(given, key, [], fault)) read[key] = readList(list, given[key], [key], fault, gaugesOf);
  unknownNames(given, ["version", "name", ...Object.keys(shopSections), ...Object.keys(shopLists)], [], fault);

  for (const { section, lower, upper, mayBeEqual } of orders) {
    const machine = read[section] as Readonly<Record<string, number>> | undefined;
    const [low, high] = [machine?.[lower] ?? 0, machine?.[upper] ?? 1];
    if (low > high || (low === high && !mayBeEqual))
      fault([section, lower], mayBeEqual ? `must not be above ${upper}` : `must be less than ${upper}`);
  }
  const { brake, punch, bends } = read as Partial<Shop>;
  if (brake) checkFingers(brake, fault);
  if (punch) checkDies(punch.punches, punch.dies, fault);
  for (const [index, bend] of (bends ?? []).entries()) checkDeduction(bend, ["bends", index], fault);
  return faults.length === 0 ? { shop: read as unknown as Shop, faults } : { faults };
}

/**
 * Reads one measured bend as a device keeps it.
 *
 * @param given - the same line as under `bends` in the shop's file
 * @returns the bend, or what is wrong with it; paths begin within the line
 */
export function readBend(
  given: unknown,
  gaugesOf: GaugesOf,
): { readonly bend?: MeasuredBend; readonly faults: readonly ShopFault[] } {
  const faults: ShopFault[] = [];
  const fault: Fault = (path, message) => void faults.push({ path, message });
  const bend = readGroup(bendColumns, given, [], fault, gaugesOf) as MeasuredBend | undefined;
  return bend && checkDeduction(bend, [], fault) ? { bend, faults } : { faults };
}
