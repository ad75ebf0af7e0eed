import { basename, join, relative, resolve } from "node:path";
import { inputList, inputReportName } from "../notebook/input-list.js";
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

/** The notebooks of the current folder when it has a folder of that name, otherwise those of the package; once for each input. */
export async function findNotebooks({
  currentFolder,
  packageFolder,
  disk,
}: Pick<Surroundings, "currentFolder" | "packageFolder" | "disk">): Promise<NotebookFolder> {
  const here = join(currentFolder, "notebooks");
  const own = await disk.list(here);
  const folder = own === undefined ? join(packageFolder, "notebooks") : here;
  const names = own ?? (await disk.list(folder)) ?? [];
  const files = names.filter((name) => name.endsWith(ending) && !name.startsWith("."));
  const notebooks = await Promise.all(
    files.map(async (name): Promise<NotebookFile[]> => {
      const notebook = { name: reportName(name), path: shownPath(join(folder, name), currentFolder) };
      const inputs = inputsOf(await disk.read(join(folder, name)));
      return (
        inputs?.map((input) => ({ ...notebook, name: inputReportName(notebook.name, input), inputs: [input] })) ?? [
          notebook,
        ]
      );
    }),
  );
  return { folder, notebooks: notebooks.flat() };
}

/** Inputs of a notebook; none where its text is broken: the run says what is wrong with it. */
function inputsOf(text: string | undefined): readonly string[] | undefined {
  try {
    return inputList((JSON.parse(text ?? "") as { readonly metadata?: unknown } | null)?.metadata);
  } catch {
    return undefined;
  }
}

/** Folder in which reports are written and read. */
export function reportsFolder(output: string | undefined, currentFolder: string): string {
  return resolve(currentFolder, output ?? "reports");
}

/** Name of a report from what a person may type: the name, the notebook file, or a path to it. */
export function reportName(typed: string): string {
  return basename(typed, ending);
}
