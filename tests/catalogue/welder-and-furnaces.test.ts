import { expect, test } from "vitest";
import { readCatalogue } from "../../src/catalogue/read-catalogue.ts";
import { faultsAfter, onDisk, testShop } from "./test-shop.ts";

test("a welder and furnaces are read into base units", () => {
  const { welder, furnaces } = readCatalogue({ ...onDisk, shop: testShop }).shop;
  expect(welder).toMatchObject({ name: "Welder A", power: 12, largestCurrent: 6.5, throat: 200, time: "timer" });
  expect(welder.largestForce).toBeCloseTo(250 * 4.4482216152605, 9);
  expect(welder.tipFace).toBeCloseTo(4.7625, 12);
  expect(furnaces).toHaveLength(1);
  expect(furnaces[0]).toMatchObject({ name: "Furnace A", control: 15, height: 120, depth: 250 });
  expect(furnaces[0]?.hottest).toBeCloseTo((1900 - 32) / 1.8, 9);
});

test("values that cannot be are refused, with what is allowed", () => {
  expect(faultsAfter("time: timer", "time: foot")).toEqual(["welder.time: foot; allowed is finger-switch, timer"]);
  expect(faultsAfter("largestCurrent: 6500 A", "largestCurrent: 6500")).toEqual([
    "welder.largestCurrent: 6500 has no unit; write it like 8 kA or 8000 A",
  ]);
  expect(faultsAfter("largestCurrent: 6500 A", "largestCurrent: 6500 kA")).toEqual([
    "welder.largestCurrent: 6500 kA; allowed is 1 kA to 100 kA",
  ]);
  expect(faultsAfter("thickest: 1.2 mm", "thickest: 0.4 mm")).toEqual(["welder.thinnest: must be less than thickest"]);
  expect(faultsAfter("power: 12 kVA", "power: 12 kW")).toEqual([
    "welder.power: “12 kW” has the unit “kW”, which is not a unit of power here. Write it like 16 kVA.",
  ]);
  expect(faultsAfter("hottest: 1900 °F", "hottest: 19000 °F")).toEqual([
    "furnaces.0.hottest: 19000 °F; allowed is 100 °C to 1800 °C",
  ]);
});

test("a shop may have no furnace, but says so", () => {
  const without = testShop.replace(/furnaces:\n.*\n/, "furnaces: []\n");
  expect(readCatalogue({ ...onDisk, shop: without }).shop.furnaces).toEqual([]);
  expect(faultsAfter("furnaces:", "ovens:").sort()).toEqual([
    expect.stringMatching(/^furnaces: is missing/),
    expect.stringMatching(/^ovens: is not a name that is known here/),
  ]);
});
