import { expect, test } from "vitest";
import { worksheetById } from "../../src/lib/registry.ts";
import { propertyInputs } from "../../src/lib/stock/material.ts";

/** Ids and keys that addresses, part files, courses and scripts rely on. */
const overrides = Object.keys(propertyInputs).join(" ");
const contract = [
  ["length-reader", "value denominator material", "mm inch fraction fractionError gauges"],
  [
    "bend-length",
    `material thickness radius angle method kFactor hardness deduction legTo legs ${overrides}`,
    "allowance setback deduction kFactor blank",
  ],
  ["practice-pieces", "thickness radius angle legTo pieces", "deduction spread uncertainty allowance kFactor count"],
  ["smallest-radius", `material thickness ${overrides}`, "radius ratio"],
  ["springback", `material thickness radius angle ${overrides}`, "toolRadius swingAngle overbend ratio"],
  ["brake-load", `material thickness length ${overrides}`, "moment capacityUsed"],
  ["folded-edge", "kind thickness width gap", "allowance turns"],
  ["punch-load", `material thickness shape diameter width height ${overrides}`, "perimeter force strippingForce work"],
  ["die-fit", `material thickness diameter ${overrides}`, "clearancePerSide dieDiameter"],
  [
    "hole-place",
    `material thickness diameter edgeDistance holeSpacing bendDistance radius ${overrides}`,
    "minEdge minSpacing minBend minDiameter ok",
  ],
  ["finger-set", "boxWidth fingers gap", "chosen total clearance"],
  ["rolled-blank", "diameter measured thickness arc seam", "blank"],
  // Trial pieces, flat ends, the smallest diameter and the passes go beyond the contract's first list.
  [
    "roll-setting",
    `material thickness radius frontRoll rearRoll rollSpacing screwPitch trials ${overrides}`,
    "rearRollRise loadedRadius turns flatEnd smallestDiameter passes",
  ],
  ["cone-blank", "largeDiameter smallDiameter height thickness", "outerRadius innerRadius sectorAngle chord"],
  [
    "spot-setting",
    `material thickness otherThickness regime ${overrides}`,
    "tipFace forceMin forceMax currentMin currentMax timeMin timeMax nugget minPitch minLap shearStrength",
  ],
  ["weld-pair", "materialA materialB", "verdict reasons instead"],
  ["spot-joint", `material thickness otherThickness load safetyFactor ${overrides}`, "spots pitch edge lap"],
  [
    "rivet-joint",
    `material thicknessA thicknessB load safetyFactor rivetDiameter rivetShearStress ${overrides}`,
    "diameter grip length pitch edge count",
  ],
  ["seam-allowance", "kind width thickness", "allowance sideA sideB"],
  ["anneal", `material ${overrides}`, "temperature time cooling note"],
] as const;

const sorted = (words: Iterable<string>) => [...words].sort();

test.each(contract)("%s has exactly the inputs and outputs of the contract", (id, inputs, outputs) => {
  const sheet = worksheetById(id);
  expect(sorted(Object.keys(sheet?.inputs ?? {}))).toEqual(sorted(inputs.split(" ")));
  expect(sorted(Object.keys(sheet?.outputs ?? {}))).toEqual(sorted(outputs.split(" ")));
});

test("the rows of lists have the cells of the contract", () => {
  const cells = (id: string, key: string) => {
    const sheet = worksheetById(id);
    const list = sheet?.inputs[key] ?? sheet?.outputs[key];
    return list?.kind === "list" ? Object.keys(list.columns) : [];
  };
  expect(cells("practice-pieces", "pieces")).toEqual(["flat", "legA", "legB"]);
  expect(sorted(cells("folded-edge", "turns"))).toEqual(["angle", "how", "line", "radius", "turn"]);
  expect(cells("finger-set", "fingers")).toHaveLength(1);
  expect(cells("roll-setting", "trials")).toEqual(["rise", "radius"]);
  expect(cells("length-reader", "gauges")).toEqual(["system", "gauge", "thickness", "difference"]);
});

test("the choices of the contract are there", () => {
  const choices = (id: string, key: string) => {
    const input = worksheetById(id)?.inputs[key];
    return input?.kind === "choice" ? Object.keys(input.choices) : [];
  };
  expect(choices("folded-edge", "kind")).toEqual(["closed", "open", "teardrop", "double"]);
  expect(choices("practice-pieces", "legTo")).toEqual(["apex", "tangent"]);
  expect(choices("bend-length", "method")).toEqual(["neutral-line", "faa-handbook", "din-6935", "soft-medium-hard", "measured"]);
  expect(choices("bend-length", "hardness")).toEqual(["soft", "medium", "hard"]);
  expect(choices("punch-load", "shape")).toEqual(["round", "square", "rectangle"]);
  expect(choices("rolled-blank", "measured")).toEqual(["inside", "outside"]);
  expect(choices("spot-setting", "regime")).toEqual(["medium-force", "high-force"]);
  expect(choices("seam-allowance", "kind")).toEqual(["lap", "grooved", "standing"]);
});
