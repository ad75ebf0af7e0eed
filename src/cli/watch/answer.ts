import { escapeHtml } from "../../notebook/escape.js";
import { pagePolicy, watchedPage } from "./page.js";
import { eventsAddress, scriptAddress, watchScript } from "./script.js";

/** What a browser asks. */
export interface Question {
  readonly method: string;
  /** As it stands in the request, still encoded. */
  readonly target: string;
  readonly host: string | undefined;
}

/** What it is told. */
export interface Answer {
  readonly status: number;
  readonly headers: Readonly<Record<string, string>>;
  readonly body: string | Uint8Array;
  /** Whether the answer stays open and goes on telling. */
  readonly stream?: true;
}

/** What may be shown. */
export interface Site {
  /** Names under which the server answers, with their port. */
  readonly hosts: readonly string[];
  /** Bytes of a file in the folder by the parts of its path; nothing where there is none, or where it lies elsewhere. */
  readonly find: (folder: string, parts: readonly string[]) => Promise<Uint8Array | undefined>;
  readonly folder: string;
  /** What the pages that are shown now are known by. */
  readonly mark: () => string;
}

const types: Readonly<Record<string, string>> = {
  css: "text/css; charset=utf-8",
  csv: "text/csv; charset=utf-8",
  html: "text/html; charset=utf-8",
  js: "text/javascript; charset=utf-8",
  json: "application/json; charset=utf-8",
  png: "image/png",
  svg: "image/svg+xml",
  txt: "text/plain; charset=utf-8",
};

/** Other sites can neither read nor frame what is shown here, and nothing is taken for what it is not. */
const always = {
  "Cache-Control": "no-store",
  "Cross-Origin-Opener-Policy": "same-origin",
  "Cross-Origin-Resource-Policy": "same-origin",
  "Referrer-Policy": "no-referrer",
  "X-Content-Type-Options": "nosniff",
  "X-Frame-Options": "DENY",
};

/** Nothing runs in what is no page, even when it is opened by itself. */
const quiet = "default-src 'none'; style-src 'unsafe-inline'; sandbox; frame-ancestors 'none'";

function answer(status: number, type: string, body: Answer["body"], more: Answer["headers"] = {}): Answer {
  return { status, headers: { ...always, "Content-Type": type, "Content-Security-Policy": quiet, ...more }, body };
}

const refused = (status: number, text: string, more?: Answer["headers"]) =>
  answer(status, "text/plain; charset=utf-8", `${text}\n`, more);

/** The parts of a path; nothing for one that is broken, leads upwards, or names what is hidden. */
function partsOf(target: string): readonly string[] | undefined {
  const path = target.split(/[?#]/u, 1)[0] ?? "";
  if (!path.startsWith("/")) return undefined;
  if (path === "/") return ["index.html"];
  let parts: string[];
  try {
    parts = path.slice(1).split("/").map(decodeURIComponent);
  } catch {
    return undefined;
  }
  // A colon names a drive or a second stream of a file where there are such things.
  return parts.every((part) => part !== "" && !part.startsWith(".") && !/[/\\:\p{Cc}]/u.test(part)) ? parts : undefined;
}

/** A page by which a browser waits for one that is not there. */
function waitingPage(name: string): string {
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<title>Not there yet</title>
</head>
<body>
<p>There is no page ${escapeHtml(name)} yet. It opens here as soon as it is built.</p>
</body>
</html>
`;
}

/**
 * What a browser is told by the server of a watch.
 *
 * @param question  method, target and host of the request
 * @param site  what may be shown
 * @returns status, headers and body; never anything from outside the folder
 * Example: (await answerTo({ method: "GET", target: "/", host: "127.0.0.1:4711" }, site)).status → 200
 */
export async function answerTo({ method, target, host }: Question, site: Site): Promise<Answer> {
  const name = host?.toLowerCase();
  // A name of somebody else's that leads here would let their pages read these.
  if (name === undefined || !site.hosts.includes(name)) return refused(403, `Only ${site.hosts[0]} is answered here.`);
  if (method !== "GET" && method !== "HEAD") return refused(405, "Pages can only be read.", { Allow: "GET, HEAD" });
  if (target === scriptAddress) return answer(200, types.js ?? "", watchScript);
  if (target === eventsAddress) return { ...answer(200, "text/event-stream", ""), stream: true };
  const parts = partsOf(target);
  const last = parts?.at(-1);
  if (parts === undefined || last === undefined) return refused(404, "There is no such page.");
  const type = types[/\.([a-z]+)$/u.exec(last)?.[1] ?? ""];
  const mark = site.mark();
  const found = await site.find(site.folder, parts);
  if (type === types.html) {
    const text = found === undefined ? waitingPage(parts.join("/")) : new TextDecoder().decode(found);
    const page = watchedPage(text, { host: name, mark });
    return answer(found === undefined ? 404 : 200, type ?? "", page, {
      "Content-Security-Policy": `${pagePolicy(text, name)}; frame-ancestors 'none'`,
    });
  }
  if (found === undefined) return refused(404, "There is no such file.");
  if (type === undefined)
    return answer(200, "application/octet-stream", found, { "Content-Disposition": "attachment" });
  return answer(200, type, found);
}
