import { execFile } from "node:child_process";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";

export const reportsVariable = "HAULBOOK_TEST_REPORTS";

const root = fileURLToPath(new URL("../..", import.meta.url));
const program = join(root, "dist", "cli", "main.js");
const run = promisify(execFile);

/** Folder of all reports of this project, built once for all tests: whoever asks while they are being built waits. Nobody writes there. */
export async function builtReports(): Promise<string> {
  const folder = process.env[reportsVariable];
  if (folder === undefined) throw new Error(`${reportsVariable} is not set: run the tests with tests/vitest.config.ts`);
  for (;;) {
    try {
      await run(process.execPath, [program, "reports", "--output", folder], { cwd: root });
      return folder;
    } catch (error) {
      const { stderr = "" } = error as { stderr?: string };
      if (!stderr.includes("Another build")) throw error;
      await pause(500);
    }
  }
}
