import { basename, join } from "node:path";
import type { ExecutedNotebook } from "../notebook/executed.js";
import type { PackageDigest } from "../notebook/package-digest.js";
import { type RecalledRun, type RunStore, recalledRun } from "../notebook/recalled-run.js";
import { digestOf } from "../notebook/run-causes.js";
import { partedPage } from "./chartfile.js";
import { checksJson, failureText, sharedChecks } from "./checklist.js";
import { assetNames, panelAsset, searchAssets } from "./document.js";
import { ReportError } from "./errors.js";
import type { Files } from "./files.js";
import { pageScript } from "./pagescript.js";
import type { ReportRecord } from "./record.js";
import { searchScript } from "./searchscript.js";
import { stamp, standsAsStamped } from "./stamp.js";
import { styleSheet } from "./stylesheet.js";

/** A notebook that becomes a report. */
export interface NotebookFile {
  /** Name of the report: the file name without its ending, and with that of its input. */
  readonly name: string;
  readonly path: string;
  /** Files that the notebook is run with, where it takes any: paths from the notebook's folder, or whole paths. */
  readonly inputs?: readonly string[];
}

/** What lets a build leave out what is done already. */
export interface BuildMemory {
  /** Where runs are kept. */
  readonly store: RunStore;
  /** The compiled library and its folder. */
  readonly library: PackageDigest;
  readonly libraryFolder: string;
  /** Choices that change what notebooks put out, beside their own inputs. */
  readonly choices: readonly string[];
}

/** What a build is asked to do, and the effects it may have. */
export interface BuildRequest {
  /** All notebooks; the index covers them all. */
  readonly notebooks: readonly NotebookFile[];
  /** Names of those to run; all when left out. */
  readonly names?: readonly string[] | undefined;
  readonly outputFolder: string;
  /** Whether each report is one file that carries everything. */
  readonly singleFile?: boolean | undefined;
  /** How many notebooks run at a time; 3 when left out: a kernel starts while others compute. */
  readonly sideBySide?: number | undefined;
  /** Runs a notebook in a fresh kernel. */
  readonly run: (notebook: NotebookFile, onFilesRead?: (paths: readonly string[]) => void) => Promise<ExecutedNotebook>;
  /** Runs that are remembered; left out, every notebook is run and every page drawn. */
  readonly memory?: BuildMemory | undefined;
  readonly files: Files;
  /** Source of the search library. */
  readonly minisearch: () => Promise<string>;
  /** Source of the drawing library. */
  readonly plotly: () => Promise<string>;
  /** Source of what computes a model in the browser. */
  readonly panel: (model: string) => Promise<string>;
  readonly log: (line: string) => void;
  /** Milliseconds from any start, for progress lines only. */
  readonly now: () => number;
  readonly signal?: AbortSignal | undefined;
}

/** A report, or the pages that lead to reports, which could not be built. */
export interface BuildFailure {
  readonly name: string;
  readonly message: string;
  /** What was thrown. */
  readonly cause: unknown;
}

/** What a build did about one report. */
export interface ReportDone {
  readonly name: string;
  readonly state: "built" | "fresh" | "failed";
  /** Time that it took [s]. */
  readonly seconds: number;
}

/** What came of a build. */
export interface BuildOutcome {
  /** What was done about each report, in the order of the request. */
  readonly reports: readonly ReportDone[];
  /** Names of the reports that were built, in the order of the request. */
  readonly built: readonly string[];
  readonly failures: readonly BuildFailure[];
  /** Path of the page that leads to all reports. */
  readonly index: string;
}

/** Names that pages of the folder's own already have. */
const takenNames: readonly string[] = ["index", "checks"];

/** Path of the record of a report. */
function recordPath(outputFolder: string, name: string): string {
  return join(outputFolder, "data", `${name}.json`);
}

/** Words for what a page is made from; no folder of one machine stands in them. */
function origin({ path, inputs = [] }: NotebookFile): string {
  return inputs.length === 0
    ? basename(path)
    : `${basename(path)} with ${inputs.map((input) => basename(input)).join(" and ")}`;
}

/** Model of the live panel that a notebook shows. */
function liveModelOf({ cells }: ExecutedNotebook): string | undefined {
  for (const cell of cells)
    if (cell.type === "code") for (const output of cell.outputs) if (output.kind === "panel") return output.model;
  return undefined;
}

/**
 * Runs a notebook and makes its page.
 *
 * @param notebook  notebook, with its input where it takes one
 * @param run  runs it in a fresh kernel
 * @param form  source of the drawing library, to carry everything in one file, and sources of live models
 * @returns page and record; nothing is written
 * @throws NotebookError, ReportError; a check that does not hold is one
 */
