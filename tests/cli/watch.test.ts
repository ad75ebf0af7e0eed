import { describe, expect, it } from "vitest";
import type { Surroundings } from "../../src/cli/surroundings.js";
import { Changes, touchedBy } from "../../src/cli/watch/changes.js";
import type { Serve } from "../../src/cli/watch/live.js";
import { CellThrewError } from "../../src/notebook/errors.js";
import { memoryDisk } from "../report/memory.js";
import { sample } from "../report/sample.js";
import { quietWorld } from "./quiet-world.js";

interface State {
  readonly session: string;
  readonly changed: Readonly<Record<string, number>>;
  readonly failures: readonly { readonly place: string; readonly text: string }[];
}

/** A watch whose world is in the hands of the test: each told state is a build that came to its end. */
function world(run?: Surroundings["run"]) {
  const disk = memoryDisk();
  const put = (name: string, inputs?: readonly string[]) =>
    disk.texts.set(
      `/boat/notebooks/${name}.ipynb`,
      JSON.stringify({ metadata: { haulbook: inputs && { inputs } }, cells: [] }),
    );
  const stop = new AbortController();
  const noted = { opened: [] as string[], closed: [] as string[] };
  const ran: string[] = [];
  const told: State[] = [];
  const waiting: ((state: State) => void)[] = [];
  let change: (path: string) => void = () => {};
  let folders: readonly string[] = [];
  let serving: Serve | undefined;
  let library = "one";
  const effects: Partial<Surroundings> = {
    run: async (path, inputs, onFilesRead, variables) => {
      ran.push([path, ...(inputs ?? [])].join(" "));
      return run === undefined ? sample : run(path, inputs, onFilesRead, variables);
    },
    open: async (path) => void noted.opened.push(path),
    live: {
      serve: async (request) => {
        serving = request;
        const tell = (text: string) => {
          const state = JSON.parse(text) as State;
          told.push(state);
          waiting.shift()?.(state);
        };
        return { address: "http://127.0.0.1:4711/", tell, close: async () => void noted.closed.push("server") };
      },
      folders: (onChange) => {
        change = onChange;
        return {
          set: (list) => {
            folders = list;
          },
          close: () => void noted.closed.push("folders"),
        };
      },
      settle: async () => {},
      session: "session",
      find: async () => undefined,
    },
    signal: stop.signal,
  };
  const { said, tell } = quietWorld(effects, disk);
  const next = () => new Promise<State>((resolve) => waiting.push(resolve));
  return {
    disk,
    put,
    said: Object.assign(said, noted),
    ran,
    told,
    next,
    stop: () => stop.abort(),
    change: (path: string) => change(path),
    folders: () => folders,
    serving: () => serving,
    newLibrary: () => {
      library = "two";
    },
    tell,
    withLibrary: (...args: string[]) =>
      quietWorld({ ...effects, library: async () => ({ core: library, versions: "1", whole: library }) }, disk).tell(
        ...args,
      ),
  };
}

