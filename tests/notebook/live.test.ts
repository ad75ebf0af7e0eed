import { readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";
import { pathToFileURL } from "node:url";
import { afterAll, expect, test } from "vitest";
import { liveHtml } from "../../src/notebook/html.js";
import { blank, chromiumPath, launch } from "../browser/chromium.js";
import { demoFigure } from "./figures.js";
import { scratchFolder } from "./scratch.js";

const scratch = scratchFolder();
afterAll(() => scratch.remove());

test.skipIf(chromiumPath === undefined && process.env.CI === undefined)(
  "a live figure draws itself from a file, beside a module loader, with the library sent once",
  async () => {
    const library = readFileSync(createRequire(import.meta.url).resolve("plotly.js-dist-min"), "utf8");
    const make = liveHtml(() => library);
    // The loader takes whatever hands itself to it and never gives it out under a global name.
    const loader =
      "<script>window.taken = 0; window.define = () => { window.taken += 1; }; window.define.amd = {}; window.require = () => {};</script>";
    const file = path.join(scratch.folder, "live.html");
    const page = (figures: string[]) => `<!doctype html><meta charset="utf-8">${loader}<body>${figures.join("")}`;
    const nasty = { ...demoFigure, title: "</script><script>window.broken = true</script>" };
    const browser = await launch();
    try {
      const tab = await blank(browser);
      const wrong: string[] = [];
      tab.on("pageerror", (error) => wrong.push(error.message));
      tab.on("request", (request) => void (request.url().startsWith("http") && wrong.push(request.url())));
      const look = async (figures: string[]) => {
        writeFileSync(file, page(figures));
        await tab.goto(pathToFileURL(file).href);
        await tab.waitForFunction(() =>
          [...document.querySelectorAll("[id^=haulbook-figure]")].every(
            (place) => place.querySelector(".scatterlayer path.js-line") ?? place.textContent,
          ),
        );
        return tab.evaluate(() => {
          const seen = globalThis as { taken?: number; broken?: boolean };
          const places = [...document.querySelectorAll("[id^=haulbook-figure]")];
          return {
            taken: seen.taken,
            broken: seen.broken,
            curves: places.map((place) => place.querySelectorAll(".scatterlayer path.js-line").length),
            words: places.map((place) => (place.querySelector("svg") ? "" : place.textContent)),
          };
        });
      };
      const both = [make(nasty), make(demoFigure)];
      const drawn = await look(both);
      expect(drawn).toMatchObject({ taken: 0, words: ["", ""] });
      expect(drawn.broken).toBeUndefined();
      for (const curves of drawn.curves) expect(curves).toBeGreaterThanOrEqual(9);
      const alone = await look(both.slice(1));
      expect(alone.words[0]).toMatch(/restart the kernel/);
      expect(wrong).toEqual([]);
    } finally {
      await browser.close();
    }
  },
);
