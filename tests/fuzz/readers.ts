import { readdirSync, readFileSync } from "node:fs";
import { dataFilePaths, loadCatalogue } from "../../src/catalogue/load.ts";
import { readSettings, settingsShelf } from "../../src/components/display/settings.ts";
import { assignmentShelf, findKept, planShelf } from "../../src/components/kept/kept-list.ts";
import { PackedAddressError, pack, unfolded } from "../../src/components/packed.ts";
import { bendShelf, shopShelf } from "../../src/components/shop/device.ts";
import { readShopText } from "../../src/components/shop/open-shop.ts";
import { asideShop, deviceShop, findBends, findShop } from "../../src/components/shop/shelf.ts";
import { addressParts, queryText, rawFromAddress } from "../../src/lib/address.ts";
import { assignmentFromAddress, assignmentQuery } from "../../src/lib/assign/address.ts";
import { checkAssignment } from "../../src/lib/assign/check-assignment.ts";
import { readClassList } from "../../src/lib/assign/class-list.ts";
import type { Assignment } from "../../src/lib/assign/definition.ts";
import { assignmentFile, readAssignment } from "../../src/lib/assign/file.ts";
import { readCodes } from "../../src/lib/assign/read-codes.ts";
import { resultCode } from "../../src/lib/assign/result-code.ts";
import { InputError } from "../../src/lib/input-error.ts";
import type { Inputs, Raw } from "../../src/lib/inputs.ts";
import { rawFromPartFile } from "../../src/lib/part/file.ts";
import { partInputs } from "../../src/lib/part/form.ts";
import { planFrom } from "../../src/lib/part/plan.ts";
import { ParseError, parseQuantity } from "../../src/lib/quantity/parse.ts";
import { type Quantity, quantityKinds } from "../../src/lib/quantity/units.ts";
import { worksheetById, worksheets } from "../../src/lib/registry.ts";
import { fileOf } from "../../src/lib/shop/form.ts";
import { runWorksheet } from "../../src/lib/worksheet.ts";
import { shop } from "../../src/texts/en/shop.ts";
import { fakeStore } from "../shop/fake-store.ts";
import { damaged, damagedJson, damagedQuery, pick, type Random } from "./damage.ts";

/** Everything that reads what came from outside the handbook, each with texts it can read and what must hold for any text. */
export interface Reader {
  readonly name: string;
  /** A text for the reader, damaged or not. */
  make(random: Random): string | Promise<string>;
  /** Reads it. Refusals are part of what comes back; anything thrown that is no refusal is a fault. @returns what is said of it */
  read(text: string): readonly string[] | Promise<readonly string[]>;
}

const catalogue = loadCatalogue();
const here = (path: string) => new URL(path, import.meta.url);
const json = (path: string) => JSON.parse(readFileSync(here(path), "utf8"));

const said = (problems: readonly InputError[]) => problems.map(({ message }) => message);

/** Runs what may refuse. @returns what came of it, or the refusal's words */
function refusing<T>(
  run: () => T,
  kinds: readonly (new (...args: never[]) => Error)[] = [InputError],
): { value?: T; words: string[] } {
  try {
    return { value: run(), words: [] };
  } catch (error) {
    if (error instanceof Error && kinds.some((kind) => error instanceof kind)) return { words: [error.message] };
    throw error;
  }
}

function must(holds: boolean, what: string): void {
  if (!holds) throw new Error(what);
}

/** What a form holds is what its own address brings back: a link loses nothing, however odd. */
function addressKeeps(id: string, inputs: Inputs, raw: Raw): void {
  const query = queryText(addressParts(inputs, raw).map(([key, text]) => [`${id}.${key}`, text]));
  const again = rawFromAddress(id, inputs, new URLSearchParams(query));
  const next = queryText(addressParts(inputs, again).map(([key, text]) => [`${id}.${key}`, text]));
  must(next === query, `the address changed when it was read: ${query.slice(0, 300)} became ${next.slice(0, 300)}`);
}

