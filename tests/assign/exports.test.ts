import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { answerKey, answerKeyCsv } from "../../src/lib/assign/answer-key.ts";
import { bankCsv, bankQuestions } from "../../src/lib/assign/bank.ts";
import type { Assignment } from "../../src/lib/assign/definition.ts";
import { printedSheets } from "../../src/lib/assign/printed-sheet.ts";
import { qtiFiles } from "../../src/lib/assign/qti.ts";
import { element, escapeXml, xmlFile } from "../../src/lib/assign/xml.ts";
import { safeCsv, safeTabs } from "../../src/lib/csv.ts";
import { bracket, catalogue, question, worksheetById } from "./shared.ts";
import { everyNode, type Node, readXml } from "./xml-reader.ts";

/** Cells of a CSV text, read by the grammar of RFC 4180. */
function readCsv(text: string): string[][] {
  expect(text.startsWith("\uFEFF")).toBe(true);
  const rows: string[][] = [];
  let row: string[] = [];
  let at = 1;
  while (at < text.length) {
    const quoted = /"((?:[^"]|"")*)"(,|\r\n)/y;
    const plain = /([^",\r\n]*)(,|\r\n)/y;
    quoted.lastIndex = plain.lastIndex = at;
    const cell = text[at] === '"' ? quoted.exec(text) : plain.exec(text);
    if (!cell) throw new Error(`not CSV at ${at}: ${JSON.stringify(text.slice(at, at + 40))}`);
    row.push(text[at] === '"' ? (cell[1] ?? "").replaceAll('""', '"') : (cell[1] ?? ""));
    at += cell[0].length;
    if (cell[2] === "\r\n") {
      rows.push(row);
      row = [];
    }
  }
  return rows;
}

const students = [
  { id: "s-1001", note: "Doe, Jo" },
  { id: "s-1002", note: "" },
];

describe("comma-separated text", () => {
  // OWASP ASVS 5.0, 1.2.10, names the signs.
  test.each(["=1+1", "+1+1", "-1+1", "@SUM(A1)", "\t=1", "\0=1", " =1", "\r=1", "＝1", "−cmd"])(
    "%j is no formula any more",
    (cell) => {
      expect(readCsv(safeCsv([[cell]]))).toEqual([[`'${cell}`]]);
    },
  );

  test.each(["-1.5", "1", "0.25", "a=b", "3/64 in", "Jo", "", "'quoted'"])("%j stays", (cell) =>
    expect(readCsv(safeCsv([[cell]]))).toEqual([[cell]]),
  );

  test("whatever is in the cells, they come back, and none begins like a formula", () => {
    const cell = fc.oneof(
      fc.string(),
      fc.string().map((text) => `=${text}`),
      fc.constantFrom('"', '","', "\r\n", ";=1"),
    );
    fc.assert(
      fc.property(fc.array(fc.array(cell, { minLength: 2, maxLength: 2 }), { minLength: 1, maxLength: 4 }), (rows) => {
        const read = readCsv(safeCsv(rows));
        expect(read).toHaveLength(rows.length);
        read.forEach((row, index) => {
          row.forEach((text, column) => {
            const given = rows[index]?.[column];
            expect([given, `'${given}`]).toContain(text);
            if (!/^-\d+(\.\d+)?$/.test(text)) expect(text).not.toMatch(/^(\s|\p{Cc})*[=+\-@]/u);
          });
        });
      }),
    );
  });
});

test("a table for the clipboard is harmless too, and stays one line a row", () => {
  expect(
    safeTabs([
      ["=1+1", "a\tb\nc"],
      ["-2.5", 3],
    ]),
  ).toBe("'=1+1\ta b c\n-2.5\t3");
});

