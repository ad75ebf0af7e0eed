import path from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { cellTags } from "./cell-tags.js";
import { type CellCollector, cellCollector } from "./collect.js";
import {
  CellOutputError,
  CellTimeLimitError,
  KernelDeathError,
  type NotebookError,
  NotebookStoppedError,
  NotebookTimeLimitError,
} from "./errors.js";
import type { CodeCell, ExecutedNotebook, ProseCell } from "./executed.js";
import { cellFailure, thrownFailure } from "./failure.js";
import { inputEnvironment } from "./input.js";
import { describeExit, type Kernel, KernelStartError, type Request, startKernel } from "./kernel.js";
import { kernelImage } from "./kernel-image.js";
import { dataModeVariable } from "./output.js";
import { readNotebook, type SourceCell } from "./read.js";

/** How far a run has come. */
export interface Progress {
  readonly notebook: string;
  /** Number of the cell that is about to run, from 1 among all cells. */
  readonly cell: number;
  readonly cells: number;
}

export interface RunNotebook {
  /** Path of the .ipynb file. */
  readonly path: string;
  /** Files that it is run with: whole paths, or paths from its folder; at most two. */
  readonly inputs?: readonly string[] | undefined;
  /** Longest time for one cell [s]. */
  readonly cellSeconds: number;
  /** Longest time for the whole notebook, the start of the kernel included [s]. */
  readonly notebookSeconds: number;
  readonly onProgress?: (progress: Progress) => void;
  /** Stops the run. */
  readonly signal?: AbortSignal;
  /** Told at the end every file and folder that the cells read; after a failure as far as it is known. */
  readonly onFilesRead?: (paths: readonly string[]) => void;
  /** Environment of the kernel; by default the one of this process. */
  readonly environment?: NodeJS.ProcessEnv;
}

/** A code cell that has run or is running. */
interface RunningCell {
  readonly number: number;
  readonly source: string;
  readonly collector: CellCollector;
}

/** What ended the waiting for a cell. */
type Outcome =
  | { readonly type: "replied"; readonly status: unknown }
  | { readonly type: "died" | "cell" | "notebook" | "stopped" | "lost" };

/** Time that a cell has to react to an interrupt before its kernel is killed [ms]. */
const interruptGrace = 300;
/** Time after an error in which the kernel turns down whatever it is asked, and a little more [ms]. */
const errorRest = 300;
/** Time in which outputs must arrive once the kernel has answered [ms]. */
const outputGrace = 20_000;

/**
 * Runs the code cells of a notebook from top to bottom in a kernel of its own and gathers what they show.
 *
 * @param path  path of the .ipynb file
 * @param cellSeconds  longest time for one cell [s], above 0
 * @param notebookSeconds  longest time for the notebook [s], above 0
 * @returns prose and code cells with their outputs; code cells without code and raw cells are left out
 * @throws NotebookError, of the subclass that says what went wrong; the kernel is gone by then
 * Example: (await runNotebook({ path: "notebooks/hold.ipynb", cellSeconds: 60, notebookSeconds: 300 })).name → "hold"
 */
export async function runNotebook(run: RunNotebook): Promise<ExecutedNotebook> {
  const deadline = performance.now() + run.notebookSeconds * 1000;
  const { cells, ...place } = await readNotebook(run.path);
  const folder = path.dirname(path.resolve(run.path));
  const kernel = await start(run, folder, deadline);
  try {
    const executed = await runCells({ run, kernel, cells, folder, deadline }).finally(async () =>
      run.onFilesRead?.(await kernel.filesRead()),
    );
    await kernel.close();
    return { name: path.basename(run.path, path.extname(run.path)), ...place, cells: executed };
  } finally {
    // Does nothing after an orderly end.
    await kernel.kill();
  }
}

