import type { ComponentType } from "preact";
import { renderToString } from "preact-render-to-string";
import { expect, test } from "vitest";
import { bracketLines } from "../../src/components/figures/bracket.ts";
import { spot } from "../../src/components/figures/pen.tsx";
import { stripPath } from "../../src/components/figures/section.ts";

const figures = import.meta.glob<ComponentType>("../../src/components/figures/**/[A-Z]*.tsx", { eager: true, import: "default" });

test.each(Object.entries(figures).map(([path, Figure]) => [path.replace(/^.*\/|\.tsx$/g, ""), Figure] as const))(
  "%s is drawn with numbers, says what it shows and needs no inline style",
  (_, Figure) => {
    const svg = renderToString(<Figure />);
    expect(svg).not.toMatch(/NaN|Infinity|undefined|null/);
    expect(svg).not.toMatch(/\bstyle=/);
    expect(svg).toMatch(/^<svg[^>]* role="img" aria-label="[A-Z][^"]{20,}"/);
  },
);

test("a strip bent by 90° ends where plane geometry says", () => {
  const { end } = stripPath([{ ahead: 10 }, { turn: 90, radius: 2 }, { ahead: 5 }], 1, { scale: 1, origin: spot(0, 0) });
  // Along the outer face: 10 to the tangent line, R + T on to the other one, then straight up.
  expect(end.x).toBeCloseTo(13, 12);
  expect(end.z).toBeCloseTo(8, 12);
  expect(end.heading).toBe(90);
});

test("a strip bent down turns about its inside radius", () => {
  const { end } = stripPath([{ ahead: 10 }, { turn: -90, radius: 2 }, { ahead: 5 }], 1, { scale: 1, origin: spot(0, 0) });
  expect(end.x).toBeCloseTo(12, 12);
  expect(end.z).toBeCloseTo(-7, 12);
});

test("at 90° the sight line of the bracket lies at the inside length of the clamped leg", () => {
  // Geometry: the inside face of the upright leg touches the front of the nose.
  expect(bracketLines().sight).toBeCloseTo(60 - 1.2, 12);
});
