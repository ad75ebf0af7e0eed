import { setTimeout as pause } from "node:timers/promises";
import { openChannels } from "./channels.js";
import { type KernelExit, type KernelProcess, startProcess } from "./child.js";
import { type FindPorts, freePorts, writeConnection } from "./connection.js";
import type { JsonObject, Message } from "./wire.js";

/** A request that was sent: its answer, and the moment at which all its outputs have arrived. */
export interface Request {
  readonly id: string;
  readonly reply: Promise<JsonObject>;
  readonly idle: Promise<void>;
}

/** A running kernel. */
export interface Kernel {
  readonly pid: number | undefined;
  /** Fulfilled as soon as the process is gone, whatever ended it. */
  readonly exited: Promise<KernelExit>;
  /** What the kernel's process wrote to its own standard error, the last part. */
  errorText(): string;
  /** Whole paths of the files and folders that the cells read so far. */
  filesRead(): Promise<string[]>;
  /** Runs code; every broadcast that belongs to it goes to `listen`, for as long as the kernel lives. */
  execute(code: string, listen: (message: Message) => void): Request;
  /** A round trip: when it is over, everything that was put out before has arrived. */
  flush(): Request;
  /** Asks the running code to stop; code that never returns to the event loop may not hear it. */
  interrupt(): void;
  /** Ends the process at once. */
  kill(): Promise<KernelExit>;
  /** Asks the kernel to shut down, then terminates, then kills it. */
  close(): Promise<KernelExit>;
}

export interface StartKernel {
  /** Working folder: the notebook's. */
  readonly folder: string;
  readonly environment: NodeJS.ProcessEnv;
  /** Longest time for the kernel to come up [s]. */
  readonly startSeconds?: number;
  readonly findPorts?: FindPorts;
  readonly signal?: AbortSignal | undefined;
  /** Image of a kernel that was started ahead; where one cannot be started from it, it starts without. */
  readonly image?: string | undefined;
  /** Longest time for it to come up from its image [s]; then it starts without. */
  readonly imageSeconds?: number;
}

/** The kernel did not come up. */
export class KernelStartError extends Error {
  override readonly name = "KernelStartError";
}

/** Time to end when asked to; a busy machine may need some of it [ms]. */
const orderlyEnd = 10_000;
const startAttempts = 4;
const bindFailure = /address already in use/i;
/** It ended before it was ready, and nobody asked it to. */
const endedItself = /before it was ready: (?!signal SIG(?:KILL|TERM|INT|HUP))/u;
const portTaken = "a port of the kernel was taken by another program: address already in use";

/** From its image a kernel is there after a second or two; one that was not, in some hundred on a busy machine, did not come at all. */
const usualImageSeconds = 15;
const tooLate = /^the kernel did not come up/u;

/** Starts a kernel and waits until it answers and its broadcasts arrive; a port lost to another program means another try. */
export async function startKernel(start: StartKernel): Promise<Kernel> {
  const { startSeconds = 60, imageSeconds = usualImageSeconds } = start;
  const deadline = performance.now() + startSeconds * 1000;
  let { image } = start;
  for (let attempt = 1; ; attempt += 1) {
    const left = (deadline - performance.now()) / 1000;
    const seconds = image === undefined ? left : Math.min(left, imageSeconds);
    const outcome = await tryStart({ ...start, startSeconds: seconds, image });
    if (typeof outcome !== "string") return outcome;
    const badImage = image !== undefined && (endedItself.test(outcome) || tooLate.test(outcome));
    if (badImage) image = undefined;
    else if (attempt >= startAttempts || !bindFailure.test(outcome)) throw new KernelStartError(outcome);
  }
}

interface Waiting {
  readonly listen: (message: Message) => void;
  readonly answer: (content: JsonObject) => void;
  readonly finish: () => void;
}

