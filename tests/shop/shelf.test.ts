import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { loadCatalogue } from "../../src/catalogue/load.ts";
import { bendShelf, shopShelf } from "../../src/components/shop/device.ts";
import {
  asideShop,
  bendsFrom,
  deviceShop,
  findBends,
  findShop,
  keepBends,
  keepShop,
  putAside,
  unreadable,
} from "../../src/components/shop/shelf.ts";
import { fileOf, type ShopFile } from "../../src/lib/shop/form.ts";
import { fakeStore } from "./fake-store.ts";

const catalogue = loadCatalogue();
const own = fileOf(catalogue.shop);
const withBrake = (change: object): ShopFile => ({ ...own, brake: { ...(own.brake as object), ...change } });
const kept = (file: ShopFile) => ({ changed: "2026-11-25T14:05", own: "x", file });
const bend = {
  material: "steel-cr",
  thickness: "1.2 mm",
  radius: "1.6 mm",
  angle: "90 deg",
  deduction: "2.3 mm",
  uncertainty: "0.05 mm",
  pieces: 5,
  date: "2026-11-25",
};

describe("what a device keeps of the shop", () => {
  test("is used in place of the shop's own", () => {
    const store = fakeStore();
    expect(deviceShop(store, catalogue)).toEqual({ shop: catalogue.shop });
    expect(keepShop(store, kept(withBrake({ fingerHeight: "4 in" })))).toBe(true);
    const { shop, changed } = deviceShop(store, catalogue);
    expect(shop.brake.fingerHeight).toBeCloseTo(101.6, 9);
    expect(changed).toBe("2026-11-25");
    expect(keepShop(store, undefined)).toBe(true);
    expect(deviceShop(store, catalogue)).toEqual({ shop: catalogue.shop });
  });

  test("is completed by the shop's own when the handbook has learnt to ask for more", () => {
    const { brake, ...rest } = own;
    const { noseRadius: _, ...older } = brake as Record<string, unknown>;
    const store = fakeStore();
    keepShop(store, kept({ ...rest, brake: { ...older, fingerHeight: "90 mm" } }));
    const { shop } = deviceShop(store, catalogue);
    expect(shop.brake.noseRadius).toBe(catalogue.shop.brake.noseRadius);
    expect(shop.brake.fingerHeight).toBe(90);
  });

  test("is left in place and not used while a value of it is out of range", () => {
    const store = fakeStore();
    keepShop(store, kept(withBrake({ fingerHeight: "9000 mm" })));
    expect(deviceShop(store, catalogue)).toEqual({ shop: catalogue.shop, unusable: true });
    expect(store.getItem(shopShelf)).toContain("9000 mm");
  });

  test("is moved, not deleted, when it cannot be read", () => {
    const store = fakeStore({ [shopShelf]: "{ half", [`${shopShelf}.unreadable`]: "an earlier one" });
    expect(findShop(store).trouble).toEqual({ why: "unreadable", movedTo: `${shopShelf}.unreadable-2` });
    expect(store.getItem(shopShelf)).toBeNull();
    expect(store.getItem(`${shopShelf}.unreadable`)).toBe("an earlier one");
    expect(store.getItem(`${shopShelf}.unreadable-2`)).toBe("{ half");
    expect(unreadable(store)).toEqual([`${shopShelf}.unreadable`, `${shopShelf}.unreadable-2`]);
    expect(findShop(store)).toEqual({});
  });

  test("stays where it is when there is no room to move it", () => {
    const store = fakeStore({ [shopShelf]: "{ half" }, 30);
    expect(findShop(store).trouble).toEqual({ why: "unreadable", movedTo: shopShelf });
    expect(store.getItem(shopShelf)).toBe("{ half");
  });

  test("of newer pages is left alone", () => {
    const text = JSON.stringify({ version: 2, whatever: true });
    const store = fakeStore({ [shopShelf]: text, [bendShelf]: text });
    expect(findShop(store)).toEqual({ trouble: { why: "newer" } });
    expect(findBends(store)).toEqual({ trouble: { why: "newer" } });
    expect(store.getItem(shopShelf)).toBe(text);
    expect(deviceShop(store, catalogue).unusable).toBe(true);
  });

  test("can be brought back after it was taken off", () => {
    const store = fakeStore();
    keepShop(store, kept(withBrake({ fingerHeight: "90 mm" })));
    putAside(store);
    keepShop(store, undefined);
    expect(asideShop(store)?.file).toEqual(withBrake({ fingerHeight: "90 mm" }));
    expect(asideShop(fakeStore({ [`${shopShelf}.put-aside`]: "[" }))).toBeUndefined();
  });

  test("is nothing where storage is off, and says when it is full", () => {
    const off = {
      getItem: () => {
        throw new DOMException("off", "SecurityError");
      },
      setItem: () => {
        throw new DOMException("off", "SecurityError");
      },
      removeItem: () => {
        throw new DOMException("off", "SecurityError");
      },
    };
    for (const store of [off, undefined]) {
      expect(findShop(store).trouble).toEqual({ why: "off" });
      expect(deviceShop(store, catalogue)).toEqual({ shop: catalogue.shop });
      expect(keepShop(store, kept(own))).toBe(false);
    }
    expect(keepBends(fakeStore({}, 40), [bend])).toBe(false);
  });
});

describe("bends measured on a device", () => {
  test("come before those of the file, the newest first; a faulty one is kept but not used", () => {
    const store = fakeStore();
    const lines = [{ ...bend, date: "2026-11-01" }, bend, { ...bend, thickness: "12 mm" }];
    keepBends(store, lines);
    const { bends } = deviceShop(store, catalogue).shop;
    expect(bends.slice(0, 2).map(({ date, onDevice }) => [date, onDevice])).toEqual([
      ["2026-11-25", true],
      ["2026-11-01", true],
    ]);
    expect(bends).toHaveLength(2 + catalogue.shop.bends.length);
    expect(findBends(store).kept?.bends).toEqual(lines);
  });

  test("are not listed twice when the file has them too", () => {
    const store = fakeStore();
    keepBends(store, [bend]);
    keepShop(store, kept({ ...own, bends: [bend] }));
    expect(deviceShop(store, catalogue).shop.bends).toEqual(bendsFrom([bend], catalogue));
  });
});

test("whatever stands in storage, a shop comes out and nothing is lost", () => {
  const shape = fc.oneof(
    fc.string(),
    fc.json(),
    fc
      .record(
        {
          version: fc.oneof(fc.constant(1), fc.anything()),
          changed: fc.oneof(fc.constant("2026-11-25T10:00"), fc.anything()),
          own: fc.string(),
          file: fc.oneof(fc.constant(own), fc.dictionary(fc.constantFrom(...Object.keys(own)), fc.anything())),
          draft: fc.anything(),
          bends: fc.array(fc.oneof(fc.constant(bend), fc.anything())),
        },
        { requiredKeys: [] },
      )
      .map((value) => JSON.stringify(value) ?? ""),
  );
  fc.assert(
    fc.property(shape, shape, (shopText, bendText) => {
      const store = fakeStore({ [shopShelf]: shopText, [bendShelf]: bendText });
      const { shop } = deviceShop(store, catalogue);
      expect(shop.brake.rating.thickness).toBeGreaterThan(0);
      const texts = [...store.kept.values()];
      expect(texts).toContain(shopText);
      expect(texts).toContain(bendText);
      // Once put away it does not come up again.
      expect(deviceShop(store, catalogue).shop).toEqual(shop);
    }),
    { numRuns: 300 },
  );
});
