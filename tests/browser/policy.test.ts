import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { describe, expect, it } from "vitest";
import { buildIn, figureWith, payloadOf } from "./attack-pages.js";
import { outside, visit } from "./attacks.js";
import { blank, chromiumPath, launch, settled } from "./chromium.js";

describe.skipIf(chromiumPath === undefined)("the policy of a page", () => {
  it.each(["folder", "single"])("forbids every request and every script that was not there (%s)", async (form) => {
    const [folder, out, browser] = [mkdtempSync(join(tmpdir(), "haulbook-policy-")), await outside(), await launch()];
    try {
      const { place } = await buildIn(folder, { shown: [figureWith("plain")] });
      for (const file of ["page", "index", "checks"]) {
        const path = join(place, form, `${file}.html`);
        // As if markup had got through everything before: only the policy stands between it and the reader.
        const forced = join(place, form, `${file}-forced.html`);
        writeFileSync(
          forced,
          readFileSync(path, "utf8").replace(/<main\b[^>]*>/u, (main) => `${main}${payloadOf(out.address)}`),
        );
        const { trouble } = await visit(browser, pathToFileURL(forced)).catch((error) => ({
          trouble: [String(error)],
        }));
        expect(trouble.filter((one) => /^(?:ran|dialog|window|went)/u.test(one))).toEqual([]);
        // The browser tells of a request before the policy stops it: what counts is that nothing arrives.
        expect(await out.taken(browser)).toEqual([]);
        expect(trouble.join("\n")).toContain("Content Security Policy");
        const page = await blank(browser);
        await page.goto(pathToFileURL(path).href);
        await page.evaluate(async (address) => {
          const put = (name: string, attributes: Record<string, string>) => {
            const made = document.createElement(name);
            for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, value);
            document.body.append(made);
            return made;
          };
          const attempts: (() => unknown)[] = [
            () => fetch(`${address}/fetch`),
            () => fetch(`${address}/no-cors`, { mode: "no-cors" }),
            () => {
              const request = new XMLHttpRequest();
              request.open("GET", `${address}/xhr`);
              request.send();
            },
            () => navigator.sendBeacon(`${address}/beacon`, "x"),
            () => new EventSource(`${address}/events`),
            () => new WebSocket(`${address.replace("http", "ws")}/socket`),
            () => new Worker(`${address}/worker`),
            () => put("script", { src: `${address}/script` }),
            () => put("img", { src: `${address}/img`, srcset: `${address}/srcset 2x` }),
            () => put("iframe", { src: `${address}/frame` }),
            () => put("object", { data: `${address}/object` }),
            () => put("embed", { src: `${address}/embed` }),
            () => put("video", { src: `${address}/video`, poster: `${address}/poster`, autoplay: "" }),
            () => put("link", { rel: "stylesheet", href: `${address}/style` }),
            () => put("link", { rel: "preload", as: "script", href: `${address}/preload` }),
            () => put("link", { rel: "prefetch", href: `${address}/prefetch` }),
            () => put("link", { rel: "manifest", href: `${address}/manifest` }),
            () => put("base", { href: address }),
            () => put("p", { style: `background: url(${address}/background)` }),
            () => {
              put("style", {}).textContent =
                `@import "${address}/import"; @font-face { font-family: f; src: url(${address}/font) } p { font-family: f }`;
            },
            () => {
              put("svg", {}).innerHTML = `<image href="${address}/image"/><use href="${address}/use#x"/>`;
            },
            () => {
              const form = put("form", { action: `${address}/form`, method: "post" }) as HTMLFormElement;
              form.submit();
            },
            () => {
              put("script", {}).textContent = "window.attacked = 'inline'";
            },
            () => {
              put("img", { src: "x:", onerror: "window.attacked = 'handler'" });
            },
            () => setTimeout("window.attacked = 'timer'", 0),
            () => put("a", { href: "javascript:window.attacked = 'link'" }).click(),
          ];
          for (const attempt of attempts) {
            try {
              await attempt();
            } catch {
              // Refused, as it must be.
            }
          }
        }, out.address);
        await settled(page);
        expect(await out.taken(browser), file).toEqual([]);
        expect(await page.evaluate(() => ("attacked" in window ? window.attacked : undefined)), file).toBeUndefined();
        await page.context().close();
      }
    } finally {
      await browser.close();
      out.close();
      rmSync(folder, { recursive: true, force: true });
    }
  });
});