describe("the answer key", () => {
  const rows = answerKey(bracket, students, worksheetById, catalogue);

  test("is a line for each student, with own numbers and answers", () => {
    const [head, first, second] = readCsv(answerKeyCsv(rows));
    expect(head).toEqual([
      "Student",
      "Note",
      "1. Thickness",
      "1. Inside radius",
      "1. Leg 2",
      "1. Blank length [mm]",
      "1. Bend deduction [mm]",
      "2. Material",
      "2. Hole diameter",
      expect.stringMatching(/^2\. .*force.* \[N\]$/i),
    ]);
    // By hand: 1.25 and 3.5 mm, 90°, K = 0.4: BD = 2 · 4.75 − π/2 · 4 = 3.2168 mm, L = 60 + 20 − BD = 76.7832 mm.
    expect(first?.slice(0, 7)).toEqual(["s-1001", "Doe, Jo", "1.25 mm", "3.5 mm", "20 mm", "76.783", "3.217"]);
    expect(second?.slice(0, 5)).toEqual(["s-1002", "", "1.25 mm", "2 mm", "26 mm"]);
    expect(first).toHaveLength(head?.length ?? 0);
  });

  test("keeps its columns where the numbers of some hide an input of others", () => {
    // A round hole has a diameter, a square one a width.
    const mixed: Assignment = {
      ...bracket,
      questions: [
        question("punch-load", {
          varied: {
            shape: { choices: ["round", "square"] },
            diameter: { choices: ["5mm", "6mm"] },
            width: { choices: ["7mm", "8mm"] },
          },
          asked: [{ output: "force", tolerance: "rounding" }],
        }),
      ],
    };
    const many = Array.from({ length: 8 }, (_, index) => ({ id: `s${index}`, note: "" }));
    const [head = [], ...lines] = readCsv(answerKeyCsv(answerKey(mixed, many, worksheetById, catalogue)));
    expect(head).toHaveLength(6);
    const [shape, diameter, width] = ["Shape", "Hole diameter", "Hole width"].map((label) =>
      head.findIndex((name) => name.includes(label)),
    );
    expect(new Set(lines.map((line) => line[shape ?? -1])).size).toBe(2);
    for (const line of lines) {
      expect(line).toHaveLength(6);
      const round = line[shape ?? -1] === "round";
      expect([line[diameter ?? -1] !== "", line[width ?? -1] !== ""]).toEqual([round, !round]);
    }
  });

  test("says why where a student has none, and keeps the others", () => {
    const tight: Assignment = {
      ...bracket,
      questions: [
        question("bend-length", {
          fixed: { thickness: "1mm", legs: "60mm;10mm" },
          varied: { radius: { choices: ["2mm", "50mm"] } },
          asked: [{ output: "blank", tolerance: "0.2mm" }],
        }),
      ],
    };
    const many = Array.from({ length: 12 }, (_, index) => ({ id: `s${index}`, note: "" }));
    const key = answerKey(tight, many, worksheetById, catalogue);
    expect(new Set(key.map(({ problem }) => problem === undefined)).size).toBe(2);
    expect(answerKeyCsv(key)).toContain("must be at least");
  });

  test("sheets are printed without answers, the key with them", () => {
    const { sheets, key } = printedSheets(bracket, rows);
    expect(sheets.map(({ student }) => student)).toEqual(["s-1001", "s-1002"]);
    expect(JSON.stringify(sheets)).not.toContain("76.78");
    expect(sheets[0]?.questions[0]).toMatchObject({
      number: 1,
      intro: "A bracket is bent once. How long is its blank?",
      asked: [
        { label: "Blank length", symbol: "L", tolerance: "± 0.2 mm" },
        { label: "Bend deduction", symbol: "BD", tolerance: "± 2 %" },
      ],
    });
    expect(sheets[0]?.questions[0]?.given.map(({ label, text }) => `${label}: ${text}`)).toEqual(
      expect.arrayContaining([
        "Thickness: 1.25 mm",
        "Leg 1: 60 mm",
        "Leg 2: 20 mm",
        "Angle turned through: 90°",
        "K-factor: 0.4",
      ]),
    );
    expect(key.rows[0]?.questions[0]?.answers.map(({ text }) => text)).toEqual(["76.78 mm", "3.22 mm"]);
  });
});

