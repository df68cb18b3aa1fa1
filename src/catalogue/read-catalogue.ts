import type { z } from "zod";
import type { Catalogue } from "../lib/catalogue.ts";
import { readShop } from "../lib/shop/read-shop.ts";
import { gaugeReader } from "../lib/stock/gauge.ts";
import { type DataFileName, dataFiles } from "./data-files.ts";
import { DataError, type DataFile, type Fault, parseYaml, readYaml } from "./read-yaml.ts";
import {
  cautionsSchema,
  gaugesSchema,
  generalTolerancesSchema,
  markingSchema,
  materialsSchema,
  smallestRadiiSchema,
  sourcesSchema,
  thicknessTolerancesSchema,
} from "./schemas.ts";

function withIds<Id extends string, T extends object>(all: Readonly<Record<Id, T>>): Record<Id, T & { id: Id }> {
  const entries = Object.entries<T>(all).map(([id, each]) => [id, { id, ...each }]);
  return Object.fromEntries(entries) as Record<Id, T & { id: Id }>;
}

/** Reports every `source` at any depth that the bibliography does not have. */
function checkSources(file: DataFile<object>, known: object, value: unknown = file.data, path: PropertyKey[] = []): void {
  if (typeof value !== "object" || value === null) return;
  for (const [key, inner] of Object.entries(value)) {
    if (key === "source" && !Object.hasOwn(known, inner)) file.fault([...path, key], `${inner} is not in ${dataFiles.sources}`);
    else checkSources(file, known, inner, [...path, key]);
  }
}

/** Reports a reference to an entry that its file does not have. */
function checkReference(
  file: DataFile<object>,
  path: string[],
  id: string | undefined,
  known: object,
  where: DataFileName,
): void {
  if (id !== undefined && !Object.hasOwn(known, id))
    file.fault(path, `${id} is not in ${dataFiles[where]}; known are ${Object.keys(known).join(", ")}`);
}

/**
 * The catalogue from the text of its data files.
 * @throws DataError listing every mistake in them, with file and line
 */
export function readCatalogue(texts: Readonly<Record<DataFileName, string>>): Catalogue {
  const faults: Fault[] = [];
  const read = <T>(name: DataFileName, schema: z.ZodType<T>) => readYaml(dataFiles[name], texts[name], schema, faults);

  const sources = read("sources", sourcesSchema);
  const cautions = read("cautions", cautionsSchema);
  const materials = read("materials", materialsSchema);
  const gauges = read("gauges", gaugesSchema);
  const tolerances = read("thicknessTolerances", thicknessTolerancesSchema);
  const radii = read("smallestRadii", smallestRadiiSchema);
  const general = read("generalTolerances", generalTolerancesSchema);
  const marking = read("marking", markingSchema);

  if (sources.data) {
    // The readers of these two files move things about, so the walk would not find the line: they name it themselves.
    for (const file of [cautions, materials, gauges, tolerances, general, marking]) checkSources(file, sources.data);
    if (radii.data)
      for (const [key, { source }] of Object.entries({ strength: radii.data.radiusByStrength, alloy: radii.data.radiusByAlloy }))
        checkReference(radii, [key, "source"], source, sources.data, "sources");
  }
  for (const [id, { gaugeSystem, thicknessTolerance, smallestRadius }] of Object.entries(materials.data ?? {})) {
    if (gauges.data) checkReference(materials, [id, "gaugeSystem"], gaugeSystem, gauges.data, "gauges");
    if (tolerances.data)
      checkReference(materials, [id, "thicknessTolerance"], thicknessTolerance, tolerances.data, "thicknessTolerances");
    if (radii.data && smallestRadius.by === "alloy-table")
      checkReference(
        materials,
        [id, "smallestRadius", "row"],
        smallestRadius.row,
        radii.data.radiusByAlloy.rows,
        "smallestRadii",
      );
  }

  const lists = materials.data && gauges.data && { materials: withIds(materials.data), gaugeSystems: withIds(gauges.data) };
  const shopFile = parseYaml(dataFiles.shop, texts.shop, faults);
  // Without the lists no gauge number can be judged; their own mistakes are reported already.
  const shop =
    shopFile.value === undefined
      ? undefined
      : readShop(shopFile.value, (material) => (lists ? gaugeReader(lists, material) : () => 1));
  for (const { path, message } of shop?.faults ?? []) shopFile.fault(path, message);

  if (
    faults.length > 0 ||
    !(lists && sources.data && cautions.data && tolerances.data) ||
    !(radii.data && general.data && marking.data && shop?.shop)
  )
    throw new DataError(faults);
  return {
    ...lists,
    thicknessTolerances: withIds(tolerances.data),
    ...radii.data,
    generalTolerances: general.data,
    markingMethods: withIds(marking.data),
    cautions: withIds(cautions.data),
    sources: withIds(sources.data),
    shop: shop.shop,
  };
}
