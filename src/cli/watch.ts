import { dirname, join, relative, resolve, sep } from "node:path";
import { readRemembered } from "../notebook/remembered-run.js";
import type { BuildFailure, NotebookFile } from "../report/build.js";
import { memoryFolder } from "../report/stamp.js";
import { findNotebooks } from "./folders.js";
import { askedPages, buildPages, inOwnFolder, type Pages, type ReportsOptions } from "./reports.js";
import { type ExitCode, exitCodes, type Surroundings } from "./surroundings.js";
import { Changes, touchedBy } from "./watch/changes.js";
import { type ShownFailure, shownFailure } from "./watch/failures.js";

/** What `haulbook watch` was asked. */
export interface WatchOptions extends Pick<ReportsOptions, "names" | "open" | "output" | "readings" | "trust"> {
  /** Port to serve on; any that is free when left out. */
  readonly port?: number | undefined;
}

/** What a watch knows of its pages. */
interface Known {
  /** Builds so far. */
  build: number;
  /** Build in which each file of the output folder changed last, by its path in that folder. */
  readonly changed: Map<string, number>;
  readonly failures: Map<string, ShownFailure>;
  /** Whole paths of all that each report is made from. */
  readonly readBy: Map<string, Set<string>>;
}

/** `haulbook watch`: serves the pages to this machine and builds again what changes. */
export async function watch(options: WatchOptions, surroundings: Surroundings): Promise<ExitCode> {
  const { live, signal, out, err } = surroundings;
  const asked = await askedPages({ ...options, singleFile: false, cache: true }, "watch", surroundings);
  if (typeof asked === "number") return asked;
  const known: Known = { build: 0, changed: new Map(), failures: new Map(), readBy: new Map() };
  const state = () =>
    JSON.stringify({
      session: live.session,
      changed: Object.fromEntries(known.changed),
      failures: [...known.failures.values()],
    });
  const { outputFolder: folder } = asked;
  const mark = () => `${live.session}.${known.build}`;
  const served = await live.serve({ port: options.port ?? 0, site: { folder, find: live.find, mark }, state });
  const changes = new Changes();
  const watched = live.folders((path) => changes.add(path));
  try {
    watched.set(foldersOf(asked, known));
    const first = await surroundings.library();
    out(`Pages: ${served.address} Ctrl-C ends the watch.\n`);
    let opened = !options.open;
    let names: readonly string[] | undefined = asked.names;
    while (!signal.aborted) {
      const pages = { ...asked, names };
      const now = await surroundings.library();
      if (first?.whole !== now?.whole) known.failures.set("", libraryChanged);
      else await buildOnce(pages, known, surroundings);
      if (signal.aborted) break;
      watched.set(foldersOf(asked, known));
      served.tell(state());
      if (!opened) await surroundings.open(served.address).catch((error) => err(`${String(error)}\n`));
      opened = true;
      names = await nextNames(asked, known, changes, surroundings);
    }
    return exitCodes.done;
  } finally {
    watched.close();
    await served.close();
  }
}

const libraryChanged: ShownFailure = {
  place: "haulbook",
  text: "The program itself has changed. End the watch and start it again.",
};

/** Waits until something changes that pages are made from; names of the reports that it touches. */
async function nextNames(
  asked: Pages,
  known: Known,
  changes: Changes,
  surroundings: Surroundings,
): Promise<readonly string[]> {
  const { live, signal } = surroundings;
  while (!signal.aborted) {
    await changes.some(signal);
    await live.settle();
    const changed = changes.take();
    const { notebooks } = await findNotebooks(surroundings);
    for (const notebook of notebooks) readsOf(notebook, known, surroundings.currentFolder);
    const names = touchedBy(changed, known.readBy).filter((name) => asked.names?.includes(name) ?? true);
    // One that came or went changes the index, whatever else it touches.
    if (names.length > 0 || changed.some((path) => path.endsWith(".ipynb") && dirname(path) === asked.folder))
      return names;
  }
  return [];
}

/** What a report is made from, its notebook and that notebook's inputs among it. */
function readsOf({ name, path, inputs = [] }: NotebookFile, { readBy }: Known, currentFolder: string): Set<string> {
  const whole = resolve(currentFolder, path);
  const reads = readBy.get(name) ?? new Set<string>();
  for (const one of [whole, ...inputs.map((input) => resolve(dirname(whole), input))]) reads.add(one);
  readBy.set(name, reads);
  return reads;
}

/** Folders in which something lies that a page is made from. */
function foldersOf({ folder }: Pages, { readBy }: Known): readonly string[] {
  const reads = [...readBy.values()].flatMap((paths) => [...paths]);
  return [...new Set([folder, ...reads.flatMap((path) => [dirname(path), path])])];
}

/** Builds some pages, with all that came of it noted. */
async function buildOnce(asked: Pages, known: Known, surroundings: Surroundings): Promise<void> {
  const { currentFolder, disk, packageFolder, run, err, signal } = surroundings;
  const { outputFolder } = asked;
  const pages = { ...asked, notebooks: (await findNotebooks(surroundings)).notebooks };
  const build = known.build + 1;
  const nameOf = new Map(pages.notebooks.map((notebook) => [runKey(notebook.path, notebook.inputs), notebook]));
  const readsNow = (notebook: NotebookFile, paths: readonly string[]) => {
    const reads = readsOf(notebook, known, currentFolder);
    for (const path of paths) if (!path.startsWith(join(packageFolder, "dist") + sep)) reads.add(path);
  };
  const watching: Surroundings = {
    ...surroundings,
    disk: {
      ...disk,
      // What stands there already is not written again: no page would change.
      replace: async (path, text) => {
        if ((await disk.read(path)) === text) return;
        await disk.replace(path, text);
        const name = relative(outputFolder, path).replaceAll("\\", "/");
        if (!name.startsWith(".")) known.changed.set(name, build);
      },
    },
    run: (path, inputs, onFilesRead, variables) =>
      run(
        path,
        inputs,
        (read) => {
          const notebook = nameOf.get(runKey(path, inputs));
          if (notebook !== undefined) readsNow(notebook, read);
          onFilesRead?.(read);
        },
        variables,
      ),
  };
  let failed: readonly BuildFailure[];
  try {
    const act = () => buildPages(pages, watching);
    failed = (await inOwnFolder(outputFolder, act, surroundings)).failures;
  } catch (error) {
    failed = [{ name: "", message: error instanceof Error ? error.message : String(error), cause: error }];
  }
  known.build = build;
  if (signal.aborted) return;
  for (const notebook of pages.notebooks) readsNow(notebook, await remembered(notebook, outputFolder, surroundings));
  const there = new Set(pages.notebooks.map(({ name }) => name));
  for (const name of [...known.failures.keys(), ...known.readBy.keys()]) {
    if (!there.has(name) || pages.names === undefined || pages.names.includes(name)) known.failures.delete(name);
    if (!there.has(name)) known.readBy.delete(name);
  }
  for (const failure of failed) {
    known.failures.set(failure.name, shownFailure(failure));
    err(`\n${failure.message}\n`);
  }
}

const runKey = (path: string, inputs: readonly string[] = []) => JSON.stringify([path, ...inputs]);

/** What the remembered run of a notebook read. */
async function remembered(
  { name, path }: NotebookFile,
  outputFolder: string,
  { currentFolder, disk }: Surroundings,
): Promise<readonly string[]> {
  const text = await disk.read(join(outputFolder, memoryFolder, `${name}.run`));
  const files = (text === undefined ? undefined : readRemembered(text))?.causes.files ?? [];
  return files.map((file) => resolve(currentFolder, dirname(path), file.path));
}
