import { readdir, readFile, stat } from "node:fs/promises";
import path from "node:path";
import type { ExecutedNotebook } from "./executed.js";
import type { PackageDigest } from "./package-digest.js";
import { readNotebook } from "./read.js";
import { readRemembered, rememberedOf, rememberedText, withOutputs } from "./remembered-run.js";
import { cellDigests, changeSince, digestOf, type FileDigest, type RunCauses } from "./run-causes.js";

/** Where runs are kept. */
export interface RunStore {
  /** The kept text of a report, or nothing. */
  read(name: string): Promise<string | undefined>;
  replace(name: string, text: string): Promise<void>;
}

export interface RecallRun {
  /** Name of the report. */
  readonly name: string;
  /** Path of the .ipynb file. */
  readonly path: string;
  /** All that the notebook is run with beside its own text: files, choices. */
  readonly inputs: readonly string[];
  readonly library: PackageDigest;
  readonly store: RunStore;
  /** Folder of the compiled library: it is counted by its own digest. */
  readonly libraryFolder: string;
  /** Told that the notebook is about to be run, and why. */
  readonly onStart: (why: string) => void;
  readonly run: (onFilesRead: (paths: readonly string[]) => void) => Promise<ExecutedNotebook>;
}

/** A notebook with its outputs, from a run just now or from one that is remembered. */
export interface RecalledRun {
  readonly executed: ExecutedNotebook;
  /** `fresh`: remembered and used; `stale`: run again; `missing`: run for the first time. */
  readonly state: "fresh" | "stale" | "missing";
  /** Digest of everything that decides the outputs and the prose. */
  readonly digest: string;
  /** Keeps the run for the next time; to be called once its page stands. */
  remember(): Promise<void>;
}

/**
 * The outputs of a notebook: those of an earlier run where nothing that decides them has changed, otherwise of a new run.
 *
 * @param request  the notebook, what it is run with, where runs are kept, and how it is run
 * @returns the notebook with outputs, and why it was run
 * @throws NotebookError as a run does; a failed run is never kept
 */
export async function recalledRun(request: RecallRun): Promise<RecalledRun> {
  const { name, library, store } = request;
  const folder = path.dirname(path.resolve(request.path));
  const source = await readNotebook(request.path);
  const text = await store.read(name);
  const earlier = text === undefined ? undefined : readRemembered(text);
  const causesWith = (files: readonly FileDigest[]): RunCauses => ({
    core: library.core,
    versions: library.versions,
    inputs: digestOf(JSON.stringify(request.inputs)),
    cells: cellDigests(source.cells),
    files,
  });
  const outcome = (executed: ExecutedNotebook, causes: RunCauses) => ({
    executed,
    digest: digestOf(JSON.stringify([causes, source])),
    remember: async () => store.replace(name, rememberedText(rememberedOf(executed, causes))),
  });
  if (earlier !== undefined) {
    const now = causesWith(await digests(earlier.causes.files, folder));
    const why = changeSince(earlier.causes, now);
    if (why === undefined) {
      const executed = withOutputs(path.basename(request.path, path.extname(request.path)), source, earlier.outputs);
      return { ...outcome(executed, now), state: "fresh", remember: async () => {} };
    }
    request.onStart(`stale, ${why}`);
    return { ...(await ran({ request, folder, before: now.files, causesWith, outcome })), state: "stale" };
  }
  const why = text === undefined ? "never run before" : "its remembered run is damaged";
  request.onStart(`missing, ${why}`);
  return { ...(await ran({ request, folder, before: [], causesWith, outcome })), state: "missing" };
}

interface Ran<Outcome> {
  readonly request: RecallRun;
  readonly folder: string;
  /** What the files of the earlier run hold now, before the next. */
  readonly before: readonly FileDigest[];
  readonly causesWith: (files: readonly FileDigest[]) => RunCauses;
  readonly outcome: (executed: ExecutedNotebook, causes: RunCauses) => Outcome;
}

/** Runs the notebook. A file that changes meanwhile counts as it was before, so that the run is stale the next time. */
async function ran<Outcome>({ request, folder, before, causesWith, outcome }: Ran<Outcome>): Promise<Outcome> {
  const { run, libraryFolder } = request;
  const start = Date.now();
  const given = await digests(request.inputs.map(unknownFile(folder)), folder);
  let read: readonly string[] = [];
  const executed = await run((paths) => {
    read = paths;
  });
  const own = read.filter((file) => path.relative(libraryFolder, file).startsWith(".."));
  const files = await digests(own.map(unknownFile(folder)), folder);
  const known = new Map([...before, ...given].map(({ path: name, digest }) => [name, digest]));
  const counted = files.map(async (file) => {
    if (known.has(file.path)) return { ...file, digest: known.get(file.path) };
    return (await isYounger(path.resolve(folder, file.path), start)) ? { ...file, digest: undefined } : file;
  });
  return outcome(executed, causesWith(await Promise.all(counted)));
}

/** A file by its path from the folder, of which nothing is known yet. */
function unknownFile(folder: string): (file: string) => FileDigest {
  return (file) => ({
    path: path.relative(folder, path.resolve(folder, file)).replaceAll("\\", "/"),
    digest: undefined,
  });
}

/** Whether a file was written after a time [ms]. */
async function isYounger(file: string, time: number): Promise<boolean> {
  const { mtimeMs } = await stat(file).catch(() => ({ mtimeMs: 0 }));
  return mtimeMs > time;
}

/** Digests of files as they are now; of a folder, of the names in it. */
async function digests(files: readonly FileDigest[], folder: string): Promise<FileDigest[]> {
  return Promise.all(
    files.map(async ({ path: name }) => ({ path: name, digest: await digestAt(path.resolve(folder, name)) })),
  );
}

async function digestAt(file: string): Promise<string | undefined> {
  try {
    return digestOf(await readFile(file));
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === "EISDIR") return digestOf((await readdir(file)).sort().join("\n"));
    return code === "ENOENT" ? undefined : code;
  }
}