describe("the bank", () => {
  const bank = bankQuestions(bracket, 6, worksheetById, catalogue);

  test("has different numbers in every set, and the same each time", () => {
    expect(bank).toHaveLength(2);
    for (const questions of bank) expect(new Set(questions.map(({ raw }) => JSON.stringify(raw))).size).toBe(questions.length);
    expect(bank[0]?.map(({ id }) => id).slice(0, 2)).toEqual(["q1-v01", "q1-v02"]);
    expect(bankQuestions(bracket, 6, worksheetById, catalogue)).toEqual(bank);
  });

  test("a question in which nothing varies is there once", () => {
    const still = { ...bracket, questions: [question("die-fit", { asked: [{ output: "dieDiameter", tolerance: "1%" }] })] };
    expect(bankQuestions(still, 9, worksheetById, catalogue).map((questions) => questions.length)).toEqual([1]);
  });

  test.each([0, 101, 1.5])("%d sets cannot be had", (variants) =>
    expect(() => bankQuestions(bracket, variants, worksheetById, catalogue)).toThrow(RangeError),
  );

  test("is a table with one line for each answer", () => {
    const [head, ...lines] = readCsv(bankCsv(bank));
    expect(head).toHaveLength(10);
    expect(lines).toHaveLength(bank.flat().reduce((sum, { asked }) => sum + asked.length, 0));
    for (const line of lines) {
      expect(line).toHaveLength(10);
      expect(Number(line[6])).toBeGreaterThan(0);
      expect(Number(line[7])).toBeGreaterThan(0);
    }
  });
});

/**
 * What may stand in what, in which order, and which attributes must be there: from the published schemas of QTI 2.1
 * (imsqti_v2p1.xsd, 2012) and of its manifest (qtiv2p1_imscpv1p2_v1p0.xsd, 2014), as far as the exports use them.
 * No package of the npm registry was found that carries the schemas, so this is a reading of them, not they themselves.
 */
const grammar: Readonly<
  Record<string, { readonly holds: RegExp; readonly attributes: readonly string[]; readonly more?: readonly string[] }>
> = {
  assessmentItem: {
    holds: /^(responseDeclaration )*(outcomeDeclaration )*(itemBody )?(responseProcessing )?$/,
    attributes: ["identifier", "title", "adaptive", "timeDependent"],
    more: ["xmlns", "xmlns:xsi", "xsi:schemaLocation", "xml:lang"],
  },
  responseDeclaration: { holds: /^(correctResponse )?$/, attributes: ["identifier", "cardinality"], more: ["baseType"] },
  outcomeDeclaration: {
    holds: /^(defaultValue )?$/,
    attributes: ["identifier", "cardinality"],
    more: ["baseType", "normalMaximum"],
  },
  correctResponse: { holds: /^(value )+$/, attributes: [] },
  defaultValue: { holds: /^(value )+$/, attributes: [] },
  value: { holds: /^$/, attributes: [] },
  itemBody: { holds: /^(p )+$/, attributes: [] },
  p: { holds: /^(textEntryInteraction )*$/, attributes: [] },
  textEntryInteraction: { holds: /^$/, attributes: ["responseIdentifier"], more: ["expectedLength"] },
  responseProcessing: { holds: /^(responseCondition )*$/, attributes: [] },
  responseCondition: { holds: /^responseIf $/, attributes: [] },
  responseIf: { holds: /^equal (setOutcomeValue )*$/, attributes: [] },
  equal: { holds: /^correct variable $/, attributes: ["toleranceMode"], more: ["tolerance"] },
  correct: { holds: /^$/, attributes: ["identifier"] },
  variable: { holds: /^$/, attributes: ["identifier"] },
  setOutcomeValue: { holds: /^sum $/, attributes: ["identifier"] },
  sum: { holds: /^((variable|baseValue|testVariables) )+$/, attributes: [] },
  baseValue: { holds: /^$/, attributes: ["baseType"] },
  assessmentTest: {
    holds: /^(outcomeDeclaration )*(testPart )+(outcomeProcessing )?$/,
    attributes: ["identifier", "title"],
    more: ["xmlns", "xmlns:xsi", "xsi:schemaLocation"],
  },
  testPart: { holds: /^(assessmentSection )+$/, attributes: ["identifier", "navigationMode", "submissionMode"] },
  assessmentSection: { holds: /^(selection )?(assessmentItemRef )*$/, attributes: ["identifier", "title", "visible"] },
  selection: { holds: /^$/, attributes: ["select"] },
  assessmentItemRef: { holds: /^$/, attributes: ["identifier", "href"] },
  outcomeProcessing: { holds: /^(setOutcomeValue )*$/, attributes: [] },
  testVariables: { holds: /^$/, attributes: ["variableIdentifier"] },
  manifest: {
    holds: /^metadata organizations resources $/,
    attributes: ["identifier"],
    more: ["xmlns", "xmlns:xsi", "xsi:schemaLocation"],
  },
  metadata: { holds: /^schema schemaversion $/, attributes: [] },
  schema: { holds: /^$/, attributes: [] },
  schemaversion: { holds: /^$/, attributes: [] },
  organizations: { holds: /^$/, attributes: [] },
  resources: { holds: /^(resource )*$/, attributes: [] },
  resource: { holds: /^(file )*(dependency )*$/, attributes: ["identifier", "type"], more: ["href"] },
  file: { holds: /^$/, attributes: ["href"] },
  dependency: { holds: /^$/, attributes: ["identifierref"] },
};

