import { passOverComments } from "./comments-passed-over.js";
import { noteFilesRead } from "./files-read.js";
import { hoverInCalls } from "./hover.js";
import { endWithBuild, endWithFrontEnd } from "./lifeline.js";
import { readSourcesOnce } from "./sources-once.js";
import { joinTexts } from "./texts-written.js";

/**
 * Outputs are kept: the kernel sends them without waiting for the one before, which its socket refuses after a few hundred in a row,
 * and its queue drops what a cell writes faster than it can be sent. Here outputs wait for their turn and the queue may grow. Answers
 * wait as well: on a busy machine two of them at once would end the kernel.
 */
const keepOutputs = `
  const { Publisher, Router } = require("zeromq");
  const { bind } = Publisher.prototype;
  const queues = new WeakMap();
  Object.defineProperty(Publisher.prototype, "bind", {
    value: function (address) {
      this.sendHighWaterMark = 0;
      return bind.call(this, address);
    },
  });
  const inTurn = ({ send }) => function (frames) {
    const queue = queues.get(this) ?? { waiting: 0, last: Promise.resolve() };
    queues.set(this, queue);
    const sendNow = () => send.call(this, frames);
    const sent = (queue.waiting === 0 ? sendNow() : queue.last.then(sendNow)).catch(() => {});
    queue.waiting += 1;
    queue.last = sent.then(() => {
      queue.waiting -= 1;
    });
    return queue.last;
  };
  for (const { prototype } of [Publisher, Router]) Object.defineProperty(prototype, "send", { value: inTurn(prototype) });`;

/**
 * Short names in objects are spelled out, `{ load }` as `{ load: load }`: the kernel finds a name of an earlier cell only where it
 * stands as a value of its own. Lines stay as they are.
 */
const spellOut = `
  const ts = require("@tslab/typescript-for-tslab");
  const converter = require("../dist/converter.js");
  const { createConverter } = converter;
  const spelledOut = (cell) => {
    const names = [];
    const visit = (node) => {
      if (ts.isShorthandPropertyAssignment(node)) names.push(node.name);
      ts.forEachChild(node, visit);
    };
    const file = ts.createSourceFile("cell.ts", cell, ts.ScriptTarget.Latest, true);
    visit(file);
    const insert = (text, name) => text.slice(0, name.getStart(file)) + name.text + ": " + text.slice(name.getStart(file));
    return names.reduceRight(insert, cell);
  };
  converter.createConverter = (options) => {
    const made = createConverter(options);
    return { ...made, convert: (earlier, cell) => made.convert(earlier, spelledOut(cell)) };
  };`;

/**
 * A kernel lives for seconds and runs most code a few times: the engine is told to wait longer before it optimises a function, which
 * saves a third of the processor time of a notebook, and most of that of a solver in WebAssembly. Loops that run hot are still optimised.
 */
const optimiseLater = `
  const { setFlagsFromString } = require("node:v8");
  setFlagsFromString("--interrupt-budget=1000000");
  setFlagsFromString("--wasm-tiering-budget=1000000000");`;

/** What is mended in each kernel, in a build and in Jupyter: JavaScript texts that find the kernel's own modules by `require`. */
export const mendings = [
  optimiseLater,
  readSourcesOnce,
  keepOutputs,
  spellOut,
  hoverInCalls,
  joinTexts,
  noteFilesRead,
  endWithBuild,
  endWithFrontEnd,
];

/** Texts in blocks of their own, one after the other. */
export function inBlocks(parts: readonly string[]): string {
  return parts.map((part) => `{${part}}`).join("\n");
}

/**
 * Module that is loaded before the kernel: mends what must be mended in it, and starts it faster.
 *
 * @param script  path of the kernel's own script
 * @returns JavaScript text
 * Example: preloadSource("/usr/lib/node_modules/tslab/bin/tslab").includes("zeromq") → true
 */
export function preloadSource(script: string): string {
  return `
  import { createRequire } from "node:module";
  const require = createRequire(${JSON.stringify(script)});${inBlocks([passOverComments, ...mendings])}`;
}
