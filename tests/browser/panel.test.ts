import { mkdtemp, readFile, rm } from "node:fs/promises";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { loadBoat } from "../../src/boat/load.js";
import { realDisk } from "../../src/cli/disk.js";
import { lineFacts } from "../../src/live/line-facts.js";
import { liveModels } from "../../src/live/models.js";
import { livePanel } from "../../src/live/panel.js";
import type { ExecutedNotebook } from "../../src/notebook/executed.js";
import { firstUnits } from "../../src/notebook/measure.js";
import type { LiveResult } from "../../src/notebook/output.js";
import { buildReports } from "../../src/report/build.js";
import { long } from "../long.js";
import { sample } from "../report/sample.js";
import { blank, chromiumPath, launch, missing, open, pageWidth } from "./chromium.js";

const names = liveModels.map(({ name }) => name);
/** Panels that between them have every kind of control and of figure. */
const some = ["what-the-hand-feels", "what-matters-most", "hands-through-a-race-day", "a-line-plan"];

const skiff = loadBoat(fileURLToPath(new URL("../../notebooks/boats/demo-skiff.yaml", import.meta.url)));

/** The panel of a model; that of a line takes a line of a boat's file. */
function panelOf(name: string) {
  return livePanel(name, name === "a-line-plan" ? { facts: lineFacts(skiff, "gennaker sheet") } : {});
}

/** A report with a live panel. */
function withPanel(name: string): ExecutedNotebook {
  const cell = { type: "code", number: 40, source: `show(livePanel("${name}"))`, outputs: [panelOf(name)] } as const;
  return { ...sample, name, cells: [...sample.cells, cell] };
}

/** What the panel says: its numbers, its sentence, the words of its figure and the figure itself. */
async function said(page: Page) {
  const texts = (selector: string) =>
    page.locator(selector).evaluateAll((all) => all.map(({ textContent }) => textContent ?? ""));
  return {
    results: await texts(".trial .results dd"),
    sentence: (await texts(".trial .sentence"))[0],
    title: (await texts(".trial figcaption"))[0],
    figure: await page.locator(".trial figure svg").first().innerHTML(),
  };
}

/** Moves a slider as a hand does. */
function move(slider: HTMLElement | SVGElement, to: string): void {
  (slider as HTMLInputElement).value = to;
  slider.dispatchEvent(new Event("input", { bubbles: true }));
}

const shownResult = ({ text, range }: LiveResult) => (range === undefined ? text : `${text} likely ${range}`);

const hash = (page: Page) => page.evaluate(() => window.location.hash);

