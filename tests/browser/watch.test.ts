import { type ChildProcess, spawn } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { blank, chromiumPath, launch, missing } from "./chromium.js";

const root = fileURLToPath(new URL("../..", import.meta.url));

/** Enough prose to scroll through. */
const tall = Array.from({ length: 60 }, (_, index) => `Row ${index} of the demo skiff.\n\n`).join("");

const prose = (source: string) => ({ cell_type: "markdown", metadata: {}, source });
const code = (source: string) => ({ cell_type: "code", metadata: {}, source, outputs: [], execution_count: null });

describe.skipIf(chromiumPath === undefined)(`a watch in a browser${chromiumPath ? "" : ` (${missing})`}`, () => {
  let browser: Browser;
  let page: Page;
  let folder: string;
  let watch: ChildProcess;
  let said = "";
  const requests: string[] = [];
  const complaints: string[] = [];

  /** Writes the notebook with a cell that reads a number from a file, and words for its heading far below. */
  const write = (words: string, cell = 'Number(readFileSync("hand.csv", "utf8"))') =>
    writeFileSync(
      join(folder, "notebooks", "hold.ipynb"),
      JSON.stringify({
        nbformat: 4,
        nbformat_minor: 5,
        metadata: { kernelspec: { name: "haulbook", display_name: "haulbook", language: "typescript" } },
        cells: [
          prose("# How hard do I have to hold?"),
          code('import { readFileSync } from "node:fs";\nimport { answer, question, show } from "haulbook";'),
          code(`const force = ${cell};\nshow(answer("You hold " + force + " N."));`),
          prose(`## Before\n\n${tall}`),
          code('show(question({ question: "Why?", answer: "Because of friction." }));'),
          prose(`## ${words}\n\n${tall}`),
        ],
      }),
    );

  beforeAll(async () => {
    folder = mkdtempSync(join(root, "tests", "notebook", `.scratch-${process.pid}-`));
    mkdirSync(join(folder, "notebooks"));
    writeFileSync(join(folder, "notebooks", "hand.csv"), "86");
    write("After");
    watch = spawn(process.execPath, [join(root, "dist", "cli", "main.js"), "watch", "--trust"], {
      cwd: folder,
      env: { ...process.env, XDG_CONFIG_HOME: join(folder, "config") },
    });
    const address = await new Promise<string>((resolve, reject) => {
      const take = (text: string) => {
        said += text;
        const found = /http:\/\/127\.0\.0\.1:\d+\//u.exec(said)?.[0];
        if (found) resolve(found);
      };
      watch.stdout?.setEncoding("utf8").on("data", take);
      watch.stderr?.setEncoding("utf8").on("data", take);
      watch.on("exit", () => reject(new Error(said)));
    });
    browser = await launch();
    page = await blank(browser, { viewport: { width: 1000, height: 700 } });
    page.on("request", (request) => requests.push(request.url()));
    page.on("console", (message) => complaints.push(message.text()));
    page.on("pageerror", (error) => complaints.push(error.message));
    // Opened before it is there: the page comes by itself.
    await page.goto(`${address}hold.html`);
  });

  afterAll(async () => {
    await browser?.close();
    watch?.kill("SIGKILL");
    rmSync(folder, { recursive: true, force: true });
  });

  const answer = (text: string) => page.locator(".answer", { hasText: text }).waitFor();

  it("opens by itself once it is built, and leaves the file on the disk as it is", async () => {
    await answer("You hold 86 N.");
    const file = readFileSync(join(folder, "reports", "hold.html"), "utf8");
    expect(file).not.toContain("watch");
    expect(said).toContain("are programs: they run with your rights");
  });

  it("follows an edit of the notebook, at the place where the reader is, with what was unfolded", async () => {
    await page.locator("details.question summary").first().click();
    await page
      .getByRole("heading", { name: "After" })
      .evaluate((heading) => heading.scrollIntoView({ behavior: "instant" }));
    await page.evaluate(() => scrollBy({ top: 200, behavior: "instant" }));
    const before = await page
      .getByRole("heading", { name: "After" })
      .evaluate((one) => one.getBoundingClientRect().top);
    expect(before).toBeLessThan(-100);
    write("After all");
    const heading = page.getByRole("heading", { name: "After all" });
    await heading.waitFor();
    await page.waitForFunction(() => scrollY > 1000);
    // The heading's own name has changed with its words: the place holds within a line or two of text.
    await expect.poll(() => heading.evaluate((one) => one.getBoundingClientRect().top)).toBeLessThan(before + 60);
    expect(await heading.evaluate((one) => one.getBoundingClientRect().top)).toBeGreaterThan(before - 60);
    expect(await page.locator("details.question").first().getAttribute("open")).not.toBeNull();
  });

  it("follows a data file that a cell reads", async () => {
    writeFileSync(join(folder, "notebooks", "hand.csv"), "97");
    await answer("You hold 97 N.");
  });

  it("shows what failed as text, with notebook, cell and line, until it is mended", async () => {
    write("After all", '(() => { throw new Error("<img src=x onerror=alert(1)> no wind"); })()');
    const alert = page.locator("#watch-failures");
    await alert.waitFor();
    const text = (await alert.textContent()) ?? "";
    expect(text).toContain("notebooks/hold.ipynb, cell 3, line 1");
    expect(text).toContain("<img src=x onerror=alert(1)> no wind");
    expect(await alert.locator("img").count()).toBe(0);
    expect(await page.locator(".answer").textContent()).toMatch(/97\sN/u);
    write("After all");
    await alert.waitFor({ state: "detached" });
  });

  it("asks nothing of any other place, and complains of nothing but the page that was not there", () => {
    for (const address of requests) expect(address).toMatch(/^http:\/\/127\.0\.0\.1:\d+\//u);
    expect(complaints.filter((one) => !/404 \(Not Found\)/u.test(one))).toEqual([]);
  });

  it("ends cleanly when it is interrupted, also with a page open", async () => {
    const ended = new Promise((resolve) => watch.on("exit", (code, signal) => resolve({ code, signal })));
    watch.kill("SIGINT");
    expect(await ended, said).toEqual({ code: 0, signal: null });
  });
});
