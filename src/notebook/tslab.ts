import { createRequire } from "node:module";
import path from "node:path";

const require = createRequire(import.meta.url);

/** The `require` of the installed tslab: finds what tslab itself would find. */
export const tslabRequire = createRequire(require.resolve("tslab/package.json"));

const script = path.join(path.dirname(require.resolve("tslab/package.json")), "bin", "tslab");

/**
 * Loaded before the kernel: it sends outputs without waiting for the one before, which its socket refuses after a few hundred in a row,
 * and its queue drops what a cell writes faster than it can be sent. Here outputs wait for their turn and the queue may grow.
 */
const keepOutputs = `
  import { createRequire } from "node:module";
  const { Publisher } = createRequire(${JSON.stringify(script)})("zeromq");
  const { bind, send } = Publisher.prototype;
  const queues = new WeakMap();
  const replace = (name, value) => Object.defineProperty(Publisher.prototype, name, { value });
  replace("bind", function (address) {
    this.sendHighWaterMark = 0;
    return bind.call(this, address);
  });
  replace("send", function (frames) {
    const queue = queues.get(this) ?? { waiting: 0, last: Promise.resolve() };
    queues.set(this, queue);
    const sendNow = () => send.call(this, frames);
    const sent = (queue.waiting === 0 ? sendNow() : queue.last.then(sendNow)).catch(() => {});
    queue.waiting += 1;
    queue.last = sent.then(() => {
      queue.waiting -= 1;
    });
    return queue.last;
  });`;

/**
 * Command line that starts the kernel, the same for the build and for Jupyter.
 *
 * @param connectionFile  path of the connection file, or Jupyter's placeholder for it
 * @returns program and arguments
 * Node's notice that an ES module was loaded by `require` is switched off, as cells load the core that way; stacks are deep enough
 * to find the line of the cell that threw.
 * Example: kernelCommand("{connection_file}").at(-1) → "{connection_file}"
 */
export function kernelCommand(connectionFile: string): string[] {
  const preload = `data:text/javascript,${encodeURIComponent(keepOutputs)}`;
  const flags = ["--disable-warning=ExperimentalWarning", "--stack-trace-limit=100", "--import", preload];
  return [process.execPath, ...flags, script, "kernel", "--config-path", connectionFile];
}