async function tryStart(start: StartKernel & { readonly startSeconds: number }): Promise<Kernel | string> {
  const { folder, environment, startSeconds, findPorts = freePorts, signal, image } = start;
  const connection = await writeConnection(findPorts);
  const child = startProcess({ connection, folder, environment, image });
  const waiting = new Map<string, Waiting>();
  let badMessage = "";
  const channels = openChannels({
    connection,
    onReply: (message) => waiting.get(message.parent?.msg_id ?? "")?.answer(message.content),
    onBroadcast: (message) => {
      const request = waiting.get(message.parent?.msg_id ?? "");
      request?.listen(message);
      if (message.header.msg_type === "status" && message.content.execution_state === "idle") request?.finish();
    },
    onBadMessage: (error) => {
      badMessage = error.message;
    },
  });
  void child.exited.then(() => channels.close());

  const request = (type: string, content: JsonObject, listen: (message: Message) => void): Request => {
    const id = channels.send("shell", type, content);
    let answer: (content: JsonObject) => void = () => {};
    let finish: () => void = () => {};
    const reply = new Promise<JsonObject>((resolve) => {
      answer = resolve;
    });
    const idle = new Promise<void>((resolve) => {
      finish = resolve;
    });
    waiting.set(id, { listen, answer, finish });
    return { id, reply, idle };
  };
  const flush = () => request("kernel_info_request", {}, () => {});
  const kill = () => {
    child.kill();
    return child.exited;
  };

  const ready = await becomeReady({ child, flush, startSeconds, signal });
  if (ready !== undefined) {
    await kill();
    return [ready, badMessage, child.errorText()].filter((part) => part !== "").join("\n");
  }
  return {
    pid: child.pid,
    exited: child.exited,
    errorText: child.errorText,
    filesRead: child.filesRead,
    execute: (code, listen) =>
      request(
        "execute_request",
        { code, silent: false, store_history: false, allow_stdin: false, stop_on_error: true },
        listen,
      ),
    flush,
    interrupt: child.interrupt,
    kill,
    close: async () => {
      channels.send("control", "shutdown_request", { restart: false });
      if (await isOver(child, orderlyEnd)) return child.exited;
      child.terminate();
      if (await isOver(child, 1000)) return child.exited;
      return kill();
    },
  };
}

/** True when the process ended within the time. */
async function isOver(child: KernelProcess, milliseconds: number): Promise<boolean> {
  const timer = new AbortController();
  const late = pause(milliseconds, false, { signal: timer.signal }).catch(() => false);
  const over = await Promise.race([child.exited.then(() => true), late]);
  timer.abort();
  return over;
}

interface BecomeReady {
  readonly child: KernelProcess;
  readonly flush: () => Request;
  readonly startSeconds: number;
  readonly signal: AbortSignal | undefined;
}

/**
 * Repeats a harmless request until one is answered and its status was also broadcast: only then is the subscription in force.
 * Returns what went wrong, or nothing.
 */
async function becomeReady({ child, flush, startSeconds, signal }: BecomeReady): Promise<string | undefined> {
  const deadline = performance.now() + startSeconds * 1000;
  let state: "waiting" | "ready" | KernelExit = "waiting";
  void child.exited.then((exit) => {
    if (state === "waiting") state = exit;
  });
  while (state === "waiting") {
    if (performance.now() > deadline) return `the kernel did not come up within ${Math.round(startSeconds)} s`;
    if (signal?.aborted) return "the start of the kernel was stopped";
    if (bindFailure.test(child.errorText())) return portTaken;
    const { reply, idle } = flush();
    const answered = Promise.all([reply, idle]).then(() => {
      if (state === "waiting") state = "ready";
    });
    await Promise.race([answered, child.exited, pause(50)]);
  }
  // The port of a channel that the test above does not use may be lost too.
  if (bindFailure.test(child.errorText())) return portTaken;
  return state === "ready" ? undefined : `the kernel ended before it was ready: ${describeExit(state)}`;
}

/** How a process ended, in words. */
export function describeExit({ code, signal, failure }: KernelExit): string {
  if (failure !== undefined) return failure;
  return signal === null ? `exit code ${code}` : `signal ${signal}`;
}
