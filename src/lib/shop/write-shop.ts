import type { MeasuredBend } from "../catalogue.ts";
import { safeCsv } from "../csv.ts";
import type { Input, ListInput } from "../inputs.ts";
import { bendColumns, shopLists, shopSections, shopVersion } from "./fields.ts";
import { type ShopFile, unitApart } from "./form.ts";

const plainWords = /^\p{L}[\p{L}\p{N} ./°-]*$/u;
const plainQuantity = /^-?[\d.]+ ?[\p{L}\p{N}°/%]*$/u;
/** Words that a reader of YAML takes for something else than text. */
const special = /^(?:true|false|null|yes|no|on|off|y|n|~)$/i;

/** One value as YAML writes it; a unit stands apart from its number. */
function scalar(given: unknown, input?: Input): string {
  if (typeof given !== "string") return String(given);
  const value = input?.kind === "quantity" ? unitApart(given) : given;
  const isWords = input === undefined || input.kind === "text";
  // A date and a lot are text, whatever they look like; a quantity carries its unit.
  const isDate = /^\d{4}-\d\d-\d\d$/.test(value);
  if (input?.kind === "choice") return value;
  if (
    isDate ||
    (plainWords.test(value) && !special.test(value)) ||
    (!isWords && plainQuantity.test(value) && /\p{L}|[°%]/u.test(value))
  )
    return value;
  return JSON.stringify(value);
}

/** One line of a list of the file. */
export const shopLine = (columns: Readonly<Record<string, Input>>, row: ShopFile) =>
  `{ ${Object.entries(row)
    .map(([key, value]) => `${key}: ${scalar(value, columns[key])}`)
    .join(", ")} }`;

function list(input: ListInput, rows: readonly unknown[], indent: string): string {
  const [plain] = Object.values(input.columns);
  if (input.plain) return ` [${rows.map((row) => scalar(row, plain)).join(", ")}]`;
  if (rows.length === 0) return " []";
  return rows.map((row) => `\n${indent}- ${shopLine(input.columns, row as ShopFile)}`).join("");
}

function section(key: string, about: string, inputs: Readonly<Record<string, Input>>, group: ShopFile): string[] {
  const lines = [`# ${about}`, `${key}:`];
  const done = new Set<string>();
  for (const [name, input] of Object.entries(inputs)) {
    const [head = ""] = name.split(".");
    if (done.has(head) || group[head] === undefined) continue;
    done.add(head);
    if (input.help) lines.push(`  # ${input.help}`);
    const value = group[head];
    if (head !== name) {
      const inner = Object.entries(inputs).filter(([other]) => other.startsWith(`${head}.`));
      const columns = Object.fromEntries(inner.map(([other, each]) => [other.slice(head.length + 1), each]));
      lines.push(`  ${head}: ${shopLine(columns, value as ShopFile)}`);
    } else if (input.kind === "list") lines.push(`  ${head}:${list(input, value as readonly unknown[], "    ")}`);
    else lines.push(`  ${head}: ${scalar(value, input)}`);
  }
  return lines;
}

/**
 * The text of a shop's file, ready to be put in the place of the old one.
 *
 * @param file - its values, without faults
 * @param remark - where the file comes from, for its first line
 */
export function shopText(file: ShopFile, remark: string): string {
  const lines = [
    `# ${remark}`,
    "# Write every length with its unit: 1.2 mm, 0.048 in, 3/64 in, 48 in, 18 ga (in the gauge list of the metal on the same line).",
    "# The rating on the machine's own plate and its manual always win over this file.",
    "",
    `version: ${shopVersion}`,
    `name: ${scalar(file.name)}`,
  ];
  for (const [key, { about, inputs }] of Object.entries(shopSections))
    lines.push("", ...section(key, about, inputs, file[key] as ShopFile));
  for (const [key, { about, list: input }] of Object.entries(shopLists))
    lines.push("", `# ${about}`, `${key}:${list(input, file[key] as readonly unknown[], "  ")}`);
  return `${lines.join("\n")}\n`;
}

/** Measured bends as a table for a spreadsheet: lengths in millimetres, angles in degrees. */
export function bendsCsv(bends: readonly MeasuredBend[]): string {
  const keys = Object.keys(bendColumns) as (keyof typeof bendColumns)[];
  const unit = (input: Input) =>
    input.kind !== "quantity" ? "" : input.quantity === "length" ? " (mm)" : input.quantity === "angle" ? " (deg)" : "";
  const head = keys.map((key) => `${key}${unit(bendColumns[key])}`);
  const rows = bends.map((bend) => keys.map((key) => bend[key] ?? ""));
  return safeCsv([head, ...rows]);
}
