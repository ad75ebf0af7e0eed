import { join } from "node:path";
import { pageLines, readLines } from "../calibration/page-lines.js";
import { readingsVariable } from "../notebook/input.js";
import {
  type BuildMemory,
  type BuildOutcome,
  buildReports,
  type NotebookFile,
  type ReportDone,
} from "../report/build.js";
import { memoryFolder } from "../report/stamp.js";
import { chosenReports } from "./chosen.js";
import { findNotebooks, reportsFolder, shownPath } from "./folders.js";
import { givenReadings } from "./readings.js";
import { type ExitCode, exitCodes, type Surroundings } from "./surroundings.js";
import { mayRun } from "./trust.js";

/** What `haulbook reports` was asked. */
export interface ReportsOptions {
  readonly names: readonly string[];
  readonly singleFile: boolean;
  readonly open: boolean;
  readonly output?: string | undefined;
  /** File of readings of one's own boat; its lines replace those of the catalogue. */
  readonly readings?: string | undefined;
  /** Whether runs and pages that nothing has changed are left as they are. */
  readonly cache: boolean;
  /** Whether the person says that these notebooks may run. */
  readonly trust: boolean;
}

/** Runs that are remembered beside the pages they belong to. */
async function memoryOf(
  outputFolder: string,
  own: string,
  { disk, library, packageFolder }: Surroundings,
): Promise<BuildMemory | undefined> {
  const known = await library();
  if (known === undefined) return undefined;
  const path = (name: string) => join(outputFolder, memoryFolder, `${name}.run`);
  return {
    store: { read: (name) => disk.read(path(name)), replace: (name, text) => disk.replace(path(name), text) },
    library: known,
    libraryFolder: join(packageFolder, "dist"),
    choices: own === "" ? [] : [own],
  };
}

/** `haulbook reports`: runs the notebooks and writes their pages. */
export async function reports(options: ReportsOptions, surroundings: Surroundings): Promise<ExitCode> {
  const pages = await askedPages(options, "reports", surroundings);
  if (typeof pages === "number") return pages;
  return inOwnFolder(pages.outputFolder, () => build(pages, surroundings), surroundings);
}

/** Does something to the folder of the pages while no other build does. */
export async function inOwnFolder<Done>(
  outputFolder: string,
  act: () => Promise<Done>,
  { lock, sweep }: Pick<Surroundings, "lock" | "sweep">,
): Promise<Done> {
  const free = await lock(outputFolder);
  try {
    await sweep(outputFolder);
    return await act();
  } finally {
    await free();
  }
}

/** The pages that are asked for; an exit code where they cannot be built, or their notebooks may not run. */
export async function askedPages(
  options: ReportsOptions,
  verb: "reports" | "watch",
  surroundings: Surroundings,
): Promise<Pages | ExitCode> {
  const { currentFolder, err } = surroundings;
  const { folder, notebooks } = await findNotebooks(surroundings);
  if (notebooks.length === 0) {
    err(
      `No notebooks in ${shownPath(folder, currentFolder)}. Put .ipynb files there, or go to a folder that has notebooks/.\n`,
    );
    return exitCodes.failed;
  }
  const chosen = chosenReports(options.names, notebooks);
  if ("refusal" in chosen) {
    err(chosen.refusal);
    return exitCodes.wrongUse;
  }
  const { names } = chosen;
  if (!(await mayRun({ verb, notebooks: folder, trust: options.trust }, surroundings))) return exitCodes.wrongUse;
  const own = await ownFile(options.readings, surroundings);
  if (typeof own === "number") return own;
  return {
    options,
    own,
    names: options.names.length > 0 ? names : undefined,
    notebooks,
    folder,
    outputFolder: reportsFolder(options.output, currentFolder),
  };
}

/** Pages to build, and what they are built from. */
export interface Pages {
  readonly options: ReportsOptions;
  /** Path of the readings of one's own boat; empty for none. */
  readonly own: string;
  /** Names of those to build; all when left out. */
  readonly names: readonly string[] | undefined;
  readonly notebooks: readonly NotebookFile[];
  /** Folder of the notebooks. */
  readonly folder: string;
  readonly outputFolder: string;
}

/** Builds pages into a folder that is ours alone. */
export async function buildPages(
  { options, own, names, notebooks, outputFolder }: Pages,
  surroundings: Surroundings,
): Promise<BuildOutcome> {
  const { disk, out } = surroundings;
  return buildReports({
    notebooks,
    names,
    outputFolder,
    singleFile: options.singleFile,
    run: ({ path, inputs }, onFilesRead) => surroundings.run(path, inputs, onFilesRead, { [readingsVariable]: own }),
    memory: options.cache ? await memoryOf(outputFolder, own, surroundings) : undefined,
    files: disk,
    minisearch: surroundings.minisearch,
    plotly: surroundings.plotly,
    panel: surroundings.panel,
    log: (line) => out(`${line}\n`),
    now: surroundings.now,
    signal: surroundings.signal,
  });
}

/** Builds pages and says what came of it. */
async function build(pages: Pages, surroundings: Surroundings): Promise<ExitCode> {
  const { options, notebooks } = pages;
  const { currentFolder, err, out } = surroundings;
  const { reports: done, built, failures, index } = await buildPages(pages, surroundings);
  out(timesText(done));
  if (failures.length > 0) {
    for (const { message } of failures) err(`\n${message}\n`);
    const kept = failures.some(({ name }) => notebooks.some((one) => one.name === name))
      ? " Earlier pages of what failed are kept as they were."
      : "";
    err(`\n${failures.length} failed, ${built.length} built.${kept}\n`);
    return exitCodes.failed;
  }
  out(`${built.length} ${built.length === 1 ? "report" : "reports"} built. Open ${shownPath(index, currentFolder)}\n`);
  if (options.open) {
    try {
      await surroundings.open(index);
    } catch (error) {
      err(`It could not be opened for you: ${error instanceof Error ? error.message : error}\n`);
    }
  }
  return exitCodes.done;
}

/** Time of each notebook that was worked on, the longest first. */
function timesText(done: readonly ReportDone[]): string {
  const worked = done.filter(({ state }) => state !== "fresh").sort((one, other) => other.seconds - one.seconds);
  if (worked.length < 2) return "";
  const width = Math.max(...worked.map(({ name }) => name.length));
  const rows = worked.map(({ name, seconds, state }) => {
    const failed = state === "failed" ? "  failed" : "";
    return `  ${name.padEnd(width)}  ${seconds.toFixed(1).padStart(5)} s${failed}\n`;
  });
  return `\nTime of each notebook, side by side:\n${rows.join("")}\n`;
}

/** Path of the readings that the pages are to use, empty for none; an exit code where the file cannot be used. */
async function ownFile(file: string | undefined, surroundings: Surroundings): Promise<string | ExitCode> {
  if (file === undefined) return "";
  const { err } = surroundings;
  const given = await givenReadings(file, "Nothing was built.", surroundings);
  if (given === undefined) return exitCodes.failed;
  const { known, unknown } = readLines(given.readings);
  for (const { name, meant } of unknown)
    err(
      `${given.shown}: no page knows a line "${name}".${meant === undefined ? "" : ` Did you mean "${meant}"?`} Its readings are not used.\n`,
    );
  if (unknown.length > 0 || known.length === 0) err(`Pages know: ${pageLines.join(", ")}.\n`);
  if (known.length > 0) return given.path;
  err(`${given.shown}: no line of it stands on any page. Nothing was built.\n`);
  return exitCodes.failed;
}
