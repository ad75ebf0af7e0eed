import { mkdirSync } from "node:fs";
import path from "node:path";
import { afterAll, expect } from "vitest";
import { NotebookError } from "../../src/notebook/errors.js";
import type { CellOutput, ExecutedNotebook } from "../../src/notebook/executed.js";
import { type RunNotebook, runNotebook } from "../../src/notebook/run.js";
import { type Scratch, scratchFolder } from "./scratch.js";

export interface RunHarness {
  readonly scratch: Scratch;
  /** Folder for the temporary files of this test file alone. */
  readonly temporary: string;
  run(file: string, more?: Partial<RunNotebook>): Promise<ExecutedNotebook>;
  /** The error with which the run must end. */
  failure(file: string, more?: Partial<RunNotebook>): Promise<NotebookError>;
}

/** A scratch folder for the notebooks of a test file, removed afterwards. */
export function runHarness(): RunHarness {
  const scratch = scratchFolder();
  const temporary = path.join(scratch.folder, "temporary");
  mkdirSync(temporary);
  const before = process.env.TMPDIR;
  process.env.TMPDIR = temporary;
  afterAll(() => {
    if (before === undefined) delete process.env.TMPDIR;
    else process.env.TMPDIR = before;
    scratch.remove();
  });
  const run: RunHarness["run"] = (file, more = {}) =>
    runNotebook({ path: file, cellSeconds: 120, notebookSeconds: 240, ...more });
  return {
    scratch,
    temporary,
    run,
    failure: async (file, more) => {
      const error = await run(file, more).then(
        () => undefined,
        (reason: unknown) => reason,
      );
      expect(error).toBeInstanceOf(NotebookError);
      return error as NotebookError;
    },
  };
}

/** Outputs of the code cells, in order. */
export function outputsOf({ cells }: ExecutedNotebook): (readonly CellOutput[])[] {
  return cells.flatMap((cell) => (cell.type === "code" ? [cell.outputs] : []));
}
