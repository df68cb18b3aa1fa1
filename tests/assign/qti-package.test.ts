import { unzipSync } from "fflate";
import { expect, test } from "vitest";
import { qtiPackage } from "../../src/components/assign/qti-package.ts";
import { bankQuestions } from "../../src/lib/assign/bank.ts";
import { bracket, catalogue, worksheetById } from "./shared.ts";
import { everyNode, readXml } from "./xml-reader.ts";

const bank = bankQuestions(bracket, 3, worksheetById, catalogue);
const zip = qtiPackage(bracket, bank, "mm");
const files = unzipSync(zip);
const text = (path: string) => new TextDecoder("utf-8", { fatal: true }).decode(files[path]);

test("a package has its manifest at the root and every file the manifest names, and no other", () => {
  // IMS Content Packaging 1.1.4, 2.2: imsmanifest.xml at the root of the package.
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
