import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fingerSet, mostFingers } from "../../src/lib/bending/finger-set.ts";

/** Widest sum that fits, and the fewest fingers that make it, by trying every set one after another. */
function everySet(fingers: readonly number[], room: number): { width: number; count: number } | undefined {
  let best: { width: number; count: number } | undefined;
  for (let set = 1; set < 2 ** fingers.length; set += 1) {
    const chosen = fingers.filter((_, index) => set & (2 ** index));
    const width = chosen.reduce((sum, finger) => sum + finger, 0);
    if (width > room + 1e-6) continue;
    const wider = !best || width > best.width + 1e-6;
    if (wider || (best && Math.abs(width - best.width) <= 1e-6 && chosen.length < best.count))
      best = { width, count: chosen.length };
  }
  return best;
}

describe("the fingers for a box", () => {
  const round = fc.integer({ min: 1, max: 20 }).map((fives) => 5 * fives);
  const odd = fc.double({ min: 5, max: 90, noNaN: true });
  const fingers = fc.array(fc.oneof(round, odd), { minLength: 1, maxLength: 9 });

  test("no other set fills the width better, and none as wide has fewer fingers", () => {
    fc.assert(
      fc.property(
        fingers,
        fc.double({ min: 10, max: 400, noNaN: true }),
        fc.double({ min: 0, max: 4, noNaN: true }),
        (list, boxWidth, gap) => {
          const best = everySet(list, boxWidth - gap);
          if (!best) {
            expect(() => fingerSet({ boxWidth, fingers: list, gap })).toThrow("Inside width of the box must be at least");
            return;
          }
          const { chosen, total, clearance } = fingerSet({ boxWidth, fingers: list, gap });
          expect(total).toBeCloseTo(best.width, 5);
          expect(chosen).toHaveLength(best.count);
          expect(total + clearance).toBeCloseTo(boxWidth, 9);
          expect(clearance).toBeGreaterThanOrEqual(gap - 1e-5);
          // Every finger chosen is on the list, as often as it is taken.
          const rest = [...list];
          for (const finger of chosen) {
            const at = rest.indexOf(finger);
            expect(at).toBeGreaterThanOrEqual(0);
            rest.splice(at, 1);
          }
        },
      ),
      { numRuns: 200 },
    );
  });

  test("the order of the list does not matter", () => {
    fc.assert(
      fc.property(fingers, fc.double({ min: 100, max: 400, noNaN: true }), (list, boxWidth) => {
        const { total } = fingerSet({ boxWidth, fingers: list, gap: 0 });
        expect(fingerSet({ boxWidth, fingers: [...list].reverse(), gap: 0 }).total).toBeCloseTo(total, 5);
      }),
    );
  });

  test("the longest list there may be, no two alike, still gives the best set", () => {
    const list = Array.from({ length: mostFingers }, (_, index) => 20 + Math.PI * (index + 1) ** 1.2);
    const all = list.reduce((sum, finger) => sum + finger, 0);
    const { total, clearance } = fingerSet({ boxWidth: all / 2, fingers: list, gap: 0 });
    // With a thousand million sums spread over a few metres, some come within a hundredth of any width.
    expect(clearance).toBeLessThan(0.01);
    expect(total).toBeLessThanOrEqual(all / 2 + 1e-6);
    expect(fingerSet({ boxWidth: 6000, fingers: list, gap: 0 }).chosen).toHaveLength(mostFingers);
  });

  test("one message for a list that is empty, too long or holds a finger that is none", () => {
    const box = { boxWidth: 100, gap: 1 };
    expect(() => fingerSet({ ...box, fingers: [] })).toThrow("The list must have 1 to 30 fingers; it has 0.");
    expect(() => fingerSet({ ...box, fingers: Array(31).fill(50) })).toThrow("it has 31.");
    expect(() => fingerSet({ ...box, fingers: [50, Number.NaN] })).toThrow(
      "Finger must be from 5.00 mm to 2000.00 mm; it is not a number.",
    );
    expect(() => fingerSet({ ...box, boxWidth: 20, fingers: [25, 30] })).toThrow(
      "Inside width of the box must be at least 26.00 mm, the narrowest finger and its clearance; it is 20.00 mm.",
    );
  });
});
