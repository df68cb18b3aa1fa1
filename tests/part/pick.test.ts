import fc from "fast-check";
import { expect, test } from "vitest";
import { loadCatalogue } from "../../src/catalogue/load.ts";
import type { FlatLayout } from "../../src/lib/part/flatten.ts";
import { pick, toPanel } from "../../src/lib/part/pick.ts";
import { planFrom } from "../../src/lib/part/plan.ts";
import { down, form, up } from "./samples.ts";

const catalogue = loadCatalogue();

function layoutOf(holes: readonly { panel: string; x: string; y: string; diameter: string }[]): FlatLayout {
  const { plan, problems } = planFrom(
    form({
      width: "120mm",
      depth: "90mm",
      north: [up("30mm"), down("20mm")],
      south: [up("30mm")],
      east: [up("25mm")],
      west: [up("25mm", "60deg"), up("15mm")],
      holes,
    }),
    catalogue,
  );
  expect(problems.map(({ message }) => message)).toEqual([]);
  if (!plan?.layout) throw new Error("no layout");
  return plan.layout;
}

test("a place picked on the blank is where a hole with those numbers is laid out, on every panel", () => {
  const panels = ["base", "north.1", "north.2", "south.1", "east.1", "west.1", "west.2"];
  fc.assert(
    fc.property(
      fc.constantFrom(...panels),
      fc.double({ min: 20, max: 70, noNaN: true }),
      fc.double({ min: 5, max: 9, noNaN: true }),
      (panel, x, y) => {
        const layout = layoutOf([{ panel, x: `${x}mm`, y: `${y}mm`, diameter: "1mm" }]);
        const [hole] = layout.holes;
        if (!hole) throw new Error("no hole");
        const point = { x: hole.flatX, y: hole.flatY };
        const back = toPanel(layout, panel, point);
        expect(back?.x).toBeCloseTo(x, 9);
        expect(back?.y).toBeCloseTo(y, 9);
        const picked = pick(layout, point);
        expect(picked?.panel).toBe(panel);
        expect(picked?.y).toBeCloseTo(y, 9);
      },
    ),
    { numRuns: 150 },
  );
});

test("beside the metal, in a notch, there is no panel", () => {
  expect(pick(layoutOf([]), { x: 1, y: 1 })).toBeUndefined();
  expect(toPanel(layoutOf([]), "north.7", { x: 1, y: 1 })).toBeUndefined();
});