describe.skipIf(chromiumPath === undefined)(`the live panel in a browser${chromiumPath ? "" : ` (${missing})`}`, () => {
  let browser: Browser;
  let folder: string;
  const at = (form: "folder" | "single", name: string, behind = "") =>
    new URL(`${pathToFileURL(join(folder, form, `${name}.html`)).href}${behind}`);

  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), "haulbook-live-"));
    const plotly = await readFile(createRequire(import.meta.url).resolve("plotly.js-dist-min"), "utf8");
    const bundles = new URL("../../dist/page/bundles/", import.meta.url);
    const panel = (model: string) => readFile(fileURLToPath(new URL(`${model}.js`, bundles)), "utf8");
    for (const singleFile of [false, true]) {
      const { failures } = await buildReports({
        notebooks: names.map((name) => ({ name, path: `${name}.ipynb` })),
        outputFolder: join(folder, singleFile ? "single" : "folder"),
        singleFile,
        run: async ({ name }) => withPanel(name),
        files: realDisk("test"),
        minisearch: async () => "",
        plotly: async () => plotly,
        panel,
        log: () => {},
        now: () => 0,
      });
      expect(failures).toEqual([]);
    }
    browser = await launch();
  });

  afterAll(async () => {
    await browser?.close();
    await rm(folder, { recursive: true, force: true });
  });

  it.concurrent.for(names)(
    "%s: what is computed in the browser is what the page was built with, to the last digit",
    async (name, { expect }) => {
      const { page, complaints, close } = await open(browser, at("folder", name));
      const written = await said(page);
      // A setting and back: everything is computed anew.
      await page.locator(".units input[value=kgf]").check();
      await expect.poll(() => hash(page)).toBe("#try:unit-force=kgf");
      await page.locator("button[type=reset]").click();
      await expect.poll(() => hash(page)).toBe("");
      await expect.poll(async () => (await said(page)).results).toEqual(written.results);
      const { figure: _drawn, ...words } = written;
      await expect.poll(() => said(page)).toMatchObject(words);
      const { results, sentence } = panelOf(name);
      expect(written.sentence).toBe(sentence);
      expect(written.results).toEqual(results.map(shownResult));
      expect(complaints).toEqual([]);
      await close();
    },
  );

  it("moves numbers, figure and address with a slider under the keys, and a loaded address brings them back", async () => {
    const { page, complaints, close } = await open(browser, at("folder", "what-the-hand-feels"));
    const before = await said(page);
    await page.getByLabel("Apparent wind").focus();
    for (let press = 0; press < 4; press++) await page.keyboard.press("ArrowRight");
    await expect.poll(() => hash(page)).toBe("#try:wind=14");
    const after = await said(page);
    expect(after.results).not.toEqual(before.results);
    expect(after.figure).not.toBe(before.figure);
    expect(after.sentence).toContain("14\u00a0kn");
    expect(await page.locator(".slide output").first().textContent()).toBe("14\u00a0kn");
    const model = liveModels.find(({ name }) => name === "what-the-hand-feels")!;
    expect(after.sentence).toBe(model.compute({ wind: 14 }, firstUnits).sentence);
    await close();

    const again = await open(browser, at("folder", "what-the-hand-feels", "#try:wind=14"));
    await expect.poll(() => said(again.page)).toEqual(after);
    expect(await again.page.getByLabel("Apparent wind").inputValue()).toBe("14");
    expect([...complaints, ...again.complaints]).toEqual([]);
    await again.close();
  });

  it.concurrent.for(long(some, names))(
    "%s: changed bit by bit it shows what it shows when it is drawn anew",
    async (name, { expect }) => {
      const { page, complaints, close } = await open(browser, at("folder", name));
      const controls = page.locator(".trial form :is(input, select):not([readonly])");
      const slider = page.locator(".trial input[type=range]").first();
      await slider.scrollIntoViewIfNeeded();
      await slider.fill((await slider.getAttribute("max"))!);
      await expect.poll(() => hash(page)).not.toBe("");
      // To and fro, so that curves, ticks and names come and go.
      for (const to of [0.9, 0.2, 0.6])
        await controls.evaluateAll(async (fields, share) => {
          for (const field of fields as (HTMLInputElement | HTMLSelectElement)[]) {
            if (field instanceof HTMLSelectElement) field.selectedIndex = Math.floor(share * field.options.length);
            else if (field.type === "range")
              field.value = String(Number(field.min) + share * (Number(field.max) - Number(field.min)));
            else if (field.type === "checkbox") field.checked = share > 0.5;
            else field.checked ||= share > 0.5;
            field.dispatchEvent(new Event("input", { bubbles: true }));
            await new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve)));
          }
        }, to);
      // The address is written when the hand rests, or at once for who asks for it.
      await page.getByRole("button", { name: "Copy a link to this setting" }).click();
      await page.locator(".told", { hasText: "link" }).waitFor();
      const changed = await page
        .locator(".trial :is(figure, .numbers-now)")
        .evaluateAll((all) => all.map((one) => one.outerHTML));
      const again = await open(browser, at("folder", name, await hash(page)));
      await expect
        .poll(() =>
          again.page.locator(".trial :is(figure, .numbers-now)").evaluateAll((all, others) => {
            const box = document.createElement("div");
            box.innerHTML = others.join("");
            return all.map((one, index) => one.isEqualNode(box.children[index]!));
          }, changed),
        )
        .toEqual([true, true]);
      expect([...complaints, ...again.complaints]).toEqual([]);
      await close();
      await again.close();
    },
  );

  it("reads what computes when the panel comes into view, with the controls there before", async () => {
    const viewport = { width: 600, height: 200 };
    const { page, files, complaints, close } = await open(browser, at("folder", "around-a-ring"), { viewport });
    const isRead = () => files.some(({ pathname }) => pathname.endsWith("/live-around-a-ring.js"));
    expect(await page.locator(".trial form").isVisible()).toBe(true);
    await page.evaluate(() => new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve))));
    expect(isRead()).toBe(false);
    await page.locator(".trial").scrollIntoViewIfNeeded();
    await expect.poll(isRead).toBe(true);
    await page.getByLabel("Angle of contact").fill("45");
    await expect.poll(async () => (await said(page)).sentence).toContain("45°");
    expect(complaints).toEqual([]);
    await close();
  });

  it("says and shows the last setting, also where the screen is not painted meanwhile", async () => {
    const model = liveModels.find(({ name }) => name === "what-the-hand-feels")!;
    const page = await blank(browser);
    await page.addInitScript(() => {
      window.requestAnimationFrame = () => 0;
    });
    await page.goto(at("folder", model.name).href);
    await page.locator(".trial").evaluate((one) => one.scrollIntoView());
    for (const wind of ["13", "14"]) {
      await page.getByLabel("Apparent wind").evaluate(move, wind);
      await expect.poll(() => hash(page)).toBe(`#try:wind=${wind}`);
    }
    const { sentence, results } = model.compute({ wind: 14 }, firstUnits);
    expect(await said(page)).toMatchObject({ sentence, results: results.map(shownResult) });
    await page.context().close();
  });

  it("works every kind of control by keyboard", async () => {
    const { page, close } = await open(browser, at("folder", "what-the-hand-feels"));
    await page.getByRole("radio", { name: "8, coarse" }).focus();
    await page.keyboard.press("ArrowRight");
    await page.getByRole("switch", { name: "Wet" }).focus();
    await page.keyboard.press("Space");
    await page.getByLabel("Last block").focus();
    await page.keyboard.press("ArrowDown");
    await expect.poll(() => hash(page)).toBe("#try:block=toothed&strands=16&wet=on");
    await page.locator("button[type=reset]").focus();
    await page.keyboard.press("Enter");
    await expect.poll(() => hash(page)).toBe("");
    expect(await page.getByRole("switch", { name: "Wet" }).isChecked()).toBe(false);
    await close();
  });

  it("switches units of numbers, sliders and axes, and keeps the setting", async () => {
    const { page, close } = await open(browser, at("folder", "what-the-hand-feels"));
    const newtons = Number.parseFloat((await said(page)).results[0]!);
    await page.locator(".units input[value=lbf]").check();
    await page.locator(".units input[value='m/s']").check();
    await expect.poll(() => hash(page)).toBe("#try:unit-force=lbf&unit-wind=m%2Fs");
    const shown = await said(page);
    expect(Number.parseFloat(shown.results[0]!) * 4.4482216).toBeCloseTo(newtons, 0);
    expect(shown.figure).toContain("[lbf]");
    expect(shown.figure).not.toContain("[N]");
    expect(await page.locator(".slide output").first().textContent()).toBe("6.2\u00a0m/s");
    expect(await page.getByLabel("Apparent wind").inputValue()).toBe("12");
    await close();
  });

  it("says what an address asks for and cannot have, and uses the page's own", async () => {
    const address = at("folder", "around-a-ring", "#try:load=99999&round=square&angle=90");
    const { page, complaints, close } = await open(browser, address);
    await expect.poll(() => page.locator(".told").textContent()).toContain("“99999” is not possible here");
    expect(await page.locator(".told").textContent()).toContain("“square”");
    expect(await page.getByLabel("Load", { exact: true }).inputValue()).toBe("300");
    expect(await page.getByLabel("Angle of contact").inputValue()).toBe("90");
    expect(complaints).toEqual([]);
    await close();
  });

  it("follows an address that changes while the page is open, and leaves headings alone", async () => {
    const { page, close } = await open(browser, at("folder", "around-a-ring"));
    await page.evaluate(() => {
      window.location.hash = "#try:angle=45";
    });
    await expect.poll(() => page.getByLabel("Angle of contact").inputValue()).toBe("45");
    await expect.poll(async () => (await said(page)).sentence).toContain("45°");
    await page.evaluate(() => {
      window.location.hash = "#how-sure";
    });
    expect(await page.getByLabel("Angle of contact").inputValue()).toBe("45");
    await close();
  });

  it("hands over a link to a setting", async () => {
    const { page, close } = await open(browser, at("folder", "around-a-ring"));
    await page.getByLabel("Angle of contact").fill("45");
    await page.getByRole("button", { name: "Copy a link to this setting" }).click();
    await expect.poll(() => page.locator(".told").textContent()).toContain("link");
    expect(page.url()).toContain("#try:angle=45");
    const shown = page.locator(".link input");
    if (await shown.isVisible()) expect(await shown.inputValue()).toBe(page.url());
    await close();
  });

  it("works in a single file under its own policy", async () => {
    const { page, complaints, close } = await open(browser, at("single", "purchases-and-lost-force", "#try:parts=6"));
    await expect.poll(async () => (await said(page)).sentence).toContain("6:1");
    expect(complaints).toEqual([]);
    await close();
  });

  it("reads whole without scripts: results and figure, no dead controls", async () => {
    const { page, close } = await open(browser, at("folder", "what-the-hand-feels"), { javaScriptEnabled: false });
    const shown = await said(page);
    expect(shown.sentence).toBe(livePanel("what-the-hand-feels").sentence);
    expect(shown.results).toHaveLength(livePanel("what-the-hand-feels").results.length);
    expect(await page.locator(".trial form").isVisible()).toBe(false);
    expect(await page.locator(".trial noscript").isVisible()).toBe(true);
    await close();
  });

  it("prints the numbers and the figure with the setting in words, without the controls", async () => {
    const { page, close } = await open(browser, at("folder", "what-the-hand-feels", "#try:wet=on"));
    await expect.poll(async () => page.locator(".trial .switch input").isChecked()).toBe(true);
    await page.emulateMedia({ media: "print" });
    for (const hidden of ["input", "button", ".units"]) {
      expect(await page.locator(`.trial form ${hidden} >> visible=true`).count(), hidden).toBe(0);
    }
    const words = page.locator(".trial form :is(label, legend, output) >> visible=true");
    const setting = (await words.allTextContents()).join(" ").replaceAll("\u00a0", " ");
    for (const word of ["Apparent wind", "12 kn", "8, coarse", "Wet"]) expect(setting).toContain(word);
    expect(setting).not.toContain("24");
    const told = page.locator(".trial .switch").evaluate((one) => getComputedStyle(one, "::after").content);
    expect(await told).toBe('"yes"');
    expect(await page.locator(".trial .sentence").isVisible()).toBe(true);
    await close();
  });

  it.concurrent.for(names)("%s: fits a phone, every control labelled", async (name, { expect }) => {
    const { page, close } = await open(browser, at("folder", name), { viewport: { width: 360, height: 740 } });
    expect(await pageWidth(page)).toBeLessThanOrEqual(360);
    await page.setViewportSize({ width: 320, height: 740 });
    expect(await pageWidth(page)).toBeLessThanOrEqual(320);
    const bare = await page
      .locator(".trial form :is(input, select):not([readonly])")
      .evaluateAll((all) => all.filter((one) => !(one as HTMLInputElement).labels?.length).length);
    expect(bare).toBe(0);
    await close();
  });

  it.each(["light", "dark"] as const)(
    "has no fault that a checker of accessibility finds, in the %s theme",
    async (scheme) => {
      const axe = await readFile(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
      const { page, close } = await open(browser, at("folder", "what-the-hand-feels"), {
        colorScheme: scheme,
        bypassCSP: true,
      });
      await page.addScriptTag({ content: axe });
      const faults = await page.evaluate(async () => {
        const run = (window as unknown as { axe: { run(place: string): Promise<{ violations: { id: string }[] }> } })
          .axe;
        return (await run.run(".trial")).violations.map(({ id }) => id);
      });
      expect(faults).toEqual([]);
      await close();
    },
  );
});
