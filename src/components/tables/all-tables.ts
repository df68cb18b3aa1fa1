import type { Catalogue } from "../../lib/catalogue.ts";
import { fractionTable } from "./data/fractions.ts";
import { gaugeTable } from "./data/gauges.ts";
import { chordTable, placeTable } from "./data/hole-circles.ts";
import { materialTable, propertyTable } from "./data/materials.ts";
import { rivetTable } from "./data/rivets.ts";
import { aluminiumRadiusTable, bandRadiusTable, steelRadiusTable } from "./data/smallest-radii.ts";
import { isoSpotTable, scheduleTables } from "./data/spot-settings.ts";
import { angularToleranceTable, linearToleranceTable, thicknessToleranceTables } from "./data/tolerances.ts";
import type { Table } from "./table.ts";

/** The tables of each page below `/tables/`. */
export function tablesByPage(catalogue: Catalogue): Readonly<Record<string, readonly Table[]>> {
  return {
    "/tables/gauges/": [gaugeTable(catalogue)],
    "/tables/materials/": [materialTable(catalogue), propertyTable(catalogue)],
    "/tables/smallest-radii/": [steelRadiusTable(catalogue), aluminiumRadiusTable(catalogue), bandRadiusTable(catalogue)],
    "/tables/spot-settings/": [isoSpotTable(), ...scheduleTables()],
    "/tables/hole-circles/": [chordTable(), placeTable()],
    "/tables/rivets/": [rivetTable()],
    "/tables/fractions/": [fractionTable()],
    "/tables/general-tolerances/": [linearToleranceTable(catalogue), angularToleranceTable(catalogue)],
    "/tables/thickness-tolerances/": thicknessToleranceTables(catalogue),
  };
}

/** Every table; each is a file too. */
export function allTables(catalogue: Catalogue): Table[] {
  return Object.values(tablesByPage(catalogue)).flat();
}
