import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { loadCatalogue } from "../../src/catalogue/load.ts";
import { findKept, keepAll, planShelf, withKept } from "../../src/components/kept/kept-list.ts";
import { PackedAddressError, pack, sharedQuery, unfolded, unpack } from "../../src/components/packed.ts";

import { rawFromAddress } from "../../src/lib/address.ts";
import { partFileFrom } from "../../src/lib/part/file.ts";
import { partInputs } from "../../src/lib/part/form.ts";
import { planFrom } from "../../src/lib/part/plan.ts";

/**
 * Addresses that are out in the world: on paper, in mails, in assignments. They are never edited; what they open never changes.
 * The part beside each was written down by hand from the address when it was frozen.
 */
const frozen: readonly { readonly since: string; readonly query: string; readonly part: object }[] = JSON.parse(
  readFileSync("tests/part/frozen-addresses.json", "utf8"),
);

const catalogue = loadCatalogue();
const rawOf = (query: string) => rawFromAddress("plan", partInputs, new URLSearchParams(query));

describe("addresses that were given away keep opening the same part", () => {
  test.each(frozen)("$query", async ({ query, part }) => {
    const readable = (await unfolded("plan", `?${query}`)) ?? query;
    const raw = rawOf(readable);
    expect(partFileFrom(raw)).toMatchObject(part);
    const { plan, problems } = planFrom(raw, catalogue);
    expect(problems.map(({ message }) => message)).toEqual([]);
    expect(plan?.blank.mass).toBeGreaterThan(0);
  });
});

describe("a packed address", () => {
  test("gives back every query, letter for letter", async () => {
    await fc.assert(
      fc.asyncProperty(fc.string({ unit: "grapheme", maxLength: 3000 }), async (text) => {
        expect(await unpack(await pack(text))).toBe(new TextDecoder().decode(new TextEncoder().encode(text)));
      }),
      { numRuns: 200 },
    );
  });

  test("is used only where the readable one is long, and is shorter then", async () => {
    const short = "plan.name=Clip&plan.north=25mm:90deg:up";
    expect(await sharedQuery("plan", short)).toBe(short);
    const holes = Array.from({ length: 40 }, (_, index) => `base:${10 + 7 * index}mm:15.5mm:5mm`).join(";");
    const long = `plan.name=Perforated+plate&plan.width=320mm&plan.holes=${holes}`;
    const shared = await sharedQuery("plan", long);
    expect(shared).toMatch(/^plan\.packed=1\.[\w-]+$/);
    expect(shared.length).toBeLessThan(long.length / 2);
    expect(await unfolded("plan", `?${shared}&units=inch`)).toBe(`units=inch&${long}`);
    expect(await unfolded("assign", `?${shared}&units=inch`)).toBeUndefined();
  });

  test.each(["", "1", "1.", "1.!!", "1.AAAA", "x.AAAA", "1.S0lKTEo"])("that is damaged is said to be: “%s”", async (text) => {
    const found = await unpack(text).catch((error: unknown) => error);
    if (typeof found === "string") expect(found.length).toBeLessThan(20);
    else expect(found).toBeInstanceOf(PackedAddressError);
  });

  test("of a newer packing asks for newer pages", async () => {
    await expect(unpack("2.AAAA")).rejects.toThrow(/newer handbook/);
  });

  test("that unfolds without end is stopped", async () => {
    const bomb = await pack("a".repeat(5_000_000));
    expect(bomb.length).toBeLessThan(10_000);
    await expect(unpack(bomb)).rejects.toThrow(/more than any link/);
  });

  test("never does anything else than give a text or say what is wrong", async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.oneof(
          fc.string(),
          fc.base64String().map((text) => `1.${text}`),
        ),
        async (text) => {
          try {
            expect(typeof (await unpack(text))).toBe("string");
          } catch (error) {
            expect(error).toBeInstanceOf(PackedAddressError);
          }
        },
      ),
      { numRuns: 500 },
    );
  });
});

/** A storage that holds what it is given, and can be full. */
function storage(room = Number.POSITIVE_INFINITY) {
  const held = new Map<string, string>();
  return {
    held,
    getItem: (key: string) => held.get(key) ?? null,
    setItem: (key: string, value: string) => {
      if (value.length > room) throw new DOMException("full", "QuotaExceededError");
      held.set(key, value);
    },
    removeItem: (key: string) => void held.delete(key),
  };
}

describe("plans kept on the device", () => {
  const tray = { name: "Tray", kept: "2026-11-25T14:05", query: "plan.name=Tray" };
  const clip = { name: "Clip", kept: "2026-11-25T14:10", query: "plan.name=Clip" };

  test("come back, the newest first; the same name is the same plan", () => {
    const store = storage();
    expect(keepAll(store, planShelf, withKept(withKept([], tray), clip))).toBe(true);
    expect(findKept(store, planShelf).kept).toEqual([clip, tray]);
    const changed = { ...tray, query: "plan.name=Tray&plan.width=90mm" };
    expect(withKept([clip, tray], changed)).toEqual([changed, clip]);
  });

  test.each(["{", "[]", '{"version":1}', '{"version":1,"plans":[{"name":3}]}', "null"])(
    "that cannot be read are put aside, not deleted: %s",
    (text) => {
      const store = storage();
      store.held.set(planShelf.key, text);
      const { kept, trouble } = findKept(store, planShelf);
      expect(kept).toBeUndefined();
      expect(trouble).toMatchObject({ why: "unreadable" });
      expect([...store.held.values()]).toEqual([text]);
      expect(store.held.has(planShelf.key)).toBe(false);
    },
  );

  test("of a newer handbook are left alone", () => {
    const store = storage();
    store.held.set(planShelf.key, '{"version":99,"plans":[]}');
    expect(findKept(store, planShelf).trouble).toEqual({ why: "newer" });
    expect(store.held.get(planShelf.key)).toContain("99");
  });

  test("are not lost where there is no room for one more", () => {
    const store = storage(120);
    expect(keepAll(store, planShelf, [tray])).toBe(true);
    expect(keepAll(store, planShelf, [clip, tray])).toBe(false);
    expect(findKept(store, planShelf).kept).toEqual([tray]);
  });
});
