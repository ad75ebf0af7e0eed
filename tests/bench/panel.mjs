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

/** Moves of a slider on every live panel: four times the processor time of a redraw, the 95th percentile of the slowest model. */
export async function panelRow() {
  const row = {
    name: `redraw of a live panel, ${slower} times its processor time, 95th percentile`,
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

/** Redraws by the processor time of the page's thread, so that what other programs take of the machine does not count. */
async function measure(browser, address) {
  const { page, session } = await opened(browser);
  await page.goto(address);
  await session.send("Performance.enable", { timeDomain: "threadTicks" });
  const busy = async () => {
    const { metrics } = await session.send("Performance.getMetrics");
    return 1000 * metrics.find(({ name }) => name === "TaskDuration").value;
  };
  const times = [];
  for (let number = 0; number < moves; number++) {
    const before = await busy();
    await page.evaluate(move, number);
    times.push(slower * ((await busy()) - before));
  }
  await page.close();
  times.sort((one, other) => one - other);
  return { redraw: times[Math.ceil(share * times.length) - 1], paint: await firstPaint(browser, address) };
}

/** Time from the beginning of loading to the first picture, with a processor made slower by the browser itself. */
async function firstPaint(browser, address) {
  const { page, session } = await opened(browser);
  await session.send("Emulation.setCPUThrottlingRate", { rate: slower });
  await page.goto(address);
  const paint = await page.evaluate(async () => {
    const painted = () => performance.getEntriesByName("first-contentful-paint")[0];
    while (painted() === undefined) await new Promise((resolve) => setTimeout(resolve, 20));
    return painted().startTime;
  });
  await page.close();
  return paint;
}

async function opened(browser) {
  const page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
  return { page, session: await page.context().newCDPSession(page) };
}

/** In the page: moves the first slider and waits until everything is computed, drawn and laid out. */
async function move(number) {
  const slider = document.querySelector(".trial input[type=range]");
  const [least, most, step] = [slider.min, slider.max, slider.step].map(Number);
  const steps = Math.round((most - least) / step);
  slider.value = String(least + step * ((7 * (number + 1)) % (steps + 1)));
  slider.dispatchEvent(new Event("input", { bubbles: true }));
  for (let picture = 0; picture < 2; picture++) await new Promise((resolve) => requestAnimationFrame(resolve));
}
