import { resolve } from "node:path";
import { worksheet } from "../calibration/worksheet.js";
import { worksheetHtml } from "../report/worksheetpage.js";
import { shownPath } from "./folders.js";
import { type ExitCode, exitCodes, type Surroundings } from "./surroundings.js";

/** What `haulbook worksheet` was asked. */
export interface WorksheetOptions {
  readonly lines: readonly string[];
  readonly output: string;
  /** Whether a file that is there may be written over. */
  readonly force: boolean;
}

/** `haulbook worksheet`: writes a sheet to print; a file that is there stays unless it is told otherwise. */
export async function writeWorksheet(
  { lines, output, force }: WorksheetOptions,
  { currentFolder, disk, err, out }: Pick<Surroundings, "currentFolder" | "disk" | "err" | "out">,
): Promise<ExitCode> {
  const path = resolve(currentFolder, output);
  const shown = shownPath(path, currentFolder);
  if (!force && (await disk.read(path)) !== undefined) {
    err(`${shown} is there already and stays as it is. Name another file with --output, or add --force.\n`);
    return exitCodes.failed;
  }
  const page = worksheetHtml(worksheet(lines.map((name) => ({ name }))));
  await disk.replace(path, page);
  out(`Sheet written. Open and print ${shown}\n`);
  return exitCodes.done;
}
