import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { chromium } from "playwright-core";

const root = fileURLToPath(new URL("../..", import.meta.url));
const slower = 4;
const moves = 60;
const share = 0.95;
const executablePath = process.env.CHROMIUM ?? "/usr/bin/chromium";
const args = ["--no-sandbox", "--disable-gpu", "--disable-background-networking", "--no-first-run", "--disable-sync"];

/** Moves of a slider on every live panel, with a processor made four times slower: the 95th percentile of the slowest model. */
export async function panelRow() {
  const row = {
    name: `redraw of a live panel, ${slower}x slower, 95th percentile`,
    baseline: null,
    ratio: null,
    unit: "ms",
  };
  if (!existsSync(executablePath)) return { ...row, ours: Number.NaN, note: "no Chromium here" };
  const { liveModels } = await import(pathToFileURL(join(root, "dist", "live", "models.js")).href);
  const folder = mkdtempSync(join(tmpdir(), "haulbook-bench-"));
  const browser = await chromium.launch({ executablePath, args });
  try {
    const measured = [];
    for (const { name } of liveModels) measured.push({ name, ...(await measure(browser, await pageOf(name, folder))) });
    const slowest = measured.reduce((worst, one) => (one.redraw > worst.redraw ? one : worst));
    const each = measured.map(
      ({ name, redraw, paint }) => `${name} ${redraw.toFixed(0)} (first paint ${paint.toFixed(0)})`,
    );
    return { ...row, ours: slowest.redraw, note: each.join(", ") };
  } finally {
    await browser.close();
    rmSync(folder, { recursive: true, force: true });
  }
}

/** A page with the panel of a model, in a single file. */
async function pageOf(name, folder) {
  const from = (path) => import(pathToFileURL(join(root, "dist", path)).href);
  const [{ livePanel }, { reportPage }] = [await from("live/panel.js"), await from("report/reportpage.js")];
  const cells = [
    { type: "markdown", number: 1, source: "# How hard do I have to hold?" },
    {
      type: "code",
      number: 2,
      source: "",
      outputs: [{ kind: "answer", text: "As hard as the panel says." }, livePanel(name)],
    },
  ];
  const inlinePanel = readFileSync(join(root, "dist", "page", "bundles", `${name}.js`), "utf8");
  const path = join(folder, `${name}.html`);
  writeFileSync(path, reportPage({ name, cells }, { inlinePlotly: "", inlinePanel }));
  return pathToFileURL(path).href;
}

async function measure(browser, address) {
  const page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
  const session = await page.context().newCDPSession(page);
  await session.send("Emulation.setCPUThrottlingRate", { rate: slower });
  await page.goto(address);
  const times = await page.evaluate(async (count) => {
    const slider = document.querySelector(".trial input[type=range]");
    const [least, most, step] = [slider.min, slider.max, slider.step].map(Number);
    const steps = Math.round((most - least) / step);
    const pictured = () => new Promise((resolve) => requestAnimationFrame(resolve));
    const found = [];
    for (let move = 0; move < count; move++) {
      await pictured();
      slider.value = String(least + step * ((7 * (move + 1)) % (steps + 1)));
      const start = performance.now();
      slider.dispatchEvent(new Event("input", { bubbles: true }));
      // The panel asked for the next picture first; it has computed and drawn when this one is called. The layout is asked for.
      const drawnAt = await new Promise((resolve) => {
        requestAnimationFrame((began) => {
          void document.querySelector(".trial figure").getBoundingClientRect();
          resolve({ began, ended: performance.now() });
        });
      });
      found.push(drawnAt.ended - Math.max(start, drawnAt.began));
    }
    return found;
  }, moves);
  const paint = await page.evaluate(() => performance.getEntriesByName("first-contentful-paint")[0]?.startTime ?? 0);
  await page.close();
  times.sort((one, other) => one - other);
  return { redraw: times[Math.ceil(share * times.length) - 1], paint };
}
