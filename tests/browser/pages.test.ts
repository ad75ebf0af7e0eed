import { copyFile, cp, mkdir, mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser, Locator, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { realDisk } from "../../src/cli/disk.js";
import { darkPalette, lightPalette } from "../../src/notebook/palette.js";
import { buildReports } from "../../src/report/build.js";
import { sample } from "../report/sample.js";
import {
  chromiumPath,
  drawnCurves,
  explore,
  launch,
  missing,
  open,
  pageWidth,
  settled,
  shownDrawings,
} from "./chromium.js";

const name = sample.name;

/** A colour as the browser writes it. */
function rgb(colour: string): string {
  return `rgb(${[1, 3, 5].map((start) => Number.parseInt(colour.slice(start, start + 2), 16)).join(", ")})`;
}

it.runIf(process.env.CI !== undefined)("has a browser, where it must", () => {
  expect(chromiumPath, missing).toBeDefined();
});

describe.skipIf(chromiumPath === undefined)(`pages in a browser${chromiumPath ? "" : ` (${missing})`}`, () => {
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
        panel: async () => "",
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
  });

  afterAll(async () => {
    await browser?.close();
    await rm(folder, { recursive: true, force: true });
  });

  const strokesOf = (page: Page) =>
    shownDrawings(page)
      .locator("path[data-curve]")
      .evaluateAll((curves) => curves.map((curve) => getComputedStyle(curve).stroke));

  it.each(["light", "dark"] as const)(
    "draws every chart in the colours of the %s theme, without a complaint",
    async (scheme) => {
      const { page, complaints, close } = await open(browser, at("folder", `${name}.html`), { colorScheme: scheme });
      expect(await drawnCurves(page)).toEqual([8, 2]);
      const palette = scheme === "dark" ? darkPalette : lightPalette;
      expect(await page.evaluate(() => getComputedStyle(document.body).backgroundColor)).toBe(rgb(palette.paper));
      const strokes = await strokesOf(page);
      expect(strokes).toContain(rgb(palette.water));
      expect(strokes).toContain(rgb(palette.quiet1));
      expect(complaints).toEqual([]);
      await close();
    },
  );

  it("follows the theme while the page is open, in pictures and in charts to explore", async () => {
    const { page, complaints, close } = await open(browser, at("folder", `${name}.html`), { colorScheme: "light" });
    await explore(page.locator(".picture"));
    const live = () =>
      page
        .locator(".live .scatterlayer .js-line")
        .evaluateAll((lines) => lines.map((line) => getComputedStyle(line).stroke));
    expect(await live()).toContain(rgb(lightPalette.water));
    await page.emulateMedia({ colorScheme: "dark" });
    expect(await strokesOf(page)).toContain(rgb(darkPalette.water));
    await expect.poll(live).toContain(rgb(darkPalette.water));
    expect(complaints).toEqual([]);
    await close();
  });

  it("loads the drawing library only when a reader asks to explore, and finds the way back", async () => {
    const { page, complaints, close } = await open(browser, at("folder", `${name}.html`));
    const asked: string[] = [];
    page.on("request", (request) => asked.push(request.url()));
    const picture = page.locator(".picture");
    await page.evaluate(() => scrollTo(0, document.body.scrollHeight));
    await settled(page);
    expect(asked).toEqual([]);
    expect(await page.evaluate(() => "Plotly" in window)).toBe(false);
    expect(await explore(picture)).toBe(14);
    expect(asked.map((address) => address.replace(/.*\//u, ""))).toEqual([
      "plotly.min.js",
      "charts-how-hard-to-hold.js",
    ]);
    expect(await picture.locator("svg.drawing:visible").count()).toBe(0);
    await picture.getByRole("button", { name: "Back to the still picture" }).click();
    expect(await picture.locator(".live").count()).toBe(0);
    expect(await picture.locator("svg.drawing:visible").count()).toBe(1);
    await explore(page.locator("#figure-turn-by-angle"));
    expect(asked).toHaveLength(2);
    expect(complaints).toEqual([]);
    await close();
  });

  it("shows the same ticks, words and colours in a picture and in its chart to explore, until a reader zooms", async () => {
    const { page, complaints, close } = await open(browser, at("folder", `${name}.html`));
    const figure = page.locator("#figure-turn-by-angle");
    const still = figure.locator("svg.drawing:visible");
    const texts = (where: Locator) => where.evaluateAll((all) => all.map(({ textContent }) => textContent));
    const [x, y, titles, names] = await Promise.all(
      [".ticks.x text", ".ticks.y text", ".axis-title", "text.name"].map((which) => texts(still.locator(which))),
    );
    const stroke = await still
      .locator("path[data-curve]")
      .first()
      .evaluate((one) => getComputedStyle(one).stroke);
    await explore(figure);
    const live = figure.locator(".live");
    expect(await texts(live.locator(".xtick text"))).toEqual(x);
    expect(await texts(live.locator(".ytick text"))).toEqual(y);
    expect((await texts(live.locator(".xtitle, .ytitle"))).sort()).toEqual(titles!.sort());
    expect((await texts(live.locator(".annotation-text"))).map((text) => text!.replaceAll(/\s/gu, "")).sort()).toEqual(
      names!.map((text) => text!.replaceAll(/\s/gu, "")).sort(),
    );
    expect(
      await live
        .locator(".js-line")
        .first()
        .evaluate((one) => getComputedStyle(one).stroke),
    ).toBe(stroke);
    await live.locator('.modebar-btn[data-attr="zoom"][data-val="in"]').click();
    await expect.poll(() => texts(live.locator(".xtick text"))).not.toEqual(x);
    expect((await texts(live.locator(".xtick text"))).length).toBeGreaterThan(2);
    expect(complaints).toEqual([]);
    await close();
  });

  it("sets panels side by side where there is room, one under the other on a phone", async () => {
    const { page, close } = await open(browser, at("folder", `${name}.html`));
    const columns = () =>
      page.locator(".picture .panel-title:visible").evaluateAll((titles) => {
        return [titles.length, new Set(titles.map((one) => Math.round(one.getBoundingClientRect().left))).size];
      });
    expect(await columns()).toEqual([2, 2]);
    await page.setViewportSize({ width: 360, height: 740 });
    expect(await columns()).toEqual([2, 1]);
    await page.setViewportSize({ width: 900, height: 740 });
    expect(await columns()).toEqual([2, 2]);
    await close();
  });

  it("writes at least 12 px high on a phone, in texts that can be selected", async () => {
    const { page, close } = await open(browser, at("folder", `${name}.html`), {
      viewport: { width: 360, height: 740 },
    });
    const sizes = await shownDrawings(page)
      .locator("text")
      .evaluateAll((texts) =>
        texts.map((text) => {
          const scale = (text as SVGTextElement).getScreenCTM()?.a ?? 0;
          const { fontSize, userSelect } = getComputedStyle(text);
          return { size: Number.parseFloat(fontSize) * scale, userSelect };
        }),
      );
    expect(sizes.length).toBeGreaterThan(20);
    for (const { size, userSelect } of sizes) {
      expect(size).toBeGreaterThanOrEqual(12);
      expect(userSelect).toBe("text");
    }
    await close();
  });

  it.each([`${name}.html`, "index.html", "checks.html"])("%s never scrolls sideways on a phone", async (file) => {
    for (const width of [360, 320]) {
      const { page, complaints, close } = await open(browser, at("folder", file), {
        viewport: { width, height: 740 },
      });
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

  it("prints all charts in the colours for paper, whatever was explored, and the answers last", async () => {
    const { page, complaints, close } = await open(browser, at("folder", `${name}.html`), {
      colorScheme: "dark",
      viewport: { width: 680, height: 994 },
    });
    expect(await page.locator(".answers").isVisible()).toBe(false);
    await explore(page.locator("#figure-turn-by-angle"));
    await page.emulateMedia({ media: "print", colorScheme: "dark" });
    expect(await drawnCurves(page)).toEqual([8, 2]);
    expect(await strokesOf(page)).toContain(rgb(lightPalette.water));
    expect(await page.evaluate(() => getComputedStyle(document.body).backgroundColor)).toBe("rgb(255, 255, 255)");
    for (const hidden of [".contents", ".working", ".reply", ".numbers", ".explore", ".live"]) {
      expect(await page.locator(hidden).first().isVisible(), hidden).toBe(false);
    }
    expect(await page.locator(".answers").isVisible()).toBe(true);
    const widths = await shownDrawings(page).evaluateAll((all) =>
      all.map((one) => one.getBoundingClientRect().width / (one.closest("figure")?.clientWidth ?? 0)),
    );
    for (const width of widths) expect(width).toBeCloseTo(1, 2);
    await page.emulateMedia({ media: "screen", colorScheme: "dark" });
    expect(await strokesOf(page)).toContain(rgb(darkPalette.water));
    expect(complaints).toEqual([]);
    await close();
  });

  it("works as one file in a folder of its own, where a chart can be explored too", async () => {
    const { page, complaints, close } = await open(browser, at("alone", "sent.html"), {
      viewport: { width: 360, height: 740 },
    });
    expect(await drawnCurves(page)).toEqual([8, 2]);
    expect(await page.evaluate(() => "Plotly" in window)).toBe(false);
    expect(await explore(page.locator(".picture"))).toBe(14);
    expect(await pageWidth(page)).toBeLessThanOrEqual(360);
    expect(complaints).toEqual([]);
    await close();
  });

  it("reads whole where scripts are off: pictures, numbers, and no button that does nothing", async () => {
    const { page, complaints, close } = await open(browser, at("folder", `${name}.html`), {
      javaScriptEnabled: false,
    });
    const drawing = page.locator(".picture svg.drawing:visible");
    expect(await drawing.count()).toBe(1);
    expect(await drawing.locator("text", { hasText: "a hand can hold" }).first().isVisible()).toBe(true);
    expect(await drawing.locator("path[data-curve]").first().getAttribute("d")).toMatch(/^M0 /u);
    expect(await page.locator("button:visible").count()).toBe(0);
    await page.locator(".picture details.numbers summary").click();
    expect(await page.locator(".picture details.numbers table").first().isVisible()).toBe(true);
    expect(complaints).toEqual([]);
    await close();
  });

  it("shows no chart of another build, which one that was cut short would leave beside the page", async () => {
    await cp(join(folder, "folder"), join(folder, "mixed"), { recursive: true });
    const file = join(folder, "mixed", "assets", `charts-${name}.js`);
    const other = (await readFile(file, "utf8")).replace(/of: "\w{8}"/u, 'of: "00000000"');
    expect(other).toContain("00000000");
    await writeFile(file, other);
    const { page, close } = await open(browser, at("mixed", `${name}.html`));
    await page.locator(".picture button.explore").click();
    await expect.poll(() => page.locator(".picture button.explore").textContent()).toContain("could not be loaded");
    expect(await page.locator(".picture .live").count()).toBe(0);
    await close();
  });

  it("says so where the drawing library is missing, keeps the picture and shows the numbers", async () => {
    await mkdir(join(folder, "bare", "assets"), { recursive: true });
    for (const file of ["page.js", "page.css"]) {
      await copyFile(join(folder, "folder", "assets", file), join(folder, "bare", "assets", file));
    }
    const { page, close } = await open(browser, at("bare", "page.html"));
    await page.locator(".picture button.explore").click();
    await expect.poll(() => page.locator(".picture button.explore").textContent()).toContain("could not be loaded");
    expect(await page.locator(".picture svg.drawing:visible").count()).toBe(1);
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
});