/** Elements in which text may stand between others. */
const mixed = new Set(["p", "value", "baseValue", "schema", "schemaversion"]);

function checkGrammar(root: Node): void {
  for (const node of everyNode(root)) {
    const rule = grammar[node.name];
    if (!rule) throw new Error(`${node.name} is not known`);
    const names = node.children.map(({ name }) => `${name} `).join("");
    expect(names, node.name).toMatch(rule.holds);
    expect(Object.keys(node.attributes), node.name).toEqual(expect.arrayContaining([...rule.attributes]));
    for (const name of Object.keys(node.attributes))
      expect([...rule.attributes, ...(rule.more ?? [])], node.name).toContain(name);
    if (!mixed.has(node.name) && node.children.length === 0) expect(node.text, node.name).toBe("");
    // Identifiers are names of XML without colons.
    for (const key of ["identifier", "identifierref", "responseIdentifier", "variableIdentifier"])
      if (node.attributes[key] !== undefined) expect(node.attributes[key]).toMatch(/^[A-Za-z_][\w.-]*$/);
  }
}

const found = (root: Node, name: string) => [...everyNode(root)].filter((node) => node.name === name);

describe("QTI", () => {
  const bank = bankQuestions(bracket, 3, worksheetById, catalogue);
  const files = qtiFiles(bracket, bank);
  const rootOf = (path: string) => readXml(files.find((file) => file.path === path)?.text ?? "");

  test("every file is well-formed and of the right build", () => {
    expect(files.length).toBe(2 + bank.flat().length);
    for (const { text } of files) checkGrammar(readXml(text));
  });

  test("manifest, test and items name each other", () => {
    const manifest = rootOf("imsmanifest.xml");
    const paths = found(manifest, "file").map(({ attributes }) => attributes.href);
    expect([...paths].sort()).toEqual(
      files
        .map(({ path }) => path)
        .filter((path) => path !== "imsmanifest.xml")
        .sort(),
    );
    const ids = found(manifest, "resource").map(({ attributes }) => attributes.identifier);
    expect(new Set(ids).size).toBe(ids.length);
    for (const { attributes } of found(manifest, "dependency")) expect(ids).toContain(attributes.identifierref);
    const referred = found(rootOf("test.xml"), "assessmentItemRef").map(({ attributes }) => attributes);
    expect(referred.map(({ href }) => href)).toEqual(bank.flat().map(({ id }) => `items/${id}.xml`));
    for (const { href = "", identifier } of referred) expect(rootOf(href).attributes.identifier).toBe(identifier);
    expect(found(manifest, "schema")[0]?.text).toBe("QTIv2.1 Package");
  });

  /** The rule of `equal` by the information model: y in [x − t, x + t], or [x (1 − t/100), x (1 + t/100)]. */
  function scoreOf(item: Node, given: Readonly<Record<string, number>>): number {
    const right = Object.fromEntries(
      found(item, "responseDeclaration").map((node) => [node.attributes.identifier, Number(found(node, "value")[0]?.text)]),
    );
    return found(item, "responseIf").filter((condition) => {
      const [equal] = found(condition, "equal");
      const [first, second] = equal?.children ?? [];
      const x = right[first?.attributes.identifier ?? ""] ?? Number.NaN;
      const y = given[second?.attributes.identifier ?? ""] ?? Number.NaN;
      const t = Number(equal?.attributes.tolerance);
      if (equal?.attributes.toleranceMode === "exact") return x === y;
      return equal?.attributes.toleranceMode === "relative"
        ? y >= x * (1 - t / 100) && y <= x * (1 + t / 100)
        : y >= x - t && y <= x + t;
    }).length;
  }

  test("items mark as the handbook does", () => {
    for (const own of bank[0] ?? []) {
      const item = rootOf(`items/${own.id}.xml`);
      const [blank, deduction] = own.asked.map(({ right }) => right) as [number, number];
      expect(scoreOf(item, { RESPONSE_1: blank, RESPONSE_2: deduction })).toBe(2);
      expect(scoreOf(item, { RESPONSE_1: blank + 0.199, RESPONSE_2: deduction * 1.019 })).toBe(2);
      expect(scoreOf(item, { RESPONSE_1: blank - 0.201, RESPONSE_2: deduction * 0.979 })).toBe(0);
    }
  });

  test("answers are in the units of the question", () => {
    const inches: Assignment = {
      ...bracket,
      questions: [
        question("bend-length", {
          units: "fraction",
          fixed: { legs: "2in;1in", angle: "90deg", radius: "1/8in", thickness: "1/16in", kFactor: "0.5" },
          asked: [{ output: "setback", tolerance: "1/64in" }],
        }),
      ],
    };
    const [, , item] = qtiFiles(inches, bankQuestions(inches, 1, worksheetById, catalogue));
    const root = readXml(item?.text ?? "");
    // By hand: SB = R + T = 3/16 in.
    expect(found(root, "value")[0]?.text).toBe("0.1875");
    expect(found(root, "equal")[0]?.attributes).toEqual({ toleranceMode: "absolute", tolerance: "0.015625" });
    expect(found(root, "itemBody")[0]?.text).toContain("in in: ");
    expect(found(root, "itemBody")[0]?.text).toContain("decimals");
  });

  test("what has no room for difference is exact, and what is negative has an absolute range", () => {
    const odd: Assignment = {
      ...bracket,
      questions: [
        question("rivet-joint", { asked: [{ output: "count", tolerance: "rounding" }] }),
        question("length-reader", { fixed: { value: "52.5mm" }, asked: [{ output: "fractionError", tolerance: "10%" }] }),
      ],
    };
    const [, , count, error] = qtiFiles(odd, bankQuestions(odd, 1, worksheetById, catalogue)).map(({ text }) => text);
    expect(found(readXml(count ?? ""), "equal")[0]?.attributes).toEqual({ toleranceMode: "exact" });
    // By hand: 2-1/16 in − 52.5 mm = −0.1125 mm; 10 % of it.
    expect(found(readXml(error ?? ""), "equal")[0]?.attributes).toEqual({ toleranceMode: "absolute", tolerance: "0.01125" });
    expect(found(readXml(error ?? ""), "value")[0]?.text).toBe("-0.1125");
  });

  test("hostile text stays text", () => {
    const hostile = fc.oneof(
      fc.string({ unit: "binary", maxLength: 60 }),
      fc.constantFrom(
        "</p></itemBody><responseProcessing/>",
        "]]><!--",
        "<!DOCTYPE x [<!ENTITY e SYSTEM 'file:///'>]>&e;",
        `" onload="x`,
        "&amp;&#0;&lt;",
        "a\u0000b\ud800c\uffff",
      ),
    );
    fc.assert(
      fc.property(hostile, hostile, (title, intro) => {
        const [first] = bracket.questions;
        const assignment = { ...bracket, title, questions: [{ ...first, intro }] } as Assignment;
        for (const { text } of qtiFiles(assignment, bankQuestions(assignment, 1, worksheetById, catalogue))) {
          const root = readXml(text);
          const names = [...everyNode(root)].map(({ name }) => name);
          for (const name of names) expect(Object.hasOwn(grammar, name)).toBe(true);
        }
      }),
      { numRuns: 60 },
    );
  }, 60_000);
});

describe("XML", () => {
  test("text comes back as it was, but for what XML cannot hold", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary" }), (text) => {
        const held = text.replace(/\r\n?/g, "\n").replace(/(?![\t\n])\p{Cc}|[\ufffe\uffff]|\p{Surrogate}/gu, "\ufffd");
        const root = readXml(xmlFile(element("a", { b: text }, [text])));
        expect(root.text).toBe(held);
        expect(root.attributes.b).toBe(held.replace(/[\t\n]+/g, " "));
      }),
    );
  });

  test("five signs are written as entities", () =>
    expect(escapeXml(`<a b="c" d='e'>&`)).toBe("&lt;a b=&quot;c&quot; d=&apos;e&apos;&gt;&amp;"));
});
