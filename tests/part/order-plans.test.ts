import { describe, expect, test } from "vitest";
import { loadCatalogue } from "../../src/catalogue/load.ts";
import type { Raw } from "../../src/lib/inputs.ts";
import { formingJob } from "../../src/lib/part/order/job-of.ts";
import { bendOrder } from "../../src/lib/part/order/order.ts";
import { planFrom } from "../../src/lib/part/plan.ts";
import { form, up } from "./samples.ts";

const catalogue = loadCatalogue();
const walls = { north: [up("40mm")], south: [up("40mm")], east: [up("40mm")], west: [up("40mm")] };
const rims = ["north", "south", "east", "west"].map((side) => ({ side, kind: "closed", width: "6mm", way: "up" }));

function orderOf(fields: Raw) {
  const { plan, problems } = planFrom(form(fields), catalogue);
  if (!plan || !("layout" in plan) || !plan.layout) throw new Error(problems.map(({ message }) => message).join("; "));
  const order = bendOrder(formingJob(plan.layout), catalogue.shop.brake);
  if (!("steps" in order)) throw new Error(JSON.stringify(order));
  return order;
}

describe("parts as they are entered, on the brake of the shop's file", () => {
  test("a tray 200 × 150 × 40 with hemmed rims has an order without turning over", () => {
    const order = orderOf({ width: "200mm", depth: "150mm", ...walls, edges: rims });
    expect(order.steps).toHaveLength(8);
    expect(order.cost.turnedOver).toBe(0);
    // Every rim before the wall it is on.
    const at = (id: string) => order.steps.findIndex(({ bend }) => bend === id);
    for (const side of ["north", "south", "east", "west"]) expect(at(`${side}.edge`)).toBeLessThan(at(`${side}.1`));
  });

  test("a box with tabs turns the sides they lie on first", () => {
    const order = orderOf({ width: "200mm", depth: "150mm", ...walls, tabs: "north-south", tabWidth: "12mm" });
    expect(order.tabsByHand).toHaveLength(4);
    expect(order.steps.slice(0, 2).map(({ onLeaf: _, bend }) => bend.split(".")[0])).toEqual(
      expect.arrayContaining(["east", "west"]),
    );
  });

  test("a pan whose sides lean outwards, so that they begin narrower than they end, is not stopped by its own corners", () => {
    const flared = [{ leg: "35mm", angle: "70deg", way: "up" }];
    const order = orderOf({ width: "280mm", depth: "105mm", north: flared, south: flared, east: flared, west: flared });
    expect(order.cost).toMatchObject({ turnedOver: 0, turned: 1 });
  });

  test("a channel along one chain", () => {
    const order = orderOf({ width: "300mm", depth: "80mm", north: [up("25mm")], south: [up("25mm")] });
    expect(order.steps.map(({ bend }) => bend).sort()).toEqual(["north.1", "south.1"]);
  });
});
