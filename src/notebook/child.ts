import { spawn } from "node:child_process";
import { rmSync } from "node:fs";
import { join } from "node:path";
import { stripVTControlCharacters } from "node:util";
import type { Connection } from "./connection.js";
import { filesReadBy, filesReadVariable } from "./files-read.js";
import { atExit } from "./guard.js";
import { lifelineVariable } from "./lifeline.js";
import { imageCommand, kernelCommand } from "./tslab.js";

/** How a kernel ended. */
export interface KernelExit {
  readonly code: number | null;
  readonly signal: NodeJS.Signals | null;
  /** Why it could not be started. */
  readonly failure?: string;
}

/** A kernel's process: watched from its first moment, and never left behind. */
export interface KernelProcess {
  readonly pid: number | undefined;
  /** Fulfilled as soon as the process is gone. */
  readonly exited: Promise<KernelExit>;
  /** The last part of what the process itself wrote to its standard error. */
  errorText(): string;
  /** Whole paths of what the cells read so far. */
  filesRead(): Promise<string[]>;
  interrupt(): void;
  terminate(): void;
  kill(): void;
}

const keptErrorText = 8_000;

/** Longest time for what an ended process wrote to come in [ms]. */
const lastWords = 1000;

export interface StartProcess {
  readonly connection: Connection;
  /** Working folder of the kernel. */
  readonly folder: string;
  readonly environment: NodeJS.ProcessEnv;
  /** Image of a kernel that was started ahead. */
  readonly image?: string | undefined;
}

/**
 * Starts the kernel as a process group of its own, so that processes started by cells end with it.
 * Its input is closed; colours are off, as its texts are read by a program.
 */
export function startProcess({ connection, folder, environment, image }: StartProcess): KernelProcess {
  const { file } = connection;
  const [program = process.execPath, ...parameters] =
    image === undefined ? kernelCommand(file) : imageCommand(image, file);
  const { FORCE_COLOR: _, ...plain } = environment;
  const filesRead = join(connection.folder, "files-read");
  const ownGroup = process.platform !== "win32";
  const child = spawn(program, parameters, {
    cwd: folder,
    env: { ...plain, NO_COLOR: "1", [filesReadVariable]: filesRead, [lifelineVariable]: connection.folder },
    stdio: ["ignore", "pipe", "pipe", "pipe"],
    detached: ownGroup,
  });
  let running = true;
  let errorText = "";
  child.stdout?.resume();
  child.stderr?.setEncoding("utf8").on("data", (text: string) => {
    errorText = (errorText + text).slice(-keptErrorText);
  });

  const signalGroup = (signal: NodeJS.Signals) => {
    if (child.pid === undefined) return;
    try {
      if (ownGroup) process.kill(-child.pid, signal);
      else child.kill(signal);
    } catch {
      // The group is gone already.
    }
  };
  const callOff = atExit(() => {
    signalGroup("SIGKILL");
    rmSync(connection.folder, { recursive: true, force: true });
  });
  const exited = new Promise<KernelExit>((resolve) => {
    const end = (exit: KernelExit) => {
      if (!running) return;
      running = false;
      rmSync(connection.folder, { recursive: true, force: true });
      callOff();
      resolve(exit);
    };
    child.once("error", (error) => end({ code: null, signal: null, failure: error.message }));
    child.once("exit", (code, signal) => {
      // Processes that a cell started must not outlive their kernel.
      signalGroup("SIGKILL");
      // What it wrote last comes in yet, unless a process of another group holds its streams open.
      child.once("close", () => end({ code, signal }));
      setTimeout(() => end({ code, signal }), lastWords).unref();
    });
  });
  return {
    pid: child.pid,
    exited,
    errorText: () => stripVTControlCharacters(errorText).trim(),
    filesRead: () => filesReadBy(filesRead),
    interrupt: () => void (running && child.kill("SIGINT")),
    terminate: () => void (running && child.kill("SIGTERM")),
    kill: () => void (running && signalGroup("SIGKILL")),
  };
}
