/** What every failed run of a notebook carries. */
export interface NotebookErrorDetail {
  /** Path of the notebook as it was given. */
  readonly notebook: string;
  /** Number of the cell among all cells, from 1. */
  readonly cell?: number | undefined;
  /** Line within the cell, from 1. */
  readonly line?: number | undefined;
  /** What went wrong, as the kernel or the runner says it. */
  readonly text: string;
}

/** Parent of all failures of a notebook run: the message names notebook, cell, line and text, as far as known. */
export class NotebookError extends Error {
  readonly notebook: string;
  readonly cell: number | undefined;
  readonly line: number | undefined;
  readonly text: string;

  constructor(detail: NotebookErrorDetail) {
    const cell = detail.cell === undefined ? "" : `, cell ${detail.cell}`;
    const line = detail.line === undefined ? "" : `, line ${detail.line}`;
    super(`${detail.notebook}${cell}${line}: ${detail.text}`);
    this.name = new.target.name;
    this.notebook = detail.notebook;
    this.cell = detail.cell;
    this.line = detail.line;
    this.text = detail.text;
  }
}

/** A file that is not a notebook of this kernel. */
export class NotANotebookError extends NotebookError {}

/** A cell threw, or left a rejected promise behind. */
export class CellThrewError extends NotebookError {}

/** A cell does not compile. */
export class CellCompileError extends NotebookError {}

/** A cell put out something that no report can show. */
export class CellOutputError extends NotebookError {}

/** A cell ran longer than it may. */
export class CellTimeLimitError extends NotebookError {}

/** A notebook ran longer than it may. */
export class NotebookTimeLimitError extends NotebookError {}

/** The kernel ended, or never came up. */
export class KernelDeathError extends NotebookError {}

/** The caller stopped the run. */
export class NotebookStoppedError extends NotebookError {}
