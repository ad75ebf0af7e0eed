import { execFileSync } from "node:child_process";
import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, test } from "vitest";
import { NotANotebookError } from "../../src/notebook/errors.js";
import { outputsOf, runHarness } from "./harness.js";
import { importDisplay } from "./scratch.js";

const { scratch, temporary, run, failure } = runHarness();

const stdout = (text: string) => ({ kind: "stream", stream: "stdout", text });

/** Processes still alive whose working folder is the scratch folder. */
function leftBehind(): string[] {
  return readdirSync("/proc")
    .filter((name) => /^\d+$/.test(name))
    .filter((pid) => {
      try {
        return execFileSync("readlink", [`/proc/${pid}/cwd`], { encoding: "utf8" }).trim() === scratch.folder;
      } catch {
        return false;
      }
    });
}

describe.concurrent("a notebook that runs", () => {
  test("prose, outputs in order, typed things, names kept from cell to cell", async () => {
    const file = scratch.notebook("good-one", [
      { type: "markdown", source: "# How hard?\n\nText." },
      `${importDisplay}console.log("a"); console.log("b"); console.error("c"); show(answer("About 80 N."));\nconsole.log("d");`,
      "   \n",
      { type: "raw", source: "left out" },
      `const pull: number = 12;\nconst later = await new Promise<number>((done) => setTimeout(() => done(pull * 2), 20));`,
      `show(table({ caption: "Pull", columns: ["what", "N"], rows: [["twice", later]] }));\nlater`,
      `show(figure({ name: "pull", title: "t", caption: "c", altText: "a", x: { title: "x" }, y: { title: "y" }, panels: [{ title: "", series: [{ name: "s", x: [1, 2], hauling: [1, null], easing: [0.5, 1] }] }] }))`,
    ]);
    const seen: number[] = [];
    const executed = await run(file, { onProgress: ({ cell }) => seen.push(cell) });
    expect(executed.name).toBe("good-one");
    expect(seen).toEqual([2, 5, 6, 7]);
    expect(executed.cells.map((cell) => cell.type)).toEqual(["markdown", "code", "code", "code", "code"]);
    expect(executed.cells[0]).toEqual({ type: "markdown", number: 1, source: "# How hard?\n\nText." });
    expect(executed.cells.map(({ number }) => number)).toEqual([1, 2, 5, 6, 7]);
    const [first, second, third, fourth] = outputsOf(executed);
    expect(first).toEqual([
      stdout("a\nb\n"),
      { kind: "stream", stream: "stderr", text: "c\n" },
      { kind: "answer", text: "About 80 N." },
      stdout("d\n"),
    ]);
    expect(second).toEqual([]);
    expect(third).toEqual([
      { kind: "table", caption: "Pull", columns: ["what", "N"], rows: [["twice", 24]] },
      stdout("24\n"),
    ]);
    expect(fourth).toMatchObject([{ kind: "figure", name: "pull", panels: [{ series: [{ hauling: [1, null] }] }] }]);
  });

  test("a short name in an object finds the variable of an earlier cell; lines stay what they are", async () => {
    const file = scratch.notebook("short-names", [
      "const load = 5, parts = 3;\nlet pull = 0, ease = 1;",
      "const made = { load,\n  inner: { parts } };\n({ pull, ease = 2 } = { pull: 7 });\nconsole.log(made, pull, ease);",
    ]);
    expect(outputsOf(await run(file))).toEqual([[], [stdout("{ load: 5, inner: { parts: 3 } } 7 2\n")]]);
    const failing = scratch.notebook("short-names-throw", [
      "const load = 5;",
      "const made = { load };\n\nfunction refuse(): never { throw new Error('not ' + made.load); }\nconst both = [{ load }, refuse()];",
    ]);
    await expect(run(failing)).rejects.toThrow(/cell 2, line 4: Error: not 5/u);
  });

  test("100 MB of text, in one piece or a million lines, are cut, and say so; what is shown after many lines is not lost", async () => {
    const file = scratch.notebook("much", [
      `console.log("x".repeat(100_000_000));`,
      `${importDisplay}for (let line = 0; line < 1_000_000; line += 1) console.log("line ".repeat(20) + line);\nshow(answer("after"));`,
    ]);
    const [big, lines] = outputsOf(await run(file));
    expect(big).toEqual([
      stdout("x".repeat(100_000)),
      { kind: "stream", stream: "stderr", text: "Cut here: 99900001 more characters were written.\n" },
    ]);
    const written = Array.from({ length: 1_000_000 }, (_, line) => `${"line ".repeat(20)}${line}\n`).join("");
    expect(lines?.map((output) => output.kind)).toEqual(["stream", "answer", "stream"]);
    expect(lines?.[0]).toEqual(stdout(written.slice(0, 100_000)));
    expect(lines?.[1]).toEqual({ kind: "answer", text: "after" });
    expect(lines?.[2]).toMatchObject({ text: `Cut here: ${written.length - 100_000} more characters were written.\n` });
  });

  test("a source file that cells import is read once, whoever changes it meanwhile", async () => {
    writeFileSync(path.join(scratch.folder, "side.ts"), "export const pull: number = 5;\n");
    const file = scratch.notebook("source-once", [
      `import { pull } from "./side";\nimport { writeFileSync } from "fs";\nconsole.log(pull);`,
      `for (let turn = 0; turn < 10; turn += 1) { writeFileSync("side.ts", "export const pull: number = " + turn + ";"); await new Promise((done) => setTimeout(done, 20)); }`,
      "console.log(pull);",
    ]);
    expect(outputsOf(await run(file))).toEqual([[stdout("5\n")], [], [stdout("5\n")]]);
  });

  test("two kernels side by side do not mix", async () => {
    const cells = (name: string) => [
      `const mine = "${name}";`,
      `for (let step = 0; step < 20; step += 1) { console.log(mine + step); await new Promise((done) => setTimeout(done, 5)); }`,
    ];
    const files = ["left", "right"].map((name) => scratch.notebook(name, cells(name)));
    const both = await Promise.all(files.map((file) => run(file)));
    for (const [index, name] of ["left", "right"].entries()) {
      const wanted = Array.from({ length: 20 }, (_, step) => `${name}${step}\n`).join("");
      expect(outputsOf(both[index] ?? { name: "", cells: [] })).toEqual([[], [stdout(wanted)]]);
    }
  });

  test("the kernel stands in the notebook's folder, is told to put out data, and has no input to wait for", async () => {
    const file = scratch.notebook("place", [
      `console.log(process.cwd() + "|" + process.env.HAULBOOK_OUTPUT + "|" + process.env.OWN);`,
      `import * as fs from "fs";\nconsole.log(fs.readFileSync(0).length);`,
    ]);
    const environment = { ...process.env, OWN: "given", FORCE_COLOR: "1" };
    const executed = await run(file, { environment });
    expect(outputsOf(executed)).toEqual([[stdout(`${scratch.folder}|data|given\n`)], [stdout("0\n")]]);
  });
});

