import { mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { reportPage } from "../../src/report/reportpage.js";
import { workedSample } from "../report/worked-sample.js";
import { chromiumPath, launch, missing, open, pageWidth } from "./chromium.js";

const isOpen = (page: Page) => page.locator(".how:popover-open").count();

describe.skipIf(chromiumPath === undefined)(
  `numbers that unfold in a browser${chromiumPath ? "" : ` (${missing})`}`,
  () => {
    let browser: Browser;
    let folder: string;
    let address: URL;

    beforeAll(async () => {
      folder = await mkdtemp(join(tmpdir(), "haulbook-workings-"));
      await writeFile(
        join(folder, "worked.html"),
        reportPage(workedSample, { inlinePlotly: "window.Plotly = { react() {} };" }),
      );
      address = pathToFileURL(join(folder, "worked.html"));
      browser = await launch();
    });

    afterAll(async () => {
      await browser?.close();
      await rm(folder, { recursive: true, force: true });
    });

    it.each([1280, 360])("open and close by keyboard without any script, at %d pixels", async (width) => {
      const { page, complaints, close } = await open(browser, address, {
        viewport: { width, height: 740 },
        javaScriptEnabled: false,
      });
      const button = page.locator(".answer .worked");
      await button.focus();
      await page.keyboard.press("Enter");
      expect(await isOpen(page)).toBe(1);
      const box = (await page.locator(".how:popover-open").boundingBox())!;
      expect(box.x).toBeGreaterThanOrEqual(0);
      expect(box.x + box.width).toBeLessThanOrEqual(width);
      expect(box.y + box.height).toBeLessThanOrEqual(741);
      await page.keyboard.press("Tab");
      expect(await page.locator(".how:popover-open .shut:focus").count()).toBe(1);
      await page.keyboard.press("Enter");
      expect(await isOpen(page)).toBe(0);
      await button.focus();
      await page.keyboard.press("Space");
      expect(await isOpen(page)).toBe(1);
      await page.keyboard.press("Escape");
      expect(await isOpen(page)).toBe(0);
      expect(await page.locator(".answer .worked:focus").count()).toBe(1);
      expect(await pageWidth(page)).toBeLessThanOrEqual(width);
      expect(complaints).toEqual([]);
      await close();
    });

    it("open from every mark, with numbers that can be read, and pass an accessibility check", async () => {
      const { page, close } = await open(browser, address);
      const marks = page.locator(".worked:visible");
      for (let index = 0; index < (await marks.count()); index++) {
        await marks.nth(index).scrollIntoViewIfNeeded();
        await marks.nth(index).click();
        expect(await isOpen(page)).toBe(1);
        await page.keyboard.press("Escape");
      }
      await marks.first().click();
      const onward = page.locator(".how:popover-open .symbols button");
      if ((await onward.count()) > 0) {
        await onward.first().click();
        expect(await isOpen(page)).toBe(2);
      }
      await page.evaluate(await readFile(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8"));
      const found = await page.evaluate(async () => {
        const { axe } = window as unknown as {
          axe: { run(): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> };
        };
        return (await axe.run()).violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ""}`);
      });
      expect(found).toEqual([]);
      await close();
    });

    it("show nothing on paper", async () => {
      const { page, close } = await open(browser, address);
      await page.locator(".worked").first().click();
      await page.emulateMedia({ media: "print" });
      expect(await page.locator(".how").first().isVisible()).toBe(false);
      await close();
    });
  },
);
