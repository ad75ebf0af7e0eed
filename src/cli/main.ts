#!/usr/bin/env node
import { randomUUID } from "node:crypto";
import { readFile, realpath, rename, rm } from "node:fs/promises";
import { createRequire } from "node:module";
import { homedir } from "node:os";
import { dirname, join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { fileURLToPath } from "node:url";
import { installKernelspec } from "../notebook/kernelspec.js";
import { packageDigest } from "../notebook/package-digest.js";
import { openOnDesktop } from "./desktop.js";
import { linkFolder, realDisk, sweepParts } from "./disk.js";
import { dispatch } from "./dispatch.js";
import { shownText } from "./foreign-text.js";
import { takeLock } from "./lock.js";
import { exitCodes } from "./surroundings.js";
import { trustedFolders, trustFile } from "./trusted-folders.js";
import { fileBelow } from "./watch/file-below.js";
import { watchFolders } from "./watch/folders.js";

const packageFolder = fileURLToPath(new URL("../..", import.meta.url));
const cellSeconds = 120;
const notebookSeconds = 600;
/** Time in which one saving of a file is over [ms]. */
const settled = 150;
const disk = realDisk(String(process.pid));
const user = { env: process.env, platform: process.platform, homeFolder: homedir() };

const stop = new AbortController();

/** What a shell is told of a process that a signal ended. */
const codeOf = { SIGINT: 130, SIGTERM: 143 } as const;
let ended: (typeof codeOf)[keyof typeof codeOf] | undefined;

/**
 * From now on a signal asks for an end in good order: kernels, browsers and locks are put away. Before, it ends the process at once,
 * as it should while nothing but numbers is worked out.
 */
function endInOrder(): void {
  if (process.listenerCount("SIGINT") > 0) return;
  for (const signal of ["SIGINT", "SIGTERM"] as const)
    process.on(signal, () => {
      if (stop.signal.aborted) process.exit(codeOf[signal]);
      ended = codeOf[signal];
      stop.abort();
    });
}

// A reader that has seen enough, such as `head`, closes the pipe: that is no failure.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code === "EPIPE") process.exit(exitCodes.done);
  process.stderr.write(`Standard output cannot be written: ${error.code ?? error.message}.\n`);
  process.exit(exitCodes.failed);
});

/** Notebooks of one build for which it does not pay to start a kernel ahead. */
const fewRuns = 3;
let runs = 0;
let image: Promise<boolean> | undefined;

async function imageOfKernels(): Promise<boolean> {
  image ??= import("../notebook/kernel-image.js").then(({ makeKernelImage }) => makeKernelImage());
  return image;
}

const code = await dispatch(process.argv.slice(2), {
  currentFolder: process.cwd(),
  packageFolder,
  disk,
  out: (text) => process.stdout.write(shownText(text)),
  err: (text) => process.stderr.write(shownText(text)),
  now: () => performance.now(),
  run: async (path, inputs, onFilesRead = () => {}, variables = {}) => {
    endInOrder();
    const { runNotebook } = await import("../notebook/run.js");
    runs += 1;
    if (runs > fewRuns) await imageOfKernels();
    const environment = { ...process.env, ...variables };
    return runNotebook({ path, inputs, onFilesRead, environment, cellSeconds, notebookSeconds, signal: stop.signal });
  },
  library: () => packageDigest(packageFolder),
  lock: (folder) => {
    endInOrder();
    return takeLock(folder);
  },
  sweep: sweepParts,
  remove: (folder) => rm(folder, { recursive: true, force: true }),
  rename,
  minisearch: () =>
    readFile(join(dirname(createRequire(import.meta.url).resolve("minisearch")), "../umd/index.js"), "utf8"),
  plotly: () => readFile(createRequire(import.meta.url).resolve("plotly.js-dist-min"), "utf8"),
  panel: (model) => readFile(join(packageFolder, "dist", "page", "bundles", `${model}.js`), "utf8"),
  print: async (page, pdf) => {
    endInOrder();
    const { printPage } = await import("./print.js");
    const allRights = process.getuid?.() === 0;
    const machine = { env: process.env, platform: process.platform, mark: String(process.pid), allRights };
    return printPage(machine, { page, pdf, signal: stop.signal });
  },
  open: openOnDesktop,
  installKernel: async (prefix) => dirname(await installKernelspec({ ...user, prefix })),
  link: linkFolder,
  trust: trustedFolders({
    file: trustFile(user),
    always: [join(packageFolder, "notebooks")],
    disk,
    realPath: (folder) => realpath(folder),
  }),
  live: {
    serve: async (request) => {
      endInOrder();
      return (await import("./watch/server.js")).serveSite(request);
    },
    folders: watchFolders,
    settle: () => pause(settled),
    session: randomUUID(),
    find: fileBelow,
  },
  signal: stop.signal,
});
// To end a watch is to be done with it.
process.exitCode = code === exitCodes.done ? code : (ended ?? code);
