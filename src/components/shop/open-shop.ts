import { type Fault, parseYaml } from "../../catalogue/read-yaml.ts";
import type { Catalogue } from "../../lib/catalogue.ts";
import { fileOf, filledFrom, type ShopFile, shopInputs } from "../../lib/shop/form.ts";
import { readShop } from "../../lib/shop/read-shop.ts";
import { gaugeReader } from "../../lib/stock/gauge.ts";
import type { shop } from "../../texts/en/shop.ts";

/** Reads a shop's file that somebody chose. The parser of YAML is large: this comes only when a file is opened. */

/** Ten times what a shop needs; the parser takes seconds for some texts that are longer. */
const longest = 100_000;

/** Nobody mends more at a time, and finding the line of each takes its time. */
const mostFaults = 50;

export interface OpenedShop {
  /** Only when it can be used. */
  readonly file?: ShopFile;
  /** Places that the file leaves out and that were filled from the shop's own, as `brake.noseRadius`. */
  readonly filled: readonly string[];
  /** What is wrong, each with its line. */
  readonly faults: readonly string[];
}

function valueAt(file: unknown, path: readonly string[]): unknown {
  return path.reduce<unknown>((value, key) => (value as Record<string, unknown> | undefined)?.[key], file);
}

/** Reads the text of a shop's file, YAML or JSON. */
export function readShopText(
  name: string,
  text: string,
  catalogue: Pick<Catalogue, "materials" | "gaugeSystems" | "shop">,
  { device: texts }: Pick<typeof shop, "device">,
): OpenedShop {
  if (text.length > longest) return { filled: [], faults: [texts.tooLong(text.length, longest)] };
  const faultLine = ({ line, path, message }: Fault) => texts.fault(line, path, message);
  const faults: Fault[] = [];
  const { value, fault } = parseYaml(name, text, faults);
  if (value === undefined) return { filled: [], faults: faults.map(faultLine) };

  const gaugesOf = (material: Parameters<typeof gaugeReader>[1]) => gaugeReader(catalogue, material);
  const first = readShop(value, gaugesOf);
  if (first.shop) return { file: value as ShopFile, filled: [], faults: [] };
  // A file from before a field came in is completed; one that lacks a whole machine is more likely no shop's file.
  const onlyMissing = first.faults.every(({ path, message }) => message === "is missing" && path.length > 1);
  if (onlyMissing) {
    const file = filledFrom(value as ShopFile, fileOf(catalogue.shop));
    if (readShop(file, gaugesOf).shop) {
      const filled = Object.keys(shopInputs).filter(
        (field) => valueAt(value, field.split(".")) === undefined && valueAt(file, field.split(".")) !== undefined,
      );
      return { file, filled, faults: [] };
    }
  }
  for (const { path, message } of first.faults.slice(0, mostFaults)) fault(path, message);
  const unsaid = first.faults.length - mostFaults;
  return { filled: [], faults: [...faults.map(faultLine), ...(unsaid > 0 ? [texts.moreFaults(unsaid)] : [])] };
}
