import { execFileSync } from "node:child_process";
import { link, mkdir, mkdtemp, realpath, rm, symlink, writeFile } from "node:fs/promises";
import { request } from "node:http";
import { connect } from "node:net";
import { networkInterfaces, tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { fileBelow } from "../../src/cli/watch/file-below.js";
import type { Served } from "../../src/cli/watch/live.js";
import { pagePolicy, watchedPage } from "../../src/cli/watch/page.js";
import { serveSite } from "../../src/cli/watch/server.js";
import { documentHtml } from "../../src/report/document.js";

let base = "";
let served: Served;
let port = 0;
const page = documentHtml({ title: "Hold", description: "", body: "", charts: true, inline: false });

beforeAll(async () => {
  base = await realpath(await mkdtemp(join(tmpdir(), "haulbook-watch-")));
  const folder = join(base, "pages");
  for (const name of ["pages/assets", "pages/.runs", "pages/data", "pages-beside", "outside"])
    await mkdir(join(base, name), { recursive: true });
  await writeFile(join(folder, "index.html"), page);
  await writeFile(join(folder, "a b.html"), "<p>plain</p>");
  await writeFile(join(folder, "assets/page.css"), "p{}");
  await writeFile(join(folder, "picture.svg"), "<svg/>");
  await writeFile(join(folder, "tool.exe"), "MZ");
  for (const name of ["pages/.runs/hold.run", "pages/.hidden", "outside/secret.txt", "pages-beside/secret.txt"])
    await writeFile(join(base, name), "SECRET");
  await symlink(join(base, "outside", "secret.txt"), join(folder, "out.txt"));
  await symlink(join(base, "outside"), join(folder, "way"));
  await symlink(join(folder, ".runs", "hold.run"), join(folder, "in.txt"));
  await symlink(join(folder, "loop"), join(folder, "loop"));
  await symlink(join(folder, "assets", "page.css"), join(folder, "same.css"));
  execFileSync("mkfifo", [join(folder, "pipe.txt")]);
  served = await serveSite({
    port: 0,
    site: { folder, find: fileBelow, mark: () => "session.3" },
    state: () => '{"now":1}',
  });
  port = Number(new URL(served.address).port);
});
afterAll(async () => {
  await served?.close();
  await rm(base, { recursive: true, force: true });
});

interface Asked {
  readonly method?: string;
  readonly host?: string;
  readonly headers?: Record<string, string>;
}

/** Asks for a target exactly as it is written. */
function ask(path: string, { method = "GET", host = `127.0.0.1:${port}`, headers = {} }: Asked = {}) {
  return new Promise<{ status: number; headers: Record<string, unknown>; body: string }>((done, fail) => {
    const asked = request({ host: "127.0.0.1", port, path, method, headers: { host, ...headers } }, (response) => {
      let body = "";
      response.setEncoding("utf8");
      response.on("data", (text: string) => {
        body += text;
      });
      response.on("end", () => done({ status: response.statusCode ?? 0, headers: response.headers, body }));
    });
    asked.on("error", fail);
    asked.end();
  });
}

/** Sends bytes that no client would send, and answers with what comes back. */
function raw(text: string) {
  return new Promise<string>((done) => {
    let back = "";
    const socket = connect(port, "127.0.0.1", () => socket.write(text));
    socket.setEncoding("utf8");
    socket.on("data", (part: string) => {
      back += part;
    });
    socket.on("close", () => done(back));
    socket.on("error", () => done(back));
  });
}

describe("the server of a watch", () => {
  it("shows pages and what lies beside them", async () => {
    expect(await ask("/")).toMatchObject({ status: 200, headers: { "content-type": "text/html; charset=utf-8" } });
    expect((await ask("/index.html?a#b")).body).toContain("<title>Hold</title>");
    expect((await ask("/a%20b.html")).body).toContain("<p>plain</p>");
    expect(await ask("/assets/page.css")).toMatchObject({ status: 200, body: "p{}" });
    expect((await ask("/same.css")).body).toBe("p{}");
    expect((await ask("/tool.exe")).headers).toMatchObject({
      "content-type": "application/octet-stream",
      "content-disposition": "attachment",
    });
    expect((await ask("/", { host: `localhost:${port}` })).status).toBe(200);
  });

  it("answers a HEAD without a body", async () => {
    const { status, headers, body } = await ask("/", { method: "HEAD" });
    expect({ status, body }).toEqual({ status: 200, body: "" });
    expect(Number(headers["content-length"])).toBeGreaterThan(page.length);
    expect((await ask("/~watch/events", { method: "HEAD" })).body).toBe("");
  });

  it("listens on no other address of this machine", async () => {
    const others = Object.values(networkInterfaces())
      .flatMap((list) => list ?? [])
      .filter(({ internal, family }) => !internal && family === "IPv4")
      .map(({ address }) => address);
    for (const host of [...others, "127.0.0.2"]) {
      const code = await new Promise((done) => {
        const socket = connect({ host, port, timeout: 60_000 }, () => done("open"));
        socket.on("error", (error: NodeJS.ErrnoException) => done(error.code));
        socket.on("timeout", () => done("no answer"));
      });
      expect(code, host).not.toBe("open");
    }
  });

  it.each([
    "evil.example",
    "evil.example:80",
    "127.0.0.1",
    "127.0.0.1:1",
    "127.0.0.1.evil.example",
    "localhost.evil.example",
    "[::1]",
    "0.0.0.0",
  ])("answers to no other name: %j", async (host) => {
    for (const path of ["/", "/~watch/events", "/~watch/page.js"]) {
      const { status, body } = await ask(path, { host: host.endsWith("example") ? `${host}:${port}` : host });
      expect(status).toBe(403);
      expect(body).not.toContain("Hold");
    }
  });

  it.each(["POST", "PUT", "DELETE", "PATCH", "OPTIONS", "TRACE", "PROPFIND"])("refuses %s", async (method) => {
    expect(await ask("/", { method })).toMatchObject({ status: 405, headers: { allow: "GET, HEAD" } });
  });

  it.each([
    "/../outside/secret.txt",
    "/../pages-beside/secret.txt",
    "/assets/../../outside/secret.txt",
    "/%2e%2e/outside/secret.txt",
    "/.%2e/outside/secret.txt",
    "/%2e%2e%2foutside%2fsecret.txt",
    "/..%2foutside/secret.txt",
    "/..%5coutside%5csecret.txt",
    "/..\\outside\\secret.txt",
    "/%252e%252e/outside/secret.txt",
    "/..%c0%afoutside/secret.txt",
    "/%c0%ae%c0%ae/outside/secret.txt",
    "//outside/secret.txt",
    "/out.txt",
    "/way/secret.txt",
    "/in.txt",
    "/loop",
    "/pipe.txt",
    "/.runs/hold.run",
    "/%2eruns/hold.run",
    "/assets/../.runs/hold.run",
    "/.hidden",
    "/assets",
    "/assets/",
    "/data/",
    "/index.html/",
    "/index.html%00.txt",
    "/index.html::$DATA",
    "/C:/windows/win.ini",
    "/%",
    "/%zz",
    `/${"a".repeat(5000)}`,
  ])("shows nothing at %s", async (path) => {
    const { status, body } = await ask(path);
    expect(status).toBe(404);
    expect(body).not.toContain("SECRET");
    expect(body).not.toContain(base);
  });

  it("shows nothing to requests that no browser sends", async () => {
    for (const target of [
      `${join(base, "outside", "secret.txt")}`,
      "*",
      `http://127.0.0.1:${port}/.hidden`,
      "../outside/secret.txt",
    ]) {
      const back = await raw(`GET ${target} HTTP/1.1\r\nHost: 127.0.0.1:${port}\r\nConnection: close\r\n\r\n`);
      expect(back, target).toMatch(/^HTTP\/1\.1 40[04] /u);
      expect(back).not.toContain("SECRET");
    }
    expect(await raw("GET / HTTP/1.0\r\n\r\n")).toMatch(/^HTTP\/1\.1 403 /u);
    expect(await raw("GET / HTTP/1.1\r\n\r\n")).toMatch(/^HTTP\/1\.1 400 /u);
    expect(await raw(`CONNECT evil.example:80 HTTP/1.1\r\nHost: 127.0.0.1:${port}\r\n\r\n`)).not.toContain("200");
    expect(await ask("/")).toMatchObject({ status: 200 });
  });

  it("lets no other site read or frame anything, and nothing run that is no page", async () => {
    for (const path of ["/", "/picture.svg", "/assets/page.css", "/none", "/~watch/page.js", "/none.html"]) {
      const { headers } = await ask(path, { headers: { origin: "http://evil.example" } });
      expect(headers, path).toMatchObject({
        "cache-control": "no-store",
        "cross-origin-resource-policy": "same-origin",
        "x-content-type-options": "nosniff",
        "x-frame-options": "DENY",
      });
      expect(headers).not.toHaveProperty("access-control-allow-origin");
      expect(headers["content-security-policy"]).toMatch(/^default-src 'none';.*frame-ancestors 'none'$/u);
    }
    expect((await ask("/picture.svg")).headers["content-security-policy"]).toContain("sandbox");
  });

  it("tells an open page at once and whenever something happens, and ends with all that is open", async () => {
    const own = await serveSite({
      port: 0,
      site: { folder: base, find: fileBelow, mark: () => "" },
      state: () => "first",
    });
    const said: string[] = [];
    const ended = new Promise<void>((done) => {
      request(`${own.address}~watch/events`, (response) => {
        response.setEncoding("utf8");
        response.on("data", (text: string) => {
          said.push(text);
          if (said.length === 1) own.tell("second");
          else void own.close();
        });
        response.on("error", () => {});
        response.on("close", done);
      }).end();
    });
    await ended;
    expect(said).toEqual(["data: first\n\n", "data: second\n\n"]);
    await expect(fetch(own.address)).rejects.toThrow();
  });

  it("says so when its port is taken", async () => {
    const again = serveSite({ port, site: { folder: base, find: fileBelow, mark: () => "" }, state: () => "" });
    await expect(again).rejects.toThrow(`Port ${port} cannot be used: something else listens there.`);
  });
});

describe("a page that is served", () => {
  const host = "127.0.0.1:4711";

  it("may ask for nothing but its own files and the watch", () => {
    const policy = pagePolicy(page, host).split("; ");
    expect(policy).toContain("default-src 'none'");
    expect(policy).toContain(`connect-src http://${host}/~watch/events`);
    expect(policy).toContain(`script-src 'self' http://${host}/~watch/page.js`);
    expect(policy.join()).not.toMatch(/file:|\*|unsafe-eval/u);
    const single = documentHtml({
      title: "",
      description: "",
      body: "",
      charts: true,
      inline: true,
      inlinePlotly: "1",
    });
    const scripts = pagePolicy(single, host)
      .split("; ")
      .find((one) => one.startsWith("script-src"));
    expect(scripts).toMatch(/^script-src (?:'sha256-[\w+/=]+' )+http:\/\/127\.0\.0\.1:4711\/~watch\/page\.js$/u);
    const still = documentHtml({ title: "", description: "", body: "", charts: false, inline: true });
    expect(pagePolicy(still, host)).toContain(`script-src http://${host}/~watch/page.js;`);
    expect(pagePolicy("<p>no policy</p>", host)).toMatch(/^default-src 'none'; script-src 'self' /u);
  });

  it("carries the script once, and is otherwise as it stands on the disk", () => {
    const shown = watchedPage(page, { host, mark: 'a"<.1' });
    expect(shown.match(/~watch\/page\.js" data-mark/gu)).toHaveLength(1);
    expect(shown).toContain('data-mark="a&quot;&lt;.1"');
    const bare = (text: string) =>
      text.replace(/<script src="\/~watch[^>]*><\/script>\n?/u, "").replace(/(Security-Policy" content=")[^"]*/u, "$1");
    expect(bare(shown).replace(/">\n\n/u, '">\n')).toBe(bare(page).replace(/">\n\n/u, '">\n'));
    expect(watchedPage("<p>$& $1</p>", { host, mark: "a.1" })).toMatch(/^<script [^>]*><\/script>\n<p>\$& \$1<\/p>$/u);
  });
});

it("a second name of a file in the folder is that file", async () => {
  await link(join(base, "pages", "assets", "page.css"), join(base, "pages", "twin.css"));
  expect((await ask("/twin.css")).body).toBe("p{}");
});
