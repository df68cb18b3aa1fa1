import { expect, test } from "vitest";
import { dataFiles } from "../../src/catalogue/data-files.ts";
import { readCatalogue } from "../../src/catalogue/read-catalogue.ts";
import { onDisk, testShop } from "./test-shop.ts";

const shopOf = (text: string) => readCatalogue({ ...onDisk, shop: text }).shop;

/** The message about one changed line of the shop's file. */
function faultAfter(from: string, to: string): string {
  expect(testShop).toContain(from);
  try {
    shopOf(testShop.replace(from, to));
  } catch (error) {
    return (error as Error).message.replace(new RegExp(`^${dataFiles.shop}:\\d+ `), "");
  }
  return "";
}

test("shear, corner cutter and band saw are read into base units", () => {
  const { shear, cornerCutter, bandSaw } = shopOf(testShop);
  expect(shear).toEqual({
    name: "Shear A",
    rating: { material: "steel-cr", thickness: 1.5, length: 1000 },
    rake: 2,
    cuttingLength: 1016,
    shortestStop: 0,
    longestStop: 500,
    shortestPiece: 50.8,
    guardOpening: 6,
    guardDistance: 20,
  });
  expect(cornerCutter).toEqual({
    name: "Corner cutter A",
    rating: { material: "stainless-304", thickness: 1.2 },
    largestSide: 127,
  });
  expect(bandSaw.bands).toEqual([
    { teeth: 18, width: 12.7 },
    { teeth: 32, width: 5 },
  ]);
  expect(bandSaw.slowest).toBeCloseTo(24.384, 9);
});

test.each([
  ["rake: 2 deg", "rake: 12 deg", "shear.rake: 12 deg; allowed is 0° to 10°"],
  ["cuttingLength: 40 in", "cuttingLength: 40", "shear.cuttingLength: 40 has no unit"],
  ["shortestStop: 0 mm", "shortestStop: 500 mm", "shear.shortestStop: must be less than longestStop"],
  ["teeth: 18,", "teeth: 18.5,", "bandSaw.bands.0.teeth: 18.5; allowed is a whole number from 3 to 40"],
  ["slowest: 80 ft/min", "slowest: 120 m/min", "bandSaw.slowest: must not be above fastest"],
  ["coolant: no", "coolant: perhaps", "bandSaw.coolant: perhaps; allowed is yes, no"],
  ["largestSide: 5 in", "largestSide: 5 m", "cornerCutter.largestSide: 5 m; allowed is 10 mm to 500 mm"],
])("%s changed to %s is refused", (from, to, message) => {
  expect(faultAfter(from, to)).toContain(message);
});
