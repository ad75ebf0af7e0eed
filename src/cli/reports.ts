import { pageLines, readLines } from "../calibration/page-lines.js";
import { readingsVariable } from "../notebook/own-lines.js";
import { suggestion } from "../quantity/suggestion.js";
import { buildReports } from "../report/build.js";
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
}

/** `haulbook reports`: runs the notebooks and writes their pages. */
export async function reports(options: ReportsOptions, surroundings: Surroundings): Promise<ExitCode> {
  const { currentFolder, disk, err, out } = surroundings;
  const { folder, notebooks } = await findNotebooks(surroundings);
  if (notebooks.length === 0) {
    err(
      `No notebooks in ${shownPath(folder, currentFolder)}. Put .ipynb files there, or go to a folder that has notebooks/.\n`,
    );
    return exitCodes.failed;
  }
  const known = notebooks.map(({ name }) => name);
  const names = options.names.map(reportName);
  const unknown = names.filter((name) => !known.includes(name));
  if (unknown.length > 0) {
    for (const name of unknown) {
      const near = suggestion(name, known);
      err(`No report is called "${name}".${near === undefined ? "" : ` Did you mean "${near}"?`}\n`);
    }
    err(`There are: ${known.join(", ")}.\n`);
    return exitCodes.wrongUse;
  }
  const own = await ownFile(options.readings, surroundings);
  if (typeof own === "number") return own;
  const outputFolder = reportsFolder(options.output, currentFolder);
  const { built, failures, index } = await buildReports({
    notebooks,
    names: names.length > 0 ? names : undefined,
    outputFolder,
    singleFile: options.singleFile,
    run: ({ path }) => surroundings.run(path, { [readingsVariable]: own }),
    files: disk,
    plotly: surroundings.plotly,
    log: (line) => out(`${line}\n`),
    now: surroundings.now,
    signal: surroundings.signal,
  });
  if (failures.length > 0) {
    for (const { message } of failures) err(`\n${message}\n`);
    const kept = failures.some(({ name }) => known.includes(name))
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
