import { execFileSync } from "node:child_process";
import { existsSync } from "node:fs";
import { type Browser, type BrowserContextOptions, chromium, type Page } from "playwright-core";

const commands = ["chromium", "chromium-browser"];

function onPath(command: string): string | undefined {
  try {
    return execFileSync("which", [command], { encoding: "utf8" }).trim() || undefined;
  } catch {
    return undefined;
  }
}

function found(): string | undefined {
  const named = process.env.CHROMIUM;
  if (named) return existsSync(named) ? named : undefined;
  return existsSync("/usr/bin/chromium")
    ? "/usr/bin/chromium"
    : commands.map(onPath).find((path) => path !== undefined);
}

/** Chromium of this machine: `CHROMIUM` names it, otherwise it is looked for. */
export const chromiumPath: string | undefined = found();

/** Why browser tests are left out; where they must run, they fail instead. */
export const missing = "no Chromium: install it, or name it in the environment variable CHROMIUM";

export function launch(): Promise<Browser> {
  if (chromiumPath === undefined) throw new Error(missing);
  return chromium.launch({
    executablePath: chromiumPath,
    args: [
      "--no-sandbox",
      "--disable-gpu",
      "--disable-background-networking",
      "--disable-component-update",
      "--no-first-run",
      "--disable-sync",
    ],
  });
}

/** A page with everything that went wrong on it. */
export interface Watched {
  readonly page: Page;
  /** Errors of scripts, messages on the console, and requests for anything but files. */
  readonly complaints: string[];
  close(): Promise<void>;
}

export async function open(browser: Browser, address: URL, options: BrowserContextOptions = {}): Promise<Watched> {
  const context = await browser.newContext({ viewport: { width: 1280, height: 800 }, ...options });
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on("console", (message) => complaints.push(`${message.type()}: ${message.text()}`));
  page.on("pageerror", (error) => complaints.push(`error: ${error.message}`));
  page.on("request", (request) => {
    if (!/^(?:file|data|blob):/u.test(request.url())) complaints.push(`request: ${request.url()}`);
  });
  await page.goto(address.href);
  return { page, complaints, close: () => context.close() };
}

/** Brings each chart into view until it is drawn; answers with the curves in each. */
export async function drawnCurves(page: Page): Promise<number[]> {
  const charts = page.locator(".chart");
  const curves: number[] = [];
  for (let index = 0; index < (await charts.count()); index++) {
    const chart = charts.nth(index);
    await chart.scrollIntoViewIfNeeded();
    await chart.locator("svg.main-svg").first().waitFor({ state: "attached", timeout: 15_000 });
    curves.push(await chart.locator(".scatterlayer .trace").count());
  }
  return curves;
}

/** Width that the page wants, beyond the window's when it would scroll sideways. */
export function pageWidth(page: Page): Promise<number> {
  return page.evaluate(() => document.scrollingElement?.scrollWidth ?? 0);
}