const planQueries: string[] = json("../part/frozen-addresses.json").map(({ query }: { query: string }) => query);
const assignQueries: string[] = json("../assign/frozen-addresses.json").map(({ query }: { query: string }) => query);
const partTexts = [
  ...readdirSync(here("../part/parts")).map((file) => readFileSync(here(`../part/parts/${file}`), "utf8")),
  ...json("../part/frozen-addresses.json").map(({ part }: { part: unknown }) => JSON.stringify(part)),
];
const assignments: Assignment[] = json("../assign/frozen-addresses.json").map(
  ({ assignment }: { assignment: Assignment }) => assignment,
);
const assignTexts = assignments.map(assignmentFile);
const shopTextOwn = readFileSync(dataFilePaths().shop, "utf8");

/** A query for a calculator with some inputs given, each as its own default or as another one's. */
function calculatorQuery(random: Random): string {
  const sheet = pick(random, worksheets);
  const texts = (sheet.id === "sheet-cuts" ? [] : worksheets).flatMap(({ inputs }) =>
    Object.values(inputs).flatMap((input) => (typeof input.default === "string" ? [input.default] : [])),
  );
  const parts = Object.entries(sheet.inputs).flatMap(([key, input]): [string, string][] => {
    if (random() < 0.5) return [];
    const own = input.kind === "list" ? addressParts({ [key]: { ...input, default: [] } }, { [key]: input.default }) : [];
    const text = own[0]?.[1] ?? (typeof input.default === "string" ? input.default : "1");
    return [[`${sheet.id}.${key}`, random() < 0.6 ? text : damaged(random, [text, ...texts])]];
  });
  return `${sheet.id}?${damagedQuery(random, [new URLSearchParams(parts).toString()])}`;
}

const today = "2026-11-30T10:00";
const keptTexts: Readonly<Record<string, readonly string[]>> = {
  [shopShelf]: [
    JSON.stringify({ version: 1, changed: today, own: "x", file: fileOf(catalogue.shop) }),
    JSON.stringify({ version: 1, changed: today, own: "x", file: fileOf(catalogue.shop), draft: fileOf(catalogue.shop) }),
  ],
  [bendShelf]: [JSON.stringify({ version: 1, bends: (fileOf(catalogue.shop).bends as unknown[]) ?? [] })],
  [planShelf.key]: [JSON.stringify({ version: 1, plans: planQueries.map((query) => ({ name: "P", kept: today, query })) })],
  [assignmentShelf.key]: [
    JSON.stringify({ version: 1, assignments: assignQueries.map((query) => ({ name: "A", kept: today, query })) }),
  ],
  [settingsShelf]: [JSON.stringify({ idle: 90, units: "mm", site: "https://shop.example/handbook/" })],
};

/** Reads everything that is kept, and looks whether the text that was there still is, under whatever name. */
function readKept(key: string, text: string): string[] {
  const store = fakeStore({ [key]: text });
  const found = [findShop(store), findBends(store), findKept(store, planShelf), findKept(store, assignmentShelf)];
  asideShop(store);
  deviceShop(store, catalogue);
  readSettings(key === settingsShelf ? text : null, "");
  must([...store.kept.values()].includes(text), `what was kept under ${key} is gone: ${text.slice(0, 200)}`);
  return found.flatMap(({ trouble }) => (trouble ? [trouble.why] : []));
}

const classTexts = ["s-1;Ann\ns-2;Bo\n", "id,name\n17,Öz\n18,O'Neil\n", 'id\tname\n"a ""b"""\tX\n', "one\r\ntwo\rthree"];
const someStudents = readClassList("s-1;Ann\ns-2;Bo\n17;Öz").students;
const codeTexts = assignments.flatMap((assignment) => {
  const results = assignment.questions.map(() => "right" as const);
  return someStudents.map(({ id }) => `${id}: ${resultCode(assignment, id, results)}\n`);
});

