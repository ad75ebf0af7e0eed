import { execFile, spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { installKernelspec } from "../../src/notebook/kernelspec.js";
import { long } from "../long.js";

const run = promisify(execFile);
const notebooksFolder = fileURLToPath(new URL("../../notebooks", import.meta.url));
/** Between them they show everything there is: figures, panels, drawings, workings, a notebook with a file as its input, one that reads data. */
const files = ["what-the-hand-feels", ...long([], ["a-line-plan", "measure-your-own-boat"])].map(
  (name) => `${name}.ipynb`,
);
const hasJupyter = spawnSync("jupyter-nbconvert", ["--version"]).status === 0;
const missing = "no jupyter-nbconvert: install Jupyter's nbconvert with its execution part";

interface Output {
  readonly output_type: string;
  readonly data?: Readonly<Record<string, string | readonly string[]>>;
}

interface Cell {
  readonly cell_type: string;
  readonly source: string | readonly string[];
  readonly outputs?: readonly Output[];
}

const textOf = (text: string | readonly string[]) => (typeof text === "string" ? text : text.join(""));

it.runIf(process.env.CI !== undefined)("has Jupyter, where it must", () => {
  expect(hasJupyter, missing).toBe(true);
});

describe.skipIf(!hasJupyter)(`notebooks under Jupyter${hasJupyter ? "" : ` (${missing})`}`, () => {
  let folder: string;
  const ran = () => join(folder, "ran");
  const cellsOf = (file: string) => (JSON.parse(readFileSync(file, "utf8")) as { cells: readonly Cell[] }).cells;

  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), "haulbook-jupyter-"));
    const { HAULBOOK_OUTPUT: _, ...inherited } = process.env;
    const env = { ...inherited, JUPYTER_DATA_DIR: join(folder, "data") };
    await installKernelspec({ env, platform: process.platform, homeFolder: folder });
    const options = ["--execute", "--to", "notebook", "--output-dir", ran(), "--ExecutePreprocessor.timeout=120"];
    await run("jupyter-nbconvert", [...options, ...files], { cwd: notebooksFolder, env });
  });

  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  it.each(files)("%s runs from top to bottom and shows itself as HTML", (file) => {
    const given = cellsOf(join(notebooksFolder, file));
    const cells = cellsOf(join(ran(), file));
    expect(cells.map(({ source }) => textOf(source))).toEqual(given.map(({ source }) => textOf(source)));
    const outputs = cells.flatMap(({ outputs = [] }) => outputs);
    expect(outputs.filter(({ output_type }) => output_type === "error")).toEqual([]);
    const pieces = outputs.flatMap(({ data }) =>
      data?.["text/html"] === undefined ? [] : [textOf(data["text/html"])],
    );
    const code = given.map(({ source }) => textOf(source)).join("\n");
    const charts = pieces.filter((piece) => piece.includes("Plotly.newPlot("));
    expect(charts.length).toBeGreaterThanOrEqual(code.match(/\bfigure\(\{/gu)?.length ?? 0);
    expect(charts.length).toBeGreaterThan(0);
    // The first chart of a kernel brings the drawing library along.
    expect(charts.filter((piece) => piece.length > 1e6)).toHaveLength(1);
    expect(pieces.some((piece) => piece.startsWith("<p><strong>"))).toBe(true);
  });
});
