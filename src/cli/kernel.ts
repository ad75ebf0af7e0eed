import { type ExitCode, exitCodes, type Surroundings } from "./surroundings.js";

/** `haulbook kernel install`: makes the notebooks' kernel known to Jupyter. */
export async function kernelInstall({ installKernel, out }: Surroundings): Promise<ExitCode> {
  const folder = await installKernel();
  out(`The kernel is installed in ${folder}. Restart Jupyter, or reload its page, to see it.\n`);
  return exitCodes.done;
}