async function start(run: RunNotebook, folder: string, deadline: number): Promise<Kernel> {
  try {
    return await startKernel({
      folder,
      environment: {
        ...(run.environment ?? process.env),
        ...inputEnvironment(run.inputs ?? []),
        [dataModeVariable]: "data",
      },
      startSeconds: Math.min(60, Math.max(0, (deadline - performance.now()) / 1000)),
      signal: run.signal,
      image: await kernelImage(),
    });
  } catch (error) {
    if (!(error instanceof KernelStartError)) throw error;
    if (run.signal?.aborted) throw new NotebookStoppedError({ notebook: run.path, text: "the run was stopped" });
    if (performance.now() >= deadline) throw notebookLimit(run);
    throw new KernelDeathError({ notebook: run.path, text: error.message });
  }
}

interface RunCells {
  readonly run: RunNotebook;
  readonly kernel: Kernel;
  readonly cells: readonly SourceCell[];
  readonly folder: string;
  readonly deadline: number;
}

async function runCells({ run, kernel, cells, folder, deadline }: RunCells): Promise<(ProseCell | CodeCell)[]> {
  const ran: RunningCell[] = [];
  const executed: (ProseCell | (() => CodeCell))[] = [];
  const figures = new Map<string, number>();
  for (const [index, { type, source, tags }] of cells.entries()) {
    const number = index + 1;
    const tagged = tags && { tags };
    if (type === "markdown") executed.push({ type, number, source, ...tagged });
    if (type !== "code" || source.trim() === "") continue;
    const cell: RunningCell = { number, source, collector: cellCollector() };
    ran.push(cell);
    run.onProgress?.({ notebook: run.path, cell: cell.number, cells: cells.length });
    const request = kernel.execute(source, cell.collector.take);
    const outcome = await wait({ run, kernel, request, deadline, cellSeconds: run.cellSeconds });
    refuseUncaught({ run, ran, folder });
    if (outcome.type !== "replied") throw await interrupted({ run, kernel, cell, request, outcome });
    const mustFail = tags?.includes(cellTags.raises) === true;
    if (mustFail && outcome.status === "ok") {
      const text = `came to its end, but its tag ${cellTags.raises} says that it fails`;
      throw new CellOutputError({ notebook: run.path, cell: cell.number, text });
    }
    if (!mustFail && outcome.status !== "ok") {
      throw cellFailure({ notebook: run.path, cell: cell.number, source, texts: cell.collector.errorTexts(), folder });
    }
    refuseOutputs({ run, cell, figures });
    if (mustFail) await pause(errorRest);
    executed.push(() => ({ type: "code", number, source, ...tagged, outputs: cell.collector.outputs() }));
  }
  await flush({ run, kernel, ran, folder, deadline });
  return executed.map((cell) => (typeof cell === "function" ? cell() : cell));
}

/** Lets what the last cell left behind come in: a rejected promise is only seen one turn later. */
async function flush({
  run,
  kernel,
  ran,
  folder,
  deadline,
}: Omit<RunCells, "cells"> & { ran: readonly RunningCell[] }): Promise<void> {
  const last = ran.at(-1);
  if (last === undefined) return;
  const request = kernel.flush();
  const outcome = await wait({ run, kernel, request, deadline, cellSeconds: run.cellSeconds });
  refuseUncaught({ run, ran, folder });
  if (outcome.type !== "replied") throw await interrupted({ run, kernel, cell: last, request, outcome });
  for (const { number, collector } of ran) {
    const refusal = collector.refusal();
    if (refusal !== undefined) throw new CellOutputError({ notebook: run.path, cell: number, text: refusal });
  }
}

interface Wait {
  readonly run: RunNotebook;
  readonly kernel: Kernel;
  readonly request: Request;
  readonly deadline: number;
  readonly cellSeconds: number;
}

