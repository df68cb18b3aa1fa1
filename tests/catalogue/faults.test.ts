import { expect, test } from "vitest";
import { type DataFileName, dataFiles } from "../../src/catalogue/data-files.ts";
import { readCatalogue } from "../../src/catalogue/read-catalogue.ts";
import { DataError } from "../../src/catalogue/read-yaml.ts";
import { onDisk, testShop } from "./test-shop.ts";

/** A shop of the tests' own: the real file is the instructor's to change. */
const texts = { ...onDisk, shop: testShop };

interface Change {
  readonly file: DataFileName;
  readonly from: string;
  readonly to: string;
}

/** Messages of the catalogue after the changes, and the place `file:line` where each first change is. */
function faultsAfter(...changes: Change[]): { messages: string[]; places: string[] } {
  const changed: Record<DataFileName, string> = { ...texts };
  const places: string[] = [];
  for (const { file, from, to } of changes) {
    const at = changed[file].indexOf(from);
    if (at < 0) throw new Error(`${dataFiles[file]} has no “${from}”`);
    places.push(`${dataFiles[file]}:${changed[file].slice(0, at).split("\n").length}`);
    changed[file] = changed[file].replace(from, () => to);
  }
  try {
    readCatalogue(changed);
  } catch (error) {
    if (error instanceof DataError) return { messages: error.message.split("\n"), places };
    throw error;
  }
  return { messages: [], places };
}

/** The one message after one change, without its place, which must be the line that was changed. */
function faultAfter(file: DataFileName, from: string, to: string): string {
  const { messages, places } = faultsAfter({ file, from, to });
  expect(messages).toHaveLength(1);
  const [message = ""] = messages;
  const [place = ""] = places;
  expect(message.startsWith(`${place} `), `${message} should begin with ${place}`).toBe(true);
  return message.slice(place.length + 1);
}

test("the files as they are have no fault", () => {
  expect(() => readCatalogue(onDisk)).not.toThrow();
  expect(faultsAfter().messages).toEqual([]);
});

test("a shop's file is read into base units, gauge numbers by the list of their metal", () => {
  const { brake, stock, bends } = readCatalogue(texts).shop;
  expect(brake).toEqual({
    name: "Brake A",
    rating: { material: "steel-cr", thickness: 1.6, length: 1250 },
    fingers: [25, 50.8],
    fingerHeight: 110,
    noseRadius: 1,
    shortestLeg: 8,
    longestLeg: 600,
    largestSwing: 135,
    fingerLean: 47,
    fingerDepth: 50.8,
    fingerTop: 155,
    beamSetback: 100,
    beamDepth: 80,
    beamHeight: 90,
    bedDepth: 120,
    bedHeight: 90,
    bedNose: 20,
    leafWidth: 35,
    leafThickness: 20,
    clampOpening: 40,
    clearance: 1,
    shortestHold: 10,
    bareEnd: 20,
  });
  const gauged = stock[1];
  expect(gauged?.thickness).toBeCloseTo(0.0508 * 25.4, 9);
  expect(gauged?.width).toBeCloseTo(48 * 25.4, 9);
  expect(bends).toEqual([
    {
      material: "steel-cr",
      thickness: 1.2,
      radius: 1.2,
      angle: 90,
      deduction: 2.17,
      uncertainty: 0.08,
      pieces: 6,
      date: "2026-09-14",
    },
  ]);
});

test("a value out of range names file, line, field, value and what is allowed", () => {
  expect(faultAfter("shop", "thickness: 1.6 mm, length: 1250 mm", "thickness: 0 mm, length: 1250 mm")).toBe(
    "brake.rating.thickness: 0 mm; allowed is 0.3 mm to 6 mm",
  );
  expect(faultAfter("shop", "largestSwing: 135 deg", "largestSwing: 200°")).toBe(
    "brake.largestSwing: 200°; allowed is 45° to 180°",
  );
  expect(faultAfter("shop", "pieces: 6", "pieces: 0")).toBe("bends.0.pieces: 0; allowed is a whole number from 1 to 1000");
  expect(faultAfter("materials", "density: { value: 7850", "density: { value: 78")).toBe(
    "steel-cr.density.value: 78 kg/m³; allowed is 1000 kg/m³ to 25000 kg/m³",
  );
});

