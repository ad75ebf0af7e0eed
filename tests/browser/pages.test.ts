import { copyFile, mkdir, mkdtemp, readFile, rm } from "node:fs/promises";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { realDisk } from "../../src/cli/disk.js";
import { darkPalette, lightPalette } from "../../src/notebook/palette.js";
import { buildReports } from "../../src/report/build.js";
import { sample } from "../report/sample.js";
import { chromiumPath, drawnCurves, launch, missing, open, pageWidth } from "./chromium.js";

const name = sample.name;

/** A colour as the browser writes it. */
function rgb(colour: string): string {
  return `rgb(${[1, 3, 5].map((start) => Number.parseInt(colour.slice(start, start + 2), 16)).join(", ")})`;
}

it.runIf(process.env.CI !== undefined)("has a browser, where it must", () => {
  expect(chromiumPath, missing).toBeDefined();
});

describe.skipIf(chromiumPath === undefined)(
  `pages in a browser${chromiumPath ? "" : ` (${missing})`}`,
  { timeout: 60_000 },
  () => {
    let browser: Browser;
    let folder: string;
    const at = (...parts: string[]) => pathToFileURL(join(folder, ...parts));

    beforeAll(async () => {
      folder = await mkdtemp(join(tmpdir(), "haulbook-pages-"));
      const plotly = await readFile(createRequire(import.meta.url).resolve("plotly.js-dist-min"), "utf8");
      for (const singleFile of [false, true]) {
        const { failures } = await buildReports({
          notebooks: [{ name, path: `${name}.ipynb` }],
          outputFolder: join(folder, singleFile ? "single" : "folder"),
          singleFile,
          run: async () => sample,
          files: realDisk("test"),
          minisearch: async () => "",
          plotly: async () => plotly,
          log: () => {},
          now: () => 0,
        });
        expect(failures).toEqual([]);
      }
      await mkdir(join(folder, "alone"));
      await copyFile(join(folder, "single", `${name}.html`), join(folder, "alone", "sent.html"));
      await mkdir(join(folder, "bare"));
      await copyFile(join(folder, "folder", `${name}.html`), join(folder, "bare", "page.html"));
      browser = await launch();
    }, 60_000);

    afterAll(async () => {
      await browser?.close();
      await rm(folder, { recursive: true, force: true });
    });

    it.each(["light", "dark"] as const)(
      "draws every chart in the colours of the %s theme, without a complaint",
      async (scheme) => {
        const { page, complaints, close } = await open(browser, at("folder", `${name}.html`), { colorScheme: scheme });
        expect(await drawnCurves(page)).toEqual([14, 2]);
        const palette = scheme === "dark" ? darkPalette : lightPalette;
        expect(await page.evaluate(() => getComputedStyle(document.body).backgroundColor)).toBe(rgb(palette.paper));
        const strokes = await page
          .locator(".chart .scatterlayer .js-line")
          .evaluateAll((lines) => lines.map((line) => getComputedStyle(line).stroke));
        expect(strokes).toContain(rgb(palette.water));
        expect(strokes).toContain(rgb(palette.quiet1));
        expect(complaints).toEqual([]);
        await close();
      },
    );

    it("follows the theme while the page is open", async () => {
      const { page, complaints, close } = await open(browser, at("folder", `${name}.html`), { colorScheme: "light" });
      await drawnCurves(page);
      await page.emulateMedia({ colorScheme: "dark" });
      await expect
        .poll(() =>
          page
            .locator(".chart .scatterlayer .js-line")
            .evaluateAll((lines) => lines.map((line) => getComputedStyle(line).stroke)),
        )
        .toContain(rgb(darkPalette.water));
      expect(complaints).toEqual([]);
      await close();
    });

    it("draws a chart only when it comes near", async () => {
      const { page, close } = await open(browser, at("folder", `${name}.html`), {
        viewport: { width: 1280, height: 300 },
      });
      await page.locator(".picture svg.main-svg").first().waitFor({ state: "attached" });
      const far = page.locator("#figure-turn-by-angle svg.main-svg");
      expect(await far.count()).toBe(0);
      await page.locator("#figure-turn-by-angle").scrollIntoViewIfNeeded();
      await far.first().waitFor({ state: "attached" });
      await close();
    });

    it("sets panels side by side where there is room, one under the other on a phone", async () => {
      const { page, close } = await open(browser, at("folder", `${name}.html`));
      await drawnCurves(page);
      const columns = () =>
        page.locator(".picture .annotation-text").evaluateAll((texts) => {
          const titles = texts.filter(({ textContent }) => textContent?.endsWith("cover"));
          return [titles.length, new Set(titles.map((one) => Math.round(one.getBoundingClientRect().left))).size];
        });
      expect(await columns()).toEqual([2, 2]);
      await page.setViewportSize({ width: 360, height: 740 });
      await expect.poll(columns).toEqual([2, 1]);
      await page.setViewportSize({ width: 900, height: 740 });
      await expect.poll(columns).toEqual([2, 2]);
      await close();
    });

    it.each([`${name}.html`, "index.html", "checks.html"])("%s never scrolls sideways on a phone", async (file) => {
      for (const width of [360, 320]) {
        const { page, complaints, close } = await open(browser, at("folder", file), {
          viewport: { width, height: 740 },
        });
        await drawnCurves(page);
        await page.locator("details").evaluateAll((all) => {
          for (const one of all) (one as HTMLDetailsElement).open = true;
        });
        expect(await pageWidth(page)).toBeLessThanOrEqual(width);
        expect(complaints).toEqual([]);
        await close();
      }
    });

    it("folds the contents on a phone only", async () => {
      const phone = await open(browser, at("folder", `${name}.html`), { viewport: { width: 360, height: 740 } });
      expect(await phone.page.locator("details.contents").getAttribute("open")).toBeNull();
      await phone.close();
      const desk = await open(browser, at("folder", `${name}.html`));
      expect(await desk.page.locator("details.contents").getAttribute("open")).toBe("");
      await desk.close();
    });

    it("prints all charts in the colours for paper, and the answers last", async () => {
      const { page, complaints, close } = await open(browser, at("folder", `${name}.html`), {
        colorScheme: "dark",
        viewport: { width: 1280, height: 300 },
      });
      expect(await page.locator(".answers").isVisible()).toBe(false);
      await page.emulateMedia({ media: "print", colorScheme: "dark" });
      await expect.poll(() => page.locator(".chart svg.main-svg").count()).toBe(6);
      const strokes = await page
        .locator(".chart .scatterlayer .js-line")
        .evaluateAll((lines) => lines.map((line) => getComputedStyle(line).stroke));
      expect(strokes).toContain(rgb(lightPalette.water));
      expect(await page.evaluate(() => getComputedStyle(document.body).backgroundColor)).toBe("rgb(255, 255, 255)");
      for (const hidden of [".contents", ".working", ".reply", ".numbers"]) {
        expect(await page.locator(hidden).first().isVisible(), hidden).toBe(false);
      }
      expect(await page.locator(".answers").isVisible()).toBe(true);
      const widest = await page
        .locator(".chart svg.main-svg")
        .evaluateAll((all) => Math.max(...all.map((one) => one.getBoundingClientRect().width)));
      expect(widest).toBeLessThanOrEqual(680);
      await page.emulateMedia({ media: "screen", colorScheme: "dark" });
      await expect
        .poll(() =>
          page.locator(".picture .js-line").evaluateAll((lines) => lines.map((line) => getComputedStyle(line).stroke)),
        )
        .toContain(rgb(darkPalette.water));
      expect(complaints).toEqual([]);
      await close();
    });

    it("draws before a real print, straight after opening", async () => {
      const { page, close } = await open(browser, at("folder", `${name}.html`), {
        viewport: { width: 1280, height: 200 },
      });
      await page.evaluate(() => {
        window.addEventListener("afterprint", () =>
          document.body.setAttribute("data-drawn", String(document.querySelectorAll("svg.main-svg").length)),
        );
      });
      const pdf = await page.pdf({ preferCSSPageSize: true });
      expect(pdf.length).toBeGreaterThan(20_000);
      expect(await page.locator("body").getAttribute("data-drawn")).toBe("6");
      await close();
    });

    it("works as one file in a folder of its own", async () => {
      const { page, complaints, close } = await open(browser, at("alone", "sent.html"), {
        viewport: { width: 360, height: 740 },
      });
      expect(await drawnCurves(page)).toEqual([14, 2]);
      expect(await pageWidth(page)).toBeLessThanOrEqual(360);
      expect(complaints).toEqual([]);
      await close();
    });

    it("shows the numbers where scripts are off", async () => {
      const { page, close } = await open(browser, at("folder", `${name}.html`), { javaScriptEnabled: false });
      expect(await page.locator(".picture noscript").isVisible()).toBe(true);
      expect(await page.locator(".picture noscript").textContent()).toContain("Its numbers stand below");
      await page.locator(".picture details.numbers summary").click();
      expect(await page.locator(".picture details.numbers table").first().isVisible()).toBe(true);
      await close();
    });

    it("says so where the drawing library is missing, and shows the numbers", async () => {
      await mkdir(join(folder, "bare", "assets"), { recursive: true });
      for (const file of ["page.js", "page.css"]) {
        await copyFile(join(folder, "folder", "assets", file), join(folder, "bare", "assets", file));
      }
      const { page, close } = await open(browser, at("bare", "page.html"));
      expect(await page.locator(".picture .chart").textContent()).toContain("could not be drawn");
      expect(await page.locator(".picture details.numbers table").first().isVisible()).toBe(true);
      await close();
    });

    it("runs no script but its own", async () => {
      const { page, complaints, close } = await open(browser, at("alone", "sent.html"));
      await page.evaluate(() => {
        const script = document.createElement("script");
        script.textContent = "document.body.dataset.foreign = 'ran'";
        document.body.append(script);
        document.body.setAttribute("onclick", "document.body.dataset.foreign = 'clicked'");
        document.body.click();
      });
      expect(await page.locator("body").getAttribute("data-foreign")).toBeNull();
      expect(complaints.join("\n")).toContain("Content Security Policy");
      await close();
    });
  },
);
