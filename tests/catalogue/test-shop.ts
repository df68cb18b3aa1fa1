import { readFileSync } from "node:fs";
import type { DataFileName } from "../../src/catalogue/data-files.ts";
import { dataFilePaths } from "../../src/catalogue/load.ts";
import { readCatalogue } from "../../src/catalogue/read-catalogue.ts";
import { DataError } from "../../src/catalogue/read-yaml.ts";

/** A small shop file with one entry of everything. */
export const testShop = `name: Test shop
brake:
  name: Brake A
  rating: { material: steel-cr, thickness: 1.6 mm, length: 1250 mm }
  fingers: [25 mm, 2 in]
  fingerHeight: 110 mm
  noseRadius: 1 mm
  shortestLeg: 8 mm
  longestLeg: 600 mm
  largestSwing: 135 deg
  fingerLean: 47 deg
  fingerDepth: 2 in
  fingerTop: 155 mm
  beamSetback: 100 mm
  beamDepth: 80 mm
  beamHeight: 90 mm
  bedDepth: 120 mm
  bedHeight: 90 mm
  bedNose: 20 mm
  leafWidth: 35 mm
  leafThickness: 20 mm
  clampOpening: 40 mm
  clearance: 1 mm
  shortestHold: 10 mm
  bareEnd: 20 mm
shear:
  name: Shear A
  rating: { material: steel-cr, thickness: 1.5 mm, length: 1000 mm }
  rake: 2 deg
  cuttingLength: 40 in
  shortestStop: 0 mm
  longestStop: 500 mm
  shortestPiece: 2 in
  guardOpening: 6 mm
  guardDistance: 20 mm
cornerCutter:
  name: Corner cutter A
  rating: { material: stainless-304, thickness: 1.2 mm }
  largestSide: 5 in
bandSaw:
  name: Band saw A
  throat: 16 in
  bands:
    - { teeth: 18, width: 1/2 in }
    - { teeth: 32, width: 5 mm }
  slowest: 80 ft/min
  fastest: 100 m/min
  coolant: no
punch:
  name: Punch A
  force: 30 kN
  throat: 200 mm
  punches:
    - { shape: round, diameter: 1/4 in, die: A }
    - { shape: rectangle, width: 10 mm, height: 4 mm, die: B }
  dies:
    - { letter: A, shape: round, diameter: 6.5 mm }
    - { letter: B, shape: rectangle, width: 10.1 mm, height: 4.1 mm }
rolls:
  name: Rolls A
  rating: { material: steel-galv, thickness: 20 ga, length: 900 mm }
  width: 915 mm
  frontRoll: 2 in
  rearRoll: 50 mm
  spacing: 55 mm
  screwPitch: 1.5 mm
  smallestDiameter: 80 mm
  risePerPass: 2 mm
welder:
  name: Welder A
  power: 12 kVA
  largestForce: 250 lbf
  largestCurrent: 6500 A
  tipFace: 3/16 in
  throat: 200 mm
  thinnest: 0.5 mm
  thickest: 1.2 mm
  time: timer
furnaces:
  - { name: Furnace A, hottest: 1900 °F, control: 15, width: 8 in, height: 120 mm, depth: 250 mm }
stock:
  - { material: steel-cr, thickness: 0.8 mm, width: 1000 mm, length: 2000 mm }
  - { material: al-3003-h14, thickness: 16 ga, width: 48 in, length: 96 in }
bends:
  - { material: steel-cr, thickness: 1.2 mm, radius: 1.2 mm, angle: 90 deg, deduction: 2.17 mm, uncertainty: 0.08 mm, pieces: 6, date: 2026-09-14 }
`;

/** Every data file as it stands on disk. */
export const onDisk = Object.fromEntries(
  Object.entries(dataFilePaths()).map(([name, path]) => [name, readFileSync(path, "utf8")]),
) as Record<DataFileName, string>;

/** Messages after one change of the shop's file, without file and line. */
export function faultsAfter(from: string, to: string): string[] {
  if (!testShop.includes(from)) throw new Error(`the test shop has no “${from}”`);
  try {
    readCatalogue({ ...onDisk, shop: testShop.replace(from, () => to) });
  } catch (error) {
    if (error instanceof DataError) return error.message.split("\n").map((line) => line.replace(/^\S+:\d+ /, ""));
    throw error;
  }
  return [];
}
