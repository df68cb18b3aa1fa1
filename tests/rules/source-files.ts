import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, posix, relative, sep } from "node:path";
import { fileURLToPath } from "node:url";
import ts from "typescript";

/** The project's folder, with forward slashes whatever the machine. */
const root = join(dirname(fileURLToPath(import.meta.url)), "..", "..");

/** Paths of all files below a folder of the project, from its root, with forward slashes. */
export function filesIn(folder: string, ending: RegExp): string[] {
  return readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && ending.test(entry.name))
    .map((entry) => relative(root, join(entry.parentPath, entry.name)).split(sep).join("/"))
    .sort();
}

export const textOf = (path: string) => readFileSync(join(root, path), "utf8");

export function parse(path: string, text = textOf(path)): ts.SourceFile {
  return ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true);
}

/** Where a file imports or re-exports from: a path from the project's root, or a package's name. */
export function importsOf(file: ts.SourceFile): string[] {
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    const specifier =
      (ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) && node.moduleSpecifier
        ? node.moduleSpecifier
        : ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword
          ? node.arguments[0]
          : ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument)
            ? node.argument.literal
            : undefined;
    if (specifier && ts.isStringLiteralLike(specifier)) {
      const { text } = specifier;
      found.push(text.startsWith(".") ? posix.normalize(posix.join(posix.dirname(file.fileName), text)) : text);
    }
    ts.forEachChild(node, visit);
  };
  visit(file);
  return found;
}
