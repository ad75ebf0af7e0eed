import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import type axe from "axe-core";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { realDisk } from "../../src/cli/disk.js";
import { findNotebooks } from "../../src/cli/folders.js";
import { builtReports } from "../built/reports.js";
import { long } from "../long.js";
import { hardest, proseOf, readingOf, sentencesOf } from "../reading/readability.js";
import { chromiumPath, launch, missing, open, pageWidth } from "./chromium.js";

const root = fileURLToPath(new URL("../..", import.meta.url));
const { notebooks } = await findNotebooks({ currentFolder: root, packageFolder: root, disk: realDisk("browser") });
const reports = notebooks.map(({ name }) => `${name}.html`);
const pages = [...reports, "index.html", "checks.html", "worksheet.html"];
const first = "what-the-hand-feels.html";
/** Pages that are made differently; all others are made as the first. */
const kinds = [first, "a-line-plan-demo-catamaran.html", "index.html", "checks.html", "worksheet.html"];

const source = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
/** Everything up to WCAG 2.2 AA. */
const tags = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];
/** Of these, what the colours decide; everything else is the same in dark. */
const ofColour = ["color-contrast", "link-in-text-block"];

function unfold(page: Page): Promise<void> {
  return page.locator("details").evaluateAll((all) => {
    for (const one of all) (one as HTMLDetailsElement).open = true;
  });
}

/** Which rules axe looks at. */
type Only = { readonly type: "tag" | "rule"; readonly values: readonly string[] };

async function violations(page: Page, only: Only = { type: "tag", values: tags }): Promise<string[]> {
  const found = (await page.evaluate(
    async ({ type, values }) => {
      const { axe: checker } = window as unknown as { axe: typeof axe };
      return checker.run({ runOnly: { type, values }, resultTypes: ["violations"] });
    },
    { type: only.type, values: [...only.values] },
  )) as axe.AxeResults;
  return found.violations.flatMap(({ id, nodes }) =>
    nodes.map(({ target, failureSummary }) => `${id} at ${target.join(" ")}: ${failureSummary}`),
  );
}

/** What has the focus: its words and whether a reader sees that it has. */
function focused(page: Page) {
  return page.evaluate(() => {
    const at = document.activeElement as HTMLElement | null;
    if (at === null || at === document.body) return undefined;
    const { outlineStyle, outlineWidth } = getComputedStyle(at);
    const box = at.getBoundingClientRect();
    return {
      mark: at.getAttribute("data-stop"),
      words: (at.textContent ?? "").trim().slice(0, 60),
      outlined: outlineStyle !== "none" && Number.parseFloat(outlineWidth) >= 2,
      inSight: box.bottom > 0 && box.top < window.innerHeight && box.width > 0,
    };
  });
}

