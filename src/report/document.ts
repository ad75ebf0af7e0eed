import { createHash } from "node:crypto";
import { type Content, html, Markup, scriptForPage } from "./html.js";
import { pageScript, plotlyAddress, plotlySourceId } from "./pagescript.js";
import { styleSheet } from "./stylesheet.js";

/** Files beside the pages, as they are named in the output folder. */
export const assetNames = {
  style: "assets/page.css",
  script: "assets/page.js",
  plotly: plotlyAddress,
} as const;

/** Files of the search beside the pages, as they are named in the output folder, in the order in which they run. */
export const searchAssets = {
  library: "assets/minisearch.js",
  data: "assets/search-data.js",
  script: "assets/search.js",
} as const;

/** File beside the pages that computes a model in the browser. */
export function panelAsset(model: string): string {
  return `assets/live-${model}.js`;
}
/** Id of the element of every page that holds what it says. */
export const mainId = "main";

/** One page: everything between its frame. */
interface PageParts {
  /** Plain text. */
  readonly title: string;
  /** Plain text for previews. */
  readonly description: string;
  readonly body: Content;
  /** Whether the page has charts to explore. */
  readonly charts: boolean;
  /** Source of plotly, to carry everything in one file: as text that runs only when a chart is to be explored. */
  readonly inlinePlotly?: string | undefined;
  /** Model that the page computes in the browser; where it stands beside the page, it is read when its panel comes into view. */
  readonly liveModel?: string | undefined;
  /** Source of what computes it, to carry everything in one file. */
  readonly inlinePanel?: string | undefined;
  /** Whether style and script stand in the page itself. */
  readonly inline: boolean;
  /** Addresses of further scripts beside the page, in the order in which they run; none where it carries everything. */
  readonly scripts?: readonly string[];
}

function hash(source: string): string {
  return `'sha256-${createHash("sha256").update(source, "utf8").digest("base64")}'`;
}

/** What the page may load: itself, or the folder it was opened from; never the network. */
function securityPolicy(inlineScripts: readonly string[] | undefined): string {
  const scripts = inlineScripts === undefined ? "'self' file:" : inlineScripts.map(hash).join(" ") || "'none'";
  const own = inlineScripts === undefined ? "'self' file: " : "";
  return [
    "default-src 'none'",
    `script-src ${scripts}`,
    `style-src ${own}'unsafe-inline'`,
    `img-src ${own}data: blob:`,
    "base-uri 'none'",
    "form-action 'none'",
  ].join("; ");
}

/**
 * A whole HTML file.
 *
 * @param parts  title, body, and whether everything is carried inside
 * @returns HTML text, the same for the same parts
 * Example: documentHtml({ title: "Checks", description: "", body: "", charts: false, inline: false })
 */
export function documentHtml({
  title,
  description,
  body,
  charts,
  inline,
  inlinePlotly,
  liveModel,
  inlinePanel,
  scripts = [],
}: PageParts): string {
  const script = scriptForPage(pageScript);
  const library = scriptForPage(inlinePlotly ?? "");
  const live = liveModel !== undefined && inlinePanel !== undefined ? scriptForPage(inlinePanel) : undefined;
  const inlineScripts = [...(charts ? [script, library] : []), ...(live === undefined ? [] : [live])];
  const head = inline
    ? html`<style>${new Markup(styleSheet)}</style>`
    : html`<link rel="stylesheet" href="${assetNames.style}">${
        (charts || liveModel !== undefined) &&
        html`
<script src="${assetNames.script}"${liveModel !== undefined && html` data-panel="${panelAsset(liveModel)}"`} defer></script>`
      }${scripts.map((address) => html`\n<script src="${address}" defer></script>`)}`;
  return html`<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${securityPolicy(inline ? inlineScripts : undefined)}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<meta name="referrer" content="no-referrer">
<meta name="description" content="${description}">
<title>${title}</title>
${head}
</head>
<body>
<a class="skip" href="#${mainId}">Skip to the text</a>
${body}
${
  inline &&
  charts &&
  html`<script type="text/plain" id="${plotlySourceId}">${new Markup(library)}</script>
<script>${new Markup(script)}</script>
`
}${inline && live !== undefined && html`<script>${new Markup(live)}</script>\n`}</body>
</html>
`.text;
}
