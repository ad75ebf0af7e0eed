import { execFileSync } from "node:child_process";
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { dirname, relative, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import ts from "typescript";

export const root = resolve(dirname(fileURLToPath(import.meta.url)), "../..");

/** Names of all TypeScript files below a folder of the project, from the root; what other tests leave there for a moment is not read. */
export function filesBelow(folder: string): string[] {
  return readdirSync(resolve(root, folder), { withFileTypes: true })
    .flatMap((entry) => {
      const name = `${folder}/${entry.name}`;
      if (entry.isDirectory())
        return entry.name.startsWith(".") || entry.name === "node_modules" ? [] : filesBelow(name);
      return entry.name.endsWith(".ts") ? [name] : [];
    })
    .sort();
}

export const read = (file: string) => readFileSync(resolve(root, file), "utf8");

/** Files that belong to the project: tracked, or new and not ignored. */
export function projectFiles(): string[] {
  const listed = execFileSync("git", ["ls-files", "--cached", "--others", "--exclude-standard"], { cwd: root });
  return [...new Set(listed.toString().split("\n"))].filter((file) => file !== "" && existsSync(resolve(root, file)));
}

export function parse(file: string): ts.SourceFile {
  return ts.createSourceFile(file, read(file), ts.ScriptTarget.ES2022, true);
}

/** One import or re-export of a file of the project. */
export interface Imported {
  readonly from: string;
  /** Names taken; `*` for all. */
  readonly names: readonly string[];
}

/** Everything that a file imports or re-exports from files of the project, types included. */
export function importsOf(file: string): Imported[] {
  const found: Imported[] = [];
  const take = (specifier: ts.Expression | undefined, names: readonly string[]) => {
    if (!specifier || !ts.isStringLiteral(specifier) || !specifier.text.startsWith(".")) return;
    const target = resolve(root, dirname(file), specifier.text.replace(/\.js$/u, ".ts"));
    found.push({ from: relative(root, target), names });
  };
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node)) take(node.moduleSpecifier, namesOf(node.importClause?.namedBindings));
    if (ts.isExportDeclaration(node)) take(node.moduleSpecifier, namesOf(node.exportClause));
    if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument) && ts.isStringLiteral(node.argument.literal))
      take(node.argument.literal, [node.qualifier?.getText() ?? "*"]);
    if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword)
      take(node.arguments[0], ["*"]);
    ts.forEachChild(node, visit);
  };
  visit(parse(file));
  return found;
}

function namesOf(bindings: ts.NamedImportBindings | ts.NamedExportBindings | undefined): string[] {
  if (!bindings || ts.isNamespaceImport(bindings) || ts.isNamespaceExport(bindings)) return ["*"];
  return bindings.elements.map((element) => (element.propertyName ?? element.name).text);
}

/** An exported declaration with the doc comment above it. */
export interface Exported {
  readonly file: string;
  readonly name: string;
  readonly node: ts.Declaration;
  readonly comment: string;
}

/** Exported declarations of a file, one for each name. */
export function exportsOf(file: string): Exported[] {
  const source = parse(file);
  return source.statements.flatMap((statement): Exported[] => {
    const exported = ts.canHaveModifiers(statement)
      ? ts.getModifiers(statement)?.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword)
      : false;
    if (!exported) return [];
    const comment = commentAbove(source, statement);
    if (ts.isVariableStatement(statement)) {
      return statement.declarationList.declarations.map((node) => ({ file, name: node.name.getText(), node, comment }));
    }
    const node = statement as unknown as ts.NamedDeclaration;
    return node.name ? [{ file, name: node.name.getText(), node, comment }] : [];
  });
}

function commentAbove(source: ts.SourceFile, node: ts.Node): string {
  const text = source.getFullText();
  const ranges = ts.getLeadingCommentRanges(text, node.getFullStart()) ?? [];
  const last = ranges.map(({ pos, end }) => text.slice(pos, end)).findLast((comment) => comment.startsWith("/**"));
  return last ?? "";
}

/** Functions that the package offers to its users. */
export function publicFunctions(): Exported[] {
  const offered = importsOf("src/index.ts");
  return offered.flatMap(({ from, names }) =>
    exportsOf(from).filter(({ name, node }) => names.includes(name) && ts.isFunctionDeclaration(node)),
  );
}
