import { spawn } from "node:child_process";
import { randomBytes } from "node:crypto";
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { freePorts } from "../../src/notebook/connection.js";
import { installKernelspec } from "../../src/notebook/kernelspec.js";
import { root } from "../house/project.js";

/** A notebook server of its own: its data, its settings and its notebooks lie in one temporary folder. */
export interface NotebookServer {
  /** Folder that it serves. */
  readonly folder: string;
  /** Address without a path. */
  readonly address: string;
  readonly token: string;
  /** Processes that belong to it, kernels included. */
  processes(): number[];
  /** Ends it as a service manager does; answers with its exit code. */
  stop(): Promise<number | null>;
  /** Takes away what is left of it. */
  remove(): void;
}

/** Numbers of the running processes whose command line names a folder, as the server's and its kernels' do. */
function processesOf(folder: string): number[] {
  const running = readdirSync("/proc").filter((name) => /^\d+$/u.test(name));
  const commandOf = (name: string) => {
    try {
      return readFileSync(join("/proc", name, "cmdline"), "utf8");
    } catch {
      return "";
    }
  };
  return running.filter((name) => commandOf(name).includes(folder)).map(Number);
}

/** Starts the classic notebook on this machine alone, with our kernel installed for it. */
export async function startNotebookServer(): Promise<NotebookServer> {
  const base = mkdtempSync(join(tmpdir(), "haulbook-notebook-"));
  const folder = join(base, "notebooks");
  mkdirSync(join(folder, "node_modules"), { recursive: true });
  symlinkSync(root, join(folder, "node_modules", "haulbook"), "junction");
  const { HAULBOOK_OUTPUT: _, ...inherited } = process.env;
  const own = { HOME: base, JUPYTER_DATA_DIR: join(base, "data"), JUPYTER_RUNTIME_DIR: join(base, "runtime") };
  const env = { ...inherited, ...own, JUPYTER_CONFIG_DIR: join(base, "config"), IPYTHONDIR: join(base, "ipython") };
  await installKernelspec({ env, platform: process.platform, homeFolder: base });
  const token = randomBytes(24).toString("hex");
  const [port] = await freePorts(1);
  const options = ["--no-browser", "--allow-root", "--ip=127.0.0.1", `--port=${port}`, `--NotebookApp.token=${token}`];
  const server = spawn("jupyter-notebook", [...options, folder], {
    cwd: folder,
    env,
    stdio: ["ignore", "ignore", "pipe"],
  });
  let said = "";
  server.stderr.on("data", (text: Buffer) => {
    said += text.toString();
  });
  let over = false;
  const ended = new Promise<number | null>((resolve) => {
    server.once("error", () => resolve(null));
    server.once("exit", resolve);
  }).finally(() => {
    over = true;
  });
  const remove = () => {
    for (const pid of processesOf(base)) process.kill(pid, "SIGKILL");
    rmSync(base, { recursive: true, force: true });
  };
  const stop = () => {
    server.kill("SIGTERM");
    return ended;
  };
  // The port may have been taken meanwhile: the server then says which other one it took.
  for (let wait = 0; wait < 600; wait += 1) {
    const address = /running at:[\s\S]*?(http:\/\/127\.0\.0\.1:\d+)/u.exec(said)?.[1];
    if (address !== undefined) return { folder, address, token, processes: () => processesOf(base), stop, remove };
    if (over) break;
    await pause(100);
  }
  remove();
  throw new Error(`the notebook server did not come up: ${said}`);
}
