import { execFileSync } from "node:child_process";
import { existsSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { chromium } from "playwright-core";

const root = fileURLToPath(new URL("../..", import.meta.url));
const program = join(root, "dist", "cli", "main.js");
const slower = 4;
const moves = 120;
const share = 0.95;
const executablePath = process.env.CHROMIUM ?? "/usr/bin/chromium";
const args = ["--no-sandbox", "--disable-gpu", "--disable-background-networking", "--no-first-run", "--disable-sync"];

/** A page whose slider only writes its number: what any answer to a slider takes in this browser, and its first picture. */
const plainPage = `<!doctype html><meta charset="utf-8"><title>Plain</title>
<figure class="picture"><svg class="drawing" width="800" height="300"><path d="M0 300L800 0" stroke="black"/></svg></figure>
<div class="trial"><input type="range" min="0" max="100" step="1"><p>0</p></div>
<script>
const [slider, shown] = document.querySelectorAll("input, p");
slider.addEventListener("input", () => requestAnimationFrame(() => { shown.textContent = slider.value; }));
</script>
`;

/**
 * Report pages with a live panel in a browser that slows its own processor down four times: the time to the first chart,
 * and from the event of a slider to the end of the frame that shows its answer; beside a page that does next to nothing.
 */
export async function panelRows() {
  const rows = [
    { name: `first chart, processor ${slower} times slower, slowest page with a panel`, unit: "ms" },
    { name: `answer to a slider, processor ${slower} times slower, 95th percentile, slowest panel`, unit: "ms" },
  ];
  if (!existsSync(executablePath))
    return rows.map((row) => ({ ...row, ours: Number.NaN, baseline: null, ratio: null, note: "no Chromium here" }));
  const { liveModels } = await import(pathToFileURL(join(root, "dist", "live", "models.js")).href);
  const names = liveModels.map(({ name }) => name);
  const folder = mkdtempSync(join(tmpdir(), "haulbook-bench-"));
  const browser = await chromium.launch({ executablePath, args });
  try {
    execFileSync(process.execPath, [program, "reports", ...names, "--output", folder], { cwd: root, stdio: "pipe" });
    writeFileSync(join(folder, "plain.html"), plainPage);
    const plain = await measure(browser, folder, "plain");
    const measured = [];
    for (const model of names) measured.push(await measure(browser, folder, pageWith(model, folder)));
    return ["chart", "answer"].map((what, index) => {
      const ours = Math.max(...measured.map((one) => one[what]));
      const each = measured.map((one) => `${one.name} ${words(one, what)}`).join(", ");
      return { ...rows[index], ours, baseline: plain[what], ratio: ours / plain[what], note: `a plain page; ${each}` };
    });
  } finally {
    await browser.close();
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Name of a page with a model: a notebook that is run with several files makes several pages. */
function pageWith(model, folder) {
  const pages = readdirSync(folder).filter((file) => file.endsWith(".html"));
  return pages.map((file) => file.slice(0, -5)).find((name) => name === model || name.startsWith(`${model}-`));
}

/** A time, and for an answer four times the processor time that it takes, which a busy machine does not lengthen. */
function words(one, what) {
  const time = one[what].toFixed(0);
  return what === "answer" ? `${time} (its processor time ${one.processor.toFixed(0)})` : time;
}

async function opened(browser, address) {
  const page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
  const session = await page.context().newCDPSession(page);
  await session.send("Emulation.setCPUThrottlingRate", { rate: slower });
  await page.addInitScript(awaitChart);
  await page.goto(address);
  return { page, session, chart: await page.evaluate(() => window.firstChart) };
}

async function firstChart(browser, address) {
  const { page, chart } = await opened(browser, address);
  await page.close();
  return chart;
}

async function measure(browser, folder, name) {
  const address = pathToFileURL(join(folder, `${name}.html`)).href;
  const { page, session, chart } = await opened(browser, address);
  await page.locator(".trial").scrollIntoViewIfNeeded();
  await page.waitForTimeout(500);
  const answer = percentile(await page.evaluate(moveSlider, { first: 0, count: moves }));
  await session.send("Emulation.setCPUThrottlingRate", { rate: 1 });
  const processor = slower * percentile(await busyTimes(page, session));
  await page.close();
  return { name, chart: Math.min(chart, await firstChart(browser, address)), answer, processor };
}

/** Processor time of the page's thread for each move [ms]: what other programs take of the machine does not count. */
async function busyTimes(page, session) {
  await session.send("Performance.enable", { timeDomain: "threadTicks" });
  const busy = async () => {
    const { metrics } = await session.send("Performance.getMetrics");
    return 1000 * metrics.find(({ name }) => name === "TaskDuration").value;
  };
  const times = [];
  for (let first = 0; first < moves; first++) {
    const before = await busy();
    await page.evaluate(moveSlider, { first, count: 1 });
    times.push((await busy()) - before);
  }
  return times;
}

function percentile(times) {
  const sorted = times.toSorted((one, other) => one - other);
  return sorted[Math.ceil(share * sorted.length) - 1];
}

/** In the page, from its beginning: promises when the first chart is painted [ms]. */
function awaitChart() {
  window.firstChart = new Promise((resolve) => {
    const look = () => {
      const drawings = [...document.querySelectorAll(".picture svg.drawing")];
      if (drawings.some((drawing) => drawing.getBoundingClientRect().height > 0))
        setTimeout(() => resolve(performance.now()));
      else requestAnimationFrame(look);
    };
    requestAnimationFrame(look);
  });
}

/** In the page: moves the first slider again and again; each time until the task behind the frame that shows the answer [ms]. */
async function moveSlider({ first, count }) {
  const slider = document.querySelector(".trial input[type=range]");
  const [least, most, step] = [slider.min, slider.max, slider.step].map(Number);
  const steps = Math.round((most - least) / step);
  const behindFrame = () =>
    new Promise((resolve) => {
      requestAnimationFrame(() => {
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = resolve;
        port2.postMessage(undefined);
      });
    });
  const times = [];
  for (let number = first; number < first + count; number++) {
    slider.value = String(least + step * ((7 * (number + 1)) % (steps + 1)));
    const start = performance.now();
    slider.dispatchEvent(new Event("input", { bubbles: true }));
    await behindFrame();
    times.push(performance.now() - start);
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
  return times;
}
