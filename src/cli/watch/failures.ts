import { NotebookError } from "../../notebook/errors.js";
import type { BuildFailure } from "../../report/build.js";
import { ReportError } from "../../report/errors.js";

/** What failed, as a page shows it. */
export interface ShownFailure {
  /** Notebook, cell and line, as far as they are known. */
  readonly place: string;
  readonly text: string;
}

/** A failure of a build, as a page shows it. */
export function shownFailure({ name, message, cause }: BuildFailure): ShownFailure {
  if (cause instanceof ReportError) return { place: cause.place, text: cause.text };
  if (!(cause instanceof NotebookError)) return { place: name, text: message };
  const { notebook, cell, line, text } = cause;
  const parts = [notebook, cell !== undefined && `cell ${cell}`, line !== undefined && `line ${line}`];
  return { place: parts.filter((part) => part !== false).join(", "), text };
}
