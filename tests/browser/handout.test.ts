import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { printPage } from "../../src/cli/print.js";
import { reportsAddress } from "../../src/report/handout-address.js";
import { type HandoutTopic, handoutHtml, isHandout } from "../../src/report/handout-page.js";
import { recordOf } from "../../src/report/record.js";
import { drawnLine, ruled } from "../report/handout-sample.js";
import { sample } from "../report/sample.js";
import { chromiumPath, launch, missing, open } from "./chromium.js";

const plain = recordOf(sample, "");
const withRules = recordOf(ruled, "");
const { picture } = plain.handout;
if (picture === undefined) throw new Error("the sample has a picture");

/** Words of about a length. */
const words = (length: number) => `${"wider line ".repeat(Math.ceil(length / 11)).slice(0, length - 1)}x`;

/** As much as the builders let through, and more where nothing else keeps it short. */
const fullest: HandoutTopic = {
  name: "fullest",
  question: `${words(159)}?`,
  handout: {
    demo: true,
    picture: {
      ...picture,
      title: words(400),
      caption: words(900),
      panels: ["one", "two", "three", "four"].map((title) => ({
        ...picture.panels[0],
        title,
        series: picture.panels[0]?.series ?? [],
      })),
    },
    rules: Array.from({ length: 3 }, () => ({ text: words(180), range: words(120) })),
    sheetTable: {
      kind: "sheetTable",
      caption: words(180),
      columns: Array.from({ length: 8 }, () => words(24)),
      rows: Array.from({ length: 8 }, () => Array.from({ length: 8 }, () => words(24))),
    },
  },
};
const longAnswer: HandoutTopic = {
  ...plain,
  name: "long-answer",
  handout: {
    ...plain.handout,
    rules: [
      { text: `${words(300)}. ${words(240)}. ${words(500)}.` },
      ...Array.from({ length: 2 }, () => ({ text: words(299), range: words(299) })),
    ],
  },
};
const withLine = (blocks: number) => ({ ...withRules.handout, reeving: drawnLine(blocks) });
/** With a line that has room, with one that is too long to be read on a sheet, and with one beside everything else that is long. */
const drawn: HandoutTopic = { ...withRules, name: "drawn", handout: withLine(0) };
const tooLong: HandoutTopic = { ...withRules, name: "too-long", handout: withLine(5) };
const fullWithLine: HandoutTopic = {
  ...fullest,
  name: "full-with-line",
  handout: { ...fullest.handout, reeving: drawnLine(0) },
};
const bare: HandoutTopic = { name: "bare", question: "Why?", handout: { rules: [{ text: "Because." }], demo: false } };

/** Height that is left for a picture where there is much to say, or none [px]; 200 elsewhere. */
const leastPictures: Readonly<Record<string, number>> = {
  fullest: 60,
  "full-with-line": 60,
  "long-answer": 180,
  bare: -1,
  drawn: 140,
};
const topics: readonly HandoutTopic[] = [
  plain,
  { ...withRules, name: "ruled" },
  fullest,
  longAnswer,
  bare,
  drawn,
  tooLong,
  fullWithLine,
];

