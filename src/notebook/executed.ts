import type { Shown } from "./output.js";

/** Text that a cell wrote. */
export interface StreamText {
  readonly kind: "stream";
  readonly stream: "stdout" | "stderr";
  readonly text: string;
}

/** What a cell put out, in order. */
export type CellOutput = Shown | StreamText;

/** A cell of prose. */
export interface ProseCell {
  readonly type: "markdown";
  readonly source: string;
}

/** A cell of code with its outputs. */
export interface CodeCell {
  readonly type: "code";
  readonly source: string;
  readonly outputs: readonly CellOutput[];
}

/** A notebook after a complete run without error. */
export interface ExecutedNotebook {
  /** File name without its ending. */
  readonly name: string;
  readonly cells: readonly (ProseCell | CodeCell)[];
}
