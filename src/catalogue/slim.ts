import type { Catalogue } from "../lib/catalogue.ts";
import { packGaugeRows } from "./gauge-rows.ts";

/** What only the pages made at build show: they have the whole catalogue. */
const leftOut: ReadonlySet<string> = new Set(["note", "ask", "printed", "rule", "edition", "where", "address"]);

/** Far below a tenth of a micrometre for any sheet, and none of the tails of binary arithmetic. */
const significantDigits = 9;

function slimValue(key: string, value: unknown): unknown {
  if (leftOut.has(key)) return undefined;
  return typeof value === "number" ? Number(value.toPrecision(significantDigits)) : value;
}

function only<T>(all: Readonly<Record<string, T>>, wanted: ReadonlySet<string>): Record<string, T> {
  return Object.fromEntries(Object.entries(all).filter(([id]) => wanted.has(id)));
}

/** Every text under one of the keys, at any depth. */
function textsUnder(keys: ReadonlySet<string>, value: unknown, found: Set<string> = new Set()): Set<string> {
  if (typeof value === "object" && value !== null)
    for (const [key, inner] of Object.entries(value)) {
      if (keys.has(key) && typeof inner === "string") found.add(inner);
      else textsUnder(keys, inner, found);
    }
  return found;
}

/**
 * The catalogue as browsers get it: without notes and addresses, and with only those sources, cautions and tolerance
 * tables that the rest of the data or browser code names.
 *
 * @param named - every id that browser code may ask for
 */
export function slimCatalogue(catalogue: Catalogue, named: ReadonlySet<string>): Catalogue {
  const { sources, cautions, thicknessTolerances, ...data } = catalogue;
  const tables = textsUnder(new Set(["thicknessTolerance"]), data);
  const kept = {
    ...data,
    cautions: only(cautions, named),
    thicknessTolerances: only(thicknessTolerances, new Set([...named, ...tables])),
  };
  const cited = textsUnder(new Set(["source"]), kept);
  const slim = { ...kept, sources: only(sources, new Set([...named, ...cited])) };
  return JSON.parse(JSON.stringify(slim, slimValue));
}

/** Source text of `virtual:catalogue`. @param unpacker - path of gauge-rows.ts as an import of the module */
export function catalogueModuleText(slim: Catalogue, unpacker: string): string {
  const gaugeSystems = Object.fromEntries(
    Object.entries(slim.gaugeSystems).map(([id, system]) => [id, { ...system, rows: packGaugeRows(system.rows) }]),
  );
  return `import { unpackGaugeRows } from ${JSON.stringify(unpacker)};
const catalogue = ${JSON.stringify({ ...slim, gaugeSystems })};
for (const system of Object.values(catalogue.gaugeSystems)) system.rows = unpackGaugeRows(system.rows);
export default catalogue;
`;
}
