import { expect, test } from "vitest";
import { toSurface } from "../../../src/lib/part/rolled/pick.ts";
import { cone, hole, rolled, tube } from "./samples.ts";

test.each([
  ["a butted tube", tube()],
  ["a tube with a lap", tube({ seam: "lap", seamWidth: "16mm" })],
  ["a cone", cone()],
  ["a cone with a lap", cone({ seam: "lap", seamWidth: "20mm" })],
])("a place picked on the blank of %s is where a hole with those numbers is laid out", (_, raw) => {
  for (const [x, y] of [
    [60, 40],
    [200, 75],
    [300, 110],
  ] as const) {
    const { sheet } = rolled({ ...raw, holes: [hole(x, y, 4)] });
    const [made] = sheet.holes;
    const back = toSurface(sheet, { x: made?.flatX ?? 0, y: made?.flatY ?? 0 });
    expect(back.x).toBeCloseTo(x, 9);
    expect(back.y).toBeCloseTo(y, 9);
  }
});
