import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import type { Browser } from "playwright-core";
import { expect } from "vitest";
import { blank, settled } from "./chromium.js";

/** A place outside that counts who asks. */
export interface Outside {
  readonly address: string;
  /** What was asked for, and forgets it. The browser asks once more, as any page may: what it asked before has arrived by then. */
  taken(browser: Browser): Promise<readonly string[]>;
  close(): void;
}

export async function outside(): Promise<Outside> {
  let asked: string[] = [];
  const server: Server = createServer((request, response) => {
    asked.push(request.url ?? "");
    response.writeHead(200, { "Content-Type": "text/javascript", "Access-Control-Allow-Origin": "*" });
    response.end("window.attacked = 'from outside';");
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const address = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
  const last = ["/last", "/favicon.ico"];
  return {
    address,
    taken: async (browser) => {
      const page = await blank(browser);
      await page.goto(`${address}/last`);
      await page.context().close();
      expect(asked).toContain("/last");
      const all = asked.filter((one) => !last.includes(one));
      asked = [];
      return all;
    },
    close: () => {
      server.closeAllConnections();
      server.close();
    },
  };
}

/** What became of a page that was opened, read, unfolded, pointed at and clicked. */
export interface Aftermath {
  /** Whatever ran, asked, or complained. */
  readonly trouble: readonly string[];
  readonly text: string;
  /** Addresses of all links, as they are written. */
  readonly links: readonly string[];
  readonly title: string;
}

/** Opens a page as a curious reader does. */
export async function visit(browser: Browser, address: URL): Promise<Aftermath> {
  const page = await blank(browser);
  const trouble: string[] = [];
  const folder = new URL(".", address).href;
  page.on("dialog", (dialog) => {
    trouble.push(`dialog: ${dialog.message()}`);
    void dialog.dismiss();
  });
  page.on("console", (message) => trouble.push(`console: ${message.text()}`));
  page.on("pageerror", (error) => trouble.push(`error: ${error.message}`));
  page.on("popup", (popup) => trouble.push(`window: ${popup.url()}`));
  page.on("request", (request) => {
    const url = request.url();
    if (!url.startsWith(folder) && !/^(?:data:image|blob:)/u.test(url)) trouble.push(`request: ${url}`);
  });
  await page.goto(address.href);
  await page.locator("details").evaluateAll((all) => {
    for (const one of all) one.setAttribute("open", "");
  });
  const figures = page.locator("figure");
  for (let index = 0; index < (await figures.count()); index++) {
    const figure = figures.nth(index);
    await figure.scrollIntoViewIfNeeded();
    const explore = figure.locator("button.explore:visible");
    const explored = (await explore.count()) > 0;
    if (explored) await explore.first().click();
    const chart = figure.locator(explored ? "svg.main-svg" : "svg:visible").first();
    await chart.waitFor({ state: "attached" });
    const box = await chart.boundingBox();
    for (const share of box === null ? [] : [0.3, 0.5, 0.7])
      await page.mouse.move(box!.x + box!.width * share, box!.y + box!.height / 2);
  }
  const search = page.locator("input[type=search]:visible");
  if ((await search.count()) > 0) {
    await search.first().fill("attacked");
    await page.getByRole("status").filter({ hasText: /./u }).waitFor();
  }
  // What waits for a pointer, a focus or a key gets it.
  await page.evaluate(() => {
    for (const one of document.querySelectorAll("main *")) {
      for (const kind of [
        "mouseover",
        "mouseenter",
        "focus",
        "pointerdown",
        "toggle",
        "load",
        "error",
        "animationstart",
      ])
        one.dispatchEvent(new Event(kind));
    }
  });
  await settled(page);
  const found = await page.evaluate(() => ({
    text: document.documentElement.textContent ?? "",
    links: Array.from(document.querySelectorAll("*"), (one) => [
      one.getAttribute("href"),
      one.getAttribute("xlink:href"),
      one.getAttribute("action"),
      one.getAttribute("formaction"),
    ]).flatMap((list) => list.filter((one) => one !== null)),
    attacked: "attacked" in window ? String(window.attacked) : undefined,
    handlers: Array.from(document.querySelectorAll("*"))
      .flatMap((one) => one.getAttributeNames().map((name) => `${one.localName} ${name}`))
      .filter((name) => / on/u.test(name)),
    foreign: Array.from(
      document.querySelectorAll("iframe, object, embed, base, form[action], meta[http-equiv=refresh]"),
      (one) => one.localName,
    ),
    title: document.title,
  }));
  if (found.attacked !== undefined) trouble.push(`ran: ${found.attacked}`);
  trouble.push(...found.handlers.map((one) => `handler: ${one}`), ...found.foreign.map((one) => `element: ${one}`));
  if (page.url() !== address.href) trouble.push(`went to ${page.url()}`);
  await page.context().close();
  const { text, links, title } = found;
  return { trouble, text, links, title };
}
