import { describe, expect, it } from "vitest";
import { CellThrewError } from "../../src/notebook/errors.js";
import type { ExecutedNotebook } from "../../src/notebook/executed.js";
import type { CheckResult } from "../../src/published/row.js";
import { type BuildRequest, buildReports, type NotebookFile } from "../../src/report/build.js";
import { smallRequest } from "./build-request.js";
import { memoryDisk } from "./memory.js";
import { sample, sampleChecks } from "./sample.js";

const names = ["first", "second", "third"] as const;
const notebooks: readonly NotebookFile[] = names.map((name) => ({ name, path: `notebooks/${name}.ipynb` }));

/** The sample under another name, question and set of checks. */
function variant(
  name: string,
  checks: readonly CheckResult[] = sampleChecks,
  answer = "Hold **86 N**.",
): ExecutedNotebook {
  return {
    name,
    cells: sample.cells.map((cell) =>
      cell.type === "markdown"
        ? { ...cell, source: cell.source.replace("# How hard do I have to hold?", `# Question of ${name}?`) }
        : {
            ...cell,
            outputs: cell.outputs.map((output) =>
              output.kind === "checks"
                ? { ...output, results: checks }
                : output.kind === "answer"
                  ? { ...output, text: answer }
                  : output,
            ),
          },
    ),
  };
}

function request(disk: ReturnType<typeof memoryDisk>, changed: Partial<BuildRequest> = {}): BuildRequest {
  return smallRequest({ notebooks, outputFolder: "out", run: async ({ name }) => variant(name), files: disk }, changed);
}

const failing: readonly CheckResult[] = [
  { ...sampleChecks[0]!, id: "wrong-ratio", computed: 2.5, deviation: 0.6, holds: false },
];

