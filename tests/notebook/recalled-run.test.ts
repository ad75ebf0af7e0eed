import { mkdirSync, writeFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import type { ExecutedNotebook } from "../../src/notebook/executed.js";
import { type RecalledRun, recalledRun } from "../../src/notebook/recalled-run.js";
import { readRemembered } from "../../src/notebook/remembered-run.js";
import { runHarness } from "./harness.js";

const { scratch, run } = runHarness();
const library = { core: "core", versions: "versions", whole: "whole" };

/** A notebook in a folder of its own, with a memory, that can be changed between builds. */
function kept(name: string, cells: readonly object[]) {
  const folder = path.join(scratch.folder, name);
  mkdirSync(folder, { recursive: true });
  const file = path.join(folder, "page.ipynb");
  const texts = new Map<string, string>();
  const write = (list: readonly object[]) => {
    const metadata = { kernelspec: { language: "typescript", name: "haulbook", display_name: "haulbook" } };
    const whole = list.map((cell) => ({ metadata: {}, outputs: [], execution_count: null, ...cell }));
    writeFileSync(file, JSON.stringify({ nbformat: 4, nbformat_minor: 5, metadata, cells: whole }));
  };
  write(cells);
  const build = async (changed: Partial<Parameters<typeof recalledRun>[0]> = {}) => {
    const said: string[] = [];
    const recalled: RecalledRun = await recalledRun({
      name: "page",
      path: file,
      inputs: [],
      library,
      libraryFolder: path.join(folder, "dist"),
      store: {
        read: async (key) => texts.get(key),
        replace: async (key, text) => void texts.set(key, text),
      },
      onStart: (why) => void said.push(why),
      run: (onFilesRead) => run(file, { onFilesRead }),
      ...changed,
    });
    await recalled.remember();
    const printed = recalled.executed.cells.flatMap((cell) =>
      cell.type === "code" ? cell.outputs.map((output) => (output.kind === "stream" ? output.text : "")) : [],
    );
    return { state: recalled.state, why: said.join(), printed: printed.join(""), recalled };
  };
  return { folder, file, texts, write, build };
}

/** A run that prints a text without a kernel, for builds of which only the reason counts. */
const printing = (text: string) => ({
  run: async (): Promise<ExecutedNotebook> => ({
    name: "page",
    cells: [{ type: "code", number: 1, source: "", outputs: [{ kind: "stream", stream: "stdout", text }] }],
  }),
});
const quick = printing("");

const prose = (source: string) => ({ cell_type: "markdown", source });
const code = (source: string, ...tags: string[]) => ({ cell_type: "code", source, metadata: { tags } });

describe("a remembered run", () => {
  it("is used while nothing that decides it changes; prose may", async () => {
    const page = kept("fresh", [prose("# One?"), code("console.log(6 * 7)")]);
    expect(await page.build()).toMatchObject({ state: "missing", why: "missing, never run before", printed: "42\n" });
    expect(await page.build()).toMatchObject({ state: "fresh", why: "", printed: "42\n" });
    page.write([prose("# Another?"), code("console.log(6 * 7)")]);
    const again = await page.build();
    expect(again).toMatchObject({ state: "fresh", printed: "42\n" });
    expect(again.recalled.executed.cells[0]).toMatchObject({ source: "# Another?" });
  });

  it("is stale when a code cell, its tags, a file it read, its inputs, the library or a version changed", async () => {
    const read = 'import { readFileSync } from "node:fs";\nconsole.log(readFileSync("numbers.csv", "utf8"))';
    const page = kept("stale", [code(read), code("console.log(1)")]);
    writeFileSync(path.join(page.folder, "numbers.csv"), "85");
    await page.build();
    expect((await page.build()).state).toBe("fresh");
    writeFileSync(path.join(page.folder, "numbers.csv"), "86");
    expect(await page.build()).toMatchObject({ why: "stale, numbers.csv changed", printed: "86\n1\n" });
    page.write([code(read), code("console.log(2)")]);
    expect(await page.build()).toMatchObject({ why: "stale, code cell 2 changed", printed: "86\n2\n" });
    page.write([code(read), code("console.log(2)", "remove-cell")]);
    expect((await page.build()).why).toBe("stale, code cell 2 changed");
    page.write([code(read)]);
    expect((await page.build(quick)).why).toBe("stale, it has 1 code cells instead of 2");
    expect((await page.build({ ...quick, inputs: ["boat.yaml"] })).why).toBe("stale, it is run with other files");
    expect((await page.build({ ...quick, inputs: ["boat.yaml"], library: { ...library, core: "new" } })).why).toBe(
      "stale, the library changed",
    );
    expect((await page.build({ ...quick, library: { ...library, versions: "new" } })).why).toBe(
      "stale, another version of the engine or of a library",
    );
  });

  it("is stale when a file changed while it ran, known before or not, and settles when the notebook writes it", async () => {
    const read =
      'import { readFileSync, writeFileSync } from "node:fs";\nconsole.log(readFileSync("numbers.csv", "utf8"))';
    const page = kept("meanwhile", [code(read)]);
    const numbers = path.join(page.folder, "numbers.csv");
    const saving = (text: string) => ({
      run: async (onFilesRead: (paths: readonly string[]) => void) => {
        const executed = await run(page.file, { onFilesRead });
        writeFileSync(numbers, text);
        return executed;
      },
    });
    writeFileSync(numbers, "85");
    expect((await page.build(saving("86"))).printed).toBe("85\n");
    expect(await page.build(saving("87"))).toMatchObject({ why: "stale, numbers.csv changed", printed: "86\n" });
    expect(await page.build()).toMatchObject({ why: "stale, numbers.csv changed", printed: "87\n" });
    expect((await page.build()).state).toBe("fresh");
    page.write([code('import { writeFileSync } from "node:fs";\nwriteFileSync("numbers.csv", "88");'), code(read)]);
    await page.build();
    await page.build();
    expect(await page.build()).toMatchObject({ state: "fresh", printed: "88\n" });
  });

  it("is run again when its file is damaged, and is never kept of a run that failed", async () => {
    const page = kept("damaged", [code("console.log(1)")]);
    await page.build(printing("1\n"));
    for (const spoil of [(text: string) => text.slice(0, -20), () => "", (text: string) => text.replace("1", "2")]) {
      page.texts.set("page", spoil(page.texts.get("page")!));
      expect(readRemembered(page.texts.get("page")!)).toBeUndefined();
      const again = await page.build(printing("1\n"));
      expect(again).toMatchObject({ why: "missing, its remembered run is damaged", printed: "1\n" });
    }
    page.write([code('throw new Error("broken")')]);
    const before = page.texts.get("page");
    await expect(page.build()).rejects.toThrow("broken");
    expect(page.texts.get("page")).toBe(before);
  });

  it("knows the tags of cells: one that must fail, one that does not stand on the page", async () => {
    const page = kept("tags", [code('throw new Error("as said")', "raises-exception"), code("console.log(3)")]);
    expect((await page.build()).printed).toContain("as said");
    page.write([code("console.log(4)", "raises-exception")]);
    await expect(page.build()).rejects.toThrow("says that it fails");
  });
});
