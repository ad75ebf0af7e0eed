import { SourceMap, type SourceMapPayload } from "node:module";
import path from "node:path";
import type * as Typescript from "typescript";
import { tslabRequire } from "./tslab.js";

/** Name that the kernel gives to the code of every cell in stack traces. */
const frame = /evalmachine\.<anonymous>:(\d+):(\d+)\)?$/;
const prefix = "export {};\n";

/** Line and column in the code that the kernel made from the cell, from 1. */
interface Place {
  readonly line: number;
  readonly column: number;
}

export interface ThrownLine {
  readonly source: string;
  readonly stack: string;
  readonly folder: string;
  readonly sameCell: boolean;
}

/**
 * Line of a cell at which an error was thrown, from the printed stack.
 *
 *     printed place → CommonJS code → ES module code → cell, through the source maps of both steps
 *
 * @param source  text of the cell
 * @param stack  error as the kernel printed it
 * @param folder  working folder of the kernel, from which imports are resolved
 * @param sameCell  whether the error is known to come from this cell and not from something that an earlier cell left running
 * @returns line within the cell, from 1; undefined when the stack does not tell it
 * Valid for errors whose stack passes through the cell; the kernel compiles every cell in two steps and drops types and empty lines,
 * so both steps are repeated here with the kernel's own compiler.
 */
export function thrownLine({ source, stack, folder, sameCell }: ThrownLine): number | undefined {
  const place = placeInCell(stack);
  if (place === undefined) return undefined;
  const compiled = compile(source, folder);
  if (place.lines === undefined ? !sameCell : place.lines !== compiled.lines) return undefined;
  const middle = compiled.toModule.findEntry(place.line - 1, place.column - 1);
  if (!("originalLine" in middle)) return undefined;
  const origin = compiled.toCell.findEntry(middle.originalLine, middle.originalColumn);
  if (!("originalLine" in origin)) return undefined;
  // The prefix takes one line; lines count from 1.
  const line = origin.originalLine;
  return line >= 1 && line <= source.split("\n").length ? line : undefined;
}

/**
 * The outermost place inside the cell: functions of earlier cells carry the same name and lie further in.
 * A cell that still runs its first, synchronous part is called from its own last line: that call tells the number of lines.
 */
function placeInCell(stack: string): (Place & { readonly lines: number | undefined }) | undefined {
  const rows = stack.split("\n");
  let place: Place | undefined;
  for (const [index, row] of rows.entries()) {
    const match = /^\s+at /.test(row) ? frame.exec(row.trimEnd()) : null;
    if (match === null) continue;
    const line = Number(match[1]);
    if (/\(node:vm:\d+:\d+\)$/.test(rows[index + 1]?.trimEnd() ?? "")) return place && { ...place, lines: line };
    place = { line, column: Number(match[2]) };
  }
  return place && { ...place, lines: undefined };
}

interface Compiled {
  readonly toModule: SourceMap;
  readonly toCell: SourceMap;
  /** Line of the call that ends the kernel's wrapper. */
  readonly lines: number;
}

function compile(source: string, folder: string): Compiled {
  const ts = tslabRequire("@tslab/typescript-for-tslab") as typeof Typescript;
  const first = compileToModule(ts, source, folder);
  const second = ts.transpileModule(first.code, {
    fileName: "cell.js",
    compilerOptions: {
      module: ts.ModuleKind.CommonJS,
      target: ts.ScriptTarget.ES2022,
      esModuleInterop: true,
      newLine: ts.NewLineKind.LineFeed,
      noImplicitUseStrict: true,
      sourceMap: true,
    },
  });
  const code = second.outputText.replace(/\/\/# sourceMappingURL=.*\s*$/, "");
  return {
    toModule: new SourceMap(JSON.parse(second.sourceMapText ?? "{}") as SourceMapPayload),
    toCell: first.map,
    lines: code.split("\n").length + 1 - first.addedLines,
  };
}

/** The kernel's first step: types out, every name of the cell exported, the last expression kept under a name. */
function compileToModule(
  ts: typeof Typescript,
  source: string,
  folder: string,
): { code: string; map: SourceMap; addedLines: number } {
  const fileName = path.join(folder, "haulbook-cell.ts");
  const options: Typescript.CompilerOptions = {
    module: ts.ModuleKind.ESNext,
    moduleResolution: ts.ModuleResolutionKind.Node10,
    target: ts.ScriptTarget.ES2022,
    esModuleInterop: true,
    newLine: ts.NewLineKind.LineFeed,
    noImplicitUseStrict: true,
    experimentalDecorators: true,
    resolveJsonModule: true,
    jsx: ts.JsxEmit.React,
    noLib: true,
    types: [],
    skipLibCheck: true,
    sourceMap: true,
    outDir: path.join(folder, "haulbook-out"),
  };
  const host = ts.createCompilerHost(options);
  const parse = (text: string) => ts.createSourceFile(fileName, text, ts.ScriptTarget.ES2022, true);
  const names = exportedNames(ts, parse(prefix + source));
  const file = parse(`${prefix}${source}${names.length === 0 ? "" : `\nexport {${names.join(", ")}}`}`);
  const readFile = host.getSourceFile.bind(host);
  host.getSourceFile = (name, ...rest) =>
    path.resolve(name) === path.resolve(fileName) ? file : readFile(name, ...rest);
  host.getCurrentDirectory = () => folder;
  let code = "";
  let map = "{}";
  ts.createProgram([fileName], options, host).emit(file, (name, text) => {
    if (name.endsWith("haulbook-cell.js")) code = text;
    if (name.endsWith("haulbook-cell.js.map")) map = text;
  });
  code = code.replace(/\/\/# sourceMappingURL=.*\s*$/, "");
  const last = file.statements.filter((statement) => !ts.isExportDeclaration(statement)).at(-1);
  const keepsLast = last !== undefined && ts.isExpressionStatement(last);
  return {
    code: keepsLast ? `${code}export const tsLastExpr = 0;\n` : code,
    map: new SourceMap(JSON.parse(map) as SourceMapPayload),
    addedLines: keepsLast ? 1 : 0,
  };
}

/** Names that the cell declares at its top level. */
function exportedNames(ts: typeof Typescript, file: Typescript.SourceFile): string[] {
  const names = new Set<string>();
  const add = (name: Typescript.BindingName | undefined) => {
    if (name === undefined) return;
    if (ts.isIdentifier(name)) names.add(name.text);
    else for (const element of name.elements) if (ts.isBindingElement(element)) add(element.name);
  };
  for (const statement of file.statements) {
    if (ts.isVariableStatement(statement))
      for (const declared of statement.declarationList.declarations) add(declared.name);
    else if (ts.isImportDeclaration(statement)) {
      const clause = statement.importClause;
      add(clause?.name);
      const bindings = clause?.namedBindings;
      if (bindings !== undefined && ts.isNamespaceImport(bindings)) add(bindings.name);
      else for (const element of bindings?.elements ?? []) add(element.name);
    } else if (
      ts.isFunctionDeclaration(statement) ||
      ts.isClassDeclaration(statement) ||
      ts.isEnumDeclaration(statement) ||
      ts.isInterfaceDeclaration(statement) ||
      ts.isTypeAliasDeclaration(statement)
    ) {
      add(statement.name);
    }
  }
  return [...names];
}
