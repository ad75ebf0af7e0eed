import { join } from "node:path";
import { memoryFolder } from "../report/stamp.js";
import { reportsFolder, shownPath } from "./folders.js";
import { type ExitCode, exitCodes, type Surroundings } from "./surroundings.js";

/** What `haulbook clean` was asked. */
export interface CleanOptions {
  readonly output?: string | undefined;
}

/** `haulbook clean`: forgets all runs; pages stay. */
export async function clean(options: CleanOptions, { currentFolder, out, remove }: Surroundings): Promise<ExitCode> {
  const folder = join(reportsFolder(options.output, currentFolder), memoryFolder);
  await remove(folder);
  out(`Remembered runs in ${shownPath(folder, currentFolder)} are forgotten; the pages stay.\n`);
  return exitCodes.done;
}
