import { execFileSync } from "node:child_process";
import { existsSync } from "node:fs";
import { type Browser, type BrowserContextOptions, chromium, type Locator, type Page } from "playwright-core";

/** The first that is there: without the windows of a whole browser a page costs a third of the processor time. */
const commands = ["chromium-headless-shell", "chromium", "chromium-browser"];

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
  return commands.map(onPath).find((path) => path !== undefined);
}

/** Chromium of this machine: `CHROMIUM` names it, otherwise it is looked for. */
export const chromiumPath: string | undefined = found();

/** Why browser tests are left out; where they must run, they fail instead. */
export const missing = "no Chromium: install it, or name it in the environment variable CHROMIUM";

/** Longest time for what a test waits for in a page [ms]. */
const patience = 120_000;

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

/** A page of its own, with a size that a test may change. */
export async function blank(browser: Browser, options: BrowserContextOptions = {}): Promise<Page> {
  const context = await browser.newContext({ viewport: { width: 1280, height: 800 }, ...options });
  context.setDefaultTimeout(patience);
  return context.newPage();
}

/** Waits until a page has drawn what was asked of it before, and has worked off what that brought about. */
export function settled(page: Page): Promise<void> {
  return page.evaluate(async () => {
    for (let picture = 0; picture < 2; picture++) await new Promise((resolve) => requestAnimationFrame(resolve));
    await new Promise((resolve) => setTimeout(resolve));
  });
}

/** A page with everything that went wrong on it. */
export interface Watched {
  readonly page: Page;
  /** Errors of scripts, messages on the console, and requests for anything but files. */
  readonly complaints: string[];
  /** Files that the page has read, itself among them. */
  readonly files: URL[];
  close(): Promise<void>;
}

export async function open(browser: Browser, address: URL, options: BrowserContextOptions = {}): Promise<Watched> {
  const page = await blank(browser, options);
  const complaints: string[] = [];
  page.on("console", (message) => complaints.push(`${message.type()}: ${message.text()}`));
  page.on("pageerror", (error) => complaints.push(`error: ${error.message}`));
  const files: URL[] = [];
  page.on("request", (request) => {
    if (request.url().startsWith("file:")) files.push(new URL(request.url()));
    if (!/^(?:file|data|blob):/u.test(request.url())) complaints.push(`request: ${request.url()}`);
  });
  await page.goto(address.href);
  return { page, complaints, files, close: () => page.context().close() };
}

/** The drawing of each chart that the page shows: one of two arrangements. */
export function shownDrawings(page: Page): Locator {
  return page.locator(".chart svg.drawing:visible");
}

/** Curves and sets of points in each chart that the page shows. */
export function drawnCurves(page: Page): Promise<number[]> {
  return shownDrawings(page).evaluateAll((drawings) =>
    drawings.map((drawing) => drawing.querySelectorAll("[data-curve]").length),
  );
}

/** Asks for the chart to explore of a figure, and waits until it is drawn; answers with the curves in it. */
export async function explore(figure: Locator): Promise<number> {
  await figure.locator("button.explore").click();
  await figure.locator(".live svg.main-svg").first().waitFor({ state: "attached" });
  return figure.locator(".live .scatterlayer .trace").count();
}

/** Width that the page wants, beyond the window's when it would scroll sideways. */
export function pageWidth(page: Page): Promise<number> {
  return page.evaluate(() => document.scrollingElement?.scrollWidth ?? 0);
}
