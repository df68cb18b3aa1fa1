import { expect, test } from "vitest";
import { faultsAfter } from "./test-shop.ts";

test.each([
  ["fingerLean: 47 deg", "fingerLean: 85 deg", "brake.fingerLean: 85 deg; allowed is 0° to 80°"],
  [
    "fingerLean: 47 deg",
    "fingerLean: 40 deg",
    "brake.fingerLean: 40° stops the leaf at 130°; it must be at least largestSwing less 90°, 45°",
  ],
  ["fingerTop: 155 mm", "fingerTop: 115 mm", "brake.fingerTop: must be more than 118.0 mm"],
  ["fingerDepth: 2 in", "fingerDepth: 7 in", "brake.fingerDepth: must not be above fingerTop"],
  ["beamSetback: 100 mm", "beamSetback: 155 mm", "brake.beamSetback: must be less than fingerTop"],
  ["bedNose: 20 mm", "bedNose: 91 mm", "brake.bedNose: must not be above bedHeight"],
  ["beamHeight: 90 mm", "beamHeight: 90", "brake.beamHeight: 90 has no unit"],
  ["bedDepth: 120 mm", "bedDepth: 12 m", "brake.bedDepth: 12 m; allowed is 10 mm to 2000 mm"],
  ["leafWidth: 35 mm", "leafWidth: 2 mm", "brake.leafWidth: 2 mm; allowed is 5 mm to 500 mm"],
  ["clampOpening: 40 mm", "clampOpening: 0 mm", "brake.clampOpening: 0 mm; allowed is 1 mm to 500 mm"],
  ["clearance: 1 mm", "clearance: -1 mm", "brake.clearance: -1 mm; allowed is 0 mm to 20 mm"],
  ["bareEnd: 20 mm", "bareEnds: 20 mm", "brake.bareEnds: is not a name that is known here"],
])("%s changed to %s is refused", (from, to, message) => {
  expect(faultsAfter(from, to).some((fault) => fault.startsWith(message))).toBe(true);
});
