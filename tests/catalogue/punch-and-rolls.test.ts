import { expect, test } from "vitest";
import { readCatalogue } from "../../src/catalogue/read-catalogue.ts";
import { faultsAfter, onDisk, testShop } from "./test-shop.ts";

test("punches, dies and rolls are read into base units", () => {
  const { punch, rolls } = readCatalogue({ ...onDisk, shop: testShop }).shop;
  expect(punch).toEqual({
    name: "Punch A",
    force: 30_000,
    throat: 200,
    punches: [
      { shape: "round", diameter: 6.35, die: "A" },
      { shape: "rectangle", width: 10, height: 4, die: "B" },
    ],
    dies: [
      { letter: "A", shape: "round", diameter: 6.5 },
      { letter: "B", shape: "rectangle", width: 10.1, height: 4.1 },
    ],
  });
  expect(rolls.frontRoll).toBeCloseTo(50.8, 12);
  // 20 gauge galvanised is 0.0396 in.
  expect(rolls.rating.thickness).toBeCloseTo(0.0396 * 25.4, 9);
});

test("a punch must have a die of its own shape, a little larger", () => {
  expect(faultsAfter("diameter: 1/4 in, die: A", "diameter: 1/4 in, die: Z")).toEqual([
    "punch.punches.0.die: Z is not among the dies; known are A, B",
  ]);
  expect(faultsAfter("diameter: 1/4 in, die: A", "diameter: 1/4 in, die: B")).toEqual([
    "punch.punches.0.die: B is rectangle, the punch is round",
  ]);
  expect(faultsAfter("letter: A, shape: round, diameter: 6.5 mm", "letter: A, shape: round, diameter: 6.3 mm")).toEqual([
    "punch.punches.0.die: A must be larger than its punch, by 2 mm at most",
  ]);
  expect(faultsAfter("letter: B, shape: rectangle, width: 10.1 mm", "letter: A, shape: rectangle, width: 10.1 mm")).toEqual(
    expect.arrayContaining(["punch.dies.1.letter: A is there twice"]),
  );
});

test("a shape or a size that a punch does not have is refused", () => {
  expect(faultsAfter("shape: round, diameter: 1/4 in", "shape: oval, diameter: 1/4 in")).toEqual([
    "punch.punches.0.shape: must be round, square or rectangle",
  ]);
  expect(faultsAfter("shape: round, diameter: 1/4 in", "shape: round, width: 1/4 in")).toEqual(
    expect.arrayContaining([expect.stringMatching(/^punch\.punches\.0\.width: is not a name that is known here/)]),
  );
  expect(faultsAfter("die: A }", "die: a }")).toContain("punch.punches.0.die: must be one or two capital letters");
});

test("a brake has no more fingers than can be searched", () => {
  const many = Array(31).fill("25 mm").join(", ");
  expect(faultsAfter("fingers: [25 mm, 2 in]", `fingers: [${many}]`)).toHaveLength(1);
});