describe.skipIf(chromiumPath === undefined)(`pages for everybody${chromiumPath ? "" : ` (${missing})`}`, () => {
  let browser: Browser;
  let folder: string;
  let scratch: string;
  const at = (file: string) => pathToFileURL(join(file === "worksheet.html" ? scratch : folder, file));

  beforeAll(async () => {
    folder = await builtReports();
    scratch = mkdtempSync(join(tmpdir(), "haulbook-worksheet-"));
    const program = join(root, "dist", "cli", "main.js");
    const words = [program, "worksheet", "--output", join(scratch, "worksheet.html")];
    execFileSync(process.execPath, words, { cwd: root, stdio: "pipe" });
    browser = await launch();
  });

  afterAll(async () => {
    await browser?.close();
    rmSync(scratch, { recursive: true, force: true });
  });

  it.each(long(kinds, pages))(
    "%s, its folds open, has no fault that axe can find in light and dark, and stands in 320 px, as on a screen four times enlarged",
    async (file) => {
      const { page, close } = await open(browser, at(file), { bypassCSP: true });
      await page.addScriptTag({ content: source });
      await unfold(page);
      expect(await violations(page), "light").toEqual([]);
      await page.emulateMedia({ colorScheme: "dark" });
      expect(await violations(page, { type: "rule", values: ofColour }), "dark").toEqual([]);
      await page.setViewportSize({ width: 320, height: 256 });
      expect(await pageWidth(page)).toBeLessThanOrEqual(320);
      await close();
    },
  );

  it("has none with its folds closed", async () => {
    const { page, close } = await open(browser, at(first), { bypassCSP: true });
    await page.addScriptTag({ content: source });
    expect(await violations(page)).toEqual([]);
    await close();
  });

  it("would see a fault", async () => {
    const { page, close } = await open(browser, at("index.html"), { bypassCSP: true });
    await page.addScriptTag({ content: source });
    await page.evaluate(() => {
      document
        .querySelector("main")
        ?.insertAdjacentHTML("beforeend", '<p style="color: #aaa; background: #bbb">Faint</p><input>');
    });
    const found = (await violations(page)).map((text) => text.split(" ")[0]);
    expect(found.sort()).toEqual(["color-contrast", "label"]);
    await close();
  });

  it("lets a keyboard reach every control and fold, and shows where it is", async () => {
    const { page, close } = await open(browser, at(first), { reducedMotion: "reduce" });
    const stops = await page
      .locator("a[href], button, summary, input:not([type=radio]), input[type=radio]:checked, select, [tabindex='0']")
      .evaluateAll((all) => {
        const shown = all.filter((one) => one.checkVisibility({ contentVisibilityAuto: true }) && !one.closest("svg"));
        shown.forEach((one, index) => {
          one.setAttribute("data-stop", String(index));
        });
        return shown.length;
      });
    expect(stops).toBeGreaterThan(30);
    await page.keyboard.press("Tab");
    expect((await focused(page))?.words).toBe("Skip to the text");
    const reached = new Set<string>();
    for (let step = 0; step < stops + 5; step++) {
      const now = await focused(page);
      if (now === undefined) break;
      expect(now.outlined, now.words).toBe(true);
      expect(now.inSight, now.words).toBe(true);
      if (now.mark !== null) reached.add(now.mark);
      await page.keyboard.press("Tab");
    }
    expect(reached.size).toBe(stops);
    await close();
  });

  it("skips to the text", async () => {
    const { page, close } = await open(browser, at(first));
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    expect(await page.evaluate(() => document.activeElement?.tagName)).toBe("MAIN");
    await page.keyboard.press("Tab");
    expect(await page.evaluate(() => document.activeElement?.closest("main") !== null)).toBe(true);
    await close();
  });

  it("opens folds and words by keyboard", async () => {
    const { page, complaints, close } = await open(browser, at(first), { reducedMotion: "reduce" });
    const question = page.locator("details.question").first();
    await question.locator("summary").focus();
    await page.keyboard.press("Enter");
    expect(await question.locator(".reply").isVisible()).toBe(true);
    const word = page.locator("a.word").first();
    const entry = page.locator(`[id="${(await word.getAttribute("href"))?.slice(1)}"]`);
    expect(await entry.isVisible()).toBe(false);
    await word.focus();
    await page.keyboard.press("Enter");
    await expect.poll(() => entry.isVisible()).toBe(true);
    await expect.poll(() => entry.evaluate((one) => one.getBoundingClientRect().top < window.innerHeight)).toBe(true);
    expect(complaints).toEqual([]);
    await close();
  });

  it("moves nothing for a reader who asked for that", async () => {
    for (const reducedMotion of ["reduce", "no-preference"] as const) {
      const { page, close } = await open(browser, at(first), { reducedMotion });
      const behaviour = await page.evaluate(() => getComputedStyle(document.documentElement).scrollBehavior);
      expect(behaviour).toBe(reducedMotion === "reduce" ? "auto" : "smooth");
      if (reducedMotion === "reduce") {
        const moving = await page.locator("*").evaluateAll((all) =>
          all
            .filter((one) => {
              const { animationName, transitionDuration } = getComputedStyle(one);
              return animationName !== "none" || transitionDuration.split(", ").some((time) => time !== "0s");
            })
            .map(({ tagName }) => tagName),
        );
        expect(moving).toEqual([]);
      }
      await close();
    }
  });

  it("finds a section from the index by keyboard, without a network", async () => {
    const { page, complaints, close } = await open(browser, at("index.html"));
    const box = page.getByRole("searchbox", { name: "Search all pages" });
    await box.waitFor();
    await box.focus();
    const shown = page.locator(".finds li");
    await page.keyboard.type("ratchett");
    expect(await shown.first().locator("mark").first().textContent()).toMatch(/^ratchet/iu);
    await page.keyboard.press("ControlOrMeta+A");
    await page.keyboard.type("burn hand");
    expect(await page.getByRole("status").textContent()).toMatch(/^\d+ places?/u);
    expect(await shown.count()).toBeGreaterThan(1);
    expect((await shown.first().locator("mark").allTextContents()).join(" ")).toMatch(/burn|hand/iu);
    await page.keyboard.press("Enter");
    const target = await page.evaluate(() => (document.activeElement as HTMLAnchorElement).href);
    expect(target).toMatch(/\.html(?:#.+)?$/u);
    await page.keyboard.press("Enter");
    await page.waitForURL(target);
    const hash = new URL(target).hash;
    if (hash !== "") expect(await page.locator(`[id="${decodeURIComponent(hash.slice(1))}"]`).count()).toBe(1);
    expect(complaints).toEqual([]);
    await close();
  });

  it("says so when nothing is found, and has no search without a script", async () => {
    const { page, close } = await open(browser, at("index.html"));
    await page.getByRole("searchbox").fill("zzzzzz qqqqqq");
    expect(await page.getByRole("status").textContent()).toContain("Nothing found");
    expect(await page.locator(".finds li").count()).toBe(0);
    await close();
    const bare = await open(browser, at("index.html"), { javaScriptEnabled: false });
    expect(await bare.page.locator("form.search").isVisible()).toBe(false);
    expect(await bare.page.locator(".reports li").count()).toBe(reports.length);
    await bare.close();
  });

  it("searches in at most 150 kB of data", () => {
    expect(readFileSync(join(folder, "assets", "search-data.js")).length).toBeLessThanOrEqual(150_000);
  });

  it.each(reports)("%s can be read at fifteen, answers and judgements included", (file) => {
    const sentences = proseOf(readFileSync(join(folder, file), "utf8")).flatMap(sentencesOf);
    expect(sentences.length).toBeGreaterThan(20);
    const list = hardest(sentences, 8).map(({ text, grade }) => `${grade.toFixed(1)}: ${text}`);
    expect(readingOf(sentences).grade, list.join("\n")).toBeLessThanOrEqual(8);
  });
});
