import ts from "typescript";
import type { Input, Inputs } from "../../src/lib/inputs.ts";
import { phraseKey } from "../../src/lib/quantity/phrase.ts";
import { kindOf, type Quantity, quantityKinds } from "../../src/lib/quantity/units.ts";
import type { Output, Worksheet } from "../../src/lib/worksheet.ts";
import { importsOf, parse } from "../rules/source-files.ts";

/** Sentences of a file: `say` templates by their key, and words that stand in their values, such as `${one ? "its bend" : "its two bends"}`. */
export function sentencesOf(path: string): string[] {
  const found: string[] = [];
  const isSay = (node: ts.Node): node is ts.TaggedTemplateExpression =>
    ts.isTaggedTemplateExpression(node) && node.tag.getText() === "say";
  const wordsIn = (node: ts.Node): void => {
    // What is compared with, or asked for by name, is not shown.
    if (ts.isBinaryExpression(node) && /^[!=]==$/.test(node.operatorToken.getText())) return;
    if (ts.isCallExpression(node) || ts.isElementAccessExpression(node) || isSay(node)) return;
    if (ts.isStringLiteral(node) && /\p{L}{2}/u.test(node.text)) found.push(node.text);
    ts.forEachChild(node, wordsIn);
  };
  const visit = (node: ts.Node): void => {
    if (isSay(node)) {
      const { template } = node;
      const spans = ts.isNoSubstitutionTemplateLiteral(template) ? [] : template.templateSpans;
      const head = ts.isNoSubstitutionTemplateLiteral(template) ? template.text : template.head.text;
      found.push(phraseKey([head, ...spans.map((span) => span.literal.text)]));
      for (const span of spans) wordsIn(span.expression);
    }
    ts.forEachChild(node, visit);
  };
  visit(parse(path));
  return found.filter((text) => /\p{L}{2}/u.test(text.replaceAll("{}", "")));
}

/** A file of the library and every file of it that it imports, directly or not. */
export function withImports(path: string, seen: Set<string> = new Set()): Set<string> {
  if (seen.has(path)) return seen;
  seen.add(path);
  for (const target of importsOf(parse(path))) if (target.startsWith("src/lib/")) withImports(target, seen);
  return seen;
}

function inputWords(input: Input): string[] {
  const own = [input.label, input.help, "whenEmpty" in input ? input.whenEmpty : undefined];
  if (input.kind === "choice") own.push(...Object.values(input.choices));
  if (input.kind === "list") own.push(input.rowName, ...Object.values(input.columns).flatMap(inputWords));
  return own.filter((text) => text !== undefined);
}

function outputWords(output: Output): string[] {
  const own = [output.label, output.help];
  if (output.kind === "choice") own.push(...Object.values(output.choices));
  if (output.kind === "list") own.push(...Object.values(output.columns).flatMap(outputWords));
  return own.filter((text) => text !== undefined);
}

function quantitiesOf(inputs: Inputs): Quantity[] {
  return Object.values(inputs).flatMap((input) =>
    input.kind === "quantity"
      ? [input.quantity]
      : input.kind === "list"
        ? Object.values(input.columns).flatMap((cell) => (cell.kind === "quantity" ? [cell.quantity] : []))
        : [],
  );
}

/** Everything the definition of a calculator shows, without what its answers say. */
export function wordsOf({ title, summary, inputs, outputs, formulas, validity }: Worksheet): string[] {
  return [
    title,
    summary,
    ...validity,
    ...Object.values(inputs).flatMap(inputWords),
    ...Object.values(outputs).flatMap(outputWords),
    ...formulas.flatMap(({ name, symbols }) => [name, ...Object.values(symbols).map(({ label }) => label)]),
    ...quantitiesOf(inputs).map((quantity) => kindOf(quantity).example),
  ];
}

/** What messages call a kind of quantity, and its units that are words. */
export function unitWords(): string[] {
  return Object.values(quantityKinds).flatMap(({ name, example, units }) => [
    name,
    `${/^[aeiou]/.test(name) ? "an" : "a"} ${name}`,
    example,
    ...Object.values(units).map(({ text }) => text),
  ]);
}

/** Every text that is written down in a file of the library, to see whether a translation is still of use. */
export function literalsOf(path: string): string[] {
  const found = sentencesOf(path);
  const visit = (node: ts.Node): void => {
    if (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)) found.push(node.text);
    // Keys of a table whose names are shown.
    if (ts.isPropertyAssignment(node) && ts.isIdentifier(node.name)) found.push(node.name.text);
    ts.forEachChild(node, visit);
  };
  visit(parse(path));
  return found;
}