test("a quantity without its unit, or with words in its place, is refused", () => {
  expect(faultAfter("shop", "fingerHeight: 110 mm", "fingerHeight: 110")).toBe(
    "brake.fingerHeight: 110 has no unit; write it like 1.2 mm, 0.048 in or 3/64 in",
  );
  expect(faultAfter("shop", "fingerHeight: 110 mm", "fingerHeight: high")).toBe(
    "brake.fingerHeight: “high” is not a length. Write it like 1.2 mm, 0.048 in or 3/64 in.",
  );
  expect(faultAfter("shop", "noseRadius: 1 mm", "noseRadius: [1 mm]")).toBe("brake.noseRadius: must be a quantity like 1.2 mm");
});

test("a gauge number that the metal's list does not have is refused", () => {
  expect(faultAfter("shop", "thickness: 16 ga", "thickness: 77 ga")).toBe(
    "stock.1.thickness: Brown & Sharpe gauge has no number 77; it runs from 6/0 to 38.",
  );
  expect(faultAfter("shop", "{ material: al-3003-h14, thickness: 16 ga", "{ material: titanium-2, thickness: 16 ga")).toBe(
    "stock.1.thickness: No gauge list is kept for Titanium grade 2 (annealed). Write the thickness in mm or inches.",
  );
});

test("a syntax error names the line", () => {
  expect(faultAfter("shop", "rating: {", "rating: ")).toBe(
    "the line has a colon too many, or an opening bracket or quote is missing; put text with a colon in quotes",
  );
  expect(faultAfter("shop", "largestSwing: 135", "largestSwing 135")).toBe("the colon after the name is missing");
  expect(faultAfter("shop", "stock:", "stock")).toBe("the colon after the name is missing");
  expect(faultAfter("materials", "  family: carbon-steel", "\tfamily: carbon-steel")).toBe(
    "the line is indented with a tab; use spaces",
  );
});

test("a key that is there twice names the second", () => {
  const from = "  noseRadius: 1 mm";
  const { messages, places } = faultsAfter({
    file: "shop",
    from: `${from}\n  shortestLeg`,
    to: `${from}\n${from}\n  shortestLeg`,
  });
  const [file, line] = (places[0] ?? "").split(":");
  expect(messages).toEqual([`${file}:${Number(line) + 1} “noseRadius” is there twice`]);
});

test("a misspelt key is named with the ones that are known", () => {
  const { messages } = faultsAfter({ file: "shop", from: "fingerHeight: 110 mm", to: "fingerHieght: 110 mm" });
  expect(messages).toEqual([
    expect.stringMatching(/shop\.yaml:\d+ brake\.fingerHeight: is missing$/),
    expect.stringMatching(
      /shop\.yaml:\d+ brake\.fingerHieght: is not a name that is known here; known are name, rating, fingers, fingerHeight,/,
    ),
  ]);
  expect(
    faultAfter(
      "materials",
      "basis: typical, source: asm-handbook-1, seen: memory, note:",
      "basis: typical, source: asm-handbook-1, seen: memory, notes:",
    ),
  ).toMatch(/^steel-cr\.density\.notes: is not a name that is known here; known are value, low, high,/);
});

test("an empty and a missing value are told apart", () => {
  expect(faultAfter("shop", "name: Test shop", "name:")).toBe("name: is empty");
  expect(faultsAfter({ file: "shop", from: "  shortestLeg: 8 mm\n", to: "" }).messages).toEqual([
    expect.stringMatching(/shop\.yaml:\d+ brake\.shortestLeg: is missing$/),
  ]);
});

test("a reference to something that is not there names what is", () => {
  expect(faultAfter("materials", "thicknessTolerance: en-10131-normal", "thicknessTolerance: en-10131")).toMatch(
    /^steel-cr\.thicknessTolerance: en-10131 is not in src\/content\/thickness-tolerances\.yaml; known are en-10131-normal,/,
  );
  expect(faultAfter("materials", "gaugeSystem: stainless", "gaugeSystem: stainles")).toMatch(
    /^stainless-304\.gaugeSystem: stainles is not in src\/content\/gauges\.yaml; known are us-standard,/,
  );
  expect(faultAfter("materials", "row: 1100-H14", "row: 1100-H15")).toMatch(
    /^al-1100-h14\.smallestRadius\.row: 1100-H15 is not in /,
  );
  expect(faultAfter("shop", "- { material: steel-cr, thickness: 0.8 mm", "- { material: steel-cold, thickness: 0.8 mm")).toMatch(
    /^stock\.0\.material: steel-cold; allowed is steel-cr, steel-dc04,/,
  );
});

