import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { makeKernelImage } from "../../src/notebook/kernel-image.js";
import { digestOf } from "../../src/notebook/run-causes.js";
import { reportsVariable } from "./reports.js";

const root = fileURLToPath(new URL("../..", import.meta.url));

/**
 * Names the folder in which reports are built once for all tests; it is kept, so that what nothing has changed is not built again.
 * Starts a kernel ahead, from which those of the tests come up sooner.
 */
export default async function setup(): Promise<void> {
  await makeKernelImage();
  process.env[reportsVariable] = join(tmpdir(), `haulbook-built-${digestOf(root).slice(0, 8)}`);
}