export async function renderReport(
  notebook: NotebookFile,
  run: (notebook: NotebookFile) => Promise<ExecutedNotebook>,
  form: { readonly inlinePlotly: string | undefined; readonly panel: BuildRequest["panel"] },
): Promise<{ readonly page: string; readonly record: ReportRecord }> {
  const executed = { ...(await run(notebook)), name: notebook.name, madeFrom: origin(notebook) };
  const [{ reportPage }, { recordOf }] = await Promise.all([import("./reportpage.js"), import("./record.js")]);
  const { inlinePlotly, panel } = form;
  const model = liveModelOf(executed);
  const inlinePanel = inlinePlotly === undefined || model === undefined ? undefined : await panel(model);
  const page = reportPage(executed, { inlinePlotly, inlinePanel });
  const record = recordOf(executed, page);
  const failing = record.checks.filter(({ holds }) => !holds);
  if (failing.length > 0) throw new ReportError(notebook.path, failing.map(failureText).join("\n"));
  sharedChecks([{ report: record.name, results: record.checks }]);
  return { page, record };
}

/** A remembered run where there is a memory, otherwise a new one. */
async function runOrRecall(
  notebook: NotebookFile,
  { run, memory, log }: BuildRequest,
): Promise<Pick<RecalledRun, "executed"> & Partial<RecalledRun>> {
  if (memory === undefined) {
    log(`${notebook.name}: running`);
    return { executed: await run(notebook) };
  }
  return recalledRun({
    ...memory,
    name: notebook.name,
    path: notebook.path,
    inputs: [...(notebook.inputs ?? []), ...memory.choices],
    onStart: (why) => log(`${notebook.name}: ${why}; running`),
    run: (onFilesRead) => run(notebook, onFilesRead),
  });
}

/** Builds a report; answers whether anything was done. */
async function buildOne(
  notebook: NotebookFile,
  request: BuildRequest,
  inlinePlotly: string | undefined,
): Promise<boolean> {
  const { files, memory, notebooks, outputFolder, panel } = request;
  if (takenNames.includes(notebook.name.toLowerCase())) {
    throw new ReportError(
      notebook.path,
      `the name ${notebook.name} belongs to a page of its own; rename the notebook.`,
    );
  }
  const twin = notebooks.find((other) => other !== notebook && other.name === notebook.name);
  if (twin !== undefined)
    throw new ReportError(origin(notebook), `${origin(twin)} makes a page of the same name; rename one of them.`);
  const { executed, digest, remember } = await runOrRecall(notebook, request);
  const model = liveModelOf(executed);
  if (model !== undefined && inlinePlotly === undefined)
    await files.replace(join(outputFolder, panelAsset(model)), await panel(model));
  const beside = inlinePlotly === undefined;
  const charts = join(outputFolder, `assets/charts-${notebook.name}.js`);
  const paths = [
    join(outputFolder, `${notebook.name}.html`),
    recordPath(outputFolder, notebook.name),
    ...(beside ? [charts] : []),
  ] as const;
  const from = digestOf([memory?.library.whole, digest, inlinePlotly !== undefined].join(" "));
  const stamped = { files, outputFolder, name: notebook.name, from, paths };
  if (memory !== undefined && (await standsAsStamped(stamped))) return false;
  const { page, record } = await renderReport(notebook, async () => executed, { inlinePlotly, panel });
  if (beside) {
    const parted = partedPage(page, `assets/charts-${encodeURIComponent(notebook.name)}.js`);
    await files.replace(charts, parted.charts);
    await files.replace(paths[0], parted.page);
  } else await files.replace(paths[0], page);
  const { recordText } = await import("./record.js");
  await files.replace(paths[1], recordText(record));
  await remember?.();
  if (memory !== undefined) await stamp(stamped);
  return true;
}

/** Runs tasks a few at a time; answers in the order of the items. */
async function pooled<Item, Done>(
  items: readonly Item[],
  sideBySide: number,
  task: (item: Item) => Promise<Done>,
): Promise<Done[]> {
  const done: Done[] = [];
  let next = 0;
  const worker = async () => {
    for (let index = next++; index < items.length; index = next++) done[index] = await task(items[index] as Item);
  };
  await Promise.all(Array.from({ length: Math.max(1, Math.min(sideBySide, items.length)) }, worker));
  return done;
}

/**
 * Records of all reports that were ever built.
 *
 * @param request  notebooks, folder and files
 * @returns records in the order of their places, then of their names
 * @throws ReportError when a record cannot be read
 * Example: await allRecords({ notebooks, outputFolder: "reports", files })
 */
export async function allRecords(request: RecordPlaces): Promise<ReportRecord[]> {
  return recordsIn(await recordTexts(request));
}

type RecordPlaces = Pick<BuildRequest, "notebooks" | "outputFolder" | "files">;

/** A record as it stands in its file. */
interface RecordText {
  readonly path: string;
  readonly text: string;
}

