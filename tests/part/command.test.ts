import { spawnSync } from "node:child_process";
import { describe, expect, test } from "vitest";

function plan(input: string) {
  return spawnSync(process.execPath, ["scripts/plan.ts", "-"], { input, encoding: "utf8" });
}

describe("npm run -s plan", () => {
  test("prints the plan as JSON", () => {
    const { status, stdout, stderr } = plan(
      JSON.stringify({
        thickness: "1mm",
        radius: "1mm",
        kFactor: "0.5",
        base: { width: "80mm", depth: "50mm" },
        sides: { north: [{ leg: "25mm" }] },
      }),
    );
    expect(stderr).toBe("");
    expect(status).toBe(0);
    const printed = JSON.parse(stdout);
    expect(Object.keys(printed)).toEqual(
      expect.arrayContaining(["blank", "outline", "bends", "scribe", "holes", "checks", "practice", "uncertainty", "steps"]),
    );
    expect(printed.blank.depth).toBeCloseTo(75 - (4 - (Math.PI / 2) * 1.5), 9);
    expect(printed.bends[0]).toMatchObject({ id: "north.1", side: "north", angle: 90, way: "up" });
  });

  test("refuses a bad value with exit 2 and one error on stderr", () => {
    const { status, stdout, stderr } = plan('{"thickness":"-1mm"}');
    expect(status).toBe(2);
    expect(stdout).toBe("");
    expect(JSON.parse(stderr)).toEqual({
      error: { field: "thickness", value: "-1mm", message: "Thickness must be from 0.10 mm to 13.00 mm; it is −1.00 mm." },
    });
  });
});
