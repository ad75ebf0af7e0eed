import type { Shown } from "./output.js";
import type { Role } from "./roles.js";

/** Text that a cell wrote. */
export interface StreamText {
  readonly kind: "stream";
  readonly stream: "stdout" | "stderr";
  readonly text: string;
}

/** What a cell put out, in order. */
export type CellOutput = Shown | StreamText;

/** Where a cell stands. */
interface NumberedCell {
  /** Number among all cells of the file, from 1, as errors name it; empty and raw cells count. */
  readonly number: number;
}

/** Tags that change how a cell stands on the page. */
interface TaggedCell extends NumberedCell {
  readonly tags?: readonly string[];
}

/** A cell of prose. */
export interface ProseCell extends TaggedCell {
  readonly type: "markdown";
  readonly source: string;
}

/** A cell of code with its outputs. */
export interface CodeCell extends TaggedCell {
  readonly type: "code";
  readonly source: string;
  readonly outputs: readonly CellOutput[];
}

/** A notebook after a complete run without error. */
export interface ExecutedNotebook {
  /** File name without its ending; on the way to a page, the name of the page. */
  readonly name: string;
  /** What it was made from, in words; the notebook file of its name when left out. */
  readonly madeFrom?: string;
  /** Place among the reports, from 1; those without one come last. */
  readonly place?: number;
  /** Readers it is for; all when left out. */
  readonly roles?: readonly Role[];
  readonly cells: readonly (ProseCell | CodeCell)[];
}

/** The file that a notebook is known by, for messages and for the foot of its page. */
export function madeFrom(notebook: ExecutedNotebook): string {
  return notebook.madeFrom ?? `${notebook.name}.ipynb`;
}
