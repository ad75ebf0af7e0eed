import { resolve } from "node:path";
import { type ExitCode, exitCodes, type Surroundings } from "./surroundings.js";

/** What `haulbook kernel install` was asked. */
export interface KernelOptions {
  readonly prefix: string | undefined;
}

/** `haulbook kernel install`: makes the notebooks' kernel known to Jupyter. */
export async function kernelInstall({ prefix }: KernelOptions, surroundings: Surroundings): Promise<ExitCode> {
  const { currentFolder, installKernel, out } = surroundings;
  const folder = await installKernel(prefix === undefined ? undefined : resolve(currentFolder, prefix));
  out(`The kernel is installed in ${folder}. Restart Jupyter, or reload its page, to see it.\n`);
  return exitCodes.done;
}
