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

/** Every table that is a file too, in the order of the pages. */
export function allTables(catalogue: Catalogue): Table[] {
  return [
    gaugeTable(catalogue),
    materialTable(catalogue),
    propertyTable(catalogue),
    steelRadiusTable(catalogue),
    aluminiumRadiusTable(catalogue),
    bandRadiusTable(catalogue),
    isoSpotTable(),
    ...scheduleTables(),
    chordTable(),
    placeTable(),
    rivetTable(),
    fractionTable(),
    linearToleranceTable(catalogue),
    angularToleranceTable(catalogue),
    ...thicknessToleranceTables(catalogue),
  ];
}