export const readers: readonly Reader[] = [
  {
    name: "address of a calculator",
    make: calculatorQuery,
    read(text) {
      const [id = "", ...rest] = text.split("?");
      const sheet = worksheetById(id);
      if (!sheet) return [];
      const raw = rawFromAddress(id, sheet.inputs, new URLSearchParams(rest.join("?")));
      addressKeeps(id, sheet.inputs, raw);
      const { answer, problems } = runWorksheet(sheet, raw, catalogue);
      must((answer === undefined) !== (problems.length === 0), "neither an answer nor a problem, or both");
      return said(problems);
    },
  },
  {
    name: "address of a plan",
    make: (random) => damagedQuery(random, planQueries),
    read(text) {
      const raw = rawFromAddress("plan", partInputs, new URLSearchParams(text));
      addressKeeps("plan", partInputs, raw);
      const { plan, rolled, problems } = planFrom(raw, catalogue);
      must((plan ?? rolled) === undefined || problems.length === 0, "a plan and a problem");
      must((plan ?? rolled) !== undefined || problems.length > 0, "neither a plan nor a problem");
      return said(problems);
    },
  },
  {
    name: "packed address",
    async make(random) {
      const query = damagedQuery(random, [...planQueries, ...assignQueries]);
      const packed = await pack(query);
      return random() < 0.3 ? packed : damaged(random, [packed]);
    },
    async read(text) {
      try {
        const query = await unfolded("plan", new URLSearchParams({ "plan.packed": text }).toString());
        planFrom(rawFromAddress("plan", partInputs, new URLSearchParams(query)), catalogue);
        return [];
      } catch (error) {
        if (error instanceof PackedAddressError) return [error.message];
        throw error;
      }
    },
  },
  {
    name: "part file",
    make: (random) => damagedJson(random, partTexts),
    read(text) {
      const { value: raw, words } = refusing(() => rawFromPartFile(text));
      if (!raw) return words;
      addressKeeps("plan", partInputs, raw);
      return said(planFrom(raw, catalogue).problems);
    },
  },
  {
    name: "file of a shop",
    make: (random) =>
      random() < 0.5 ? damaged(random, [shopTextOwn]) : damagedJson(random, [JSON.stringify(fileOf(catalogue.shop))]),
    read(text) {
      const { file, faults } = readShopText("shop.yaml", text, catalogue, shop);
      must((file === undefined) === faults.length > 0, "neither a shop nor a fault, or both");
      return faults;
    },
  },
  {
    name: "file of an assignment",
    make: (random) => damagedJson(random, assignTexts),
    read(text) {
      const parsed = refusing(() => JSON.parse(text), [SyntaxError]);
      if (parsed.value === undefined) return parsed.words;
      const { value: assignment, words } = refusing(() => readAssignment(parsed.value));
      if (!assignment) return words;
      return said(checkAssignment(assignment, worksheetById, catalogue, 2).problems);
    },
  },
  {
    name: "address of an assignment",
    make: (random) => damagedQuery(random, assignQueries),
    read(text) {
      const { value: assignment, words } = refusing(() => assignmentFromAddress(new URLSearchParams(text)));
      if (!assignment) return words;
      const query = assignmentQuery(assignment);
      const again = assignmentFromAddress(new URLSearchParams(query));
      must(
        again !== undefined && assignmentQuery(again) === query,
        `the address changed when it was read: ${query.slice(0, 300)}`,
      );
      return said(checkAssignment(assignment, worksheetById, catalogue, 2).problems);
    },
  },
  {
    name: "pasted class list",
    make: (random) => damaged(random, classTexts),
    read: (text) => said(readClassList(text).problems),
  },
  {
    name: "pasted result codes",
    make: (random) => damaged(random, codeTexts),
    read(text) {
      const [assignment] = assignments;
      return assignment ? said(readCodes(assignment, someStudents, text).problems) : [];
    },
  },
  {
    name: "what a device keeps",
    make(random) {
      const key = pick(random, Object.keys(keptTexts));
      return `${key}=${damagedJson(random, keptTexts[key] ?? [])}`;
    },
    read(text) {
      const at = text.indexOf("=");
      return readKept(text.slice(0, at), text.slice(at + 1));
    },
  },
  {
    name: "a quantity as typed",
    make: (random) =>
      damaged(random, ["1.2mm", "0.048 in", '3/64"', "2 1/16 in", "18 ga", "45 ksi", "12 kN", "90°", "8 cycles", "1,5"]),
    read: (text) =>
      (Object.keys(quantityKinds) as Quantity[]).flatMap((quantity) => {
        const { value, words } = refusing(() => parseQuantity(text, quantity), [ParseError]);
        must(value === undefined || Number.isFinite(value.value), `${text.slice(0, 60)} was read as ${value?.value}`);
        return words;
      }),
  },
];
