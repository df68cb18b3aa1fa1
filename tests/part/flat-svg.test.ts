import { type DefaultTreeAdapterTypes, parseFragment } from "parse5";
import { describe, expect, test } from "vitest";
import { loadCatalogue } from "../../src/catalogue/load.ts";
import type { Raw } from "../../src/lib/inputs.ts";
import { fullSize } from "../../src/lib/part/drawing.ts";
import { flatSvg } from "../../src/lib/part/flat-svg.ts";
import { type Plan, planFrom } from "../../src/lib/part/plan.ts";
import { form, up } from "./samples.ts";

const catalogue = loadCatalogue();

function planned(raw: Raw): Plan {
  const { plan, problems } = planFrom(raw, catalogue);
  if (!plan) throw new Error(problems[0]?.message);
  return plan;
}

type Element = DefaultTreeAdapterTypes.Element;

function elements(text: string): Element[] {
  const found: Element[] = [];
  const visit = (node: DefaultTreeAdapterTypes.ChildNode | DefaultTreeAdapterTypes.DocumentFragment): void => {
    if ("tagName" in node) found.push(node);
    if ("childNodes" in node) node.childNodes.forEach(visit);
  };
  visit(parseFragment(text.replace(/^<\?xml[^>]*\?>/, "")));
  return found;
}

const attribute = (element: Element, name: string) =>
  element.attrs.find((each) => each.name.toLowerCase() === name.toLowerCase())?.value ?? "";
const numbers = (text: string) => [...text.matchAll(/-?\d+(?:\.\d+)?/g)].map(([number]) => Number(number));

/** Corners of a path of straight lines. */
function corners(d: string): { x: number; y: number }[] {
  expect(d).toMatch(/^M[\d. -]+(L[\d. -]+)*Z?$/);
  const all = numbers(d);
  return Array.from({ length: all.length / 2 }, (_, index) => ({ x: all[2 * index] as number, y: all[2 * index + 1] as number }));
}

const tray = planned(
  form({
    name: "Tray <1> & “lid”",
    width: "200mm",
    depth: "150mm",
    north: [up("40mm")],
    south: [up("40mm")],
    east: [up("40mm")],
    west: [up("40mm")],
    edges: [{ side: "north", kind: "closed", width: "6mm" }],
    holes: [{ panel: "base", x: "15mm", y: "25mm", diameter: "5mm" }],
    cutouts: [{ panel: "base", shape: "slot", x: "100mm", y: "75mm", width: "30mm", height: "10mm", turn: "30deg" }],
  }),
);

describe("the flat drawing as a file", () => {
  const text = flatSvg(fullSize(tray));
  const all = elements(text);
  const svg = all.find(({ tagName }) => tagName === "svg") as Element;
  const group = (id: string) => {
    const found = all.find((element) => attribute(element, "id") === id);
    if (!found) throw new Error(`no group ${id}`);
    return found.childNodes.filter((node): node is Element => "tagName" in node);
  };

  test("is in millimetres: width, height and view box agree, 5 mm round the blank", () => {
    const { width, depth } = tray.blank;
    expect(attribute(svg, "width")).toMatch(/mm$/);
    const [w, h] = [numbers(attribute(svg, "width"))[0], numbers(attribute(svg, "height"))[0]] as [number, number];
    expect(w).toBeCloseTo(width + 10, 2);
    expect(h).toBeCloseTo(depth + 10, 2);
    expect(numbers(attribute(svg, "viewBox"))).toEqual([0, 0, w, h]);
  });

  test("has the outline at full size, its y upside down", () => {
    const [outline] = group("outline");
    const points = corners(attribute(outline as Element, "d"));
    expect(points).toHaveLength(tray.layout.outline.length);
    const height = numbers(attribute(svg, "height"))[0] as number;
    tray.layout.outline.forEach(({ x, y }, index) => {
      expect(points[index]?.x).toBeCloseTo(x + 5, 2);
      expect(points[index]?.y).toBeCloseTo(height - 5 - y, 2);
    });
  });

  test("has holes, reliefs and every bend in groups of their own", () => {
    const [round, slot] = group("holes");
    expect(round?.tagName).toBe("circle");
    expect(numbers(attribute(round as Element, "r"))).toEqual([2.5]);
    // Ends of a slot are half circles of half its narrow side.
    expect(attribute(slot as Element, "d").match(/A5 5 0 0 1/g)).toHaveLength(2);
    expect(group("relief-holes")).toHaveLength(4);
    expect(group("bend-lines")).toHaveLength(4);
    expect(group("sight-lines")).toHaveLength(4);
    expect(group("bend-zones")).toHaveLength(8);
    expect(group("fold-lines")).toHaveLength(1);
    const south = tray.bends.findIndex(({ id }) => id === "south.1");
    const [from, to] = corners(attribute(group("bend-lines")[south] as Element, "d"));
    const height = numbers(attribute(svg, "height"))[0] as number;
    expect(from?.y).toBeCloseTo(height - 5 - (tray.bends[south]?.line as number), 2);
    expect(to?.y).toBe(from?.y);
  });

  test("the straight sides of the slot are as far apart as it is narrow, and turned as it is", () => {
    const [, slot] = group("holes");
    const [ax, ay, bx, by] = numbers(attribute(slot as Element, "d")) as [number, number, number, number];
    expect(Math.hypot(bx - ax, by - ay)).toBeCloseTo(20, 2);
    expect(Math.abs(((Math.atan2(ay - by, bx - ax) * 180) / Math.PI + 180) % 180)).toBeCloseTo(30, 1);
  });

  test("draws outlines wide and everything that is only marked narrow, centre lines dashed", () => {
    const width = (id: string) => Number(attribute(all.find((each) => attribute(each, "id") === id) as Element, "stroke-width"));
    for (const id of ["outline", "holes", "relief-holes"]) expect(width(id)).toBe(0.5);
    for (const id of ["bend-lines", "bend-zones", "sight-lines", "fold-lines", "hole-centres"]) expect(width(id)).toBe(0.25);
    const dashed = all.filter((each) => attribute(each, "stroke-dasharray") !== "").map((each) => attribute(each, "id"));
    expect(dashed).toEqual(["hole-centres"]);
  });

  test("says its name, whatever signs are in it, and holds no style and no script", () => {
    expect(text).toContain("Tray &lt;1&gt; &amp; “lid”");
    expect(text).not.toMatch(/<script|style=|href/i);
  });

  test("leaves out what a part has not", () => {
    const flat = flatSvg(fullSize(planned(form({ width: "80mm", depth: "50mm" }))));
    expect([...flat.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id)).toEqual(["outline"]);
  });
});