/** Waits until the kernel has answered and everything put out before has arrived, or until something else ends the waiting. */
async function wait({ run, kernel, request, deadline, cellSeconds }: Wait): Promise<Outcome> {
  const over = new AbortController();
  const after = (milliseconds: number, outcome: Outcome): Promise<Outcome> =>
    pause(Math.max(0, milliseconds), outcome, { signal: over.signal }).catch(() => outcome);
  const left = deadline - performance.now();
  const limit: Promise<Outcome> =
    left < cellSeconds * 1000 ? after(left, { type: "notebook" }) : after(cellSeconds * 1000, { type: "cell" });
  let stop = () => {};
  const stopped = new Promise<Outcome>((resolve) => {
    stop = () => resolve({ type: "stopped" });
    if (run.signal?.aborted) stop();
    else run.signal?.addEventListener("abort", stop);
  });
  const replied = request.reply.then(async ({ status }): Promise<Outcome> => {
    const complete = request.idle.then((): Outcome => ({ type: "replied", status }));
    return Promise.race([complete, after(outputGrace, { type: "lost" })]);
  });
  const died = kernel.exited.then((): Outcome => ({ type: "died" }));
  try {
    return await Promise.race([replied, died, limit, stopped]);
  } finally {
    run.signal?.removeEventListener("abort", stop);
    over.abort();
  }
}

interface Interrupted {
  readonly run: RunNotebook;
  readonly kernel: Kernel;
  readonly cell: RunningCell;
  readonly request: Request;
  readonly outcome: Exclude<Outcome, { type: "replied" }>;
}

/** Ends the kernel of a cell that did not come to its end, and says why. */
async function interrupted({ run, kernel, cell, request, outcome }: Interrupted): Promise<NotebookError> {
  const where = { notebook: run.path, cell: cell.number };
  if (outcome.type === "died") {
    const exit = await kernel.exited;
    const said = kernel.errorText();
    const text = `the kernel ended while the cell ran (${describeExit(exit)})${said === "" ? "" : `: ${said}`}`;
    return new KernelDeathError({ ...where, text });
  }
  if (outcome.type === "cell" || outcome.type === "notebook") {
    kernel.interrupt();
    await Promise.race([request.reply, kernel.exited, pause(interruptGrace)]);
  }
  await kernel.kill();
  switch (outcome.type) {
    case "cell":
      return new CellTimeLimitError({
        ...where,
        text: `ran longer than the ${run.cellSeconds} s that a cell may take`,
      });
    case "notebook":
      return notebookLimit(run, cell.number);
    case "lost":
      return new CellOutputError({ ...where, text: "wrote so much at once that outputs were lost: write less" });
    case "stopped":
      return new NotebookStoppedError({ ...where, text: "the run was stopped" });
  }
}

function notebookLimit(run: RunNotebook, cell?: number): NotebookTimeLimitError {
  const text = `the notebook ran longer than the ${run.notebookSeconds} s that it may take`;
  return new NotebookTimeLimitError({ notebook: run.path, cell, text });
}

/** An error that no cell caught fails the run, even if the cell itself came to its end. */
function refuseUncaught({ run, ran, folder }: { run: RunNotebook; ran: readonly RunningCell[]; folder: string }): void {
  for (const [index, { number, source, collector }] of ran.entries()) {
    const stack = collector.uncaughtText();
    if (stack === undefined) continue;
    throw thrownFailure({ notebook: run.path, cell: number, source, stack, folder, sameCell: index === 0 });
  }
}

/** Outputs that no report can show, and figures whose name is taken. */
function refuseOutputs({
  run,
  cell,
  figures,
}: {
  run: RunNotebook;
  cell: RunningCell;
  figures: Map<string, number>;
}): void {
  const refuse = (text: string) => new CellOutputError({ notebook: run.path, cell: cell.number, text });
  const refusal = cell.collector.refusal();
  if (refusal !== undefined) throw refuse(refusal);
  for (const output of cell.collector.outputs()) {
    if (output.kind !== "figure") continue;
    const earlier = figures.get(output.name);
    if (earlier !== undefined)
      throw refuse(`shows a second figure named "${output.name}": cell ${earlier} has one already`);
    figures.set(output.name, cell.number);
  }
}
