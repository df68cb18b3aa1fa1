import ts from "typescript";
import { describe, expect, test } from "vitest";
import { filesIn, parse } from "./source-files.ts";

/** Files whose functions are machinery, not formulas. Those of statistics have the unit of their data or none. */
const machinery = /^src\/lib\/([^/]+\.ts$|quantity\/|worksheets\/|part\/)/;

interface Documented {
  readonly name: string;
  readonly path: string;
  readonly node: ts.FunctionDeclaration;
  readonly comment: string;
}

function exportedFunctions(file: ts.SourceFile): Documented[] {
  return file.statements.flatMap((node) => {
    if (!ts.isFunctionDeclaration(node) || !node.name) return [];
    if (!node.modifiers?.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword)) return [];
    const comment = ts.getJSDocCommentsAndTags(node).map((each) => each.getText());
    return [{ name: node.name.text, path: file.fileName, node, comment: comment.join("\n") }];
  });
}

/** Whether a function throws by itself: not a throw in a function within it, not an error that it caught and passes on. */
function throws(node: ts.FunctionDeclaration): boolean {
  let found = false;
  const visit = (inner: ts.Node): void => {
    if (ts.isFunctionLike(inner)) return;
    if (ts.isThrowStatement(inner)) {
      const passedOn = ts.isIdentifier(inner.expression) && isCaught(inner, inner.expression.text);
      if (!passedOn) found = true;
    }
    if (ts.isTryStatement(inner)) {
      // What is thrown in the block is caught; only the catch and what follows can let it out.
      if (!inner.catchClause) visit(inner.tryBlock);
      if (inner.catchClause) visit(inner.catchClause.block);
      if (inner.finallyBlock) visit(inner.finallyBlock);
      return;
    }
    if (ts.isCallExpression(inner) && /^checkRanges?$/.test(inner.expression.getText())) found = true;
    ts.forEachChild(inner, visit);
  };
  if (node.body) ts.forEachChild(node.body, visit);
  return found;
}

function isCaught(node: ts.Node, name: string): boolean {
  for (let outer = node.parent; outer; outer = outer.parent)
    if (ts.isCatchClause(outer)) return outer.variableDeclaration?.name.getText() === name;
  return false;
}

/** Names a `@param` may begin with. */
function parameterNames(node: ts.FunctionDeclaration): string[] {
  return node.parameters.flatMap(({ name }) =>
    ts.isIdentifier(name) ? [name.text] : ts.isObjectBindingPattern(name) ? name.elements.map((each) => each.name.getText()) : [],
  );
}

/** What is missing in the comment of a function. */
function missing({ path, node, comment }: Documented): string[] {
  const faults: string[] = [];
  const summary = comment
    .replace(/^\/\*\*|\*\/$/g, "")
    .replace(/^\s*\*/gm, "")
    .trim();
  if (summary === "" || summary.startsWith("@")) faults.push("a sentence saying what it is");
  if (throws(node) && !comment.includes("@throws")) faults.push("@throws");
  if (!machinery.test(path) && /^number( \| (undefined|null))?$/.test(node.type?.getText() ?? "")) {
    // A comment of one sentence says at once what is returned; a longer one has a tag for it.
    if (/@(param|remarks)/.test(comment) && !comment.includes("@returns")) faults.push("@returns");
    const ofAnswer = comment.replace(/@param[^@]*/g, "");
    if (!path.startsWith("src/lib/stats/") && !/\[[^\]]+\]|(same|the) unit\b/.test(ofAnswer))
      faults.push("the unit of the answer");
  }
  const names = parameterNames(node);
  for (const [, param = ""] of comment.matchAll(/@param (\w+)/g)) {
    const destructured = node.parameters.some(({ name }) => ts.isObjectBindingPattern(name));
    if (!names.includes(param) && !destructured) faults.push(`a parameter called ${param}`);
  }
  return faults;
}

