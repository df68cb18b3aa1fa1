import type { Shop } from "../catalogue.ts";
import type { Input, ListInput, Raw, RawRow } from "../inputs.ts";
import { kindOf } from "../quantity/units.ts";
import { outlineSizes, shopLists, shopName, shopSections, shopVersion } from "./fields.ts";
import { isBare, isOptional, type ShopPath } from "./read-shop.ts";

/** The shop's file as plain values, the way they are written in it. */
export type ShopFile = Readonly<Record<string, unknown>>;

/** Every input of the shop by the name of its field: `brake.rating.thickness`, `stock`. */
export const shopInputs: Readonly<Record<string, Input>> = {
  name: shopName,
  ...Object.fromEntries(
    Object.entries(shopSections).flatMap(([section, { inputs }]) =>
      Object.entries<Input>(inputs).map(([key, input]) => [`${section}.${key}`, input]),
    ),
  ),
  ...Object.fromEntries(Object.entries(shopLists).map(([key, { list }]) => [key, list])),
};

function at(file: unknown, path: readonly string[]): unknown {
  return path.reduce<unknown>((value, key) => (value as Record<string, unknown> | undefined)?.[key], file);
}

const asText = (value: unknown) => (value === undefined || value === null ? "" : String(value));

function rowsOf(list: ListInput, given: unknown): RawRow[] {
  const [plain = ""] = Object.keys(list.columns);
  return (Array.isArray(given) ? given : []).map((row) =>
    list.plain
      ? { [plain]: asText(row) }
      : Object.fromEntries(Object.keys(list.columns).map((column) => [column, asText((row as ShopFile)[column])])),
  );
}

/** The values of the form from those of a file that was read. */
export function formFrom(file: ShopFile): Raw {
  return Object.fromEntries(
    Object.entries(shopInputs).map(([field, input]) => {
      const given = at(file, field.split("."));
      return [field, input.kind === "list" ? rowsOf(input, given) : asText(given)];
    }),
  );
}

const bare = (input: Input | undefined, text: string) =>
  input?.kind === "quantity" && isBare(input) && /^\s*[\d.]+\s*$/.test(text) ? Number(text) : text;

/** A line of a file from one of a form: without what is empty, and of an outline only the sizes of its shape. */
export function lineFrom(columns: ListInput["columns"], row: RawRow): Record<string, unknown> {
  const sizes = "diameter" in columns ? outlineSizes[row.shape ?? ""] : undefined;
  const isSize = (key: string) => ["diameter", "width", "height"].includes(key);
  return Object.fromEntries(
    Object.entries(columns).flatMap(([key, cell]) => {
      if (sizes && isSize(key) && !sizes.includes(key)) return [];
      const text = row[key] ?? "";
      const optional =
        (cell.kind === "text" && cell.default === "") || (cell.kind === "quantity" && cell.whenEmpty !== undefined && !sizes);
      return text === "" && optional ? [] : [[key, bare(cell, text)]];
    }),
  );
}

/** The file that the values of the form stand for. */
export function fileFrom(raw: Raw): ShopFile {
  const file: Record<string, unknown> = { version: shopVersion };
  for (const [field, input] of Object.entries(shopInputs)) {
    const given = raw[field];
    const path = field.split(".");
    const last = path.pop() as string;
    let group = file;
    for (const key of path) {
      group[key] ??= {};
      group = group[key] as Record<string, unknown>;
    }
    if (input.kind !== "list") {
      const text = typeof given === "string" ? given : "";
      const optional =
        (input.kind === "text" && input.default === "") || (input.kind === "quantity" && input.whenEmpty !== undefined);
      if (text !== "" || !optional) group[last] = bare(input, text);
      continue;
    }
    const [plain = ""] = Object.keys(input.columns);
    const rows = Array.isArray(given) ? (given as readonly RawRow[]) : [];
    group[last] = rows.map((row) => (input.plain ? (row[plain] ?? "") : lineFrom(input.columns, row)));
  }
  return file;
}

/** The field of the form that a place in the file belongs to: `brake.rating.thickness`, `punch.dies.2.letter`. */
export function fieldAt(path: ShopPath): string {
  const field = path.join(".");
  const list = shopInputs[path.slice(0, -1).join(".")];
  return list?.kind === "list" && list.plain ? `${field}.${Object.keys(list.columns)[0]}` : field;
}

/** A quantity with its unit apart from its number: `1.2mm` as one writes it. */
export const unitApart = (text: string) => text.trim().replace(/^(-?[\d./-]*\d)([^\d\s.,/-].*)$/, "$1 $2");

/** A value as one writes it in the file, in its base unit, without the tail of binary arithmetic. */
function written(input: Input, value: unknown): unknown {
  if (input.kind !== "quantity" || typeof value !== "number" || isBare(input)) return value;
  const { base } = kindOf(input.quantity);
  return `${Number(value.toPrecision(9))} ${base}`;
}

/** What the file of a shop would say, from the shop as it was read. */
export function fileOf(shop: Shop): ShopFile {
  const line = (columns: Readonly<Record<string, Input>>, row: ShopFile) =>
    Object.fromEntries(
      Object.entries(columns).flatMap(([key, cell]) => (row[key] === undefined ? [] : [[key, written(cell, row[key])]])),
    );
  const list = (input: ListInput, rows: readonly unknown[]) => {
    const [plain] = Object.values(input.columns);
    return rows.map((row) => (input.plain && plain ? written(plain, row) : line(input.columns, row as ShopFile)));
  };
  const file: Record<string, unknown> = { version: shopVersion };
  for (const [field, input] of Object.entries(shopInputs)) {
    const path = field.split(".");
    const value = at(shop, path);
    if (value === undefined) continue;
    const last = path.pop() as string;
    let group = file;
    for (const key of path) {
      group[key] ??= {};
      group = group[key] as Record<string, unknown>;
    }
    group[last] = input.kind === "list" ? list(input, value as readonly unknown[]) : written(input, value);
  }
  return file;
}

/** Puts a value into a copy of a file, with the groups on the way to it. */
function withValue(file: ShopFile, [head = "", ...rest]: readonly string[], value: unknown): ShopFile {
  const inner = file[head];
  return { ...file, [head]: rest.length === 0 ? value : withValue((inner ?? {}) as ShopFile, rest, value) };
}

/** A file with everything that it must have but leaves out taken from another: what is new in the handbook since it was written. */
export function filledFrom(file: ShopFile, own: ShopFile): ShopFile {
  let filled = file;
  for (const [field, input] of Object.entries(shopInputs)) {
    const path = field.split(".");
    if (!isOptional(input) && at(filled, path) === undefined && at(own, path) !== undefined)
      filled = withValue(filled, path, at(own, path));
  }
  return filled;
}