describe("build", () => {
  it("writes a page and a record each, the leading pages, and one copy of everything shared", async () => {
    const disk = memoryDisk();
    const outcome = await buildReports(request(disk));
    const reports = names.map((name) => ({ name, state: "built", seconds: 0 }));
    expect(outcome).toEqual({ reports, built: [...names], failures: [], index: "out/index.html" });
    expect([...disk.texts.keys()].sort()).toEqual([
      "out/assets/charts-first.js",
      "out/assets/charts-second.js",
      "out/assets/charts-third.js",
      "out/assets/minisearch.js",
      "out/assets/page.css",
      "out/assets/page.js",
      "out/assets/plotly.min.js",
      "out/assets/search-data.js",
      "out/assets/search.js",
      "out/checks.html",
      "out/checks.json",
      "out/data/first.json",
      "out/data/second.json",
      "out/data/third.json",
      "out/first.html",
      "out/index.html",
      "out/second.html",
      "out/third.html",
    ]);
    expect(disk.texts.get("out/index.html")).toContain('<a href="second.html">Question of second?</a>');
    expect(disk.texts.get("out/index.html")).toContain("<polyline");
  });

  it("shows reports on the index in the order of their places, those without one last", async () => {
    const disk = memoryDisk();
    const places: Record<string, number> = { second: 2, third: 1 };
    const run: BuildRequest["run"] = async ({ name }) => {
      const place = places[name];
      return { ...variant(name), ...(place !== undefined && { place }) };
    };
    await buildReports(request(disk, { run }));
    const shown = [...(disk.texts.get("out/index.html") ?? "").matchAll(/Question of (\w+)\?/gu)].map(
      ([, name]) => name,
    );
    expect(shown.slice(0, 3)).toEqual(["third", "second", "first"]);
  });

  it("gives the same bytes twice, whatever order the runs end in", async () => {
    const [one, other] = [memoryDisk(), memoryDisk()];
    const ended: string[] = [];
    const order = ["third", "second", "first"];
    const turn = async (name: string) => {
      while (order[ended.length] !== name) await new Promise(setImmediate);
      ended.push(name);
    };
    await buildReports(request(one));
    await buildReports(
      request(other, {
        sideBySide: 3,
        now: () => Math.random() * 1e6,
        run: async ({ name }) => {
          await turn(name);
          return variant(name);
        },
      }),
    );
    expect(ended).toEqual(order);
    expect([...other.texts].sort()).toEqual([...one.texts].sort());
  });

  it("runs no more notebooks at a time than it is told", async () => {
    let running = 0;
    let most = 0;
    let wanted = 3;
    const run = async ({ name }: NotebookFile) => {
      running += 1;
      most = Math.max(most, running);
      // All that may run side by side do, and another that came too early would be seen.
      while (most < wanted) await new Promise(setImmediate);
      for (let turn = 0; turn < 20; turn += 1) await new Promise(setImmediate);
      running -= 1;
      return variant(name);
    };
    const four = [...notebooks, { name: "fourth", path: "notebooks/fourth.ipynb" }];
    await buildReports(request(memoryDisk(), { run, notebooks: four }));
    expect(most).toBe(3);
    for (const sideBySide of [2, 1]) {
      most = 0;
      wanted = sideBySide;
      await buildReports(request(memoryDisk(), { run, sideBySide }));
      expect(most).toBe(sideBySide);
    }
  });

  it("keeps the earlier page of a notebook that throws, and builds the others", async () => {
    const disk = memoryDisk();
    await buildReports(request(disk));
    const before = new Map(disk.texts);
    const { built, failures } = await buildReports(
      request(disk, {
        run: async ({ name, path }) => {
          if (name === "second")
            throw new CellThrewError({ notebook: path, cell: 4, line: 12, text: "no such sheave" });
          return variant(name, sampleChecks, "Hold **90 N**.");
        },
      }),
    );
    expect(built).toEqual(["first", "third"]);
    expect(failures).toMatchObject([
      { name: "second", message: "notebooks/second.ipynb, cell 4, line 12: no such sheave" },
    ]);
    expect(disk.texts.get("out/second.html")).toBe(before.get("out/second.html"));
    expect(disk.texts.get("out/data/second.json")).toBe(before.get("out/data/second.json"));
    expect(disk.texts.get("out/first.html")).toContain("90\u00a0N");
    const index = disk.texts.get("out/index.html");
    expect(index).toContain("90\u00a0N");
    expect(index).toContain("Question of second?");
  });

  it("stops a report at a failing check, names it, and leaves the earlier page", async () => {
    const disk = memoryDisk();
    await buildReports(request(disk));
    const before = new Map(disk.texts);
    const { failures } = await buildReports(
      request(disk, { names: ["first"], run: async ({ name }) => variant(name, failing) }),
    );
    expect(failures).toHaveLength(1);
    expect(failures[0]?.message).toBe(
      "notebooks/first.ipynb: check wrong-ratio fails: Ratio at one whole turn: computed 2.5, expected 1.9, allowed deviation 0.05",
    );
    expect(disk.texts).toEqual(before);
  });

  it("writes nothing for a first build that fails", async () => {
    const disk = memoryDisk();
    const { built } = await buildReports(request(disk, { run: async ({ name }) => variant(name, failing) }));
    expect(built).toEqual([]);
    expect([...disk.texts.keys()].filter((path) => !path.startsWith("out/assets/"))).toEqual([]);
  });

  it("keeps index and checks whole when only one report is built", async () => {
    const disk = memoryDisk();
    await buildReports(request(disk));
    const before = new Map(disk.texts);
    const ran: string[] = [];
    const run = async ({ name }: NotebookFile) => {
      ran.push(name);
      return variant(name);
    };
    await buildReports(request(disk, { names: ["second"], run }));
    expect(ran).toEqual(["second"]);
    expect(disk.texts).toEqual(before);
  });

  it("leaves a report out of the index once its notebook is gone", async () => {
    const disk = memoryDisk();
    await buildReports(request(disk));
    await buildReports(request(disk, { notebooks: notebooks.slice(1) }));
    expect(disk.texts.get("out/index.html")).not.toContain("Question of first?");
  });

  it("lists a check once with all its reports, in a stable shape", async () => {
    const disk = memoryDisk();
    await buildReports(request(disk));
    const list = JSON.parse(disk.texts.get("out/checks.json") ?? "") as Record<string, unknown>[];
    expect(list.map(({ id }) => id)).toEqual(sampleChecks.map(({ id }) => id).sort());
    expect(Object.keys(list[0] ?? {})).toEqual([
      "id",
      "quantity",
      "computed",
      "expected",
      "unit",
      "allowed",
      "deviation",
      "evidence",
      "source",
      "status",
      "place",
      "reports",
    ]);
    for (const { reports } of list) expect(reports).toEqual([...names]);
  });

  it("refuses a check that shows other numbers elsewhere, and keeps the earlier index", async () => {
    const disk = memoryDisk();
    await buildReports(request(disk));
    const before = new Map(disk.texts);
    const moved = sampleChecks.map((check, index) =>
      index === 0 ? { ...check, computed: check.computed + 0.01 } : check,
    );
    const { built, failures } = await buildReports(
      request(disk, { names: ["third"], run: async ({ name }) => variant(name, moved) }),
    );
    expect(built).toEqual(["third"]);
    expect(failures[0]?.name).toBe("index");
    expect(failures[0]?.message).toMatch(
      /check capstan-one-turn: computed is 1\.87.* in first and 1\.88.* in third.*build all/u,
    );
    for (const path of ["out/index.html", "out/checks.html", "out/checks.json"]) {
      expect(disk.texts.get(path)).toBe(before.get(path));
    }
    const within = await buildReports(
      request(memoryDisk(), {
        names: ["first"],
        run: async ({ name }) => variant(name, [sampleChecks[0]!, moved[0]!]),
      }),
    );
    expect(within.built).toEqual([]);
    expect(within.failures[0]?.message).toContain("computed is 1.87");
  });

  it("refuses a record that it cannot read", async () => {
    const disk = memoryDisk();
    await buildReports(request(disk));
    for (const broken of [
      "{",
      "[]",
      "null",
      '{"name":"first"}',
      (disk.texts.get("out/data/first.json") ?? "").replace("capstan-article", "nowhere"),
    ]) {
      disk.texts.set("out/data/first.json", broken);
      const { failures } = await buildReports(request(disk, { names: ["second"] }));
      expect(failures[0]?.message).toContain("out/data/first.json: not a record of this version");
    }
  });

  it("says what could not be written", async () => {
    const disk = memoryDisk(/third\.html$/u);
    const { built, failures } = await buildReports(request(disk));
    expect(built).toEqual(["first", "second"]);
    expect(failures).toMatchObject([{ name: "third", message: "no space for out/third.html" }]);
    expect(disk.texts.has("out/data/third.json")).toBe(false);
  });

  it("refuses names that belong to pages of the folder's own", async () => {
    const disk = memoryDisk();
    const own = [{ name: "index", path: "notebooks/index.ipynb" }];
    const { failures } = await buildReports(request(disk, { notebooks: own }));
    expect(failures[0]?.message).toContain("rename the notebook");
  });

  it("starts nothing more once it is stopped", async () => {
    const stop = new AbortController();
    const ran: string[] = [];
    const run = async ({ name }: NotebookFile) => {
      ran.push(name);
      stop.abort();
      return variant(name);
    };
    const { failures } = await buildReports(request(memoryDisk(), { run, sideBySide: 1, signal: stop.signal }));
    expect(ran).toEqual(["first"]);
    expect(failures.map(({ name }) => name)).toEqual(["second", "third"]);
  });

  it("carries everything in each page when asked, and writes no assets", async () => {
    const disk = memoryDisk();
    await buildReports(request(disk, { singleFile: true }));
    expect([...disk.texts.keys()].filter((path) => path.includes("assets"))).toEqual([]);
    for (const [path, text] of disk.texts) if (path.endsWith(".html")) expect(text).not.toMatch(/\ssrc=|<link\b/u);
  });
});
