#!/usr/bin/env node
import { readFile, rm } from "node:fs/promises";
import { createRequire } from "node:module";
import { homedir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { installKernelspec } from "../notebook/kernelspec.js";
import { packageDigest } from "../notebook/package-digest.js";
import { openOnDesktop } from "./desktop.js";
import { linkFolder, realDisk, sweepParts } from "./disk.js";
import { dispatch } from "./dispatch.js";
import { takeLock } from "./lock.js";
import { exitCodes } from "./surroundings.js";

const packageFolder = fileURLToPath(new URL("../..", import.meta.url));
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
  packageFolder,
  disk: realDisk(String(process.pid)),
  out: (text) => process.stdout.write(text),
  err: (text) => process.stderr.write(text),
  now: () => performance.now(),
  run: async (path, inputs, onFilesRead = () => {}, variables = {}) => {
    const { runNotebook } = await import("../notebook/run.js");
    const environment = { ...process.env, ...variables };
    return runNotebook({ path, inputs, onFilesRead, environment, cellSeconds, notebookSeconds, signal: stop.signal });
  },
  library: () => packageDigest(packageFolder),
  lock: takeLock,
  sweep: sweepParts,
  remove: (folder) => rm(folder, { recursive: true, force: true }),
  plotly: () => readFile(createRequire(import.meta.url).resolve("plotly.js-dist-min"), "utf8"),
  panel: (model) => readFile(join(packageFolder, "dist", "page", "bundles", `${model}.js`), "utf8"),
  open: openOnDesktop,
  installKernel: async () =>
    dirname(await installKernelspec({ env: process.env, platform: process.platform, homeFolder: homedir() })),
  link: linkFolder,
  signal: stop.signal,
});
