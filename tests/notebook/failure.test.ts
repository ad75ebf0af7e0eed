import { existsSync } from "node:fs";
import path from "node:path";
import { describe, expect, test } from "vitest";
import * as errors from "../../src/notebook/errors.js";
import { cellFailure } from "../../src/notebook/failure.js";
import { runHarness } from "./harness.js";
import { importDisplay } from "./scratch.js";

const { scratch, failure } = runHarness();

describe.concurrent("a notebook that fails names cell, line and text", () => {
  test("a cell that throws through a function of an earlier cell", async () => {
    const file = scratch.notebook("throws", [
      { type: "markdown", source: "prose" },
      "function pull(load: number): number {\n\n  throw new RangeError('no ' + load);\n}",
      'import { Stats } from "fs";\nimport * as fs from "fs";\n\ntype Load = number;\ninterface Line { load: Load }\n\nconst line: Line = { load: 3 };\nlet seen: Stats | undefined;\n\npull(line.load);\n',
    ]);
    const error = await failure(file);
    expect(error).toBeInstanceOf(errors.CellThrewError);
    expect(error).toMatchObject({
      name: "CellThrewError",
      notebook: file,
      cell: 3,
      line: 10,
      text: "RangeError: no 3",
    });
    expect(error.message).toBe(`${file}, cell 3, line 10: RangeError: no 3`);
  });

  test("a cell that throws after waiting", async () => {
    const file = scratch.notebook("throws-later", [
      "// a comment\nconst one = 1;\n\nawait new Promise((done) => setTimeout(done, 5));\ntype Two = 2;\nthrow new Error('late\\nand long');",
    ]);
    expect(await failure(file)).toMatchObject({
      name: "CellThrewError",
      cell: 1,
      line: 6,
      text: "Error: late\nand long",
    });
  });

  test("a cell that takes all memory: its kernel's death is seen, and why", async () => {
    const file = scratch.notebook("memory", [
      "console.log('before');",
      "const all: number[][] = [];\nfor (;;) all.push(new Array(100_000).fill(all.length));",
    ]);
    const environment = { ...process.env, NODE_OPTIONS: "--max-old-space-size=200" };
    const error = await failure(file, { environment });
    expect(error).toMatchObject({ name: "KernelDeathError", cell: 2 });
    expect(error.message).toContain("heap out of memory");
  });

  test("a cell that throws something other than an error: no line is known", () => {
    const failed = {
      notebook: "n.ipynb",
      cell: 1,
      source: 'console.error("before");\nthrow "only text";',
      folder: scratch.folder,
    };
    expect(cellFailure({ ...failed, texts: ["before\n", "only text\n"] })).toMatchObject({
      name: "CellThrewError",
      cell: 1,
      line: undefined,
      text: "only text",
    });
    expect(cellFailure({ ...failed, texts: [] })).toMatchObject({
      name: "CellThrewError",
      text: "the cell failed without a text",
    });
  });

  test("a compile error in a file that the cell imports: the line is not one of the cell", () => {
    const failed = { notebook: "n.ipynb", cell: 1, source: "", folder: scratch.folder };
    expect(cellFailure({ ...failed, texts: ["helper.ts 3:5 - Wrong.\n"] })).toMatchObject({
      name: "CellCompileError",
      line: undefined,
      text: "helper.ts 3:5 - Wrong.",
    });
  });

  test("a type error", async () => {
    const error = await failure(
      scratch.notebook("types", ["const fine = 1;", "\nconst bad: number = 'x';\nlet worse: string = fine;"]),
    );
    expect(error).toMatchObject({ name: "CellCompileError", cell: 2, line: 2 });
    expect(error.text).toContain("Type 'string' is not assignable to type 'number'.");
    expect(error.text).toContain("3:5 - Type 'number' is not assignable to type 'string'.");
  });

  test("a syntax error", async () => {
    expect(await failure(scratch.notebook("syntax", ["const a = 1;\nlet b = = 2;"]))).toMatchObject({
      name: "CellCompileError",
      cell: 1,
      line: 2,
    });
  });

  test("a rejected promise that nobody waits for", async () => {
    const error = await failure(
      scratch.notebook("rejects", ["const a = 1;\n\nvoid Promise.reject(new Error('lost'));\nconst b = 2;"]),
    );
    expect(error).toMatchObject({ name: "CellThrewError", cell: 1, line: 3 });
    expect(error.text).toContain("Error: lost");
  });

  test("a timer that throws while a later cell runs", async () => {
    const error = await failure(
      scratch.notebook("timer", [
        "const told = { now: false, thrown: false };\nconst timer = setInterval(() => {\n  if (!told.now) return;\n  clearInterval(timer);\n  told.thrown = true;\n  throw new Error('from before');\n}, 10);",
        "told.now = true;\nwhile (!told.thrown) await new Promise((done) => setTimeout(done, 10));",
      ]),
    );
    expect(error).toMatchObject({ name: "CellThrewError", cell: 2, line: undefined });
    expect(error.text).toContain("Error: from before");
  });

  test("outputs that no report can show, and figures of the same name", async () => {
    const html = await failure(
      scratch.notebook("html", ['import * as tslab from "tslab";\ntslab.display.html("<b>x</b>");']),
    );
    expect(html).toMatchObject({ name: "CellOutputError", cell: 1 });
    expect(html.text).toMatch(/text\/html.*only what the display helper/);
    const raw =
      "import * as tslab from 'tslab';\ntslab.display.raw('application/vnd.haulbook.shown+json', { kind: 'answer' } as never);";
    expect((await failure(scratch.notebook("shape", [raw]))).text).toMatch(/^answer: got undefined; allowed: a text/);
    const figure =
      'show(figure({ name: "same", title: "t", caption: "c", altText: "a", x: { title: "x" }, y: { title: "y" }, panels: [{ title: "", series: [{ name: "s", x: [1], line: [1] }] }] }));';
    expect(await failure(scratch.notebook("twice", [importDisplay + figure, figure]))).toMatchObject({
      name: "CellOutputError",
      cell: 2,
      text: 'shows a second figure named "same": cell 1 has one already',
    });
  });
});

