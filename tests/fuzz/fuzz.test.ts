import { describe, expect, test } from "vitest";
import { readClassList } from "../../src/lib/assign/class-list.ts";
import { readCodes } from "../../src/lib/assign/read-codes.ts";
import { seededRandom } from "../../src/lib/sheet/random.ts";
import { bracket } from "../assign/shared.ts";
import { damagedJson, damagedQuery } from "./damage.ts";
import { type Reader, readers } from "./readers.ts";
import { tryReader } from "./try-reader.ts";

/** A few of the cases of `npm run fuzz`, which takes as many as it is told. */
const cases = 150;

describe.each(readers.map((reader) => [reader.name, reader] as const))("%s", (_, reader) => {
  test("refuses in words what it cannot use, keeps what it was given, and never hangs", { timeout: 120_000 }, async () => {
    const { faults, accepted } = await tryReader(reader, cases, 20_261_130);
    expect(faults).toEqual([]);
    // Damage that nothing survives would try nothing but the refusals.
    expect(accepted).toBeGreaterThan(0);
    expect(accepted).toBeLessThan(cases);
  });
});

test("a reader that throws, hangs or says nothing of use is found out", { timeout: 60_000 }, async () => {
  const make = () => "text";
  const bad: Record<string, Reader["read"]> = {
    throws: () => {
      throw new TypeError("x is undefined");
    },
    hangs: () => {
      const start = process.cpuUsage();
      while (process.cpuUsage(start).user < 1_100_000);
      return [];
    },
    careless: () => ["The width must be a number; it is NaN."],
    silent: () => [" "],
  };
  for (const [name, read] of Object.entries(bad))
    expect((await tryReader({ name, make, read }, 1, 1)).faults, name).toHaveLength(1);
});

test("the same seed damages the same way, another one another way", () => {
  const make = (seed: number) => [
    damagedQuery(seededRandom(seed), ["a=1mm&b=2mm&c=3"]),
    damagedJson(seededRandom(seed), ['{"a":[1,2,{"b":"c"}]}']),
  ];
  expect(make(5)).toEqual(make(5));
  expect(new Set([1, 2, 3, 4, 5, 6, 7, 8].map((seed) => make(seed).join("\n"))).size).toBeGreaterThan(4);
});

test("a whole mailbox pasted by mistake is read in no time, and lines beyond a class are not gone through", {
  timeout: 60_000,
}, () => {
  const start = process.cpuUsage();
  const { students } = readClassList(Array.from({ length: 300 }, (_, index) => `s-${index}`).join("\n"));
  const mail = "Dear all, here is my code 12ab-34cd-56ef, thanks and see you on Monday in the shop\n";
  expect(readCodes(bracket, students, mail.repeat(1000)).problems).toHaveLength(1000);
  expect(readClassList("a;b\n".repeat(50_000)).problems.length).toBeLessThan(2000);
  const { user } = process.cpuUsage(start);
  expect(user / 1000).toBeLessThan(2000);
});
