import { dirname, join, resolve } from "node:path";
import { renderReport } from "../report/build.js";
import { isReport } from "../report/foot.js";
import { shownPath } from "./folders.js";
import type { Surroundings } from "./surroundings.js";

/** A report of the package's own, made of a person's files and written as one file. */
interface Export {
  /** Name of the notebook. */
  readonly notebook: string;
  /** Files that the notebook is run with, as they were typed. */
  readonly inputs: readonly string[];
  /** File to write, as it was typed; nothing is done when left out. */
  readonly file: string | undefined;
}

/** Why a page cannot be written to a file: its folder is not there, or something else stands in its place. */
export async function exportInTheWay(
  file: string | undefined,
  { currentFolder, disk }: Pick<Surroundings, "currentFolder" | "disk">,
): Promise<string | undefined> {
  if (file === undefined) return undefined;
  const path = resolve(currentFolder, file);
  const folder = shownPath(dirname(path), currentFolder);
  if (dirname(path) !== currentFolder && (await disk.list(dirname(path))) === undefined)
    return `The folder ${folder} is not there. Make it first, or name another file with --html.\n`;
  if ((await disk.list(path)) !== undefined) return `${file} is a folder. Name a file with --html.\n`;
  const there = await disk.read(path);
  if (there === undefined || isReport(there)) return undefined;
  return `${file} is there already, is no report, and stays as it is. Name another file with --html.\n`;
}

/** Runs a notebook of the package with a person's files and writes its page, everything inside; an older page is replaced whole. */
export async function exportReport({ notebook, inputs, file }: Export, surroundings: Surroundings): Promise<void> {
  if (file === undefined) return;
  const { currentFolder, packageFolder, disk, run, plotly, panel, err } = surroundings;
  const paths = inputs.map((typed) => resolve(currentFolder, typed));
  const path = join(packageFolder, "notebooks", `${notebook}.ipynb`);
  const { page } = await renderReport({ name: notebook, path, inputs: paths }, () => run(path, paths), {
    inlinePlotly: await plotly(),
    panel,
  });
  await disk.replace(resolve(currentFolder, file), page);
  err(`Page written to ${shownPath(resolve(currentFolder, file), currentFolder)}.\n`);
}
