import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { loadCatalogue } from "../../src/catalogue/load.ts";
import { fieldLook, outputText, rangeText, storedText } from "../../src/components/calculator/texts.ts";
import { formatNumber } from "../../src/lib/quantity/format.ts";
import { asTyped, mm, phraseText, say } from "../../src/lib/quantity/phrase.ts";
import { worksheetById } from "../../src/lib/registry.ts";
import { runWorksheet, type Worksheet } from "../../src/lib/worksheet.ts";
import { siteMap } from "../../src/texts/en/site-map.ts";
import { inBrowser } from "../../src/texts/es/areas.ts";
import { atBuild } from "../../src/texts/es/build-areas.ts";
import { cautions } from "../../src/texts/es/library/cautions.ts";
import { shopNames } from "../../src/texts/es/library/shop.ts";
import { site } from "../../src/texts/es/library/site.ts";
import { library } from "../../src/texts/es/library.ts";
import { spanish } from "../../src/texts/es/spanish.ts";
import { worksheetsInSpanish } from "../../src/texts/es/worksheets.ts";
import { filesIn, textOf } from "../rules/source-files.ts";
import { anyRaw, goodRaw } from "../worksheets/arbitrary.ts";
import { literalsOf, sentencesOf, unitWords, withImports, wordsOf } from "./library-texts.ts";

const catalogue = loadCatalogue();
const plain = spanish([...inBrowser, ...atBuild], library);
const sheets = worksheetsInSpanish.map((id) => {
  const sheet = worksheetById(id);
  if (!sheet) throw new Error(`there is no calculator ${id}`);
  return { id, sheet };
});
const files = new Set(worksheetsInSpanish.flatMap((id) => [...withImports(`src/lib/worksheets/${id}.ts`)]));

/** Symbols of units are the same in every language. */
const symbols = new Set(unitWords().filter((text) => !text.includes(" ")));

/** Texts that have no Spanish among some texts. */
function missingAmong(texts: readonly string[]): string[] {
  const missing = new Set<string>();
  const language = spanish([], library, (text) => missing.add(text));
  for (const text of texts) language.say(text);
  return [...missing];
}

/** Says everything that a calculator answers to what is typed into it. @returns what had no Spanish */
function missingInAnswer(sheet: Worksheet, raw: Parameters<typeof runWorksheet>[1]): string[] {
  const missing: string[] = [];
  const language = spanish(inBrowser, library, (text) => symbols.has(text) || missing.push(text));
  const { values, answer, problems } = runWorksheet(sheet, raw, catalogue);
  for (const { phrase, instead } of problems) {
    language.say(phrase);
    for (const { label } of instead) language.say(label);
  }
  if (!answer) return missing;
  for (const { phrase } of answer.remarks) language.say(phrase);
  for (const { formula } of answer.working)
    for (const { label } of [...Object.values(formula.symbols), { label: formula.name }]) language.say(label);
  for (const { caption, columns, rows } of answer.tables ?? []) {
    language.say(caption);
    for (const { label } of columns) language.say(label);
    for (const { cells, note } of rows)
      for (const cell of [...cells, note]) if (cell && typeof cell !== "number") language.say(cell);
  }
  for (const [key, output] of Object.entries(sheet.outputs)) {
    const value = answer.outputs[key];
    if (output.kind !== "list") outputText(output, value, "mm", language);
    else
      for (const row of Array.isArray(value) ? value : [])
        for (const [name, column] of Object.entries(output.columns))
          if (typeof row === "object" && row !== null) outputText(column, Reflect.get(row, name), "mm", language);
  }
  for (const { label } of sheet.handoffs?.(values as never, answer) ?? []) language.say(label);
  return missing;
}

