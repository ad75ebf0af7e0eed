import { basename, join, relative, resolve } from "node:path";
import type { NotebookFile } from "../report/build.js";
import type { Surroundings } from "./surroundings.js";

const ending = ".ipynb";

/** Where notebooks are read. */
interface NotebookFolder {
  readonly folder: string;
  readonly notebooks: readonly NotebookFile[];
}

/** Path for a message: short when it lies below the current folder. */
export function shownPath(path: string, currentFolder: string): string {
  const short = relative(currentFolder, path);
  return short === "" || short.startsWith("..") ? path : short;
}

/** The notebooks of the current folder when it has a folder of that name, otherwise those of the package. */
export async function findNotebooks({
  currentFolder,
  packageFolder,
  disk,
}: Pick<Surroundings, "currentFolder" | "packageFolder" | "disk">): Promise<NotebookFolder> {
  const here = join(currentFolder, "notebooks");
  const own = await disk.list(here);
  const folder = own === undefined ? join(packageFolder, "notebooks") : here;
  const names = own ?? (await disk.list(folder)) ?? [];
  const notebooks = names
    .filter((name) => name.endsWith(ending) && !name.startsWith("."))
    .map((name) => ({ name: reportName(name), path: shownPath(join(folder, name), currentFolder) }));
  return { folder, notebooks };
}

/** Folder in which reports are written and read. */
export function reportsFolder(output: string | undefined, currentFolder: string): string {
  return resolve(currentFolder, output ?? "reports");
}

/** Name of a report from what a person may type: the name, the notebook file, or a path to it. */
export function reportName(typed: string): string {
  return basename(typed, ending);
}
