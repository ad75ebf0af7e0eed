#!/usr/bin/env node
import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { homedir } from "node:os";
import { dirname } from "node:path";
import { fileURLToPath } from "node:url";
import { installKernelspec } from "../notebook/kernelspec.js";
import { runNotebook } from "../notebook/run.js";
import { openOnDesktop } from "./desktop.js";
import { linkFolder, realDisk } from "./disk.js";
import { dispatch } from "./dispatch.js";
import { exitCodes } from "./surroundings.js";

const cellSeconds = 120;
const notebookSeconds = 600;

const stop = new AbortController();
for (const signal of ["SIGINT", "SIGTERM"] as const) {
  process.on(signal, () => {
    if (stop.signal.aborted) process.exit(exitCodes.failed);
    stop.abort();
  });
}

// A reader that has seen enough, such as `head`, closes the pipe: that is no failure.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code !== "EPIPE") throw error;
  process.exit(exitCodes.done);
});

process.exitCode = await dispatch(process.argv.slice(2), {
  currentFolder: process.cwd(),
  packageFolder: fileURLToPath(new URL("../..", import.meta.url)),
  disk: realDisk(String(process.pid)),
  out: (text) => process.stdout.write(text),
  err: (text) => process.stderr.write(text),
  now: () => performance.now(),
  run: (path, variables) =>
    runNotebook({
      path,
      cellSeconds,
      notebookSeconds,
      signal: stop.signal,
      environment: { ...process.env, ...variables },
    }),
  plotly: () => readFile(createRequire(import.meta.url).resolve("plotly.js-dist-min"), "utf8"),
  open: openOnDesktop,
  installKernel: async () =>
    dirname(await installKernelspec({ env: process.env, platform: process.platform, homeFolder: homedir() })),
  link: linkFolder,
  signal: stop.signal,
});