describe("haulbook watch", () => {
  it("builds all, serves the folder, builds again what a change touches, and ends when it is asked to", async () => {
    const { put, ran, said, next, change, folders, serving, stop, disk, tell } = world();
    put("hold");
    put("plan", ["boats/skiff.yaml"]);
    const first = next();
    const done = tell("watch", "--port", "4711", "--open");
    expect(await first).toMatchObject({
      session: "session",
      failures: [],
      changed: { "hold.html": 1, "index.html": 1 },
    });
    expect(ran).toEqual(["notebooks/hold.ipynb", "notebooks/plan.ipynb boats/skiff.yaml"]);
    expect(said.opened).toEqual(["http://127.0.0.1:4711/"]);
    expect(said.out).toContain("Pages: http://127.0.0.1:4711/ Ctrl-C ends the watch.");
    expect(serving()).toMatchObject({ port: 4711, site: { folder: "/boat/reports" } });
    expect(serving()?.site.mark()).toBe("session.1");
    expect(folders()).toContain("/boat/notebooks");
    expect(folders()).toContain("/boat/notebooks/boats");

    const second = next();
    change("/boat/notebooks/somewhat.txt");
    change("/boat/notebooks/boats/skiff.yaml");
    // The page came out as it stands: nobody is told to load it again.
    expect((await second).changed["plan-skiff.html"]).toBe(1);
    expect(ran.slice(2)).toEqual(["notebooks/plan.ipynb boats/skiff.yaml"]);

    const third = next();
    disk.texts.delete("/boat/reports/hold.html");
    change("/boat/notebooks/hold.ipynb");
    expect((await third).changed).toMatchObject({ "hold.html": 3, "plan-skiff.html": 1 });
    expect(ran.slice(3)).toEqual(["notebooks/hold.ipynb"]);

    stop();
    expect(await done).toBe(0);
    expect(said.closed.sort()).toEqual(["folders", "server"]);
    expect(said.err).toBe("");
    expect(said.opened).toHaveLength(1);
  });

  it("follows files that cells read, also those of a run that failed, and shows what failed until it is mended", async () => {
    let broken = true;
    const { put, ran, next, change, folders, stop, said, tell } = world(async (path, _inputs, onFilesRead) => {
      onFilesRead?.(["/elsewhere/data/numbers.csv", "/package/dist/index.js"]);
      if (broken) throw new CellThrewError({ notebook: path, cell: 2, line: 3, text: "no <b>wind</b>" });
      return sample;
    });
    put("hold");
    const first = next();
    const done = tell("watch");
    expect((await first).failures).toEqual([{ place: "notebooks/hold.ipynb, cell 2, line 3", text: "no <b>wind</b>" }]);
    expect(said.err).toContain("notebooks/hold.ipynb, cell 2, line 3: no <b>wind</b>");
    expect(folders()).toContain("/elsewhere/data");
    expect(folders()).not.toContain("/package/dist");
    broken = false;
    const second = next();
    change("/elsewhere/data/other.csv");
    change("/elsewhere/data/numbers.csv");
    expect(await second).toMatchObject({ failures: [], changed: { "hold.html": 2 } });
    expect(ran).toHaveLength(2);
    stop();
    expect(await done).toBe(0);
  });

  it("looks after the pages that are named, and after notebooks that come and go", async () => {
    const { put, ran, next, change, stop, disk, tell } = world();
    put("hold");
    put("air");
    const first = next();
    const done = tell("watch", "hold");
    await first;
    expect(ran).toEqual(["notebooks/hold.ipynb"]);
    const second = next();
    disk.texts.delete("/boat/notebooks/air.ipynb");
    change("/boat/notebooks/air.ipynb");
    await second;
    expect(ran).toHaveLength(1);
    stop();
    expect(await done).toBe(0);

    const all = world();
    all.put("hold");
    const begun = all.next();
    const ended = all.tell("watch");
    await begun;
    const come = all.next();
    all.put("air");
    all.change("/boat/notebooks/air.ipynb");
    expect((await come).changed).toMatchObject({ "air.html": 2, "index.html": 2 });
    expect(all.ran).toEqual(["notebooks/hold.ipynb", "notebooks/air.ipynb"]);
    all.stop();
    expect(await ended).toBe(0);
  });

  it("builds nothing with a program that is no longer the one that runs", async () => {
    const { put, ran, next, change, stop, newLibrary, withLibrary, disk } = world();
    // The memory reads notebooks from the real disk, where there is none.
    put("hold");
    const first = next();
    const done = withLibrary("watch");
    await first;
    newLibrary();
    const second = next();
    change("/boat/notebooks/hold.ipynb");
    expect((await second).failures).toContainEqual({
      place: "haulbook",
      text: "The program itself has changed. End the watch and start it again.",
    });
    expect(ran).toEqual([]);
    expect(disk.texts.has("/boat/reports/hold.html")).toBe(false);
    stop();
    expect(await done).toBe(0);
  });

  it("ends in the middle of a build without calling that a failure", async () => {
    const { put, said, stop, told, tell } = world(async () => {
      stop();
      throw new Error("stopped");
    });
    put("hold");
    expect(await tell("watch")).toBe(0);
    expect(told).toEqual([]);
    expect(said.err).toBe("");
    expect(said.closed.sort()).toEqual(["folders", "server"]);
  });

  it.each([
    [["watch", "--port", "70000"], "--port is a whole number"],
    [["watch", "--port", "1.5"], "--port is a whole number"],
    [["watch", "--port", "here"], "--port is a whole number"],
    [["watch", "hald"], 'Did you mean "hold"?'],
    [["watch", "--single-file"], "single"],
  ])("refuses %j", async (args, words) => {
    const { put, said, serving, tell } = world();
    put("hold");
    expect(await tell(...args)).toBe(2);
    expect(said.err).toContain(words);
    expect(serving()).toBeUndefined();
  });
});

describe("changes", () => {
  it("are waited for, gathered, and given once", async () => {
    const changes = new Changes();
    const { signal } = new AbortController();
    const some = changes.some(signal);
    changes.add("/a");
    await some;
    changes.add("/b");
    changes.add("/a");
    await changes.some(signal);
    expect(changes.take()).toEqual(["/a", "/b"]);
    expect(changes.take()).toEqual([]);
  });

  it("touch what was read: a file, a folder that was listed, a folder above", () => {
    const readBy = new Map([
      ["file", new Set(["/a/b/c.csv"])],
      ["list", new Set(["/a/b"])],
      ["other", new Set(["/a/bc.csv"])],
    ]);
    expect(touchedBy(["/a/b/c.csv"], readBy)).toEqual(["file", "list"]);
    expect(touchedBy(["/a/b/new.csv"], readBy)).toEqual(["list"]);
    expect(touchedBy(["/a/b"], readBy)).toEqual(["file", "list"]);
    expect(touchedBy(["/a/x"], readBy)).toEqual([]);
    expect(touchedBy(["/a"], readBy)).toEqual(["file", "list", "other"]);
  });
});
