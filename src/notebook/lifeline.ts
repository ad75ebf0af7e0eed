/** Environment variable that names what a kernel is to clear away when its build is gone: the folder of its connection. */
export const lifelineVariable = "HAULBOOK_LIFELINE";

/** Number of the pipe that its build holds open as long as it lives. */
const lifelinePipe = 3;

const watcher = `
  const { rmSync } = require("node:fs");
  const { Socket } = require("node:net");
  const { workerData } = require("node:worker_threads");
  new Socket({ fd: ${lifelinePipe} }).resume().on("error", () => {}).on("close", () => {
    rmSync(workerData, { recursive: true, force: true });
    process.kill(process.platform === "win32" ? process.pid : -process.pid, "SIGKILL");
  });`;

/**
 * Ends a kernel, and what its cells started, when its build is gone without a farewell. A thread of its own watches, so that a cell
 * that never ends is ended as well. Runs in the kernel.
 */
export const endWithBuild = `
  if (process.env.${lifelineVariable} !== undefined) {
    const { Worker } = require("node:worker_threads");
    const options = { eval: true, execArgv: [], workerData: process.env.${lifelineVariable} };
    new Worker(${JSON.stringify(watcher)}, options).unref();
    delete process.env.${lifelineVariable};
  }`;

const parentWatcher = `
  const { workerData } = require("node:worker_threads");
  setInterval(() => {
    if (process.ppid !== workerData) process.kill(process.pid, "SIGKILL");
  }, 1000);`;

/** Ends a kernel whose front end is gone without a farewell, as kernels of Jupyter do: it would run on for ever. Runs in the kernel. */
export const endWithFrontEnd = `
  if (process.env.JPY_PARENT_PID !== undefined && process.platform !== "win32") {
    const { Worker } = require("node:worker_threads");
    const options = { eval: true, execArgv: [], workerData: process.ppid };
    new Worker(${JSON.stringify(parentWatcher)}, options).unref();
  }`;
