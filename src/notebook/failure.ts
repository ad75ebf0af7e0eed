import { stripVTControlCharacters } from "node:util";
import { CellCompileError, CellThrewError, type NotebookError } from "./errors.js";
import { thrownLine } from "./line.js";

/** A message of the kernel's compiler: file of the folder (not for the cell itself), line, column, text. */
const diagnostic = /^(?:(\S.*) )?(\d+):(\d+) - ([\s\S]*)$/;

export interface FailedCell {
  readonly notebook: string;
  readonly cell: number;
  readonly source: string;
  /** Texts that the kernel wrote to stderr, one for each write. */
  readonly texts: readonly string[];
  readonly folder: string;
}

/** The error of a cell to whose run the kernel answered with an error: it says why only in text on stderr. */
export function cellFailure({ notebook, cell, source, texts, folder }: FailedCell): NotebookError {
  const found = texts.map((text) => diagnostic.exec(text.trimEnd()));
  const first = found.find((match) => match !== null && match[1] === undefined) ?? found[0];
  if (found.length > 0 && found.every((match) => match !== null) && first) {
    return new CellCompileError({
      notebook,
      cell,
      line: first[1] === undefined ? Number(first[2]) : undefined,
      text: texts.map((text) => text.trimEnd()).join("\n"),
    });
  }
  return thrownFailure({ notebook, cell, source, stack: texts.at(-1) ?? "", folder, sameCell: true });
}

export interface ThrownFailure {
  readonly notebook: string;
  readonly cell: number;
  readonly source: string;
  readonly stack: string;
  readonly folder: string;
  /** False when an earlier cell may have left behind what threw. */
  readonly sameCell: boolean;
}

/** The error of a cell that threw, with the line if the stack tells it. */
export function thrownFailure({ notebook, cell, source, stack, folder, sameCell }: ThrownFailure): NotebookError {
  const plain = stripVTControlCharacters(stack);
  return new CellThrewError({
    notebook,
    cell,
    line: thrownLine({ source, stack: plain, folder, sameCell }),
    text: withoutFrames(plain) || "the cell failed without a text",
  });
}

/** The printed error without the excerpt of compiled code before it and without the stack and the fields after it. */
function withoutFrames(stack: string): string {
  const rows = stack.split("\n");
  const excerpt = /^(evalmachine\.<anonymous>|<anonymous_script>):\d+$/.test(rows[0] ?? "");
  const start = excerpt ? rows.findIndex((row) => row.trim() === "") + 1 : 0;
  const end = rows.findIndex((row, index) => index >= start && /^\s+at /.test(row));
  return rows
    .slice(start, end < 0 ? undefined : end)
    .join("\n")
    .trim();
}
