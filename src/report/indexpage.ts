import { cautionsInShort } from "./cautions.js";
import { checkSummary } from "./checktable.js";
import { documentHtml } from "./document.js";
import { html } from "./html.js";
import { type LeadingPage, leadingFoot } from "./leading.js";
import { markdownLine } from "./markdown.js";
import { pageAddress } from "./record.js";
import { thumbnailSvg } from "./thumbnail.js";

const purpose =
  "haulbook computes what the hand feels on a sheet of a small boat: how the wind becomes load, what blocks, covers and turns do to it, and what is left to hold or to ease.";

/**
 * The page that leads to all reports.
 *
 * @param records  records of the reports, in the order in which they are shown
 * @param checks  all their checks
 * @param inline  whether the style stands in the page itself
 * @returns HTML text
 * Example: indexPage({ records, checks, inline: false })
 */
export function indexPage({ records, checks, inline }: LeadingPage): string {
  const body = html`<header class="top"><span>haulbook</span><a href="checks.html">All checks</a></header>
<main>
<div class="opening">
<h1>What does the hand feel, and why?</h1>
<p>${purpose} Each report answers one question, shows the picture, takes every number apart, and sets the model beside values that others have printed. Curves for hauling are solid, for easing dashed; the gap between them is friction.</p>
</div>
<section class="part" aria-labelledby="questions">
<h2 id="questions">Questions answered</h2>
<div class="body">
<ul class="reports">
${records.map(
  ({ name, question, answer, thumbnail }) => html`<li>${thumbnail ? thumbnailSvg(thumbnail) : html`<span></span>`}
<div><h3><a href="${pageAddress(name)}">${question}</a></h3>
<p>${markdownLine(answer, { place: `${name}.ipynb` })}</p></div></li>
`,
)}</ul>
</div></section>
<section class="part" aria-labelledby="checked">
<h2 id="checked">How far to trust it</h2>
<div class="body">
${checkSummary(checks)}<p><a href="checks.html">Every comparison, with its source</a></p>
</div></section>
<section class="part" aria-labelledby="care">
<h2 id="care">Take care</h2>
<div class="body">
${cautionsInShort()}</div></section>
</main>
${leadingFoot}`;
  return documentHtml({
    title: "haulbook: what does the hand feel, and why?",
    description: purpose,
    body,
    charts: false,
    inline,
  });
}