test("an unknown source is found at any depth, in every file", () => {
  const message = (id: string) => `${id} is not in src/content/sources.yaml`;
  expect(
    faultAfter(
      "materials",
      "value: 340, low: 270, high: 410, basis: middle of the specified range, source: en-10130",
      "value: 340, low: 270, high: 410, basis: middle of the specified range, source: en-1013",
    ),
  ).toBe(`steel-cr.tensileStrength.source: ${message("en-1013")}`);
  expect(faultAfter("gauges", "source: us-code-15-206", "source: us-code")).toBe(`us-standard.source: ${message("us-code")}`);
  expect(faultAfter("thicknessTolerances", "source: en-10259", "source: en-1")).toBe(`en-10259.source: ${message("en-1")}`);
  expect(faultAfter("smallestRadii", "source: aluminium-radius-table", "source: table")).toContain(
    `alloy.source: ${message("table")}`,
  );
  expect(faultAfter("generalTolerances", "source: iso-2768-1", "source: iso")).toBe(`linear.source: ${message("iso")}`);
  expect(faultAfter("marking", "source: virginia-cte-machining", "source: virginia")).toBe(
    `combination-square.source: ${message("virginia")}`,
  );
  expect(faultAfter("cautions", "source: common-practice\n", "source: nobody\n")).toBe(
    `defer-to-manual.source: ${message("nobody")}`,
  );
});

test("values that contradict each other are refused", () => {
  expect(faultAfter("materials", "value: 340, low: 270", "value: 260, low: 270")).toBe(
    "steel-cr.tensileStrength.value: 260; must lie in its band, 270 to 410",
  );
  expect(faultAfter("materials", "yield: { value: 34,", "yield: { value: 340,")).toBe(
    "al-1100-o.yield.value: must be below the tensile strength",
  );
  expect(faultAfter("gauges", "- [15, 0.0673]", "- [15, 0.763]")).toBe(
    "manufacturers-standard.rows.12: [15, 0.763] must have a higher number and be thinner than [14, 0.0747] before it",
  );
  expect(faultAfter("thicknessTolerances", "above: 0.60, upTo: 0.80", "above: 0.70, upTo: 0.80")).toBe(
    "en-10131-normal.bands.2: begins at 0.7, but the band before ends at 0.6",
  );
  expect(faultAfter("smallestRadii", "1100-O: [0, ", "1100-O: [")).toBe(
    "alloy.rows.1100-O: has 7 cells; the table has 8 columns",
  );
  expect(faultAfter("shop", "shortestLeg: 8 mm\n  longestLeg: 600 mm", "shortestLeg: 80 mm\n  longestLeg: 60 mm")).toBe(
    "brake.shortestLeg: must be less than longestLeg",
  );
  // Square bend about 1.2 mm: 2 (1.2 + 1.2) less a quarter turn about 2.4 mm, and about 1.2 mm.
  expect(faultAfter("shop", "deduction: 2.17 mm", "deduction: 21.7 mm")).toBe(
    "bends.0.deduction: 21.7 mm; allowed is 1.03 mm to 2.92 mm for a bend of this thickness, radius and angle",
  );
});

test("all faults of all files come in one error", () => {
  const { messages, places } = faultsAfter(
    { file: "shop", from: "fingerHeight: 110 mm", to: "fingerHeight: 1 km" },
    { file: "shop", from: "largestSwing: 135 deg", to: "largestSwing: 10 deg" },
    { file: "marking", from: "error: 0.5", to: "error: half" },
    { file: "materials", from: "family: stainless", to: "family: steel" },
  );
  expect(messages).toHaveLength(4);
  for (const place of places)
    expect(
      messages.some((message) => message.startsWith(`${place} `)),
      place,
    ).toBe(true);
});
