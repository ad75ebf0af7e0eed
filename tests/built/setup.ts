import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { digestOf } from "../../src/notebook/run-causes.js";
import { reportsVariable } from "./reports.js";

const root = fileURLToPath(new URL("../..", import.meta.url));

/** Names the folder in which reports are built once for all tests; it is kept, so that what nothing has changed is not built again. */
export default function setup(): void {
  process.env[reportsVariable] = join(tmpdir(), `haulbook-built-${digestOf(root).slice(0, 8)}`);
}
