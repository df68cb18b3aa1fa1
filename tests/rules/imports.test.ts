import ts from "typescript";
import { describe, expect, test } from "vitest";
import { filesIn, importsOf, parse, textOf } from "./source-files.ts";

const library = filesIn("src/lib", /\.ts$/);

/**
 * Folders of a trade: they know quantities, stock, statistics and bending, whose springback and letters rolling, notching
 * and hole rules need too; bending itself knows none of them, nor do they know each other.
 */
const trades = ["marking", "cutting", "punching", "bending", "rolling", "joining", "furnace"];
const foundation = ["quantity", "stats", "stock"];

/** The folder of the library a file stands in; `""` for the files at its root. */
function folderOf(path: string): string {
  const [, , first = "", second] = path.split("/");
  return second === undefined ? "" : first;
}

/** What each folder may import beside itself; a file at the root is named as it is. */
const basics = ["catalogue.ts", "formula.ts", "input-error.ts", "inputs.ts"];
const allowed: Readonly<Record<string, readonly string[]>> = {
  quantity: [],
  stats: ["quantity", ...basics],
  stock: ["quantity", "stats", ...basics],
  ...Object.fromEntries(trades.map((trade) => [trade, [...foundation, ...basics, "bending"]])),
  shop: [...foundation, ...trades, ...basics, "csv.ts"],
  sheet: [...foundation, "bending", "shop", "part", ...basics, "list-cells.ts"],
  part: [...foundation, ...trades, ...basics, "shop", "address.ts", "json-inputs.ts", "json-shape.ts", "worksheet.ts"],
  worksheets: [...foundation, ...trades, ...basics, "sheet", "worksheet.ts"],
  assign: [...foundation, "bending", ...basics, "address.ts", "csv.ts", "json-shape.ts", "list-cells.ts", "worksheet.ts"],
  "": ["quantity", "stock", "worksheets"],
};

interface Breach {
  readonly file: string;
  readonly imports: string;
}

/** Imports of one file that the rules forbid. */
function breaches(path: string, imports: readonly string[]): Breach[] {
  const from = folderOf(path);
  return imports
    .filter((target) => {
      if (!target.startsWith("src/lib/")) return true;
      const to = folderOf(target);
      const rootFile = to === "" ? target.slice("src/lib/".length) : undefined;
      if (to === from) return false;
      if (rootFile === "registry.ts") return true;
      const known = allowed[from];
      if (known === undefined) return false;
      return !known.includes(rootFile ?? to);
    })
    .map((target) => ({ file: path, imports: target }));
}

describe("the library imports downwards only", () => {
  test("there is something to check, and every folder has a rule", () => {
    expect(library.length).toBeGreaterThan(30);
    const folders = new Set(library.map(folderOf));
    expect([...folders].filter((folder) => allowed[folder] === undefined && folder !== "sequence")).toEqual([]);
  });

  test.each(library.map((path) => ({ path })))("$path", ({ path }) => {
    expect(breaches(path, importsOf(parse(path)))).toEqual([]);
  });

  test.each([
    ["a package", "src/lib/bending/x.ts", 'import { z } from "zod";'],
    ["Node", "src/lib/bending/x.ts", 'import { readFileSync } from "node:fs";'],
    ["a component", "src/lib/bending/x.ts", 'import { url } from "../../site/url.ts";'],
    ["another trade from bending", "src/lib/bending/x.ts", 'import { punchForce } from "../punching/punch-force.ts";'],
    ["another trade", "src/lib/cutting/x.ts", 'import { punchForce } from "../punching/punch-force.ts";'],
    ["a calculator from a trade", "src/lib/bending/x.ts", 'import sheet from "../worksheets/bend-length.ts";'],
    ["the registry from a calculator", "src/lib/worksheets/x.ts", 'import { worksheets } from "../registry.ts";'],
    ["a trade from quantities", "src/lib/quantity/x.ts", 'export { setback } from "../bending/setback.ts";'],
    ["a later import", "src/lib/bending/x.ts", 'const later = await import("../part/plan.ts");'],
    ["only a type", "src/lib/quantity/x.ts", 'type S = import("../worksheet.ts").Worksheet;'],
  ])("notices %s", (_, path, text) => {
    expect(breaches(path, importsOf(parse(path, text)))).toHaveLength(1);
  });
});

describe("the library is pure", () => {
  /** Names that reach outside: the page, the machine, the clock, chance. */
  const outside = new Set(
    "window document navigator location localStorage sessionStorage fetch console process globalThis setTimeout setInterval Date performance crypto require Buffer".split(
      " ",
    ),
  );

  function reachesOut(file: ts.SourceFile): string[] {
    const found: string[] = [];
    const visit = (node: ts.Node): void => {
      if (ts.isIdentifier(node)) {
        const { parent } = node;
        const isMember = ts.isPropertyAccessExpression(parent) && parent.name === node;
        const isKey = (ts.isPropertyAssignment(parent) || ts.isPropertySignature(parent)) && parent.name === node;
        if (outside.has(node.text) && !isMember && !isKey) found.push(node.text);
        if (node.text === "random" && isMember && parent.expression.getText() === "Math") found.push("Math.random");
      }
      ts.forEachChild(node, visit);
    };
    visit(file);
    return found;
  }

  test.each(library.map((path) => ({ path })))("$path", ({ path }) => {
    expect(reachesOut(parse(path))).toEqual([]);
  });

  test("notices the clock, chance, the page and the console", () => {
    const text = "const a = Date.now() + Math.random(); document.title = String(a); console.log(a);";
    expect(reachesOut(parse("src/lib/x.ts", text))).toEqual(["Date", "Math.random", "document", "console"]);
  });
});

describe("formulas live in the library", () => {
  /** Drawings and figures turn answers into points, which takes sines; everything else only shows. */
  const drawn = (path: string) => /\/(drawings|figures)\/|Drawing\.tsx$/.test(path) || /<svg\b/.test(textOf(path));
  const shown = [...filesIn("src/components", /\.(tsx?|astro)$/), ...filesIn("src/pages", /\.(astro|mdx|tsx?)$/)].filter(
    (path) => !drawn(path),
  );
  const mathematics = /Math\.(sin|cos|tan|asin|acos|atan2?|sqrt|cbrt|pow|exp|log\w*|hypot|PI|E)\b/;

  test.each(shown.map((path) => ({ path })))("$path", ({ path }) => {
    expect(mathematics.exec(textOf(path))?.[0]).toBeUndefined();
  });

  test("notices a formula in a component", () => {
    expect(mathematics.test("const setback = Math.tan(angle / 2) * radius;")).toBe(true);
  });
});
