import { spawnSync } from "node:child_process";
import { copyFileSync, existsSync } from "node:fs";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { plainMarked } from "../../src/notebook/marker.js";
import type { Shown } from "../../src/notebook/output.js";
import { lightPalette, plotlyFigure } from "../../src/notebook/plotly.js";
import { runNotebook } from "../../src/notebook/run.js";
import { blank, chromiumPath, launch, missing as noChromium } from "../browser/chromium.js";
import { root } from "../house/project.js";
import { type NotebookServer, startNotebookServer } from "./server.js";

const file = "around-a-ring.ipynb";
const hasJupyter = spawnSync("jupyter-notebook", ["--version"]).status === 0;
const noJupyter = "no jupyter-notebook: install Jupyter's classic notebook";
const lacking = [...(hasJupyter ? [] : [noJupyter]), ...(chromiumPath === undefined ? [noChromium] : [])].join("; ");
// Processes are looked for where the system lists them as files.
const why = lacking === "" && !existsSync("/proc/self/cmdline") ? "no list of processes in /proc" : lacking;

it.runIf(process.env.CI !== undefined)("has Jupyter's classic notebook and Chromium, where it must", () => {
  expect(why).toBe("");
});

/** The page's own handle on the notebook, as far as it is used here. */
interface Front {
  readonly Jupyter?: {
    readonly notebook?: {
      readonly kernel?: { readonly name: string; is_connected(): boolean };
      execute_all_cells(): void;
      insert_cell_at_bottom(type: "code"): { focus_cell(): void };
      get_cells(): readonly { readonly cell_type: string; readonly input_prompt_number?: number | "*" | null }[];
    };
  };
}

interface Chart extends HTMLElement {
  readonly data: readonly { readonly x: readonly unknown[]; readonly y: readonly unknown[] }[];
}

describe.skipIf(why !== "")(`a notebook in the classic front end${why === "" ? "" : ` (${why})`}`, () => {
  let server: NotebookServer | undefined;
  let browser: Browser | undefined;
  let page: Page;
  let built: readonly Shown[];
  const refused: string[] = [];
  const errors: string[] = [];

  /** Lets a page speak with the server and with nobody else. */
  async function openNotebook({ address, token }: NotebookServer): Promise<Page> {
    browser = await launch();
    const opened = await blank(browser);
    await opened.route("**", (route) => {
      const url = route.request().url();
      if (url.startsWith(`${address}/`)) return route.continue();
      refused.push(url);
      return route.abort();
    });
    opened.on("websocket", (socket) => {
      if (!socket.url().startsWith(`${address.replace("http", "ws")}/`)) refused.push(socket.url());
    });
    opened.on("pageerror", (error) => errors.push(error.message));
    await opened.goto(`${address}/notebooks/${file}?token=${token}`);
    return opened;
  }

  beforeAll(async () => {
    server = await startNotebookServer();
    copyFileSync(join(root, "notebooks", file), join(server.folder, file));
    page = await openNotebook(server);
    const connected = () => (globalThis as Front).Jupyter?.notebook?.kernel?.is_connected() === true;
    await page.waitForFunction(connected);
    await page.evaluate(() => (globalThis as Front).Jupyter?.notebook?.execute_all_cells());
    const allRan = () =>
      (globalThis as Front).Jupyter?.notebook
        ?.get_cells()
        .every((cell) => cell.cell_type !== "code" || typeof cell.input_prompt_number === "number");
    await page.waitForFunction(allRan);
    const path = join(root, "notebooks", file);
    const { cells } = await runNotebook({ path, cellSeconds: 120, notebookSeconds: 240 });
    built = cells.flatMap((cell) => (cell.type === "code" ? cell.outputs : [])).filter((one) => one.kind !== "stream");
  });

  afterAll(async () => {
    await browser?.close();
    await server?.stop();
    server?.remove();
  });

  it("runs in our kernel without an error", async () => {
    expect(await page.evaluate(() => (globalThis as Front).Jupyter?.notebook?.kernel?.name)).toBe("haulbook");
    expect(await page.locator(".output_error, .output_stderr").allTextContents()).toEqual([]);
    expect(errors).toEqual([]);
  });

  it("draws every chart of the report, with the same numbers", async () => {
    const figures = built.filter((one) => one.kind === "figure");
    const panels = built.flatMap((one) => (one.kind === "panel" ? [one.figure] : []));
    const expected = [...figures, ...panels].map((figure) =>
      plotlyFigure(figure, lightPalette).data.map(({ x, y }) => ({ x, y })),
    );
    const charts = page.locator(".output_area .js-plotly-plot:has(.main-svg)");
    const drawn = await charts.evaluateAll((found) =>
      found.map((chart) => (chart as Chart).data.map(({ x, y }) => ({ x, y }))),
    );
    expect(figures.length).toBeGreaterThan(2);
    expect(drawn).toHaveLength(expected.length);
    expect(drawn).toEqual(expect.arrayContaining(JSON.parse(JSON.stringify(expected))));
    const marks = await charts.evaluateAll((found) =>
      found.map((chart) => chart.querySelectorAll(".trace path").length),
    );
    expect(Math.min(...marks)).toBeGreaterThan(0);
  });

  it("says what the report says", async () => {
    const answers = built.flatMap((one) => (one.kind === "answer" ? [plainMarked(one.text)] : []));
    expect(answers).toHaveLength(1);
    expect(await page.locator(".output_html p > strong:only-child").allTextContents()).toContain(answers[0]);
    const results = built.flatMap((one) => {
      if (one.kind !== "result") return [];
      return [`${one.label}: ${one.text}${one.range === undefined ? "" : ` (${one.range})`}`];
    });
    const texts = await page.locator(".output_html p").allTextContents();
    expect(results.length).toBeGreaterThan(0);
    expect(texts).toEqual(expect.arrayContaining(results));
  });

  it("shows that folded parts can be opened", async () => {
    const marks = await page
      .locator(".output_html summary")
      .evaluateAll((found) => found.map((fold) => getComputedStyle(fold).display));
    expect(marks.length).toBeGreaterThan(0);
    expect(new Set(marks)).toEqual(new Set(["list-item"]));
  });

  it("explains a call while it is written, and completes a name", async () => {
    const write = async (text: string) => {
      await page.evaluate(() => (globalThis as Front).Jupyter?.notebook?.insert_cell_at_bottom("code").focus_cell());
      const cell = page.locator(".code_cell").last();
      await cell.locator(".CodeMirror").click();
      await page.keyboard.type(text);
      return cell;
    };
    await write("capstanRatio(");
    await page.keyboard.press("Shift+Tab");
    const tooltip = page.locator("#tooltip .tooltiptext");
    await tooltip.waitFor();
    await expect.poll(() => tooltip.textContent()).toContain("@param wrapAngle θ, angle of contact [rad], 0 to 63");
    await page.keyboard.press("Escape");
    const cell = await write("capstanR");
    await page.keyboard.press("Tab");
    await cell.locator(".CodeMirror-code", { hasText: "capstanRatio" }).waitFor();
  });

  it("asks nobody but its own server", () => expect(refused).toEqual([]));

  it("leaves no process behind", async () => {
    expect(server?.processes().length).toBeGreaterThanOrEqual(2);
    expect(await server?.stop()).toBe(0);
    expect(server?.processes()).toEqual([]);
  });
});
