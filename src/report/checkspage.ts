import { checkSummary, checkTotals, sharedCheckTables } from "./checktable.js";
import { documentHtml, mainId } from "./document.js";
import { html } from "./html.js";
import { type LeadingPage, leadingFoot } from "./leading.js";
import { markdownText } from "./markdown.js";
import { pageAddress } from "./record.js";
import { sourceList } from "./sourcelist.js";

/**
 * The page of all checks.
 *
 * @param checks  every check once, with the reports that show it
 * @param records  records of the reports, for their questions
 * @param inline  whether the style stands in the page itself
 * @returns HTML text
 * Example: checksPage({ records, checks, inline: false })
 */
export function checksPage({ records, checks, inline }: LeadingPage): string {
  const description = "Computed values beside expected ones, over all reports.";
  const body = html`<header class="top"><span>haulbook</span><a href="index.html">All reports</a></header>
<main id="${mainId}" tabindex="-1">
<div class="opening">
<h1>What the model was checked against</h1>
${checkSummary(checks)}<p>The allowed deviation is half of the last digit that a source prints, or its stated reading error. A comparison that goes beyond it stops the build.</p>
</div>
<section class="part" aria-labelledby="totals">
<h2 id="totals">Totals</h2>
<div class="body">
${checkTotals(checks)}</div></section>
<section class="part full" aria-labelledby="comparisons">
<h2 id="comparisons">Comparisons</h2>
<div class="body">
${sharedCheckTables(checks)}</div></section>
<section class="part" aria-labelledby="reports">
<h2 id="reports">Reports</h2>
<div class="body">
<ul>
${records.map(({ name, question, answer, checks: own }) => html`<li><a href="${pageAddress(name)}">${question}</a> ${markdownText(answer)} (${own.length} ${own.length === 1 ? "comparison" : "comparisons"})</li>\n`)}</ul>
</div></section>
<section class="part" aria-labelledby="sources">
<h2 id="sources">Sources</h2>
<div class="body">
${sourceList(checks.flatMap(({ source }) => source ?? []))}</div></section>
</main>
${leadingFoot}`;
  return documentHtml({
    title: "haulbook: what the model was checked against",
    description,
    body,
    charts: false,
    inline,
  });
}
