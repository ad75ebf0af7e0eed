import { createRequire } from "node:module";
import path from "node:path";
import { preloadSource } from "./preload.js";

const require = createRequire(import.meta.url);

/** The `require` of the installed tslab: finds what tslab itself would find. */
export const tslabRequire = createRequire(require.resolve("tslab/package.json"));

const script = path.join(path.dirname(require.resolve("tslab/package.json")), "bin", "tslab");

/**
 * Command line that starts the kernel, the same for the build and for Jupyter.
 *
 * @param connectionFile  path of the connection file, or Jupyter's placeholder for it
 * @returns program and arguments
 * Node's notice that an ES module was loaded by `require` is switched off, as cells load the core that way; stacks are deep enough
 * to find the line of the cell that threw.
 * Example: kernelCommand("{connection_file}").at(-1) → "{connection_file}"
 */
export function kernelCommand(connectionFile: string): string[] {
  const preload = `data:text/javascript,${encodeURIComponent(preloadSource(script))}`;
  const flags = ["--disable-warning=ExperimentalWarning", "--stack-trace-limit=100", "--import", preload];
  return [process.execPath, ...flags, script, "kernel", "--config-path", connectionFile];
}