const functions = filesIn("src/lib", /\.ts$/).flatMap((path) => exportedFunctions(parse(path)));

describe("every exported function of the library says what it is", () => {
  test("there are some", () => {
    expect(functions.length).toBeGreaterThan(60);
  });

  test.each(functions)("$path $name", (each) => {
    expect(missing(each)).toEqual([]);
  });

  const read = (text: string) => exportedFunctions(parse("src/lib/bending/x.ts", text)).map(missing);

  test.each([
    ["export function bare(a: number) { return a; }", ["a sentence saying what it is"]],
    ["/** @returns [mm] */ export function x(): number { return 1; }", ["a sentence saying what it is"]],
    ["/** Length. */ export function x(): number { return 1; }", ["the unit of the answer"]],
    ["/** Length [mm]. */ export function x(): number { return 1; }", []],
    [
      "/** Length.\n * @param a - a [mm]\n */ export function x(a: number): number { return a; }",
      ["@returns", "the unit of the answer"],
    ],
    ["/** Length.\n * @returns L [mm]\n */ export function x(): number { return 1; }", []],
    ["/** Refuses. */ export function x() { if (1) throw new Error(); }", ["@throws"]],
    ["/** Refuses. */ export function x(v: number) { checkRange('a', b, v); }", ["@throws"]],
    ["/** Passes on. */ export function x() { try { y(); } catch (error) { throw error; } }", []],
    ["/** Changes it. */ export function x() { try { y(); } catch (error) { throw new Error(); } }", ["@throws"]],
    ["/** Later. */ export function x() { return () => { throw new Error(); }; }", []],
    ["/** Bends.\n * @param bend.angle - A\n */ export function x(size: object) { return size; }", ["a parameter called bend"]],
  ])("notices: %s", (text, expected) => {
    expect(read(text)).toEqual([expected]);
  });
});

describe("every example in the library gives what it says", () => {
  const examples = functions.flatMap(({ path, name, comment }) => {
    const match = /@example\s+(.+?);\s*\/\/\s*(.+?)\s*(?:\*\/)?$/m.exec(comment);
    return match ? [{ path, name, call: match[1] ?? "", said: match[2] ?? "" }] : [];
  });
  const modules = import.meta.glob<Record<string, unknown>>("../../src/lib/**/*.ts");

  /** Every number anywhere in a value. */
  function numbersIn(value: unknown): number[] {
    if (typeof value === "number") return [value];
    return typeof value === "object" && value !== null ? Object.values(value).flatMap(numbersIn) : [];
  }

  /** Whether a value is a printed number, to the decimals printed. */
  const isPrinted = (value: number, printed: string) =>
    Math.abs(value - Number(printed)) <= 0.5 * 10 ** -(printed.split(".")[1]?.length ?? 0) * (1 + 1e-9);

  test("most quantity functions have one", () => {
    expect(examples.length).toBeGreaterThan(20);
  });

  test.each(examples)("$path: $call gives $said", async ({ path, call, said }) => {
    const module = await modules[`../../${path}`]?.();
    const names = Object.keys(module ?? {}).filter((name) => name !== "default");
    const result: unknown = new Function(...names, `return ${call};`)(...names.map((name) => module?.[name]));
    if (typeof result === "string") {
      expect(said).toBe(JSON.stringify(result));
      return;
    }
    const printed = [...said.matchAll(/(?<![\w.])−?-?\d+(?:\.\d+)?/g)].map(([text]) => text.replace("−", "-"));
    expect(printed.length, "a number in the comment").toBeGreaterThan(0);
    // A single number may be followed by the same in another unit; of an object every number printed has to be in it.
    const [first = ""] = printed;
    if (typeof result === "number") expect(isPrinted(result, first), `${result}`).toBe(true);
    else
      for (const each of printed)
        expect(
          numbersIn(result).some((value) => isPrinted(value, each)),
          each,
        ).toBe(true);
  });
});
