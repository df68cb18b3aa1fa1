import { describe, expect, test } from "vitest";
import { loadCatalogue } from "../../src/catalogue/load.ts";
import {
  findOffcuts,
  isInForm,
  type KeptOffcut,
  keepOffcuts,
  offcutShelf,
  rowOf,
  withOffcut,
  withoutUsed,
} from "../../src/components/sheet/offcut-shelf.ts";
import { jobOfPart } from "../../src/lib/part/blanks-job.ts";
import { planFrom } from "../../src/lib/part/plan.ts";
import { sheetRequest } from "../../src/lib/sheet/form.ts";

const catalogue = loadCatalogue();

function memory(): Storage {
  const held = new Map<string, string>();
  return {
    get length() {
      return held.size;
    },
    key: (index) => [...held.keys()][index] ?? null,
    getItem: (key) => held.get(key) ?? null,
    setItem: (key, text) => void held.set(key, text),
    removeItem: (key) => void held.delete(key),
    clear: () => held.clear(),
  };
}

const offcut = (more: Partial<KeptOffcut> = {}): KeptOffcut => ({
  name: "Ducts 1.2",
  width: 310.5,
  length: 800,
  count: 1,
  material: "steel-cr",
  kept: "2026-11-30T10:00",
  ...more,
});

describe("offcuts kept on a device", () => {
  test("come back as they were kept, the newest first and each under a name of its own", () => {
    const store = memory();
    const list = withOffcut(withOffcut(withOffcut([], offcut()), offcut({ width: 200 })), offcut({ width: 100, thickness: 1.2 }));
    expect(keepOffcuts(store, list)).toBe(true);
    const { kept, trouble } = findOffcuts(store);
    expect(trouble).toBeUndefined();
    expect(kept?.offcuts).toEqual(list);
    expect(list.map(({ name, width }) => [name, width])).toEqual([
      ["Ducts 1.2 (3)", 100],
      ["Ducts 1.2 (2)", 200],
      ["Ducts 1.2", 310.5],
    ]);
  });

  test("an empty list leaves nothing behind", () => {
    const store = memory();
    keepOffcuts(store, [offcut()]);
    keepOffcuts(store, []);
    expect(store.length).toBe(0);
    expect(findOffcuts(store)).toEqual({});
  });

  test.each([
    "{",
    "[]",
    '{"version":1,"offcuts":[{"name":"x"}]}',
    '{"version":1,"offcuts":[{"name":"x","kept":"","material":"","width":-1,"length":1,"count":1}]}',
  ])("what cannot be read is put aside, not deleted: %s", (text) => {
    const store = memory();
    store.setItem(offcutShelf, text);
    const { kept, trouble } = findOffcuts(store);
    expect(kept).toBeUndefined();
    expect(trouble).toMatchObject({ why: "unreadable" });
    expect([...Array(store.length).keys()].map((index) => store.getItem(store.key(index) ?? ""))).toEqual([text]);
  });

  test("become rows that the form reads, and are known there again", () => {
    const kept = offcut();
    const raw = { others: [rowOf(kept)] };
    expect(sheetRequest(raw, catalogue).request?.job.sheets[1]).toEqual({
      name: "Ducts 1.2",
      width: 310.5,
      length: 800,
      count: 1,
    });
    expect(isInForm(raw, kept)).toBe(true);
    expect(isInForm({ others: [{ ...rowOf(kept), count: "7" }] }, kept)).toBe(true);
    expect(isInForm(raw, offcut({ width: 311 }))).toBe(false);
    expect(isInForm({}, kept)).toBe(false);
  });

  test("are fewer by those that were cut", () => {
    const two = offcut({ count: 2 });
    const used = (times: number) => [{ name: two.name, width: two.width, length: two.length, times }];
    expect(withoutUsed([two], used(1))).toEqual([{ ...two, count: 1 }]);
    expect(withoutUsed([two], used(2))).toEqual([]);
    expect(
      withoutUsed(
        [two],
        used(2).map((each) => ({ ...each, name: "another" })),
      ),
    ).toEqual([two]);
  });
});

describe("the blanks of a planned part", () => {
  const channel = { kind: "folded", name: "Channel", quantity: "12", thickness: "1mm", width: "60mm", depth: "200mm" };

  test.each([
    ["bends along y: the rolling direction runs across them", { east: [{ leg: "20mm" }], west: [{ leg: "20mm" }] }, "across"],
    ["bends along x", { north: [{ leg: "20mm" }], south: [{ leg: "20mm" }] }, "along"],
  ] as const)("%s", (_, sides, grain) => {
    const { plan } = planFrom({ ...channel, ...sides }, catalogue);
    if (!plan) throw new Error("no plan");
    const raw = jobOfPart(plan.part, plan.cuts);
    const { request, problems } = sheetRequest(raw, catalogue);
    expect(problems.map(({ message }) => message)).toEqual([]);
    const [blank, ...strips] = request?.job.pieces ?? [];
    expect(blank).toMatchObject({ name: "Channel", count: 12, grain });
    expect(blank?.width).toBeCloseTo(plan.blank.width, 3);
    expect(blank?.length).toBeCloseTo(plan.blank.depth, 3);
    expect(strips.map(({ count }) => count)).toEqual(plan.cuts.pieces.slice(1).map(({ count }) => count));
    expect(request?.values).toMatchObject({ name: "Channel", material: plan.part.material.id, thickness: 1 });
  });
});