describe.skipIf(chromiumPath === undefined)(`the handout on paper${chromiumPath ? "" : ` (${missing})`}`, () => {
  let browser: Browser;
  let folder: string;
  const machine = {
    env: { ...process.env, CHROMIUM: chromiumPath },
    platform: process.platform,
    mark: "test",
    allRights: true,
  };
  const signal = new AbortController().signal;

  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), "haulbook-handout-"));
    await writeFile(
      join(folder, "handout.html"),
      handoutHtml({ topics, address: reportsAddress("https://club.example/clinic") }),
    );
    await writeFile(join(folder, "without.html"), handoutHtml({ topics }));
    browser = await launch();
  });

  afterAll(async () => {
    await browser?.close();
    await rm(folder, { recursive: true, force: true });
  });

  it.each(["handout", "without"])("has one side for each topic: %s", async (name) => {
    const pdf = join(folder, `${name}.pdf`);
    expect(await printPage(machine, { page: join(folder, `${name}.html`), pdf, signal })).toBe(topics.length);
    const text = await readFile(pdf, "latin1");
    expect(isHandout(text)).toBe(true);
    const boxes = [...text.matchAll(/\/MediaBox\s*\[([^\]]+)\]/gu)].map(([, box = ""]) =>
      box.trim().split(/\s+/u).map(Number),
    );
    expect(boxes.length).toBeGreaterThan(0);
    for (const [left, below, right = 0, above = 0] of boxes) {
      expect([left, below]).toEqual([0, 0]);
      // A4 in points, to the pixel of the browser.
      expect(Math.abs(right - 595.28)).toBeLessThan(1);
      expect(Math.abs(above - 841.89)).toBeLessThan(1);
    }
    expect((await readdir(folder)).filter((file) => file.endsWith(".part"))).toEqual([]);
  });

  it("cuts nothing and lets nothing overlap", async () => {
    for (const name of ["handout", "without"]) {
      const { page, complaints, close } = await open(browser, pathToFileURL(join(folder, `${name}.html`)), {
        viewport: { width: 794, height: 1123 },
      });
      await page.emulateMedia({ media: "print" });
      const sheets = await page.evaluate(() =>
        [...document.querySelectorAll(".topic")].map((sheet) => {
          const box = sheet.getBoundingClientRect();
          const parts = [...sheet.children].map((part) => part.getBoundingClientRect());
          const svg = sheet.querySelector(".drawing")?.getBoundingClientRect();
          const holder = sheet.querySelector(".picture")?.getBoundingClientRect();
          const gaps = parts.slice(1).map((part, index) => part.top - (parts[index]?.bottom ?? 0));
          const within = (child: Element) => {
            const own = child.getBoundingClientRect();
            return own.left >= box.left - 1 && own.right <= box.right + 1 && own.bottom <= box.bottom + 1;
          };
          return {
            name: sheet.getAttribute("aria-labelledby"),
            height: box.height,
            wants: sheet.scrollHeight,
            leastGap: Math.min(...gaps),
            outside: [...sheet.querySelectorAll("*")]
              .filter((one) => !within(one))
              .map((one) => one.outerHTML.slice(0, 80)),
            picture: svg?.height ?? 0,
            spills: (svg?.bottom ?? 0) - (holder?.bottom ?? 0),
            line: (() => {
              const own = sheet.querySelector<SVGSVGElement>(".reeving-drawing");
              return own === null ? 0 : (13 * own.getBoundingClientRect().width) / own.viewBox.baseVal.width;
            })(),
          };
        }),
      );
      expect(sheets).toHaveLength(topics.length);
      for (const sheet of sheets) {
        expect(sheet.wants, `${sheet.name}`).toBeLessThanOrEqual(Math.ceil(sheet.height));
        expect(sheet.leastGap, `${sheet.name}`).toBeGreaterThan(5);
        expect(sheet.spills, `${sheet.name}`).toBeLessThan(1);
        expect(sheet.outside).toEqual([]);
        expect(sheet.picture, `${sheet.name}`).toBeGreaterThan(leastPictures[sheet.name ?? ""] ?? 200);
      }
      // Words of the drawn line on paper: never smaller than 9 pixels, and only where there is room.
      const words = Object.fromEntries(sheets.map(({ name: topic, line }) => [topic, line]));
      expect(words.drawn).toBeGreaterThan(9);
      expect(Object.keys(words).filter((topic) => words[topic] !== 0)).toEqual(["drawn"]);
      expect(complaints).toEqual([]);
      await close();
    }
  });

  it("is clear to a reader without sight, and scrolls on no phone", async () => {
    const { page, close } = await open(browser, pathToFileURL(join(folder, "handout.html")), {
      viewport: { width: 360, height: 700 },
      bypassCSP: true,
    });
    expect(await page.evaluate(() => document.scrollingElement?.scrollWidth)).toBeLessThanOrEqual(360);
    await page.addScriptTag({ path: createRequire(import.meta.url).resolve("axe-core/axe.min.js") });
    const found = await page.evaluate(async () => {
      const axe = (window as unknown as { axe: { run: () => Promise<{ violations: { id: string; help: string }[] }> } })
        .axe;
      return (await axe.run()).violations.map(({ id, help }) => `${id}: ${help}`);
    });
    expect(found).toEqual([]);
    await close();
  });

  it("is not printed where there is no Chromium, or where nothing can be written", async () => {
    const print = { page: join(folder, "handout.html"), pdf: join(folder, "none.pdf"), signal };
    await expect(printPage({ ...machine, env: { CHROMIUM: "/nowhere/chromium" } }, print)).rejects.toThrow(
      "There is no /nowhere/chromium",
    );
    await expect(printPage({ ...machine, env: { PATH: "" }, platform: "linux" }, print)).rejects.toThrow(
      "Chromium was not found",
    );
    await expect(printPage({ ...machine, env: { CHROMIUM: "/bin/false" } }, print)).rejects.toThrow(
      "did not print it (exit code 1)",
    );
    await mkdir(join(folder, "taken.pdf"));
    await expect(printPage(machine, { ...print, pdf: join(folder, "taken.pdf") })).rejects.toThrow();
    expect((await readdir(folder)).filter((file) => file.includes("none") || file.endsWith(".part"))).toEqual([]);
  });
});
