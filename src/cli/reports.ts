import { join } from "node:path";
import { pageLines, readLines } from "../calibration/page-lines.js";
import { readingsVariable } from "../notebook/own-lines.js";
import { suggestion } from "../quantity/suggestion.js";
import { type BuildMemory, buildReports, type NotebookFile } from "../report/build.js";
import { memoryFolder } from "../report/stamp.js";
import { findNotebooks, reportName, reportsFolder, shownPath } from "./folders.js";
import { givenReadings } from "./readings.js";
import { type ExitCode, exitCodes, type Surroundings } from "./surroundings.js";

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
  const { currentFolder, err } = surroundings;
  const { folder, notebooks } = await findNotebooks(surroundings);
  if (notebooks.length === 0) {
    err(
      `No notebooks in ${shownPath(folder, currentFolder)}. Put .ipynb files there, or go to a folder that has notebooks/.\n`,
    );
    return exitCodes.failed;
  }
  const known = notebooks.map(({ name }) => name);
  const families = notebooks.filter(({ inputs }) => inputs !== undefined).map(({ path }) => reportName(path));
  const typed = options.names.map(reportName);
  const names = typed.flatMap((name) =>
    known.includes(name) ? [name] : notebooks.filter(({ path }) => reportName(path) === name).map((one) => one.name),
  );
  const unknown = typed.filter((name) => !known.includes(name) && !families.includes(name));
  if (unknown.length > 0) {
    for (const name of unknown) {
      const near = suggestion(name, [...known, ...families]);
      err(`No report is called "${name}".${near === undefined ? "" : ` Did you mean "${near}"?`}\n`);
    }
    err(`There are: ${known.join(", ")}.\n`);
    return exitCodes.wrongUse;
  }
  const own = await ownFile(options.readings, surroundings);
  if (typeof own === "number") return own;
  const outputFolder = reportsFolder(options.output, currentFolder);
  const free = await surroundings.lock(outputFolder);
  try {
    await surroundings.sweep(outputFolder);
    return await build({ options, own, names, notebooks, outputFolder }, surroundings);
  } finally {
    await free();
  }
}

interface Build {
  readonly options: ReportsOptions;
  /** Path of the readings of one's own boat; empty for none. */
  readonly own: string;
  readonly names: readonly string[];
  readonly notebooks: readonly NotebookFile[];
  readonly outputFolder: string;
}

/** Builds into a folder that is ours alone. */
async function build(
  { options, own, names, notebooks, outputFolder }: Build,
  surroundings: Surroundings,
): Promise<ExitCode> {
  const { currentFolder, disk, err, out } = surroundings;
  const { built, failures, index } = await buildReports({
    notebooks,
    names: names.length > 0 ? names : undefined,
    outputFolder,
    singleFile: options.singleFile,
    run: ({ path, inputs }, onFilesRead) => surroundings.run(path, inputs, onFilesRead, { [readingsVariable]: own }),
    memory: options.cache ? await memoryOf(outputFolder, own, surroundings) : undefined,
    files: disk,
    plotly: surroundings.plotly,
    panel: surroundings.panel,
    log: (line) => out(`${line}\n`),
    now: surroundings.now,
    signal: surroundings.signal,
  });
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
