import { XMLParser, XMLValidator } from "fast-xml-parser";
import { unzipSync } from "fflate";
import { describe, expect, test } from "vitest";
import { qtiPackage } from "../../src/components/assign/qti-package.ts";
import { bankQuestions } from "../../src/lib/assign/bank.ts";
import { bracket, catalogue, worksheetById } from "./shared.ts";
import { everyNode, readXml } from "./xml-reader.ts";

const bank = bankQuestions(bracket, 3, worksheetById, catalogue);
const zip = qtiPackage(bracket, bank, "mm");
const files = unzipSync(zip);
const text = (path: string) => new TextDecoder("utf-8", { fatal: true }).decode(files[path]);

test("a package has its manifest at the root and every file the manifest names, and no other", () => {
  // IMS Content Packaging 1.1.4: imsmanifest.xml at the root of the package.
  const manifest = readXml(text("imsmanifest.xml"));
  const named = [...everyNode(manifest)].filter(({ name }) => name === "file").map(({ attributes }) => attributes.href);
  expect(Object.keys(files).sort()).toEqual(["imsmanifest.xml", ...named].sort());
});

test("what is in it is well-formed, in UTF-8 without a byte order mark", () => {
  for (const path of Object.keys(files)) {
    expect(text(path).startsWith('<?xml version="1.0" encoding="UTF-8"?>')).toBe(true);
    readXml(text(path));
  }
});

test("the same bank is the same file, byte for byte", () => {
  expect(qtiPackage(bracket, bankQuestions(bracket, 3, worksheetById, catalogue), "mm")).toEqual(zip);
});

/** Read once more by a parser that is not ours, against rules of the QTI 2.1 information model (1EdTech, 2012). */
describe("as another parser reads it", () => {
  const parser = new XMLParser({
    ignoreAttributes: false,
    attributeNamePrefix: "",
    isArray: (_, path) => lists.test(String(path)),
  });
  const lists = /\.(p|responseDeclaration|responseCondition|assessmentSection|assessmentItemRef|resource)$/;
  const items = Object.keys(files).filter((path) => path.startsWith("items/"));

  test("every file is well-formed", () => {
    for (const path of Object.keys(files)) expect(XMLValidator.validate(text(path)), path).toBe(true);
  });

  test.each(items)("%s: every interaction has its declaration, of one float, with the right answer in it", (path) => {
    const { assessmentItem: item } = parser.parse(text(path));
    const declared = item.responseDeclaration;
    // assessmentItem, responseDeclaration: identifiers differ; cardinality must be there.
    expect(new Set(declared.map((each: { identifier: string }) => each.identifier)).size).toBe(declared.length);
    const asked = item.itemBody.p.flatMap((each: { textEntryInteraction?: { responseIdentifier: string } }) =>
      each.textEntryInteraction ? [each.textEntryInteraction.responseIdentifier] : [],
    );
    // textEntryInteraction: bound to a response of single cardinality and base type string, integer or float.
    expect(asked).toEqual(declared.map((each: { identifier: string }) => each.identifier));
    for (const { cardinality, baseType, correctResponse } of declared) {
      expect([cardinality, baseType]).toEqual(["single", "float"]);
      expect(Number(correctResponse.value)).toBeGreaterThan(0);
    }
    // equal: two expressions, a mode, and a tolerance unless the mode is exact.
    for (const { responseIf } of item.responseProcessing.responseCondition) {
      expect(["exact", "absolute", "relative"]).toContain(responseIf.equal.toleranceMode);
      expect(Number(responseIf.equal.tolerance) > 0).toBe(responseIf.equal.toleranceMode !== "exact");
      expect(responseIf.equal.correct.identifier).toBe(responseIf.equal.variable.identifier);
    }
  });

  test("the test takes one set of each question", () => {
    const { assessmentTest } = parser.parse(text("test.xml"));
    const sections = assessmentTest.testPart.assessmentSection;
    expect(sections).toHaveLength(bracket.questions.length);
    for (const { selection, assessmentItemRef } of sections) {
      expect(Number(selection.select)).toBe(1);
      for (const { href } of assessmentItemRef) expect(Object.keys(files)).toContain(href);
    }
  });
});
