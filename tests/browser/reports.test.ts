import { statSync } from "node:fs";
import { basename, join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { realDisk } from "../../src/cli/disk.js";
import { findNotebooks } from "../../src/cli/folders.js";
import { builtReports } from "../built/reports.js";
import { chromiumPath, drawnCurves, launch, missing, open, pageWidth, settled, shownDrawings } from "./chromium.js";

const root = fileURLToPath(new URL("../..", import.meta.url));
const here = { currentFolder: root, packageFolder: root, disk: realDisk("browser") };
const { notebooks } = await findNotebooks(here);
const pages = [...notebooks.map(({ name }) => `${name}.html`), "index.html", "checks.html"];

/** Most that a reader waits for: all that a page reads before it is asked for more [bytes]. */
const mostBytes = 400 * 1024;

interface Label {
  readonly text: string;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Texts inside each chart that the page shows, with where they stand on the page, and the frame of the chart. */
function chartLabels(page: Page): Promise<{ labels: Label[]; frame: Label }[]> {
  return shownDrawings(page).evaluateAll((charts) =>
    charts.map((chart) => {
      const place = (element: Element) => {
        const { left, right, top, bottom } = element.getBoundingClientRect();
        return { text: element.textContent?.trim() ?? "", left, right, top, bottom };
      };
      return { labels: Array.from(chart.querySelectorAll("text"), place), frame: place(chart) };
    }),
  );
}

/** Letters stand lower than the box of their line: labels may come this near [px]. */
const slack = 3;

function covers(one: Label, other: Label): boolean {
  return (
    one.left < other.right - slack &&
    other.left < one.right - slack &&
    one.top < other.bottom - slack &&
    other.top < one.bottom - slack
  );
}

/** Every chart draws, keeps to the page's width and to its own frame, and no word covers another. */
async function drawsAt(page: Page, width: number): Promise<void> {
  for (const curves of await drawnCurves(page)) expect(curves).toBeGreaterThan(0);
  expect(await pageWidth(page)).toBeLessThanOrEqual(width);
  for (const { labels, frame } of await chartLabels(page)) {
    for (const { text, left, right, top, bottom } of labels) {
      expect(left >= 0 && right <= width, text).toBe(true);
      const isInside =
        left >= frame.left - slack &&
        right <= frame.right + slack &&
        top >= frame.top - slack &&
        bottom <= frame.bottom + slack;
      expect(isInside, text).toBe(true);
    }
    const pairs = labels.flatMap((one, index) => labels.slice(index + 1).map((other) => [one, other] as const));
    const covered = pairs.filter(([one, other]) => covers(one, other));
    expect(covered.map(([one, other]) => `${one.text} | ${other.text}`)).toEqual([]);
  }
}

/** Widths and heights of all figures as they are printed, charts and drawings for themselves. */
async function printedSizes(page: Page): Promise<{ width: number; height: number }[]> {
  return page.locator("figure").evaluateAll((figures) =>
    figures.map((figure) => {
      const chart = figure.querySelector(".wide svg.drawing") ?? figure.querySelector("svg.drawing");
      const drawn = chart === null ? [...figure.querySelectorAll("svg.reeving-drawing")] : [chart];
      // A drawing stands there twice, for wide and for narrow pages; one of the two is shown.
      const widths = drawn.map((one) => one.getBoundingClientRect().width);
      const width = widths.length === 0 ? Number.NaN : Math.max(...widths);
      return { width, height: figure.getBoundingClientRect().height };
    }),
  );
}

/** A sheet of A4 without its margins [px]. */
const sheet = { width: 680, height: 994 };

describe.skipIf(chromiumPath === undefined)(
  `reports of this project in a browser${chromiumPath ? "" : ` (${missing})`}`,
  () => {
    let browser: Browser;
    let folder: string;

    beforeAll(async () => {
      folder = await builtReports();
      browser = await launch();
    });

    afterAll(async () => {
      await browser?.close();
    });

    it.each(pages)(
      "%s on a desk: draws, reads little at first view, complains of nothing, and prints every figure on one sheet",
      async (file) => {
        const viewport = { width: 1280, height: 740 };
        const { page, files, complaints, close } = await open(browser, pathToFileURL(join(folder, file)), { viewport });
        await settled(page);
        const sizes = files.map((one) => ({ file: basename(one.pathname), size: statSync(one).size }));
        expect(sizes.map((one) => one.file)).toContain("page.css");
        expect(
          sizes.reduce((sum, { size }) => sum + size, 0),
          JSON.stringify(sizes),
        ).toBeLessThanOrEqual(mostBytes);
        await drawsAt(page, viewport.width);
        const count = await page.locator("figure").count();
        await page.setViewportSize(sheet);
        await page.emulateMedia({ media: "print" });
        expect(await printedSizes(page)).toHaveLength(count);
        const largest = async () => {
          const all = await printedSizes(page);
          return [Math.max(...all.map(({ width }) => width)), Math.max(...all.map(({ height }) => height))];
        };
        await expect
          .poll(async () => (await largest()).every((size, index) => size <= [sheet.width, sheet.height][index]!))
          .toBe(true);
        expect(complaints).toEqual([]);
        await close();
      },
    );

    it.each(pages)("%s on a phone in the dark: draws, and complains of nothing", async (file) => {
      const viewport = { width: 360, height: 740 };
      const address = pathToFileURL(join(folder, file));
      const { page, complaints, close } = await open(browser, address, { viewport, colorScheme: "dark" });
      await drawsAt(page, viewport.width);
      expect(complaints).toEqual([]);
      await close();
    });
  },
);