describe("a file that is not a notebook", () => {
  const refused = async (name: string, content: string) => {
    const file = path.join(scratch.folder, `${name}.ipynb`);
    writeFileSync(file, content);
    const error = await failure(file);
    expect(error).toBeInstanceOf(NotANotebookError);
    return error.message;
  };

  test("is refused in words", async () => {
    expect((await failure(path.join(scratch.folder, "absent.ipynb"))).text).toMatch(/ENOENT/);
    expect(await refused("text", "not JSON")).toMatch(/cannot be read as a notebook/);
    expect(await refused("list", "[]")).toMatch(/no list of cells/);
    expect(await refused("old", '{"nbformat": 3, "cells": []}')).toMatch(/format 3; only format 4/);
    expect(await refused("kind", '{"nbformat": 4, "cells": [{"cell_type": "other", "source": ""}]}')).toMatch(
      /cell 1: .*unknown cell type/,
    );
    expect(await refused("source", '{"nbformat": 4, "cells": [{"cell_type": "code"}]}')).toMatch(/no source text/);
    expect(
      await refused("language", '{"nbformat": 4, "metadata": {"kernelspec": {"language": "python"}}, "cells": []}'),
    ).toMatch(/language "python"/);
  });
});

describe("afterwards", () => {
  test.runIf(existsSync("/proc"))("no process is left behind, not even one that a cell started", async () => {
    const file = scratch.notebook("children", [
      `import { spawn } from "child_process";\nconst child = spawn("sleep", ["600"]);\nchild.unref();\nconsole.log(process.pid, child.pid);\nprocess.on("SIGTERM", () => {});\nvoid setInterval(() => {}, 1000);`,
    ]);
    const [cell] = outputsOf(await run(file));
    const pids = /^(\d+) (\d+)/.exec(cell?.[0]?.kind === "stream" ? cell[0].text : "");
    expect(pids).not.toBeNull();
    for (const pid of pids?.slice(1) ?? []) {
      const state = existsSync(`/proc/${pid}/stat`)
        ? readFileSync(`/proc/${pid}/stat`, "utf8").split(") ")[1]?.charAt(0)
        : "gone";
      expect(["gone", "Z"]).toContain(state);
    }
    expect(leftBehind()).toEqual([]);
  });

  test("no connection folder is left behind", () => {
    expect(readdirSync(temporary)).toEqual([]);
  });
});
