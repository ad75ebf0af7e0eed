import { createRequire } from "node:module";
import path from "node:path";
import { preloadSource } from "./preload.js";

const require = createRequire(import.meta.url);

/** The `require` of the installed tslab: finds what tslab itself would find. */
export const tslabRequire = createRequire(require.resolve("tslab/package.json"));

const script = path.join(path.dirname(require.resolve("tslab/package.json")), "bin", "tslab");

/** Lines of a stack: enough to find the line of the cell that threw. */
export const stackLimit = 100;
const quiet = "--disable-warning=ExperimentalWarning";
const kernelOf = (connectionFile: string) => [script, "kernel", "--config-path", connectionFile];

/**
 * Command line that starts the kernel, the same for the build and for Jupyter.
 *
 * @param connectionFile  path of the connection file, or Jupyter's placeholder for it
 * @returns program and arguments
 * Node's notice that an ES module was loaded by `require` is switched off, as cells load the core that way.
 * Example: kernelCommand("{connection_file}").at(-1) → "{connection_file}"
 */
export function kernelCommand(connectionFile: string): string[] {
  const preload = `data:text/javascript,${encodeURIComponent(preloadSource(script))}`;
  return [
    process.execPath,
    quiet,
    `--stack-trace-limit=${stackLimit}`,
    "--import",
    preload,
    ...kernelOf(connectionFile),
  ];
}

/**
 * Command line that starts a kernel from its image, which holds what is loaded before it, and the depth of its stacks: a flag of the
 * engine that was not there when the image was made would make it void.
 *
 * @param image  path of the image
 * @param connectionFile  path of the connection file
 * @returns program and arguments
 * Example: imageCommand("kernel.image", "connection.json").includes("--import") → false
 */
export function imageCommand(image: string, connectionFile: string): string[] {
  return [process.execPath, quiet, "--snapshot-blob", image, ...kernelOf(connectionFile)];
}