describe("the calculators in Spanish have all of it", () => {
  test.each(sheets)("$id: labels, helps, choices, formulas", ({ sheet }) => {
    expect(missingAmong(wordsOf(sheet))).toEqual([]);
  });

  test.each(sheets)(
    "$id: whatever is typed",
    ({ sheet }) => {
      const missing = new Set<string>();
      for (const raw of [{}, ...fc.sample(goodRaw(sheet.inputs), 60), ...fc.sample(anyRaw(sheet.inputs), 120)])
        for (const text of missingInAnswer(sheet, raw)) missing.add(text);
      expect([...missing]).toEqual([]);
    },
    120_000,
  );

  test("there are sentences to look for", () => {
    expect([...files].flatMap(sentencesOf).length).toBeGreaterThan(80);
  });

  test.each([...files].map((path) => ({ path })))("every sentence written in $path", ({ path }) => {
    expect(sentencesOf(path).filter((text) => !library.has(text))).toEqual([]);
  });

  test("kinds of quantity and units", () => {
    expect(missingAmong(unitWords().filter((text) => / /.test(text)))).toEqual([]);
  });

  test("names of metals, what their numbers are, the brake of the shop", () => {
    const metals = Object.values(catalogue.materials);
    const bases = metals.flatMap((metal) => [metal.yield.basis, metal.tensileStrength.basis]);
    const lists = metals.flatMap(({ gaugeSystem }) => (gaugeSystem ? [catalogue.gaugeSystems[gaugeSystem]?.name ?? ""] : []));
    expect(missingAmong([...metals.map(({ name }) => name), ...bases, ...lists, catalogue.shop.brake.name])).toEqual([]);
  });

  test("names of the shop's machines and of its marking tools, as its screen shows them", () => {
    const { shop, markingMethods } = catalogue;
    const machines = Object.values(shop).flatMap((part) =>
      typeof part === "object" && "name" in part && part.name !== catalogue.shop.brake.name ? [part.name] : [],
    );
    const names = [
      ...machines,
      ...shop.furnaces.map(({ name }) => name),
      ...Object.values(markingMethods).map(({ name }) => name),
    ];
    expect(Object.keys(shopNames).sort()).toEqual(names.sort());
  });

  test("names of the pages", () => {
    const titles = Object.values(siteMap).map(({ title }) => title);
    expect(titles.filter((title) => !Object.hasOwn(site, title))).toEqual([]);
  });

  test("every caution", () => {
    const texts = Object.values(catalogue.cautions).flatMap(({ title, text }) => [title, text]);
    expect(texts.filter((text) => !Object.hasOwn(cautions, text))).toEqual([]);
    expect(Object.keys(cautions).filter((text) => !texts.includes(text))).toEqual([]);
  });
});

/** Areas that are in English only so far: what is on their pages has no Spanish. A new area is put here, or gets its Spanish. */
const englishOnly = [
  "data-table",
  "device",
  "figures-cutting",
  "figures-edges",
  "figures-furnace",
  "figures-joining",
  "figures-marking",
  "figures-punching",
  "figures-rolling",
  "figures-springback",
  "glossary-drawings",
  "links-page",
  "reference",
  "site",
  // Its titles are in library/site.ts.
  "site-map",
  "tables",
];

/** Where two texts have another shape, or where several words are the same in both. */
function differences(english: unknown, own: unknown, at = ""): string[] {
  if (typeof english === "function" || typeof own === "function")
    return typeof english === typeof own && (english as () => void).length >= (own as () => void).length
      ? []
      : [`${at}: not alike`];
  if (typeof english === "string" && typeof own === "string")
    return english === own && /\p{L}{2,} \p{L}{2,}/u.test(english) && english !== "Flat to Formed" ? [`${at}: is English`] : [];
  if (typeof english !== "object" || typeof own !== "object" || english === null || own === null) return [`${at}: not alike`];
  const keys = new Set([...Object.keys(english), ...Object.keys(own)]);
  return [...keys].flatMap((key) => differences(Reflect.get(english, key), Reflect.get(own, key), `${at}.${key}`));
}

describe("the texts of the interface", () => {
  const names = (folder: string) => filesIn(folder, /\.ts$/).map((path) => path.slice(folder.length + 1, -3));
  const own = new Set(names("src/texts/es"));
  const areas = names("src/texts/en").filter((name) => !name.startsWith("drawings/"));
  const ready = areas.filter((name) => own.has(name));
  const registered = new Map<object, object>([...inBrowser, ...atBuild]);

  test("are in Spanish, but for those that are known to be in English only", () => {
    expect(areas.filter((name) => !own.has(name)).sort()).toEqual(englishOnly);
  });

  test.each(ready.filter((name) => !["home", "machines"].includes(name)).map((name) => ({ name })))(
    "$name has every text, and is found by its English",
    async ({ name }) => {
      const [english] = Object.values<object>(await import(`../../src/texts/en/${name}.ts`));
      const [spanishOnes] = Object.values<object>(await import(`../../src/texts/es/${name}.ts`));
      expect(differences(english, spanishOnes)).toEqual([]);
      expect(english && registered.get(english)).toBe(spanishOnes);
    },
  );

  test.each([
    [{ a: "one" }, { a: "uno", b: "" }, 1],
    [{ a: "one", b: "two" }, { a: "uno" }, 1],
    [{ a: (one: string) => one }, { a: "uno" }, 1],
    [{ a: ["the same words"] }, { a: ["the same words"] }, 1],
    [{ a: ["mm", (one: string) => one] }, { a: ["mm", () => "uno"] }, 0],
  ])("%o beside %o has %i faults", (english, spanishOnes, count) => {
    expect(differences(english, spanishOnes)).toHaveLength(count);
  });
});

