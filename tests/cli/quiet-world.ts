import { dispatch } from "../../src/cli/dispatch.js";
import type { Surroundings } from "../../src/cli/surroundings.js";
import { memoryDisk } from "../report/memory.js";
import { sample } from "../report/sample.js";
import { noEffects } from "./no-effects.js";

/** A command line whose disk is in memory and whose effects do nothing, but for those that a test gives. */
export function quietWorld(changed: Partial<Surroundings> = {}, disk = memoryDisk()) {
  disk.texts.set("/package/package.json", '{"version":"1.2.3"}');
  const said = { out: "", err: "" };
  const surroundings: Surroundings = {
    currentFolder: "/boat",
    packageFolder: "/package",
    disk,
    out: (text) => {
      said.out += text;
    },
    err: (text) => {
      said.err += text;
    },
    now: () => 0,
    run: async () => sample,
    plotly: async () => "window.Plotly = {};",
    open: async () => {},
    installKernel: async () => "",
    link: async () => {},
    ...noEffects,
    rename: async (from, to) => {
      for (const [path, text] of [...disk.texts])
        if (path.startsWith(`${from}/`)) {
          disk.texts.delete(path);
          disk.texts.set(to + path.slice(from.length), text);
        }
    },
    signal: new AbortController().signal,
    ...changed,
  };
  return { disk, said, tell: (...args: string[]) => dispatch(args, surroundings) };
}