async function recordTexts({ notebooks, outputFolder, files }: RecordPlaces): Promise<RecordText[]> {
  const names = notebooks.map(({ name }) => name).sort();
  const paths = names.map((name) => recordPath(outputFolder, name));
  const texts = await Promise.all(paths.map((path) => files.read(path)));
  return paths.flatMap((path, index) => {
    const text = texts[index];
    return text === undefined ? [] : [{ path, text }];
  });
}

async function recordsIn(texts: readonly RecordText[]): Promise<ReportRecord[]> {
  const { readRecord } = await import("./record.js");
  const placeOf = ({ place }: ReportRecord) => place ?? Number.MAX_VALUE;
  return texts.map(({ path, text }) => readRecord(text, path)).sort((one, other) => placeOf(one) - placeOf(other));
}

async function writeLeadingPages(request: BuildRequest): Promise<void> {
  const { files, memory, outputFolder, singleFile } = request;
  const texts = await recordTexts(request);
  if (texts.length === 0) return;
  const search = singleFile === true ? [] : Object.values(searchAssets);
  const paths = ["index.html", "checks.html", "checks.json", ...search].map((name) => join(outputFolder, name));
  const from = digestOf(JSON.stringify([memory?.library.whole, texts.map(({ text }) => text), singleFile === true]));
  const stamped = { files, outputFolder, name: "index", from, paths };
  if (memory !== undefined && (await standsAsStamped(stamped))) return;
  const records = await recordsIn(texts);
  const [{ indexPage }, { checksPage }, { searchDataScript }] = await Promise.all([
    import("./indexpage.js"),
    import("./checkspage.js"),
    import("./searchdata.js"),
  ]);
  const checks = sharedChecks(records.map(({ name, checks: results }) => ({ report: name, results })));
  const inline = singleFile === true;
  await files.replace(join(outputFolder, "index.html"), indexPage({ records, checks, inline }));
  await files.replace(join(outputFolder, "checks.html"), checksPage({ records, checks, inline }));
  await files.replace(join(outputFolder, "checks.json"), checksJson(checks));
  if (!inline) {
    await files.replace(join(outputFolder, searchAssets.library), await request.minisearch());
    await files.replace(join(outputFolder, searchAssets.data), searchDataScript(records));
    await files.replace(join(outputFolder, searchAssets.script), searchScript);
  }
  if (memory !== undefined) await stamp(stamped);
}

function messageOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}

/**
 * Runs notebooks and writes their reports, and the pages that lead to them.
 *
 * A report that fails keeps its earlier page; the others are built all the same. Nothing that is written holds a
 * clock or a random number: the same notebooks give the same bytes.
 *
 * @param request  what to build, and the effects
 * @returns what was built and what failed; it does not throw for a notebook that fails
 * Example: (await buildReports(request)).failures.length → 0
 */
export async function buildReports(request: BuildRequest): Promise<BuildOutcome> {
  const { notebooks, names, outputFolder, files, log, now } = request;
  const chosen = names === undefined ? notebooks : notebooks.filter(({ name }) => names.includes(name));
  const plotly = await request.plotly();
  const inlinePlotly = request.singleFile === true ? plotly : undefined;
  if (inlinePlotly === undefined) {
    await files.replace(join(outputFolder, assetNames.plotly), plotly);
    await files.replace(join(outputFolder, assetNames.script), pageScript);
    await files.replace(join(outputFolder, assetNames.style), styleSheet);
  }
  const failures: BuildFailure[] = [];
  const results = await pooled(chosen, request.sideBySide ?? 3, async (notebook) => {
    const { name } = notebook;
    const start = now();
    const ended = (state: ReportDone["state"]): ReportDone => {
      const seconds = (now() - start) / 1000;
      log(state === "built" ? `${name}: built in ${seconds.toFixed(1)} s` : `${name}: ${state}`);
      return { name, state, seconds };
    };
    try {
      request.signal?.throwIfAborted();
      return { done: ended((await buildOne(notebook, request, inlinePlotly)) ? "built" : "fresh") };
    } catch (error) {
      const ranWith = notebook.inputs === undefined ? "" : `Run with ${notebook.inputs.join(" and ")}: `;
      const failure = { name, message: `${ranWith}${messageOf(error)}`, cause: error };
      return { done: ended("failed"), failure };
    }
  });
  for (const { failure } of results) if (failure !== undefined) failures.push(failure);
  try {
    await writeLeadingPages(request);
  } catch (error) {
    failures.push({ name: "index", message: messageOf(error), cause: error });
  }
  return {
    reports: results.map(({ done }) => done),
    built: results.filter(({ failure }) => failure === undefined).map(({ done: { name } }) => name),
    failures,
    index: join(outputFolder, "index.html"),
  };
}