describe("the Spanish of the library", () => {
  const written = new Set([
    ...filesIn("src/lib", /\.ts$/).flatMap(literalsOf),
    ...sheets.flatMap(({ sheet }) => wordsOf(sheet)),
    ...unitWords(),
    ...Object.values(catalogue.materials).flatMap((metal) => [metal.name, metal.yield.basis, metal.tensileStrength.basis]),
    ...Object.values(catalogue.gaugeSystems).map(({ name }) => name),
    catalogue.shop.brake.name,
  ]);

  test("is all of use: nothing in it is said nowhere", () => {
    expect([...library.keys()].filter((text) => !written.has(text))).toEqual([]);
  });

  test.each([...library].filter(([text]) => text.includes("{}")))("%s has all its values", (english, translation) => {
    const values = english
      .split("{}")
      .slice(1)
      .map((_, index) => `{${index + 1}}`);
    expect([...new Set(translation.match(/\{\d\}/g))].sort()).toEqual(values);
    expect(translation).not.toContain("{}");
  });

  test("says nothing twice in two ways", () => {
    const modules = filesIn("src/texts/es/library", /\.ts$/).map(textOf);
    const keys = modules.flatMap((text) =>
      [...text.matchAll(/^ {2}(?:"((?:[^"\\]|\\.)*)"|(\w+)):/gm)].map(([, long, short]) => long ?? short),
    );
    expect(keys.filter((key, index) => keys.indexOf(key) !== index)).toEqual([]);
  });
});

describe("what the language does with a text", () => {
  test("numbers have the decimal sign that the Unicode data give Spanish", () => {
    const [decimal] = new Intl.NumberFormat("es").formatToParts(0.5).filter(({ type }) => type === "decimal");
    expect(plain.digits(formatNumber(1234.5, 1))).toBe(`1234${decimal?.value}5`);
    // Four digits stay together, as there.
    expect(plain.digits(formatNumber(1234.5, 1))).toBe(new Intl.NumberFormat("es").format(1234.5));
    // Five are parted by a thin space: ISO 80000-1, 7.3.1, and the Ortografía of 2010, where those data have a point.
    expect(plain.digits(formatNumber(12345.6, 1))).toBe("12\u202f345,6");
  });

  test("a text that somebody typed is never touched", () => {
    expect(plain.say(say`“${asTyped("1.2 Angle")}” is not one number`)).not.toContain("Ángulo");
    fc.assert(
      fc.property(fc.string({ maxLength: 20 }), (typed) => {
        expect(plain.say(say`“${asTyped(typed)}” ${say`is not one number`}. Write it like ${"90 or 90°"}.`)).toBe(
          `«${typed}» no es un solo número. Escriba, por ejemplo, 90 o 90°.`,
        );
      }),
    );
  });

  test("a sentence without a translation is said in English, with its numbers", () => {
    const phrase = say`There is no Spanish for ${mm(1.25)} of this.`;
    expect(plain.say(phrase)).toBe(phraseText(phrase).replace("1.25", "1,25"));
  });

  test("values may come in another order", () => {
    const shuffled = spanish([], new Map([["{} before {}", "{2} tras {1}"]]));
    expect(shuffled.say(say`${"a"} before ${"b"}`)).toBe("b tras a");
  });
});

describe("what is typed in Spanish", () => {
  const stored = (typed: string) => storedText(typed, "length", "mm", {}, plain);

  test("is kept in the spelling of addresses", () => {
    expect(stored("1,2")).toBe("1.2mm");
    expect(stored("1.2")).toBe("1.2mm");
    expect(stored("2 pulg")).toBe("2in");
    expect(stored("2 1/16 pulgadas")).toBe("2-1/16in");
    expect(stored("12\u202f345,5")).toBe("12345.5mm");
    expect(stored("1.234,5")).toBe("1234.5mm");
    expect(storedText("90 grados", "angle", "mm", {}, plain)).toBe("90deg");
    expect(storedText("18 calibre", "length", "mm", { gauge: () => 1 }, plain)).toBe("18ga");
    expect(stored("dos")).toBe("dos");
  });

  test("is shown with a comma, and reads back to itself", () => {
    expect(fieldLook("1.2mm", undefined, "length", "mm", {}, plain)).toEqual({ text: "1,2", unit: "mm", note: "" });
    expect(fieldLook("0.048in", undefined, "length", "mm", {}, plain).text).toBe("1,2192");
    expect(fieldLook("1.2.3", undefined, "length", "mm", {}, plain).text).toBe("1.2.3");
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 99_999, noNaN: true }), (value) => {
        const kept = `${Number(value.toFixed(4))}mm`;
        expect(stored(fieldLook(kept, undefined, "length", "mm", {}, plain).text)).toBe(kept);
      }),
    );
  });

  test("ranges have a comma too", () => {
    const input = { kind: "quantity", label: "", quantity: "length", min: 0.1, max: 13 } as const;
    expect(rangeText(input, "mm", plain)).toBe("0,1 a 13 mm");
  });
});
