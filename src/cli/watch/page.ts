import { escapeHtml } from "../../notebook/escape.js";
import { eventsAddress, scriptAddress } from "./script.js";

/** What a page may do that brings no policy of its own. */
const usualPolicy =
  "default-src 'none'; script-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data: blob:; base-uri 'none'; form-action 'none'";

const policyTag = /<meta http-equiv="Content-Security-Policy" content="([^"]*)">/u;

const spelled: Readonly<Record<string, string>> = {
  "&#39;": "'",
  "&quot;": '"',
  "&lt;": "<",
  "&gt;": ">",
  "&amp;": "&",
};

/** Text as it stood before it was escaped. */
function unescaped(text: string): string {
  return text.replace(/&(?:#39|quot|lt|gt|amp);/gu, (entity) => spelled[entity] ?? entity);
}

/**
 * The policy of a page that is served: its own, without files of the disk, and with the two addresses of the watch.
 *
 * @param page  HTML text
 * @param host  under which it is served
 * @returns policy as it stands in a header
 * Example: pagePolicy("", "127.0.0.1:4711").includes("default-src 'none'") → true
 */
export function pagePolicy(page: string, host: string): string {
  const own = policyTag.exec(page)?.[1];
  const directives = new Map<string, string[]>();
  for (const directive of (own === undefined ? usualPolicy : unescaped(own)).split(";")) {
    const [name = "", ...sources] = directive.trim().split(/\s+/u);
    if (name !== "" && !directives.has(name)) directives.set(name, sources);
  }
  const allow = (name: string, source: string) =>
    directives.set(name, [...(directives.get(name) ?? []).filter((one) => one !== "'none'"), source]);
  allow("script-src", `http://${host}${scriptAddress}`);
  allow("connect-src", `http://${host}${eventsAddress}`);
  return [...directives]
    .map(([name, sources]) => [name, ...sources.filter((source) => source !== "file:")].join(" "))
    .join("; ");
}

/** How a page is served. */
interface ServedAs {
  readonly host: string;
  /** What the page is known by when the watch tells what has changed. */
  readonly mark: string;
}

/**
 * A page with the script of the watch in it; the file on the disk stays without.
 *
 * @param page  HTML text
 * @param as  host and mark
 * @returns HTML text
 * Example: watchedPage("<head></head>", { host: "127.0.0.1:4711", mark: "a.1" })
 */
export function watchedPage(page: string, { host, mark }: ServedAs): string {
  const script = `<script src="${scriptAddress}" data-mark="${escapeHtml(mark)}" defer></script>`;
  const policy = `<meta http-equiv="Content-Security-Policy" content="${escapeHtml(pagePolicy(page, host))}">`;
  if (policyTag.test(page)) return page.replace(policyTag, () => `${policy}\n${script}`);
  return /<head>/iu.test(page) ? page.replace(/<head>/iu, (head) => `${head}\n${script}`) : `${script}\n${page}`;
}