describe("a notebook that does not come to its end", () => {
  /** A file that a cell writes as the first thing it does, and the code for that. */
  const beginning = (name: string) => {
    const file = path.join(scratch.folder, `${name}-begun`);
    const code = `import { writeFileSync } from "fs";\nwriteFileSync(${JSON.stringify(file)}, "");\n`;
    return { hasBegun: () => existsSync(file), code };
  };

  /** How a run fails under a limit: the least of 1 s, 2 s, 4 s and so on under which its last cell has begun. */
  const limited = async (name: string, source: string, limit: "cellSeconds" | "notebookSeconds" = "cellSeconds") => {
    const { hasBegun, code } = beginning(name);
    const file = scratch.notebook(name, ["const a = 1;", code + source]);
    for (let seconds = 1; ; seconds *= 2) {
      const error = await failure(file, { [limit]: seconds });
      if (hasBegun()) return { error, seconds };
    }
  };
  const interrupts = async (name: string, source: string) => {
    const { error, seconds } = await limited(name, source);
    expect(error).toMatchObject({
      name: "CellTimeLimitError",
      cell: 2,
      text: `ran longer than the ${seconds} s that a cell may take`,
    });
  };

  test("an endless loop", () => interrupts("loop", "let count = 0;\nfor (;;) count += 1;"));
  test("an endless loop after waiting, which hears no interrupt", () =>
    interrupts("loop-later", "await new Promise((done) => setTimeout(done, 5));\nfor (;;);"));
  test("a promise that never settles", () => interrupts("never", "await new Promise(() => {});"));

  test("too long as a whole", async () => {
    const { error } = await limited("long", "await new Promise(() => {});", "notebookSeconds");
    expect(error).toMatchObject({ name: "NotebookTimeLimitError", cell: 2 });
    expect(await failure(scratch.notebook("longer", ["1"]), { notebookSeconds: 0.05 })).toMatchObject({
      name: "NotebookTimeLimitError",
      cell: undefined,
    });
  });

  test("stopped by the caller", async () => {
    const stop = new AbortController();
    const { hasBegun, code } = beginning("stopped");
    const failed = failure(scratch.notebook("stopped", [`${code}await new Promise(() => {});`]), {
      signal: stop.signal,
    });
    await expect.poll(hasBegun).toBe(true);
    stop.abort();
    const error = await failed;
    expect(error).toMatchObject({ name: "NotebookStoppedError", cell: 1 });
    expect(await failure(scratch.notebook("stopped-early", ["1"]), { signal: AbortSignal.abort() })).toMatchObject({
      name: "NotebookStoppedError",
    });
  });

  test("a kernel that ends itself, and one that is killed", async () => {
    expect(await failure(scratch.notebook("exits", ["process.exit(3);"]))).toMatchObject({
      name: "KernelDeathError",
      cell: 1,
      text: "the kernel ended while the cell ran (exit code 3)",
    });
    const killed = await failure(
      scratch.notebook("killed", [
        `import * as fs from "fs";\nfs.writeSync(2, "last words\\n");\nprocess.kill(process.pid, "SIGKILL");\nawait new Promise(() => {});`,
      ]),
    );
    expect(killed).toMatchObject({ name: "KernelDeathError", cell: 1 });
    expect(killed.text).toBe("the kernel ended while the cell ran (signal SIGKILL): last words");
  });
});
